package ui

import (
	"strconv"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/ui/ask"
	"frontlay/ui/command"
	"frontlay/ui/field"
	"frontlay/ui/hardware"
	"frontlay/ui/tool"
)

// sheetsPage is the page of the project's hardware sheets over the desk. What is
// changed on it gets into the project by one edit, when the person says so.
type sheetsPage struct {
	w     *window
	name  string // of the sheet that is shown, in the project; empty: it has none
	page  *hardware.Page
	files map[string]*yamlfile.SheetFile // texts that sheets were read from, by name
	draft *model.HardwareSheet           // changed figures as the journal keeps them; nil: none

	choice *field.Choice
	use    *field.Button
	carry  *field.Button
	rename *field.Button
	remove *field.Button
	told   *field.Label
}

// openSheets shows the page on a sheet of the project.
func (w *window) openSheets(name string) {
	h := &sheetsPage{w: w, name: name, files: map[string]*yamlfile.SheetFile{}, told: field.NewLabel("")}
	h.page = hardware.New(hardware.Options{Sheet: w.session.Project().Sheet(name), Say: w.say, Changed: func(*model.HardwareSheet) { h.update() }})
	h.choice = field.NewChoice(nil, h.index, h.show)
	h.use = field.NewButton(w.text("Use in the project"), func() { h.apply() })
	h.use.Importance = widget.HighImportance
	h.carry = field.NewButton(w.text("Carry a copy"), h.copyIn)
	h.rename = field.NewButton(w.text("Rename…"), h.renameIt)
	h.remove = field.NewButton(w.text("Remove"), h.removeIt)
	h.told.Truncation = fyne.TextTruncateEllipsis
	w.showOver(h, container.NewBorder(container.NewPadded(container.NewVBox(h.head(), h.tools())), h.told, nil, nil, h.page.Content()))
	h.update()
}

// showSheets shows the page of hardware sheets on the one that is used where the
// selection is.
func (w *window) showSheets() {
	p := w.session.Project()
	at := w.session.Here()
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

// Own tells whether a command is about the page. Undo and redo are the page's, and
// what is about the drawing has to wait.
func (h *sheetsPage) Own(c *command.Command) bool {
	switch {
	case c.Name == "undo":
		h.page.Take()
		h.page.Undo()
	case c.Name == "redo":
		h.page.Take()
		h.page.Redo()
	case c.Scope == command.Drawing:
		h.tell(message.New("“%v” is not possible now.", message.New(c.Words)))
	default:
		return false
	}
	return true
}

// SetUnit sets the project's.
func (h *sheetsPage) SetUnit(u length.Unit) { h.do(edit.SetUnit{Unit: u}) }

// sheets is the page of hardware sheets; nil while it is not shown.
func (w *window) sheets() *sheetsPage {
	h, _ := w.page.(*sheetsPage)
	return h
}

// head is the title with what leads back.
func (h *sheetsPage) head() fyne.CanvasObject {
	w := h.w
	text := fynecanvas.NewText(w.text("Hardware sheets"), w.theme.Palette(w.app.Settings().ThemeVariant()).Ink)
	text.TextSize, text.TextStyle.Bold = fynetheme.Size(fynetheme.SizeNameHeadingText), true
	back := field.NewButton(w.text("Back to the drawing"), func() { h.Leave(func() {}) })
	return container.NewBorder(nil, nil, text, container.NewHBox(h.use, back))
}

// tools choose the sheet, and make, copy, rename, remove, read and write one.
func (h *sheetsPage) tools() fyne.CanvasObject {
	w := h.w
	return container.NewHBox(
		container.New(field.AtLeast(220), h.choice),
		field.NewButton(w.text("New"), h.create), field.NewButton(w.text("Copy"), h.duplicate), h.rename, h.remove,
		fynelayout.NewSpacer(), h.carry,
		field.NewButton(w.text("Read a file…"), h.read), field.NewButton(w.text("Write a file…"), h.write),
	)
}

func (h *sheetsPage) uses() []model.HardwareUse { return h.w.session.Project().Hardware }

// index is which of the project's sheets is shown.
func (h *sheetsPage) index() int {
	for i, u := range h.uses() {
		if u.Name == h.name {
			return i
		}
	}
	return -1
}

// update shows what can be done with the sheet as it is.
func (h *sheetsPage) update() {
	h.keepDraft()
	var names []string
	for _, u := range h.uses() {
		names = append(names, u.Name)
	}
	h.choice.SetOptions(names)
	h.choice.Update()
	h.use.Able(h.page.Unsaved() && len(h.page.Problems()) == 0)
	i := h.index()
	h.carry.Able(i >= 0 && h.uses()[i].Source != "")
	h.rename.Able(i >= 0)
	h.remove.Able(i >= 0)
	switch {
	case i < 0:
		h.tell(message.New("The project has no hardware sheet yet: make a new one, or read a file."))
	case h.page.Unsaved() && len(h.page.Problems()) > 0:
		h.tell(message.New("Changed. The project can use it once the figures go together."))
	case h.page.Unsaved():
		h.tell(message.New("Changed, and not in the project yet."))
	case h.uses()[i].Source != "":
		h.tell(message.New("From %v. Changed, the project carries its own copy.", h.uses()[i].Source))
	default:
		h.tell(message.New("The project carries its own copy."))
	}
}

func (h *sheetsPage) tell(m message.Message) { h.told.SetText(h.w.say().Say(m)) }

// apply puts the sheet that is shown into the project, by one step that can be
// undone. It is false where that can't be.
func (h *sheetsPage) apply() bool {
	if !h.page.Take() || len(h.page.Problems()) > 0 {
		h.update()
		return false
	}
	var e edit.Edit = edit.SetSheet{Name: h.name, Sheet: h.page.Sheet()}
	if h.index() < 0 { // undone, or never there
		h.name = h.free("main")
		e = edit.UseHardware{Use: model.HardwareUse{Name: h.name, Sheet: h.page.Sheet()}}
	}
	if !h.do(e) {
		return false
	}
	h.page.Kept()
	h.update()
	return true
}

// do makes an edit and tells on the page where it can't be made.
func (h *sheetsPage) do(e edit.Edit) bool {
	if err := h.w.session.Do(e); err != nil {
		h.tell(tool.Said(err))
		return false
	}
	h.w.tell(e.Label())
	return true
}

// copyIn makes the project carry its own copy of the sheet, so that it opens
// wherever it is taken.
func (h *sheetsPage) copyIn() {
	i := h.index()
	if i < 0 {
		return
	}
	h.do(edit.SetSheet{Name: h.name, Sheet: h.uses()[i].Sheet})
	h.update()
}

// Leave shows the drawing again, and goes on, once nothing can be lost by it.
func (h *sheetsPage) Leave(then func()) {
	h.settled(func() {
		h.w.showDesk()
		then()
	})
}

// settled runs something once nothing on the page can be lost by it.
func (h *sheetsPage) settled(then func()) {
	h.page.Take()
	if !h.page.Unsaved() {
		then()
		return
	}
	w := h.w
	question, answers := w.text("The sheet “%v” has changes that are not in the project.", h.name), []string{w.text("Use in the project"), w.text("Give them up"), w.text("Go back")}
	if len(h.page.Problems()) > 0 {
		question = w.text("The sheet “%v” has changes that are not in the project, and figures that do not go together.", h.name)
		answers = answers[1:]
	}
	w.ask.Choose(ask.Question{Title: w.text("Changed figures"), Text: question, Answers: answers}, func(i int) {
		switch i + 3 - len(answers) {
		case 0:
			if h.apply() {
				then()
			}
		case 1:
			h.page.Show(h.page.Begun())
			h.update()
			then()
		}
	})
}

// show shows another sheet of the project.
func (h *sheetsPage) show(i int) {
	if i < 0 || i >= len(h.uses()) || i == h.index() {
		return
	}
	to := h.uses()[i].Name
	h.settled(func() { h.showNamed(to) })
	h.choice.Update()
}

func (h *sheetsPage) showNamed(name string) {
	if s := h.w.session.Project().Sheet(name); s != nil {
		h.name = name
		h.page.Show(s)
	}
	h.update()
}

// free is a name that no sheet of the project has.
func (h *sheetsPage) free(name string) string {
	p := h.w.session.Project()
	for n, s := 2, name; ; n++ {
		if p.Sheet(s) == nil {
			return s
		}
		s = name + " " + strconv.Itoa(n)
	}
}

// again shows the page anew, for another language, with what was changed on it.
func (h *sheetsPage) again() {
	h.page.Take()
	s, changed, files, draft := h.page.Sheet(), h.page.Unsaved(), h.files, h.draft
	h.w.openSheets(h.name)
	now := h.w.sheets()
	now.files, now.draft = files, draft
	if changed {
		now.page.Replace(s)
	}
}
