package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// LineUp asks for a front's top edge to be level with an edge of another front;
// nil ends that.
type LineUp struct {
	At   model.Place
	With *model.LineUp
}

// Label names the change.
func (e LineUp) Label() message.Message {
	if e.With == nil {
		return message.New("No longer lined up")
	}
	return message.New("Line up with “%v”", e.With.Front)
}

// Apply makes the change.
func (e LineUp) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := unlocked(f); err != nil {
		return nil, err
	}
	f.LineUp = nil
	if e.With != nil {
		w := *e.With
		f.LineUp, f.Height = &w, 0
	}
	return c, nil
}
