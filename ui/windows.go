package ui

import (
	"slices"

	"fyne.io/fyne/v2"

	"frontlay/ui/arrange"
)

// group is the windows of one run of the program. They share what was cut or
// copied, the look, and the language.
type group struct {
	copied  arrange.Copied
	windows []*window
}

// left takes a window out of its group.
func (g *group) left(w *window) {
	g.windows = slices.DeleteFunc(g.windows, func(o *window) bool { return o == w })
}

// newWindow opens another window of the program, with its start page.
func (w *window) newWindow() { w.another() }

func (w *window) another() *window {
	o := w.options
	o.Open, o.Demo = "", false
	next := openIn(w.group, w.app, w.theme, o)
	next.win.Show()
	next.ready()
	return next
}

// startSize is the size that the last window had when it was closed; at first
// one that fits a screen of 1366 × 768.
func (w *window) startSize() fyne.Size {
	p := w.app.Preferences()
	return fyne.NewSize(float32(p.FloatWithFallback(prefWidth, 1240)), float32(p.FloatWithFallback(prefHeight, 690)))
}

// keepSize notes the window's size and that of its panels; what its text looks
// like is kept already.
func (w *window) keepSize() {
	w.desk.KeepShares()
	s := w.win.Canvas().Size()
	w.app.Preferences().SetFloat(prefWidth, float64(s.Width))
	w.app.Preferences().SetFloat(prefHeight, float64(s.Height))
	w.app.Preferences().SetInt(prefUnit, int(w.session.Project().Unit))
}
