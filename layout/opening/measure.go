// Package opening works out what a tape tells of an opening that is there: its shape, how far
// it is out of square, out of parallel and bowed, which figures contradict each other, and
// what follows for fronts, fillers and runners.
//
// Frame of a shape: millimetres, origin at the lower left corner, x to the right as seen from
// the room, y up; upright where plumb or level was measured, else along the bottom.
package opening

import (
	"math"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Figure is one thing that can be measured.
type Figure uint8

// The figures, in the order in which people are asked for them.
const (
	WidthBottom Figure = iota
	WidthMiddle
	WidthTop
	HeightLeft
	HeightMiddle
	HeightRight
	Rising
	Falling
	PlumbLeft
	PlumbRight
	Level
)

// Say names the figure, as it stands behind “the”.
func (f Figure) Say() message.Message {
	switch f {
	case WidthBottom:
		return message.New("width at the bottom")
	case WidthMiddle:
		return message.New("width in the middle")
	case WidthTop:
		return message.New("width at the top")
	case HeightLeft:
		return message.New("height at the left")
	case HeightMiddle:
		return message.New("height in the middle")
	case HeightRight:
		return message.New("height at the right")
	case Rising:
		return message.New("diagonal from lower left to upper right")
	case Falling:
		return message.New("diagonal from upper left to lower right")
	case PlumbLeft:
		return message.New("plumb of the left side")
	case PlumbRight:
		return message.New("plumb of the right side")
	default:
		return message.New("level of the bottom")
	}
}

// Signed tells a figure that is off to one side or the other: plumb or level.
func (f Figure) Signed() bool { return f == PlumbLeft || f == PlumbRight || f == Level }

// Off says by how much plumb or level is off, and to which side: to the left, or down to the
// right, where it is below zero.
func (f Figure) Off(by any, below bool) message.Message {
	switch {
	case f == Level && below:
		return message.New("%v up to the left", by)
	case f == Level:
		return message.New("%v up to the right", by)
	case below:
		return message.New("%v to the left", by)
	}
	return message.New("%v to the right", by)
}

// Middle tells a figure that is taken halfway: it can be off because a board is bowed.
func (f Figure) Middle() bool { return f == WidthMiddle || f == HeightMiddle }

// taken is one figure with what the tape said, in mm.
type taken struct {
	figure Figure
	value  float64
}

// takenOf are the figures of the opening's front that were measured, in order.
func takenOf(m *model.Measured) []taken {
	var all []taken
	size := func(f Figure, v length.Length) {
		if v > 0 {
			all = append(all, taken{f, v.MM()})
		}
	}
	off := func(f Figure, v *length.Length) {
		if v != nil {
			all = append(all, taken{f, v.MM()})
		}
	}
	size(WidthBottom, m.Widths.Bottom)
	size(WidthMiddle, m.Widths.Middle)
	size(WidthTop, m.Widths.Top)
	size(HeightLeft, m.Heights.Left)
	size(HeightMiddle, m.Heights.Middle)
	size(HeightRight, m.Heights.Right)
	size(Rising, m.Rising)
	size(Falling, m.Falling)
	off(PlumbLeft, m.PlumbLeft)
	off(PlumbRight, m.PlumbRight)
	off(Level, m.Level)
	return all
}

// corners are x and y of the corners, mm: lower left, lower right, upper right, upper left.
type corners [8]float64

// The corners' places among them.
const (
	lowerLeft  = 0
	lowerRight = 2
	upperRight = 4
	upperLeft  = 6
)

// blend is a point as a sum of corners with their weights.
type blend map[int]float64

func corner(k int) blend    { return blend{k: 1} }
func middle(a, b int) blend { return blend{a: 0.5, b: 0.5} }

func (b blend) at(c *corners) (x, y float64) {
	for k, w := range b {
		x += w * c[k]
		y += w * c[k+1]
	}
	return x, y
}

// ends are the two points whose distance a figure is.
func (f Figure) ends() (from, to blend) {
	switch f {
	case WidthBottom:
		return corner(lowerLeft), corner(lowerRight)
	case WidthMiddle:
		return middle(lowerLeft, upperLeft), middle(lowerRight, upperRight)
	case WidthTop:
		return corner(upperLeft), corner(upperRight)
	case HeightLeft, PlumbLeft:
		return corner(lowerLeft), corner(upperLeft)
	case HeightMiddle:
		return middle(lowerLeft, lowerRight), middle(upperLeft, upperRight)
	case HeightRight, PlumbRight:
		return corner(lowerRight), corner(upperRight)
	case Rising:
		return corner(lowerLeft), corner(upperRight)
	case Falling:
		return corner(upperLeft), corner(lowerRight)
	default: // Level
		return corner(lowerLeft), corner(lowerRight)
	}
}

// of is what the figure would be between straight sides with these corners, and how it grows
// with each coordinate: a distance, or for plumb and level its part across or up.
func (f Figure) of(c *corners) (value float64, grows corners) {
	from, to := f.ends()
	x0, y0 := from.at(c)
	x1, y1 := to.at(c)
	dx, dy := x1-x0, y1-y0
	var gx, gy float64
	switch f {
	case PlumbLeft, PlumbRight:
		value, gx = dx, 1
	case Level:
		value, gy = dy, 1
	default:
		value = math.Hypot(dx, dy)
		gx, gy = dx/value, dy/value
	}
	for k, w := range to {
		grows[k] += w * gx
		grows[k+1] += w * gy
	}
	for k, w := range from {
		grows[k] -= w * gx
		grows[k+1] -= w * gy
	}
	return value, grows
}
