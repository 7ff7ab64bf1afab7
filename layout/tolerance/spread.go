// Package tolerance works out how far gaps come from what is planned, from how exactly the
// pieces are made: for each gap the worst case, its likely spread, and the share of cabinets
// in which it is as wanted, before and after adjusting.
//
// A figure ± of the workshop is what nineteen of twenty pieces keep, and errors are taken
// for independent and normally distributed: ± is 1.96 standard deviations (distribution
// from gonum). Systematic errors, such as a saw's fence that stands wrong, are not known
// here. Sizes are float64 millimetres.
package tolerance

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/integrate/quad"
	"gonum.org/v1/gonum/stat/distuv"

	"frontlay/model/length"
)

// perSigma is how many standard deviations ± is: Φ(1.95996) = 0.975.
var perSigma = distuv.UnitNormal.Quantile(0.975)

// Worst is how far a sum is off where all its parts are off by their full ± at once:
// Σ|t|.
func Worst(parts ...float64) float64 {
	sum := 0.0
	for _, t := range parts {
		sum += math.Abs(t)
	}
	return sum
}

// Likely is the ± of a sum of independent parts, each with its own ±: √Σt² (root sum of
// squares).
func Likely(parts ...float64) float64 {
	sum := 0.0
	for _, t := range parts {
		sum += t * t
	}
	return math.Sqrt(sum)
}

// ends are the errors of a gap at its two ends, left and right or bottom and top, as two
// normal variables with mean 0: their variances and covariance, in mm² of ±.
type ends struct{ p, q, pq float64 }

// within is the probability that both ends are off by no more than a figure above 0. Of
// the middle m and half of the difference d it is that of |m| + |d| ≤ band: an integral
// over m of what is left for d.
func (e ends) within(band float64) float64 {
	scale := perSigma * perSigma
	mm := (e.p + e.q + 2*e.pq) / 4 / scale
	dd := (e.p + e.q - 2*e.pq) / 4 / scale
	md := (e.p - e.q) / 4 / scale
	inside := func(sd, from, to float64) float64 {
		if sd <= tiny {
			if from <= tiny && to >= -tiny {
				return 1
			}
			return 0
		}
		return distuv.UnitNormal.CDF(to/sd) - distuv.UnitNormal.CDF(from/sd)
	}
	if mm <= tiny*tiny {
		return inside(math.Sqrt(dd), -band, band)
	}
	sm := math.Sqrt(mm)
	slope := md / mm
	sd := math.Sqrt(max(dd-md*md/mm, 0))
	f := func(z float64) float64 {
		m := z * sm
		left := band - math.Abs(m)
		return distuv.UnitNormal.Prob(z) * inside(sd, -left-slope*m, left-slope*m)
	}
	end := min(band/sm, 9) // beyond nine standard deviations nothing is left
	// The integrand bends where what is left for d is about its own deviation.
	cuts := []float64{1, 2, 4, end - 8*sd/sm, end - 3*sd/sm, end - sd/sm, end}
	slices.Sort(cuts)
	share, from := 0.0, 0.0
	for _, to := range cuts {
		if to > from {
			share += quad.Fixed(f, from, min(to, end), points, quad.Legendre{}, 0) + quad.Fixed(f, -min(to, end), -from, points, quad.Legendre{}, 0)
			from = min(to, end)
		}
	}
	return min(share, 1)
}

// points is how many points of a piece Legendre's rule takes: enough for nine digits.
const points = 20

// tiny is a size in mm that is nothing.
const tiny = 1e-9

// Shown is a spread as it is told to people: a twentieth of a millimetre or more.
func Shown(l length.Length) length.Length { return l.CeilTo(length.Millimetre / 20) }
