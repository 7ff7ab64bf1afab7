package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/message"
)

// AddInner puts an inner drawer behind the front at a place, above those that it has.
type AddInner struct {
	At    model.Place
	Inner model.InnerDrawer
}

// Label names the change.
func (e AddInner) Label() message.Message { return message.New("Add an inner drawer") }

// Apply makes the change. Only drawers and doors open, so that only they can have one.
func (e AddInner) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if !f.Kind.Holds() {
		return nil, message.New("Only behind a drawer's front or a door can there be inner drawers.")
	}
	f.Inner = append(f.Inner, e.Inner)
	row, _ := figure.Find(figure.Front(f), "inner")
	if most := row.Value.(*figure.List).Most; len(f.Inner) > most {
		return nil, message.New("A front has at most %v inner drawers.", most)
	}
	if err := figure.Refused(nil, []figure.Row{row}); err != nil {
		return nil, err
	}
	return c, nil
}

// RemoveInner takes away an inner drawer of the front at a place, by its index from 0.
type RemoveInner struct {
	At    model.Place
	Index int
}

// Label names the change.
func (e RemoveInner) Label() message.Message {
	return message.New("Remove inner drawer %v", e.Index+1)
}

// Apply makes the change.
func (e RemoveInner) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Index < 0 || e.Index >= len(f.Inner) {
		return nil, message.New("The front has no inner drawer %v.", e.Index+1)
	}
	f.Inner = append(f.Inner[:e.Index], f.Inner[e.Index+1:]...)
	return c, nil
}
