package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// ReorderFront moves a front to another place of its stack; To counts from 0 at
// the bottom, after the move.
type ReorderFront struct {
	At model.Place
	To int
}

// Label names the change.
func (e ReorderFront) Label() message.Message {
	if e.To > e.At.Front {
		return message.New("Move front up")
	}
	return message.New("Move front down")
}

// Apply makes the change.
func (e ReorderFront) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	b := c.BayAt(e.At)
	if e.To < 0 || e.To >= len(b.Fronts) {
		return nil, message.New("The front is at the end of its stack already.")
	}
	moved := *f
	b.Fronts = append(b.Fronts[:e.At.Front], b.Fronts[e.At.Front+1:]...)
	b.Fronts = append(b.Fronts, model.Front{})
	copy(b.Fronts[e.To+1:], b.Fronts[e.To:])
	b.Fronts[e.To] = moved
	return c, nil
}
