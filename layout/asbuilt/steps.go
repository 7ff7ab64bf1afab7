package asbuilt

import (
	"math"
	"slices"

	"frontlay/layout/minimax"
)

// effort is how many linear programs are solved for the best whole steps, by the square of the ways that
// they have: with those of two fronts 200. What is found by then is taken; the steps are so small
// that nobody sees what more would bring.
const effort = 7200

// steps are how many steps each way is moved, and the least that the worst end can be off where
// they could be of any size: branch and bound. Where moving nothing is as good, nothing moves.
func (s *solver) steps(off []float64) (best []int, least float64) {
	b := branching{s: s, off: off, best: s.stood(off, make([]int, len(s.ways))), left: 1 + effort/max(1, len(s.ways)*len(s.ways))}
	low, high := make([]int, len(s.ways)), make([]int, len(s.ways))
	for j, w := range s.ways {
		low[j], high[j] = w.low, w.high
	}
	least = b.branch(low, high)
	return b.best.steps, least
}

// branching looks for the best whole steps.
type branching struct {
	s    *solver
	off  []float64
	best *stand
	left int // programs that may still be solved
}

// branch looks between bounds, and gives the linear program's least there. Its moves are rounded,
// and steps taken from there; then the way that is furthest from a whole step is parted in two,
// as long as what the program promises is better than the best.
func (b *branching) branch(low, high []int) float64 {
	const same = 1e-9
	if b.left--; b.left < 0 {
		return b.best.worst
	}
	from, to := make([]float64, len(low)), make([]float64, len(low))
	for j, w := range b.s.ways {
		from[j], to[j] = w.step*float64(low[j]), w.step*float64(high[j])
	}
	moves, least, ok := minimax.Least(b.s.grows, b.off, from, to)
	if !ok {
		return b.best.worst
	}
	if least > b.best.worst-same {
		return least
	}
	begun := make([]int, len(low))
	part, furthest := -1, 1e-6
	for j, w := range b.s.ways {
		n := moves[j] / w.step
		begun[j] = min(max(int(math.Round(n)), low[j]), high[j])
		if far := math.Abs(n - math.Round(n)); far > furthest {
			part, furthest = j, far
		}
	}
	near := b.s.stood(b.off, begun)
	b.s.descend(near)
	if near.better(b.best) {
		b.best = near
	}
	if part < 0 || least > b.best.worst-same {
		return least
	}
	n := int(math.Floor(moves[part] / b.s.ways[part].step))
	over, under := slices.Clone(low), slices.Clone(high)
	over[part], under[part] = n+1, n
	b.branch(low, under)
	b.branch(over, high)
	return least
}

// stand is a choice of steps with what comes of it.
type stand struct {
	steps          []int
	after          []float64
	worst, squares float64
	moved          int
}

// better compares the worst end, then all, then how much is moved.
func (a *stand) better(b *stand) bool {
	const same = 1e-9
	switch {
	case math.Abs(a.worst-b.worst) > same:
		return a.worst < b.worst
	case math.Abs(a.squares-b.squares) > same:
		return a.squares < b.squares
	}
	return a.moved < b.moved
}

// strides are how many steps are tried at once.
var strides = []int{1, -1, 2, -2, 4, -4, 8, -8, 16, -16}

// descend takes steps of one way, or one step of two together, as long as that is better.
func (s *solver) descend(at *stand) {
	touch := s.touching()
	for again := true; again; {
		again = false
		for j := range s.ways {
			for _, d := range strides {
				again = s.try(at, j, d, -1, 0) || again
			}
		}
		for j := range s.ways {
			for _, k := range touch[j] {
				for _, d := range []int{1, -1} {
					again = s.try(at, j, d, k, d) || s.try(at, j, d, k, -d) || again
				}
			}
		}
	}
}

// try takes d steps of a way and e of another, where there is one, and keeps them where that is better.
func (s *solver) try(at *stand, j, d, k, e int) bool {
	if !s.free(at, j, d) || k >= 0 && !s.free(at, k, e) {
		return false
	}
	was := *at
	s.step(at, j, d)
	if k >= 0 {
		s.step(at, k, e)
	}
	at.judge()
	if at.better(&was) {
		return true
	}
	s.step(at, j, -d)
	if k >= 0 {
		s.step(at, k, -e)
	}
	at.worst, at.squares, at.moved = was.worst, was.squares, was.moved
	return false
}

// free tells that the connector goes so far.
func (s *solver) free(at *stand, j, d int) bool {
	n := at.steps[j] + d
	return s.ways[j].low <= n && n <= s.ways[j].high
}

func (s *solver) step(at *stand, j, d int) {
	at.steps[j] += d
	by := s.ways[j].step * float64(d)
	for i := range at.after {
		at.after[i] += s.grows[i][j] * by
	}
}

// touching are, for each way, the later ones that move an end with it.
func (s *solver) touching() [][]int {
	all := make([][]int, len(s.ways))
	for j := range s.ways {
		for k := j + 1; k < len(s.ways); k++ {
			for i := range s.grows {
				if s.grows[i][j] != 0 && s.grows[i][k] != 0 {
					all[j] = append(all[j], k)
					break
				}
			}
		}
	}
	return all
}

func (s *solver) stood(off []float64, steps []int) *stand {
	st := &stand{steps: steps, after: s.after(off, steps)}
	st.judge()
	return st
}

// judge works out what counts of the ends and the steps.
func (a *stand) judge() {
	a.worst, a.squares, a.moved = worst(a.after), 0, 0
	for _, v := range a.after {
		a.squares += v * v
	}
	for _, n := range a.steps {
		a.moved += max(n, -n)
	}
}
