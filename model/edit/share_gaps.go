package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// ShareGaps lets fronts of neighbouring cabinets keep one gap between them, or
// the edge reveals of both.
type ShareGaps struct {
	Shared bool
}

// Label names the change.
func (e ShareGaps) Label() message.Message {
	if e.Shared {
		return message.New("One gap between cabinets")
	}
	return message.New("Edge reveals between cabinets")
}

// Apply makes the change.
func (e ShareGaps) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	c.SharedGaps = e.Shared
	return c, nil
}
