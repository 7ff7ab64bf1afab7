package field

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	fynetheme "fyne.io/fyne/v2/theme"
)

// WithRing adds a ring to a widget's renderer that is seen while the widget has
// the focus: a dark line with a light one inside it, so that it stands out from
// every colour a button can have.
func WithRing(r fyne.WidgetRenderer, focused func() bool) fyne.WidgetRenderer {
	return newRing(r, focused, false)
}

// withEdge is WithRing for what can be pressed: without the focus it has a thin
// line where the look's buttons have the colour of what they lie on.
func withEdge(r fyne.WidgetRenderer, focused func() bool) fyne.WidgetRenderer {
	ring := newRing(r, focused, false)
	ring.edged = true
	ring.colour()
	return ring
}

// needsEdge tells that buttons don't stand out by their surface, as in high
// contrast.
func needsEdge() bool {
	return fynetheme.Color(fynetheme.ColorNameButton) == fynetheme.Color(fynetheme.ColorNameBackground)
}

// thinEdge is the width of the line around what does not stand out.
const thinEdge = 1

// WithLine adds a line around a field for text that is seen while it has the
// focus; the field itself shows a cursor, and keeps its own colours.
func WithLine(r fyne.WidgetRenderer, focused func() bool) fyne.WidgetRenderer {
	return newRing(r, focused, true)
}

type ringed struct {
	fyne.WidgetRenderer
	focused      func() bool
	lineOnly     bool
	edged        bool // it has a line where its surface does not stand out
	outer, inner fynecanvas.Rectangle
}

func newRing(r fyne.WidgetRenderer, focused func() bool, lineOnly bool) *ringed {
	ring := &ringed{WidgetRenderer: r, focused: focused, lineOnly: lineOnly}
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
	r.outer.Hidden, r.inner.Hidden = !r.focused(), !r.focused()
	r.outer.StrokeColor, r.outer.StrokeWidth = fynetheme.Color(fynetheme.ColorNameForeground), outerRing
	r.inner.StrokeColor, r.inner.StrokeWidth = fynetheme.Color(fynetheme.ColorNameInputBackground), innerRing
	if r.lineOnly {
		r.inner.Hidden = true
		r.outer.StrokeColor = fynetheme.Color(fynetheme.ColorNamePrimary)
	}
	if r.edged && !r.focused() && needsEdge() {
		r.outer.Hidden, r.outer.StrokeWidth = false, thinEdge
	}
	r.outer.FillColor, r.inner.FillColor = color.Transparent, color.Transparent
	r.outer.CornerRadius = fynetheme.Size(fynetheme.SizeNameInputRadius)
	r.inner.CornerRadius = r.outer.CornerRadius
}
