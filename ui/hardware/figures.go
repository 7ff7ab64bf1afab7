package hardware

import (
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
)

// size is one size of the form: its path in the file, its label, where it shows
// on the sketch, and which length it is; of gives nil where its item is missing.
// none is what an empty field means, for a figure that can be left out.
type size struct {
	path   string
	label  string
	figure view.Figure
	of     func(*picked) *length.Length
	none   string
	usual  func(*picked) length.Length // shown grey instead of none; nil: none
}

var runnerSizes = []size{
	{path: "side_clearance", label: "Side clearance", figure: view.SideClearance, of: func(k *picked) *length.Length { return &k.sheet.SideClearance }},
	{path: "runner.least_height", label: "Least height", figure: view.RunnerLeastHeight, of: func(k *picked) *length.Length { return &k.sheet.Runner.LeastHeight }},
	{path: "runner.clearance_above", label: "Clearance above", figure: view.RunnerClearanceAbove, of: func(k *picked) *length.Length { return &k.sheet.Runner.ClearanceAbove }},
	{path: "runner.setback", label: "Setback", figure: view.RunnerSetback, of: func(k *picked) *length.Length { return &k.sheet.Runner.Setback }},
	{path: "runner.clearance_behind", label: "Clearance behind", figure: view.RunnerClearanceBehind, of: func(k *picked) *length.Length { return &k.sheet.Runner.ClearanceBehind }},
	{path: "runner.screw_reach", label: "Screw reach", figure: view.RunnerScrewReach, none: "not given", of: func(k *picked) *length.Length { return &k.sheet.Runner.ScrewReach }},
}

var lengthSizes = []size{
	{path: "runner.lengths[].length", label: "Length", figure: view.RunnerLength, of: func(k *picked) *length.Length {
		if k.runner == nil {
			return nil
		}
		return &k.runner.Length
	}},
}

var connectorSizes = []size{
	{path: "connector.inset", label: "Connector inset", figure: view.ConnectorInset, of: func(k *picked) *length.Length { return &k.sheet.Connector.Inset }},
	{path: "connector.diameter", label: "Hole diameter", figure: view.ConnectorDiameter, of: func(k *picked) *length.Length { return &k.sheet.Connector.Diameter }},
	{path: "connector.depth", label: "Hole depth", figure: view.ConnectorDepth, of: func(k *picked) *length.Length { return &k.sheet.Connector.Depth }},
	{path: "connector.adjust_up", label: "Adjusts up and down", figure: view.ConnectorAdjustUp, of: func(k *picked) *length.Length { return &k.sheet.Connector.AdjustUp }},
	{path: "connector.adjust_side", label: "Adjusts to each side", figure: view.ConnectorAdjustSide, of: func(k *picked) *length.Length { return &k.sheet.Connector.AdjustSide }},
}

// ofDrawer gives a length of the drawer height that is shown.
func ofDrawer(of func(*picked) *length.Length) func(*picked) *length.Length {
	return func(k *picked) *length.Length {
		if k.drawer == nil {
			return nil
		}
		return of(k)
	}
}

var topSizes = []size{
	{path: "drawers[].side_top", label: "Top of the side", figure: view.DrawerSideTop, of: ofDrawer(func(k *picked) *length.Length { return &k.drawer.SideTop })},
	{path: "drawers[].back_top", label: "Top of the back", figure: view.DrawerBackTop, of: ofDrawer(func(k *picked) *length.Length { return &k.drawer.BackTop }),
		usual: func(k *picked) length.Length { return k.drawer.SideTop }},
	{path: "drawers[].rail_top", label: "Top of the rail", figure: view.DrawerRailTop, none: "no rail", of: ofDrawer(func(k *picked) *length.Length { return &k.drawer.RailTop })},
}

// ofMore gives a length of the further hole that is shown.
func ofMore(of func(*picked) *length.Length) func(*picked) *length.Length {
	return func(k *picked) *length.Length {
		if k.more == nil {
			return nil
		}
		return of(k)
	}
}

var moreSizes = []size{
	{path: "drawers[].more_holes[].up", label: "Height of the hole", figure: view.DrawerMoreHoles, of: ofMore(func(k *picked) *length.Length { return &k.more.Up })},
	{path: "drawers[].more_holes[].from_height", label: "For fronts from height", none: "any", of: ofMore(func(k *picked) *length.Length { return &k.more.FromHeight })},
	{path: "drawers[].more_holes[].from_width", label: "For fronts from width", none: "any", of: ofMore(func(k *picked) *length.Length { return &k.more.FromWidth })},
	{path: "drawers[].more_holes[].inset", label: "Its inset", figure: view.DrawerMoreHoles, of: ofMore(func(k *picked) *length.Length { return &k.more.Inset }),
		usual: func(k *picked) length.Length { return k.sheet.Connector.Inset }},
	{path: "drawers[].more_holes[].diameter", label: "Its diameter", figure: view.DrawerMoreHoles, of: ofMore(func(k *picked) *length.Length { return &k.more.Diameter }),
		usual: func(k *picked) length.Length { return k.sheet.Connector.Diameter }},
	{path: "drawers[].more_holes[].depth", label: "Its depth", figure: view.DrawerMoreHoles, of: ofMore(func(k *picked) *length.Length { return &k.more.Depth }),
		usual: func(k *picked) length.Length { return k.sheet.Connector.Depth }},
}

var bottomSizes = []size{
	{path: "bottom.underside", label: "Underside", figure: view.BottomUnderside, of: func(k *picked) *length.Length { return &k.sheet.Bottom.Underside }},
	{path: "bottom.thickness", label: "Thickness", figure: view.BottomThickness, of: func(k *picked) *length.Length { return &k.sheet.Bottom.Thickness }},
	{path: "bottom.deduct_width", label: "Width less than the bay", figure: view.BottomDeductWidth, of: func(k *picked) *length.Length { return &k.sheet.Bottom.DeductWidth }},
	{path: "bottom.deduct_length", label: "Length less than the runner", figure: view.BottomDeductLength, of: func(k *picked) *length.Length { return &k.sheet.Bottom.DeductLength }},
	{path: "bottom.least_width", label: "Least width", figure: view.NoFigure, of: func(k *picked) *length.Length { return &k.sheet.Bottom.LeastWidth },
		usual: func(*picked) length.Length { return model.UsualLeastWidth }},
}

var backSizes = []size{
	{path: "back.thickness", label: "Thickness", figure: view.BackThickness, of: func(k *picked) *length.Length { return &k.sheet.Back.Thickness }},
	{path: "back.deduct_width", label: "Width less than the bay", figure: view.BackDeductWidth, of: func(k *picked) *length.Length { return &k.sheet.Back.DeductWidth }},
}

var stabiliserSizes = []size{
	{path: "stabiliser.from_width", label: "For fronts from width", none: "has none", of: func(k *picked) *length.Length { return &k.sheet.Stabiliser.FromWidth }},
}
