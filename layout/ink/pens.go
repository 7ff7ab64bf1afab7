package ink

import (
	"frontlay/layout/drawing"
)

// Colour is red, green and blue from 0 to 1.
type Colour [3]float64

// Colours on paper. All but findings are greys, so that nothing is lost on a
// black-and-white printer.
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
)

// Pattern gives the lengths of strokes and gaps in turn, in millimetres.
func (d Dash) Pattern() []float64 {
	switch d {
	case Dashes:
		return []float64{2, 1}
	case DashDot:
		return []float64{5, 1, 0.35, 1}
	}
	return nil
}

// penFor gives the pen of a meaning; widths are those of ISO 128-2.
func penFor(m drawing.Meaning, dashed bool) Pen {
	p := Pen{Width: 0.18, Colour: black()}
	switch m {
	case drawing.Face, drawing.PanelPart:
		p.Width = 0.50
	case drawing.Carcass, drawing.DrawerBottom:
		p.Width = 0.35
	case drawing.NichePart, drawing.DrawerPart, drawing.RunnerPart, drawing.HoleEdge, drawing.Register, drawing.CheckBar:
		p.Width = 0.25
	case drawing.HoleCross, drawing.CoverBand:
		p.Width = 0.13
	case drawing.CentreLine:
		p.Width, p.Dash = 0.13, DashDot
	case drawing.Hidden:
		p.Dash = Dashes
	case drawing.Cut:
		p.Colour = grey(0.35)
	case drawing.Grid:
		p.Width, p.Colour = 0.13, grey(0.8)
	case drawing.Shortfall:
		p.Colour = warning()
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
	case drawing.Carcass:
		return grey(0.9)
	case drawing.NichePart:
		return grey(0.82)
	case drawing.PanelPart:
		return grey(0.96)
	case drawing.DrawerBottom:
		return grey(0.75)
	case drawing.RunnerPart:
		return grey(0.85)
	case drawing.CoverBand:
		return grey(0.93)
	}
	return white()
}

func inkFor(m drawing.Meaning) Colour {
	switch m {
	case drawing.FindingMark, drawing.Shortfall:
		return warning()
	}
	return black()
}
