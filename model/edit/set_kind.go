package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// SetKind makes a place in the stack a drawer, a fixed panel or an open niche.
type SetKind struct {
	At   model.Place
	Kind model.Kind
}

// Label names the change.
func (e SetKind) Label() message.Message {
	switch e.Kind {
	case model.FixedPanel:
		return message.New("Make it a fixed panel")
	case model.OpenNiche:
		return message.New("Make it an open niche")
	default:
		return message.New("Make it a drawer")
	}
}

// Apply makes the change.
func (e SetKind) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Kind > model.OpenNiche {
		return nil, message.New("A place in the stack is a drawer, a fixed panel or an open niche.")
	}
	f.Kind = e.Kind
	f.Clear = f.Clear && f.Kind == model.OpenNiche
	if f.Kind != model.DrawerFront {
		f.Drawer, f.Drop, f.Cover = "", nil, 0
	}
	return c, nil
}
