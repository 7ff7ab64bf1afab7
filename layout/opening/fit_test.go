package opening

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"frontlay/model"
	"frontlay/model/length"
)

// quadrilateral draws corners of an opening about w by h, each up to most (mm) from those of the
// rectangle, the first at the origin, with its bottom level unless it leans.
func quadrilateral(r *rand.Rand, w, h, most float64, leans bool) corners {
	d := func() float64 { return (2*r.Float64() - 1) * most }
	c := corners{0, 0, w + d(), 0, w + d(), h + d(), d(), h + d()}
	if leans {
		c[lowerRight+1] = d()
	}
	return c
}

// tape is what a tape would say of corners, with an error for each figure, mm.
func tape(c corners, leans bool, wrong func(Figure) float64) *model.Measured {
	m := new(model.Measured)
	at := func(f Figure) length.Length {
		v, _ := f.of(&c)
		return length.FromMM(v + wrong(f))
	}
	m.Widths = model.MeasuredWidths{Bottom: at(WidthBottom), Middle: at(WidthMiddle), Top: at(WidthTop)}
	m.Heights = model.MeasuredHeights{Left: at(HeightLeft), Middle: at(HeightMiddle), Right: at(HeightRight)}
	m.Rising, m.Falling = at(Rising), at(Falling)
	if leans {
		plumb, level := at(PlumbLeft), at(Level)
		m.PlumbLeft, m.Level = &plumb, &level
	}
	return m
}

func exactly(Figure) float64 { return 0 }

func TestRandomQuadrilateralsComeBack(t *testing.T) {
	r := rand.New(rand.NewPCG(1, 14))
	for n := range 1000 {
		w, h := 250+2000*r.Float64(), 250+2000*r.Float64()
		leans := n%2 == 0
		c := quadrilateral(r, w, h, 20, leans)
		all := takenOf(tape(c, leans, exactly))
		f := newFit(all, w, h)
		shape := f.placed()
		for _, x := range all {
			// A figure is a whole number of nanometres: half of one is lost.
			if v, _ := x.figure.of(&shape); math.Abs(v-x.value) > 1e-6 {
				t.Fatalf("case %d: %v is %.9f, the shape has %.9f", n, x.figure.Say(), x.value, v)
			}
		}
		if n%20 > 0 {
			continue
		}
		for k := range c {
			// What rounding half a nanometre in each figure can do to this coordinate.
			if most := f.reach(k) + 1e-7; math.Abs(shape[k]-c[k]) > most {
				t.Fatalf("case %d: coordinate %d is %.9f, comes back as %.9f; rounding explains %.9f", n, k, c[k], shape[k], most)
			}
		}
	}
}

// reach is the most that half a nanometre in each figure moves a coordinate of the placed shape,
// found by moving each figure.
func (f *fit) reach(k int) float64 {
	sum := 0.0
	for i := range f.taken {
		moved := slices.Clone(f.taken)
		moved[i].value += 1e-3
		g := newFit(moved, f.corners[lowerRight]-f.corners[lowerLeft], f.corners[upperLeft+1]-f.corners[lowerLeft+1])
		was, is := f.placed(), g.placed()
		sum += math.Abs(is[k]-was[k]) / 1e-3 * 0.5e-6
	}
	return sum
}
