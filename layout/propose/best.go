package propose

import (
	"container/heap"
	"math/bits"
	"slices"

	"frontlay/model"
	"frontlay/model/length"
)

// division is one way to divide a setup: where its fronts' bottom edges are, and which
// thing each of its drawers is to hold, -1: none.
type division struct {
	by     model.Division
	at     []length.Length
	things []int
	cost   cost
}

// needs are the heights of what its drawers are to hold.
func (d *division) needs(things []Thing) []length.Length {
	all := make([]length.Length, len(d.things))
	for k, t := range d.things {
		if t >= 0 {
			all[k] = things[t].Height
		}
	}
	return all
}

// mostPast is how many divisions a node can be compared with.
const mostPast = 64

// node is the lower part of a division: fronts below the k-th, whose bottom edge has a
// place by its index.
type node struct {
	state
	cost   cost // of the fronts below
	bound  cost // with the least that the others can cost
	thing  int  // of the front below; -1: none
	below  *node
	number int // so that of equal ones the first comes first
}

// state is what the fronts above a node depend on.
type state struct {
	k, place int
	things   int           // placed below, a bit for each
	height   length.Length // of the front below
	need     length.Length // likewise
	drops    int           // those that occur below: see sets
	like     uint64        // the divisions of the past that it is like so far
	first    bool
}

// open are nodes to go on from, the one with the least bound first; of equal ones the
// one with most fronts, so that they are not all tried.
type open []*node

func (o open) Len() int { return len(o) }
func (o open) Less(i, j int) bool {
	if o[i].bound != o[j].bound {
		return o[i].bound.less(o[j].bound)
	}
	return o[i].k > o[j].k || o[i].k == o[j].k && o[i].number < o[j].number
}
func (o open) Swap(i, j int) { o[i], o[j] = o[j], o[i] }

// Push adds a node, for package heap.
func (o *open) Push(n any) { *o = append(*o, n.(*node)) }

// Pop takes the last node, for package heap.
func (o *open) Pop() any {
	last := len(*o) - 1
	n := (*o)[last]
	*o = (*o)[:last]
	return n
}

// best is the best division of a pool that is not like one of the past: by a search
// that always goes on from the node with the least bound. A node's bound is what its
// fronts cost and what those above cost at least, alone: what neighbours cost as a pair
// and what further settings of the jig cost is left out there, and never below zero.
// So the first whole division is the best; nodes that can't be better than one that is
// known are let alone. nil: there is none.
func (s *search) best(f *finder, pl *pool) *division {
	ahead, ok := s.ahead(f, pl, 0, 0, 0)
	if !ok {
		return nil
	}
	first := &node{state: state{like: uint64(1)<<len(f.past) - 1, first: true, drops: s.set(f.given())}, thing: -1, cost: s.given(f.setup)}
	first.bound = first.cost.plus(ahead)
	known := s.good(f, pl, first)
	nodes, done := &open{first}, map[state]bool{}
	for nodes.Len() > 0 && !f.ended {
		n := heap.Pop(nodes).(*node)
		if n.k == f.n {
			return f.whole(pl, n) // those that are like one of the past are not among the nodes
		}
		if done[n.state] {
			continue
		}
		done[n.state] = true
		s.grow(f, pl, n, known, func(g *node) {
			g.number = nodes.Len() + len(done)
			heap.Push(nodes, g)
		})
	}
	if f.ended || known == nil {
		return nil
	}
	return f.whole(pl, known)
}

// good is a division that is good, and often the best: of the lower parts of divisions
// with as many fronts only the most promising are followed. nil: none was come upon.
func (s *search) good(f *finder, pl *pool, first *node) *node {
	const followed = 40
	layer := []*node{first}
	for range f.n {
		var next []*node
		for _, n := range layer {
			s.grow(f, pl, n, nil, func(g *node) { next = append(next, g) })
		}
		slices.SortStableFunc(next, func(a, b *node) int {
			switch {
			case a.bound.less(b.bound):
				return -1
			case b.bound.less(a.bound):
				return 1
			}
			return 0
		})
		layer = next[:min(len(next), followed)]
	}
	if len(layer) == 0 {
		return nil
	}
	return layer[0]
}

// grow calls do for each node with one more front than n that can be better than a whole
// one that is known; nil: none is. Whole ones that are like one of the past are none.
func (s *search) grow(f *finder, pl *pool, n, known *node, do func(*node)) {
	s.each(f, pl, n.k, n.place, n.things, func(place, thing int, c, ahead cost) {
		if known != nil && !n.cost.plus(c).plus(ahead).less(known.cost) {
			return
		}
		g := s.grown(f, pl, n, place, thing, c)
		g.bound = g.cost.plus(ahead)
		if known != nil && !g.bound.less(known.cost) || g.k == f.n && g.like != 0 {
			return
		}
		do(g)
	})
}

// given is what all divisions of a setup cost: the height that is neither needed nor
// free, before any drawer for nothing in particular, the lines beside, and the settings
// of the jig that it wants in any case.
func (s *search) given(u *setup) cost {
	lost := u.high - u.low
	for _, t := range s.q.Things {
		lost -= t.Height
	}
	w := &s.q.Weights
	return w.lost(lost).plus(w.count(Lines, u.beside.within(u.low, u.high))).plus(w.count(Settings, len(u.given())))
}

// given are the drops that a setup has whatever its division.
func (u *setup) given() (drops []length.Length) {
	for k := range u.fronts {
		if f := &u.fronts[k]; k == 0 || !f.onRows {
			drops = with(drops, f.dropAt(u.low))
		}
	}
	return drops
}

// grown is a node with one more front: up to the place by its index, for a thing; c is
// what the front costs alone.
func (s *search) grown(f *finder, pl *pool, n *node, place, thing int, c cost) *node {
	k, y, next := n.k, pl.places[n.k][n.place], pl.places[n.k+1][place]
	g := &node{cost: n.cost.plus(c), thing: thing, below: n}
	g.state = state{k: k + 1, place: place, things: n.things, height: f.height(k, y, next), drops: n.drops, like: n.like}
	if thing >= 0 {
		g.things |= 1 << thing
		g.need = s.q.Things[thing].Height
	}
	w, step := &s.q.Weights, s.p.RoundingStep()
	if !n.first {
		if outOfOrder(n.height, g.height, step) {
			g.cost = g.cost.plus(w.count(Order, 1))
		}
		if n.need == g.need && uneven(n.height, g.height, step) {
			g.cost = g.cost.plus(w.count(Uneven, 1))
		}
	}
	if f.fronts[k].onRows && k > 0 {
		if g.drops = s.set(with(s.sets[n.drops], f.fronts[k].dropAt(y))); g.drops != n.drops {
			g.cost = g.cost.plus(w.count(Settings, 1))
		}
	}
	if k+1 < f.n {
		for i, p := range f.past {
			if g.like&(1<<i) != 0 && (p.at[k+1]-next).Abs() > p.off {
				g.like &^= 1 << i
			}
		}
	} else { // the heights above count no more
		g.height, g.need, g.drops = 0, 0, 0
	}
	return g
}

// with is a set of drops, in order, with one more.
func with(drops []length.Length, drop length.Length) []length.Length {
	at, there := slices.BinarySearch(drops, drop)
	if there {
		return drops
	}
	return slices.Insert(slices.Clone(drops), at, drop)
}

// set is the number of a set of drops, the same for the same.
func (s *search) set(drops []length.Length) int {
	for i := range s.sets {
		if slices.Equal(s.sets[i], drops) {
			return i
		}
	}
	s.sets = append(s.sets, drops)
	return len(s.sets) - 1
}

// each calls do for every way to put the front at a place of the stack: the place of
// the next one's bottom edge, a thing for it or -1, what it costs alone, and what those
// above cost at least.
func (s *search) each(f *finder, pl *pool, k, place, things int, do func(next, thing int, c, ahead cost)) {
	y := pl.places[k][place]
	for n := range len(s.q.Things) + 1 {
		t, need, with := n, length.Length(0), things
		if n == len(s.q.Things) {
			t = -1
		}
		switch {
		case t < 0 && f.n-len(s.q.Things) == k-bits.OnesCount(uint(things)), t >= 0 && things&(1<<t) != 0:
			continue // all drawers for nothing in particular are below; the thing is
		case t > 0 && s.q.Things[t].Height == s.q.Things[t-1].Height && things&(1<<(t-1)) == 0:
			continue // of things that are alike the first comes first
		case t >= 0:
			need, with = s.q.Things[t].Height, things|1<<t
		}
		above := pl.places[k+1]
		first, _ := slices.BinarySearch(above, y+f.span(k, need))
		last := f.high - s.room(f, k+1, with)
		for i := first; i < len(above) && above[i] <= last; i++ {
			if f.steps, s.steps = f.steps+1, s.steps+1; f.steps > mostOfOne || s.steps > mostSteps {
				f.ended, s.stopped = true, true
				return
			}
			next := above[i]
			usable := f.usable(k, y, next)
			if !f.fits(k, y, next, usable, need) || len(f.banned) > 0 && f.banned[ban{k, y, next, need}] {
				continue
			}
			if ahead, ok := s.ahead(f, pl, k+1, i, with); ok {
				do(i, t, s.alone(f, k, y, next, usable, need), ahead)
			}
		}
	}
}

// room is the least height that the fronts from the k-th upwards can take with the
// things that are not below.
func (s *search) room(f *finder, k, things int) (sum length.Length) {
	if k == f.n {
		return 0
	}
	around, lowest := f.around(k), f.span(k, 0) // least, and greatest, of those fronts
	for j := k; j < f.n; j++ {
		sum += f.span(j, 0)
		around, lowest = min(around, f.around(j)), max(lowest, f.span(j, 0))
	}
	for t := range s.q.Things {
		if things&(1<<t) == 0 {
			sum += max(0, s.q.Things[t].Height+around-lowest)
		}
	}
	return sum
}

// alone is what a front costs by itself.
func (s *search) alone(f *finder, k int, y, next, usable, need length.Length) cost {
	w := &s.q.Weights
	c := left(f.height(k, y, next) - need)
	if need == 0 {
		c = c.plus(w.lost(-usable)) // that much less of the stack is lost
	}
	if f.fronts[k].upper && f.fronts[k].dropAt(y) != 0 {
		c = c.plus(w.count(Drops, 1))
	}
	if k+1 < f.n {
		c = c.plus(w.count(Lines, f.beside.unmet(next-f.gaps[k])))
	}
	return c
}

// ahead is what the fronts from the k-th upwards cost at least, each alone, where its
// bottom edge has a place and some things are below; false where they don't fit.
func (s *search) ahead(f *finder, pl *pool, k, place, things int) (cost, bool) {
	if k == f.n {
		return cost{}, true
	}
	if pl.rest == nil {
		pl.rest = make([]map[int][]rest, f.n)
	}
	if pl.rest[k] == nil {
		pl.rest[k] = map[int][]rest{}
	}
	row := pl.rest[k][things]
	if row == nil {
		row = make([]rest, len(pl.places[k]))
		pl.rest[k][things] = row
	}
	if r := &row[place]; r.known {
		return r.cost, !r.none
	}
	best := rest{known: true, none: true}
	s.each(f, pl, k, place, things, func(_, _ int, c, ahead cost) {
		if c = c.plus(ahead); best.none || c.less(best.cost) {
			best.cost, best.none = c, false
		}
	})
	if !f.ended {
		row[place] = best
	}
	return best.cost, !best.none
}

// whole is the division that a node with all fronts stands for.
func (f *finder) whole(pl *pool, n *node) *division {
	d := &division{by: pl.by, at: make([]length.Length, f.n), things: make([]int, f.n), cost: n.cost}
	for g := n; g.below != nil; g = g.below {
		d.things[g.k-1] = g.thing
		d.at[g.k-1] = pl.places[g.k-1][g.below.place]
	}
	return d
}
