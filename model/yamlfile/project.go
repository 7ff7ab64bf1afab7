package yamlfile

import (
	"frontlay/model"
	"frontlay/model/length"
)

// maxFitting is the greatest size of a figure of boards and hardware.
const maxFitting = 2 * length.Metre

func projectFields(p *model.Project, limits []model.Limit) []field {
	return []field{
		version("frontlay", ProjectVersion),
		text("title", "What the job is called.", &p.Title),
		unit("unit", "The unit of sizes written without one.", &p.Unit),
		notes("notes", "Anything worth remembering; it is printed with the job.", &p.Notes),
		group("rounding", "How computed front heights are rounded.", roundingFields(&p.Rounding)...),
		hardware("hardware", "Hardware sheets by the name that bays use: a sample that ships, a path beside this file, or the sheet itself. The first is used where a bay names none.", &p.Hardware),
		group("boards", "The sheet goods.", boardsFields(&p.Boards)...).needed(),
		group("reveals", "The visible gaps.", revealFields(&p.Reveals)...),
		flag("shared_gaps", "Whether fronts of neighbouring cabinets keep one gap between them instead of both edge reveals.", &p.SharedGaps),
		group("hole_rows", "The rows of holes in the carcass sides.", holeRowFields(&p.HoleRows)...),
		group("checks", "Settings of the check.", checksFields(&p.Checks, limits)...),
		cabinets.field(&p.Cabinets).needed(),
	}
}

func roundingFields(r *model.Rounding) []field {
	return []field{
		size("step", "Heights are whole multiples of this; 1 mm where it is left out.", &r.Step, positive, 100*length.Millimetre),
		choice("rest", "Which of a stack's fronts without a height of their own takes the odd rest, the lowest or the highest.", &r.Rest, "bottom", "top"),
	}
}

func holeRowFields(h *model.HoleRows) []field {
	return []field{
		choice("mode", "Whether runners fall on rows: free pays no heed to them, move_runners moves runners up to the next row, move_fronts chooses front heights with the least change.", &h.Mode, "free", "move_runners", "move_fronts"),
		size("pitch", "From row to row; 32 mm where it is left out.", &h.Pitch, positive, maxFitting),
		size("datum", "From the carcass's lower edge up to the first row.", &h.Datum, 0, maxFitting),
		size("setback", "From the carcass's front edge back to the row of holes; 37 mm where it is left out.", &h.Setback, positive, maxFitting),
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
		size("lipping", "Thickness of a lipping on all four edges; the cut size is less by it.", &b.Lipping, 0, 100*length.Millimetre),
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
