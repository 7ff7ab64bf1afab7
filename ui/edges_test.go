package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/ui/field"
	"frontlay/ui/look"
)

// In high contrast buttons and choices have a line around them: by their surface
// they do not stand out from the white ground.
func TestEdgesInHighContrast(t *testing.T) {
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
	if n := edges(w.stage.front); n > 0 {
		t.Errorf("%d buttons and choices have a line in the light look", n)
	}
	w.group.theme.Mode = look.ContrastMode
	w.group.paint(w.group.theme.Mode)
	w.showStart(nil)
	if n := edges(w.stage.front); n < 6 {
		t.Errorf("%d buttons and choices have a line in high contrast", n)
	}
}
