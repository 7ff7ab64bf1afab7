package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetHeight fixes the height of the front at a place. The height lies between
// 10 mm and 20 m; whether the stack has room for it is for the check to say. A front that lined up with another
// does so no longer.
type SetHeight struct {
	At     model.Place
	Height length.Length
}

// Label names the change.
func (e SetHeight) Label() message.Message {
	return message.New("Front height %v", e.Height)
}

// Apply makes the change.
func (e SetHeight) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := within(e.Height, leastFront, greatestBox); err != nil {
		return nil, err
	}
	if err := unlocked(f); err != nil {
		return nil, err
	}
	fix(f, e.Height)
	return c, nil
}
