package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// RemoveBay takes a bay with its stack and its partition out of a cabinet.
// Where no other bay takes a share of the width, the neighbour does from then.
type RemoveBay struct {
	At model.Place
}

// Label names the change.
func (e RemoveBay) Label() message.Message { return message.New("Remove a bay") }

// Apply makes the change. The last bay can't be removed.
func (e RemoveBay) Apply(p *model.Project) (*model.Project, error) {
	c, _, err := bay(p, e.At)
	if err != nil {
		return nil, err
	}
	cab := c.CabinetAt(e.At)
	if len(cab.Bays) == 1 {
		return nil, message.New("A cabinet needs at least one bay. Remove the cabinet instead.")
	}
	if othersShare(cab, e.At.Bay) == 0 {
		heir := e.At.Bay - 1
		if heir < 0 {
			heir = 1
		}
		cab.Bays[heir].Width, cab.Bays[heir].Share = 0, 1
	}
	cab.Bays = append(cab.Bays[:e.At.Bay], cab.Bays[e.At.Bay+1:]...)
	return c, nil
}
