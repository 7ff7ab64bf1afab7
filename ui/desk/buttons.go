package desk

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/command"
	"frontlay/ui/field"
)

// buttons are the row over the drawing: what the hand does at the left, what is
// looked at in the middle, what leaves the program at the right.
type buttons struct {
	object *fyne.Container
	of     map[*command.Command]*field.Button
}

func newButtons(h Host, t *command.Table, run func(*command.Command)) *buttons {
	b := &buttons{of: map[*command.Command]*field.Button{}}
	var groups [command.Out + 1][]fyne.CanvasObject
	for i := range t.Rows {
		c := &t.Rows[i]
		if c.Button.Words != "" {
			one := field.NewButton(h.Say().Say(message.New(c.Button.Words)), func() { run(c) })
			b.of[c] = one
			groups[c.Button.Group] = append(groups[c.Button.Group], one)
		}
	}
	row := func(parts ...[]fyne.CanvasObject) *fyne.Container {
		return container.NewHBox(slices.Concat(parts...)...)
	}
	bar := func() []fyne.CanvasObject { return []fyne.CanvasObject{widget.NewSeparator()} }
	space := []fyne.CanvasObject{fynelayout.NewSpacer()}
	hand, steps, pictures, sight, out := groups[command.Hand], groups[command.Steps], groups[command.Pictures], groups[command.Sight], groups[command.Out]
	if h.Large() { // one row would be wider than a small screen
		b.object = container.NewPadded(container.NewVBox(row(hand, bar(), steps, space, out), row(pictures, bar(), sight)))
	} else {
		b.object = container.NewPadded(row(hand, bar(), steps, space, pictures, bar(), sight, bar(), out))
	}
	return b
}

// update shows which tool is in the hand, what is looked at, and what can be done.
func (b *buttons) update() {
	for c, one := range b.of {
		i := widget.MediumImportance
		if c.Checked != nil && c.Checked() {
			i = widget.HighImportance
		}
		if one.Importance != i {
			one.Importance = i
			one.Refresh()
		}
		if can := c.Possible(); can == one.Disabled() {
			one.Able(can)
		}
	}
}
