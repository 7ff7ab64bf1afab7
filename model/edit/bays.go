package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// AddBay draws a partition: the bay at At keeps Left of its clear width, a new
// bay of Right stands at its right with a copy of its stack. Where both are 0
// the two take equal shares. The caller takes the partition's thickness off.
type AddBay struct {
	At          model.Place
	Left, Right length.Length
}

// Label names the change.
func (e AddBay) Label() message.Message { return message.New("Draw a partition") }

// Apply makes the change.
func (e AddBay) Apply(p *model.Project) (*model.Project, error) {
	c, b, err := bay(p, e.At)
	if err != nil {
		return nil, err
	}
	equal := e.Left == 0 && e.Right == 0
	if !equal {
		if err := parts(figure.Bay(b), "width", e.Left, e.Right); err != nil {
			return nil, err
		}
	}
	right := b.Clone()
	cab := c.CabinetAt(e.At)
	if equal {
		b.Width, right.Width = 0, 0
	} else if b.Width <= 0 && othersShare(cab, e.At.Bay) == 0 {
		b.Width, right.Width = e.Left, 0 // one goes on following the cabinet's width
	} else {
		b.Width, right.Width = e.Left, e.Right
	}
	b.Partition = 0
	cab.Bays = append(cab.Bays, model.Bay{})
	copy(cab.Bays[e.At.Bay+2:], cab.Bays[e.At.Bay+1:])
	cab.Bays[e.At.Bay+1] = right
	return c, nil
}

// othersShare counts the bays but one that take a share of the width.
func othersShare(cab *model.Cabinet, but int) int {
	n := 0
	for i := range cab.Bays {
		if i != but && cab.Bays[i].Width <= 0 {
			n++
		}
	}
	return n
}

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

// MovePartition moves the partition at the right of the bay at Left. The two
// widths are those the bays at it are to have; their sum is what it was. Where
// no other bay takes a share of the width, one of the two goes on doing so.
type MovePartition struct {
	Left                  model.Place
	WidthLeft, WidthRight length.Length
}

// Label names the change.
func (e MovePartition) Label() message.Message {
	return message.New("Move partition: %v left, %v right", e.WidthLeft, e.WidthRight)
}

// Apply makes the change.
func (e MovePartition) Apply(p *model.Project) (*model.Project, error) {
	c, left, err := bay(p, e.Left)
	if err != nil {
		return nil, err
	}
	cab := c.CabinetAt(e.Left)
	if e.Left.Bay+1 >= len(cab.Bays) {
		return nil, message.New("There is no bay at the right of this one, so there is no partition to move.")
	}
	if err := parts(figure.Bay(left), "width", e.WidthLeft, e.WidthRight); err != nil {
		return nil, err
	}
	right := &cab.Bays[e.Left.Bay+1]
	shares := othersShare(cab, e.Left.Bay)
	if right.Width <= 0 {
		shares--
	}
	leftShares, rightShares := left.Width <= 0, right.Width <= 0
	if shares > 0 || !rightShares {
		right.Width = e.WidthRight
	}
	if shares > 0 || rightShares || !leftShares {
		left.Width = e.WidthLeft
	}
	return c, nil
}
