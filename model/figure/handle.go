package figure

import "frontlay/model"

// handle is the pattern of a handle's holes, of the project, a cabinet or a front.
func handle(doc string, at **model.Handle) Row {
	return part("handle", "Handle holes", doc, at, Handle)
}

// Handle are those of a pattern of handle holes.
func Handle(h *model.Handle) []Row {
	return []Row{
		flag("none", "No handle", "Whether there is none, although the cabinet or the project has a pattern.", &h.None),
		count("count", "Handles side by side", "One handle or two, which stand alike from both side edges; one where it is left out.", &h.Count, 1, 2),
		size("spacing", "Holes apart", "Between the two holes of a handle; left out for one hole, as of a knob.", &h.Spacing, 0, maxFitting),
		flag("upright", "Upright", "Whether the two holes of a handle stand one above the other.", &h.Upright),
		size("from_top", "From the top edge", "From the front's top edge to the middle of the handle; the middle of the height where nothing says how high it is.", &h.FromTop, 0, maxFitting).oneWay("height"),
		size("from_bottom", "From the bottom edge", "From the front's bottom edge to the middle of the handle, instead.", &h.FromBottom, 0, maxFitting).oneWay("height"),
		size("above_middle", "Above the middle", "From the middle of the front's height up to the middle of the handle, instead; below zero: down.", &h.AboveMiddle, -maxFitting, maxFitting).oneWay("height"),
		size("on_line", "On a line at", "Height above the floor of the middle of the handle, instead: one line through the run. Where it is said of a cabinet or the project, drawers that the line does not cross have theirs in the middle of the height.", &h.OnLine, 0, maxSize).oneWay("height"),
		size("from_left", "From the left edge", "From the front's left edge, seen from the room, to the middle of the handle, of two the left one; the middle of the width where nothing says how far across it is, of two a quarter of the width from each edge.", &h.FromLeft, 0, maxSize).oneWay("across"),
		size("from_right", "From the right edge", "From the front's right edge to the middle of the handle, of two the right one, instead.", &h.FromRight, 0, maxSize).oneWay("across"),
		size("beside_middle", "Beside the middle", "From the middle of the front's width to the right, to the middle of the handle, instead; below zero: to the left. Of two handles, how far each is from the middle.", &h.BesideMiddle, -maxSize, maxSize).oneWay("across"),
		price(&h.Price, "Price of a handle or knob, in your money; left out where it is not wanted."),
		size("diameter", "Diameter", "Diameter of the holes; 5 mm where it is left out.", &h.Diameter, Positive, maxFitting),
	}
}
