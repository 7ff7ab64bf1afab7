package edit

import (
	"frontlay/model"
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
	if !equal && (e.Left < leastBox || e.Right < leastBox) {
		return nil, message.New("A bay is at least %v wide. Draw the partition further from the sides.", leastBox)
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
