package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/model"
	"frontlay/model/message"
)

func (w *window) hardwareCommands() []command {
	return []command{
		{name: "sheets", menu: "Edit", label: "Hardware sheets…", key: fyne.KeyF7, mod: ctrl, after: true, do: w.showSheets},
	}
}

// showSheets shows the page of hardware sheets on the one that is used where the
// selection is.
func (w *window) showSheets() {
	p := w.session.Project()
	at := w.here()
	at.Cabinet, at.Bay = max(at.Cabinet, 0), max(at.Bay, 0)
	name := ""
	if b := p.BayAt(model.Place{Cabinet: at.Cabinet, Bay: at.Bay, Front: -1}); b != nil {
		name = b.Hardware
	}
	if name == "" && len(p.Hardware) > 0 {
		name = p.Hardware[0].Name
	}
	w.openSheets(name)
}

// lets tells whether a command can run while the page of hardware sheets is
// shown. Undo and redo are the page's; what would leave the page asks first what
// becomes of changes; what is about the drawing has to wait.
func (h *sheetsPage) lets(c *command) bool {
	switch {
	case c.name == "undo":
		h.page.Take()
		h.page.Undo()
	case c.name == "redo":
		h.page.Take()
		h.page.Redo()
	case c.name == "save", c.name == "saveas", c.menu == "Settings", c.menu == "Help":
		return true
	case c.menu == "File":
		h.leave(func() { h.w.run(c) })
	default:
		h.tell(message.New("“%v” is not possible now.", message.New(c.label)))
	}
	return false
}
