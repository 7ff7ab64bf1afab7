// Package help is what the menu for help shows: the keys, hints to begin with, and
// what to mind at the bench.
package help

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"frontlay/layout/list"
	"frontlay/ui/ask"
	"frontlay/ui/command"
	"frontlay/ui/field"
)

// drawingKeys are what the drawing does with keys that are no commands.
var drawingKeys = [][2]string{
	{"Up, Down, Left, Right", "Go to the front above, below, beside"},
	{"Page Up, Page Down", "Go up or down through fronts and the divisions between them"},
	{"Up, Down on a division", "Move the division by one step; with Shift by ten"},
	{"Left, Right on a partition", "Move the partition by one step; with Shift by ten"},
	{"A figure", "Begin to type the height of the selected front"},
	{"Tab in a size", "Take it and go to the next dimension; with Shift the one before"},
	{"Shift while dragging", "Free the division from whole steps and neighbours' lines"},
	{"Ctrl and click", "Add a front to the selection"},
	{"Wheel", "Closer or further away at the pointer"},
	{"Esc", "Give up what is going on"},
	{"Tab, Shift Tab", "Go to the next or the last field"},
	{"F10 or Alt", "Go to the menus; arrow keys and Enter choose"},
	{"Shift+F10 or Menu", "Open the menu of what is selected"},
}

// fieldKeys are what forms and lists know besides.
var fieldKeys = [][2]string{
	{"Enter or Tab", "Take what is typed"},
	{"Enter in a size of a new cabinet", "Take it; once more, begin with the cabinet"},
	{"Up, Down in a size", "One step more or less"},
	{"Esc in a field", "Give back what was; once more, go back to the drawing"},
	{"Page Up, Page Down in a field", "Move the form"},
	{"Enter or Space", "Press a button, tick a box, open a list of choices"},
	{"Up, Down in the findings", "Choose one; Enter goes on to what mends it"},
}

// Keys lists every command with its keys.
func Keys(a *ask.Asker, t *command.Table) {
	var o []fyne.CanvasObject
	add := func(key, what string) {
		k, text := field.NewLabel(key), field.NewLabel(what)
		k.TextStyle.Bold, k.Wrapping, text.Wrapping = true, fyne.TextWrapWord, fyne.TextWrapWord
		o = append(o, container.NewGridWithColumns(2, k, text))
	}
	for _, menu := range command.Menus {
		o = append(o, field.Heading(a.Text(menu)))
		for i := range t.Rows {
			if c := &t.Rows[i]; c.Menu == menu && t.Keys(c) != "" {
				add(t.Keys(c), a.Text(c.Words))
			}
		}
	}
	o = append(o, field.Heading(a.Text("In the drawing")))
	for _, k := range drawingKeys {
		add(a.Text(k[0]), a.Text(k[1]))
	}
	o = append(o, field.Heading(a.Text("In forms and lists")))
	for _, k := range fieldKeys {
		add(a.Text(k[0]), a.Text(k[1]))
	}
	a.Read(a.Text("Keys"), field.Column(o...))
}

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
