package letter

import (
	"math"
	"slices"

	"frontlay/layout/drawing"
)

func (b Box) overlaps(o Box) bool {
	return b.Lo.X < o.Hi.X && o.Lo.X < b.Hi.X && b.Lo.Y < o.Hi.Y && o.Lo.Y < b.Hi.Y
}

// touches is overlaps for what may be a line, which has no area.
func (b Box) touches(o Box) bool {
	return b.Lo.X <= o.Hi.X && o.Lo.X <= b.Hi.X && b.Lo.Y <= o.Hi.Y && o.Lo.Y <= b.Hi.Y
}

func (b Box) holds(p Point) bool {
	return p.X >= b.Lo.X && p.X <= b.Hi.X && p.Y >= b.Lo.Y && p.Y <= b.Hi.Y
}

func (b Box) within(o Box) bool { return o.holds(b.Lo) && o.holds(b.Hi) }

func (b Box) grown(dx, dy float64) Box {
	return Box{Point{b.Lo.X - dx, b.Lo.Y - dy}, Point{b.Hi.X + dx, b.Hi.Y + dy}}
}

func (b Box) common(o Box) Box {
	return Box{Point{max(b.Lo.X, o.Lo.X), max(b.Lo.Y, o.Lo.Y)}, Point{min(b.Hi.X, o.Hi.X), min(b.Hi.Y, o.Hi.Y)}}
}

func (b Box) empty() bool { return !(b.Lo.X < b.Hi.X && b.Lo.Y < b.Hi.Y) }

func (b Box) moved(dx, dy float64) Box {
	return Box{Point{b.Lo.X + dx, b.Lo.Y + dy}, Point{b.Hi.X + dx, b.Hi.Y + dy}}
}

func (b Box) width() float64  { return b.Hi.X - b.Lo.X }
func (b Box) height() float64 { return b.Hi.Y - b.Lo.Y }

// room holds boxes so that what lies near a place is found without going through
// all of them: a run of a thousand fronts has tens of thousands of lines. It cuts
// the area of the picture into cells; what is beyond is in the cells at its edge.
type room struct {
	area       Box
	cell       float64
	cols, rows int
	all        []Box
	in         [][]int32 // which of all reach into a cell, in order
	seen       []int32   // the question at which each of all was last met
	asked      int32
}

// mostCells is along each side of the area.
const mostCells = 400

func (r *room) begin(area Box, cell float64) {
	r.area = area
	r.cell = max(cell, area.width()/mostCells, area.height()/mostCells, 1e-6)
	r.cols, r.rows = int(max(area.width(), 0)/r.cell)+1, int(max(area.height(), 0)/r.cell)+1
	r.in = make([][]int32, r.cols*r.rows)
}

// span gives the cells that a box reaches into.
func (r *room) span(b Box) (x1, y1, x2, y2 int) {
	at := func(v, from float64, n int) int {
		c := (v - from) / r.cell
		switch {
		case !(c > 0): // what is no number too
			return 0
		case c >= float64(n):
			return n - 1
		}
		return int(c)
	}
	return at(b.Lo.X, r.area.Lo.X, r.cols), at(b.Lo.Y, r.area.Lo.Y, r.rows), at(b.Hi.X, r.area.Lo.X, r.cols), at(b.Hi.Y, r.area.Lo.Y, r.rows)
}

func (r *room) add(b Box) {
	i := int32(len(r.all))
	r.all, r.seen = append(r.all, b), append(r.seen, 0)
	x1, y1, x2, y2 := r.span(b)
	for y := y1; y <= y2; y++ {
		for x := x1; x <= x2; x++ {
			r.in[y*r.cols+x] = append(r.in[y*r.cols+x], i)
		}
	}
}

// near calls each box once that may meet another, until it gives false.
func (r *room) near(b Box, each func(i int) bool) {
	r.asked++
	x1, y1, x2, y2 := r.span(b)
	for y := y1; y <= y2; y++ {
		for x := x1; x <= x2; x++ {
			for _, i := range r.in[y*r.cols+x] {
				if r.seen[i] == r.asked {
					continue
				}
				r.seen[i] = r.asked
				if !each(int(i)) {
					return
				}
			}
		}
	}
}

// covers tells that a box meets another.
func (r *room) covers(b Box) bool {
	found := false
	r.near(b, func(i int) bool {
		found = r.all[i].overlaps(b)
		return !found
	})
	return found
}

// weight is how much a line is missed where the ground of a text covers it.
type weight uint8

const (
	quiet     weight = iota // letters need not keep away
	faint                   // edges behind a front, centre lines, hatches
	extending               // extension lines, which go on behind a name among them
	firm                    // outlines, dimension lines
	hole                    // what is drilled
	none                    // more than any line has
)

func weightOf(m drawing.Meaning) weight {
	switch m {
	case drawing.Grid, drawing.Grip, drawing.Frame, drawing.Covered:
		return quiet
	case drawing.Hidden, drawing.DrawerPart, drawing.RunnerPart, drawing.DrawerBottom, drawing.CentreLine,
		drawing.CoverBand, drawing.OverlayBand, drawing.FindingMark, drawing.Label, drawing.Note:
		return faint
	case drawing.HoleCross, drawing.HoleEdge:
		return hole
	default:
		return firm
	}
}

// stroke is a line, or all of its box where it is a hole or a hatch. A dimension's
// own line has the number of its figure among the texts, from 1.
type stroke struct {
	Box
	slanted, falling bool // from corner to corner; falling: from the upper left one
	weight           weight
	own              int
}

func strokeOf(a, b Point, w weight) stroke {
	return stroke{
		Box:     Box{Point{min(a.X, b.X), min(a.Y, b.Y)}, Point{max(a.X, b.X), max(a.Y, b.Y)}},
		slanted: a.X != b.X && a.Y != b.Y, falling: (b.X > a.X) != (b.Y > a.Y), weight: w,
	}
}

// meets tells that a stroke goes through a box.
func (s *stroke) meets(b Box) bool {
	if !(s.Lo.X < b.Hi.X && b.Lo.X < s.Hi.X || s.Lo.X == s.Hi.X && b.Lo.X < s.Lo.X && s.Lo.X < b.Hi.X) ||
		!(s.Lo.Y < b.Hi.Y && b.Lo.Y < s.Hi.Y || s.Lo.Y == s.Hi.Y && b.Lo.Y < s.Lo.Y && s.Lo.Y < b.Hi.Y) {
		return false
	}
	if !s.slanted {
		return true
	}
	// A slanted line misses a box that lies on one side of it.
	from, to := s.Lo.Y, s.Hi.Y
	if s.falling {
		from, to = to, from
	}
	dx, dy := s.Hi.X-s.Lo.X, to-from
	above, below := false, false
	for _, c := range [4]Point{b.Lo, {b.Hi.X, b.Lo.Y}, {b.Lo.X, b.Hi.Y}, b.Hi} {
		side := dx*(c.Y-from) - dy*(c.X-s.Lo.X)
		above, below = above || side > 0, below || side < 0
	}
	return above && below
}

// strokes are all lines and holes of a picture.
type strokes struct {
	room
	list []stroke
}

func (s *strokes) add(v stroke) {
	s.room.add(v.Box)
	s.list = append(s.list, v)
}

// through tells that a stroke goes through a box, but for the line of a dimension.
func (s *strokes) through(b Box, own int) bool {
	found := false
	s.near(b, func(i int) bool {
		v := &s.list[i]
		found = (own == 0 || v.own != own) && v.meets(b)
		return !found
	})
	return found
}

// gap is a free stretch of a row.
type gap struct{ from, to float64 }

// gaps are the stretches of a row, from left to right, without letters and without
// strokes of a weight or more.
func (p *Picture) gaps(row Box, least weight) []gap {
	var blocks []gap
	p.taken.near(row, func(i int) bool {
		if b := p.taken.all[i]; b.overlaps(row) {
			blocks = append(blocks, gap{b.Lo.X, b.Hi.X})
		}
		return true
	})
	air := p.style.Gap
	p.strokes.near(row, func(i int) bool {
		if s := &p.strokes.list[i]; s.weight >= least && s.meets(row) {
			blocks = append(blocks, gap{s.Lo.X - air, s.Hi.X + air})
		}
		return true
	})
	slices.SortFunc(blocks, func(a, b gap) int {
		switch {
		case a.from < b.from:
			return -1
		case a.from > b.from:
			return 1
		}
		return 0
	})
	var free []gap
	at := row.Lo.X
	for _, b := range append(blocks, gap{row.Hi.X, row.Hi.X}) {
		if b.from > at {
			free = append(free, gap{at, min(b.from, row.Hi.X)})
		}
		at = max(at, b.to)
	}
	return free
}

// nearest gives the beginning of a box so wide in one of the gaps, as near as can
// be to where it is wanted.
func nearest(free []gap, want, width float64) (x float64, ok bool) {
	best := math.Inf(1)
	for _, g := range free {
		if g.to-g.from < width {
			continue
		}
		at := min(max(want, g.from), g.to-width)
		if far := math.Abs(at - want); far < best {
			best, x, ok = far, at, true
		}
	}
	return x, ok
}

// widest gives the widest of some gaps, the first of several.
func widest(free []gap) gap {
	var best gap
	for _, g := range free {
		if g.to-g.from > best.to-best.from {
			best = g
		}
	}
	return best
}
