package minimax

import (
	"math"
	"math/rand/v2"
	"testing"

	"gonum.org/v1/gonum/mat"
)

// The best of a straight line through (0, 0), (1, 1), (2, 0) is level at one half, and misses each by
// one half: Chebyshev's alternation, by hand. Held at the origin and below a slope of one quarter it misses the
// middle by three quarters.
func TestALineThroughThreePoints(t *testing.T) {
	grows := [][]float64{{1, 0}, {1, 1}, {1, 2}}
	for _, c := range []struct {
		low, high, want []float64
		least           float64
	}{
		{[]float64{-9, -9}, []float64{9, 9}, []float64{0.5, 0}, 0.5},
		{[]float64{0, -9}, []float64{0, 0.25}, []float64{0, 0.25}, 0.75},
	} {
		moves, least, ok := Least(grows, []float64{0, -1, 0}, c.low, c.high)
		if !ok || math.Abs(least-c.least) > 1e-12 {
			t.Fatalf("the worst is off by %v (%v), want %v", least, ok, c.least)
		}
		for j, v := range c.want {
			if math.Abs(moves[j]-v) > 1e-12 {
				t.Errorf("moves %v, want %v", moves, c.want)
			}
		}
	}
}

// program of small whole numbers, so that many conditions meet in one point and steps gain nothing.
func drawn(r *rand.Rand, n, k int) (grows [][]float64, off, low, high []float64) {
	for range n {
		row := make([]float64, k)
		for j := range row {
			row[j] = float64(r.IntN(5) - 2)
		}
		grows, off = append(grows, row), append(off, float64(r.IntN(7)-3))
	}
	for range k {
		low, high = append(low, float64(-r.IntN(3))), append(high, float64(r.IntN(3)))
	}
	return grows, off, low, high
}

// The least is at a corner where as many conditions hold exactly as there are moves and one: each such
// corner is tried.
func TestNoCornerIsBetter(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 1))
	for n := range 400 {
		k := 1 + n%3
		grows, off, low, high := drawn(r, 2+r.IntN(4), k)
		moves, least, ok := Least(grows, off, low, high)
		if !ok {
			t.Fatalf("case %d gives up", n)
		}
		for j, v := range moves {
			if v < low[j]-1e-9 || v > high[j]+1e-9 {
				t.Fatalf("case %d: move %d is %v, not in %v to %v", n, j, v, low[j], high[j])
			}
		}
		if got := worst(grows, off, moves); math.Abs(got-least) > 1e-9 {
			t.Fatalf("case %d: says %v, is %v", n, least, got)
		}
		if want := corners(grows, off, low, high); math.Abs(want-least) > 1e-9 {
			t.Fatalf("case %d: %v, the best corner has %v", n, least, want)
		}
	}
}

// Larger ones end, with moves as good as they say.
func TestItEnds(t *testing.T) {
	r := rand.New(rand.NewPCG(2, 1))
	for n := range 3000 {
		grows, off, low, high := drawn(r, 6+r.IntN(14), 2+r.IntN(8))
		moves, least, ok := Least(grows, off, low, high)
		if !ok {
			t.Fatalf("case %d gives up", n)
		}
		if got := worst(grows, off, moves); math.Abs(got-least) > 1e-9 {
			t.Fatalf("case %d: says %v, is %v", n, least, got)
		}
	}
}

func worst(grows [][]float64, off, moves []float64) float64 {
	most := 0.0
	for i, v := range off {
		for j, m := range moves {
			v += grows[i][j] * m
		}
		most = max(most, math.Abs(v))
	}
	return most
}

// corners is the least of all corners that break no condition.
func corners(grows [][]float64, off, low, high []float64) float64 {
	k := len(low)
	var all [][]float64 // each condition: what it takes of moves and z, and the room
	for i, g := range grows {
		for _, sign := range []float64{1, -1} {
			c := make([]float64, k+2)
			for j, v := range g {
				c[j] = sign * v
			}
			c[k], c[k+1] = -1, -sign*off[i]
			all = append(all, c)
		}
	}
	for j := range k {
		up, down := make([]float64, k+2), make([]float64, k+2)
		up[j], up[k+1], down[j], down[k+1] = 1, high[j], -1, -low[j]
		all = append(all, up, down)
	}
	best := math.Inf(1)
	chosen := make([]int, 0, k+1)
	var choose func(from int)
	choose = func(from int) {
		if len(chosen) < k+1 {
			for i := from; i < len(all); i++ {
				chosen = append(chosen, i)
				choose(i + 1)
				chosen = chosen[:len(chosen)-1]
			}
			return
		}
		a, b := mat.NewDense(k+1, k+1, nil), mat.NewVecDense(k+1, nil)
		for i, c := range chosen {
			a.SetRow(i, all[c][:k+1])
			b.SetVec(i, all[c][k+1])
		}
		var x mat.VecDense
		if math.Abs(mat.Det(a)) < 1e-9 || x.SolveVec(a, b) != nil {
			return
		}
		for _, c := range all {
			use := 0.0
			for j := range k + 1 {
				use += c[j] * x.AtVec(j)
			}
			if use > c[k+1]+1e-9 {
				return
			}
		}
		best = min(best, x.AtVec(k))
	}
	choose(0)
	return best
}
