package hardware

import (
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
)

// The figures of the form's groups, in the order in which they are gone through.
var (
	runnerRows = []spec{
		{path: "side_clearance", figure: view.SideClearance},
		{path: "runner.least_height", figure: view.RunnerLeastHeight},
		{path: "runner.clearance_above", figure: view.RunnerClearanceAbove},
		{path: "runner.setback", figure: view.RunnerSetback},
		{path: "runner.clearance_behind", figure: view.RunnerClearanceBehind},
		{path: "runner.screw_reach", figure: view.RunnerScrewReach, none: "not given"},
	}
	lengthRows = []spec{
		{path: "runner.lengths[].length", figure: view.RunnerLength},
		{path: "runner.lengths[].load", none: "not given"},
	}
	connectorRows = []spec{
		{path: "connector.inset", figure: view.ConnectorInset},
		{path: "connector.diameter", figure: view.ConnectorDiameter},
		{path: "connector.depth", figure: view.ConnectorDepth},
		{path: "connector.adjust_up", figure: view.ConnectorAdjustUp},
		{path: "connector.adjust_side", figure: view.ConnectorAdjustSide},
	}
	drawerRows = []spec{
		{path: "drawers[].name"},
		{path: "drawers[].side_top", figure: view.DrawerSideTop},
		{path: "drawers[].back_top", figure: view.DrawerBackTop, usual: func(k *picked) length.Length { return k.drawer.SideTop }},
		{path: "drawers[].holes", figure: view.DrawerHoles, none: "such as 48; 80"},
		{path: "drawers[].rail_top", figure: view.DrawerRailTop, none: "no rail"},
		{path: "drawers[].rail_holes", figure: view.DrawerRailHoles, none: "none"},
		{path: "drawers[].weight", none: "not given"},
	}
	moreRows = []spec{
		{path: "drawers[].more_holes[].up", figure: view.DrawerMoreHoles},
		{path: "drawers[].more_holes[].from_height", none: "any"},
		{path: "drawers[].more_holes[].from_width", none: "any"},
		{path: "drawers[].more_holes[].inset", figure: view.DrawerMoreHoles, usual: func(k *picked) length.Length { return k.sheet.Connector.Inset }},
		{path: "drawers[].more_holes[].diameter", figure: view.DrawerMoreHoles, usual: connectorDiameter},
		{path: "drawers[].more_holes[].depth", figure: view.DrawerMoreHoles, usual: connectorDepth},
	}
	bottomRows = []spec{
		{path: "bottom.underside", figure: view.BottomUnderside},
		{path: "bottom.thickness", figure: view.BottomThickness},
		{path: "bottom.deduct_width", figure: view.BottomDeductWidth},
		{path: "bottom.deduct_length", figure: view.BottomDeductLength},
		{path: "bottom.least_width", usual: func(*picked) length.Length { return model.UsualLeastWidth }},
	}
	backRows = []spec{
		{path: "back.thickness", figure: view.BackThickness},
		{path: "back.deduct_width", figure: view.BackDeductWidth},
	}
	stabiliserRows = []spec{{path: "stabiliser.from_width", none: "has none"}}
)

// A hole that gives none of its own has the connector's.
func connectorDiameter(k *picked) length.Length { return k.sheet.Connector.Diameter }
func connectorDepth(k *picked) length.Length    { return k.sheet.Connector.Depth }
