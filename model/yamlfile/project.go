package yamlfile

import (
	"frontlay/model"
	"frontlay/model/length"
)

// Limits on counts. A run that is larger is not one job.
const (
	maxCabinets = 200
	maxBays     = 100
	maxFronts   = 10_000
)

// maxFitting is the greatest size of a figure of boards and hardware.
const maxFitting = 2 * length.Metre

func projectFields(p *model.Project) []field {
	return []field{
		version("frontlay", ProjectVersion),
		text("title", "What the job is called.", &p.Title),
		unit("unit", "The unit of sizes written without one.", &p.Unit),
		notes("notes", "Anything worth remembering; it is printed with the job.", &p.Notes),
		group("rounding", "How computed front heights are rounded.", roundingFields(&p.Rounding)...),
		hardware("hardware", "Hardware sheets by the name that bays use: a sample that ships, a path beside this file, or the sheet itself. The first is used where a bay names none.", &p.Hardware),
		group("boards", "The sheet goods.", boardsFields(&p.Boards)...).needed(),
		group("reveals", "The visible gaps.", revealFields(&p.Reveals)...),
		cabinets.field(&p.Cabinets).needed(),
	}
}

func roundingFields(r *model.Rounding) []field {
	return []field{
		size("step", "Heights are whole multiples of this; 1 mm where it is left out.", &r.Step, positive, 100*length.Millimetre),
		choice("rest", "The front of a stack that takes the odd rest.", &r.Rest, "bottom", "top"),
	}
}

func boardsFields(b *model.Boards) []field {
	return []field{
		group("carcass", "The board of sides, bottoms, tops and partitions.", boardFields(&b.Carcass)...).needed(),
		group("front", "The board of the fronts.", boardFields(&b.Front)...).needed(),
		group("back", "The board of the cabinet backs; left out where there are none.", boardFields(&b.Back)...),
	}
}

func boardFields(b *model.Board) []field {
	return []field{
		size("thickness", "Thickness of the board.", &b.Thickness, positive, 200*length.Millimetre).needed(),
		number("density", "Weight in kg for a cubic metre; left out where it is not known.", &b.Density, 1, 25_000),
		text("material", "What the board is made of.", &b.Material),
		word("grain", "Which way the grain runs, as the panel hangs.", &b.Grain, "horizontal", "vertical"),
	}
}

func revealFields(r *model.Reveals) []field {
	most := length.Metre
	return []field{
		size("left", "Visible gap at the left edge: from the carcass's outline inwards, for inset fronts from the opening inwards.", &r.Left, 0, most),
		size("right", "The same at the right edge.", &r.Right, 0, most),
		size("top", "The same at the top edge.", &r.Top, 0, most),
		size("bottom", "The same at the bottom edge.", &r.Bottom, 0, most),
		size("gap", "Visible gap between two fronts.", &r.Gap, 0, most),
	}
}

var cabinets = listOf[model.Cabinet]{
	key: "cabinets", doc: "The cabinets of the run, left to right.", most: maxCabinets,
	sign: func(c *model.Cabinet) string { return c.Name },
	item: cabinetFields,
}

func cabinetFields(c *model.Cabinet) []field {
	return []field{
		text("name", "What the cabinet is called.", &c.Name),
		size("width", "Outside width of the carcass.", &c.Width, positive, maxSize).needed(),
		size("height", "Height of the carcass alone, without its plinth.", &c.Height, positive, maxSize).needed(),
		size("depth", "From the front edge of the carcass to the back of the cabinet, the back board included.", &c.Depth, positive, maxSize).needed(),
		size("plinth", "Height of the plinth below the carcass.", &c.Plinth, 0, maxSize),
		choice("mount", "Whether fronts lie over the carcass edges or sit in the opening.", &c.Mount, "overlay", "inset"),
		optional("reveals", "Gaps of this cabinet instead of the project's; a gap that is left out here is 0.", &c.Reveals, revealFields),
		bays.field(&c.Bays).needed(),
	}
}

var bays = listOf[model.Bay]{
	key: "bays", doc: "The openings of the cabinet, left to right.", most: maxBays,
	sign: func(b *model.Bay) string {
		s := b.Hardware
		for _, f := range b.Fronts {
			s += "\n" + f.Name
		}
		return s
	},
	item: bayFields,
}

func bayFields(b *model.Bay) []field {
	return []field{
		text("hardware", "Name of the hardware sheet; the first of the project where it is left out.", &b.Hardware),
		size("width", "Clear inside width; left out, the bay takes a share of what is left.", &b.Width, positive, maxSize),
		number("share", "Share of the width that the bays with a width leave; 1 where it is left out.", &b.Share, 0.001, 1000),
		size("partition", "Thickness of the partition at the right of this bay; the carcass board where it is left out.", &b.Partition, positive, 200*length.Millimetre),
		fronts.field(&b.Fronts).needed(),
	}
}

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
		number("share", "Share of the height that the fixed fronts leave; 1 where it is left out.", &f.Share, 0.001, 1000),
		text("drawer", "Name of a drawer height of the hardware sheet, or auto for the tallest that fits.", &f.Drawer),
		sizeIfAny("drop", "How far the front's bottom edge lies below the runner's lower edge; worked out where it is left out.", &f.Drop, -maxFitting, maxFitting),
		size("cover", "How far the front must at least reach past the drawer bottom's underside.", &f.Cover, 0, maxFitting),
	}
}
