package figure

import (
	"frontlay/model"
)

// Cabinet are those of one cabinet.
func Cabinet(c *model.Cabinet) []Row {
	return []Row{
		line("name", "Name", "What the cabinet is called.", &c.Name),
		size("width", "Width", "Outside width of the carcass.", &c.Width, Positive, maxSize).needed(),
		size("height", "Height of carcass", "Height of the carcass alone, without its plinth.", &c.Height, Positive, maxSize).needed(),
		size("depth", "Depth", "From the front edge of the carcass to the back of the cabinet, the back board included.", &c.Depth, Positive, maxSize).needed(),
		size("plinth", "Plinth", "Height of the plinth below the carcass, or of the feet; of a cabinet that hangs on the wall, how high it hangs above the floor.", &c.Plinth, 0, maxSize),
		group("base", "", "What the cabinet stands on.", Base(&c.Base)),
		group("back", "", "How the back is fixed.", BackFit(&c.Back)),
		group("rail", "", "The rail between two inset fronts of the cabinet; the gap is kept at both its edges.", Rail(&c.Rail)),
		size("worktop", "Worktop", "Thickness of the worktop on the carcass.", &c.Worktop, 0, maxFitting),
		group("channel", "", "A finger-pull channel at the top that fronts stay below: from the carcass's upper edge downwards, for inset fronts from the opening's.", Channel(&c.Channel)),
		choice("mount", "Fronts", "Whether fronts lie over the carcass edges or sit in the opening.", &c.Mount, "overlay", "inset"),
		line("board", "Front board", "Name of the board of the cabinet's fronts in boards.fronts, or front for boards.front; the project's where it is left out.", &c.Board),
		matched(&c.Matched),
		handle("Holes for the handles of the cabinet's drawers; those of the project where they are left out.", &c.Handle),
		part("reveals", "Reveals", "Gaps of this cabinet instead of the project's; a gap that is left out here is 0.", &c.Reveals, Reveals),
		group("left", "At its left", "The left side, seen from the room, and what stands there.", Beside(&c.Left)),
		group("right", "At its right", "The right side, seen from the room, and what stands there.", Beside(&c.Right)),
		list("bays", "", "The openings of the cabinet, left to right.", &c.Bays, maxBays, false, bayNames, Bay).needed(),
	}
}

// matched is which fronts are cut from one board in order.
func matched(at *string) Row {
	return word("matched", "Grain matched", "Which fronts are cut from one board in order, so that the grain runs from each into the next: none, those of a stack (vertical) or those of a row through the run (horizontal); left out, what the cabinet or the project says.", at, model.NotMatched, model.MatchedUpright, model.MatchedAcross)
}

// Channel are those of a finger-pull channel.
func Channel(c *model.Channel) []Row {
	return []Row{
		size("height", "Finger-pull channel", "Height of the channel, from its upper edge down; left out, there is none.", &c.Height, 0, maxFitting),
		size("depth", "Depth of the channel", "From the carcass's front edge back to the board that closes the channel; left out where none of the carcass's boards does.", &c.Depth, 0, maxFitting),
	}
}

// Rail are those of a rail between two inset fronts.
func Rail(r *model.Rail) []Row {
	return []Row{
		size("height", "Rail between fronts", "Height of the rail as it is seen from the room; left out, there is none.", &r.Height, 0, maxFitting),
		size("depth", "Depth of the rail", "From the carcass's front edge back to the rail's rear edge; 80 mm where it is left out.", &r.Depth, 0, maxFitting),
	}
}

// Base are those of what a cabinet stands on.
func Base(b *model.Base) []Row {
	return []Row{
		choice("kind", "Stands on", "A plinth with its board, feet that are seen, or nothing, as it hangs on the wall.", &b.Kind, "plinth", "feet", "wall"),
		size("setback", "Plinth set back", "From the carcass's front edge back to the face of the plinth board, or to the front feet.", &b.Setback, 0, maxFitting),
		choice("stands", "Kept from tipping", "By what: not said, its own weight (free), or the wall that it is fixed to.", &b.Stands, "not_said", "free", "fixed"),
		size("fixed_at", "Fixed to the wall at", "Height above the floor of its fixing to the wall; the carcass's upper edge where it is left out.", &b.FixedAt, Positive, maxSize),
		count("feet", "Feet", "How many feet carry the cabinet; left out, 4 where it stands on feet alone, and none behind a plinth board.", &b.FeetCount, 1, 100),
	}
}

// BackFit are those of how a back is fixed.
func BackFit(b *model.BackFit) []Row {
	return []Row{
		choice("kind", "Back", "Laid on behind the carcass, in a rebate of sides, bottom and top, or in a groove of them.", &b.Kind, "laid_on", "rebated", "grooved"),
		size("depth", "Rebate or groove", "How deep the rebate or groove is in sides, bottom and top; half of the thinnest of them where it is left out.", &b.Depth, 0, maxBoard),
		size("setback", "Back set in", "From the rear edges of sides, bottom and top to the rear face of a back that is let into them.", &b.Setback, 0, maxFitting),
	}
}

// Beside are those of one side of a cabinet, and of what stands there.
func Beside(b *model.Beside) []Row {
	return []Row{
		size("side", "Thickness of the side", "Thickness of the carcass's own side; the carcass board's where it is left out.", &b.Side, Positive, maxBoard),
		size("end_panel", "End panel", "Thickness of an end panel on the carcass side; it ends level with the faces of overlay fronts.", &b.EndPanel, 0, maxBoard),
		size("filler", "Filler", "Width of a filler beyond it.", &b.Filler, 0, maxFitting),
		flag("wall", "A wall or a corner", "Whether a wall or a corner follows.", &b.Wall),
		size("projection", "Projects from the wall", "How far something at the wall, such as a door casing or the handles round a corner, reaches into the way of an opening drawer.", &b.Projection, 0, maxFitting),
	}
}

// bayNames tells a bay from others by its hardware and the names of its fronts.
func bayNames(b *model.Bay) string {
	s := b.Hardware
	for i := range b.Fronts {
		s += "\n" + b.Fronts[i].Name
	}
	return s
}

// Bay are those of one bay.
func Bay(b *model.Bay) []Row {
	return []Row{
		line("hardware", "Hardware", "Name of the hardware sheet; the first of the project where it is left out.", &b.Hardware),
		size("width", "Clear width", "Clear inside width; left out, the bay takes a share of what is left.", &b.Width, Positive, maxSize),
		number("share", "", "", "Share of the width that the bays with a width leave; 1 where it is left out.", &b.Share, 0.001, 1000),
		size("partition", "", "Thickness of the partition at the right of this bay; the carcass board where it is left out.", &b.Partition, Positive, maxBoard),
		group("division", "", "The rule by which fronts without a height share what is left.", Division(&b.Division)),
		matched(&b.Matched),
		measured("measured", "Opening as measured", "What the tape says of the opening of a carcass that is there already; left out where the carcass is built as planned. It changes no size of the plan: what follows from it is told.", &b.Measured),
		group("packing", "Packing", "Packing between the carcass and the runners of the bay's drawers, such as drawers behind a door need to pass it.", Packing(&b.Packing)),
		list("fronts", "", "What stands in the bay, bottom to top.", &b.Fronts, maxFronts, true, func(f *model.Front) string { return f.Name }, Front).needed(),
	}
}

// Division are those of the rule by which fronts share what is left.
func Division(d *model.Division) []Row {
	return []Row{
		choice("rule", "Division", "By each front's share, all equal, growing downwards by a step, or growing downwards by a ratio.", &d.Rule, "shares", "equal", "step", "ratio"),
		size("step", "Step to the next", "With the rule step: each front is taller by this than the one above it.", &d.Step, 0, maxFitting),
		number("ratio", "Factor to the next", "", "With the rule ratio: each front is taller by this factor than the one above it.", &d.Ratio, 0.1, 10),
	}
}

// Front are those of one place in the stack.
func Front(f *model.Front) []Row {
	return []Row{
		line("name", "Name", "What the front is called.", &f.Name),
		choice("kind", "Kind", "A drawer with its front, a fixed panel, an open niche, or a door.", &f.Kind, "drawer", "fixed", "open", "door"),
		size("height", "Height", "Fixed height; left out, the front takes a share of what is left.", &f.Height, Positive, maxSize),
		flag("clear", "", "Whether the fixed height of an open niche is the clear one, between the boards below and above it; otherwise it is from front line to front line.", &f.Clear),
		number("share", "Share of the rest", "", "Share of the height that the fixed fronts leave; 1 where it is left out.", &f.Share, 0.001, 1000),
		size("least", "Least height", "Least height of a front without a fixed one.", &f.Least, Positive, maxSize),
		size("greatest", "Greatest height", "Greatest height of a front without a fixed one.", &f.Greatest, Positive, maxSize),
		flag("locked", "Locked at this height", "Whether edits and hole rows leave the fixed height alone.", &f.Locked),
		part("line_up", "", "Another front whose edge this front's top edge is level with.", &f.LineUp, lineUp),
		count("span", "Bays spanned", "How many bays the front spans, to the right; 1 where it is left out.", &f.Span, 1, maxBays),
		line("board", "Front board", "Name of the front's board in boards.fronts, or front for boards.front; the cabinet's where it is left out.", &f.Board),
		line("hardware", "Hardware", "Name of the hardware sheet; the bay's where it is left out.", &f.Hardware),
		line("drawer", "Drawer height", "Name of a drawer height of the hardware sheet, or auto for the tallest that fits.", &f.Drawer),
		size("runner", "Runner asked for", "Length of the runner; the longest that fits where it is left out.", &f.Runner, Positive, maxFitting),
		sizeOrNil("drop", "Drop", "How far the front's bottom edge lies below the runner's lower edge; worked out where it is left out.", &f.Drop, -maxFitting, maxFitting),
		size("cover", "Least cover", "How far the front must at least reach past the drawer bottom's underside.", &f.Cover, 0, maxFitting),
		sizeOrNil("gap_above", "Gap above", "Visible gap above the front, at the top of the stack instead of the top reveal; the height of its channel, or else the cabinet's, where it is left out.", &f.GapAbove, 0, maxFitting),
		group("channel", "", "A finger-pull channel above the front: its upper edge is level with the lower edge of the front above, or at the top of the stack with that of the cabinet's fronts.", Channel(&f.Channel)),
		part("rail", "", "The rail above an inset front, instead of the cabinet's; without a height there is none.", &f.Rail, Rail),
		group("contents", "", "What the drawer is to hold.", Contents(&f.Contents)),
		choice("hinged", "Hinges", "Of a door: the side at which its hinges are, seen from the room.", &f.Hinged, "left", "right"),
		list("inner", "Inner drawer", "Inner drawers behind the front, a door's or over its own drawer, bottom to top: each with its own runners, and without holes in the front.", &f.Inner, maxInner, true, func(d *model.InnerDrawer) string { return d.Drawer }, Inner),
		part("packing", "Packing of the front", "Packing beside the runners of the drawers behind this front, instead of the bay's.", &f.Packing, Packing),
		handle("Holes for the front's handle or knob, drilled from the face; of a drawer those of the cabinet where they are left out.", &f.Handle),
		part("as_built", "Gaps as built", "The gaps measured when the front is hung, with its connectors in the middle of their way.", &f.AsBuilt, asBuilt),
	}
}

func lineUp(l *model.LineUp) []Row {
	return []Row{
		line("cabinet", "", "Name of the other front's cabinet; this one where it is left out.", &l.Cabinet),
		count("bay", "", "Number of the other front's bay in its cabinet, from 1 at the left.", &l.Bay, 1, maxBays),
		line("front", "", "Name of the other front, or its number in the stack from 1 at the bottom.", &l.Front).needed(),
		flag("bottom", "", "Whether it is the other front's bottom edge.", &l.Bottom),
	}
}

// Inner are those of an inner drawer.
func Inner(d *model.InnerDrawer) []Row {
	return []Row{
		size("up", "Runner's height", "From the board that the front stands on, or else from the front's bottom edge, up to the lower edge of the inner drawer's runner.", &d.Up, 0, maxSize),
		line("drawer", "Drawer height", "Name of a drawer height of the front's hardware sheet, or auto for the tallest that fits.", &d.Drawer),
		size("runner", "Runner asked for", "Length of the runner; the longest that fits where it is left out.", &d.Runner, Positive, maxFitting),
		group("contents", "", "What the inner drawer is to hold.", Contents(&d.Contents)),
	}
}

// Packing are those of what stands beside the runners.
func Packing(k *model.Packing) []Row {
	return []Row{
		size("left", "Packing left", "Thickness of the packing at the left, seen from the room.", &k.Left, 0, maxFitting),
		size("right", "Packing right", "Thickness of the packing at the right.", &k.Right, 0, maxFitting),
	}
}

// Contents are those of what a drawer is to hold.
func Contents(c *model.Contents) []Row {
	return []Row{
		size("height", "Contents height", "Height of what is to stand in the drawer.", &c.Height, 0, maxFitting),
		number("weight", "Contents weight", "kg", "Weight of what is to lie in the drawer, in kg.", &c.Weight, 0, 2000),
	}
}
