package field

import "fyne.io/fyne/v2"

// CanvasOf is the canvas that shows an object; nil: none does. Fyne knows that
// from painting alone: not of what was made since the last frame, and no longer
// of what nobody has asked about for a minute. Its windows can be made to look.
func CanvasOf(o fyne.CanvasObject) fyne.Canvas {
	d := fyne.CurrentApp().Driver()
	if c := d.CanvasForObject(o); c != nil {
		return c
	}
	for _, w := range d.AllWindows() {
		if c, ok := w.Canvas().(interface{ EnsureMinSize() bool }); ok {
			c.EnsureMinSize()
		}
	}
	return d.CanvasForObject(o)
}
