package paint

import "fyne.io/fyne/v2"

// Box is a rectangle on the screen, from its upper left to its lower right
// corner, in units of the screen.
type Box struct{ X1, Y1, X2, Y2 float32 }

// BoxAt is a box by its place and size.
func BoxAt(at fyne.Position, size fyne.Size) Box {
	return Box{at.X, at.Y, at.X + size.Width, at.Y + size.Height}
}

// Place is the upper left corner.
func (b Box) Place() fyne.Position { return fyne.NewPos(b.X1, b.Y1) }

// Extent is the size.
func (b Box) Extent() fyne.Size { return fyne.NewSize(b.X2-b.X1, b.Y2-b.Y1) }

// Empty tells that there is nothing in the box.
func (b Box) Empty() bool { return b.X1 >= b.X2 || b.Y1 >= b.Y2 }

// Overlaps tells that two boxes share an area; a line's box, which has none, is
// met where it goes through.
func (b Box) Overlaps(o Box) bool { return b.X1 < o.X2 && o.X1 < b.X2 && b.Y1 < o.Y2 && o.Y1 < b.Y2 }

// Within tells that a box lies in another.
func (b Box) Within(o Box) bool {
	return b.X1 >= o.X1 && b.Y1 >= o.Y1 && b.X2 <= o.X2 && b.Y2 <= o.Y2
}

// Common is the part that two boxes share; where they share none, one edge lies
// beyond the other.
func (b Box) Common(o Box) Box {
	return Box{max(b.X1, o.X1), max(b.Y1, o.Y1), min(b.X2, o.X2), min(b.Y2, o.Y2)}
}

// Grown is larger by so much at each side.
func (b Box) Grown(dx, dy float32) Box { return Box{b.X1 - dx, b.Y1 - dy, b.X2 + dx, b.Y2 + dy} }
