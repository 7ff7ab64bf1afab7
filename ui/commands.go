package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/model/message"
	"frontlay/ui/command"
	"frontlay/ui/field"
)

// page is what lies over the desk.
type page interface {
	// Own runs a command by what is on the page, or tells why that can't be; false:
	// it is not about that.
	Own(c *command.Command) bool
	// Leave goes on once nothing on the page can be lost by it.
	Leave(then func())
}

// reading is a page that knows no commands, and on which nothing is changed.
type reading struct{}

func (reading) Own(*command.Command) bool { return false }

func (reading) Leave(then func()) { then() }

// do runs a command by name, if it makes sense now.
func (w *window) do(name string) {
	if c := w.table.Command(name); c != nil {
		w.run(c)
	}
}

// run does what a command says, if it makes sense now. What is being typed is taken
// first. While a page lies over the drawing nothing changes unseen: a command that
// is about the drawing brings that back. While no project is open, what is about
// one does nothing.
func (w *window) run(c *command.Command) {
	if w.field(c) || w.win.Canvas().Overlays().Top() != nil {
		return // a question on top: nothing changes behind it
	}
	if w.page == nil {
		w.perform(c)
		return
	}
	switch {
	case w.page.Own(c):
	case c.Scope != command.Anywhere && !w.opened:
	case c.Leaves:
		w.page.Leave(func() { w.perform(c) })
	case c.Scope == command.Drawing:
		w.page.Leave(func() {
			w.showDesk()
			w.perform(c)
		})
	default:
		w.perform(c)
	}
}

func (w *window) perform(c *command.Command) {
	w.desk.Inspector.Take()
	if !c.Possible() {
		w.refuse(message.New("“%v” is not possible now.", message.New(c.Words)))
		return
	}
	c.Do()
}

// field hands a command on to the field that has the focus, where that knows it
// too: a menu gets its keys before a field does.
func (w *window) field(c *command.Command) bool {
	focused := w.win.Canvas().Focused()
	to, ok := focused.(fyne.Shortcutable)
	if c.Fields == command.NoField || !ok || focused == fyne.Focusable(w.desk.Screen) {
		return false
	}
	if e, ok := to.(*field.Entry); ok && c.Fields == command.DirtyFields && !e.Dirty() {
		return false
	}
	to.TypedShortcut(c.Shortcut())
	return true
}
