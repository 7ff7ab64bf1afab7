package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// MoveCabinet moves a cabinet to another place of the run; To counts from 0 at
// the left, after the move.
type MoveCabinet struct {
	At model.Place
	To int
}

// Label names the change.
func (e MoveCabinet) Label() message.Message { return message.New("Move a cabinet in the run") }

// Apply makes the change.
func (e MoveCabinet) Apply(p *model.Project) (*model.Project, error) {
	c, cab, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.To < 0 || e.To >= len(c.Cabinets) {
		return nil, message.New("The cabinet is at the end of the run already.")
	}
	moved := *cab
	c.Cabinets = append(c.Cabinets[:e.At.Cabinet], c.Cabinets[e.At.Cabinet+1:]...)
	c.Cabinets = append(c.Cabinets, model.Cabinet{})
	copy(c.Cabinets[e.To+1:], c.Cabinets[e.To:])
	c.Cabinets[e.To] = moved
	return c, nil
}
