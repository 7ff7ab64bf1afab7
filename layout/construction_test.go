package layout_test

import (
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// cutOf lists the pieces of a plan but fronts and drawers, as count × what width × height ×
// thickness, for whom.
func cutOf(p *plan.Plan) []string {
	var all []string
	for _, q := range list.Pieces(p) {
		if q.Front == 0 {
			all = append(all, fmt.Sprintf("%d %v %v × %v × %v, %v", q.Count, q.What, q.CutWidth.MM(), q.CutHeight.MM(), q.Board.Thickness.MM(), q.For))
		}
	}
	return all
}

// Worked by hand from testdata/projects/carcasses.yaml (common practice, no source): a back
// that is let in leaves the sides the whole depth of the cabinet, 560. In the groove 20
// from the rear edge it begins at 560 − 20 − 8 = 532 and is as wide as the inside and
// twice the groove, 600 − 25 − 18 + 2 × 9 = 575, and as high as 760 − 2 × 18 + 2 × 9 = 742.
// In a rebate without a figure that is half of 18 deep, it begins at 552, 800 − 36 + 18 =
// 782 wide. The one on the wall is laid on: sides of 400 − 8. One plinth runs under both
// cabinets of 600 and 800; it says nothing of the one on the wall.
func TestCarcassesOfAWorkedProject(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "carcasses.yaml"))
	r := layout.Solve(p)
	for _, f := range r.Findings {
		switch f.Rule {
		case "sample-sheet", "contents", "front-reach": // high fronts, to see the carcasses by
		case "left-right":
			if f.Front != 1 && f.Front != 2 { // only one cabinet has two kinds of sides
				t.Errorf("%v: %v", f.Where, f.What)
			}
		default:
			t.Errorf("%s: %v: %v", f.Rule, f.Where, f.What)
		}
	}
	want := []string{
		"1 left side 560 × 760 × 25, Grooved", "1 right side 560 × 760 × 18, Grooved",
		"2 bottom, top 557 × 560 × 18, Grooved", "1 back 575 × 742 × 8, Grooved",
		"1 plinth board 1400 × 100 × 18, Grooved to Rebated",
		"2 side 560 × 760 × 18, Rebated", "2 bottom, top 764 × 560 × 18, Rebated", "1 back 782 × 742 × 8, Rebated",
		"2 side 392 × 400 × 18, Hung", "2 bottom, top 464 × 392 × 18, Hung", "1 back 500 × 400 × 8, Hung",
	}
	if got := strings.Join(cutOf(r.Plan), "\n"); got != strings.Join(want, "\n") {
		t.Errorf("cut:\n%s\nwant:\n%s", got, strings.Join(want, "\n"))
	}
	for i, depth := range []int64{532, 552, 392} {
		if got := r.Plan.Cabinets[i].Depth; got != length.MM(depth) {
			t.Errorf("cabinet %d is %v deep inside, want %d", i+1, got, depth)
		}
	}
	// The left front lies 25 − 3 over its side: 20 + 22 from its edge to the holes; the
	// right 18 − 3: 35.
	if f := r.Plan.Fronts[0]; f.EdgeDistance.Left != length.MM(42) || f.EdgeDistance.Right != length.MM(35) {
		t.Errorf("edge distances %v, %v, want 42 and 35", f.EdgeDistance.Left, f.EdgeDistance.Right)
	}
	// Of density 680 the left side weighs what is left of it: 560 × 760 × 25 less a groove
	// of 9 × 8 over its height.
	for _, q := range list.Pieces(r.Plan) {
		if q.What.String() == "left side" {
			if got, want := q.WeightKg(), (0.560*0.760*0.025-0.009*0.008*0.760)*680; got < want-1e-9 || got > want+1e-9 {
				t.Errorf("the left side weighs %v, want %v", got, want)
			}
		}
	}
	hardware := list.HardwareList(r.Plan, list.StockPlans(r.Plan), list.Speaker{}, 0)
	var said []string
	for _, row := range hardware.Rows {
		said = append(said, strings.Join(row.Cells, "|"))
	}
	all := strings.Join(append(said, hardware.Notes...), "\n")
	for _, want := range []string{"□|feet, for 100 mm above the floor|pieces|8|8", "□|fixings to hang a cabinet on the wall, for its own weight and its load|sets|1|1", message.Language{}.Say(list.WallCaution())} {
		if !strings.Contains(all, want) {
			t.Errorf("the hardware list lacks %q:\n%s", want, all)
		}
	}
}

// Whatever the sides, the back and the base are: bottom and two sides are as wide as the
// carcass, the back reaches into its grooves and no further, no board begins before
// another that it lies behind ends, and what is inside is what depth is left.
func TestCarcassBoardsAddUp(t *testing.T) {
	of := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "carcasses.yaml"))
	rapid.Check(t, func(t *rapid.T) {
		p := of.Clone()
		mm := func(what string, from, to int64) length.Length {
			return length.MM(rapid.Int64Range(from, to).Draw(t, what))
		}
		for i := range p.Cabinets {
			c := &p.Cabinets[i]
			c.Left.Side, c.Right.Side = mm("left", 10, 40), mm("right", 0, 40)
			c.Back = model.BackFit{Kind: model.BackKind(rapid.IntRange(0, 2).Draw(t, "back")), Depth: mm("depth", 0, 60), Setback: mm("setback", 0, 40)}
			c.Base = model.Base{Kind: model.BaseKind(rapid.IntRange(0, 2).Draw(t, "base")), Setback: mm("toe", 0, 60), FeetCount: rapid.IntRange(0, 9).Draw(t, "feet")}
		}
		r := layout.Solve(p)
		plinth := length.Length(0)
		for i := range r.Plan.Cabinets {
			c, doc := &r.Plan.Cabinets[i], &p.Cabinets[i]
			if doc.Base.Kind == model.OnPlinth {
				plinth += doc.Width
			}
			width, setback := length.Length(0), length.Length(0)
			if doc.Back.Kind != model.LaidOn {
				setback = doc.Back.Setback
			}
			for _, b := range r.Plan.Boards(i) {
				switch b.Kind {
				case plan.LeftSideBoard, plan.RightSideBoard, plan.BottomBoard:
					width += b.Rect.Width()
				case plan.BackBoard:
					if over := b.Rect.Width() - c.Inside.Width(); doc.Back.Kind == model.LaidOn && b.Rect != c.Outline || doc.Back.Kind != model.LaidOn && over != 2*c.Back.Depth {
						t.Fatalf("cabinet %d: a back %v wide reaches %v into sides with %v inside", i+1, b.Rect.Width(), over, c.Inside.Width())
					}
					if b.Near != c.Depth || c.Depth+b.Deep()+setback != doc.Depth {
						t.Fatalf("cabinet %d: the back lies from %v to %v of %v, and %v are left before it", i+1, b.Near, b.Far, doc.Depth, c.Depth)
					}
					if in := b.Rect.Intersect(c.Outline); in != b.Rect {
						t.Fatalf("cabinet %d: the back comes through its carcass", i+1)
					}
				case plan.PlinthBoard:
					plinth -= b.Rect.Width()
				}
			}
			if width != doc.Width {
				t.Fatalf("cabinet %d: its boards are %v wide together, want %v", i+1, width, doc.Width)
			}
			if n := len(c.Feet); n != (doc.Feet()+1)/2 {
				t.Fatalf("cabinet %d: %d feet in front of %d", i+1, n, doc.Feet())
			}
		}
		if plinth != 0 {
			t.Fatalf("plinth boards are %v shorter than the cabinets above them", plinth)
		}
	})
}

// Worked by hand from testdata/projects/rails.yaml (common practice, no source): between
// the boards are 836 − 2 × 18 = 800. Upwards from 18: reveal 2; front 220, from 20 to 240;
// gap 2, rail 20 from 242 to 262, gap 2; front 180, from 264 to 444; gap 2, rail 40 from
// 446 to 486, gap 2; front 160, from 488 to 648; a gap of 2 without a rail; the last front from
// 650 to 818 − 2 = 816. A rail as deep as 80 lies and is 20 thick; one 40 high and 18 deep
// stands. The runner over a rail is the sheet's least height above it, 0, so 2 below the
// front's lower edge, as that of the lowest front is.
func TestRailsOfAWorkedProject(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "rails.yaml"))
	r := layout.Solve(p)
	for _, f := range r.Findings {
		if f.Rule != "sample-sheet" && f.Rule != "jig-settings" && f.Rule != "adjustment" { // the last stands on no rail: it and the one below move towards each other
			t.Errorf("%s: %v: %v", f.Rule, f.Where, f.What)
		}
	}
	for i, want := range [][2]int64{{20, 240}, {264, 444}, {488, 648}, {650, 816}} {
		if f := r.Plan.Fronts[i].Face; f.Min.Y != length.MM(want[0]) || f.Max.Y != length.MM(want[1]) {
			t.Errorf("front %d stands from %v to %v, want %v", i+1, f.Min.Y, f.Max.Y, want)
		}
	}
	rails := r.Plan.Cabinets[0].Bays[0].Rails
	if len(rails) != 2 || rails[0].Rect != ofMM(18, 242, 582, 262) || rails[1].Rect != ofMM(18, 446, 582, 486) {
		t.Errorf("rails %v", rails)
	}
	for i, want := range []int64{242, 446} {
		if d := r.Plan.Fronts[i].Drawer; d.Above != plan.RailAbove || d.Limit != length.MM(want) {
			t.Errorf("drawer %d stays below %v at %v, want the rail at %d", i+1, d.Above.Say(), d.Limit, want)
		}
	}
	least := r.Plan.Fronts[0].Sheet.Runner.LeastHeight
	for i, rail := range []int64{262, 486} {
		if f := &r.Plan.Fronts[i+1]; f.Runner.Lower != length.MM(rail)+least || f.Drop != least-length.MM(2) || r.Plan.DropOf(f).Total() != f.Drop {
			t.Errorf("the runner of front %d is at %v with a drop of %v", f.Number, f.Runner.Lower, f.Drop)
		}
	}
	var cut []string
	for _, q := range cutOf(r.Plan) {
		if strings.Contains(q, "rail") {
			cut = append(cut, q)
		}
	}
	if got := strings.Join(cut, "; "); got != "1 rail over Slabs 564 × 80 × 20, Chest; 1 rail over Tools 564 × 40 × 18, Chest" {
		t.Errorf("cut %s", got)
	}
	for _, g := range r.Plan.Gaps() {
		if g.Size != length.MM(2) {
			t.Errorf("a gap of %v at front %d", g.Size, g.Front.Number)
		}
	}
}

// Whatever rails are between fronts, the stack fills the opening: reveals, fronts, rails and
// the gaps at both edges of each, and no drawer reaches into the rail above it.
func TestRailsAddUp(t *testing.T) {
	of := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "rails.yaml"))
	rapid.Check(t, func(t *rapid.T) {
		p := of.Clone()
		c := &p.Cabinets[0]
		c.Rail = model.Rail{Height: length.MM(rapid.Int64Range(0, 60).Draw(t, "height")), Depth: length.MM(rapid.Int64Range(0, 90).Draw(t, "depth"))}
		if rapid.Bool().Draw(t, "own gap") {
			gap := length.MM(rapid.Int64Range(0, 9).Draw(t, "gap"))
			c.Bays[0].Fronts[0].GapAbove = &gap
		}
		p.HoleRows.Mode = model.RowMode(rapid.IntRange(0, 2).Draw(t, "rows"))
		r := layout.Solve(p)
		b := &r.Plan.Cabinets[0].Bays[0]
		if b.Over != 0 {
			return
		}
		sum := length.MM(4)
		for k := range r.Plan.Fronts {
			f := &r.Plan.Fronts[k]
			sum += f.Face.Height()
			if k+1 < len(r.Plan.Fronts) {
				sum += p.GapAbove(f.Place)
			}
			if d := &f.Drawer; d.Above == plan.RailAbove && d.RoomAbove < f.Sheet.Runner.ClearanceAbove && !slices.ContainsFunc(r.Findings, func(g check.Finding) bool { return g.Rule == "room-above" && g.Front == f.Number }) {
				t.Fatalf("front %d: %v of room below its rail, and nothing tells", f.Number, d.RoomAbove)
			}
		}
		if sum != b.Opening.Height() {
			t.Fatalf("fronts, gaps and rails take %v of %v", sum, b.Opening.Height())
		}
		for _, rail := range b.Rails {
			f := r.Plan.FrontAt(rail.Of)
			above := r.Plan.FrontAt(model.Place{Bay: 0, Front: rail.Of.Front + 1})
			if low, high := rail.Rect.Min.Y-f.Face.Max.Y, above.Face.Min.Y-rail.Rect.Max.Y; low != high || low < 0 {
				t.Fatalf("the rail over front %d keeps %v below and %v above", f.Number, low, high)
			}
		}
	})
}

// A rail between two fronts parts their gap in two: each can close only its own, 2 mm of
// it by the 2 mm that its connector moves; without one they close 3 mm of 2.
func TestARailPartsWhatTwoFrontsClose(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "rails.yaml"))
	closes := func() bool {
		return slices.ContainsFunc(layout.Solve(p).Findings, func(f check.Finding) bool { return f.Rule == "adjustment" })
	}
	if !closes() {
		t.Error("two fronts without a rail between them do not close their gap")
	}
	p.Cabinets[0].Bays[0].Fronts[2].Rail = nil
	if closes() {
		t.Error("fronts close a gap past a rail")
	}
}
