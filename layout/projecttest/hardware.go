package projecttest

import (
	"pgregory.net/rapid"

	"frontlay/model"
	"frontlay/model/length"
)

// metalSided draws the sheet of a family whose drawers are the maker's. All figures are
// invented.
func metalSided(t *rapid.T, name string) *model.HardwareSheet {
	s := sheet(t, name)
	s.Back = model.BackFigures{DeductWidth: 2*s.SideClearance + Tenths(t, 0, 40, "sides"), Thickness: 16 * mm}
	s.Bottom = model.BottomFigures{
		Underside: Tenths(t, 0, 14, "underside"), Thickness: 16 * mm,
		DeductWidth: 2*s.SideClearance + Tenths(t, 0, 40, "deduct"), DeductLength: 10 * mm,
		LeastWidth: of(t, "least bottom", 0, 0, 150*mm),
	}
	first := Tenths(t, 20, 60, "first hole")
	for i, n := range []string{"low", "mid", "tall"} {
		d := model.DrawerHeight{Name: n, SideTop: length.MM(95 + 40*int64(i)), Holes: []length.Length{first, first + 32*mm}, Weight: 3, Price: of(t, "drawer's price", 0, 34.0)}
		if i == 2 {
			d.BackTop = of(t, "back", 0, 160*mm)
			d.RailTop = 190 * mm
			d.RailHoles = []length.Length{160 * mm}
			d.More = []model.HolePattern{{Up: 120 * mm, Sides: model.HoleSides(count(t, 0, 2, "sides")), FromHeight: 220 * mm}}
			if rapid.Bool().Draw(t, "its own") {
				h := &d.More[0]
				h.FromWidth, h.Inset, h.Diameter, h.Depth = 400*mm, 50*mm, 5*mm, 9*mm
			}
		}
		s.Drawers = append(s.Drawers, d)
	}
	if rapid.Bool().Draw(t, "stabiliser") {
		s.Stabiliser = model.Stabiliser{FromWidth: 600 * mm, Holes: []model.StabiliserHole{{Across: -16 * mm, Up: 20 * mm, Diameter: 8 * mm, Depth: 10 * mm}, {Across: 48 * mm, Up: 20 * mm}}}
	}
	return s
}

// wooden draws the sheet of runners for a box that is built for them.
func wooden(t *rapid.T) *model.HardwareSheet {
	s := sheet(t, "boxes")
	b := &s.Box
	b.Sides, b.Front, s.Back.Thickness = Tenths(t, 12, 18, "sides"), Tenths(t, 12, 19, "inner front"), Tenths(t, 12, 18, "back")
	b.Corners, b.Bottom = model.Corners(count(t, 0, 1, "corners")), model.BoxBottom(count(t, 0, 2, "bottom held"))
	b.Joint = Tenths(t, 0, 12, "joint")
	s.Bottom = model.BottomFigures{Underside: Tenths(t, 0, 14, "box's underside"), Thickness: Tenths(t, 4, 12, "bottom")}
	if b.Bottom != model.BottomLaidOn {
		b.GrooveDepth, b.GrooveHeight = Tenths(t, 1, 11, "groove of the bottom"), Tenths(t, 0, 14, "groove's height")
	}
	b.Shorter = Tenths(t, 0, 20, "shorter")
	b.Material, b.Density = of(t, "box's wood", "", "beech"), of(t, "box's density", 0, 720.0)
	b.BottomBoard, b.BottomWeighs = of(t, "bottom's wood", "", "birch plywood"), of(t, "bottom's density", 0, 680.0)
	s.Connector.Kind = model.ConnectorKind(count(t, 0, 1, "held by"))
	for i, n := range []string{"low", "mid", "tall"} {
		top := length.MM(90 + 40*int64(i))
		s.Drawers = append(s.Drawers, model.DrawerHeight{Name: n, SideTop: top, BackTop: of(t, "box's back", 0, top-15*mm), Holes: []length.Length{30 * mm, top - 15*mm}})
	}
	return s
}

// sheet draws what sheets of both kinds have: runners and connectors.
func sheet(t *rapid.T, name string) *model.HardwareSheet {
	s := &model.HardwareSheet{
		Name: name, Note: of(t, "note", "", "Invented figures."), Sample: oneIn(t, 4, "sample"),
		Unit:          of(t, "sheet's unit", length.UnitMM, length.UnitMM, length.UnitInch),
		SideClearance: Tenths(t, 1, 20, "side clearance"),
		Runner: model.RunnerFigures{
			LeastHeight:     Tenths(t, 0, 12, "least height"),
			ClearanceBehind: Tenths(t, 0, 10, "behind"),
			ClearanceAbove:  Tenths(t, 2, 20, "above"),
			Setback:         Tenths(t, 0, 4, "setback"),
			ScrewReach:      Tenths(t, 8, 14, "reach"),
		},
		Connector: model.ConnectorFigures{
			Inset:    Tenths(t, 10, 40, "inset"),
			Diameter: Tenths(t, 2, 10, "diameter"),
			Depth:    Tenths(t, 8, 17, "depth"),
			Price:    of(t, "connector's price", 0, 3.2),
		},
	}
	if rapid.Bool().Draw(t, "adjusts") {
		c := &s.Connector
		c.AdjustUp, c.AdjustSide, c.AdjustTilt = Tenths(t, 0, 4, "up"), Tenths(t, 0, 3, "aside"), Tenths(t, 0, 3, "tilt")
		c.AdjustDown = of(t, "down", 0, mm, 2*mm)
		c.PerTurn, c.PerTurnSide = of(t, "a turn", 0, mm), of(t, "a turn aside", 0, mm)
	}
	if oneIn(t, 3, "slotted") {
		s.Runner.Play, s.Connector.Play = Tenths(t, 0, 6, "runner's play"), Tenths(t, 0, 6, "connector's play")
	}
	up := Tenths(t, 10, 40, "screw up")
	for l := int64(250); l <= 550; l += 100 {
		s.Runner.Lengths = append(s.Runner.Lengths, model.RunnerLength{
			Length: length.MM(l), Load: float64(l) / 15, Price: of(t, "runner's price", 0, 21.5),
			Screws: []model.ScrewHole{{Back: 37 * mm, Up: up, Diameter: 4 * mm, Depth: 12 * mm}, {Back: length.MM(l - 60), Up: up, Diameter: 4 * mm, Depth: 12 * mm}},
		})
	}
	return s
}
