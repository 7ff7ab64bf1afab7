package ui

import "fyne.io/fyne/v2"

// newWindow opens another window of the program, with its start page.
func (w *window) newWindow() {
	o := w.options
	o.Open, o.Demo, o.Places = "", false, ""
	next := open(w.app, w.theme, o)
	next.shelf = w.shelf
	next.win.Show()
	next.ready()
}

// startSize is the size that the last window had when it was closed; at first
// one that fits a screen of 1366 × 768.
func (w *window) startSize() fyne.Size {
	p := w.app.Preferences()
	return fyne.NewSize(float32(p.FloatWithFallback(prefWidth, 1240)), float32(p.FloatWithFallback(prefHeight, 690)))
}

// keepSize notes the window's size, what its text looks like is kept already.
func (w *window) keepSize() {
	s := w.win.Canvas().Size()
	w.app.Preferences().SetFloat(prefWidth, float64(s.Width))
	w.app.Preferences().SetFloat(prefHeight, float64(s.Height))
	w.app.Preferences().SetInt(prefUnit, int(w.session.Project().Unit))
}
