// Package help is what the menu for help shows: the manual, what to
// mind at the bench, and what the program is.
package help

import (
	"fyne.io/fyne/v2"

	"frontlay/layout/list"
	"frontlay/ui/ask"
	"frontlay/ui/field"
)

// Cautions tells what to mind at the bench: the cautions that are printed, so that
// paper and window can not differ.
func Cautions(a *ask.Asker) {
	var o []fyne.CanvasObject
	for _, c := range list.Cautions(a.Say()).Rows {
		l := field.NewLabel("• " + c.Cells[1])
		l.Wrapping = fyne.TextWrapWord
		o = append(o, l)
	}
	a.Read(a.Text("Before you drill"), field.Column(o...))
}
