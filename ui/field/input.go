package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"
)

// Input is the box that is typed into, which every field embeds: Fyne's entry with
// a line around it while it has the keys. Its menu opens only where a canvas shows
// it; Fyne 2.7.4 ends the program where none does.
//
// Where it holds a figure the first press after it got the keys selects all of it, and so does a double
// click: what is typed then replaces the figure, as half a figure changed by
// mistake is a wrong one. A later press puts the cursor where it is made, a drag
// selects a part.
type Input struct {
	widget.Entry
	Ring
	// Figure tells that it holds a figure.
	Figure bool

	self    fyne.Widget // what embeds it
	first   bool        // nothing was pressed since it got the keys
	had     string      // what it held then
	pressed *desktop.MouseEvent
}

// ExtendBaseWidget takes what embeds the input.
func (i *Input) ExtendBaseWidget(self fyne.Widget) {
	i.self = self
	i.Entry.ExtendBaseWidget(self)
}

// FocusGained scrolls to where the box can be seen; the next press is the first.
func (i *Input) FocusGained() {
	i.Gain(i.self, &i.Entry)
	i.first, i.had = true, i.Text
}

// FocusLost takes the line around the box away.
func (i *Input) FocusLost() { i.Lose(i.self, &i.Entry) }

// mark shows with a line in the colour of errors that what the box holds is at fault.
func (i *Input) mark(bad bool) {
	if i.bad != bad {
		i.bad = bad
		i.self.Refresh()
	}
}

// CreateRenderer draws the box with a line around it while it has the focus.
func (i *Input) CreateRenderer() fyne.WidgetRenderer { return i.Line(i.Entry.CreateRenderer()) }

// SelectAll selects all of it.
func (i *Input) SelectAll() { i.TypedShortcut(&fyne.ShortcutSelectAll{}) }

// MouseDown puts the cursor, or selects all of a figure.
func (i *Input) MouseDown(m *desktop.MouseEvent) {
	i.Entry.MouseDown(m) // brings the keys here
	i.pressed = nil
	if m.Button != desktop.MouseButtonPrimary {
		return
	}
	if i.Figure && i.first && i.Text == i.had {
		i.pressed = m
		i.SelectAll()
	}
	i.first = false
}

// Dragged selects a part, from where the button was pressed.
func (i *Input) Dragged(d *fyne.DragEvent) {
	if m := i.pressed; m != nil {
		i.pressed = nil
		i.Entry.MouseDown(m)
	}
	i.Entry.Dragged(d)
}

// TappedSecondary opens the menu of the clipboard.
func (i *Input) TappedSecondary(e *fyne.PointEvent) {
	if CanvasOf(i.self) != nil {
		i.Entry.TappedSecondary(e)
	}
}

// DoubleTapped selects a word, or all of a figure: its point would part it.
func (i *Input) DoubleTapped(e *fyne.PointEvent) {
	i.Entry.DoubleTapped(e)
	if i.Figure {
		i.SelectAll()
	}
}
