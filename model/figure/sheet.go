package figure

import (
	"frontlay/model"
	"frontlay/model/length"
)

// Sheet are those of a hardware sheet. Each doc says where on a maker's document such a
// figure stands, since the user has to find it there.
func Sheet(s *model.HardwareSheet) []Row {
	return []Row{
		version("frontlay_hardware", SheetVersion),
		line("name", "Name", "What you call this family of runners and drawers.", &s.Name).needed(),
		notes("note", "Where from", "Where the figures come from: which document, which page, which issue.", &s.Note),
		flag("sample", "", "Whether the figures are invented, as those of the samples that ship; the check warns of bays that use the sheet. Leave it out once every figure is your maker's.", &s.Sample),
		unit(&s.Unit),
		size("side_clearance", "Side clearance", "Carcass inside face to drawer, each side. On the section seen from the front: the gap that the runner fills. Often given for both sides together: then write half.", &s.SideClearance, 0, maxBoard).needed(),
		group("runner", "", "The runner. Its lower edge is the datum of all heights in this sheet.", runner(&s.Runner)).needed(),
		group("connector", "", "What holds the front to the drawer. On the drawing of the front's rear face with its drilling.", connector(&s.Connector)).needed(),
		group("stabiliser", "", "A part between the two runners that wide drawers need; left out where the family has none.", stabiliser(&s.Stabiliser)),
		list("drawers", "Drawer heights", "The heights of drawer that can be had, lowest first.", &s.Drawers, maxParts, false, func(d *model.DrawerHeight) string { return d.Name }, drawer).needed(),
		group("bottom", "", "The drawer bottom. In the table of panel sizes and on the section seen from the side.", bottom(&s.Bottom)).needed(),
		group("back", "", "The drawer back. In the table of panel sizes.", back(&s.Back)).needed(),
		group("box", "", "A wooden box that you build for the runners; left out where the drawer is the maker's.", box(&s.Box)),
	}
}

func runner(r *model.RunnerFigures) []Row {
	return []Row{
		size("least_height", "Least height", "Carcass bottom's upper face to the runner's lower edge, at least. On the mounting drawing: the free space below the lowest runner.", &r.LeastHeight, 0, maxFitting),
		size("clearance_behind", "Clearance behind", "Runner's or drawer's end to the back board, at least. On the mounting drawing seen from the side, or as least inside depth less the runner's length.", &r.ClearanceBehind, 0, maxFitting),
		size("clearance_above", "Clearance above", "Free space that must stay above the drawer. On the section seen from the front, or in the note on lifting the drawer out.", &r.ClearanceAbove, 0, maxFitting),
		size("setback", "Setback", "Carcass front edge to the runner's front end, for overlay fronts. On the mounting drawing seen from the side.", &r.Setback, 0, maxFitting),
		size("screw_reach", "Screw reach", "How deep the runner's screws go into the carcass side. In the list of screws: the screw's length less the runner's thickness.", &r.ScrewReach, 0, maxBoard),
		size("play", "Play of the screws, runner", "How far a screw can slip along the runner in its slotted holes, from end to end: the slot's length less the screw's diameter; left out where it has none. On the mounting drawing.", &r.Play, 0, 100*length.Millimetre),
		list("lengths", "Runner lengths", "The lengths that can be ordered. In the ordering table.", &r.Lengths, maxParts, false, func(l *model.RunnerLength) string { return l.Length.String() }, runnerLength).needed(),
	}
}

func runnerLength(l *model.RunnerLength) []Row {
	return []Row{
		size("length", "Length", "Length of the runner, as ordered.", &l.Length, Positive, maxFitting).needed(),
		number("load", "Carries, the pair", "kg", "What the pair carries, in kg, the drawer's own weight included. In the ordering table or the load chart.", &l.Load, 0.1, 5000),
		price(&l.Price, "Price of the pair, in your money; left out where it is not wanted."),
		list("screws", "Screw holes in the carcass side", "Holes in the carcass side for the runner's screws. On the drilling drawing of the carcass side.", &l.Screws, maxParts, true, func(s *model.ScrewHole) string { return s.Back.String() + s.Up.String() }, screw),
	}
}

func screw(s *model.ScrewHole) []Row {
	return []Row{
		size("back", "Screw hole, from the front edge", "From the carcass's front edge back to the hole's centre.", &s.Back, 0, maxFitting).needed(),
		size("up", "Screw hole, up", "From the runner's lower edge up to the hole's centre; negative where it is below.", &s.Up, -maxFitting, maxFitting).needed(),
		size("diameter", "Screw hole, diameter", "Diameter of the hole.", &s.Diameter, Positive, 50*length.Millimetre).needed(),
		size("depth", "Screw hole, depth", "Depth of the hole, less than the carcass board's thickness.", &s.Depth, 0, 100*length.Millimetre),
	}
}

func connector(c *model.ConnectorFigures) []Row {
	return []Row{
		choice("kind", "Front held by", "A pair of connectors; or screws alone, from inside through the inner front of a wooden box: then no connectors are ordered, and the holes are those of the screws.", &c.Kind, "pair", "screws"),
		size("inset", "Connector inset", "Carcass inside face to the vertical line of hole centres. On the drilling drawing of the front: the distance from the front's edge less the side overlay.", &c.Inset, -maxFitting, maxFitting).needed(),
		size("diameter", "Hole diameter", "Diameter of the holes in the rear face.", &c.Diameter, Positive, 100*length.Millimetre).needed(),
		size("depth", "Hole depth", "Depth of the holes in the rear face, less than the front board's thickness.", &c.Depth, 0, 100*length.Millimetre),
		size("adjust_up", "Adjusts up", "How far the hung front can be moved up, and as far down where that is not given. In the notes on adjusting.", &c.AdjustUp, 0, 100*length.Millimetre),
		size("adjust_down", "Adjusts down", "How far it can be moved down, where that differs.", &c.AdjustDown, Positive, 100*length.Millimetre),
		size("adjust_side", "Adjusts to each side", "How far the hung front can be moved to either side. In the notes on adjusting.", &c.AdjustSide, 0, 100*length.Millimetre),
		size("adjust_tilt", "Tilts, at the upper edge", "How far the hung front's upper edge can be moved in or out. In the notes on adjusting.", &c.AdjustTilt, 0, 100*length.Millimetre),
		size("play", "Play of the screws, front", "How far a screw can slip up and down in the slotted ones of the connector's holes, from end to end: the slot's length less the screw's diameter; left out where all hold fast. On the drawing of the connector.", &c.Play, 0, 100*length.Millimetre),
		size("per_turn", "A turn moves up or down", "What a full turn of the screw that adjusts the height moves the front. In the notes on adjusting; left out where it is not given or there is no such screw.", &c.PerTurn, Positive, 100*length.Millimetre),
		size("per_turn_side", "A turn moves to the side", "What a full turn of the screw that adjusts sideways moves the front.", &c.PerTurnSide, Positive, 100*length.Millimetre),
		price(&c.Price, "Price of a pair of connectors, in your money; left out where it is not wanted."),
	}
}

func drawer(d *model.DrawerHeight) []Row {
	return []Row{
		line("name", "Name", "The word that fronts use for this height, such as low, mid or tall.", &d.Name).needed(),
		size("side_top", "Top of the side", "Runner's lower edge to the top of the drawer side. On the section seen from the front.", &d.SideTop, Positive, maxFitting).needed(),
		size("back_top", "Top of the back", "Runner's lower edge to the top of the drawer back; the drawer side's where it is left out.", &d.BackTop, Positive, maxFitting),
		sizes("holes", "Connector holes", "Heights of the connector's holes above the runner's lower edge. On the drilling drawing of the front; where it counts from the front's bottom edge, take off the drop.", &d.Holes, -maxFitting, maxFitting),
		size("rail_top", "Top of the rail", "Runner's lower edge to the top of the rail or high side; left out where there is none.", &d.RailTop, Positive, maxFitting),
		sizes("rail_holes", "Holes of the rail", "Heights of the rail's holes above the runner's lower edge. On the drilling drawing of the front with rails.", &d.RailHoles, -maxFitting, maxFitting),
		list("more_holes", "Further holes", "Further holes that only some fronts have. On the drilling drawing of the front, beside notes such as: from this height or width on.", &d.More, maxParts, true, func(h *model.HolePattern) string { return h.Up.String() }, pattern),
		number("weight", "Weighs", "kg", "Weight of the drawer without front and contents, in kg. In the ordering table.", &d.Weight, 0, 500),
		price(&d.Price, "Price of the drawer without its runners, in your money; left out where it is not wanted."),
	}
}

func pattern(h *model.HolePattern) []Row {
	return []Row{
		size("up", "Height of the hole", "Runner's lower edge up to the hole's centre.", &h.Up, -maxFitting, maxFitting).needed(),
		choice("sides", "On", "On both sides of the front, or only on the left or right, seen from the room.", &h.Sides, "both", "left", "right"),
		size("from_height", "For fronts from height", "Height of the front from which the hole is needed.", &h.FromHeight, 0, maxSize),
		size("from_width", "For fronts from width", "Width of the front from which the hole is needed.", &h.FromWidth, 0, maxSize),
		size("inset", "Its inset", "Carcass inside face to the hole's centre; the connector's where it is left out.", &h.Inset, 0, maxFitting),
		size("diameter", "Its diameter", "Diameter of the hole; the connector's where it is left out.", &h.Diameter, 0, 100*length.Millimetre),
		size("depth", "Its depth", "Depth of the hole; the connector's where it is left out.", &h.Depth, 0, 100*length.Millimetre),
	}
}

func stabiliser(s *model.Stabiliser) []Row {
	return []Row{
		size("from_width", "For fronts from width", "Width of the front from which it is needed. In the ordering table or the notes on wide drawers.", &s.FromWidth, 0, maxSize),
		list("holes", "Its holes in the front", "Its holes in the front's rear face. On the drilling drawing of wide fronts.", &s.Holes, maxParts, true, func(h *model.StabiliserHole) string { return h.Across.String() + h.Up.String() }, stabiliserHole),
	}
}

func stabiliserHole(h *model.StabiliserHole) []Row {
	return []Row{
		size("across", "Hole, across", "From the middle between the runners; negative to the left, seen from the room.", &h.Across, -maxSize, maxSize).needed(),
		size("up", "Hole, up", "Runner's lower edge up to the hole's centre.", &h.Up, -maxFitting, maxFitting).needed(),
		size("diameter", "Hole, diameter", "Diameter of the hole; the connector's where it is left out.", &h.Diameter, 0, 100*length.Millimetre),
		size("depth", "Hole, depth", "Depth of the hole; the connector's where it is left out.", &h.Depth, 0, 100*length.Millimetre),
	}
}

func bottom(b *model.BottomFigures) []Row {
	return []Row{
		size("underside", "Underside", "Runner's lower edge up to the drawer bottom's underside. On the section seen from the front.", &b.Underside, 0, maxFitting),
		size("thickness", "Thickness", "Thickness of the drawer bottom. In the notes below the table of panel sizes.", &b.Thickness, Positive, 100*length.Millimetre).needed(),
		size("deduct_width", "Width less than the bay", "Inside width of the bay less the drawer bottom's width. In the table of panel sizes.", &b.DeductWidth, 0, maxFitting),
		size("deduct_length", "Length less than the runner", "Length of the runner less the drawer bottom's length. In the table of panel sizes.", &b.DeductLength, 0, maxFitting),
		size("least_width", "Least width", "Least width that a drawer bottom can have, for a hand to reach in and the parts to be put together; 100 mm where it is left out.", &b.LeastWidth, Positive, maxFitting),
	}
}

func back(b *model.BackFigures) []Row {
	return []Row{
		size("deduct_width", "Width less than the bay", "Inside width of the bay less the drawer back's width. In the table of panel sizes.", &b.DeductWidth, 0, maxFitting),
		size("thickness", "Thickness", "Thickness of the drawer back. In the notes below the table of panel sizes.", &b.Thickness, 0, 100*length.Millimetre),
	}
}

func box(b *model.BoxFigures) []Row {
	return []Row{
		size("sides", "Thickness of the sides", "Thickness of the box's sides. Your choice, or on the runner's mounting drawing.", &b.Sides, Positive, maxBoard),
		size("front", "Thickness of the inner front", "Thickness of the box's own front, which the front is screwed to.", &b.Front, Positive, maxBoard),
		choice("corners", "Corners", "What runs through at the corners: the sides, with inner front and back between them; or inner front and back, with the sides between.", &b.Corners, "sides_through", "fronts_through"),
		size("joint", "Joint", "How far what stands between reaches into what runs through, at each end: the tongue of a rebated corner, the full thickness of a dovetailed one; left out where it is butted.", &b.Joint, 0, maxBoard),
		choice("bottom", "Bottom held", "In grooves of sides and inner front, pushed in below the back; in grooves of all four; or laid on from below, as large as the box.", &b.Bottom, "under_back", "all_round", "laid_on"),
		size("groove_depth", "Groove, depth", "Depth of the groove, and how far the bottom reaches into it.", &b.GrooveDepth, Positive, maxBoard),
		size("groove_height", "Groove, height", "From the lower edge of the sides up to the groove, which is the bottom's underside.", &b.GrooveHeight, 0, maxFitting),
		size("shorter", "Shorter than the runner", "Length of the runner less the box's outside length. On the mounting drawing, or in the table of box sizes.", &b.Shorter, 0, maxFitting),
		line("material", "Material", "What sides, inner front and back are made of. Where a board of the project is of this material and thickness, they are cut from its stock sheets.", &b.Material),
		number("density", "Density", "kg/m³", "Weight in kg for a cubic metre of it; left out where it is not known.", &b.Density, 1, 25_000),
		line("bottom_material", "Material of the bottom", "What the bottom is made of; its stock sheets likewise.", &b.BottomBoard),
		number("bottom_density", "Density of the bottom", "kg/m³", "Weight in kg for a cubic metre of it; left out where it is not known.", &b.BottomWeighs, 1, 25_000),
	}
}
