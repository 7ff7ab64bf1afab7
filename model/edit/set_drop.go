package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetDrop sets how far the bottom edge of a front lies below its runner's lower
// edge (negative: above). Drop nil leaves it to the layout.
type SetDrop struct {
	At   model.Place
	Drop *length.Length
}

// Label names the change.
func (e SetDrop) Label() message.Message {
	if e.Drop == nil {
		return message.New("Drop worked out")
	}
	return message.New("Drop %v", *e.Drop)
}

// Apply makes the change.
func (e SetDrop) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Drop == nil {
		f.Drop = nil
		return c, nil
	}
	if err := within(*e.Drop, -2*length.Metre, 2*length.Metre); err != nil {
		return nil, err
	}
	d := *e.Drop
	f.Drop = &d
	return c, nil
}
