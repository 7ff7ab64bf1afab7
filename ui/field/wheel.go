package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// Scrolling makes a column of fields scroll under the wheel wherever the pointer
// is: by themselves Fyne's entries keep the wheel to themselves.
func Scrolling(s *container.Scroll) fyne.CanvasObject {
	w := &wheel{scroll: s}
	w.ExtendBaseWidget(w)
	return container.NewStack(s, w)
}

// wheel lies over a scrolled column, takes the wheel, and lets everything else
// through.
type wheel struct {
	widget.BaseWidget
	scroll *container.Scroll
}

// Scrolled hands the wheel on: to the field with the focus where the pointer is over
// that, else to the column.
func (w *wheel) Scrolled(e *fyne.ScrollEvent) {
	if c := CanvasOf(w); c != nil && e.Scrolled.DY != 0 {
		if one, ok := c.Focused().(stepped); ok && contains(one, e.AbsolutePosition) && one.Wheel(e.Scrolled.DY > 0) {
			return
		}
	}
	w.scroll.Scrolled(e)
}

// stepped is a field that the wheel can step.
type stepped interface {
	fyne.CanvasObject
	Wheel(up bool) bool
}

// contains tells that a place of a canvas lies on an object.
func contains(o fyne.CanvasObject, at fyne.Position) bool {
	p := at.Subtract(fyne.CurrentApp().Driver().AbsolutePositionForObject(o))
	return p.X >= 0 && p.Y >= 0 && p.X < o.Size().Width && p.Y < o.Size().Height
}

// CreateRenderer makes a renderer that shows nothing.
func (w *wheel) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewWithoutLayout())
}

// Scrolled puts a column of fields into a scroll that the wheel moves wherever
// the pointer is, with room beside the fields for the scroll bar.
func Scrolled(column fyne.CanvasObject) (*container.Scroll, fyne.CanvasObject) {
	s := container.NewVScroll(container.NewPadded(BesideBar(column)))
	return s, Scrolling(s)
}

// BesideBar leaves room for the scroll bar at the right of an object.
func BesideBar(o fyne.CanvasObject) fyne.CanvasObject {
	bar := container.NewGridWrap(fyne.NewSize(8, 1), Spacer(1))
	return container.NewBorder(nil, nil, nil, bar, o)
}
