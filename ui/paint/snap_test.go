package paint

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// stack is a column of fronts on an axis: edges in millimetres, and its gaps.
func stack(t *rapid.T, gap float64) (edges []float64, gaps []Gap) {
	y := 0.0
	n := rapid.IntRange(2, 12).Draw(t, "fronts")
	for i := range n {
		edges = append(edges, y)
		y += rapid.Float64Range(60, 700).Draw(t, "height")
		edges = append(edges, y)
		if i+1 < n {
			gaps = append(gaps, Gap{From: len(edges) - 1, To: len(edges), Long: gap, Least: LeastGap})
			y += gap
		}
	}
	return edges, gaps
}

// scaled is an axis in pixels.
func scaled(edges []float64, gaps []Gap, scale, off float64) ([]float64, []Gap) {
	at, list := make([]float64, len(edges)), slices.Clone(gaps)
	for i, e := range edges {
		at[i] = off + e*scale
	}
	for i := range list {
		list[i].Long *= scale
	}
	return at, list
}

// Equal gaps have equal pixels at every zoom and wherever the picture stands
// between two pixels; the order of edges is kept, nothing moves by more than a
// pixel and a half, and so the pixels of fronts and gaps add up to the whole.
func TestEqualGapsAreDrawnEqual(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		gap := float64(rapid.IntRange(1, 80).Draw(t, "tenths")) / 10
		edges, gaps := stack(t, gap)
		for _, scale := range []float64{0.06, 0.1, 0.194, 0.388, 0.5, 0.777, 1, 1.5, 2.6, 11} { // ten zooms
			for _, off := range []float64{0, 0.5, rapid.Float64Range(0, 1).Draw(t, "offset")} {
				at, gaps := scaled(edges, gaps, scale, off)
				px := Snap(at, gaps)
				want := max(int(math.Round(gap*scale)), LeastGap)
				for _, g := range gaps {
					if got := px[g.To] - px[g.From]; got != want {
						t.Fatalf("scale %v, offset %v: a gap of %v mm has %d pixels, others %d", scale, off, gap, got, want)
					}
				}
				if !slices.IsSorted(px) {
					t.Fatalf("scale %v, offset %v: the order of %v is not that of %v", scale, off, px, at)
				}
				for i := range px {
					if d := math.Abs(float64(px[i]) - at[i]); d > 1.5+1e-6 {
						t.Fatalf("scale %v, offset %v: edge %d moved by %v pixels", scale, off, i, d)
					}
				}
			}
		}
	})
}

// A picture that is moved by whole pixels is the same picture.
func TestSnappingMovesWithThePicture(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		edges, gaps := stack(t, rapid.Float64Range(1, 6).Draw(t, "gap"))
		scale := rapid.Float64Range(0.1, 3).Draw(t, "scale")
		by := rapid.IntRange(-500, 500).Draw(t, "by")
		here, gapsHere := scaled(edges, gaps, scale, 0)
		there, gapsThere := scaled(edges, gaps, scale, float64(by))
		a, b := Snap(here, gapsHere), Snap(there, gapsThere)
		for i := range a {
			if b[i]-a[i] != by {
				t.Fatalf("edge %d moved by %d, the picture by %d", i, b[i]-a[i], by)
			}
		}
	})
}

// Fronts of less than a pixel keep their order, whatever becomes of their gaps.
func TestTheOrderIsKeptWhereThereIsNoRoom(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		edges, gaps := stack(t, 3)
		scale := rapid.Float64Range(0.0005, 0.02).Draw(t, "scale")
		edges, gaps = scaled(edges, gaps, scale, 0)
		if px := Snap(edges, gaps); !slices.IsSorted(px) {
			t.Fatalf("%v for %v", px, edges)
		}
	})
}

// A chain of gaps: an edge that has gaps at both sides.
func TestAChainOfGaps(t *testing.T) {
	at := []float64{10.2, 11.36, 12.52, 40}
	px := Snap(at, []Gap{{0, 1, 1.16, LeastGap}, {1, 2, 1.16, LeastGap}})
	if px[1]-px[0] != 2 || px[2]-px[1] != 2 || px[3] != 40 || math.Abs(float64(px[1])-at[1]) > 1 {
		t.Errorf("%v", px)
	}
}

func TestAxisKeepsOrderAndProportion(t *testing.T) {
	a := NewAxis([]float64{10.2, 11.4, 30.6}, []int{10, 12, 31})
	for _, c := range []struct{ from, to float64 }{
		{10.2, 10}, {11.4, 12}, {30.6, 31}, {21, 21.5}, {8.2, 8}, {33.6, 34},
	} {
		if got := a.To(c.from); math.Abs(got-c.to) > 1e-9 {
			t.Errorf("%v lies at %v, not %v", c.from, got, c.to)
		}
	}
	var none Axis
	if none.To(3.3) != 3.3 {
		t.Error("an axis without edges moves things")
	}
}
