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
