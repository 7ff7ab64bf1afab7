package divide

import (
	"slices"

	"frontlay/model/length"
)

// RowPart is one front of a stack whose bottom edges are to be moved so that
// runners fall on hole rows. Wanted is its bottom edge as drawn. Where Bound is
// true, bottom edges that differ from Phase by whole pitches put its runner on a
// row. Where Fixed is true its bottom edge stays. Least and Greatest bound its
// height; Greatest 0 is no bound.
type RowPart struct {
	Wanted   length.Length
	Bound    bool
	Phase    length.Length
	Fixed    bool
	Least    length.Length
	Greatest length.Length
}

// maxPlaces bounds the candidates for one bottom edge, maxAll those of a stack,
// so that no project can keep the engine busy for long.
const (
	maxPlaces = 4000
	maxAll    = 100_000
)

// RowFinder chooses the divisions of stacks for hole rows, one stack after the
// other: it uses its memory again. The zero value is ready. It is not for several
// goroutines at once.
type RowFinder struct{ search rowSearch }

// Rows chooses the bottom edges of a stack's fronts, bottom to top, so that as
// few bound ones as possible are off the rows and, among those choices, the sum
// of all edges' moves is least. The lowest front's bottom edge is low, the
// highest one's top edge high; between two fronts is gap. It is exact: dynamic
// programming over the candidate places, of which an optimal choice is always
// made (a part of an optimal choice stands on a row, at its wanted place, or as
// near to a neighbour that does as the heights' bounds allow). Of equal choices
// the lower one is taken. False where the bounds leave no choice at all; then
// nothing is to be moved. Exactness holds to 4,000 candidates an edge and 100,000
// a stack, far beyond any cabinet.
func (f *RowFinder) Rows(low, high, gap, pitch length.Length, parts []RowPart) ([]length.Length, bool) {
	if len(parts) == 0 || pitch <= 0 || high <= low {
		return nil, false
	}
	f.search.begin(low, high, gap, pitch, parts)
	return f.search.solve()
}

type rowSearch struct {
	low, high, gap, pitch length.Length
	parts                 []RowPart
	most                  int // candidates for one edge

	// Memory that is used again for the next stack.
	sets, all [][]length.Length
	steps     [][]step
	queue     []int
}

func (r *rowSearch) begin(low, high, gap, pitch length.Length, parts []RowPart) {
	r.low, r.high, r.gap, r.pitch, r.parts = low, high, gap, pitch, parts
	r.most = min(maxPlaces, max(8, maxAll/len(parts)))
	for len(r.sets) < len(parts) {
		r.sets, r.all, r.steps = append(r.sets, nil), append(r.all, nil), append(r.steps, nil)
	}
}

// cost is ordered by off first, then by move.
type cost struct {
	off  int
	move length.Length
}

func (c cost) less(d cost) bool {
	if c.off != d.off {
		return c.off < d.off
	}
	return c.move < d.move
}

// step is the best way to one candidate: its cost and the candidate of the part
// below it, -1 where there is no way.
type step struct {
	cost cost
	from int
}

// solve looks for a choice with every bound part on a row first, which needs few
// candidates; only where there is none does it try all.
func (r *rowSearch) solve() ([]length.Length, bool) {
	if at, ok := r.choose(r.places(true)); ok {
		return at, true
	}
	return r.choose(r.places(false))
}

func (r *rowSearch) choose(places [][]length.Length) ([]length.Length, bool) {
	n := len(r.parts)
	steps := r.steps[:n]
	steps[0] = append(steps[0][:0], step{cost{}, 0})
	for i := 1; i < n; i++ {
		steps[i] = r.advance(steps[i][:0], i, places[i-1], steps[i-1], places[i])
	}
	best, at := cost{}, -1
	for k, s := range steps[n-1] {
		h := r.high - places[n-1][k]
		if s.from >= 0 && r.fits(n-1, h) && (at < 0 || s.cost.less(best)) {
			best, at = s.cost, k
		}
	}
	if at < 0 {
		return nil, false
	}
	out := make([]length.Length, n)
	for i := n - 1; i >= 0; i-- {
		out[i] = places[i][at]
		at = steps[i][at].from
	}
	return out, true
}

func (r *rowSearch) fits(i int, h length.Length) bool {
	p := &r.parts[i]
	return h >= p.Least && h > 0 && (p.Greatest <= 0 || h <= p.Greatest)
}

// advance finds the best way to each place of part i from those of the part
// below. Places are in order, so the places below that a height between Least
// and Greatest allows are a window that only moves up; a queue keeps its least
// cost in front.
func (r *rowSearch) advance(out []step, i int, below []length.Length, cheap []step, here []length.Length) []step {
	p := &r.parts[i-1]
	queue := r.queue[:0]
	next := 0
	for _, y := range here {
		top := y - r.gap
		for next < len(below) && below[next] <= top-max(p.Least, length.Nanometre) {
			if cheap[next].from >= 0 {
				for len(queue) > 0 && cheap[next].cost.less(cheap[queue[len(queue)-1]].cost) {
					queue = queue[:len(queue)-1]
				}
				queue = append(queue, next)
			}
			next++
		}
		for len(queue) > 0 && p.Greatest > 0 && top-below[queue[0]] > p.Greatest {
			queue = queue[1:]
		}
		if len(queue) == 0 {
			out = append(out, step{from: -1})
			continue
		}
		c := cheap[queue[0]].cost
		c.move += (y - r.parts[i].Wanted).Abs()
		if !r.onRow(i, y) {
			c.off++
		}
		out = append(out, step{c, queue[0]})
	}
	r.queue = queue[:0]
	return out
}

func (r *rowSearch) onRow(i int, y length.Length) bool {
	p := &r.parts[i]
	return !p.Bound || (y-p.Phase)%r.pitch == 0
}

// places gives each part's candidates in order: its rows where it is bound, its
// wanted place, and what spreads from its neighbours' and the stack's ends. With
// strict true, bound parts have their rows only.
func (r *rowSearch) places(strict bool) [][]length.Length {
	n := len(r.parts)
	sets := r.sets[:n]
	for i := range r.parts {
		p := &r.parts[i]
		sets[i] = sets[i][:0]
		if p.Bound {
			sets[i] = r.rowsOf(sets[i], i)
		}
		if !p.Bound || !strict || p.Fixed {
			sets[i] = append(sets[i], p.Wanted)
		}
	}
	r.spread(sets, func(i int) bool { return !r.parts[i].Fixed && !(strict && r.parts[i].Bound) })
	all := r.all[:n]
	all[0] = append(all[0][:0], r.low)
	for i := 1; i < n; i++ {
		if r.parts[i].Fixed {
			all[i] = append(all[i][:0], r.parts[i].Wanted)
			continue
		}
		all[i] = append(all[i][:0], r.ordered(sets[i])...)
	}
	return all
}

func (r *rowSearch) rowsOf(ys []length.Length, i int) []length.Length {
	first := r.parts[i].Phase - (r.parts[i].Phase - r.low).FloorTo(r.pitch)
	for y := first; y <= r.high && len(ys) < r.most; y += r.pitch {
		ys = append(ys, y)
	}
	return ys
}

// spread adds to each part that takes them the places that lie a bound of the
// heights away from the neighbours' places, upwards from the low end and
// downwards from the high end.
func (r *rowSearch) spread(sets [][]length.Length, takes func(int) bool) {
	n := len(r.parts)
	if !slices.ContainsFunc(r.index(), takes) {
		return
	}
	up, down := make([][]length.Length, n), make([][]length.Length, n)
	up[0] = []length.Length{r.low}
	for i := 1; i < n; i++ {
		up[i] = append(make([]length.Length, 0, len(sets[i])+2*len(up[i-1])), sets[i]...)
		if takes(i) {
			for _, y := range up[i-1] {
				for _, h := range r.bounds(i - 1) {
					up[i] = append(up[i], y+h+r.gap)
				}
			}
			up[i] = r.ordered(up[i])
		}
	}
	for i := n - 1; i > 0; i-- {
		down[i] = append(down[i], sets[i]...)
		if takes(i) {
			above := []length.Length{r.high + r.gap}
			if i+1 < n {
				above = down[i+1]
			}
			for _, y := range above {
				for _, h := range r.bounds(i) {
					down[i] = append(down[i], y-r.gap-h)
				}
			}
			down[i] = r.ordered(down[i])
		}
		sets[i] = append(up[i], down[i]...)
	}
}

// index lists the parts but the lowest, whose bottom edge is given.
func (r *rowSearch) index() []int {
	all := make([]int, 0, len(r.parts))
	for i := 1; i < len(r.parts); i++ {
		all = append(all, i)
	}
	return all
}

func (r *rowSearch) bounds(i int) []length.Length {
	p := &r.parts[i]
	if p.Greatest > 0 && p.Greatest != p.Least {
		return []length.Length{p.Least, p.Greatest}
	}
	return []length.Length{p.Least}
}

// ordered sorts places, drops doubles and those outside of the stack.
func (r *rowSearch) ordered(ys []length.Length) []length.Length {
	slices.Sort(ys)
	out := ys[:0]
	for _, y := range ys {
		if y < r.low || y > r.high || len(out) > 0 && out[len(out)-1] == y || len(out) >= r.most {
			continue
		}
		out = append(out, y)
	}
	return out
}
