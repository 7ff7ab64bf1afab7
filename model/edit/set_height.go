package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetHeight fixes the height of the front at a place, with Clear the clear height
// of an open niche. The height lies between 10 mm and 20 m; whether the stack has
// room for it is for the check to say. A front that lined up with another does so
// no longer.
type SetHeight struct {
	At     model.Place
	Height length.Length
	Clear  bool
}

// Label names the change.
func (e SetHeight) Label() message.Message {
	if e.Clear {
		return message.New("Clear height %v", e.Height)
	}
	return message.New("Front height %v", e.Height)
}

// Apply makes the change.
func (e SetHeight) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := refused(figure.Front(f), "height", e.Height); err != nil {
		return nil, err
	}
	if err := unlocked(f); err != nil {
		return nil, err
	}
	if e.Clear && f.Kind != model.OpenNiche {
		return nil, message.New("Only an open niche has a clear height.")
	}
	fix(f, e.Height)
	f.Clear = e.Clear
	return c, nil
}
