package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// showSteps lists every step; a click goes to the state after it.
func (w *window) showSteps() {
	labels, done := w.session.Steps()
	list := widget.NewList(func() int { return len(labels) + 1 },
		func() fyne.CanvasObject { return widget.NewLabel("") },
		func(i widget.ListItemID, o fyne.CanvasObject) {
			l := o.(*widget.Label)
			text := w.text("As it was opened")
			if i > 0 {
				text = w.say().Say(labels[i-1])
			}
			l.TextStyle.Bold = i == done
			l.Importance = widget.MediumImportance
			if i > done {
				l.Importance = widget.LowImportance
			}
			l.SetText(text)
		})
	box := container.NewGridWrap(fyne.NewSize(460, 320), list)
	d := w.closing(w.text("Steps"), w.text("Close"), box, nil)
	list.Select(done)
	list.OnSelected = func(i widget.ListItemID) {
		done = i
		w.session.Go(i)
		list.Refresh()
	}
	w.showDialog(d)
}
