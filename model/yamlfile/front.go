package yamlfile

import (
	"frontlay/model"
)

var fronts = listOf[model.Front]{
	key: "fronts", doc: "What stands in the bay, bottom to top.", most: maxFronts, flow: true,
	sign: func(f *model.Front) string { return f.Name },
	item: frontFields,
}

func frontFields(f *model.Front) []field {
	return []field{
		text("name", "What the front is called.", &f.Name),
		choice("kind", "A drawer with its front, a fixed panel, or an open niche.", &f.Kind, "drawer", "fixed", "open"),
		size("height", "Fixed height; left out, the front takes a share of what is left.", &f.Height, positive, maxSize),
		flag("clear", "Whether the fixed height of an open niche is the clear one, between the boards below and above it; otherwise it is from front line to front line.", &f.Clear),
		number("share", "Share of the height that the fixed fronts leave; 1 where it is left out.", &f.Share, 0.001, 1000),
		size("least", "Least height of a front without a fixed one.", &f.Least, positive, maxSize),
		size("greatest", "Greatest height of a front without a fixed one.", &f.Greatest, positive, maxSize),
		flag("locked", "Whether edits and hole rows leave the fixed height alone.", &f.Locked),
		optional("line_up", "Another front whose edge this front's top edge is level with.", &f.LineUp, lineUpFields),
		count("span", "How many bays the front spans, to the right; 1 where it is left out.", &f.Span, 1, maxBays),
		text("hardware", "Name of the hardware sheet; the bay's where it is left out.", &f.Hardware),
		text("drawer", "Name of a drawer height of the hardware sheet, or auto for the tallest that fits.", &f.Drawer),
		size("runner", "Length of the runner; the longest that fits where it is left out.", &f.Runner, positive, maxFitting),
		sizeIfAny("drop", "How far the front's bottom edge lies below the runner's lower edge; worked out where it is left out.", &f.Drop, -maxFitting, maxFitting),
		size("cover", "How far the front must at least reach past the drawer bottom's underside.", &f.Cover, 0, maxFitting),
		group("contents", "What the drawer is to hold.", contentsFields(&f.Contents)...),
		optional("handle", "One hole or two for a handle, drilled from the face.", &f.Handle, handleFields),
	}
}

func lineUpFields(l *model.LineUp) []field {
	return []field{
		text("cabinet", "Name of the other front's cabinet; this one where it is left out.", &l.Cabinet),
		count("bay", "Number of the other front's bay in its cabinet, from 1 at the left.", &l.Bay, 1, maxBays),
		text("front", "Name of the other front, or its number in the stack from 1 at the bottom.", &l.Front).needed(),
		flag("bottom", "Whether it is the other front's bottom edge.", &l.Bottom),
	}
}

func contentsFields(c *model.Contents) []field {
	return []field{
		size("height", "Height of what is to stand in the drawer.", &c.Height, 0, maxFitting),
		number("weight", "Weight of what is to lie in the drawer, in kg.", &c.Weight, 0, 2000),
	}
}

func handleFields(h *model.Handle) []field {
	return []field{
		size("spacing", "Between the two holes; left out for one hole.", &h.Spacing, 0, maxFitting),
		size("from_top", "From the front's top edge to the line of holes; the middle of the height where it is left out.", &h.FromTop, 0, maxFitting),
		size("from_left", "From the front's left edge, seen from the room, to the middle of the handle; the middle of the width where it is left out.", &h.FromLeft, 0, maxSize),
		size("diameter", "Diameter of the holes.", &h.Diameter, positive, maxFitting).needed(),
	}
}
