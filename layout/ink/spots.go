package ink

import (
	"math"

	"frontlay/layout/drawing"
	"frontlay/layout/mark"
)

// leastSpot is how large the mark of a finding is at least, in millimetres.
const leastSpot = 1.6

// spot draws a place that a finding speaks of. An error's lines are solid and its
// bands slanted, a warning's dashed and upright, others dotted and empty.
func (w *writer) spot(m *drawing.Spot, at placing) {
	p := penFor(m.Meaning, false)
	if m.Chosen {
		p.Width *= 1.5
	}
	switch m.Severity {
	case drawing.OfWarning:
		p.Dash = Dashes
	case drawing.OfAdvice, drawing.OfAccepted:
		p.Dash = Dots
	}
	lo, hi := at.at(m.Rect.Min), at.at(m.Rect.Max)
	switch m.Shape {
	case mark.Band, mark.Gap:
		lo, hi = wider(lo, hi)
		if m.Shape == mark.Band {
			w.stripes(m.Severity, lo, hi)
		}
		w.Rect(&p, nil, lo, hi)
	case mark.Ring:
		w.Circle(p, Point{(lo.X + hi.X) / 2, (lo.Y + hi.Y) / 2}, math.Max((hi.X-lo.X)/2, (hi.Y-lo.Y)/2)+leastSpot/2)
	case mark.Outline:
		w.Rect(&p, nil, lo, hi)
	case mark.Cross:
		w.Rect(&p, nil, lo, hi)
		w.Line(p, lo, hi)
		w.Line(p, Point{lo.X, hi.Y}, Point{hi.X, lo.Y})
	case mark.Edge, mark.Reach:
		w.Line(p, lo, hi)
		if m.Shape == mark.Reach {
			w.stops(p.Width, p.Colour, lo, hi)
		}
	}
}

// wider gives a band that is too thin to be seen its least width, about the same
// middle.
func wider(lo, hi Point) (Point, Point) {
	if less := (leastSpot - (hi.X - lo.X)) / 2; less > 0 {
		lo.X, hi.X = lo.X-less, hi.X+less
	}
	if less := (leastSpot - (hi.Y - lo.Y)) / 2; less > 0 {
		lo.Y, hi.Y = lo.Y-less, hi.Y+less
	}
	return lo, hi
}

// stripes fills a band as its severity is.
func (w *writer) stripes(s drawing.Severity, lo, hi Point) {
	p := Pen{Width: 0.35, Colour: warning()}
	const step = 1.2
	switch s {
	case drawing.OfWarning:
		if hi.X-lo.X > 1e5 {
			return
		}
		for x := lo.X + step/2; x < hi.X; x += step {
			w.Line(p, Point{x, lo.Y}, Point{x, hi.Y})
		}
	case drawing.OfAdvice, drawing.OfAccepted:
	default:
		w.slanted(p, lo, hi, step*math.Sqrt2, false)
	}
}

// stops draws the bars at both ends of a way along an axis.
func (w *writer) stops(width float64, c Colour, lo, hi Point) {
	p := Pen{Width: width, Colour: c}
	for _, end := range [2]Point{lo, hi} {
		a, b := end, end
		if hi.X-lo.X > hi.Y-lo.Y {
			a.Y, b.Y = a.Y-leastSpot, b.Y+leastSpot
		} else {
			a.X, b.X = a.X-leastSpot, b.X+leastSpot
		}
		w.Line(p, a, b)
	}
}
