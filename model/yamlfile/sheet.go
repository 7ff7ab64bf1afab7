package yamlfile

import (
	"frontlay/model"
	"frontlay/model/length"
)

// The tables of a hardware sheet. Each doc says where on a maker's document
// such a figure stands, since the user has to find it there.

func sheetFields(s *model.HardwareSheet) []field {
	return []field{
		version("frontlay_hardware", SheetVersion),
		text("name", "What you call this family of runners and drawers.", &s.Name).needed(),
		notes("note", "Where the figures come from: which document, which page, which issue.", &s.Note),
		flag("sample", "Whether the figures are invented, as those of the samples that ship; the check warns of bays that use the sheet. Leave it out once every figure is your maker's.", &s.Sample),
		unit("unit", "The unit of sizes written without one.", &s.Unit),
		size("side_clearance", "Carcass inside face to drawer, each side. On the section seen from the front: the gap that the runner fills. Often given for both sides together: then write half.", &s.SideClearance, 0, 200*length.Millimetre).needed(),
		group("runner", "The runner. Its lower edge is the datum of all heights in this sheet.", runnerFields(&s.Runner)...).needed(),
		group("connector", "What holds the front to the drawer. On the drawing of the front's rear face with its drilling.", connectorFields(&s.Connector)...).needed(),
		group("stabiliser", "A part between the two runners that wide drawers need; left out where the family has none.", stabiliserFields(&s.Stabiliser)...),
		drawers.field(&s.Drawers).needed(),
		group("bottom", "The drawer bottom. In the table of panel sizes and on the section seen from the side.", bottomFields(&s.Bottom)...).needed(),
		group("back", "The drawer back. In the table of panel sizes.", backFields(&s.Back)...).needed(),
	}
}

func runnerFields(r *model.RunnerFigures) []field {
	return []field{
		size("least_height", "Carcass bottom's upper face to the runner's lower edge, at least. On the mounting drawing: the free space below the lowest runner.", &r.LeastHeight, 0, maxFitting),
		size("clearance_behind", "Runner's or drawer's end to the back board, at least. On the mounting drawing seen from the side, or as least inside depth less the runner's length.", &r.ClearanceBehind, 0, maxFitting),
		size("clearance_above", "Free space that must stay above the drawer. On the section seen from the front, or in the note on lifting the drawer out.", &r.ClearanceAbove, 0, maxFitting),
		size("setback", "Carcass front edge to the runner's front end, for overlay fronts. On the mounting drawing seen from the side.", &r.Setback, 0, maxFitting),
		size("screw_reach", "How deep the runner's screws go into the carcass side. In the list of screws: the screw's length less the runner's thickness.", &r.ScrewReach, 0, 200*length.Millimetre),
		runnerLengths.field(&r.Lengths).needed(),
	}
}

var runnerLengths = listOf[model.RunnerLength]{
	key: "lengths", doc: "The lengths that can be ordered. In the ordering table.", most: 100,
	sign: func(l *model.RunnerLength) string { return l.Length.String() },
	item: runnerLengthFields,
}

func runnerLengthFields(l *model.RunnerLength) []field {
	return []field{
		size("length", "Length of the runner, as ordered.", &l.Length, positive, maxFitting).needed(),
		number("load", "What the pair carries, in kg, the drawer's own weight included. In the ordering table or the load chart.", &l.Load, 0.1, 5000),
		screws.field(&l.Screws),
	}
}

var screws = listOf[model.ScrewHole]{
	key: "screws", doc: "Holes in the carcass side for the runner's screws. On the drilling drawing of the carcass side.", most: 100, flow: true,
	sign: func(s *model.ScrewHole) string { return s.Back.String() + s.Up.String() },
	item: screwFields,
}

func screwFields(s *model.ScrewHole) []field {
	return []field{
		size("back", "From the carcass's front edge back to the hole's centre.", &s.Back, 0, maxFitting).needed(),
		size("up", "From the runner's lower edge up to the hole's centre; negative where it is below.", &s.Up, -maxFitting, maxFitting).needed(),
		size("diameter", "Diameter of the hole.", &s.Diameter, positive, 50*length.Millimetre).needed(),
		size("depth", "Depth of the hole, less than the carcass board's thickness.", &s.Depth, 0, 100*length.Millimetre),
	}
}

func connectorFields(c *model.ConnectorFigures) []field {
	return []field{
		flag("screwed", "Whether the front is screwed on from inside, through the front of a wooden drawer; then no connectors are ordered, and the holes are those of the screws.", &c.Screwed),
		size("inset", "Carcass inside face to the vertical line of hole centres. On the drilling drawing of the front: the distance from the front's edge less the side overlay.", &c.Inset, -maxFitting, maxFitting).needed(),
		size("diameter", "Diameter of the holes in the rear face.", &c.Diameter, positive, 100*length.Millimetre).needed(),
		size("depth", "Depth of the holes in the rear face, less than the front board's thickness.", &c.Depth, 0, 100*length.Millimetre),
		size("adjust_up", "How far the hung front can be moved up, and as far down. In the notes on adjusting.", &c.AdjustUp, 0, 100*length.Millimetre),
		size("adjust_side", "How far the hung front can be moved to either side. In the notes on adjusting.", &c.AdjustSide, 0, 100*length.Millimetre),
	}
}

var drawers = listOf[model.DrawerHeight]{
	key: "drawers", doc: "The heights of drawer that can be had, lowest first.", most: 100,
	sign: func(d *model.DrawerHeight) string { return d.Name },
	item: drawerFields,
}

func drawerFields(d *model.DrawerHeight) []field {
	return []field{
		text("name", "The word that fronts use for this height, such as low, mid or tall.", &d.Name).needed(),
		size("side_top", "Runner's lower edge to the top of the drawer side. On the section seen from the front.", &d.SideTop, positive, maxFitting).needed(),
		size("back_top", "Runner's lower edge to the top of the drawer back; the drawer side's where it is left out.", &d.BackTop, positive, maxFitting),
		sizes("holes", "Heights of the connector's holes above the runner's lower edge. On the drilling drawing of the front; where it counts from the front's bottom edge, take off the drop.", &d.Holes, -maxFitting, maxFitting),
		size("rail_top", "Runner's lower edge to the top of the rail or high side; left out where there is none.", &d.RailTop, positive, maxFitting),
		sizes("rail_holes", "Heights of the rail's holes above the runner's lower edge. On the drilling drawing of the front with rails.", &d.RailHoles, -maxFitting, maxFitting),
		patterns.field(&d.More),
		number("weight", "Weight of the drawer without front and contents, in kg. In the ordering table.", &d.Weight, 0, 500),
	}
}

var patterns = listOf[model.HolePattern]{
	key: "more_holes", doc: "Further holes that only some fronts have. On the drilling drawing of the front, beside notes such as: from this height or width on.", most: 100, flow: true,
	sign: func(h *model.HolePattern) string { return h.Up.String() },
	item: patternFields,
}

func patternFields(h *model.HolePattern) []field {
	return []field{
		size("up", "Runner's lower edge up to the hole's centre.", &h.Up, -maxFitting, maxFitting).needed(),
		choice("sides", "On both sides of the front, or only on the left or right, seen from the room.", &h.Sides, "both", "left", "right"),
		size("from_height", "Height of the front from which the hole is needed.", &h.FromHeight, 0, maxSize),
		size("from_width", "Width of the front from which the hole is needed.", &h.FromWidth, 0, maxSize),
		size("inset", "Carcass inside face to the hole's centre; the connector's where it is left out.", &h.Inset, 0, maxFitting),
		size("diameter", "Diameter of the hole; the connector's where it is left out.", &h.Diameter, 0, 100*length.Millimetre),
		size("depth", "Depth of the hole; the connector's where it is left out.", &h.Depth, 0, 100*length.Millimetre),
	}
}

func stabiliserFields(s *model.Stabiliser) []field {
	return []field{
		size("from_width", "Width of the front from which it is needed. In the ordering table or the notes on wide drawers.", &s.FromWidth, 0, maxSize),
		stabiliserHoles.field(&s.Holes),
	}
}

var stabiliserHoles = listOf[model.StabiliserHole]{
	key: "holes", doc: "Its holes in the front's rear face. On the drilling drawing of wide fronts.", most: 100, flow: true,
	sign: func(h *model.StabiliserHole) string { return h.Across.String() + h.Up.String() },
	item: stabiliserHoleFields,
}

func stabiliserHoleFields(h *model.StabiliserHole) []field {
	return []field{
		size("across", "From the middle between the runners; negative to the left, seen from the room.", &h.Across, -maxSize, maxSize).needed(),
		size("up", "Runner's lower edge up to the hole's centre.", &h.Up, -maxFitting, maxFitting).needed(),
		size("diameter", "Diameter of the hole; the connector's where it is left out.", &h.Diameter, 0, 100*length.Millimetre),
		size("depth", "Depth of the hole; the connector's where it is left out.", &h.Depth, 0, 100*length.Millimetre),
	}
}

func bottomFields(b *model.BottomFigures) []field {
	return []field{
		size("underside", "Runner's lower edge up to the drawer bottom's underside. On the section seen from the front.", &b.Underside, 0, maxFitting),
		size("thickness", "Thickness of the drawer bottom. In the notes below the table of panel sizes.", &b.Thickness, positive, 100*length.Millimetre).needed(),
		size("deduct_width", "Inside width of the bay less the drawer bottom's width. In the table of panel sizes.", &b.DeductWidth, 0, maxFitting),
		size("deduct_length", "Length of the runner less the drawer bottom's length. In the table of panel sizes.", &b.DeductLength, 0, maxFitting),
	}
}

func backFields(b *model.BackFigures) []field {
	return []field{
		size("deduct_width", "Inside width of the bay less the drawer back's width. In the table of panel sizes.", &b.DeductWidth, 0, maxFitting),
		size("thickness", "Thickness of the drawer back. In the notes below the table of panel sizes.", &b.Thickness, 0, 100*length.Millimetre),
	}
}
