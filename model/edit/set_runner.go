package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetRunner asks for a runner length for the drawer at a place; 0 asks for the
// longest that fits. Whether the sheet has that length, and whether it fits, is
// for the check to say.
type SetRunner struct {
	At     model.Place
	Length length.Length
}

// Label names the change.
func (e SetRunner) Label() message.Message {
	if e.Length == 0 {
		return message.New("Longest runner that fits")
	}
	return message.New("Use runner %v", e.Length)
}

// Apply makes the change.
func (e SetRunner) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := within(e.Length, 0, greatestBox); err != nil {
		return nil, err
	}
	f.Runner = e.Length
	return c, nil
}
