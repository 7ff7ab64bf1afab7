package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// CabinetSize names a size of a cabinet.
type CabinetSize uint8

// The sizes of a cabinet.
const (
	Width CabinetSize = iota
	Height
	Depth
	Plinth
	Worktop
	Channel
)

// SetCabinetSize sets the outside width, the carcass height, the depth, the
// plinth height, the worktop's thickness or the finger-pull channel's height of
// a cabinet. The last three can be 0 for none; worktop and channel are at most
// 2 m, the others 20 m.
type SetCabinetSize struct {
	At    model.Place
	Which CabinetSize
	Size  length.Length
}

// Label names the change.
func (e SetCabinetSize) Label() message.Message {
	switch e.Which {
	case Height:
		return message.New("Cabinet height %v", e.Size)
	case Depth:
		return message.New("Cabinet depth %v", e.Size)
	case Plinth:
		return message.New("Plinth %v", e.Size)
	case Worktop:
		return message.New("Worktop %v", e.Size)
	case Channel:
		return message.New("Finger-pull channel %v", e.Size)
	default:
		return message.New("Cabinet width %v", e.Size)
	}
}

// Apply makes the change.
func (e SetCabinetSize) Apply(p *model.Project) (*model.Project, error) {
	c, cab, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	least, greatest := leastBox, greatestBox
	if e.Which >= Plinth && e.Which <= Channel {
		least = 0
	}
	if e.Which == Worktop || e.Which == Channel {
		greatest = greatestFitting
	}
	if err := within(e.Size, least, greatest); err != nil {
		return nil, err
	}
	switch e.Which {
	case Height:
		cab.Height = e.Size
	case Depth:
		cab.Depth = e.Size
	case Plinth:
		cab.Plinth = e.Size
	case Worktop:
		cab.Worktop = e.Size
	case Channel:
		cab.Channel = e.Size
	default:
		cab.Width = e.Size
	}
	return c, nil
}
