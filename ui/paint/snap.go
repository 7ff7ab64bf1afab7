package paint

import (
	"cmp"
	"math"
	"slices"
)

// LeastGap is how many pixels a gap between two fronts has at least, so that it
// is seen as one at every zoom.
const LeastGap = 2

// Gap is the empty space between two edges on an axis, by their numbers in the
// list of edges; From lies before To.
type Gap struct {
	From, To int
	// Long is how long it is in pixels, exactly; worked out from its length alone,
	// so that it is the same figure for all gaps of one length.
	Long float64
	// Least is how many pixels it has at least.
	Least int
}

// Snap gives each edge of an axis a whole pixel. at are the exact places of the
// edges in pixels, ascending; gaps tells which of them have a gap between them.
//
// Gaps of the same length get the same number of pixels: their length rounded,
// but no fewer than their least. Their middles stay where they are, to half a
// pixel and half of what the least adds. Edges that are in no gap are rounded.
// The order of edges is kept. Where edges are so near to one another that gaps
// of the least size would turn it around, the least is given up, and then the
// equality of gaps; that is where a whole front has less than a pixel or two.
func Snap(at []float64, gaps []Gap) []int {
	for _, least := range []int{math.MaxInt, 1} {
		if px := snapped(at, gaps, least); slices.IsSorted(px) {
			return px
		}
	}
	px := snapped(at, gaps, 0)
	for i := 1; i < len(px); i++ {
		px[i] = max(px[i], px[i-1])
	}
	return px
}

// snapped snaps with gaps that have at least so many pixels, or their own least
// where that is fewer.
func snapped(at []float64, gaps []Gap, most int) []int {
	width := func(g Gap) int {
		return max(int(math.Round(g.Long)), min(g.Least, most))
	}
	beside := make([][]link, len(at))
	for _, g := range gaps {
		w := width(g)
		beside[g.From] = append(beside[g.From], link{g.To, w})
		beside[g.To] = append(beside[g.To], link{g.From, -w})
	}
	px := make([]int, len(at))
	known := make([]bool, len(at))
	off := make([]int, len(at)) // from the first edge of a chain of gaps
	for first := range at {
		if known[first] {
			continue
		}
		chain := []int{first}
		known[first] = true
		for k := 0; k < len(chain); k++ {
			for _, l := range beside[chain[k]] {
				if !known[l.to] {
					known[l.to] = true
					off[l.to] = off[chain[k]] + l.by
					chain = append(chain, l.to)
				}
			}
		}
		start := 0.0
		for _, i := range chain {
			start += at[i] - float64(off[i])
		}
		// A hair more than the middle, so that gaps whose middles differ by what
		// floating point leaves are not rounded apart.
		const hair = 1e-6
		base := int(math.Floor(start/float64(len(chain)) + 0.5 + hair))
		for _, i := range chain {
			px[i] = base + off[i]
		}
	}
	return px
}

// link leads to an edge that lies so many pixels further.
type link struct{ to, by int }

// Axis maps exact places on an axis to places on whole pixels where edges are,
// and in proportion between them.
type Axis struct {
	at []float64
	px []float64
}

// NewAxis makes an axis of edges and their pixels, both ascending.
func NewAxis(at []float64, px []int) Axis {
	a := Axis{at: at}
	for _, v := range px {
		a.px = append(a.px, float64(v))
	}
	return a
}

// To gives the place of an exact one. Beyond the outermost edges everything
// keeps its distance from them; without edges it stays.
func (a *Axis) To(v float64) float64 {
	n := len(a.at)
	if n == 0 {
		return v
	}
	i, found := slices.BinarySearchFunc(a.at, v, cmp.Compare[float64])
	switch {
	case found:
		return a.px[i]
	case i == 0:
		return a.px[0] + v - a.at[0]
	case i == n:
		return a.px[n-1] + v - a.at[n-1]
	}
	share := (v - a.at[i-1]) / (a.at[i] - a.at[i-1])
	return a.px[i-1] + share*(a.px[i]-a.px[i-1])
}
