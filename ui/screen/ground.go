package screen

import (
	"image/color"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
)

// box is a rectangle on the screen, from its upper left to its lower right
// corner.
type box struct{ x1, y1, x2, y2 float32 }

func boxAt(at fyne.Position, size fyne.Size) box {
	return box{at.X, at.Y, at.X + size.Width, at.Y + size.Height}
}

// overlaps tells that two boxes share an area; a line's box, which has none, is
// met where it goes through.
func (a box) overlaps(b box) bool { return a.x1 < b.x2 && b.x1 < a.x2 && a.y1 < b.y2 && b.y1 < a.y2 }

func (a box) within(b box) bool { return a.x1 >= b.x1 && a.y1 >= b.y1 && a.x2 <= b.x2 && a.y2 <= b.y2 }

// common is the part that two boxes share; where they share none, one edge lies
// beyond the other.
func (a box) common(b box) box {
	return box{max(a.x1, b.x1), max(a.y1, b.y1), min(a.x2, b.x2), min(a.y2, b.y2)}
}

func (a box) empty() bool { return a.x1 >= a.x2 || a.y1 >= a.y2 }

func (a box) grown(dx, dy float32) box { return box{a.x1 - dx, a.y1 - dy, a.x2 + dx, a.y2 + dy} }

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
	case drawing.DrawerBottom, drawing.RunnerPart, drawing.CoverBand, drawing.Shortfall, drawing.FindingMark:
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
	if !(s.x1 < b.x2 && b.x1 < s.x2 || s.x1 == s.x2 && b.x1 < s.x1 && s.x1 < b.x2) ||
		!(s.y1 < b.y2 && b.y1 < s.y2 || s.y1 == s.y2 && b.y1 < s.y1 && s.y1 < b.y2) {
		return false
	}
	if !s.slanted {
		return true
	}
	// A slanted line misses a box that lies on one side of it.
	from, to := s.y2, s.y1
	if s.falling {
		from, to = s.y1, s.y2
	}
	dx, dy := s.x2-s.x1, to-from
	above, below := false, false
	for _, c := range [4][2]float32{{b.x1, b.y1}, {b.x2, b.y1}, {b.x1, b.y2}, {b.x2, b.y2}} {
		side := dx*(c[1]-from) - dy*(c[0]-s.x1)
		above, below = above || side < 0, below || side > 0
	}
	return above && below
}

// mark remembers a line of the picture.
func (p *painter) mark(x1, y1, x2, y2 float32, w weight, own int) {
	b := box{min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2)}
	if !p.shown(b.x1, b.y1, b.x2, b.y2) {
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
		{box: box{b.x1, b.y1, b.x2, b.y1}}, {box: box{b.x1, b.y2, b.x2, b.y2}},
		{box: box{b.x1, b.y1, b.x1, b.y2}}, {box: box{b.x2, b.y1, b.x2, b.y2}},
	}
}

// markEdges remembers the edges of a rectangle.
func (p *painter) markEdges(b box, w weight) {
	for _, e := range edges(b) {
		p.mark(e.x1, e.y1, e.x2, e.y2, w, 0)
	}
}

// markAll remembers everything in a box.
func (p *painter) markAll(b box, w weight) {
	if p.shown(b.x1, b.y1, b.x2, b.y2) {
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
	x, y := (b.x1+b.x2)/2, (b.y1+b.y2)/2
	last := -1
	for i := range f.in.near(x, x) {
		if s := &f.surfaces[i]; i > last && x >= s.x1 && x <= s.x2 && y >= s.y1 && y <= s.y2 {
			last = i
		}
	}
	if last < 0 {
		return f.paper
	}
	return f.surfaces[last].colour
}
