package ui

import (
	"fmt"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/field"
)

// walkNamed visits the buttons and fields in an object, such as a dialog, by the
// text they carry.
func walkNamed(top fyne.CanvasObject, prefix string, visit func(string, fyne.CanvasObject)) {
	rows := 0
	var walk func(o fyne.CanvasObject)
	walk = func(o fyne.CanvasObject) {
		if !o.Visible() {
			return
		}
		switch v := o.(type) {
		case interface{ Named() string }: // a field.Button, or what is made of one
			visit(prefix+v.Named(), o)
		case *widget.Button:
			visit(prefix+v.Text, v)
		case *field.Text:
			visit(prefix+"entry "+v.PlaceHolder, v)
		case *widget.Entry:
			visit(prefix+"entry "+v.PlaceHolder, v)
		case *field.Check:
			visit(prefix+v.Text, v)
		case *field.Entry:
			rows++
			visit(fmt.Sprintf("%sfield %d", prefix, rows), v)
		case *container.Split:
			walk(v.Leading)
			walk(v.Trailing)
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
