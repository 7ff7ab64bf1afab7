package pdfout

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

// bench is a project with everything that goes on paper: two bays, rails, a
// stabiliser, handles and runner screws. Its figures are invented.
func bench() *plan.Plan {
	mm := length.MM
	sheet := &model.HardwareSheet{
		Name:          "invented",
		SideClearance: mm(12),
		Runner: model.RunnerFigures{
			LeastHeight: mm(4), ClearanceBehind: mm(10), ClearanceAbove: mm(6), Setback: mm(2),
			Lengths: []model.RunnerLength{{Length: mm(450), Load: 30, Screws: []model.ScrewHole{
				{Back: mm(37), Up: mm(20), Diameter: mm(5), Depth: mm(10)},
				{Back: mm(261), Up: mm(20), Diameter: mm(5), Depth: mm(10)},
			}}},
		},
		Connector: model.ConnectorFigures{Inset: mm(20), Diameter: mm(10), Depth: mm(12), AdjustUp: mm(2), AdjustSide: mm(1)},
		Stabiliser: model.Stabiliser{FromWidth: mm(700), Holes: []model.StabiliserHole{
			{Across: -mm(16), Up: mm(30)}, {Across: mm(16), Up: mm(30)},
		}},
		Drawers: []model.DrawerHeight{
			{Name: "low", SideTop: mm(90), Holes: []length.Length{mm(48), mm(80)}},
			{Name: "high", SideTop: mm(90), Holes: []length.Length{mm(48), mm(80)}, RailTop: mm(180), RailHoles: []length.Length{mm(160)}},
		},
		Bottom: model.BottomFigures{Underside: mm(14), Thickness: mm(16), DeductWidth: mm(62), DeductLength: mm(18)},
		Back:   model.BackFigures{DeductWidth: mm(74), Thickness: mm(16)},
	}
	p := &model.Project{
		Title:    "Glaze bench",
		Hardware: []model.HardwareUse{{Name: "main", Sheet: sheet}},
		Boards: model.Boards{
			Carcass: model.Board{Thickness: mm(19), Density: 680, Material: "birch plywood"},
			Front:   model.Board{Thickness: mm(20), Density: 705.6, Material: "maple"},
			Back:    model.Board{Thickness: mm(8)},
		},
		Reveals: model.Reveals{Left: mm(3), Right: mm(1), Top: mm(2), Gap: mm(3)},
		Cabinets: []model.Cabinet{{
			Name: "Glazes", Width: mm(1338), Height: mm(720), Depth: mm(540), Plinth: mm(90),
			Bays: []model.Bay{
				{Width: mm(900), Fronts: []model.Front{
					{Name: "Buckets", Drawer: "high", Handle: &model.Handle{Spacing: mm(160), FromTop: mm(40), Diameter: mm(5)}},
					{Name: "Jars", Drawer: "low"},
				}},
				{Fronts: []model.Front{
					{Name: "Oxides", Drawer: "high"}, {Name: "Notebooks", Kind: model.OpenNiche}, {Name: "Brushes", Drawer: "low"},
				}},
			},
		}},
	}
	return plan.Make(p)
}
