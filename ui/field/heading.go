package field

import (
	"fyne.io/fyne/v2"
)

// Heading is the title of a group of fields.
func Heading(text string) fyne.CanvasObject {
	l := NewLabel(text)
	l.TextStyle.Bold = true
	return l
}
