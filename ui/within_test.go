package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
)

// within gives the objects that one is made of.
func within(o fyne.CanvasObject) []fyne.CanvasObject {
	switch v := o.(type) {
	case *fyne.Container:
		return v.Objects
	case fyne.Widget:
		return test.WidgetRenderer(v).Objects()
	}
	return nil
}
