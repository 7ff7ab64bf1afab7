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

// WithLine adds a line around a field for text that is seen while it has the
// focus; the field itself shows a cursor, and keeps its own colours.
func WithLine(r fyne.WidgetRenderer, focused func() bool) fyne.WidgetRenderer {
	return newRing(r, focused, true)
}

type ringed struct {
	fyne.WidgetRenderer
	focused      func() bool
	lineOnly     bool
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
	r.outer.FillColor, r.inner.FillColor = color.Transparent, color.Transparent
	r.outer.CornerRadius = fynetheme.Size(fynetheme.SizeNameInputRadius)
	r.inner.CornerRadius = r.outer.CornerRadius
}
