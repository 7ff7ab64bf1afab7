package replay

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
)

// All are the objects of a kind that are seen in an object, in the order in which
// they are painted.
func All[O fyne.CanvasObject](top fyne.CanvasObject) (found []O) {
	var walk func(fyne.CanvasObject)
	walk = func(o fyne.CanvasObject) {
		if !o.Visible() {
			return
		}
		if one, ok := o.(O); ok {
			found = append(found, one)
		}
		switch v := o.(type) {
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
	return found
}

// Words is all that can be read in an object, in the order in which it is
// painted, with one space between texts; what is hidden is not read.
func Words(top fyne.CanvasObject) string {
	var all []string
	for _, t := range All[*canvas.Text](top) {
		if t.Text != "" {
			all = append(all, strings.TrimSpace(t.Text))
		}
	}
	return strings.Join(all, " ")
}
