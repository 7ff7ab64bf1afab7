package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// CopyStack gives the bays at To the stack of fronts of the bay at From. Drawers
// that the hardware of a bay does not have are the tallest that fit there.
type CopyStack struct {
	From model.Place
	To   []model.Place
}

// Label names the change.
func (e CopyStack) Label() message.Message {
	return message.New("Copy the stack to %v bays", len(e.To))
}

// Apply makes the change.
func (e CopyStack) Apply(p *model.Project) (*model.Project, error) {
	c, from, err := bay(p, e.From)
	if err != nil {
		return nil, err
	}
	if len(e.To) == 0 {
		return nil, message.New("Select the bays that are to get this stack too.")
	}
	for _, at := range e.To {
		b := c.BayAt(at)
		if b == nil {
			return nil, message.New("There is no bay at this place any more. Select one in the drawing.")
		}
		b.Fronts = from.Clone().Fronts
		refit(c, b)
	}
	return c, nil
}
