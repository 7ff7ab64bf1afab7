package screen

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

// measured is a dimension on its way to the screen: along is x of one that lies
// and y of one that stands, across the other.
type measured struct {
	m        *drawing.Dimension
	own      int     // its number, from 1
	across   float32 // where its line is
	from, to float32 // the ends of the line, from < to
	say      string
	letter   float32
	size     fyne.Size
	figure   box // where the figure stands; empty: it has none
}

// arm is how far a tick reaches from its point, room what a figure keeps from
// the ticks at both sides.
const arm, room = 4, 5

// dimensions draws dimensions with their figures lying flat in breaks of the
// lines (unidirectional dimensioning, allowed by ISO 129), ends marked by
// slanted strokes. Where a figure does not fit between the ends it stands beside
// them. First all lines have their places, then the figures those where the
// fewest lines are, then the lines are broken at their figures.
func (p *painter) dimensions(d *drawing.Drawing) {
	var all []measured
	for _, mark := range d.Marks {
		if m, ok := mark.(*drawing.Dimension); ok {
			all = append(all, p.measured(m, len(all)+1))
		}
	}
	for _, between := range []bool{true, false} {
		for i := range all {
			if d := &all[i]; d.fits() == between {
				p.placeFigure(d)
			}
		}
	}
	for i := range all {
		p.dimensionLine(&all[i])
	}
}

// measured draws the extension lines and ticks of a dimension, and remembers
// where its line will be.
func (p *painter) measured(m *drawing.Dimension, own int) measured {
	pen := p.Palette.TagPen(m.Tag)
	a, b := p.At(m.From), p.At(m.To)
	off := float32(m.Level) * p.levelStep(m.Vertical)
	d := measured{m: m, own: own, letter: p.text * 0.95, say: m.Prefix + p.say.Figure(m.Value)}
	d.size = p.measure.of(d.say, d.letter, m.Meaning == drawing.FindingMark)
	if m.Vertical {
		d.across, d.from, d.to = p.PX(m.Line)+off, min(a.Y, b.Y), max(a.Y, b.Y)
		p.extension(a.X, a.Y, d.across, a.Y, pen)
		p.extension(b.X, b.Y, d.across, b.Y, pen)
		p.tick(d.across, d.from, pen)
		p.tick(d.across, d.to, pen)
		p.mark(d.across, d.from, d.across, d.to, strong, own)
		return d
	}
	d.across, d.from, d.to = p.PY(m.Line)-off, min(a.X, b.X), max(a.X, b.X)
	p.extension(a.X, a.Y, a.X, d.across, pen)
	p.extension(b.X, b.Y, b.X, d.across, pen)
	p.tick(d.from, d.across, pen)
	p.tick(d.to, d.across, pen)
	p.mark(d.from, d.across, d.to, d.across, strong, own)
	return d
}

// need is the length of line in which the figure has room between the ticks.
func (d *measured) need() float32 {
	if d.m.Vertical {
		ink := inkOf(fyne.Position{}, d.size, d.letter)
		return ink.Y2 - ink.Y1 + 2*arm
	}
	return d.size.Width + 2*room
}

// fits tells that the figure has room between the ticks.
func (d *measured) fits() bool { return d.to-d.from >= d.need() }

// inFront tells that a dimension is a front's height that stands in the front.
func (p *painter) inFront(m *drawing.Dimension) (box, bool) {
	if m.Of.Kind != drawing.FrontHeight || m.Level != 0 {
		return box{}, false
	}
	face, ok := p.faces[m.Of.Place]
	return p.Rect(face), ok
}

// placeFigure gives the figure the first of its possible places where no text
// and no line is, or else the one where the fewest lines are.
func (p *painter) placeFigure(d *measured) {
	face, inside := p.inFront(d.m)
	seen := p.window()
	if inside {
		if d.across < seen.X1 || d.across > seen.X2 {
			return
		}
		face.X1, face.X2 = max(face.X1, seen.X1), min(face.X2, seen.X2)
	}
	if inside && (d.to-d.from < d.size.Height-4 || d.size.Width+4 > face.X2-face.X1) {
		return // the front is too low or too narrow for it
	}
	options := d.places(seen)
	if len(options) == 0 {
		return
	}
	if inside && !d.fits() {
		options = options[:2] // not over or under its front
	}
	least := 0
	var best fyne.Position
	found, ousting := false, false
	whole := boxOf(0, 0, p.Size.Width, p.Size.Height)
	var area box
	for i, at := range options {
		if inside { // inside its front
			at.X = max(min(at.X, face.X2-d.size.Width-3), face.X1+2)
			options[i] = at
		}
		b := paint.BoxAt(at, d.size)
		if i == 0 {
			area = b
		}
		area = boxOf(min(area.X1, b.X1), min(area.Y1, b.Y1), max(area.X2, b.X2), max(area.Y2, b.Y2))
	}
	l := p.placeIn(area)
	for _, at := range options {
		ink := inkOf(at, d.size, d.letter).Grown(1, 0)
		if !ink.Within(whole) || !l.free(ink) {
			continue // half a figure is worse than none
		}
		harm := l.harm(ink, d.own)
		if inside {
			for _, w := range p.wishes[d.m.Of.Place] {
				if w.Overlaps(ink) {
					harm += w.harm
				}
			}
		}
		ousts := inside && p.ousts(d.m.Of.Place, ink, d.letter)
		if ousts {
			harm += 200
		}
		if !found || harm < least {
			best, least, found, ousting = at, harm, true, ousts
		}
		if harm == 0 {
			break
		}
	}
	if !found || ousting {
		return
	}
	d.figure = paint.BoxAt(best, d.size)
	p.figures = append(p.figures, figure{d.m.Of, best, d.size})
	p.take(taken{of: d.m.Tag, say: d.say, at: best, size: d.size, letter: d.letter, colour: p.Palette.TagLetters(d.m.Tag), bold: d.m.Meaning == drawing.FindingMark, own: d.own})
}

// places are where a figure can stand, the best first: in its line, in the middle
// of what is seen of it or a little off that; or where it does not fit there
// beside the line's ends, and over and under it.
func (d *measured) places(seen box) []fyne.Position {
	var list []fyne.Position
	add := func(x, y float32, a drawing.Anchor) {
		list = append(list, anchored(fyne.NewPos(x, y), d.size, a))
	}
	from, to := max(d.from, seen.X1), min(d.to, seen.X2)
	if d.m.Vertical {
		from, to = max(d.from, seen.Y1), min(d.to, seen.Y2)
	}
	if !d.fits() {
		from, to = d.from, d.to
	}
	mid, play := (from+to)/2, (to-from-d.need())/2
	ink := inkOf(fyne.Position{}, d.size, d.letter)
	up := (ink.Y1 + ink.Y2 - d.size.Height) / 2 // from the middle of the line to that of the letters
	const steps = 4
	switch {
	case d.fits() && play < 0: // too little is seen of it
	case d.fits() && d.m.Vertical:
		for k := range 2*steps + 1 {
			move := play * float32(swing(k)) / steps
			add(d.across, mid-max(up-play, 0)+move, drawing.Anchor{X: 0.5, Y: 0.5})
		}
	case d.fits():
		for k := range 2*steps + 1 {
			add(mid+play*float32(swing(k))/steps, d.across, drawing.Anchor{X: 0.5, Y: 0.5})
		}
	case d.m.Vertical:
		add(d.across+arm+2, mid, drawing.Anchor{Y: 0.5})
		add(d.across-arm-2, mid, drawing.Anchor{X: 1, Y: 0.5})
		add(d.across, d.from-arm, drawing.Anchor{X: 0.5})
		add(d.across, d.to+arm-2, drawing.Anchor{X: 0.5, Y: 1})
	default:
		add(d.to+arm+4, d.across, drawing.Anchor{Y: 0.5})
		add(d.from-arm-4, d.across, drawing.Anchor{X: 1, Y: 0.5})
		add(mid, d.across+arm-3, drawing.Anchor{X: 0.5, Y: 1})
		add(mid, d.across-arm+1, drawing.Anchor{X: 0.5})
	}
	return list
}

// dimensionLine draws the line of a dimension with a break where its figure is.
func (p *painter) dimensionLine(d *measured) {
	pen := p.Palette.TagPen(d.m.Tag)
	piece := func(from, to float32) {
		switch {
		case to <= from:
		case d.m.Vertical:
			p.Line(d.across, from, d.across, to, pen.Line, pen.Width)
		default:
			p.Line(from, d.across, to, d.across, pen.Line, pen.Width)
		}
	}
	first, last := d.figure.Y1+1, d.figure.Y2-1
	beside := d.across < d.figure.X1-1 || d.across > d.figure.X2+1
	if !d.m.Vertical {
		const pad = 3
		first, last = d.figure.X1-pad, d.figure.X2+pad
		beside = d.across < d.figure.Y1 || d.across > d.figure.Y2
	}
	if d.figure == (box{}) || beside {
		piece(d.from, d.to)
		return
	}
	piece(d.from, min(first, d.to))
	piece(max(last, d.from), d.to)
	switch { // a figure beyond an end stands on the line drawn longer
	case !d.m.Vertical && first > d.to:
		piece(d.to, first)
	case !d.m.Vertical && last < d.from:
		piece(last, d.from)
	}
}

// extension draws the line from a measured point to its dimension line, with a
// small distance from the point and a little past the line.
func (p *painter) extension(x1, y1, x2, y2 float32, pen look.Pen) {
	const free, past = 3, 4
	switch {
	case x2-x1 > free:
		x1, x2 = x1+free, x2+past
	case x1-x2 > free:
		x1, x2 = x1-free, x2-past
	case y2-y1 > free:
		y1, y2 = y1+free, y2+past
	case y1-y2 > free:
		y1, y2 = y1-free, y2-past
	default:
		return
	}
	p.Line(x1, y1, x2, y2, pen.Line, pen.Width)
	p.mark(x1, y1, x2, y2, strong, 0)
}

// tick marks the end of a dimension line.
func (p *painter) tick(x, y float32, pen look.Pen) {
	const width = 1.4
	p.Line(x-arm, y+arm, x+arm, y-arm, pen.Line, width)
	p.mark(x-arm, y+arm, x+arm, y-arm, strong, 0)
}
