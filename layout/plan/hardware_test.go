package plan_test

import (
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

func count(f *plan.Front, kind plan.HoleKind, side plan.Side) int {
	n := 0
	for _, h := range f.Holes {
		if h.Kind == kind && h.Side == side {
			n++
		}
	}
	return n
}

func TestPatternsByHeightWidthAndSide(t *testing.T) {
	p := tradeProject()
	d := &p.Hardware[0].Sheet.Drawers[0]
	d.More = []model.HolePattern{
		{Up: 112 * mm, FromHeight: 240 * mm},
		{Up: 144 * mm, Sides: model.LeftOnly, Inset: 52 * mm, Diameter: 8 * mm, Depth: 10 * mm},
		{Up: 176 * mm, FromWidth: 595 * mm},
	}
	p.Cabinets[0].Bays[0].Fronts = []model.Front{{Height: 240 * mm}, {Height: 239 * mm}, {Share: 1}}
	got := plan.Make(p)
	high, low := &got.Fronts[0], &got.Fronts[1]
	if l, r := count(high, plan.ConnectorHole, plan.Left), count(high, plan.ConnectorHole, plan.Right); l != 4 || r != 3 {
		t.Errorf("the high front has %d and %d holes, want 4 left (two, the high one, the left one) and 3 right", l, r)
	}
	if l, r := count(low, plan.ConnectorHole, plan.Left), count(low, plan.ConnectorHole, plan.Right); l != 3 || r != 2 {
		t.Errorf("the low front has %d and %d holes, want 3 and 2", l, r)
	}
	for _, h := range low.Holes {
		if h.AboveRunner == 144*mm {
			same(t, "its own inset", h.At.X, 52*mm+16*mm)
			same(t, "its own diameter", h.Diameter, 8*mm)
		}
	}
}

func TestStabiliserStandsBetweenTheRunners(t *testing.T) {
	p := tradeProject()
	p.Hardware[0].Sheet.Stabiliser = model.Stabiliser{FromWidth: 594 * mm, Holes: []model.StabiliserHole{{Across: -32 * mm, Up: 24 * mm}, {Across: 32 * mm, Up: 24 * mm}}}
	p.Reveals.Right = 9 * mm // so that the front's middle is not the opening's
	got := plan.Make(p)
	if got.Fronts[0].Stabilised {
		t.Error("a front of 588 mm needs no stabiliser from 594 mm on")
	}
	p.Cabinets[0].Width = 606 * mm
	f := &plan.Make(p).Fronts[0]
	if !f.Stabilised {
		t.Fatal("a front of 594 mm needs one")
	}
	middle := f.Opening.Centre().X - f.Face.Min.X
	n := 0
	for _, h := range f.Holes {
		if h.Kind == plan.StabiliserHole {
			n++
			same(t, "distance from the middle between the runners", (h.At.X - middle).Abs(), 32*mm)
		}
	}
	if n != 2 {
		t.Errorf("%d stabiliser holes, want 2", n)
	}
}

func TestHardwarePerFront(t *testing.T) {
	p := tradeProject()
	other := *p.Hardware[0].Sheet
	other.Connector.Inset = 30 * mm
	p.Hardware = append(p.Hardware, model.HardwareUse{Name: "other", Sheet: &other})
	p.Cabinets[0].Bays[0].Fronts[1].Hardware = "other"
	got := plan.Make(p)
	same(t, "edge distance of the bay's hardware", got.Fronts[0].EdgeDistance.Left, 36*mm)
	same(t, "edge distance of the front's own", got.Fronts[1].EdgeDistance.Left, 46*mm)
}

func TestAutoTakesTheTallestThatFits(t *testing.T) {
	p := tradeProject()
	p.Hardware[0].Sheet.Runner.ClearanceAbove = 8 * mm
	p.Hardware[0].Sheet.Drawers = append(p.Hardware[0].Sheet.Drawers,
		model.DrawerHeight{Name: "railed", SideTop: 100 * mm, Holes: []length.Length{48 * mm, 80 * mm}, RailTop: 200 * mm, RailHoles: []length.Length{160 * mm}})
	p.Cabinets[0].Bays[0].Fronts = []model.Front{{Share: 1}, {Height: 205 * mm}, {Height: 204 * mm}, {Height: 120 * mm}}
	got := plan.Make(p)
	// Runners are level with the fronts' bottom edges: 205 + 3 − 200 = 8 mm of
	// room, as needed; 204 leave 7.
	for i, want := range map[int]string{1: "railed", 2: "low"} {
		if name := got.Fronts[i].Height.Name; name != want {
			t.Errorf("front %d has a drawer %s, want %s", i+1, name, want)
		}
	}
}
