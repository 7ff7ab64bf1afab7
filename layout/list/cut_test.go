package list

import (
	"math"
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

// worked is a cabinet 600 × 720 × 540 of 19 mm board with an 8 mm back, two
// drawers and lipped fronts. Its hardware is invented.
func worked() *plan.Plan {
	mm := length.MM
	sheet := &model.HardwareSheet{
		Name: "invented", SideClearance: mm(12),
		Runner: model.RunnerFigures{LeastHeight: mm(4), ClearanceBehind: mm(10), Setback: mm(2), Lengths: []model.RunnerLength{
			{Length: mm(450), Load: 30, Screws: []model.ScrewHole{{Back: mm(37), Up: mm(20), Diameter: mm(5)}, {Back: mm(261), Up: mm(20), Diameter: mm(5)}}},
		}},
		Connector: model.ConnectorFigures{Inset: mm(20), Diameter: mm(10), Depth: mm(12)},
		Drawers:   []model.DrawerHeight{{Name: "low", SideTop: mm(90), Holes: []length.Length{mm(48), mm(80)}}},
		Bottom:    model.BottomFigures{Underside: mm(14), Thickness: mm(16), DeductWidth: mm(62), DeductLength: mm(18)},
		Back:      model.BackFigures{DeductWidth: mm(74), Thickness: mm(16)},
	}
	return plan.Make(&model.Project{
		Hardware: []model.HardwareUse{{Name: "main", Sheet: sheet}},
		Boards: model.Boards{
			Carcass: model.Board{Thickness: mm(19), Density: 700},
			Front:   model.Board{Thickness: mm(20), Lipping: mm(2), Density: 705.6, Grain: "horizontal"},
			Back:    model.Board{Thickness: mm(8), Density: 700},
		},
		Reveals: model.Reveals{Left: mm(3), Right: mm(3), Top: mm(2), Gap: mm(3)},
		Cabinets: []model.Cabinet{{
			Name: "Glazes", Width: mm(600), Height: mm(720), Depth: mm(540), Plinth: mm(90),
			Bays: []model.Bay{{Fronts: []model.Front{{Name: "Jars"}, {Name: "Brushes"}}}},
		}},
	})
}

// Written out from the formulas: inside width 600 − 2·19 = 562; depth without the
// back 540 − 8 = 532; fronts 600 − 2·3 = 594 wide and (720 − 2 − 3)/2 = 357.5 high,
// in whole millimetres 358 below and 357 above, cut 2·2 less; drawer bottom
// 562 − 62 = 500 by 450 − 18 = 432; drawer back 562 − 74 = 488 by 90 − 14 − 16 = 60.
func TestCutListOfAWorkedCabinet(t *testing.T) {
	type cut struct {
		what          string
		width, height int64
		count         int
	}
	want := []cut{
		{"front", 590, 354, 1}, {"front", 590, 353, 1},
		{"drawer bottom", 500, 432, 1}, {"drawer back", 488, 60, 1},
		{"drawer bottom", 500, 432, 1}, {"drawer back", 488, 60, 1},
		{"side", 532, 720, 2}, {"bottom, top", 562, 532, 2}, {"back", 600, 720, 1}, {"plinth board", 600, 90, 1},
	}
	got := Pieces(worked())
	if len(got) != len(want) {
		t.Fatalf("%d pieces; want %d", len(got), len(want))
	}
	for i, w := range want {
		p := got[i]
		if p.What.String() != w.what || p.CutWidth != length.MM(w.width) || p.CutHeight != length.MM(w.height) || p.Count != w.count {
			t.Errorf("piece %d: %v %v × %v, %d times; want %+v", i, p.What, p.CutWidth, p.CutHeight, p.Count, w)
		}
	}
}

// 600×200×19 mm at 700 kg/m³ = 1.596 kg (computed). Sugar maple: 705.6 kg/m³ from
// specific gravity 0.63 (Wood Handbook, FPL-GTR-190, quoted by a trade column).
// The fronts of the worked cabinet: 0.594·0.358·0.020·705.6 = 3.000945 kg and
// 0.594·0.357·0.020·705.6 = 2.992562 kg; cut 0.590·0.354 + 0.590·0.353 =
// 0.41713 m².
func TestAreaAndWeight(t *testing.T) {
	p := Piece{Board: model.Board{Thickness: length.MM(19), Density: 700}, Width: length.MM(600), Height: length.MM(200), Count: 1}
	if got := p.WeightKg(); math.Abs(got-1.596) > 1e-9 {
		t.Errorf("600×200×19 mm at 700 kg/m³ weighs %v kg; want 1.596 (computed)", got)
	}
	pieces := Pieces(worked())
	if got := pieces[0].WeightKg(); math.Abs(got-3.000945) > 1e-6 {
		t.Errorf("the lower front weighs %v kg; want 3.000945", got)
	}
	if got := pieces[1].WeightKg(); math.Abs(got-2.992562) > 1e-6 {
		t.Errorf("the upper front weighs %v kg; want 2.992562", got)
	}
	if got := pieces[0].AreaM2() + pieces[1].AreaM2(); math.Abs(got-0.41713) > 1e-9 {
		t.Errorf("the fronts take %v m²; want 0.41713", got)
	}
}

func TestCutListTotals(t *testing.T) {
	p := worked()
	table := CutList(p, Speaker{})
	totals := map[string][]string{}
	group := ""
	for _, r := range table.Rows {
		switch {
		case r.Group:
			group = r.Cells[0]
		case r.Total:
			totals[group] = r.Cells
		case len(r.Cells) != len(table.Columns):
			t.Errorf("a row has %d cells for %d columns", len(r.Cells), len(table.Columns))
		}
	}
	// Two sides, bottom and top, plinth: 2·0.532·0.720 + 2·0.562·0.532 + 0.600·0.090 =
	// 1.418048 m²; at 19 mm and 700 kg/m³ 18.860 kg.
	if got := totals["Board 19 mm"]; got[1] != "5" || got[9] != "1.418" || got[10] != "18.86" {
		t.Errorf("carcass board in all: %v; want 5 pieces, 1.418 m², 18.86 kg", got)
	}
	if got := totals["Board 20 mm, lipping 2 mm"]; got[1] != "2" || got[9] != "0.417" || got[10] != "5.99" {
		t.Errorf("front board in all: %v; want 2 pieces, 0.417 m², 5.99 kg", got)
	}
}

func TestHardwareIsCounted(t *testing.T) {
	table := HardwareList(worked(), StockPlans(worked()), Speaker{}, 0.1)
	got := map[string][]string{}
	for _, r := range table.Rows {
		if !r.Group {
			got[r.Cells[1]] = r.Cells[2:]
		}
	}
	for what, want := range map[string][]string{
		"runners 450 mm long, for 30 kg":                 {"pairs", "2", "2"},
		"drawers, height “low”, for runners 450 mm long": {"sets", "2", "2"},
		"front connectors":                               {"pairs", "2", "2"},
		"screws for runners, hole Ø 5 mm":                {"pieces", "8", "9"}, // 2 drawers · 2 sides · 2 holes, and a tenth
		"fixings in fronts, hole Ø 10 mm, 12 mm deep":    {"pieces", "8", "9"},
		"Board 20 mm, lipping 2 mm":                      {"m", "3.9", "5"}, // all around two fronts, and a tenth
	} {
		if g := got[what]; len(g) != 3 || g[0] != want[0] || g[1] != want[1] || g[2] != want[2] {
			t.Errorf("%s: %v; want %v", what, g, want)
		}
	}
	if len(got) != 6 {
		t.Errorf("%d kinds of hardware; want 6: %v", len(got), got)
	}
}

func TestSpareOfATenthOfTwentyIsTwo(t *testing.T) {
	if got := (&hardwareRow{count: 20, small: true}).cells(0.1, Speaker{})[4]; got != "22" {
		t.Errorf("20 and a tenth are %s; want 22", got)
	}
}

// Side overlay 19 − 3 = 16, edge distance 20 + 16 = 36, bottom drawer: holes at
// 48 + drop and 80 + drop (common practice, no source); the runner here stands 4
// above the carcass bottom, so the drop is 19 + 4 = 23.
func TestDrillListMirrorsSides(t *testing.T) {
	p := worked()
	f := &p.Fronts[0]
	for _, h := range Drilling(f) {
		want := length.MM(36)
		if h.Side == plan.Left {
			want = f.Face.Width() - length.MM(36) // left in the room is right on the bench
		}
		if h.FromLeft != want || h.FromLeft+h.FromRight != f.Face.Width() {
			t.Errorf("a hole of the side %v lies %v from the left; want %v", h.Side, h.FromLeft, want)
		}
	}
	if got := Drilling(f)[0].FromBottom; got != length.MM(48+23) {
		t.Errorf("the lowest hole is %v up; want 71 mm", got)
	}
}
