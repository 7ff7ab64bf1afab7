package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/model"
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
// becomes of changes.
func (h *sheetsPage) lets(c *command) bool {
	switch c.name {
	case "undo":
		h.page.Take()
		h.page.Undo()
		return false
	case "redo":
		h.page.Take()
		h.page.Redo()
		return false
	case "save", "saveas", "keys", "cautions", "system", "light", "dark", "contrast", "large":
		return true
	}
	h.leave(func() { h.w.run(c) })
	return false
}
