// Package ink draws finished pages onto a canvas: it chooses pens, and where a
// dimension's figure stands. Canvases are written by renderers (PDF, SVG), which
// therefore show the same.
package ink

import "frontlay/model/length"

// Point is a place on the page in millimetres from its lower left corner, y up.
type Point struct{ X, Y float64 }

// Canvas takes what a page consists of, in the order it is painted. Places are
// in millimetres as Point tells. Text is written last, from the beginning of its
// base line, with capitals as high as size.
type Canvas interface {
	// Line draws a straight line.
	Line(p Pen, a, b Point)
	// Rect paints a rectangle's surface where fill is given and its edge where
	// edge is given.
	Rect(edge *Pen, fill *Colour, lo, hi Point)
	// Circle draws a circle.
	Circle(p Pen, centre Point, radius float64)
	// Triangle paints a surface without an edge.
	Triangle(fill Colour, a, b, c Point)
	// Clip begins an area outside of which nothing shows; Unclip ends it. They
	// are not nested, and text is never clipped.
	Clip(lo, hi Point)
	Unclip()
	// Text writes one line.
	Text(at Point, size length.Length, bold bool, ink Colour, s string)
}
