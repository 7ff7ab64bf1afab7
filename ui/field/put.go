package field

import "fyne.io/fyne/v2"

// Put gives an object its place and size where they are others. Fyne paints the
// window again for every Move of a container, even to where it is already: a layout
// that moves things while it is asked how large it is would be painted, and asked,
// without end.
func Put(o fyne.CanvasObject, pos fyne.Position, size fyne.Size) {
	if o.Size() != size {
		o.Resize(size)
	}
	if o.Position() != pos {
		o.Move(pos)
	}
}

// HighAt is how high an object is in a width, which it takes.
func HighAt(o fyne.CanvasObject, width float32) float32 {
	if o.Size().Width != width {
		o.Resize(fyne.NewSize(width, o.Size().Height))
	}
	return o.MinSize().Height
}
