// Package minimax solves the one linear program of frontlay: which moves make the worst of some
// deviations least.
package minimax

import "math"

// Least gives moves between low and high that make the largest |off + grows·moves| least, and what that
// is, all in one unit. There is a row of grows for each off, with a column for each move.
//
// As a linear program: least z with ±(off + grows·moves) ≤ z. Only the deviations and bounds that
// matter are in it: it begins with the worst, and what its answer violates is added until it
// violates nothing. Where rounding leads nowhere ok is false, after a bounded number of steps.
func Least(grows [][]float64, off, low, high []float64) (moves []float64, least float64, ok bool) {
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
	bounds         []int // moves whose upper bound counts
	bounded        map[int]bool
}

// row is one side of a deviation: sign·(off + grows·moves) ≤ z.
type row struct {
	at   int
	sign float64
}

// rounding is what of a violation is rounding.
const rounding = 1e-9

// add takes in what an answer violates: each bound, and of the deviations the worst few; it is false
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
		worst := row{at: -1}
		most := least + rounding
		for i, v := range after {
			if r := (row{i, math.Copysign(1, v)}); math.Abs(v) > most && !p.in[r] {
				worst, most = r, math.Abs(v)
			}
		}
		if worst.at < 0 {
			break
		}
		p.rows, p.in[worst], found = append(p.rows, worst), true, true
	}
	return found
}

// solve solves it with what is in: the columns are moves − low of those that count, and z.
func (p *program) solve() (moves []float64, least float64, ok bool) {
	moves = make([]float64, len(p.low)) // what each begins at
	for j := range moves {
		moves[j] = min(max(0, p.low[j]), p.high[j])
	}
	column := map[int]int{} // of the moves that a deviation in it grows with
	var used []int
	for _, r := range p.rows {
		for j, g := range p.grows[r.at] {
			if _, have := column[j]; g != 0 && !have && p.high[j] > p.low[j] {
				column[j] = len(used)
				used = append(used, j)
				moves[j] = p.low[j]
			}
		}
	}
	z := len(used)
	var t tableau
	for _, r := range p.rows {
		at := make([]float64, z+1)
		room := -r.sign * p.off[r.at]
		for k, j := range used {
			at[k] = r.sign * p.grows[r.at][j]
		}
		for j, v := range moves {
			room -= r.sign * p.grows[r.at][j] * v
		}
		at[z] = -1
		t.condition(at, room)
	}
	for _, j := range p.bounds {
		if k, have := column[j]; have {
			at := make([]float64, z+1)
			at[k] = 1
			t.condition(at, p.high[j]-p.low[j])
		}
	}
	x, ok := t.least(z)
	if !ok {
		return moves, 0, false
	}
	for k, j := range used {
		moves[j] += x[k]
	}
	return moves, x[z], true
}
