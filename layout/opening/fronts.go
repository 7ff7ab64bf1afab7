package opening

import (
	"math"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Best are the best rectangular fronts in an opening: the rectangle that a stack of them fills,
// turned and cut so that the largest wedge between an edge and the opening beside it is least,
// and in the middle of it.
//
// A wedge is what a reveal changes by along an edge. Width and height of the rectangle are free,
// so that each edge stands halfway between where the opening is nearest and furthest; only how
// it is turned is a compromise between the four.
type Best struct {
	Width, Height length.Length // of the stack, cut down to a tenth of a millimetre
	PlannedWidth  length.Length
	PlannedHeight length.Length
	// Rises is how far the lower edge rises to the right over its width, beyond the opening's
	// bottom: the right runners go up by that, against the left ones.
	Rises   length.Length
	Reveals [4]Reveal // by Edge

	turn         float64 // of the rectangle, as dy by dx
	left, bottom float64 // of its lower left corner in its own direction, mm
}

// Reveal is what comes of the reveal wanted along an edge: at its lower or left end, in its
// middle, and at its other end.
type Reveal struct {
	Wanted length.Length
	At     [3]length.Length
}

// Spread is the difference of the widest and the narrowest place.
func (r Reveal) Spread() length.Length {
	return max(r.At[0], r.At[1], r.At[2]) - min(r.At[0], r.At[1], r.At[2])
}

// turned gives a point in the direction of a rectangle that is turned.
func turned(p point, turn float64) point {
	n := math.Hypot(1, turn)
	return point{(p.x + turn*p.y) / n, (p.y - turn*p.x) / n}
}

// place gives where the three points of an edge lie across it, in a turned direction.
func (s *Shape) places(e Edge, turn float64) (at [3]float64) {
	for i, p := range s.edge(e) {
		q := turned(p, turn)
		if at[i] = q.x; e >= Bottom {
			at[i] = q.y
		}
	}
	return at
}

// wedge is the largest spread of an edge's places, in a turned direction. It is convex in the
// turn, near enough: each place moves in proportion to it.
func (s *Shape) wedge(turn float64) float64 {
	most := 0.0
	for e := Left; e <= Top; e++ {
		at := s.places(e, turn)
		most = max(most, max(at[0], at[1], at[2])-min(at[0], at[1], at[2]))
	}
	return most
}

// bestTurn is the turn with the least wedge, by thirds of what is left.
func (s *Shape) bestTurn() float64 {
	low, high := -0.2, 0.2
	for range 200 {
		a, b := low+(high-low)/3, high-(high-low)/3
		if s.wedge(a) <= s.wedge(b) {
			high = b
		} else {
			low = a
		}
	}
	return (low + high) / 2
}

// cut is the step to which a width is cut down.
const cut = length.Millimetre / 10

// BestFronts are the best for a stack that lies so against a planned opening; wanted are the
// reveals by Edge, as they are seen.
func (s *Shape) BestFronts(stack, opening plane.Rect, wanted [4]length.Length) Best {
	b := Best{PlannedWidth: stack.Width(), PlannedHeight: stack.Height(), turn: s.turn}
	middle := func(e Edge) float64 {
		at := s.places(e, b.turn)
		return (max(at[0], at[1], at[2]) + min(at[0], at[1], at[2])) / 2
	}
	left := middle(Left) + (stack.Min.X - opening.Min.X).MM()
	right := middle(Right) - (opening.Max.X - stack.Max.X).MM()
	bottom := middle(Bottom) + (stack.Min.Y - opening.Min.Y).MM()
	top := middle(Top) - (opening.Max.Y - stack.Max.Y).MM()
	b.Width, b.Height = length.FromMM(right-left+1e-6).FloorTo(cut), length.FromMM(top-bottom+1e-6).FloorTo(cut)
	b.left, b.bottom = (left+right-b.Width.MM())/2, (bottom+top-b.Height.MM())/2
	c := &s.corners
	slope := (c[lowerRight+1] - c[lowerLeft+1]) / (c[lowerRight] - c[lowerLeft])
	b.Rises = length.FromMM((b.turn - slope) * b.Width.MM())
	b.reveals(s, stack, opening, wanted)
	return b
}

// reveals works out what comes of the reveals.
func (b *Best) reveals(s *Shape, stack, opening plane.Rect, wanted [4]length.Length) {
	edge := [4]float64{b.left, b.left + b.Width.MM(), b.bottom, b.bottom + b.Height.MM()}
	planned := [4]length.Length{stack.Min.X - opening.Min.X, opening.Max.X - stack.Max.X, stack.Min.Y - opening.Min.Y, opening.Max.Y - stack.Max.Y}
	for e := Left; e <= Top; e++ {
		b.Reveals[e].Wanted = wanted[e]
		for i, at := range s.places(e, b.turn) {
			gap := edge[e] - at
			if e == Right || e == Top {
				gap = -gap
			}
			b.Reveals[e].At[i] = wanted[e] + length.FromMM(gap) - planned[e]
		}
	}
}

// Corners are those of the rectangle in the frame of the shape: lower left, lower right, upper
// right, upper left.
func (b *Best) Corners() (at [4]plane.Point) {
	w, h, n := b.Width.MM(), b.Height.MM(), math.Hypot(1, b.turn)
	for i, p := range []point{{b.left, b.bottom}, {b.left + w, b.bottom}, {b.left + w, b.bottom + h}, {b.left, b.bottom + h}} {
		at[i] = point{(p.x - b.turn*p.y) / n, (p.y + b.turn*p.x) / n}.exact()
	}
	return at
}

// WantedReveals are the reveals of a bay's stack by Edge: to the outline of an overlay carcass, or
// to the middle of a partition; of inset fronts to the opening.
func WantedReveals(c *plan.Cabinet, j int) (r [4]length.Length) {
	b := &c.Bays[j]
	around := c.Outline
	if c.Mount == model.Inset {
		around = b.Opening
	} else {
		if j > 0 {
			around.Min.X = c.Partitions[j-1].Centre().X
		}
		if j < len(c.Partitions) {
			around.Max.X = c.Partitions[j].Centre().X
		}
	}
	return [4]length.Length{b.Stack.Min.X - around.Min.X, around.Max.X - b.Stack.Max.X, b.Stack.Min.Y - around.Min.Y, around.Max.Y - b.Stack.Max.Y}
}
