package plan_test

import (
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

const mm = length.Millimetre

// tradeProject is a cabinet of the trade's usual figures: side 19, reveal 3,
// connector inset 20, holes 48 and 80 above the runner's lower edge.
func tradeProject() *model.Project {
	sheet := &model.HardwareSheet{
		Name:          "invented",
		SideClearance: 12 * mm,
		Runner: model.RunnerFigures{Lengths: []model.RunnerLength{
			{Length: 450 * mm, Load: 30, Screws: []model.ScrewHole{{Back: 37 * mm, Up: 16 * mm, Diameter: 5 * mm, Depth: 12 * mm}}},
			{Length: 500 * mm, Load: 30, Screws: []model.ScrewHole{{Back: 37 * mm, Up: 16 * mm, Diameter: 5 * mm, Depth: 12 * mm}}},
		}},
		Connector: model.ConnectorFigures{Inset: 20 * mm, Diameter: 10 * mm, Depth: 12 * mm},
		Drawers: []model.DrawerHeight{
			{Name: "low", SideTop: 100 * mm, Holes: []length.Length{48 * mm, 80 * mm}},
		},
		Bottom: model.BottomFigures{Underside: 2 * mm, Thickness: 16 * mm, DeductWidth: 75 * mm, DeductLength: 10 * mm},
	}
	return &model.Project{
		Hardware: []model.HardwareUse{{Name: "main", Sheet: sheet}},
		Boards: model.Boards{
			Carcass: model.Board{Thickness: 19 * mm},
			Front:   model.Board{Thickness: 19 * mm},
			Back:    model.Board{Thickness: 8 * mm},
		},
		Reveals: model.Reveals{Left: 3 * mm, Right: 3 * mm, Top: 3 * mm, Bottom: 3 * mm, Gap: 3 * mm},
		Cabinets: []model.Cabinet{{
			Name: "A", Width: 600 * mm, Height: 720 * mm, Depth: 560 * mm,
			Bays: []model.Bay{{Fronts: []model.Front{{Share: 1}, {Share: 1}, {Share: 1}}}},
		}},
	}
}

// The facts of the trade (common practice, no source), word for word:
// "side overlay of an overlay front = side thickness − reveal: 19 − 3 = 16 mm";
// "edge distance of the connector holes = connector inset + side overlay:
// 20 + 16 = 36 mm"; "two fixing holes of a front connector: 80 mm above the
// runner's lower edge, and 32 mm below that (48 mm)"; "bottom drawer: drop = its
// bottom overlay (16 mm over a 19 mm carcass bottom with 3 mm reveal)"; "upper
// drawers: drop 0: the front's bottom edge is level with the runner's lower
// edge".
func TestFiguresOfTheTrade(t *testing.T) {
	p := plan.Make(tradeProject())
	bottom, upper := &p.Fronts[0], &p.Fronts[1]
	figures := []struct {
		name      string
		got, want length.Length
	}{
		{"side overlay left", bottom.Overlay.Left, 16 * mm},
		{"side overlay right", bottom.Overlay.Right, 16 * mm},
		{"edge distance left", bottom.EdgeDistance.Left, 36 * mm},
		{"edge distance right", bottom.EdgeDistance.Right, 36 * mm},
		{"drop of the bottom drawer", bottom.Drop, 16 * mm},
		{"drop of an upper drawer", upper.Drop, 0},
	}
	for _, f := range figures {
		if f.got != f.want {
			t.Errorf("%s is %v, want %v", f.name, f.got, f.want)
		}
	}
	holes := []struct {
		front   *plan.Front
		heights [2]length.Length
	}{{bottom, [2]length.Length{64 * mm, 96 * mm}}, {upper, [2]length.Length{48 * mm, 80 * mm}}}
	for _, h := range holes {
		if len(h.front.Holes) != 4 {
			t.Fatalf("front %d has %d holes, want 4", h.front.Number, len(h.front.Holes))
		}
		for _, hole := range h.front.Holes {
			want := h.heights[0]
			if hole.AboveRunner == 80*mm {
				want = h.heights[1]
			}
			x := 36 * mm
			if hole.Side == plan.Right {
				x = h.front.Face.Width() - 36*mm
			}
			if hole.At.Y != want || hole.At.X != x {
				t.Errorf("front %d: a hole at %v, %v; want %v, %v", h.front.Number, hole.At.X, hole.At.Y, x, want)
			}
		}
	}
}

// Source: "front heights on the grid: 32·m − reveal; reveal 3: 93, 125, 157,
// 189, 221, 253, 285, 317, 349, 381 mm (computed)": a front of such a height
// puts the next runner on the next row.
func TestGridHeightsKeepTheRows(t *testing.T) {
	for i, h := range []int64{93, 125, 157, 189, 221, 253, 285, 317, 349, 381} {
		p := tradeProject()
		p.HoleRows.Mode = model.RowsMoveRunners
		bay := &p.Cabinets[0].Bays[0]
		bay.Fronts = []model.Front{{Height: length.MM(h)}, {Share: 1}}
		// The first row is where the bottom edge of the stack, 3 mm above the
		// carcass's lower edge, puts a runner with drop 0: 3 + 16 = 19 mm.
		p.HoleRows.Datum = 19 * mm
		if got := plan.Make(p); got.Fronts[1].Drop != 0 || got.Fronts[1].Runner.OffRow != 0 {
			t.Errorf("a front of %d mm (m = %d) leaves the next runner %v off", h, i+3, got.Fronts[1].Drop)
		}
	}
}

func TestInsetFronts(t *testing.T) {
	p := tradeProject()
	p.Cabinets[0].Mount = model.Inset
	got := plan.Make(p)
	f := &got.Fronts[0]
	if f.Overlay.Left != -3*mm || f.EdgeDistance.Left != 17*mm {
		t.Errorf("inset: overlay %v, edge distance %v; want -3 and 17 mm", f.Overlay.Left, f.EdgeDistance.Left)
	}
	if f.Drop != -3*mm {
		t.Errorf("inset: drop %v, want -3 mm", f.Drop)
	}
	// 560 − 8 back − 19 front = 533 mm for the runner.
	if f.Runner.Length != 500*mm || f.Runner.Start != 19*mm || f.Runner.Screws[0].Back != 56*mm {
		t.Errorf("inset: runner %v from %v, screw at %v; want 500 from 19, 56 mm", f.Runner.Length, f.Runner.Start, f.Runner.Screws[0].Back)
	}
}

func TestAHalfOverlaidPartition(t *testing.T) {
	p := tradeProject()
	p.Cabinets[0].Width = 1200 * mm
	p.Cabinets[0].Bays = []model.Bay{
		{Fronts: []model.Front{{}}}, {Fronts: []model.Front{{}}},
	}
	got := plan.Make(p)
	l, r := &got.Fronts[0], &got.Fronts[1]
	// Half of 19 less half of 3: 8 mm.
	if l.Overlay.Right != 8*mm || r.Overlay.Left != 8*mm {
		t.Errorf("overlay of the partition is %v and %v, want 8 mm each", l.Overlay.Right, r.Overlay.Left)
	}
	if gap := r.Face.Min.X - l.Face.Max.X; gap != 3*mm {
		t.Errorf("gap over the partition is %v, want 3 mm", gap)
	}
	if l.EdgeDistance.Left != 36*mm || l.EdgeDistance.Right != 28*mm {
		t.Errorf("edge distances %v and %v, want 36 and 28 mm", l.EdgeDistance.Left, l.EdgeDistance.Right)
	}
	// The rear face is the face mirrored: what is 36 from the left in the room
	// is 36 from the right as drilled.
	for _, h := range l.Holes {
		if h.Side == plan.Left {
			if x := l.Rear(h.At).X; x != l.Face.Width()-36*mm {
				t.Errorf("rear x of a left hole is %v, want %v", x, l.Face.Width()-36*mm)
			}
		}
	}
}

// Fronts chosen for the rows differ from the drawn ones by less than a pitch,
// add up, and leave every upper runner on a row with drop 0.
func TestFrontsMoveToRows(t *testing.T) {
	p := tradeProject()
	p.HoleRows = model.HoleRows{Mode: model.RowsMoveFronts, Datum: 19 * mm}
	drawn := plan.Make(tradeProject())
	got := plan.Make(p)
	sum := length.Length(0)
	for i := range got.Fronts {
		f := &got.Fronts[i]
		sum += f.Face.Height()
		if i > 0 && (f.Drop != 0 || f.Runner.OffRow != 0) {
			t.Errorf("front %d: drop %v, off its row by %v", f.Number, f.Drop, f.Runner.OffRow)
		}
		if d := (f.Face.Height() - drawn.Fronts[i].Face.Height()).Abs(); d >= 32*mm {
			t.Errorf("front %d changed by %v", f.Number, d)
		}
	}
	if want := 720*mm - 4*3*mm; sum != want {
		t.Errorf("fronts add up to %v, want %v", sum, want)
	}
}
