package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Lock locks fronts at the heights they have in the plan, or unlocks them.
// Heights has one for each place; it is not needed to unlock.
type Lock struct {
	At      []model.Place
	Heights []length.Length
	Locked  bool
}

// Label names the change.
func (e Lock) Label() message.Message {
	if e.Locked {
		return message.New("Lock height")
	}
	return message.New("Unlock height")
}

// Apply makes the change.
func (e Lock) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	for i, at := range e.At {
		f := c.FrontAt(at)
		if f == nil {
			return nil, message.New("There is no front at this place any more. Select one in the drawing.")
		}
		f.Locked = e.Locked
		if e.Locked && i < len(e.Heights) {
			if err := refused(figure.Front(f), "height", e.Heights[i]); err != nil {
				return nil, err
			}
			if !f.Clear || f.Height <= 0 { // a niche's clear height stays what is asked for
				fix(f, e.Heights[i])
			}
		}
	}
	return c, nil
}
