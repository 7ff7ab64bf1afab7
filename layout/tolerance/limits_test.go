package tolerance

import (
	"cmp"
	"math"
	"os"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"frontlay/assets"
	"frontlay/layout/plan"
	"frontlay/model/yamlfile"
)

// What adjusting can bring to where it is wanted, by the lines around it, is what comes of
// trying every connector at both ends of its reach and every corner of the band: all
// errors inside the hull of those.
func TestLimitsAreTheHullOfAllExtremes(t *testing.T) {
	const path = "../../testdata/projects/spread.yaml"
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	f, err := yamlfile.Read(path, data, func(source string) (string, []byte, error) {
		sheet, _ := assets.Sheet(source)
		return source, sheet, nil
	}, nil)
	if err != nil {
		t.Fatal(err)
	}
	b := Of(plan.Make(f.Project))
	rapid.Check(t, func(t *rapid.T) {
		g := &b.Gaps[rapid.IntRange(0, len(b.Gaps)-1).Draw(t, "gap")]
		e := [2]float64{rapid.Float64Range(-8, 8).Draw(t, "p"), rapid.Float64Range(-8, 8).Draw(t, "q")}
		depth := depthIn(hull(extremes(b, g)), e)
		if math.Abs(depth) < 1e-6 {
			return // on the line
		}
		if got := keeps(b.limits(g), e[0], e[1]); got != (depth > 0) {
			t.Fatalf("%v: %v, but it lies %v inside", e, got, depth)
		}
	})
}

// extremes are the errors of a gap's ends that adjusting as far as it goes, each connector
// either way, brings to a corner of the band.
func extremes(b *Budget, g *Gap) [][2]float64 {
	band := b.band()
	points := [][2]float64{{band, band}, {band, -band}, {-band, band}, {-band, -band}}
	of := map[int]term{}
	for _, term := range g.terms {
		of[term.source] = term
	}
	add := func(p, q, least, most float64) {
		var next [][2]float64
		for _, at := range points {
			next = append(next, [2]float64{at[0] - p*least, at[1] - q*least}, [2]float64{at[0] - p*most, at[1] - q*most})
		}
		points = next
	}
	for _, i := range []int{g.front, g.other} {
		if i >= 0 {
			f := &b.sources.fronts[i]
			add(of[f.up[0]].p, of[f.up[0]].q, -f.down, f.lift)
			add(of[f.up[1]].p, of[f.up[1]].q, -f.down, f.lift)
			add(2*of[f.across[0]].p, 2*of[f.across[0]].q, -f.side, f.side)
		}
	}
	return points
}

// hull is the convex hull of points, anticlockwise (monotone chain).
func hull(points [][2]float64) [][2]float64 {
	slices.SortFunc(points, func(a, b [2]float64) int {
		return cmp.Or(cmp.Compare(a[0], b[0]), cmp.Compare(a[1], b[1]))
	})
	half := func() (h [][2]float64) {
		for _, c := range points {
			for len(h) > 1 && turn(h[len(h)-2], h[len(h)-1], c) <= 0 {
				h = h[:len(h)-1]
			}
			h = append(h, c)
		}
		return h[:len(h)-1]
	}
	lower := half()
	slices.Reverse(points)
	return append(lower, half()...)
}

func turn(a, b, c [2]float64) float64 { return (b[0]-a[0])*(c[1]-a[1]) - (b[1]-a[1])*(c[0]-a[0]) }

// depthIn is how far a point lies inside a convex polygon, below zero outside.
func depthIn(polygon [][2]float64, e [2]float64) float64 {
	depth := math.Inf(1)
	for i, a := range polygon {
		b := polygon[(i+1)%len(polygon)]
		if l := math.Hypot(b[0]-a[0], b[1]-a[1]); l > 1e-9 {
			depth = min(depth, turn(a, b, e)/l)
		}
	}
	return depth
}
