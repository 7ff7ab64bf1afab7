package divide

import (
	"slices"

	"frontlay/model"
	"frontlay/model/length"
)

// round turns ideal heights into whole steps without losing the sum: each is
// rounded down, what is left goes out in whole steps by the largest remainder
// (ties from the end that takes the rest), and what is less than a step to the
// part at that end. Bounds are kept.
func (s *sharing) round(left length.Length, ideal []float64, step length.Length, rest model.RestTo, out []length.Length) {
	n := len(s.open)
	lengths := make([]length.Length, 3*n)
	h, lo, hi := lengths[:n], lengths[n:2*n], lengths[2*n:]
	remainder := make([]float64, n)
	sum := length.Length(0)
	for k := range h {
		p := s.parts[s.open[k]]
		lo[k], hi[k] = max(step, p.Least), 1<<62
		if p.Greatest > 0 {
			hi[k] = max(lo[k], p.Greatest)
		}
		h[k] = min(max(nearest(ideal[k]).FloorTo(step), lo[k]), hi[k])
		remainder[k] = ideal[k] - float64(h[k])
		sum += h[k]
	}
	indexes := make([]int, 2*n)
	order, end := indexes[:n], indexes[n:] // from the end that takes the rest
	for k := range order {
		order[k] = k
		if rest == model.RestTop {
			order[k] = n - 1 - k
		}
	}
	copy(end, order)
	slices.SortStableFunc(order, func(a, b int) int {
		// A nanometre of difference is float noise, not a larger remainder.
		switch d := remainder[a] - remainder[b]; {
		case d > 1:
			return -1
		case d < -1:
			return 1
		default:
			return 0
		}
	})
	over := left - sum
	for over >= step {
		gave := false
		for _, k := range order {
			if over >= step && h[k]+step <= hi[k] {
				h[k] += step
				over -= step
				gave = true
			}
		}
		if !gave {
			break
		}
	}
	for _, k := range end {
		if over > 0 {
			d := min(over, hi[k]-h[k])
			h[k], over = h[k]+d, over-d
		} else if over < 0 {
			d := max(over, lo[k]-h[k])
			h[k], over = h[k]+d, over-d
		}
	}
	for k, i := range s.open {
		out[i] = h[k]
	}
}

// nearest turns a float of nanometres into a length; float noise just below a
// whole step must not cost the part that step.
func nearest(nm float64) length.Length { return length.Length(nm + 0.5) }
