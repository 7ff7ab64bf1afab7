package figure

import (
	"frontlay/model"
	"frontlay/model/length"
)

// measured is what a tape said of an opening.
func measured(key, name, doc string, at **model.Measured) Row {
	return part(key, name, doc, at, Measured)
}

// Measured are those of an opening that was measured.
func Measured(m *model.Measured) []Row {
	return []Row{
		group("widths", "Widths in front", "Clear widths at the front edge.", measuredWidths(&m.Widths)),
		group("heights", "Heights", "Clear heights at the front edge.", []Row{
			size("left", "Height at the left", "Clear height along the left side.", &m.Heights.Left, Positive, maxSize),
			size("middle", "Height in the middle", "Clear height halfway between the sides.", &m.Heights.Middle, Positive, maxSize),
			size("right", "Height at the right", "Clear height along the right side.", &m.Heights.Right, Positive, maxSize),
		}),
		group("diagonals", "Diagonals", "From corner to corner at the front edge.", []Row{
			size("rising", "Diagonal, lower left to upper right", "From the lower left corner to the upper right one.", &m.Rising, Positive, 2*maxSize),
			size("falling", "Diagonal, upper left to lower right", "From the upper left corner to the lower right one.", &m.Falling, Positive, 2*maxSize),
		}),
		group("plumb", "Plumb", "How far the upper end of a side lies to the right of its lower end, by a plumb line; below zero to the left. One side is enough.", []Row{
			sizeOrNil("left", "Left side leans to the right", "Of the left side.", &m.PlumbLeft, -length.Metre, length.Metre),
			sizeOrNil("right", "Right side leans to the right", "Of the right side.", &m.PlumbRight, -length.Metre, length.Metre),
		}),
		sizeOrNil("level", "Bottom rises to the right", "How far the right end of the bottom lies above its left end, by a level; below zero it lies lower.", &m.Level, -length.Metre, length.Metre),
		group("back", "Widths behind", "Clear widths where the runners end.", measuredWidths(&m.Back)),
		size("within", "A figure may be off by", "How far each figure may be off, either way; 0.5 mm where it is left out, which is reading a tape to the whole millimetre.", &m.Within, Positive, 100*length.Millimetre),
	}
}

func measuredWidths(w *model.MeasuredWidths) []Row {
	return []Row{
		size("bottom", "Width at the bottom", "Clear width at the bottom.", &w.Bottom, Positive, maxSize),
		size("middle", "Width in the middle", "Clear width halfway up.", &w.Middle, Positive, maxSize),
		size("top", "Width at the top", "Clear width at the top.", &w.Top, Positive, maxSize),
	}
}
