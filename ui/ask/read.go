package ask

import (
	"fyne.io/fyne/v2"

	"frontlay/ui/field"
)

// Read shows a scrolled text over the window until it is closed.
func (a *Asker) Read(title string, o fyne.CanvasObject) {
	const width = 580
	o.Resize(fyne.NewSize(width-20, o.MinSize().Height)) // wrapped texts know their height once they have a width
	scroll, whole := field.Scrolled(o)
	scroll.SetMinSize(fyne.NewSize(width, min(o.MinSize().Height+30, 430)))
	a.Notice(title, a.Text("Close"), whole, scroll, nil)
}
