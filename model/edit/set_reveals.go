package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetReveals sets the reveals of the project (At: model.Whole) or of one
// cabinet; nil lets a cabinet follow the project. Each is from 0 to 200 mm.
type SetReveals struct {
	At      model.Place
	Reveals *model.Reveals
}

// Label names the change.
func (e SetReveals) Label() message.Message {
	if e.Reveals == nil {
		return message.New("Reveals as in the project")
	}
	return message.New("Reveals")
}

// Apply makes the change.
func (e SetReveals) Apply(p *model.Project) (*model.Project, error) {
	if r := e.Reveals; r != nil {
		for _, v := range []length.Length{r.Left, r.Right, r.Top, r.Bottom, r.Gap} {
			if err := within(v, 0, 200*length.Millimetre); err != nil {
				return nil, err
			}
		}
	}
	if e.At.Cabinet < 0 {
		if e.Reveals == nil {
			return nil, message.New("The project needs reveals of its own.")
		}
		c := p.Clone()
		c.Reveals = *e.Reveals
		return c, nil
	}
	c, cab, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	cab.Reveals = nil
	if e.Reveals != nil {
		r := *e.Reveals
		cab.Reveals = &r
	}
	return c, nil
}
