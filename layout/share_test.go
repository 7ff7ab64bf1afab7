package layout_test

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// genStacks draws a cabinet of three equal bays whose stacks add up, of every
// rule of division; fronts of the first may line up with the second.
func genStacks(t *rapid.T) *model.Project {
	p := &model.Project{
		Boards:   model.Boards{Carcass: model.Board{Thickness: 18 * mm}, Front: model.Board{Thickness: 19 * mm}, Back: model.Board{Thickness: 8 * mm}},
		Reveals:  model.Reveals{Top: 3 * mm, Bottom: projecttest.Tenths(t, 0, 4, "bottom"), Left: 2 * mm, Right: 2 * mm, Gap: projecttest.Tenths(t, 0, 5, "gap")},
		Rounding: model.Rounding{Step: rapid.SampledFrom([]length.Length{0, mm / 2, 5 * mm, length.Inch64th}).Draw(t, "rounding"), Rest: model.RestTo(rapid.IntRange(0, 1).Draw(t, "rest"))},
	}
	c := model.Cabinet{Name: "C1", Width: 1800 * mm, Height: projecttest.Tenths(t, 1200, 2000, "height"), Depth: 500 * mm}
	for j := range 3 {
		b := model.Bay{Division: model.Division{
			Rule: model.DivisionRule(rapid.IntRange(0, 3).Draw(t, "rule")),
			Step: projecttest.Tenths(t, 0, 30, "step"), Ratio: rapid.Float64Range(0.9, 1.3).Draw(t, "ratio"),
		}}
		for k, n := 0, rapid.IntRange(2, 6).Draw(t, "fronts"); k < n; k++ {
			f := model.Front{Name: fmt.Sprintf("F%d%d", j, k), Kind: model.FixedPanel, Share: rapid.Float64Range(0.7, 1.5).Draw(t, "share")}
			switch sort := rapid.IntRange(0, 7).Draw(t, "sort"); {
			case sort == 0:
				f.Height, f.Share = projecttest.Tenths(t, 90, 200, "fixed"), 0
				f.Locked = rapid.Bool().Draw(t, "locked")
			case sort == 1 && j == 0 && k < n-1:
				f.LineUp = &model.LineUp{Bay: 2, Front: fmt.Sprintf("F1%d", rapid.IntRange(0, 3).Draw(t, "with"))}
			case sort == 2:
				f.Least = projecttest.Tenths(t, 50, 120, "least")
			case sort == 3:
				f.Greatest = projecttest.Tenths(t, 200, 600, "greatest")
			}
			b.Fronts = append(b.Fronts, f)
		}
		c.Bays = append(c.Bays, b)
	}
	p.Cabinets = []model.Cabinet{c}
	return p
}

// stackHeights are the heights of the fronts of a bay of the first cabinet.
func stackHeights(r layout.Result, j int) []length.Length {
	b := &r.Plan.Cabinets[0].Bays[j]
	all := make([]length.Length, b.Count)
	for i := range all {
		all[i] = r.Plan.Fronts[b.First+i].Face.Height()
	}
	return all
}

// drawShared draws at least two fronts of the first stack.
func drawShared(t *rapid.T, n int) (at []model.Place, chosen []bool) {
	chosen = make([]bool, n)
	for _, k := range rapid.Permutation(indexes(n)).Draw(t, "chosen")[:rapid.IntRange(2, n).Draw(t, "many")] {
		chosen[k] = true
		at = append(at, model.Place{Front: k})
	}
	return at, chosen
}

func indexes(n int) []int {
	all := make([]int, n)
	for i := range all {
		all[i] = i
	}
	return all
}

// kept fails where a front that was not chosen has got another height, or the
// stack another sum.
func kept(t *rapid.T, before, after []length.Length, chosen []bool) {
	was, is := length.Length(0), length.Length(0)
	for i := range before {
		if !chosen[i] && before[i] != after[i] {
			t.Fatalf("front %d was not chosen; heights were %v and are %v", i, before, after)
		}
		was, is = was+before[i], is+after[i]
	}
	if was != is {
		t.Fatalf("heights %v add up to %v, those before to %v", after, is, was)
	}
}

// Whatever rule divides the stack: after it the chosen fronts are equal, to the
// rounding step, and the others what they were.
func TestEqualHeightsAreEqual(t *testing.T) {
	made := 0
	rapid.Check(t, func(t *rapid.T) {
		p := genStacks(t)
		r := layout.Solve(p)
		if len(r.Plan.Problems) > len(p.Cabinets[0].Bays) { // beyond the hardware that is not there
			t.Skip("a stack that does not add up")
		}
		before := stackHeights(r, 0)
		at, chosen := drawShared(t, len(before))
		next, err := edit.Equalise{At: at, Heights: before}.Apply(p)
		if err != nil {
			t.Skip(err)
		}
		made++
		after := stackHeights(layout.Solve(next), 0)
		kept(t, before, after, chosen)
		least, most, apart := length.Length(1<<62), length.Length(0), p.RoundingStep()
		for i, h := range after {
			if !chosen[i] {
				continue
			}
			least, most = min(least, h), max(most, h)
			if f := p.Cabinets[0].Bays[0].Fronts[i]; f.Least > 0 || f.Greatest > 0 {
				apart = 2 * p.RoundingStep() // a bound between two steps can keep the step from whom it is due
			}
		}
		if most-least > apart {
			t.Fatalf("chosen %v of %v become %v", chosen, before, after)
		}
	})
	if made == 0 {
		t.Error("nothing was made equal")
	}
}

// The chosen fronts get taller downwards, the others keep their heights.
func TestGraduatingKeepsTheOthers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genStacks(t)
		for i := range p.Cabinets[0].Bays[0].Fronts {
			p.Cabinets[0].Bays[0].Fronts[i].Least, p.Cabinets[0].Bays[0].Fronts[i].Greatest = 0, 0
		}
		r := layout.Solve(p)
		if len(r.Plan.Problems) > len(p.Cabinets[0].Bays) {
			t.Skip("a stack that does not add up")
		}
		before := stackHeights(r, 0)
		at, chosen := drawShared(t, len(before))
		next, err := edit.Graduate{At: at, Heights: before, Ratio: 1.25}.Apply(p)
		if err != nil {
			t.Skip(err)
		}
		after := stackHeights(layout.Solve(next), 0)
		kept(t, before, after, chosen)
		above := length.Length(0)
		for i := len(after) - 1; i >= 0; i-- {
			if !chosen[i] {
				continue
			}
			if off := (float64(above)*1.25 - float64(after[i])); above > 0 && (off > 5*float64(p.RoundingStep()) || off < -5*float64(p.RoundingStep())) {
				t.Fatalf("chosen %v of %v become %v", chosen, before, after)
			}
			above = after[i]
		}
	})
}

// After copying, bays of the same height have the same list of heights, by
// whatever rule and line-ups the stack is divided.
func TestCopiedStacksHaveTheSameHeights(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := genStacks(t)
		r := layout.Solve(p)
		if len(r.Plan.Problems) > len(p.Cabinets[0].Bays) {
			t.Skip("a stack that does not add up")
		}
		from := rapid.IntRange(0, 2).Draw(t, "from")
		want := stackHeights(r, from)
		e := edit.CopyStack{From: model.Place{Bay: from, Front: -1}, Heights: want}
		for j := range 3 {
			if j != from {
				e.To = append(e.To, model.Place{Bay: j, Front: -1})
			}
		}
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		got := layout.Solve(next)
		for j := range 3 {
			if h := stackHeights(got, j); !slices.Equal(h, want) {
				t.Fatalf("bay %d has heights %v, the stack that was copied %v", j+1, h, want)
			}
		}
	})
}
