package ui

import (
	"frontlay/model/edit"
	"frontlay/model/length"
)

// overDesk decides what becomes of a command while a page lies over the drawing,
// so that nothing changes unseen. It is true where the command can run; one that
// changes the drawing brings that back first. While no project is open, what is
// about one does nothing, and undo and units are those of the new cabinet.
func (w *window) overDesk(c *command) bool {
	if !w.start.Visible() || w.sheets != nil {
		return true
	}
	if b := w.beginning; b != nil && b.takes(c) {
		return false
	}
	switch c.name {
	case "new", "newwindow", "open", "demo", "quit", "light", "dark", "contrast", "system", "large", "keys", "cautions", "hints":
		return true
	case "save", "saveas", "print", "export", "sheets":
		return w.opened
	}
	if w.opened {
		w.showDesk()
	}
	return w.opened
}

// takes runs a command on the new cabinet, where that is about it.
func (b *beginning) takes(c *command) bool {
	units := map[string]length.Unit{"mm": length.UnitMM, "cm": length.UnitCM, "inch": length.UnitInch, "inchdecimal": length.UnitInchDecimal}
	if u, ok := units[c.name]; ok {
		b.do(edit.SetUnit{Unit: u})
		return true
	}
	switch c.name {
	case "undo":
		b.session.Undo()
	case "redo":
		b.session.Redo()
	case "fit":
		b.screen.Fit()
	case "closer":
		b.screen.Zoom(1.25)
	case "further":
		b.screen.Zoom(0.8)
	case "remove":
		// Drawers are counted in the form.
	default:
		return false
	}
	return true
}
