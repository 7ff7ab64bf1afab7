package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/ui/field"
	"frontlay/ui/look"
)

// In every look buttons and choices have a line around them: by their surface they
// do not stand out from what they lie on.
func TestButtonsHaveEdges(t *testing.T) {
	w, _, _ := newWindow(t, "")
	w.showStart(nil)
	var edges func(o fyne.CanvasObject) int
	edges = func(o fyne.CanvasObject) (n int) {
		if !o.Visible() {
			return 0
		}
		for _, c := range partsOf(o) {
			r, ok := c.(*fynecanvas.Rectangle)
			switch o.(type) {
			case *field.Button, *field.Choice:
				if ok && r.Visible() && r.StrokeWidth > 0 {
					n++
				}
			default:
				n += edges(c)
			}
		}
		return n
	}
	for _, mode := range []look.Mode{look.LightMode, look.DarkMode, look.ContrastMode, look.DarkContrastMode} {
		w.group.theme.Mode = mode
		w.group.paint(mode)
		w.showStart(nil)
		if n := edges(w.stage.front); n < 6 {
			t.Errorf("look %v: %d buttons and choices have a line", mode, n)
		}
	}
}
