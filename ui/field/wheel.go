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

// Scrolled hands the wheel on.
func (w *wheel) Scrolled(e *fyne.ScrollEvent) { w.scroll.Scrolled(e) }

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
