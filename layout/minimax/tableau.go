package minimax

import "math"

// tableau is a linear program in the form that the simplex method turns over, a dictionary (Chvátal,
// Linear Programming, 1983, chapters 2 and 3, from memory): each basic variable is what is left of
// its row's room when the columns, which are ≥ 0, take their part. It holds no more than rows times columns, so that a step takes
// no solving of the basis. gonum's simplex, which does that, was seen to go round for ever on
// the figures of a niche.
type tableau struct {
	rows   [][]float64 // for each basic variable, how the columns use it up
	room   []float64   // what is left of it with the columns at 0
	basic  []int       // which variable a row is: a column's number, or the count of columns and on for what a condition leaves
	column []int       // which variable a column is
	cost   []float64   // by how much one more of each column lessens what is sought
}

// condition adds use·x ≤ room, before anything is turned over.
func (t *tableau) condition(use []float64, room float64) {
	t.rows, t.room = append(t.rows, use), append(t.room, room)
}

// tiny is what of a number is rounding, among numbers about 1.
const tiny = 1e-10

// least gives x ≥ 0 with the least x[z], where each condition without room has −1 at z. It takes the
// steepest column; after steps that gained nothing the first one (Bland's rule), which can't go round.
// Where rounding makes it go round all the same it gives up.
func (t *tableau) least(z int) (x []float64, ok bool) {
	n := z + 1
	for k := range n {
		t.column = append(t.column, k)
	}
	t.cost = make([]float64, n)
	t.cost[z] = -1
	worst := -1
	for i, room := range t.room {
		t.basic = append(t.basic, n+i)
		if room < 0 && (worst < 0 || room < t.room[worst]) {
			worst = i
		}
	}
	if worst >= 0 {
		t.turn(worst, z) // z so great that the worst has room, and all others
	}
	stood := 0 // steps without gain
	for range 50 * (n + len(t.rows)) {
		k := t.enters(stood > 3)
		if k < 0 {
			return t.values(n), true
		}
		i := t.leaves(k, stood > 3)
		if i < 0 {
			return nil, false // no bound: z can't be below 0, so this is rounding
		}
		if t.room[i]/t.rows[i][k] > tiny {
			stood = 0
		} else {
			stood++
		}
		t.turn(i, k)
	}
	return nil, false
}

// enters is the column that is to grow, −1 where none lessens what is sought.
func (t *tableau) enters(first bool) int {
	best := -1
	for k, c := range t.cost {
		switch {
		case c <= tiny:
		case best < 0, first && t.column[k] < t.column[best], !first && c > t.cost[best]:
			best = k
		}
	}
	return best
}

// leaves is the row that is used up first when a column grows; of some at once the one that is
// turned over most exactly, or the first.
func (t *tableau) leaves(k int, first bool) int {
	best, least := -1, math.Inf(1)
	for i, row := range t.rows {
		if row[k] <= tiny {
			continue
		}
		switch q := t.room[i] / row[k]; {
		case q < least-tiny:
			best, least = i, q
		case q > least+tiny:
		case first && t.basic[i] < t.basic[best], !first && row[k] > t.rows[best][k]:
			best, least = i, min(q, least)
		}
	}
	return best
}

// turn exchanges the variables of a row and a column.
func (t *tableau) turn(i, k int) {
	by := t.rows[i]
	p := 1 / by[k]
	for c := range by {
		by[c] *= p
	}
	by[k] = p
	t.room[i] *= p
	for r, row := range t.rows {
		if r == i || row[k] == 0 {
			continue
		}
		q := row[k]
		row[k] = 0
		for c, v := range by {
			row[c] -= q * v
		}
		if t.room[r] -= q * t.room[i]; t.room[r] < 0 {
			t.room[r] = 0 // less than nothing by rounding
		}
	}
	q := t.cost[k]
	t.cost[k] = 0
	for c, v := range by {
		t.cost[c] -= q * v
	}
	t.basic[i], t.column[k] = t.column[k], t.basic[i]
}

// values are those of the first n variables.
func (t *tableau) values(n int) []float64 {
	x := make([]float64, n)
	for i, v := range t.basic {
		if v < n {
			x[v] = t.room[i]
		}
	}
	return x
}
