package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Heading is the title of a group of fields.
func Heading(text string) fyne.CanvasObject {
	l := widget.NewLabel(text)
	l.TextStyle.Bold = true
	return l
}
