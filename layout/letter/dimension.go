package letter

import (
	"math"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
)

// dimension is a dimension that waits for its turn. Along its own axis a is the
// lesser end and b the greater; a0 and b0 are where the measured points lie across
// it, line where the dimension line lies.
type dimension struct {
	*drawing.Dimension
	number   int // from 1
	figure   string
	bold     bool
	a, b     float64
	a0, b0   float64
	line     float64
	size     float64
	width    float64
	along    float64 // half of the figure's size along
	side     float64 // and across the dimension
	step     float64
	from, to float64 // the part of a to b that is seen
}

// at gives a place of the picture of one along and across the dimension.
func (d *dimension) at(along, across float64) Point {
	if d.Vertical {
		return Point{across, along}
	}
	return Point{along, across}
}

func (p *Picture) measure(m *drawing.Dimension, to Placing) {
	q, r := to.At(m.From), to.At(m.To)
	on := to.At(plane.Point{X: m.Line, Y: m.Line})
	d := dimension{Dimension: m, number: len(p.dimensions) + 1, bold: p.Strong != nil && p.Strong(m.Of), a: q.X, b: r.X, a0: q.Y, b0: r.Y, line: on.Y, step: p.style.StepY}
	if m.Vertical {
		d.a, d.b, d.a0, d.b0, d.line, d.step = q.Y, r.Y, q.X, r.X, on.X, p.style.StepX
	}
	if d.b < d.a {
		d.a, d.b, d.a0, d.b0 = d.b, d.a, d.b0, d.a0
	}
	d.line += float64(m.Level) * d.step
	p.dimensions = append(p.dimensions, d)
}

// letter sets what is written at a dimension, and how large.
func (p *Picture) letter(d *dimension, s string, size float64) {
	d.figure, d.size = s, size
	d.width = p.metrics.Width(s, size, d.bold)
	d.along, d.side = d.width/2, size/2
	if d.Vertical {
		d.along, d.side = d.side, d.along
	}
}

// box is where the letters of the figure are with their middle at a place.
func (p *Picture) box(d *dimension, at Point) Box {
	return p.ink(d.corner(at), d.figure, d.size, d.bold)
}

func (d *dimension) corner(at Point) Point { return Point{at.X - d.width/2, at.Y - d.size/2} }

// writeDimensions draws dimensions with their figures lying flat in breaks of the
// lines (unidirectional dimensioning, allowed by ISO 129). First all lines have
// their places, then figures keep out of those of others.
func (p *Picture) writeDimensions() {
	p.stick()
	for i := range p.dimensions {
		p.reserve(&p.dimensions[i])
	}
	for i := range p.dimensions {
		p.dimension(&p.dimensions[i])
	}
}

// stick moves dimensions beside the run that would be out of sight to the edge of
// the area, each side's all together.
func (p *Picture) stick() {
	for i := range p.dimensions {
		d := &p.dimensions[i]
		d.from, d.to = d.a, d.b
	}
	if p.style.Edge <= 0 {
		return
	}
	var most [2][2]float64 // how far those upright or across, below or above, must come in
	side := func(d *dimension) (upright, above int) {
		if d.Vertical {
			upright = 1
		}
		if d.Level > 0 {
			above = 1
		}
		return upright, above
	}
	for i := range p.dimensions {
		d := &p.dimensions[i]
		lo, hi := p.area.Lo.Y, p.area.Hi.Y
		from, to := p.area.Lo.X, p.area.Hi.X
		if d.Vertical {
			lo, hi, from, to = from, to, lo, hi
		}
		if mid := (max(d.a, from) + min(d.b, to)) / 2; mid > from && mid < to {
			d.from, d.to = max(d.a, from), min(d.b, to)
		}
		u, s := side(d)
		switch {
		case d.Level < 0:
			most[u][s] = max(most[u][s], lo+p.style.Edge-d.line)
		case d.Level > 0:
			most[u][s] = max(most[u][s], d.line-(hi-p.style.Edge))
		}
	}
	for i := range p.dimensions {
		d := &p.dimensions[i]
		u, s := side(d)
		switch {
		case d.Level < 0:
			d.line += most[u][s]
		case d.Level > 0:
			d.line -= most[u][s]
		}
	}
}

// reserve remembers the lines of a dimension, so that figures of others keep out
// of them.
func (p *Picture) reserve(d *dimension) {
	size := p.metrics.Sizes(p.style.Figure)[0]
	p.letter(d, p.short(d), size)
	out := p.style.Half
	if p.style.Arrows && d.b-d.a < 2*(d.along+p.style.Gap+p.style.Head) {
		out = 2 * p.style.Head
	}
	line := stroke{weight: firm, own: d.number}
	lo, hi := d.at(d.a-out, d.line-p.style.Half), d.at(d.b+out, d.line+p.style.Half)
	line.Box = Box{lo, hi}
	p.strokes.add(line)
	for _, e := range [][2]float64{{d.a, d.a0}, {d.b, d.b0}} {
		if s, ok := p.extension(d, e[0], e[1]); ok {
			p.strokes.add(strokeOf(s.From, s.To, firm))
		}
	}
}

// short is the figure of a dimension alone.
func (p *Picture) short(d *dimension) string { return d.Prefix + p.say.Figure(d.Value) }

// dimension gives a dimension its figure: in a break of its line, or beside it
// where it does not fit between the ends. Where there is no place at all the figure
// is left out rather than written over another.
func (p *Picture) dimension(d *dimension) {
	out := Dimension{Of: d.Tag, Mark: d.Dimension, Text: -1}
	for _, e := range [][2]float64{{d.a, d.a0}, {d.b, d.b0}} {
		if s, ok := p.extension(d, e[0], e[1]); ok {
			out.Strokes = append(out.Strokes, s)
		}
	}
	line := func(from, to float64) {
		if to > from {
			out.Strokes = append(out.Strokes, Stroke{d.at(from, d.line), d.at(to, d.line)})
		}
	}
	inside := d.b-d.a >= 2.5*p.style.Head
	done := false
	for _, s := range p.figures(d) {
		for _, size := range p.metrics.Sizes(p.style.Figure) {
			p.letter(d, s, size)
			if c, ok := p.onLine(d); ok {
				gap := d.along + p.style.Gap
				line(d.a, c-gap)
				line(c+gap, d.b)
				inside = d.b-d.a >= 2*(gap+p.style.Head)
				out.Text = p.putFigure(d, d.at(c, d.line))
				done = true
			} else if s == p.short(d) {
				if at, ok := p.besideLine(d); ok {
					line(d.a, d.b)
					if from, to, ok := p.leader(d, at); ok {
						line(from, to)
					}
					out.Text = p.putFigure(d, at)
					done = true
				}
			}
			if done {
				break
			}
		}
		if done {
			break
		}
	}
	if !done {
		line(d.a, d.b)
		p.miss(d.Tag, p.short(d), NoRoom)
	}
	p.heads(d, &out, inside)
	p.out.Dimensions = append(p.out.Dimensions, out)
}

// figures are what can be written at a dimension: in words, where it has any, and
// its figure alone.
func (p *Picture) figures(d *dimension) []string {
	if d.Say.Empty() {
		return []string{p.short(d)}
	}
	return []string{p.say.Say(d.Say), p.short(d)}
}

func (p *Picture) putFigure(d *dimension, at Point) int {
	i := p.put(Text{Of: d.Tag, Mark: d.Dimension, Size: d.size, Bold: d.bold}, d.corner(at), d.figure)
	p.owners[i] = d.number
	return i
}

// heads adds the arrows, which stand outside where there is no room inside, or
// the ticks.
func (p *Picture) heads(d *dimension, out *Dimension, inside bool) {
	back := p.style.Head
	if p.style.Arrows && !inside {
		back = -back
		out.Strokes = append(out.Strokes,
			Stroke{d.at(d.a, d.line), d.at(d.a+2*back, d.line)}, Stroke{d.at(d.b, d.line), d.at(d.b-2*back, d.line)})
	}
	out.Heads = [2]Head{
		{d.at(d.a, d.line), d.at(d.a+back, d.line)}, {d.at(d.b, d.line), d.at(d.b-back, d.line)},
	}
}

// extension is the line from a measured point to past the dimension line, with a
// small gap at the point; false where the point is as good as on the line.
func (p *Picture) extension(d *dimension, along, from float64) (Stroke, bool) {
	if math.Abs(d.line-from) < p.style.Past {
		return Stroke{}, false
	}
	way := math.Copysign(1, d.line-from)
	return Stroke{d.at(along, from+way*p.style.Gap), d.at(along, d.line+way*p.style.Past)}, true
}

// tries is how many places a figure is tried at each way of the middle of its line.
const tries = 12

// onLine looks for a place of the figure in a break of its line, from the middle of
// what is seen of it outwards, whole in the area: first where nothing runs through
// it.
func (p *Picture) onLine(d *dimension) (along float64, ok bool) {
	need := d.along + p.style.Gap
	if !p.style.Arrows {
		need = max(need, d.along+p.style.Head)
	}
	middle := (d.from + d.to) / 2
	for _, avoid := range []weight{firm, none} {
		step := d.along
		if avoid == none {
			step = 2*d.along + p.style.Gap
		}
		for k := range tries {
			off := float64(k) * step
			if middle+off+need > d.to && middle-off-need < d.from {
				break
			}
			for _, c := range []float64{middle + off, middle - off} {
				b := p.box(d, d.at(c, d.line))
				if c+need <= d.to && c-need >= d.from && b.within(p.area) && !p.taken.covers(b) && (avoid == none || !p.struck(d, b, avoid)) {
					return c, true
				}
			}
		}
	}
	return 0, false
}

// struck tells that a line of a weight or more that is not the dimension's own runs
// through a box.
func (p *Picture) struck(d *dimension, b Box, least weight) bool {
	found := false
	p.strokes.near(b, func(i int) bool {
		s := &p.strokes.list[i]
		found = s.weight >= least && s.own != d.number && s.meets(b)
		return !found
	})
	return found
}

// leader is the stretch by which the dimension line goes on to a figure outside of
// its ends, so that nobody takes it for that of what lies there: up to it on the
// line, or along all of it beside the line. False for a figure between the ends.
func (p *Picture) leader(d *dimension, at Point) (from, to float64, ok bool) {
	along, across := at.X, at.Y
	if d.Vertical {
		along, across = at.Y, at.X
	}
	reach := d.along
	if across == d.line {
		reach = -d.along - p.style.Gap
	}
	switch {
	case along > d.b:
		return d.b, along + reach, true
	case along < d.a:
		return along - reach, d.a, true
	}
	return 0, 0, false
}

// besideLine looks for a place of the figure outside of its ends or beside its
// line: near it where nothing runs through it, else where no other dimension does,
// else where it covers no text.
func (p *Picture) besideLine(d *dimension) (Point, bool) {
	if at, ok := p.freePlace(d, 2, func(b Box) bool { return p.struck(d, b, firm) }); ok {
		return at, true
	}
	dimensions := func(b Box) bool {
		found := false
		p.strokes.near(b, func(i int) bool {
			s := &p.strokes.list[i]
			found = s.own != 0 && s.own != d.number && s.meets(b)
			return !found
		})
		return found
	}
	if at, ok := p.freePlace(d, 5, dimensions); ok {
		return at, true
	}
	return p.freePlace(d, 5, func(Box) bool { return false })
}

func (p *Picture) freePlace(d *dimension, far int, struck func(Box) bool) (Point, bool) {
	tail := p.style.Head + p.style.Gap + d.along
	if p.style.Arrows {
		tail += p.style.Head
	}
	side := d.side + p.style.Gap
	middle := (d.a + d.b) / 2
	for k := range far {
		out := tail + float64(k)*2*(d.along+p.style.Gap)
		for _, at := range []Point{
			d.at(d.b+out, d.line), d.at(d.a-out, d.line),
			d.at(middle, d.line+side), d.at(middle, d.line-side),
			d.at(d.b+out, d.line+side), d.at(d.a-out, d.line-side),
			d.at(d.b+out, d.line-side), d.at(d.a-out, d.line+side),
		} {
			b := p.box(d, at)
			if !b.within(p.area) || p.taken.covers(b) || struck(b) {
				continue
			}
			if from, to, ok := p.leader(d, at); ok && p.taken.covers(Box{d.at(from, d.line), d.at(to, d.line)}) {
				continue // it would run through another figure
			}
			return at, true
		}
	}
	return Point{}, false
}

// insideDimension adds the dimension line of a front's height through its figure.
func (p *Picture) insideDimension(c *caption, figure int) {
	t := &p.out.Texts[figure]
	x := (t.Box.Lo.X + t.Box.Hi.X) / 2
	low, high := t.Box.Lo.Y-p.style.Gap, t.Box.Hi.Y+p.style.Gap
	out := Dimension{Of: t.Of, Mark: c.Caption, Text: figure, Inside: true}
	if high > c.face.Hi.Y-p.style.Head || low < c.face.Lo.Y+p.style.Head {
		return
	}
	out.Strokes = []Stroke{{Point{x, c.face.Lo.Y}, Point{x, low}}, {Point{x, high}, Point{x, c.face.Hi.Y}}}
	out.Heads = [2]Head{
		{Point{x, c.face.Lo.Y}, Point{x, c.face.Lo.Y + p.style.Head}}, {Point{x, c.face.Hi.Y}, Point{x, c.face.Hi.Y - p.style.Head}},
	}
	if p.style.Lines {
		for _, s := range out.Strokes {
			v := strokeOf(s.From, s.To, firm)
			p.strokes.add(v)
		}
	}
	p.out.Dimensions = append(p.out.Dimensions, out)
}
