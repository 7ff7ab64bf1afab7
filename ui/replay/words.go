package replay

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
)

// Words is all that can be read in an object, in the order in which it is
// painted, with one space between texts; what is hidden is not read.
func Words(top fyne.CanvasObject) string {
	var all []string
	var walk func(fyne.CanvasObject)
	walk = func(o fyne.CanvasObject) {
		if !o.Visible() {
			return
		}
		switch v := o.(type) {
		case *canvas.Text:
			if v.Text != "" {
				all = append(all, strings.TrimSpace(v.Text))
			}
		case *fyne.Container:
			for _, c := range v.Objects {
				walk(c)
			}
		case fyne.Widget:
			for _, c := range test.WidgetRenderer(v).Objects() {
				walk(c)
			}
		}
	}
	walk(top)
	return strings.Join(all, " ")
}
