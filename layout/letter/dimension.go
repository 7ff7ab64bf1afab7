package letter

import (
	"cmp"
	"math"
	"slices"

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
	turned   bool    // the figure is read from the right
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
	if d.turned = p.style.Above && d.Vertical; d.Vertical && !d.turned {
		d.along, d.side = d.side, d.along
	}
}

// box is where the letters of the figure are with their middle at a place.
func (p *Picture) box(d *dimension, at Point) Box {
	return p.ink(d.corner(at), d.figure, d.size, d.bold, d.turned)
}

// corner is where the base line of the figure begins.
func (d *dimension) corner(at Point) Point {
	if d.turned {
		return Point{at.X + d.size/2, at.Y - d.width/2}
	}
	return Point{at.X - d.width/2, at.Y - d.size/2}
}

// writeDimensions draws dimensions. First all lines have their places, then the figures
// that have room between their ends, which others keep out of.
func (p *Picture) writeDimensions() {
	p.stick()
	for i := range p.dimensions {
		p.reserve(&p.dimensions[i])
	}
	var left []*dimension
	for i := range p.dimensions {
		if d := &p.dimensions[i]; !p.dimension(d, false) {
			left = append(left, d)
		}
	}
	if p.style.Above { // the longer ones first, as their figures are wider along the line
		slices.SortStableFunc(left, func(d, e *dimension) int { return cmp.Compare(e.b-e.a, d.b-d.a) })
	}
	for _, d := range left {
		if !p.dimension(d, true) {
			p.unwritten(d)
		}
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
	if p.style.Arrows && !p.headsInside(d) {
		out = 2 * p.style.Head
	}
	line := stroke{weight: firm, own: d.number}
	lo, hi := d.at(d.a-out, d.line-p.style.Half), d.at(d.b+out, d.line+p.style.Half)
	line.Box = Box{lo, hi}
	p.strokes.add(line)
	for _, e := range [][2]float64{{d.a, d.a0}, {d.b, d.b0}} {
		if s, ok := p.extension(d, e[0], e[1]); ok {
			p.strokes.add(strokeOf(s.From, s.To, extending))
		}
	}
}

// short is the figure of a dimension alone.
func (p *Picture) short(d *dimension) string { return d.Prefix + p.say.Figure(d.Value) }

// headsInside tells that arrows have room between the ends, and the figure too where
// it stands in a break of the line.
func (p *Picture) headsInside(d *dimension) bool {
	if p.style.Above {
		return d.b-d.a >= p.leastInside()
	}
	return d.b-d.a >= 2*(d.along+p.style.Gap+p.style.Head)
}

// dimension draws a dimension if there is a way to write its figure in one of its
// forms at its line, or beside that too: whole before short, large before small.
func (p *Picture) dimension(d *dimension, beside bool) bool {
	all := p.figures(d)
	if !beside && p.style.Above { // words have room beside
		all = all[:1]
	}
	for _, s := range all {
		for i, size := range p.metrics.Sizes(p.style.Figure) {
			if i > 0 && (p.style.Above || s == p.short(d) && !beside) {
				break // one that has no room at its line is better read beside it
			}
			p.letter(d, s, size)
			out := p.extended(d)
			if p.writeOnLine(d, &out) || beside && p.writeBeside(d, &out) {
				p.out.Dimensions = append(p.out.Dimensions, out)
				return true
			}
		}
	}
	return false
}

// extended is a dimension with nothing but its extension lines.
func (p *Picture) extended(d *dimension) Dimension {
	out := Dimension{Of: d.Tag, Mark: d.Dimension, Text: -1}
	for _, e := range [][2]float64{{d.a, d.a0}, {d.b, d.b0}} {
		if s, ok := p.extension(d, e[0], e[1]); ok {
			out.Strokes = append(out.Strokes, s)
		}
	}
	return out
}

// stretch adds a part of the dimension line.
func (d *dimension) stretch(out *Dimension, from, to float64) {
	if to > from {
		out.Strokes = append(out.Strokes, Stroke{d.at(from, d.line), d.at(to, d.line)})
	}
}

// writeOnLine writes a figure at its line, between the ends.
func (p *Picture) writeOnLine(d *dimension, out *Dimension) bool {
	c, ok := p.onLine(d)
	if !ok {
		return false
	}
	if p.style.Above {
		d.stretch(out, d.a, d.b)
	} else {
		gap := d.along + p.style.Gap
		d.stretch(out, d.a, c-gap)
		d.stretch(out, c+gap, d.b)
	}
	out.Text = p.putFigure(d, d.at(c, d.line+p.over(d)))
	p.heads(d, out, p.headsInside(d))
	return true
}

// writeBeside writes a figure, not in words, where it has no room between the ends.
func (p *Picture) writeBeside(d *dimension, out *Dimension) bool {
	if !p.style.Above && d.figure != p.short(d) {
		return false
	}
	at, ok := p.besideLine(d)
	if !ok {
		return false
	}
	d.stretch(out, d.a, d.b)
	for _, s := range at.lead {
		v := strokeOf(s.From, s.To, firm)
		v.own = d.number
		p.strokes.add(v)
	}
	out.Strokes = append(out.Strokes, at.lead...)
	out.Text = p.putFigure(d, at.at)
	p.heads(d, out, d.b-d.a >= p.leastInside())
	return true
}

// unwritten draws a dimension whose figure has no place at all: it is left out rather
// than written over another.
func (p *Picture) unwritten(d *dimension) {
	out := p.extended(d)
	d.stretch(&out, d.a, d.b)
	p.heads(d, &out, d.b-d.a >= p.leastInside())
	p.out.Dimensions = append(p.out.Dimensions, out)
	p.miss(d.Tag, p.short(d), NoRoom)
}

// leastInside is the least distance between whose ends two arrows have room.
func (p *Picture) leastInside() float64 { return 2.2 * p.style.Head }

// over is how far the middle of a figure stands from its line: above those across
// and left of upright ones, as they are read from the right; 0 in a break of it.
func (p *Picture) over(d *dimension) float64 {
	switch {
	case !p.style.Above:
		return 0
	case d.Vertical:
		return -d.side - p.style.Gap
	}
	return d.side + p.style.Gap
}

// figures are what can be written at a dimension: in words, where it has any, and
// its figure alone.
func (p *Picture) figures(d *dimension) []string {
	if d.Say.Empty() || d.Vertical && !p.style.Above { // words lying flat across their line would take the room of others
		return []string{p.short(d)}
	}
	return []string{p.say.Say(d.Say), p.short(d)}
}

func (p *Picture) putFigure(d *dimension, at Point) int {
	i := p.put(Text{Of: d.Tag, Mark: d.Dimension, Size: d.size, Bold: d.bold, Turned: d.turned}, d.corner(at), d.figure)
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

// onLine looks for a place of the figure above its line or in a break of it, from the
// middle of what is seen of it outwards, whole in the area: first where nothing runs
// through it.
func (p *Picture) onLine(d *dimension) (along float64, ok bool) {
	need := d.along + p.style.Gap
	switch {
	case p.style.Above:
		need = d.along + p.style.Gap/2
	case !p.style.Arrows:
		need = max(need, d.along+p.style.Head)
	}
	middle, across := (d.from+d.to)/2, d.line+p.over(d)
	for _, avoid := range []weight{extending, none} {
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
				b := p.box(d, d.at(c, across))
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

// place is where the middle of a figure can stand, and the strokes that lead to it from
// its dimension: none to one over its own line.
type place struct {
	at   Point
	lead []Stroke
}

// besideLine looks for a place of the figure outside of its ends or beside its
// line: near it where nothing runs through it, else where no other dimension does,
// else where it covers no text.
func (p *Picture) besideLine(d *dimension) (place, bool) {
	if at, ok := p.freePlace(d, 2, func(b Box) bool { return p.struck(d, b, extending) }); ok {
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

func (p *Picture) freePlace(d *dimension, far int, struck func(Box) bool) (place, bool) {
	for k := range far {
		for _, at := range p.places(d, k) {
			b := p.box(d, at.at)
			if !b.within(p.area) || p.taken.covers(b) || struck(b) {
				continue
			}
			if !slices.ContainsFunc(at.lead, func(s Stroke) bool { return p.astray(d, s) }) {
				return at, true
			}
		}
	}
	return place{}, false
}

// astray tells that a stroke to a figure would run through another, or along the line
// of another dimension, whose figure it would then be.
func (p *Picture) astray(d *dimension, s Stroke) bool {
	v := strokeOf(s.From, s.To, firm)
	through := false
	p.taken.near(v.Box, func(i int) bool {
		through = v.meets(p.taken.all[i])
		return !through
	})
	if through || v.slanted {
		return through
	}
	p.strokes.near(v.Box, func(i int) bool {
		if own := p.strokes.list[i].own; own != 0 && own != d.number {
			o := &p.dimensions[own-1]
			line := strokeOf(o.at(o.a, o.line), o.at(o.b, o.line), firm)
			through = o.Vertical == d.Vertical && line.touches(v.Box) &&
				(min(v.Hi.X, line.Hi.X) > max(v.Lo.X, line.Lo.X) || min(v.Hi.Y, line.Hi.Y) > max(v.Lo.Y, line.Lo.Y))
		}
		return !through
	})
	return through
}

// places are where a figure can stand that has no room between the ends, so many
// steps away. The dimension line goes on to one outside of the ends, so that nobody
// takes it for that of what lies there. Where figures stand above lines they stand
// first over the middle, past the ends of the extension lines and on the other side;
// then over the line that goes on, and where that would be another's at the end of a
// leader.
func (p *Picture) places(d *dimension, away int) []place {
	tail := p.style.Head + p.style.Gap + d.along
	if p.style.Arrows {
		tail += p.style.Head
	}
	out := tail + float64(away)*2*(d.along+p.style.Gap)
	side := d.side + p.style.Gap
	middle := (d.a + d.b) / 2
	near := func(across float64) place { return place{at: d.at(middle, across)} }
	after := func(across, reach float64) place {
		return place{d.at(d.b+out, across), []Stroke{{d.at(d.b, d.line), d.at(d.b+out+reach, d.line)}}}
	}
	before := func(across, reach float64) place {
		return place{d.at(d.a-out, across), []Stroke{{d.at(d.a, d.line), d.at(d.a-out-reach, d.line)}}}
	}
	if !p.style.Above {
		on := -d.along - p.style.Gap
		return []place{
			after(d.line, on), before(d.line, on),
			near(d.line + side), near(d.line - side),
			after(d.line+side, d.along), before(d.line-side, d.along),
			after(d.line-side, d.along), before(d.line+side, d.along),
		}
	}
	over := p.over(d)
	past := over + math.Copysign(p.style.Past-p.style.Gap/4, over)
	if d.figure != p.short(d) { // words, which are long: their line goes on under all of them
		return []place{after(d.line+over, d.along), before(d.line+over, d.along)}
	}
	all := []place{
		near(d.line + over), near(d.line - over), near(d.line + past), near(d.line - past),
		after(d.line+over, d.along), before(d.line+over, d.along),
	}
	// A leader goes to a line under the figure, which is nearer to it than other lines.
	under := p.style.Gap * 2
	slant := under + float64(away)*(d.along+p.style.Gap)
	for _, way := range []float64{-1, 1} {
		base := d.line + way*math.Copysign(under, over) // of the line under the figure
		across := base + math.Copysign(d.side+p.style.Gap/2, over)
		if way < 0 {
			base -= math.Copysign(2*d.side, over)
			across = base + math.Copysign(d.side+p.style.Gap/2, over)
		}
		for _, to := range []float64{1, -1} {
			from := middle + to*slant
			all = append(all, place{d.at(from+to*d.along, across), []Stroke{
				{d.at(middle, d.line), d.at(from, base)}, {d.at(from, base), d.at(from+to*2*d.along, base)},
			}})
		}
	}
	return all
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
