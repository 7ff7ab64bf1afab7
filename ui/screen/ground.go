package screen

import (
	"image/color"

	"frontlay/layout/drawing"
	"frontlay/ui/paint"
)

// box is a rectangle on the screen.
type box = paint.Box

// boxOf is a box by its corners.
func boxOf(x1, y1, x2, y2 float32) box { return box{X1: x1, Y1: y1, X2: x2, Y2: y2} }

// weight is how much a line of the picture is missed where a text's ground
// covers it.
type weight int

const (
	quiet  weight = iota // the grid: texts need not keep away from it
	faint                // edges behind a front, which are dashed
	weak                 // drawer bottoms, runners, hatches, frames of findings
	strong               // outlines, holes, dimension lines
	none                 // more than any line has
)

// weightOf is the weight of a line of a meaning.
func weightOf(m drawing.Meaning) weight {
	switch m {
	case drawing.Grid, drawing.Grip:
		return quiet
	case drawing.Hidden, drawing.DrawerPart, drawing.HoleCross, drawing.CentreLine:
		return faint
	case drawing.DrawerBottom, drawing.RunnerPart, drawing.CoverBand, drawing.FindingMark:
		return weak
	default:
		return strong
	}
}

// stroke is something of the picture that should not run through letters: a
// line, or everything in its box where it is small or a hatch. A dimension's own
// line has the number of its dimension: it is broken at its figure.
type stroke struct {
	box
	slanted bool // from corner to corner; falling: from the upper left one
	falling bool
	round   bool // a hole, from which letters keep away a little
	weight  weight
	own     int
}

// meets tells that a stroke goes through a box.
func (s *stroke) meets(b box) bool {
	if !(s.X1 < b.X2 && b.X1 < s.X2 || s.X1 == s.X2 && b.X1 < s.X1 && s.X1 < b.X2) ||
		!(s.Y1 < b.Y2 && b.Y1 < s.Y2 || s.Y1 == s.Y2 && b.Y1 < s.Y1 && s.Y1 < b.Y2) {
		return false
	}
	if !s.slanted {
		return true
	}
	// A slanted line misses a box that lies on one side of it.
	from, to := s.Y2, s.Y1
	if s.falling {
		from, to = s.Y1, s.Y2
	}
	dx, dy := s.X2-s.X1, to-from
	above, below := false, false
	for _, c := range [4][2]float32{{b.X1, b.Y1}, {b.X2, b.Y1}, {b.X1, b.Y2}, {b.X2, b.Y2}} {
		side := dx*(c[1]-from) - dy*(c[0]-s.X1)
		above, below = above || side < 0, below || side > 0
	}
	return above && below
}

// trace remembers the lines and surfaces of a drawing.
func (p *painter) trace(d *drawing.Drawing) {
	for _, m := range d.Marks {
		w := weightOf(drawing.TagOf(m).Meaning)
		switch v := m.(type) {
		case *drawing.Line:
			a, b := p.At(v.From), p.At(v.To)
			p.mark(a.X, a.Y, b.X, b.Y, w, 0)
		case *drawing.Rectangle:
			if v.Meaning == drawing.Grip {
				continue
			}
			b := p.Rect(v.Rect)
			p.markEdges(b, w)
			if c, filled := p.surfaceOf(v); filled && p.Shown(b) {
				p.floor.add(surface{b, c})
			}
		case *drawing.Circle:
			b, _, shown := p.Ring(v)
			switch {
			case !shown:
			case b.X2-b.X1 < 40:
				p.keep(stroke{box: b, weight: w, round: true})
			default:
				p.markEdges(b, w)
			}
		case *drawing.Spot:
			p.traceSpot(v)
		case *drawing.Hatch:
			p.markAll(p.Rect(v.Rect).Common(boxOf(0, 0, p.Size.Width, p.Size.Height)), w)
		}
	}
}

// surfaceOf is the colour of a rectangle's surface, where it hides what is under
// it.
func (p *painter) surfaceOf(m *drawing.Rectangle) (color.NRGBA, bool) {
	c := p.Palette.TagPen(m.Tag).Surface
	if m.Meaning == drawing.Face {
		c = p.Face().Base
	}
	return c, m.Filled && c.A == 0xFF
}

// mark remembers a line of the picture.
func (p *painter) mark(x1, y1, x2, y2 float32, w weight, own int) {
	b := boxOf(min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2))
	if !p.Shown(b) {
		return
	}
	p.keep(stroke{
		box: b, slanted: x1 != x2 && y1 != y2, falling: (x2 > x1) == (y2 > y1), weight: w, own: own,
	})
}

func (p *painter) keep(s stroke) {
	p.strokesIn.add(len(p.strokes), s.box)
	p.strokes = append(p.strokes, s)
}

// edges are those of a rectangle.
func edges(b box) [4]stroke {
	return [4]stroke{
		{box: boxOf(b.X1, b.Y1, b.X2, b.Y1)}, {box: boxOf(b.X1, b.Y2, b.X2, b.Y2)},
		{box: boxOf(b.X1, b.Y1, b.X1, b.Y2)}, {box: boxOf(b.X2, b.Y1, b.X2, b.Y2)},
	}
}

// markEdges remembers the edges of a rectangle.
func (p *painter) markEdges(b box, w weight) {
	for _, e := range edges(b) {
		p.mark(e.X1, e.Y1, e.X2, e.Y2, w, 0)
	}
}

// markAll remembers everything in a box.
func (p *painter) markAll(b box, w weight) {
	if p.Shown(b) {
		p.keep(stroke{box: b, weight: w})
	}
}

// surface is a painted area, on which texts stand.
type surface struct {
	box
	colour color.NRGBA
}

// traces are what is in a picture already where its texts look for their places.
type traces struct {
	strokes   []stroke // what should not run through letters
	strokesIn columns
	floor     floor // what letters stand on
	taken     []taken
	takenIn   columns // by the boxes that others keep out of
}

// begin empties the traces for a picture so wide.
func (t *traces) begin(paper color.NRGBA, width float32) {
	t.strokes, t.taken = t.strokes[:0], t.taken[:0]
	t.strokesIn.widen(width)
	t.takenIn.widen(width)
	t.floor.paper, t.floor.surfaces = paper, t.floor.surfaces[:0]
	t.floor.in.widen(width)
}

// floor is all painted areas, on paper.
type floor struct {
	paper    color.NRGBA
	surfaces []surface // in the order of painting
	in       columns
}

func (f *floor) add(s surface) {
	f.in.add(len(f.surfaces), s.box)
	f.surfaces = append(f.surfaces, s)
}

// under gives the colour on which a box stands: that of the last surface that
// holds its middle.
func (f *floor) under(b box) color.NRGBA {
	x, y := (b.X1+b.X2)/2, (b.Y1+b.Y2)/2
	last := -1
	for i := range f.in.near(x, x) {
		if s := &f.surfaces[i]; i > last && x >= s.X1 && x <= s.X2 && y >= s.Y1 && y <= s.Y2 {
			last = i
		}
	}
	if last < 0 {
		return f.paper
	}
	return f.surfaces[last].colour
}
