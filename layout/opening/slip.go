package opening

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/mat"

	"frontlay/layout/minimax"
)

// Doubt is whether the figures can all be right, each to within what the tape may be off, and
// which are to be measured again where they can't.
//
// A figure is among Again when all others agree without it. That is all that can be told: with
// the four sides and the two diagonals each of the six does, with middle figures and the
// diagonals both the width at the bottom and that at the top do. The figure that is wrong, where
// one alone is, is always among them; none is named where each is as right as the tape.
type Doubt struct {
	Checked bool     // there are more figures than the shape takes
	Off     float64  // mm: how far at least one figure is off, whatever the shape
	Again   []Figure // the likeliest first
	// Any tells that each of the figures could be the wrong one, and Several that no single
	// one explains it, nor bowed boards do.
	Any, Several bool
	// Bowed are the middle figures among Again: it need be no slip, the boards may be bowed.
	Bowed []Figure
}

// Agree tells that nothing is to be measured again.
func (d *Doubt) Agree() bool { return len(d.Again) == 0 && !d.Several }

// slack is what of a deviation is rounding, mm.
const slack = 1e-3

// doubtOf compares figures with each other; within is how far each may be off, mm.
func doubtOf(all []taken, within, w, h float64) Doubt {
	whole := newFit(all, w, h)
	if whole.checks() == 0 {
		return Doubt{}
	}
	d := Doubt{Checked: true}
	if d.Off = whole.least(within); d.Off <= within+slack {
		return d
	}
	type suspect struct {
		figure Figure
		off    float64
	}
	var found []suspect
	checked := 0 // figures that others check
	for i, t := range all {
		rest := newFit(slices.Delete(slices.Clone(all), i, i+1), w, h)
		if rest.known < whole.known {
			continue // it alone tells something, and contradicts nothing
		}
		checked++
		if rest.spread() > within+slack {
			continue // the worst is at least as far off as that, and no program has to be solved
		}
		if off := rest.least(within); off <= within+slack {
			found = append(found, suspect{t.figure, off})
		}
	}
	slices.SortStableFunc(found, func(a, b suspect) int {
		switch {
		case a.off < b.off-slack:
			return -1
		case a.off > b.off+slack:
			return 1
		}
		return 0
	})
	for _, s := range found {
		d.Again = append(d.Again, s.figure)
	}
	d.Any = len(found) == checked
	if len(found) == 0 {
		d.bowedBoth(all, within, w, h)
	}
	for _, f := range d.Again {
		if f.Middle() {
			d.Bowed = append(d.Bowed, f)
		}
	}
	d.Several = len(d.Again) == 0
	return d
}

// bowedBoth takes both middle figures for bowed where the others agree without them.
func (d *Doubt) bowedBoth(all []taken, within, w, h float64) {
	rest := without(all, []Figure{WidthMiddle, HeightMiddle})
	if len(rest) == len(all)-2 && newFit(rest, w, h).least(within) <= within+slack {
		d.Again = []Figure{WidthMiddle, HeightMiddle}
	}
}

// without leaves figures out.
func without(all []taken, out []Figure) []taken {
	return slices.DeleteFunc(slices.Clone(all), func(t taken) bool { return slices.Contains(out, t.figure) })
}

// spread is the root of the mean square by which figures differ from the corners'. No corners
// have less, so that whatever the corners at least one figure is as far off as that.
func (f *fit) spread() float64 {
	_, left := f.grown()
	return mat.Norm(left, 2) / math.Sqrt(float64(len(f.taken)))
}

// least is the least that the most wrong figure is off, mm, whatever the corners: a linear
// program, begun at the least squares and done again at its own corners, as figures bend with
// them. A step that bends them to the worse is tried again a quarter as long. Where all are
// within enough it stops.
func (f *fit) least(enough float64) float64 {
	best := f.off()
	at := *f
	far := math.Inf(1)
	for range 20 {
		if best <= enough || f.checks() <= 0 {
			return best
		}
		step, promised, ok := at.towards(far)
		if !ok || promised > best-slack/10 {
			return best
		}
		next, longest := at, 0.0
		for k := range step {
			next.corners[k] += step[k]
			longest = max(longest, math.Abs(step[k]))
		}
		if off := next.off(); off < best {
			at, best = next, off
		} else {
			far = longest / 4
		}
	}
	return best
}

// towards is the step of the corners that makes the most wrong figure least wrong, to first
// order, in the directions that the figures tell of (the right singular vectors), in none of
// them further than far; and how wrong that leaves it.
func (f *fit) towards(far float64) (step corners, least float64, ok bool) {
	jac, left := f.grown()
	var svd mat.SVD
	if !svd.Factorize(jac, mat.SVDThin) {
		return step, 0, false
	}
	var v, along mat.Dense
	svd.VTo(&v)
	n, k := len(f.taken), f.known
	along.Mul(jac, v.Slice(0, len(step), 0, k))
	grows, off := make([][]float64, n), make([]float64, n)
	for i := range grows {
		grows[i], off[i] = make([]float64, k), left.AtVec(i)
		for j := range k {
			grows[i][j] = -along.At(i, j)
		}
	}
	// No step is longer: figures that it changes by twice the worst are as wrong on the other side.
	far = min(far, 2*mat.Norm(left, 2)*math.Sqrt(float64(n))/svd.Values(nil)[k-1])
	low, high := make([]float64, k), make([]float64, k)
	for j := range k {
		low[j], high[j] = -far, far
	}
	x, least, ok := minimax.Least(grows, off, low, high)
	if !ok {
		return step, 0, false
	}
	for c := range step {
		for j := range k {
			step[c] += v.At(c, j) * x[j]
		}
	}
	return step, least, true
}
