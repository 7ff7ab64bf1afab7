package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetHandle says where the holes for a handle are drilled through a front; nil
// for none.
type SetHandle struct {
	At     model.Place
	Handle *model.Handle
}

// Label names the change.
func (e SetHandle) Label() message.Message {
	if e.Handle == nil {
		return message.New("No handle holes")
	}
	return message.New("Handle holes")
}

// Apply makes the change. The diameter is from 1 to 40 mm, the places from 0
// (the middle; one hole) to 2 m.
func (e SetHandle) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	f.Handle = nil
	if e.Handle == nil {
		return c, nil
	}
	h := *e.Handle
	if err := within(h.Diameter, length.Millimetre, 40*length.Millimetre); err != nil {
		return nil, err
	}
	for _, v := range []length.Length{h.Spacing, h.FromTop, h.FromLeft} {
		if err := within(v, 0, greatestFitting); err != nil {
			return nil, err
		}
	}
	f.Handle = &h
	return c, nil
}
