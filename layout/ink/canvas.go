// Package ink draws finished pages onto a canvas: it chooses pens; where letters
// stand is what layout/letter says. Canvases are written by renderers (PDF, SVG), which
// therefore show the same.
package ink

import (
	"frontlay/layout/drawing"
	"frontlay/model/length"
)

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
	// Text writes one line, upwards where it is turned.
	Text(at Point, size length.Length, bold, turned bool, ink Colour, s string)
}

// Colour is red, green and blue from 0 to 1.
type Colour [3]float64

// Colours on paper. All but findings, and boards in their tones, are greys, so that
// nothing is lost on a black-and-white printer.
func black() Colour { return grey(0) }
func white() Colour { return grey(1) }

func grey(v float64) Colour { return Colour{v, v, v} }

// warning is a dark red that is as dark as black print on a grey printer.
func warning() Colour { return Colour{0.7, 0, 0} }

// Pen is a line's width in millimetres, its colour, and its pattern: lengths of
// strokes and gaps in turn, in millimetres, none for a solid line. Pens can be
// compared.
type Pen struct {
	Width  float64
	Colour Colour
	Dash   Dash
}

// Dash names a pattern of a line.
type Dash uint8

// The patterns.
const (
	Solid Dash = iota
	Dashes
	DashDot
	Dots
)

// Pattern gives the lengths of strokes and gaps in turn, in millimetres.
func (d Dash) Pattern() []float64 {
	switch d {
	case Dashes:
		return []float64{12 * 0.18, 3 * 0.18}
	case DashDot:
		return []float64{24 * 0.18, 3 * 0.18, 0.5 * 0.18, 3 * 0.18} // of a thin line (ISO 128-2, from memory)
	case Dots:
		return []float64{0.35, 0.8}
	}
	return nil
}

// penFor gives the pen of a meaning; widths are those of ISO 128-2, of its group of
// thick lines of 0.35 mm for what is seen and cut and thin ones of 0.18 mm. What is
// drilled by, and what lies on surfaces, is 0.13 mm.
func penFor(m drawing.Meaning, dashed bool) Pen {
	p := Pen{Width: 0.18, Colour: black()}
	switch m {
	case drawing.Face, drawing.PanelPart, drawing.NichePart, drawing.Carcass, drawing.Plinth,
		drawing.DrawerPart, drawing.DrawerBottom, drawing.RunnerPart, drawing.HandlePart:
		p.Width = 0.35
	case drawing.HoleEdge, drawing.Register, drawing.CheckBar:
		p.Width = 0.25
	case drawing.HoleCross, drawing.CoverBand, drawing.OverlayBand, drawing.Covered:
		p.Width = 0.13
	case drawing.CentreLine:
		p.Dash, dashed = DashDot, false
	case drawing.Hidden:
		p.Dash = Dashes
	case drawing.Cut:
		p.Colour = grey(0.35)
	case drawing.Tint:
		p.Width, p.Colour = 0.13, white()
	case drawing.Grid:
		p.Width, p.Colour = 0.13, grey(0.8)
	case drawing.FindingMark:
		p.Width, p.Colour = 0.35, warning()
	}
	if dashed {
		p.Dash = Dashes
	}
	return p
}

// fillFor gives the surface of a filled rectangle.
func fillFor(m drawing.Meaning) Colour {
	switch m {
	case drawing.Carcass, drawing.Plinth, drawing.OverlayBand:
		return grey(0.9)
	case drawing.NichePart:
		return grey(0.82)
	case drawing.PanelPart:
		return grey(0.96)
	case drawing.DrawerBottom, drawing.HandlePart:
		return grey(0.75)
	case drawing.RunnerPart:
		return grey(0.85)
	case drawing.CoverBand, drawing.Covered:
		return grey(0.93)
	}
	return white()
}

func inkFor(m drawing.Meaning) Colour {
	switch m {
	case drawing.FindingMark:
		return warning()
	}
	return black()
}
