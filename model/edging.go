package model

import (
	"frontlay/model/length"
	"frontlay/model/message"
)

// Edging tells which edges of the parts that are cut from a board get its edging, which
// is as thick as its Lipping, and what a metre costs in whatever money (0: not given).
// Each is one of the words of its kind of part, the usual edges where it is empty: all
// four of fronts, the front edge of boards in the carcass.
type Edging struct {
	Fronts                                         string
	Sides, Bottoms, Partitions, Shelves, EndPanels string
	Price                                          float64
}

// The words for edges: of any part, of boards in the carcass, of fronts.
const (
	EdgeNone      = "none"
	EdgeAll       = "all"
	EdgeFront     = "front"
	EdgeFrontBack = "front_back"
	EdgeFrontEnds = "front_ends"
	EdgeSides     = "sides"
	EdgeTopBottom = "top_bottom"
	EdgeTop       = "top"
)

// LippingOf gives how thick the lipping of a front of the board is at each edge.
func (b *Board) LippingOf() (left, right, bottom, top length.Length) {
	l := b.Lipping
	switch b.Edging.Fronts {
	case EdgeNone:
		return 0, 0, 0, 0
	case EdgeSides:
		return l, l, 0, 0
	case EdgeTopBottom:
		return 0, 0, l, l
	case EdgeTop:
		return 0, 0, 0, l
	}
	return l, l, l, l
}

// SayEdges says one of the words for edges to a person; none where it is no such word.
func SayEdges(word string) message.Message {
	switch word {
	case EdgeAll:
		return message.New("all four edges")
	case EdgeFront:
		return message.New("front edge")
	case EdgeFrontBack:
		return message.New("front and back edge")
	case EdgeFrontEnds:
		return message.New("front edge, both ends")
	case EdgeSides:
		return message.New("left and right edge")
	case EdgeTopBottom:
		return message.New("top and bottom edge")
	case EdgeTop:
		return message.New("top edge")
	}
	return message.New("none")
}
