package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetUnit chooses the unit that the project is written in. No size changes.
type SetUnit struct {
	Unit length.Unit
}

// Label names the change.
func (e SetUnit) Label() message.Message { return message.New("Unit %v", e.Unit.String()) }

// Apply makes the change.
func (e SetUnit) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	c.Unit = e.Unit
	return c, nil
}
