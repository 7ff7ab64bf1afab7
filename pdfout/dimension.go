package pdfout

import (
	"math"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/layout/sheet/lettering"
)

// Sizes of dimensions on paper, in points.
var (
	arrowLength = pt(um(3000))
	arrowHalf   = arrowLength * math.Tan(7.5*math.Pi/180) // an arrow of 15°, ISO 129-1
	overshoot   = pt(um(1500))                            // of extension lines past the dimension line
	figureGap   = pt(um(900))                             // around a figure
)

// figure is a dimension's figure that waits for its turn, with the places where
// it can stand, the best first.
type figure struct {
	text   string
	places []point // of its middle
	knock  bool    // paint white under it
}

// dimension draws extension lines, the dimension line with a break for the
// figure, and arrows: inside where there is room, else from outside.
func (w *writer) dimension(m *drawing.Dimension, at placing) {
	p, q := at.at(m.From), at.at(m.To)
	on := at.at(plane.Point{X: m.Line, Y: m.Line})
	line := on.y
	if m.Vertical {
		line = on.x
	}
	line += float64(m.Level) * pt(sheet.DimensionStep(m.Vertical, w.say.Unit))
	// Along the dimension's own axis: a is the lesser end, b the greater; a0 and
	// b0 are where their points lie across it.
	a, b, a0, b0 := p.x, q.x, p.y, q.y
	if m.Vertical {
		a, b, a0, b0 = p.y, q.y, p.x, q.x
	}
	if b < a {
		a, b, a0, b0 = b, a, b0, a0
	}
	at2 := func(along, across float64) point {
		if m.Vertical {
			return point{across, along}
		}
		return point{along, across}
	}
	w.use(penFor(m.Meaning, false))
	w.extension(at2, a, a0, line)
	w.extension(at2, b, b0, line)

	s := m.Prefix + w.say.Figure(m.Value)
	wide, high := pt(lettering.Width(s, lettering.Small, false)), pt(lettering.Small)
	need := wide + 2*figureGap
	if m.Vertical {
		need = high + 2*figureGap
	}
	middle := (a + b) / 2
	inside := b-a >= need
	arrowsInside := b-a >= 2.5*arrowLength && (!inside || b-a >= need+2*arrowLength)
	switch {
	case inside:
		w.line(at2(a, line), at2(middle-need/2, line))
		w.line(at2(middle+need/2, line), at2(b, line))
	default:
		w.line(at2(a, line), at2(b, line))
	}
	if arrowsInside {
		w.arrow(at2, a, line, 1)
		w.arrow(at2, b, line, -1)
	} else {
		w.arrow(at2, a, line, -1)
		w.arrow(at2, b, line, 1)
		w.line(at2(a, line), at2(a-2*arrowLength, line))
		w.line(at2(b, line), at2(b+2*arrowLength, line))
	}
	f := figure{text: s, places: []point{at2(middle, line)}}
	if !inside {
		f.knock = true
		f.places = outside(at2, a, b, line, wide, high, m.Vertical)
	}
	w.figures = append(w.figures, f)
}

// outside lists where a figure can stand that has no room between its arrows.
func outside(at func(along, across float64) point, a, b, line, wide, high float64, vertical bool) []point {
	along, across := wide/2, high/2
	if vertical {
		along, across = high/2, wide/2
	}
	tail := 2*arrowLength + figureGap + along
	side := across + figureGap
	middle := (a + b) / 2
	return []point{
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
		w.rect(point{b.lo.x - pad, b.lo.y - pad}, point{b.hi.x + pad, b.hi.y + pad}, &paper, false)
	}
	w.taken = append(w.taken, b)
	w.text(b.lo, lettering.Small, false, f.text, black)
}

// extension draws the line from a measured point to past the dimension line,
// with a small gap at the point.
func (w *writer) extension(at func(along, across float64) point, along, from, line float64) {
	if math.Abs(line-from) < overshoot {
		return
	}
	way := math.Copysign(1, line-from)
	w.line(at(along, from+way*figureGap), at(along, line+way*overshoot))
}

// arrow draws a head at one end; way is 1 where its body is on the greater side.
func (w *writer) arrow(at func(along, across float64) point, tip, line, way float64) {
	w.triangle(at(tip, line), at(tip+way*arrowLength, line-arrowHalf), at(tip+way*arrowLength, line+arrowHalf), black)
}
