package ink

import (
	"math"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// Sizes of dimensions on paper, in millimetres.
const (
	arrowLength = 3.0
	arrowHalf   = 0.395 // an arrow of 15°: 3·tan 7.5° (ISO 129-1, from memory)
	overshoot   = 1.5   // of extension lines past the dimension line
	figureGap   = 0.9   // around a figure
)

// dimension is a dimension on paper that waits for its turn. Along its own axis
// a is the lesser end and b the greater; a0 and b0 are where the measured points
// lie across it, line where the dimension line lies.
type dimension struct {
	text        string
	pen         Pen
	vertical    bool
	a, b        float64
	a0, b0      float64
	line        float64
	size        length.Length // of the figure
	along, side float64       // half of the figure's size along and across
}

// at gives a place on the page of one along and across the dimension.
func (d *dimension) at(along, across float64) Point {
	if d.vertical {
		return Point{across, along}
	}
	return Point{along, across}
}

func (w *writer) queue(m *drawing.Dimension, at placing) {
	p, q := at.at(m.From), at.at(m.To)
	on := at.at(plane.Point{X: m.Line, Y: m.Line})
	d := &dimension{
		text: m.Prefix + w.say.Figure(m.Value), pen: penFor(m.Meaning, false), vertical: m.Vertical,
		a: p.X, b: q.X, a0: p.Y, b0: q.Y, line: on.Y,
	}
	if m.Vertical {
		d.a, d.b, d.a0, d.b0, d.line = p.Y, q.Y, p.X, q.X, on.X
	}
	if d.b < d.a {
		d.a, d.b, d.a0, d.b0 = d.b, d.a, d.b0, d.a0
	}
	d.line += float64(m.Level) * drawing.DimensionStep(m.Vertical, w.say.Unit).MM()
	d.letter(lettering.Small)
	w.dimensions = append(w.dimensions, d)
	w.strokes.add(d.reach(2 * arrowLength))
}

// letter sets the figure's lettering height.
func (d *dimension) letter(size length.Length) {
	d.size = size
	d.along, d.side = lettering.Width(d.text, size, false).MM()/2, size.MM()/2
	if d.vertical {
		d.along, d.side = d.side, d.along
	}
}

// box is the area of the figure with its middle at a place.
func (d *dimension) box(p Point) box {
	return textBox(p, drawing.Anchor{X: 0.5, Y: 0.5}, d.size, false, d.text)
}

// dimension draws extension lines, the dimension line with a break for the
// figure, and arrows: inside where there is room, else from outside. A figure
// that has no place on its line stands beside it; where there is none at all it
// is left out rather than written over another.
func (w *writer) dimension(d *dimension) {
	w.extension(d.pen, d.at, d.a, d.a0, d.line)
	w.extension(d.pen, d.at, d.b, d.b0, d.line)
	for _, size := range []length.Length{lettering.Small, lettering.Tiny} {
		d.letter(size)
		if c, ok := w.onLine(d); ok {
			gap := d.along + figureGap
			w.Line(d.pen, d.at(d.a, d.line), d.at(c-gap, d.line))
			w.Line(d.pen, d.at(c+gap, d.line), d.at(d.b, d.line))
			w.arrows(d, d.b-d.a >= 2*(gap+arrowLength))
			w.figure(d, d.at(c, d.line))
			return
		}
		if p, ok := w.besideLine(d); ok {
			w.Line(d.pen, d.at(d.a, d.line), d.at(d.b, d.line))
			w.arrows(d, d.b-d.a >= 2.5*arrowLength)
			if from, to, ok := d.leader(p); ok {
				w.Line(d.pen, d.at(from, d.line), d.at(to, d.line))
			}
			pad := figureGap / 2
			paper, b := white(), d.box(p)
			w.Rect(nil, &paper, Point{b.lo.X - pad, b.lo.Y - pad}, Point{b.hi.X + pad, b.hi.Y + pad})
			w.figure(d, p)
			return
		}
	}
	w.Line(d.pen, d.at(d.a, d.line), d.at(d.b, d.line))
	w.arrows(d, d.b-d.a >= 2.5*arrowLength)
}

func (w *writer) figure(d *dimension, p Point) {
	b := d.box(p)
	w.taken.add(b)
	w.Text(b.lo, d.size, false, black(), d.text)
}

// onLine looks for a place of the figure in a break of its line, from the middle
// outwards.
func (w *writer) onLine(d *dimension) (along float64, ok bool) {
	need := d.along + figureGap
	middle := (d.a + d.b) / 2
	for step := 0.0; middle+step+need <= d.b; step += 2*d.along + figureGap {
		for _, c := range []float64{middle + step, middle - step} {
			if !w.covers(d.box(d.at(c, d.line))) {
				return c, true
			}
		}
	}
	return 0, false
}

// leader is the stretch by which the dimension line goes on to a figure outside of
// its ends, so that nobody takes it for that of what lies there: up to it on the
// line, or along all of it beside the line. False for a figure between the ends.
func (d *dimension) leader(p Point) (from, to float64, ok bool) {
	along, across := p.X, p.Y
	if d.vertical {
		along, across = p.Y, p.X
	}
	reach := d.along
	if across == d.line {
		reach = -d.along - figureGap
	}
	switch {
	case along > d.b:
		return d.b, along + reach, true
	case along < d.a:
		return along - reach, d.a, true
	}
	return 0, 0, false
}

// besideLine looks for a place of the figure outside its arrows or beside its
// line, if there is one where no other dimension's line strikes it through.
func (w *writer) besideLine(d *dimension) (Point, bool) {
	if p, ok := w.freePlace(d, w.struck); ok {
		return p, true
	}
	return w.freePlace(d, func(*dimension, box) bool { return false })
}

// struck tells that another dimension's line or arrows run through a figure.
func (w *writer) struck(d *dimension, figure box) bool {
	return w.strokes.first(figure, func(i int) bool {
		o := w.dimensions[i]
		return o != d && o.stroke().overlaps(figure)
	}) >= 0
}

// stroke is the area of the dimension line with its arrows, which stand outside
// where there is little room between the ends.
func (d *dimension) stroke() box {
	if d.b-d.a < 2*(d.along+figureGap+arrowLength) {
		return d.reach(2 * arrowLength)
	}
	return d.reach(0)
}

// reach is the area of the dimension line that goes past its ends by so much.
func (d *dimension) reach(out float64) box {
	return box{d.at(d.a-out, d.line-arrowHalf), d.at(d.b+out, d.line+arrowHalf)}
}

func (w *writer) freePlace(d *dimension, struck func(*dimension, box) bool) (Point, bool) {
	tail := 2*arrowLength + figureGap + d.along
	side := d.side + figureGap
	middle := (d.a + d.b) / 2
	for k := range 5 {
		out := tail + float64(k)*2*(d.along+figureGap)
		for _, p := range []Point{
			d.at(d.b+out, d.line), d.at(d.a-out, d.line),
			d.at(middle, d.line+side), d.at(middle, d.line-side),
			d.at(d.b+out, d.line+side), d.at(d.a-out, d.line-side),
			d.at(d.b+out, d.line-side), d.at(d.a-out, d.line+side),
		} {
			b := d.box(p)
			if w.covers(b) || struck(d, b) || !w.room.holds(b.lo) || !w.room.holds(b.hi) {
				continue
			}
			if from, to, ok := d.leader(p); ok && w.covers(box{d.at(from, d.line), d.at(to, d.line)}) {
				continue // it would run through another figure
			}
			return p, true
		}
	}
	return Point{}, false
}

// arrows draws the two heads, between the ends or from outside.
func (w *writer) arrows(d *dimension, inside bool) {
	way := 1.0
	if !inside {
		way = -1
		w.Line(d.pen, d.at(d.a, d.line), d.at(d.a-2*arrowLength, d.line))
		w.Line(d.pen, d.at(d.b, d.line), d.at(d.b+2*arrowLength, d.line))
	}
	w.arrow(d.at, d.a, d.line, way)
	w.arrow(d.at, d.b, d.line, -way)
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
	w.Triangle(black(), at(tip, line), at(tip+way*arrowLength, line-arrowHalf), at(tip+way*arrowLength, line+arrowHalf))
}
