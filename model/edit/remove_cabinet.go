package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// RemoveCabinet takes a cabinet out of the run.
type RemoveCabinet struct {
	At model.Place
}

// Label names the change.
func (e RemoveCabinet) Label() message.Message { return message.New("Remove a cabinet") }

// Apply makes the change. The last cabinet can't be removed.
func (e RemoveCabinet) Apply(p *model.Project) (*model.Project, error) {
	c, _, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	if len(c.Cabinets) == 1 {
		return nil, message.New("A project needs at least one cabinet. Add another one first.")
	}
	c.Cabinets = append(c.Cabinets[:e.At.Cabinet], c.Cabinets[e.At.Cabinet+1:]...)
	return c, nil
}
