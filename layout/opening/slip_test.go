package opening

import (
	"math/rand/v2"
	"slices"
	"testing"
)

// group are the figures that can't be told from each other by sides, middles and diagonals.
func group(f Figure) []Figure {
	switch f {
	case WidthBottom, WidthTop:
		return []Figure{WidthBottom, WidthTop}
	case HeightLeft, HeightRight:
		return []Figure{HeightLeft, HeightRight}
	case Rising, Falling:
		return []Figure{Rising, Falling}
	}
	return []Figure{f}
}

// TestASlipIsNamed plants an error of 5 mm in figures that are each off by up to what the tape
// may be, in 1,000 random openings, and looks whether its group is the one named; and no group is named without one.
func TestASlipIsNamed(t *testing.T) {
	for _, within := range []float64{0.1, 0.5} {
		r := rand.New(rand.NewPCG(2, 14))
		alone := 0
		for n := range 1000 {
			w := 300 + 900*r.Float64()
			h := w * (0.5 + 1.5*r.Float64())
			c := quadrilateral(r, w, h, 8, false)
			noise := map[Figure]float64{}
			for f := WidthBottom; f <= Falling; f++ {
				noise[f] = (2*r.Float64() - 1) * within
			}
			if d := doubtOf(takenOf(tape(c, false, func(f Figure) float64 { return noise[f] })), within, w, h); !d.Agree() || !d.Checked {
				t.Fatalf("case %d: without a slip %+v", n, d)
			}
			slip := Figure(r.IntN(8))
			if r.IntN(2) == 0 {
				noise[slip] += 5
			} else {
				noise[slip] -= 5
			}
			d := doubtOf(takenOf(tape(c, false, func(f Figure) float64 { return noise[f] })), within, w, h)
			want := group(slip)
			for _, f := range want {
				if !slices.Contains(d.Again, f) {
					t.Fatalf("within %v case %d: the slip in %v is not named: %+v", within, n, slip.Say(), d)
				}
			}
			if len(d.Again) == len(want) {
				alone++
			} else if within == 0.1 {
				t.Fatalf("case %d: %.0f × %.0f, slip in %v names %+v", n, w, h, slip.Say(), d)
			}
		}
		t.Logf("tape to %v mm: the group alone in %d of 1000", within, alone)
	}
}
