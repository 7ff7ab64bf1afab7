package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/command"
	"frontlay/ui/look"
	"frontlay/ui/page/help"
	"frontlay/ui/page/printing"
	"frontlay/ui/page/rules"
	"frontlay/ui/page/steps"
)

func (w *window) fileRows() []command.Command {
	return []command.Command{
		{Name: "new", Menu: "File", Words: "New…", Scope: command.Anywhere, Leaves: true, Key: fyne.KeyN, Mod: command.Ctrl, Do: w.showStart},
		{Name: "newwindow", Menu: "File", Words: "New window", Scope: command.Anywhere, Key: fyne.KeyN, Mod: command.Ctrl | command.Shift, Do: w.newWindow},
		{Name: "open", Menu: "File", Words: "Open…", Scope: command.Anywhere, Leaves: true, Key: fyne.KeyO, Mod: command.Ctrl, Do: w.openDialog},
		{Name: "demo", Menu: "File", Words: "Open the demo", Scope: command.Anywhere, Leaves: true, Do: w.openDemo},
		{Name: "recent", Menu: "File", Words: "Open again", Scope: command.Anywhere, Sub: w.recentItems},
		{Name: "save", Menu: "File", Words: "Save", Scope: command.Project, Button: command.Button{Words: "Save", Group: command.Out}, Key: fyne.KeyS, Mod: command.Ctrl, After: true, Do: w.save},
		{Name: "saveas", Menu: "File", Words: "Save as…", Scope: command.Project, Key: fyne.KeyS, Mod: command.Ctrl | command.Shift, Do: func() { w.follow(w.work.SaveAs(), nil) }},
		{Name: "print", Menu: "File", Words: "Templates and drawings as PDF…", Scope: command.Project, Leaves: true, Button: command.Button{Words: "Templates…", Group: command.Out}, Key: fyne.KeyP, Mod: command.Ctrl, After: true, Do: func() { w.showPrinting(printing.New) }},
		{Name: "export", Menu: "File", Words: "Files for machines and other programs…", Scope: command.Project, Leaves: true, Do: w.exportFiles,
			Can: func() bool { return w.options.Export != nil }},
		{Name: "quit", Menu: "File", Words: "Close", Quits: true, Also: command.Chord{Key: fyne.KeyW, Mod: command.Ctrl}, Scope: command.Anywhere, Leaves: true, Key: fyne.KeyQ, Mod: command.Ctrl, After: true, Do: w.quit},
	}
}

func (w *window) editRows() []command.Command {
	return []command.Command{
		{Name: "undo", Menu: "Edit", Words: "Undo", Button: command.Button{Words: "Undo", Group: command.Steps}, Key: fyne.KeyZ, Mod: command.Ctrl, Fields: command.DirtyFields, Do: w.undo,
			Can: func() bool { _, ok := w.session.CanUndo(); return ok },
			Named: func() message.Message {
				if l, ok := w.session.CanUndo(); ok {
					return message.New("Undo: %v", l)
				}
				return message.New("Undo")
			}},
		{Name: "redo", Menu: "Edit", Words: "Redo", Button: command.Button{Words: "Redo", Group: command.Steps}, Key: fyne.KeyY, Mod: command.Ctrl, Also: command.Chord{Key: fyne.KeyZ, Mod: command.Ctrl | command.Shift}, Fields: command.DirtyFields, Do: w.redo,
			Can: func() bool { _, ok := w.session.CanRedo(); return ok },
			Named: func() message.Message {
				if l, ok := w.session.CanRedo(); ok {
					return message.New("Redo: %v", l)
				}
				return message.New("Redo")
			}},
		{Name: "history", Menu: "Edit", Words: "Steps…", Do: func() { steps.Show(w) }},
	}
}

func (w *window) sheetRows() []command.Command {
	return []command.Command{
		{Name: "sheets", Menu: "Edit", Words: "Hardware sheets…", Scope: command.Project, Leaves: true, On: command.Bays | command.Cabinets, Key: fyne.KeyF7, Mod: command.Ctrl, After: true, Do: w.showSheets},
	}
}

func (w *window) helpRows() []command.Command {
	return []command.Command{
		{Name: "keys", Menu: "Help", Words: "Keys", Scope: command.Anywhere, Bare: "F1", Do: func() { help.Keys(w.ask, w.table) }},
		{Name: "hints", Menu: "Help", Words: "Three hints", Scope: command.Anywhere, Do: func() { help.Hints(w.ask) }},
		{Name: "cautions", Menu: "Help", Words: "Before you drill", Scope: command.Anywhere, Do: func() { help.Cautions(w.ask) }},
	}
}

func (w *window) settingRows() []command.Command {
	mode := func(m look.Mode) func() {
		return func() {
			w.theme.Mode = m
			w.app.Preferences().SetInt(prefLook, int(m))
			w.app.Settings().SetTheme(w.theme)
			for _, one := range w.group.windows {
				one.restyle()
			}
		}
	}
	isMode := func(m look.Mode) func() bool { return func() bool { return w.theme.Mode == m } }
	isUnit := func(u length.Unit) func() bool { return func() bool { return w.session.Project().Unit == u } }
	unit := func(u length.Unit) func() { return func() { w.setUnit(u) } }
	return []command.Command{
		{Name: "mm", Menu: "Settings", Words: "Millimetres", Scope: command.Anywhere, Do: unit(length.UnitMM), Checked: isUnit(length.UnitMM)},
		{Name: "cm", Menu: "Settings", Words: "Centimetres", Scope: command.Anywhere, Do: unit(length.UnitCM), Checked: isUnit(length.UnitCM)},
		{Name: "inch", Menu: "Settings", Words: "Inches, fractions", Scope: command.Anywhere, Do: unit(length.UnitInch), Checked: isUnit(length.UnitInch)},
		{Name: "inchdecimal", Menu: "Settings", Words: "Inches, decimal", Scope: command.Anywhere, Do: unit(length.UnitInchDecimal), Checked: isUnit(length.UnitInchDecimal)},
		{Name: "system", Menu: "Settings", Words: "Colours of the desktop", Scope: command.Anywhere, After: true, Do: mode(look.System), Checked: isMode(look.System)},
		{Name: "light", Menu: "Settings", Words: "Light", Scope: command.Anywhere, Do: mode(look.LightMode), Checked: isMode(look.LightMode)},
		{Name: "dark", Menu: "Settings", Words: "Dark", Scope: command.Anywhere, Do: mode(look.DarkMode), Checked: isMode(look.DarkMode)},
		{Name: "contrast", Menu: "Settings", Words: "High contrast", Scope: command.Anywhere, Do: mode(look.ContrastMode), Checked: isMode(look.ContrastMode)},
		{Name: "darkcontrast", Menu: "Settings", Words: "High contrast, dark", Scope: command.Anywhere, Do: mode(look.DarkContrastMode), Checked: isMode(look.DarkContrastMode)},
		{Name: "large", Menu: "Settings", Words: "Large text", Scope: command.Anywhere, After: true, Checked: func() bool { return w.theme.Large }, Do: func() {
			for _, one := range w.group.windows {
				one.desk.KeepShares()
			}
			w.theme.Large = !w.theme.Large
			w.app.Preferences().SetBool(prefLarge, w.theme.Large)
			w.app.Settings().SetTheme(w.theme)
			for _, one := range w.group.windows {
				one.rebuild()
			}
		}},
		{Name: "language", Menu: "Settings", Words: "Language", Scope: command.Anywhere, Sub: w.languageItems},
	}
}

func (w *window) templateRows() []command.Command {
	return []command.Command{
		{Name: "template", Menu: "View", Words: "Template of the front", On: command.Fronts, Key: fyne.KeyF8, Mod: command.Ctrl, Do: func() { w.showPrinting(printing.Templates) },
			Can: func() bool { return len(printing.Drilled(w.session)) > 0 }},
	}
}

func (w *window) ruleRows() []command.Command {
	return []command.Command{
		{Name: "rules", Menu: "Check", Words: "Rules of the check…", Do: func() { rules.Show(w) }},
	}
}

func (w *window) undo() {
	if l, ok := w.session.Undo(); ok {
		w.tell(message.New("Undone: %v", l))
	}
}

func (w *window) redo() {
	if l, ok := w.session.Redo(); ok {
		w.tell(message.New("Done again: %v", l))
	}
}

// restyle shows everything in another look.
func (w *window) restyle() {
	w.Update()
	w.desk.Restyle()
}

// setUnit sets the unit of what is shown.
func (w *window) setUnit(u length.Unit) {
	if p, ok := w.page.(interface{ SetUnit(length.Unit) }); ok {
		p.SetUnit(u)
		return
	}
	if w.page != nil {
		w.showDesk()
	}
	w.Do(edit.SetUnit{Unit: u})
}

// showPrinting shows the page for printing over the desk.
func (w *window) showPrinting(page func(printing.Host, printing.System) *printing.Page) {
	w.showOver(reading{}, w.overPage("Templates, drawings and lists", page(w, w.system()).Object))
}

// system is what the computer can do with pages.
func (w *window) system() printing.System {
	return printing.System{Write: w.options.Write, Printer: w.options.Printer, Known: w.options.Known, Date: w.options.Date}
}
