package field

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	fynetheme "fyne.io/fyne/v2/theme"
)

// Ring shows which widget has the focus. Widgets embed it, tell it when they gain
// the focus and lose it, and let it draw around them.
type Ring struct {
	on  bool
	bad bool // what it is around is at fault
}

// Gain shows the ring of a widget and scrolls to where that is seen whole. inner is
// the widget of Fyne in it that is told too; nil: there is none that has to know.
func (r *Ring) Gain(self fyne.Widget, inner fyne.Focusable) {
	r.on = true
	if inner == nil {
		self.Refresh()
	} else {
		inner.FocusGained()
	}
	Reveal(self)
}

// Lose takes away what Gain shows.
func (r *Ring) Lose(self fyne.Widget, inner fyne.Focusable) {
	r.on = false
	if inner == nil {
		self.Refresh()
	} else {
		inner.FocusLost()
	}
}

// Around adds a ring to a widget's renderer that is seen while the widget has the
// focus: a dark line with a light one inside it, so that it stands out from every
// colour a button can have.
func (r *Ring) Around(of fyne.WidgetRenderer) fyne.WidgetRenderer { return newRing(of, r) }

// edge is Around for what can be pressed: without the focus it has a thin line,
// because its surface hardly differs from what it lies on, while edged is true.
func (r *Ring) edge(of fyne.WidgetRenderer, edged func() bool) fyne.WidgetRenderer {
	ring := newRing(of, r)
	ring.edged = edged
	ring.colour()
	return ring
}

// Line adds a line around a field for text that is seen while it has the focus; the
// field itself shows a cursor, and keeps its own colours.
func (r *Ring) Line(of fyne.WidgetRenderer) fyne.WidgetRenderer {
	ring := newRing(of, r)
	ring.lineOnly = true
	ring.colour()
	return ring
}

// thinEdge is the width of the line around what does not stand out.
const thinEdge = 1

type ringed struct {
	fyne.WidgetRenderer
	focus        *Ring
	lineOnly     bool
	edged        func() bool // tells whether it has a thin line without the focus; nil: never
	outer, inner fynecanvas.Rectangle
}

func newRing(of fyne.WidgetRenderer, focus *Ring) *ringed {
	ring := &ringed{WidgetRenderer: of, focus: focus}
	ring.colour()
	return ring
}

// Widths of the ring's two lines.
const outerRing, innerRing = 2, 1.5

// Layout lays the widget out, and the ring along its edge.
func (r *ringed) Layout(s fyne.Size) {
	r.WidgetRenderer.Layout(s)
	r.frame(s)
}

// frame gives the ring a size.
func (r *ringed) frame(s fyne.Size) {
	r.outer.Resize(s)
	r.inner.Move(fyne.NewPos(outerRing, outerRing))
	r.inner.Resize(s.SubtractWidthHeight(2*outerRing, 2*outerRing))
}

// Objects are those of the widget with the ring above them.
func (r *ringed) Objects() []fyne.CanvasObject {
	own := r.WidgetRenderer.Objects()
	return append(own[:len(own):len(own)], &r.outer, &r.inner)
}

// Refresh shows or hides the ring.
func (r *ringed) Refresh() {
	r.colour()
	r.WidgetRenderer.Refresh()
	r.outer.Refresh()
	r.inner.Refresh()
}

func (r *ringed) colour() {
	r.outer.Hidden, r.inner.Hidden = !r.focus.on, !r.focus.on
	r.outer.StrokeColor, r.outer.StrokeWidth = fynetheme.Color(fynetheme.ColorNameForeground), outerRing
	r.inner.StrokeColor, r.inner.StrokeWidth = fynetheme.Color(fynetheme.ColorNameInputBackground), innerRing
	if r.lineOnly {
		r.inner.Hidden = true
		r.outer.StrokeColor = fynetheme.Color(fynetheme.ColorNamePrimary)
		if r.focus.bad {
			r.outer.Hidden, r.outer.StrokeColor = false, fynetheme.Color(fynetheme.ColorNameError)
		}
	}
	if r.edged != nil && !r.focus.on && r.edged() {
		r.outer.Hidden, r.outer.StrokeWidth = false, thinEdge
		r.outer.StrokeColor = fynetheme.Color(fynetheme.ColorNameInputBorder)
	}
	r.outer.FillColor, r.inner.FillColor = color.Transparent, color.Transparent
	r.outer.CornerRadius = fynetheme.Size(fynetheme.SizeNameInputRadius)
	r.inner.CornerRadius = r.outer.CornerRadius
}
