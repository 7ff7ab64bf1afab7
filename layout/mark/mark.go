// Package mark says what a finding speaks of: places in the room that the run
// takes, each of a shape, which every view shows in its own frame.
package mark

import (
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// Shape is what a place looks like. It tells what kind of thing is wrong there;
// how bad it is, the severity does.
type Shape uint8

// The shapes.
const (
	Band    Shape = iota // a strip that shows, that is missing, or that is in the way
	Gap                  // a gap between two things that has not the right size
	Edge                 // an edge, or a line through the run
	Ring                 // around a hole or a screw
	Outline              // a thing as a whole: a drawer, a runner, a front
	Cross                // a thing that is not there
	Reach                // the way from one thing to another, with a stop at both ends
)

var names = [...]string{"band", "gap", "edge", "ring", "outline", "cross", "reach"}

// String is the shape's name, as dumps write it.
func (s Shape) String() string {
	if int(s) < len(names) {
		return names[s]
	}
	return "unknown"
}

// Views are views in which a place is to be seen, added up.
type Views uint8

// The views.
const (
	Elevation Views = 1 << iota
	Section
	Rear // the rear face of a front
	Plan // a drawer from above
)

// Spot is a place that a finding speaks of: Box in the run frame, Near to Far in
// the depth frame. Flat in one direction it is a line where that is seen from the
// side. Front is the number of the front that it belongs to; 0: none, or several.
type Spot struct {
	Shape     Shape
	In        Views
	Front     int
	Box       plane.Rect
	Near, Far length.Length
}

// FromRoom is the place in the run frame.
func (s *Spot) FromRoom() plane.Rect { return s.Box }

// FromSide is the place in a section: x is the depth, y the run frame's.
func (s *Spot) FromSide() plane.Rect {
	return plane.R(s.Near, s.Box.Min.Y, s.Far, s.Box.Max.Y)
}

// FromAbove is the place in a plan whose x is 0 at left, run frame; y is the
// depth.
func (s *Spot) FromAbove(left length.Length) plane.Rect {
	return plane.R(s.Box.Min.X-left, s.Near, s.Box.Max.X-left, s.Far)
}
