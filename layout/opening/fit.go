package opening

import (
	"math"

	"gonum.org/v1/gonum/mat"
)

// fit is the quadrilateral with straight sides that comes nearest to what was measured, by
// least squares: the corners whose figures differ from the measured ones by the least sum of
// squares. All figures weigh the same, as one tape took them.
type fit struct {
	taken   []taken
	corners corners
	// known is how many independent things the figures tell of the corners; what is more of
	// them than that checks the others.
	known int
	svd   mat.SVD // of how the figures grow with the coordinates, at the rectangle where the fit began
}

// structural is what of a singular value is rounding: at a rectangle figures depend on each
// other exactly or by a good part of 1.
const structural = 1e-9

// newFit fits, beginning at a rectangle w by h (mm), which also gives what the figures leave
// open: of all that fit alike the corners are those that have moved least from it.
//
// It is Gauss and Newton's method: each step solves the linear least squares of what is left,
// by singular values (gonum). Only as many of these count as there are at a rectangle: what a
// lean of a side makes of two figures that tell the same is far too little to conclude from.
func newFit(all []taken, w, h float64) *fit {
	f := &fit{taken: all, corners: corners{0, 0, w, 0, w, h, 0, h}}
	if len(all) == 0 {
		return f
	}
	jac, _ := f.grown()
	f.svd.Factorize(jac, mat.SVDFull)
	f.known = f.svd.Rank(structural)
	for range 60 {
		jac, left := f.grown()
		var svd mat.SVD
		if !svd.Factorize(jac, mat.SVDThin) {
			break
		}
		var step mat.VecDense
		svd.SolveVecTo(&step, left, f.known)
		most := 0.0
		for k := range f.corners {
			f.corners[k] += step.AtVec(k)
			most = max(most, math.Abs(step.AtVec(k)))
		}
		if most < 1e-10 {
			break
		}
	}
	return f
}

// grown is how each figure grows with each coordinate, and what the measured figures are more
// than those of the corners.
func (f *fit) grown() (*mat.Dense, *mat.VecDense) {
	jac, left := mat.NewDense(len(f.taken), len(f.corners), nil), mat.NewVecDense(len(f.taken), nil)
	for i, t := range f.taken {
		v, g := t.figure.of(&f.corners)
		jac.SetRow(i, g[:])
		left.SetVec(i, t.value-v)
	}
	return jac, left
}

// checks is how many figures there are beyond those that the shape takes.
func (f *fit) checks() int { return len(f.taken) - f.known }

// off is the most by which a figure differs from the corners'.
func (f *fit) off() float64 {
	most := 0.0
	for _, t := range f.taken {
		v, _ := t.figure.of(&f.corners)
		most = max(most, math.Abs(t.value-v))
	}
	return most
}

// tells says whether the figures determine a quantity that grows so with the coordinates at the
// rectangle, and by how much it can be off where each of them is off by up to 1: the sum of what
// each adds.
func (f *fit) tells(grows corners) (share float64, known bool) {
	if f.known == 0 {
		return 0, false
	}
	var v, u mat.Dense
	f.svd.VTo(&v)
	f.svd.UTo(&u)
	values := f.svd.Values(nil)
	by := make([]float64, len(f.taken))
	for k := range len(grows) {
		along := 0.0
		for i, g := range grows {
			along += g * v.At(i, k)
		}
		if k >= f.known {
			if math.Abs(along) > 1e-6 {
				return 0, false
			}
			continue
		}
		for i := range by {
			by[i] += along / values[k] * u.At(i, k)
		}
	}
	for _, b := range by {
		share += math.Abs(b)
	}
	return share, true
}
