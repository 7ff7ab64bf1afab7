package ui

import (
	"slices"

	"fyne.io/fyne/v2"
)

// group is the windows of one run of the program. They share what was cut or
// copied, the look, and the language.
type group struct {
	shelf   shelf
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

// panelShares is how much of the window's height and width the drawing has: what
// it had when the last window was closed. Large text wants wider panels, and has
// shares of its own.
func (w *window) panelShares() (down, across float64) {
	p, usualDown, usual := w.app.Preferences(), 0.68, 0.76 // room for three findings of two lines
	if w.theme.Large {
		usualDown, usual = 0.67, 0.7
	}
	return panelShare(p.FloatWithFallback(w.panelPref(prefDown), usualDown)), panelShare(p.FloatWithFallback(w.panelPref(prefAcross), usual))
}

// panelShare keeps the drawing and the panels beside it from going out of sight.
func panelShare(v float64) float64 { return min(max(v, 0.2), 0.95) }

// panelStep is how far one press of a key moves the bars.
const panelStep = 0.04

// movePanels moves the bars between the drawing and its panels, as the pointer
// can, by shares of the window.
func (w *window) movePanels(down, across float64) {
	w.down.SetOffset(panelShare(w.down.Offset + down))
	w.across.SetOffset(panelShare(w.across.Offset + across))
}

func (w *window) panelPref(name string) string {
	if w.theme.Large {
		return name + ", large text"
	}
	return name
}

// keepPanels notes where the bars between the drawing and its panels stand.
func (w *window) keepPanels() {
	w.app.Preferences().SetFloat(w.panelPref(prefDown), w.down.Offset)
	w.app.Preferences().SetFloat(w.panelPref(prefAcross), w.across.Offset)
}

// keepSize notes the window's size and that of its panels; what its text looks
// like is kept already.
func (w *window) keepSize() {
	w.keepPanels()
	s := w.win.Canvas().Size()
	w.app.Preferences().SetFloat(prefWidth, float64(s.Width))
	w.app.Preferences().SetFloat(prefHeight, float64(s.Height))
	w.app.Preferences().SetInt(prefUnit, int(w.session.Project().Unit))
}
