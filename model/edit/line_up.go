package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// LineUp asks for a front's top edge to be level with an edge of another front;
// nil ends that. Number is the other front's number in the run, by which the
// label tells one that has no name; it changes nothing.
type LineUp struct {
	At     model.Place
	With   *model.LineUp
	Number int
}

// Label names the change.
func (e LineUp) Label() message.Message {
	switch {
	case e.With == nil:
		return message.New("No longer lined up")
	case e.Number > 0:
		return message.New("Line up with front %v", e.Number)
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
		f.LineUp, f.Height, f.Clear = &w, 0, false
	}
	return c, nil
}
