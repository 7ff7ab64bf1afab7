package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/command"
	"frontlay/ui/page/dividing"
	"frontlay/ui/page/exporting"
	"frontlay/ui/page/help"
	"frontlay/ui/page/printing"
	"frontlay/ui/page/rules"
	"frontlay/ui/page/sheets"
	"frontlay/ui/page/steps"
	"frontlay/ui/screen"
)

// rows are all commands, in the order of their menus. A room that has commands of
// its own gives them.
func (w *window) rows() [][]command.Command {
	manual := func(chapter string) { help.Manual(w.ask, w.group.speech.code, chapter, w.OpenURL) }
	return [][]command.Command{
		{
			{Name: "new", Menu: "File", Words: "New project…", Scope: command.Anywhere, Leaves: true, Key: fyne.KeyN, Mod: command.Ctrl, Do: func() { w.showStart(nil) }},
			{Name: "newwindow", Menu: "File", Words: "New window", Scope: command.Anywhere, Key: fyne.KeyN, Mod: command.Ctrl | command.Shift, Do: func() { w.group.another(w.options) }},
		},
		w.files.Rows(),
		{
			{Name: "print", Menu: "File", Words: "Templates and drawings as PDF…", Scope: command.Project, Leaves: true, Button: command.Button{Icon: "templates", Words: "Templates", Group: command.Out}, Key: fyne.KeyP, Mod: command.Ctrl, After: true, Do: func() { w.showPrinting("pages", printing.New) }},
			{Name: "export", Menu: "File", Words: "Export DXF, SVG and lists…", Scope: command.Project, Leaves: true, Key: fyne.KeyE, Mod: command.Ctrl | command.Shift,
				Do: func() {
					w.stage.showOver(reading("files-and-safety"), w.ask.Text("Files for machines and other programs"), exporting.New(w, w.options.Export, w.options.Date).Object)
				},
				Can: func() bool { return w.options.Export != nil }},
			{Name: "pack", Menu: "File", Words: "Pack…", Scope: command.Project, Leaves: true, Do: func() { packJob(w) }, Can: func() bool { return w.options.Pack != nil }},
			{Name: "quit", Menu: "File", Words: "Close", Quits: true, Also: command.Chord{Key: fyne.KeyW, Mod: command.Ctrl}, Scope: command.Anywhere, Leaves: true, Key: fyne.KeyQ, Mod: command.Ctrl, After: true, Do: w.quit},
		},
		steps.Rows(w),
		{{Name: "findfigure", Menu: "Edit", Words: "Find a figure", Bare: "/", Do: w.desk.Inspector.Find}},
		w.arranger.EditRows(),
		w.arranger.StackRows(),
		{{Name: "propose", Menu: "Stack", Words: "Propose a division…", On: command.Fronts | command.Divisions | command.Bays, Key: fyne.KeyT, Mod: command.Ctrl | command.Shift, After: true, Leaves: true,
			Do: func() { showDividing(w, w.session.Here()) }}},
		w.desk.DrawRows(),
		w.arranger.CabinetRows(),
		sheets.Rows(func() *sheets.Page { return w.showSheets(sheets.Here(w, w.options.Keeper)) }, w.turnSheets),
		w.desk.PictureRows(),
		{{Name: "template", Menu: "View", Words: "Template of the front", On: command.Fronts, Bare: "F8", Do: func() { w.showPrinting("templates-and-jigs", printing.Templates) },
			Can: func() bool { return len(printing.Drilled(w.session)) > 0 }}},
		w.desk.SightRows(),
		w.desk.CheckRows(),
		{{Name: "rules", Menu: "Check", Words: "Rules of the check…", Do: func() { rules.Show(w) }}},
		w.desk.StudyRows(),
		w.unitRows(),
		w.group.lookRows(w.ask),
		{
			{Name: "manual", Menu: "Help", Words: "Manual", Scope: command.Anywhere, Bare: "F1", Do: func() { manual(chapterOf(w.stage.page, w.desk.Screen.Picture())) }},
			{Name: "keys", Menu: "Help", Words: "Keys", Scope: command.Anywhere, Do: func() { manual("reference-keys") }},
		},
		w.desk.HintRows(),
		{
			{Name: "cautions", Menu: "Help", Words: "Before you drill", Scope: command.Anywhere, Do: func() { help.Cautions(w.ask) }},
			{Name: "about", Menu: "Help", Words: "About frontlay", Scope: command.Anywhere, After: true, Do: func() {
				help.About(w.ask, help.Facts{Version: w.options.Version, Logs: w.options.Keeper.Home, OpenURL: w.OpenURL})
			}},
		},
	}
}

// chapterOf is the chapter of the manual that tells of what is in front: a page, or else
// a picture of the desk.
func chapterOf(page any, picture screen.Picture) string {
	switch p := page.(type) {
	case reading:
		return string(p)
	case *sheets.Page:
		return "hardware-sheet"
	}
	switch picture {
	case screen.Tipping, screen.Opening, screen.Year, screen.Spread:
		return "studies"
	case screen.RearFace:
		return "templates-and-jigs"
	}
	return "first-job"
}

// showDividing shows the page that proposes divisions of the bay at a place over the
// desk; the first bay of a cabinet or of the run where no bay is named.
func showDividing(w *window, at model.Place) {
	at.Cabinet, at.Bay = max(at.Cabinet, 0), max(at.Bay, 0)
	if w.session.Project().BayAt(at) == nil {
		return
	}
	p := dividing.New(w, at, w.stage.showDesk)
	w.stage.showOver(reading("studies"), w.ask.Text("Propose a division"), p.Object)
	p.Focus()
}

// unitRows are the commands for the unit of what is shown.
func (w *window) unitRows() []command.Command {
	unit := func(name, words string, u length.Unit) command.Command {
		return command.Command{Name: name, Menu: "Settings", Words: words, Scope: command.Anywhere,
			Do: func() { w.setUnit(u) }, Checked: func() bool { return w.session.Project().Unit == u }}
	}
	return []command.Command{
		unit("mm", "Millimetres", length.UnitMM),
		unit("cm", "Centimetres", length.UnitCM),
		unit("inch", "Inches, fractions", length.UnitInch),
		unit("inchdecimal", "Inches, decimal", length.UnitInchDecimal),
	}
}

// setUnit sets the unit of what is shown.
func (w *window) setUnit(u length.Unit) {
	if p, ok := w.stage.page.(interface{ SetUnit(length.Unit) }); ok {
		p.SetUnit(u)
		return
	}
	if w.stage.page != nil {
		w.stage.showDesk()
	}
	w.Do(edit.SetUnit{Unit: u})
}
