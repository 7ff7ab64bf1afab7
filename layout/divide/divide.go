// Package divide shares out a stack's height among its fronts, exactly.
package divide

import (
	"math"

	"frontlay/model"
	"frontlay/model/length"
)

// Part is one member of a stack, bottom to top. Fixed above zero is its height;
// otherwise it takes Share of what is left. Least and Greatest bound a computed
// height; 0 is no bound.
type Part struct {
	Fixed    length.Length
	Share    float64
	Least    length.Length
	Greatest length.Length
}

// Result is a division. Heights are bottom to top, each above zero. Over is the
// sum of heights less the room there was: zero where the division came out
// exactly, above zero where the parts need more than there is. Short and Tall
// list the parts whose Least or Greatest stands in the way of an exact sum. Shares
// tells of each part how its height came about, before rounding: the computed ones
// share Room by weight, Weights in all; that is what bounded parts and offsets leave.
type Result struct {
	Heights []length.Length
	Shares  []Share
	Room    length.Length
	Weights float64
	Over    length.Length
	Short   []int // parts that would have to go below their Least
	Tall    []int // parts that would have to go above their Greatest
}

// Share is what a computed part is before rounding: Want = Offset + Weight / Weights
// of the room shared by weight, or, where Held is set, its Least or Greatest. It is
// zero for a fixed part.
type Share struct {
	Want, Offset length.Length
	Weight       float64
	Held         bool
}

// Stack divides room (gaps already taken off) among parts by a rule. Computed
// heights are whole multiples of the rounding step and not more than a step from
// their share; the computed part that is nearest to the end that the rounding
// names takes the odd rest (see length.Apportion). Where there is a computed part
// that its bounds let take it, the sum is exactly room.
func Stack(room length.Length, parts []Part, by model.Division, round model.Rounding) Result {
	step := round.Step
	if step <= 0 {
		step = length.Millimetre
	}
	res := Result{Heights: make([]length.Length, len(parts)), Shares: make([]Share, len(parts))}
	var open []int
	left := room
	for i, p := range parts {
		if p.Fixed > 0 {
			res.Heights[i] = p.Fixed
			left -= p.Fixed
		} else {
			open = append(open, i)
		}
	}
	if len(open) > 0 {
		s := newSharing(parts, open, by)
		portions := make([]length.Portion, len(open))
		for k, h := range s.ideal(float64(left), float64(step)) {
			p := &parts[open[k]]
			portions[k] = length.Portion{Want: length.Length(h + 0.5), Least: p.Least, Greatest: p.Greatest}
			res.Shares[open[k]] = Share{portions[k].Want, length.Length(s.offset[k] + 0.5), s.weight[k], s.held[k]}
		}
		res.Room, res.Weights = length.Length(math.Round(s.left)), s.total
		for k, h := range length.Apportion(left, step, portions, round.Rest == model.RestTop) {
			res.Heights[open[k]] = h
		}
	}
	sum := length.Length(0)
	for _, h := range res.Heights {
		sum += h
	}
	res.Over = sum - room
	for _, i := range open {
		if res.Over > 0 && parts[i].Least > 0 && res.Heights[i] <= parts[i].Least {
			res.Short = append(res.Short, i)
		}
		if res.Over < 0 && parts[i].Greatest > 0 && res.Heights[i] >= parts[i].Greatest {
			res.Tall = append(res.Tall, i)
		}
	}
	return res
}

// sharing holds the computed parts of a stack: each is offset + λ·weight high,
// with one λ for all that no bound holds.
type sharing struct {
	parts          []Part
	open           []int
	offset, weight []float64
	// What ideal finds: which parts a bound holds, and what the others share by
	// weight.
	held        []bool
	left, total float64
}

func newSharing(parts []Part, open []int, by model.Division) *sharing {
	n := len(open)
	figures := make([]float64, 2*n)
	s := &sharing{parts: parts, open: open, offset: figures[:n], weight: figures[n:], held: make([]bool, n)}
	factor := 1.0
	for k := n - 1; k >= 0; k-- { // from the top, as the rules grow downwards
		s.weight[k] = 1
		switch by.Rule {
		case model.DivideStep:
			s.offset[k] = float64(by.Step) * float64(n-1-k)
		case model.DivideRatio:
			s.weight[k] = factor
			if by.Ratio > 0 && !math.IsInf(by.Ratio, 0) {
				factor = min(factor*by.Ratio, 1e100)
			}
		case model.DivideShares:
			if sh := parts[open[k]].Share; sh > 0 {
				s.weight[k] = min(sh, 1e100) // so that no sum is infinite
			}
		}
	}
	return s
}

// ideal gives the heights in nanometres before rounding. Bounds are met by
// freezing, round after round, the parts on the side that is violated most, so
// that what they don't take goes to the others.
func (s *sharing) ideal(left, step float64) []float64 {
	h := make([]float64, len(s.open))
	frozen := s.held
	for range len(h) + 1 { // each round but the last freezes a part
		room, weight := left, 0.0
		for k := range h {
			if frozen[k] {
				room -= h[k]
			} else {
				room -= s.offset[k]
				weight += s.weight[k]
			}
		}
		s.left, s.total = room, weight
		if weight == 0 {
			return h
		}
		under, over := 0.0, 0.0
		for k := range h {
			if frozen[k] {
				continue
			}
			h[k] = s.offset[k] + room*(s.weight[k]/weight)
			lo, hi := s.bounds(k, step)
			under += max(0, lo-h[k])
			over += max(0, h[k]-hi)
		}
		if under == 0 && over == 0 {
			return h
		}
		for k := range h {
			if frozen[k] {
				continue
			}
			lo, hi := s.bounds(k, step)
			if under >= over && h[k] < lo {
				h[k], frozen[k] = lo, true
			} else if over > under && h[k] > hi {
				h[k], frozen[k] = hi, true
			}
		}
	}
	return h
}

// bounds of an open part: never below one rounding step, so that no front
// vanishes however little room there is.
func (s *sharing) bounds(k int, step float64) (lo, hi float64) {
	p := s.parts[s.open[k]]
	lo, hi = step, math.Inf(1)
	if p.Least > 0 {
		lo = max(lo, float64(p.Least))
	}
	if p.Greatest > 0 {
		hi = max(lo, float64(p.Greatest))
	}
	return lo, hi
}
