package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

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
	if e.WidthLeft < leastBox || e.WidthRight < leastBox {
		return nil, message.New("A bay is at least %v wide: the one left of the partition can be from %v to %v wide.",
			leastBox, leastBox, e.WidthLeft+e.WidthRight-leastBox)
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
