package ink

import (
	"math"

	"frontlay/layout/drawing"
	"frontlay/layout/wood"
)

// board paints what is seen of a board: in the tone of its material, with lines
// along its grain, and an edge that parts it from the one beside it.
func (w *writer) board(m *drawing.Rectangle, at placing) {
	t, ok := wood.Of(*m.Board, w.say)
	if !ok {
		t = wood.Front
		if m.Meaning == drawing.Carcass || m.Meaning == drawing.Plinth || m.Meaning == drawing.NichePart {
			t = wood.Carcass
		}
	}
	base := Colour{float64(t.Light>>16) / 255, float64(t.Light>>8&255) / 255, float64(t.Light&255) / 255}
	switch m.Meaning {
	case drawing.NichePart:
		base = base.towards(black(), 0.35) // what lies behind is in the shade
	case drawing.Plinth:
		base = base.towards(black(), 0.2) // as it stands back
	}
	lo, hi := at.at(m.Rect.Min), at.at(m.Rect.Max)
	w.Rect(nil, &base, lo, hi)
	if t.Figure > 0 && m.Board.Grain != "" && m.Meaning != drawing.NichePart {
		w.grain(Pen{Width: 0.13, Colour: base.towards(black(), 0.16*t.Figure)}, lo, hi, m.Board.Grain == "vertical")
	}
	w.Rect(&Pen{Width: 0.25, Colour: base.towards(black(), 0.7)}, nil, lo, hi)
}

// towards is a colour with a share of another in it.
func (c Colour) towards(d Colour, share float64) Colour {
	for i := range c {
		c[i] += share * (d[i] - c[i])
	}
	return c
}

// grain draws broken lines along a board's grain: so far apart, so long and with such
// gaps as comes by chance, the same each time.
func (w *writer) grain(p Pen, lo, hi Point, upright bool) {
	from, to, across, end := lo.X, hi.X, lo.Y, hi.Y
	if upright {
		from, to, across, end = lo.Y, hi.Y, lo.X, hi.X
	}
	if to-from > 1e5 || end-across > 1e5 {
		return // larger than any page
	}
	const edge = 0.6 // that grain keeps from the edges
	next := chance(uint32(math.Round(lo.X*16))*31 + uint32(math.Round(lo.Y*16)))
	for y := across + edge + next(); y < end-edge; y += 0.9 + 1.6*next() {
		for x := from - 40*next(); x < to-edge; {
			stop := x + 8 + 50*next()
			start, end := math.Max(x, from+edge), math.Min(stop, to-edge)
			a, b := Point{start, y}, Point{end, y}
			if upright {
				a, b = Point{y, start}, Point{y, end}
			}
			if start < end {
				w.Line(p, a, b)
			}
			x = stop + 2 + 14*next()
		}
	}
}

// chance gives figures from 0 to 1 that look random, the same for a seed (a linear
// congruential generator with the constants of Numerical Recipes, from memory).
func chance(seed uint32) func() float64 {
	return func() float64 {
		seed = seed*1664525 + 1013904223
		return float64(seed>>8) / (1 << 24)
	}
}
