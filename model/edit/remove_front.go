package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// RemoveFront takes a front out of its stack. Freed is the height that becomes
// free with it (its own and one gap, as planned): where no front of the stack
// takes a share, the one below (or, at the bottom, above) grows by it.
type RemoveFront struct {
	At    model.Place
	Freed length.Length
}

// Label names the change.
func (e RemoveFront) Label() message.Message { return message.New("Remove a front") }

// Apply makes the change. The last front of a bay can't be removed.
func (e RemoveFront) Apply(p *model.Project) (*model.Project, error) {
	c, _, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	b := c.BayAt(e.At)
	if len(b.Fronts) == 1 {
		return nil, message.New("A bay needs at least one front. Make this one an open niche, or remove the bay.")
	}
	b.Fronts = append(b.Fronts[:e.At.Front], b.Fronts[e.At.Front+1:]...)
	for _, f := range b.Fronts {
		if f.Height <= 0 {
			return c, nil
		}
	}
	heir := max(e.At.Front-1, 0)
	if e.Freed > 0 {
		b.Fronts[heir].Height += e.Freed
	} else {
		b.Fronts[heir].Height, b.Fronts[heir].Clear = 0, false
	}
	return c, nil
}
