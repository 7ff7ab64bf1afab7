package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetRounding says to which step computed heights are rounded, from 0.01 to
// 100 mm, and which front takes the odd rest.
type SetRounding struct {
	Rounding model.Rounding
}

// Label names the change.
func (e SetRounding) Label() message.Message { return message.New("Rounding %v", e.Rounding.Step) }

// Apply makes the change.
func (e SetRounding) Apply(p *model.Project) (*model.Project, error) {
	if e.Rounding.Step != 0 {
		if err := within(e.Rounding.Step, 10*length.Micrometre, 100*length.Millimetre); err != nil {
			return nil, err
		}
	}
	c := p.Clone()
	c.Rounding = e.Rounding
	return c, nil
}
