package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// walkNamed visits the buttons and fields of what lies over the window, such as
// dialogs and menus, by the text they carry.
func walkNamed(c fyne.Canvas, visit func(string, fyne.CanvasObject)) {
	top := c.Overlays().Top()
	if top == nil {
		return
	}
	var walk func(o fyne.CanvasObject)
	walk = func(o fyne.CanvasObject) {
		if !o.Visible() {
			return
		}
		switch v := o.(type) {
		case *widget.Button:
			visit("over "+v.Text, v)
		case *widget.Entry:
			visit("over entry "+v.PlaceHolder, v)
		case *widget.Check:
			visit("over "+v.Text, v)
		case *widget.PopUp:
			walk(v.Content)
		case *container.Scroll:
			walk(v.Content)
		case *fyne.Container:
			for _, c := range v.Objects {
				walk(c)
			}
		}
	}
	walk(top)
}
