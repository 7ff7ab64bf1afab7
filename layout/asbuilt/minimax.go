package asbuilt

import (
	"math"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
)

// minimax gives moves between low and high, mm, that make the largest |off + grows·moves| least, and what that is.
//
// As a linear program: least z with ±(off + grows·moves) ≤ z. gonum's simplex solves its whole basis
// anew at each step, so that it is given only the ends and bounds that matter: it begins
// with the worst end, and what its answer violates is added until it violates nothing. Where it
// gives up, ok is false.
func minimax(grows [][]float64, off, low, high []float64) (moves []float64, least float64, ok bool) {
	moves = make([]float64, len(low))
	for j := range moves {
		moves[j] = min(max(0, low[j]), high[j])
	}
	p := program{grows: grows, off: off, low: low, high: high, bounded: map[int]bool{}, in: map[row]bool{}}
	for range 2*len(off) + len(low) + 1 {
		after := append([]float64(nil), off...)
		for i := range after {
			for j, v := range moves {
				after[i] += grows[i][j] * v
			}
		}
		if !p.add(after, moves, least) {
			return moves, least, true
		}
		if moves, least, ok = p.solve(); !ok {
			return nil, 0, false
		}
	}
	return nil, 0, false
}

// program is the linear program so far.
type program struct {
	grows          [][]float64
	off, low, high []float64
	rows           []row
	in             map[row]bool
	bounds         []int // ways whose upper bound counts
	bounded        map[int]bool
}

// row is one side of an end: sign·(off + grows·moves) ≤ z.
type row struct {
	end  int
	sign float64
}

// rounding is what of a violation is rounding, mm.
const rounding = 1e-9

// add takes in what an answer violates: each bound, and of the ends the worst few; it is false
// where there is nothing.
func (p *program) add(after, moves []float64, least float64) bool {
	const few = 8
	found := false
	for j, v := range moves {
		if v > p.high[j]+rounding && !p.bounded[j] {
			p.bounds, p.bounded[j], found = append(p.bounds, j), true, true
		}
	}
	for range few {
		at := row{end: -1}
		most := least + rounding
		for i, v := range after {
			if r := (row{i, math.Copysign(1, v)}); math.Abs(v) > most && !p.in[r] {
				at, most = r, math.Abs(v)
			}
		}
		if at.end < 0 {
			break
		}
		p.rows, p.in[at], found = append(p.rows, at), true, true
	}
	return found
}

// solve solves it with what is in: x = moves − low, z, and what each condition leaves.
func (p *program) solve() (moves []float64, least float64, ok bool) {
	moves = make([]float64, len(p.low)) // what each begins at
	for j := range moves {
		moves[j] = min(max(0, p.low[j]), p.high[j])
	}
	column := map[int]int{} // of the ways that an end in it grows with
	var used []int
	for _, r := range p.rows {
		for j, g := range p.grows[r.end] {
			if _, have := column[j]; g != 0 && !have && p.high[j] > p.low[j] {
				column[j] = len(used)
				used = append(used, j)
				moves[j] = p.low[j]
			}
		}
	}
	var bounds []int
	for _, j := range p.bounds {
		if _, have := column[j]; have {
			bounds = append(bounds, j)
		}
	}
	n, m, z := len(used), len(p.rows)+len(bounds), len(used)
	a, b, cost := mat.NewDense(m, n+1+m, nil), make([]float64, m), make([]float64, n+1+m)
	cost[z] = 1
	worst := 0
	for i, r := range p.rows {
		b[i] = -r.sign * p.off[r.end]
		for k, j := range used {
			a.Set(i, k, r.sign*p.grows[r.end][j])
		}
		for j, v := range moves {
			b[i] -= r.sign * p.grows[r.end][j] * v
		}
		a.Set(i, z, -1)
		a.Set(i, n+1+i, 1)
		if b[i] < b[worst] {
			worst = i
		}
	}
	for k, j := range bounds {
		i := len(p.rows) + k
		a.Set(i, column[j], 1)
		a.Set(i, n+1+i, 1)
		b[i] = p.high[j] - p.low[j]
	}
	start := make([]int, 0, m)
	for i := range m {
		if i == worst && b[worst] < 0 {
			start = append(start, z)
		} else {
			start = append(start, n+1+i)
		}
	}
	_, x, err := lp.Simplex(cost, a, b, 1e-12, start)
	if err != nil {
		return moves, 0, false
	}
	for k, j := range used {
		moves[j] += x[k]
	}
	return moves, x[z], true
}
