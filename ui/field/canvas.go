package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// CanvasOf is the canvas that shows an object; nil: none does. Fyne knows that
// from painting alone: not of what was made since the last frame, and no longer
// of what nobody has asked about for a minute. Its windows can be made to look.
func CanvasOf(o fyne.CanvasObject) fyne.Canvas {
	d := fyne.CurrentApp().Driver()
	if c := d.CanvasForObject(o); c != nil {
		return c
	}
	for _, w := range d.AllWindows() {
		if c, ok := w.Canvas().(interface{ EnsureMinSize() bool }); ok {
			c.EnsureMinSize()
		}
	}
	return d.CanvasForObject(o)
}

// Input is Fyne's entry, whose menu opens only where a canvas shows it: Fyne
// 2.7.4 ends the program where none does. Every field to type into embeds it.
type Input struct {
	widget.Entry
	self fyne.Widget // the entry, or what embeds it
}

// ExtendBaseWidget takes what embeds the entry, or the entry itself.
func (i *Input) ExtendBaseWidget(self fyne.Widget) {
	i.self = self
	i.Entry.ExtendBaseWidget(self)
}

// TappedSecondary opens the menu of the clipboard.
func (i *Input) TappedSecondary(e *fyne.PointEvent) {
	if CanvasOf(i.self) != nil {
		i.Entry.TappedSecondary(e)
	}
}
