package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Two bays in a carcass of 1200 × 700: at the left two fronts, at the right one front
// under an open niche. Gaps are counted by hand from the faces.
func TestGapsAreCountedFromTheFaces(t *testing.T) {
	mm := length.MM
	face := func(number int, kind model.Kind, left, bottom, right, top int64) plan.Front {
		return plan.Front{Number: number, Kind: kind, Face: plane.R(mm(left), mm(bottom), mm(right), mm(top))}
	}
	p := &plan.Plan{
		Cabinets: []plan.Cabinet{{Outline: plane.R(0, 0, mm(1200), mm(700))}},
		Fronts: []plan.Front{
			face(1, model.DrawerFront, 2, 1, 598, 350),
			face(2, model.DrawerFront, 2, 354, 598, 697),
			face(3, model.FixedPanel, 601, 1, 1198, 350),
			face(4, model.OpenNiche, 601, 354, 1198, 697),
		},
	}
	var got []string
	for _, g := range p.Gaps() {
		way := "level"
		if g.Vertical {
			way = "upright"
		}
		got = append(got, fmt.Sprintf("%d %s %v at %v,%v", g.Front.Number, way, g.Size, g.At.X, g.At.Y))
	}
	want := []string{
		"1 level 1 mm at 300 mm,0.5 mm", "1 upright 2 mm at 1 mm,175.5 mm",
		"2 level 4 mm at 300 mm,352 mm", "2 level 3 mm at 300 mm,698.5 mm", "2 upright 2 mm at 1 mm,525.5 mm",
		"3 level 1 mm at 899.5 mm,0.5 mm", "3 upright 3 mm at 599.5 mm,175.5 mm", "3 upright 2 mm at 1199 mm,175.5 mm",
	}
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// Inset fronts are set against their opening, not against a front behind a partition.
func TestGapsOfInsetFronts(t *testing.T) {
	mm := length.MM
	p := &plan.Plan{Cabinets: []plan.Cabinet{{
		Outline: plane.R(0, 0, mm(600), mm(400)),
		Bays:    []plan.Bay{{Opening: plane.R(mm(18), mm(18), mm(582), mm(382))}},
	}}, Fronts: []plan.Front{{Number: 1, Inset: true, Face: plane.R(mm(20), mm(21), mm(580), mm(379))}}}
	for i, want := range []int64{3, 3, 2, 2} {
		if got := p.Gaps()[i].Size; got != mm(want) {
			t.Errorf("gap %d is %v; want %d mm", i, got, want)
		}
	}
}

// A high front beside three low ones has a gap to each, whichever of them stands at the left; to
// the one that both see from their middle only once.
func TestGapsBesideFrontsOfUnlikeHeights(t *testing.T) {
	mm := length.MM
	face := func(number int, left, bottom, right, top int64) plan.Front {
		return plan.Front{Number: number, Kind: model.DrawerFront, Face: plane.R(mm(left), mm(bottom), mm(right), mm(top))}
	}
	stack := func(left int64) []plan.Front {
		return []plan.Front{face(1, left, 2, left+400, 230), face(2, left, 233, left+400, 465), face(3, left, 468, left+400, 698)}
	}
	for name, c := range map[string]struct {
		fronts []plan.Front
		want   string
	}{
		"the high one at the left":  {append(stack(405), face(9, 2, 2, 402, 698)), "1 0 9 2-230, 2 0 9 233-465, 3 0 9 468-698"},
		"the high one at the right": {append(stack(2), face(9, 405, 2, 805, 698)), "1 1 9 2-230, 3 1 9 468-698, 9 0 2 233-465"},
	} {
		p := &plan.Plan{Cabinets: []plan.Cabinet{{Outline: plane.R(0, 0, mm(807), mm(700))}}, Fronts: c.fronts}
		var got []string
		for _, g := range p.Gaps() {
			if g.Vertical && g.Other != nil {
				from, to := g.Span()
				got = append(got, fmt.Sprintf("%d %d %d %d-%d", g.Front.Number, g.Edge, g.Other.Number, from/length.Millimetre, to/length.Millimetre))
				if g.Size != mm(3) {
					t.Errorf("%s: a gap of %v", name, g.Size)
				}
			}
		}
		if strings.Join(got, ", ") != c.want {
			t.Errorf("%s: got %q, want %q", name, strings.Join(got, ", "), c.want)
		}
	}
}
