package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// SetSpan lets a front span several bays, its own and those at its right.
type SetSpan struct {
	At    model.Place
	Count int
}

// Label names the change.
func (e SetSpan) Label() message.Message { return message.New("Bays spanned: %v", e.Count) }

// Apply makes the change. The cabinet must have so many bays.
func (e SetSpan) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	most := len(c.CabinetAt(e.At).Bays) - e.At.Bay
	if e.Count < 1 || e.Count > most {
		return nil, message.New("A front of this bay can span from 1 to %v bays.", most)
	}
	f.Span = e.Count
	if f.Span == 1 {
		f.Span = 0
	}
	return c, nil
}
