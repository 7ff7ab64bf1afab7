package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/ui/field"
)

// hints are shown once, at the first use.
var hints = []string{
	"Drag the line between two fronts to move it; the heights follow the pointer. Shift frees it from whole steps.",
	"Click any figure of the drawing and type another: sums, fractions and units work, such as 900-2*18 or 35 7/16 in.",
	"“See through” shows drawers and holes behind the fronts. The check below tells what would go wrong at the bench, and mends it.",
}

// showHints shows the hints over the drawing, once.
func (w *window) showHints() {
	if w.app.Preferences().Bool(prefHints) {
		return
	}
	w.app.Preferences().SetBool(prefHints, true)
	w.hintsAgain()
}

func (w *window) hintsAgain() {
	var o []fyne.CanvasObject
	for i, h := range hints {
		l := field.NewLabel(w.text("%v.  %v", i+1, w.text(h)))
		l.Wrapping = fyne.TextWrapWord
		o = append(o, l)
	}
	w.page("Three hints to begin with", field.Column(o...))
}
