package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// SetMount makes the fronts of a cabinet overlay or inset.
type SetMount struct {
	At    model.Place
	Mount model.Mount
}

// Label names the change.
func (e SetMount) Label() message.Message {
	if e.Mount == model.Inset {
		return message.New("Inset fronts")
	}
	return message.New("Overlay fronts")
}

// Apply makes the change.
func (e SetMount) Apply(p *model.Project) (*model.Project, error) {
	c, cab, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Mount > model.Inset {
		return nil, message.New("Fronts are overlay or inset.")
	}
	cab.Mount = e.Mount
	return c, nil
}
