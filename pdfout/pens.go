package pdfout

import (
	"frontlay/layout/drawing"
	"frontlay/model/length"
)

// colour is red, green and blue from 0 to 1.
type colour [3]float64

// Colours on paper. All but findings are greys, so that nothing is lost on a
// black-and-white printer.
var (
	black = colour{0, 0, 0}
	white = colour{1, 1, 1}
)

func grey(v float64) colour { return colour{v, v, v} }

// warning is a dark red that is as dark as black print on a grey printer.
func warning() colour { return colour{0.7, 0, 0} }

type dash uint8

const (
	solid dash = iota
	dashes
	dashDot
)

func (d dash) pattern() string {
	switch d {
	case dashes:
		return "[5.6 2.8] 0 d"
	case dashDot:
		return "[14 2.8 1 2.8] 0 d"
	}
	return "[] 0 d"
}

// pen is a line's width, colour and pattern. It can be compared.
type pen struct {
	width  length.Length
	colour colour
	dash   dash
}

func um(v int64) length.Length { return length.Length(v) * length.Micrometre }

// penFor gives the pen of a meaning; widths are those of ISO 128-2.
func penFor(m drawing.Meaning, dashed bool) pen {
	p := pen{width: um(180), colour: black}
	switch m {
	case drawing.Face, drawing.PanelPart:
		p.width = um(500)
	case drawing.Carcass, drawing.DrawerBottom:
		p.width = um(350)
	case drawing.NichePart, drawing.DrawerPart, drawing.RunnerPart, drawing.HoleEdge, drawing.Register, drawing.CheckBar:
		p.width = um(250)
	case drawing.HoleCross, drawing.CoverBand:
		p.width = um(130)
	case drawing.CentreLine:
		p.width, p.dash = um(130), dashDot
	case drawing.Hidden:
		p.dash = dashes
	case drawing.Cut:
		p.colour = grey(0.35)
	case drawing.Grid:
		p.width, p.colour = um(130), grey(0.8)
	case drawing.Shortfall:
		p.colour = warning()
	case drawing.FindingMark:
		p.width, p.colour = um(350), warning()
	}
	if dashed {
		p.dash = dashes
	}
	return p
}

// fillFor gives the surface of a filled rectangle.
func fillFor(m drawing.Meaning) colour {
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
	return white
}

func inkFor(m drawing.Meaning) colour {
	switch m {
	case drawing.FindingMark, drawing.Shortfall:
		return warning()
	}
	return black
}
