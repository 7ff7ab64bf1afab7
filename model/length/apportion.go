package length

import (
	"cmp"
	"slices"
)

// Portion is what one part of a sum is to be: Want, and bounds that it keeps.
// Greatest 0 is no bound. Want lies between the bounds.
type Portion struct {
	Want, Least, Greatest Length
}

// Apportion rounds the wants of parts to whole multiples of step, above zero, so
// that the parts add up to total: exactly so where the wants do, to within a
// nanometre each. No part is more than a step from its want, and without bounds
// equal wants come out at most a step apart.
//
// Each part is rounded down, and what is left goes out in whole steps, one to a
// part, by the largest remainder. Where total is no whole number of steps one
// part takes the odd rest: the first of the list (with last, the last of it)
// whose bounds allow it. That part is rounded to so much above whole steps, so
// that the rest comes in place of a part of its length and not on top of a step.
// Of equal remainders those nearer to that end are rounded up. Where bounds
// leave no whole steps, parts are off the steps instead.
func Apportion(total, step Length, parts []Portion, last bool) []Length {
	n := len(parts)
	got, order := make([]Length, n), make([]int, n) // the order begins at the end that takes the rest
	over, noise := total, total
	for k := range parts {
		got[k] = max(parts[k].Want.FloorTo(step), parts[k].least(step))
		over -= got[k]
		noise -= parts[k].Want
		order[k] = k
		if last {
			order[k] = n - 1 - k
		}
	}
	ends := slices.Clone(order)
	for _, k := range ends {
		p := &parts[k]
		odd := over + got[k] - (over + got[k]).FloorTo(step)
		h := (p.Want - odd).FloorTo(step) + odd
		if h >= p.least(step) && h+step <= p.greatest(step) {
			over += got[k] - h
			got[k] = h
			break
		}
	}
	slices.SortStableFunc(order, func(a, b int) int {
		return cmp.Compare(parts[b].Want-got[b], parts[a].Want-got[a])
	})
	for _, k := range order {
		if over >= step && got[k]+step <= parts[k].greatest(step) {
			got[k] += step
			over -= step
		}
	}
	for _, whole := range [2]bool{true, false} { // what bounds have kept off the steps, to one part if it can take all
		for _, k := range ends {
			p := &parts[k]
			most := min(p.Want+step+noise.Abs(), p.greatest(step))
			if d := max(p.least(step)-got[k], min(over, most-got[k])); d == over || !whole {
				got[k], over = got[k]+d, over-d
			}
		}
	}
	return got
}

// least is the least that a part can be: a step, so that none vanishes.
func (p *Portion) least(step Length) Length { return max(step, p.Least) }

func (p *Portion) greatest(step Length) Length {
	if p.Greatest <= 0 {
		return 1 << 62
	}
	return max(p.least(step), p.Greatest)
}
