package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/model/message"
	"frontlay/ui/field"
)

// command is one thing a person can do: the menus, the strip, the keys page and
// the shortcuts come from the table of them.
type command struct {
	name   string // for code and tests
	menu   string // heading of the menu that it stands in
	label  string // English; the key of its translation
	key    fyne.KeyName
	mod    fyne.KeyModifier
	bare   string // a key without a modifier, that the drawing or window takes
	fields bool   // fields know it too
	after  bool   // a separator stands before it
	// can tells whether it makes sense now; nil: always.
	can func() bool
	// checked tells whether it is chosen, where it is one of several; nil: it is not.
	checked func() bool
	// named gives the label of the moment where it changes; nil: label.
	named func() message.Message
	do    func()
}

const (
	ctrl  = fyne.KeyModifierShortcutDefault
	shift = fyne.KeyModifierShift
)

// Headings of the menus, in their order.
var menuNames = []string{"File", "Edit", "Stack", "Draw", "View", "Check", "Settings", "Help"}

// table lists every command.
func (w *window) table() []command {
	var all []command
	all = append(all, w.fileCommands()...)
	all = append(all, w.editCommands()...)
	all = append(all, w.hardwareCommands()...)
	all = append(all, w.stackCommands()...)
	all = append(all, w.drawCommands()...)
	all = append(all, w.viewCommands()...)
	return append(all, w.helpCommands()...)
}

// do runs a command by name, if it makes sense now. What is being typed is
// taken first.
func (w *window) do(name string) {
	for i := range w.commands {
		if w.commands[i].name == name {
			w.run(&w.commands[i])
			return
		}
	}
}

func (w *window) run(c *command) {
	if w.field(c) || w.win.Canvas().Overlays().Top() != nil {
		return // a question on top: nothing changes behind it
	}
	if w.sheets != nil && !w.sheets.lets(c) {
		return
	}
	if !w.overDesk(c) {
		return
	}
	w.inspector.Take()
	if c.can != nil && !c.can() {
		w.refuse(message.New("“%v” is not possible now.", message.New(c.label)))
		return
	}
	c.do()
}

// field hands a command on to the field that has the focus, where that knows it
// too: a menu gets its keys before a field does.
func (w *window) field(c *command) bool {
	focused := w.win.Canvas().Focused()
	to, ok := focused.(fyne.Shortcutable)
	if !c.fields || !ok || focused == fyne.Focusable(w.screen) {
		return false
	}
	if e, ok := to.(*field.Entry); ok && !e.Dirty() && (c.name == "undo" || c.name == "redo") {
		return false
	}
	to.TypedShortcut(shortcutOf(c))
	return true
}

// can tells whether a command makes sense now.
func (w *window) can(name string) bool {
	for i := range w.commands {
		if c := &w.commands[i]; c.name == name {
			return c.can == nil || c.can()
		}
	}
	return false
}
