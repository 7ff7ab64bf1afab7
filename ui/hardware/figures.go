package hardware

import (
	"cmp"

	"frontlay/model"
	"frontlay/model/length"
)

// The figures of the form's groups, in the order in which they are gone through.
var (
	runnerRows = []spec{
		{path: "side_clearance"},
		{path: "runner.least_height"},
		{path: "runner.clearance_above"},
		{path: "runner.setback"},
		{path: "runner.clearance_behind"},
		{path: "runner.screw_reach", none: "not given"},
	}
	connectorRows = []spec{
		{path: "connector.inset"},
		{path: "connector.diameter"},
		{path: "connector.depth"},
		{path: "connector.adjust_up"},
		{path: "connector.adjust_down", usual: func(k *picked) length.Length { return k.sheet.Connector.AdjustUp }},
		{path: "connector.adjust_side"},
		{path: "connector.adjust_tilt", none: "not given"},
		{path: "connector.price", none: "not given"},
	}
	drawerTable = []spec{
		{path: "drawers[].name"},
		{path: "drawers[].side_top"},
		{path: "drawers[].holes", none: "such as 48; 80"},
	}
	drawerRows = []spec{
		{path: "drawers[].back_top", usual: func(k *picked) length.Length { return k.drawer.SideTop }},
		{path: "drawers[].rail_top", none: "no rail"},
		{path: "drawers[].rail_holes", none: "none"},
		{path: "drawers[].weight", none: "not given"},
		{path: "drawers[].price", none: "not given"},
	}
	moreRows = []spec{
		{path: "drawers[].more_holes[].up"},
		{path: "drawers[].more_holes[].from_height", none: "any"},
		{path: "drawers[].more_holes[].from_width", none: "any"},
		{path: "drawers[].more_holes[].inset", usual: func(k *picked) length.Length { return k.sheet.Connector.Inset }},
		{path: "drawers[].more_holes[].diameter", usual: connectorDiameter},
		{path: "drawers[].more_holes[].depth", usual: connectorDepth},
	}
	boxSides = spec{path: "box.sides", none: "no wooden box", then: boxOrNone}
	boxRows  = []spec{
		{path: "box.front", none: "none"},
		{path: "box.joint", none: "butted"},
		{path: "box.groove_depth", none: "none"},
		{path: "box.groove_height", none: "none"},
		{path: "box.shorter", none: "as long"},
		{path: "box.material", none: "not given"},
		{path: "box.density", none: "not given"},
		{path: "box.bottom_material", none: "not given"},
		{path: "box.bottom_density", none: "not given"},
	}
	bottomRows = []spec{
		{path: "bottom.underside"},
		{path: "bottom.thickness"},
	}
	bottomDeducts = []spec{ // of a drawer that is the maker's
		{path: "bottom.deduct_width"},
		{path: "bottom.deduct_length"},
	}
	bottomLeast    = spec{path: "bottom.least_width", usual: func(*picked) length.Length { return model.UsualLeastWidth }}
	backRows       = []spec{{path: "back.thickness"}}
	backDeducts    = []spec{{path: "back.deduct_width"}}
	stabiliserRows = []spec{{path: "stabiliser.from_width", none: "has none"}}
	screwRows      = []spec{ // that few jobs need
		{path: "connector.per_turn", none: "not given"},
		{path: "connector.per_turn_side", none: "not given"},
		{path: "connector.play", none: "none"},
		{path: "runner.play", none: "none"},
	}
)

// A hole that gives none of its own has the connector's.
func connectorDiameter(k *picked) length.Length { return k.sheet.Connector.Diameter }
func connectorDepth(k *picked) length.Length    { return k.sheet.Connector.Depth }

// boxOrNone leaves a sheet the figures of its drawer alone: those of a wooden box, which
// others follow from, or the maker's.
func boxOrNone(k *picked) {
	s := k.sheet
	if !s.Wooden() {
		s.Box = model.BoxFigures{}
		return
	}
	s.Bottom.DeductWidth, s.Bottom.DeductLength, s.Back.DeductWidth = 0, 0, 0
	s.Box.Front, s.Back.Thickness = cmp.Or(s.Box.Front, s.Box.Sides), cmp.Or(s.Back.Thickness, s.Box.Sides)
}
