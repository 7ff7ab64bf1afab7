package ink

import (
	"math"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/layout/sheet/lettering"
)

// Sizes of dimensions on paper, in millimetres.
const (
	arrowLength = 3.0
	arrowHalf   = 0.395 // an arrow of 15°: 3·tan 7.5° (ISO 129-1, from memory)
	overshoot   = 1.5   // of extension lines past the dimension line
	figureGap   = 0.9   // around a figure
)

// figure is a dimension's figure that waits for its turn, with the places where
// it can stand, the best first.
type figure struct {
	text   string
	places []Point // of its middle
	knock  bool    // paint white under it
}

// dimension draws extension lines, the dimension line with a break for the
// figure, and arrows: inside where there is room, else from outside.
func (w *writer) dimension(m *drawing.Dimension, at placing) {
	p, q := at.at(m.From), at.at(m.To)
	on := at.at(plane.Point{X: m.Line, Y: m.Line})
	line := on.Y
	if m.Vertical {
		line = on.X
	}
	line += float64(m.Level) * sheet.DimensionStep(m.Vertical, w.say.Unit).MM()
	// Along the dimension's own axis: a is the lesser end, b the greater; a0 and
	// b0 are where their points lie across it.
	a, b, a0, b0 := p.X, q.X, p.Y, q.Y
	if m.Vertical {
		a, b, a0, b0 = p.Y, q.Y, p.X, q.X
	}
	if b < a {
		a, b, a0, b0 = b, a, b0, a0
	}
	at2 := func(along, across float64) Point {
		if m.Vertical {
			return Point{across, along}
		}
		return Point{along, across}
	}
	pen := penFor(m.Meaning, false)
	w.extension(pen, at2, a, a0, line)
	w.extension(pen, at2, b, b0, line)

	s := m.Prefix + w.say.Figure(m.Value)
	wide, high := lettering.Width(s, lettering.Small, false).MM(), lettering.Small.MM()
	need := wide + 2*figureGap
	if m.Vertical {
		need = high + 2*figureGap
	}
	middle := (a + b) / 2
	inside := b-a >= need
	arrowsInside := b-a >= 2.5*arrowLength && (!inside || b-a >= need+2*arrowLength)
	switch {
	case inside:
		w.Line(pen, at2(a, line), at2(middle-need/2, line))
		w.Line(pen, at2(middle+need/2, line), at2(b, line))
	default:
		w.Line(pen, at2(a, line), at2(b, line))
	}
	if arrowsInside {
		w.arrow(at2, a, line, 1)
		w.arrow(at2, b, line, -1)
	} else {
		w.arrow(at2, a, line, -1)
		w.arrow(at2, b, line, 1)
		w.Line(pen, at2(a, line), at2(a-2*arrowLength, line))
		w.Line(pen, at2(b, line), at2(b+2*arrowLength, line))
	}
	f := figure{text: s, places: []Point{at2(middle, line)}}
	if !inside {
		f.knock = true
		f.places = outside(at2, a, b, line, wide, high, m.Vertical)
	}
	w.figures = append(w.figures, f)
}

// outside lists where a figure can stand that has no room between its arrows.
func outside(at func(along, across float64) Point, a, b, line, wide, high float64, vertical bool) []Point {
	along, across := wide/2, high/2
	if vertical {
		along, across = high/2, wide/2
	}
	tail := 2*arrowLength + figureGap + along
	side := across + figureGap
	middle := (a + b) / 2
	return []Point{
		at(b+tail, line), at(a-tail, line),
		at(middle, line+side), at(middle, line-side),
		at(b+tail+2*along, line), at(a-tail-2*along, line),
		at(b+tail, line+side), at(a-tail, line-side),
		at(b+tail, line-side), at(a-tail, line+side),
	}
}

// figure writes a figure at the first of its places that is free.
func (w *writer) figure(f figure) {
	b := textBox(f.places[0], drawing.MiddleCentre, lettering.Small, false, f.text)
	for _, p := range f.places {
		c := textBox(p, drawing.MiddleCentre, lettering.Small, false, f.text)
		if !w.covers(c) {
			b = c
			break
		}
	}
	if f.knock {
		pad := figureGap / 2
		paper := white
		w.Rect(nil, &paper, Point{b.lo.X - pad, b.lo.Y - pad}, Point{b.hi.X + pad, b.hi.Y + pad})
	}
	w.taken = append(w.taken, b)
	w.Text(b.lo, lettering.Small, false, black, f.text)
}

// extension draws the line from a measured point to past the dimension line,
// with a small gap at the point.
func (w *writer) extension(pen Pen, at func(along, across float64) Point, along, from, line float64) {
	if math.Abs(line-from) < overshoot {
		return
	}
	way := math.Copysign(1, line-from)
	w.Line(pen, at(along, from+way*figureGap), at(along, line+way*overshoot))
}

// arrow draws a head at one end; way is 1 where its body is on the greater side.
func (w *writer) arrow(at func(along, across float64) Point, tip, line, way float64) {
	w.Triangle(black, at(tip, line), at(tip+way*arrowLength, line-arrowHalf), at(tip+way*arrowLength, line+arrowHalf))
}
