// Package sheets is the page of the project's hardware sheets: one is shown to be
// changed, others are made, read, renamed and removed.
package sheets

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
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
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// Host is what the page needs of the window around it.
type Host interface {
	Session() *session.Session
	Ask() *ask.Asker
	Tell(message.Message)
	// Drafted hears that other changed figures are to be kept than before, or none.
	Drafted()
}

// Disk reads and writes sheets.
type Disk interface {
	ReadFile(path string) ([]byte, error)
	WriteFile(path string, data []byte) error
}

// Page is the page. What is changed on it gets into the project by one edit, when
// the person says so.
type Page struct {
	Object fyne.CanvasObject
	Form   *hardware.Page
	Use    *field.Button // puts the sheet that is shown into the project

	host  Host
	disk  Disk
	name  string                         // of the sheet that is shown, in the project; empty: it has none
	files map[string]*yamlfile.SheetFile // texts that sheets were read from, by name
	fresh map[string]bool                // sheets that came into the project on this page and of which nobody was asked yet
	draft *model.HardwareSheet           // changed figures as the journal keeps them; nil: none

	choice *field.Choice
	carry  *field.Button
	rename *field.Button
	remove *field.Button
	told   *field.Label
}

// New makes the page on a sheet of the project.
func New(host Host, disk Disk, name string) *Page {
	h := &Page{host: host, disk: disk, name: name, files: map[string]*yamlfile.SheetFile{}, fresh: map[string]bool{}, told: field.NewLabel("")}
	h.Form = hardware.New(hardware.Options{Sheet: h.project().Sheet(name), Say: host.Ask().Say, Changed: func(*model.HardwareSheet) { h.update() }})
	h.choice = field.NewChoice(nil, h.index, h.show)
	h.Use = field.NewButton(h.text("Use in the project"), func() { h.apply() })
	h.Use.Importance = widget.HighImportance
	h.carry = field.NewButton(h.text("Carry a copy"), h.copyIn)
	h.rename = field.NewButton(h.text("Rename…"), h.renameIt)
	h.remove = field.NewButton(h.text("Remove"), h.removeIt)
	h.told.Truncation = fyne.TextTruncateEllipsis
	h.Object = container.NewBorder(container.NewPadded(h.tools()), h.told, nil, nil, h.Form.Content())
	h.update()
	return h
}

// Here makes the page on the sheet that is used where the selection is.
func Here(host Host, disk Disk) *Page {
	p, at := host.Session().Project(), host.Session().Here()
	at.Cabinet, at.Bay = max(at.Cabinet, 0), max(at.Bay, 0)
	name := ""
	if b := p.BayAt(model.Place{Cabinet: at.Cabinet, Bay: at.Bay, Front: -1}); b != nil {
		name = b.Hardware
	}
	if name == "" && len(p.Hardware) > 0 {
		name = p.Hardware[0].Name
	}
	return New(host, disk, name)
}

// Again makes the page anew, for another language, with what was changed on it.
func (h *Page) Again() *Page {
	h.Form.Take()
	now := New(h.host, h.disk, h.name)
	now.files, now.fresh, now.draft = h.files, h.fresh, h.draft
	if h.Form.Unsaved() {
		now.Form.Replace(h.Form.Sheet())
	}
	return now
}

func (h *Page) project() *model.Project { return h.host.Session().Project() }

func (h *Page) text(s string, args ...any) string { return h.host.Ask().Text(s, args...) }

// acts are what can be done with a sheet from the menu too.
var acts = []struct {
	name, words string
	do          func(*Page)
	keys        command.Chord
	after       bool
}{
	{"newsheet", "New hardware sheet…", (*Page).create, command.Chord{Key: fyne.KeyH, Mod: command.Ctrl | command.Shift}, true},
	{"readsheet", "Read a hardware sheet…", (*Page).read, command.Chord{}, false},
	{"writesheet", "Write the hardware sheet…", (*Page).write, command.Chord{}, false},
	{"nextgroup", "Next group of figures", func(h *Page) { h.Form.NextGroup() }, command.Chord{Key: fyne.KeyPageDown, Mod: command.Ctrl}, true},
	{"lastgroup", "Group of figures before", func(h *Page) { h.Form.LastGroup() }, command.Chord{Key: fyne.KeyPageUp, Mod: command.Ctrl}, false},
}

// Rows are the commands for hardware. show shows the page on the sheet that is used
// where the selection is; those that act on a sheet go there first. turn shows it too,
// or the drawing again.
func Rows(show func() *Page, turn func()) []command.Command {
	rows := []command.Command{{Name: "sheets", Menu: "Hardware", Words: "Hardware sheets…", Scope: command.Project, Leaves: true,
		On: command.Fronts | command.Bays | command.Cabinets, Bare: "F7", Do: turn}}
	for _, a := range acts {
		rows = append(rows, command.Command{Name: a.name, Menu: "Hardware", Words: a.words, Scope: command.Project, Leaves: true, Key: a.keys.Key, Mod: a.keys.Mod, After: a.after, Do: func() { a.do(show()) }})
	}
	return rows
}

// Own tells whether a command is about the page. Undo and redo are the page's, and
// what is about the drawing has to wait.
func (h *Page) Own(c *command.Command) bool {
	for _, a := range acts {
		if a.name == c.Name {
			a.do(h)
			return true
		}
	}
	switch {
	case c.Name == "undo":
		h.Form.Take()
		h.Form.Undo()
	case c.Name == "redo":
		h.Form.Take()
		h.Form.Redo()
	case c.Scope == command.Drawing:
		h.tell(message.New("“%v” is not possible now.", message.New(c.Words)))
	default:
		return false
	}
	return true
}

// SetUnit sets the project's.
func (h *Page) SetUnit(u length.Unit) { h.do(edit.SetUnit{Unit: u}) }

// tools choose the sheet, and make, copy, rename, remove, read and write one.
func (h *Page) tools() fyne.CanvasObject {
	return field.Flow(fynetheme.Size(fynetheme.SizeNamePadding),
		container.New(field.AtLeast(220), h.choice),
		field.NewButton(h.text("New…"), h.create), field.NewButton(h.text("Copy…"), h.duplicate), h.rename, h.remove, h.carry,
		field.NewButton(h.text("Read a file…"), h.read), field.NewButton(h.text("Write into a file…"), h.write),
	)
}

func (h *Page) uses() []model.HardwareUse { return h.project().Hardware }

// index is which of the project's sheets is shown.
func (h *Page) index() int {
	for i, u := range h.uses() {
		if u.Name == h.name {
			return i
		}
	}
	return -1
}

// update shows what can be done with the sheet as it is.
func (h *Page) update() {
	h.keepDraft()
	var names []string
	for _, u := range h.uses() {
		names = append(names, u.Name)
	}
	h.choice.SetOptions(names)
	h.choice.Update()
	h.Use.Able(h.Form.Unsaved() && len(h.Form.Problems()) == 0)
	i := h.index()
	h.carry.Able(i >= 0 && h.uses()[i].Source != "")
	h.rename.Able(i >= 0)
	h.remove.Able(i >= 0)
	switch {
	case i < 0:
		h.tell(message.New("The project has no hardware sheet yet: make a new one, or read a file."))
	case h.Form.Unsaved() && len(h.Form.Problems()) > 0:
		h.tell(message.New("Changed. The project can use it once the figures go together."))
	case h.Form.Unsaved():
		h.tell(message.New("Changed, and not in the project yet."))
	case h.uses()[i].Source != "":
		h.tell(message.New("From %v. Changed, the project carries its own copy.", h.uses()[i].Source))
	default:
		h.tell(message.New("The project carries its own copy."))
	}
}

func (h *Page) tell(m message.Message) { h.told.SetText(h.host.Ask().Say().Say(m)) }

// apply puts the sheet that is shown into the project, by one step that can be
// undone. It is false where that can't be.
func (h *Page) apply() bool {
	if !h.Form.Take() || len(h.Form.Problems()) > 0 {
		h.update()
		return false
	}
	var e edit.Edit = edit.SetSheet{Name: h.name, Sheet: h.Form.Sheet()}
	if h.index() < 0 { // undone, or never there
		h.name = h.free("main")
		e = edit.UseHardware{Use: model.HardwareUse{Name: h.name, Sheet: h.Form.Sheet()}}
	}
	if !h.do(e) {
		return false
	}
	h.Form.Kept()
	h.update()
	return true
}

// do makes an edit and tells on the page where it can't be made.
func (h *Page) do(e edit.Edit) bool {
	if err := h.host.Session().Do(e); err != nil {
		h.tell(tool.Said(err))
		return false
	}
	h.host.Tell(e.Label())
	return true
}

// copyIn makes the project carry its own copy of the sheet, so that it opens
// wherever it is taken.
func (h *Page) copyIn() {
	i := h.index()
	if i < 0 {
		return
	}
	h.do(edit.SetSheet{Name: h.name, Sheet: h.uses()[i].Sheet})
	h.update()
}

// Leave goes on once nothing on the page can be lost by it, and it is known which
// bays use a new sheet.
func (h *Page) Leave(then func()) {
	h.Form.Take()
	if h.idle() {
		h.askForBays(then)
		return
	}
	h.leaveSheet(then)
}

// leaveSheet goes on once nothing of the sheet that is shown can be lost by it.
func (h *Page) leaveSheet(then func()) {
	h.Form.Take()
	if !h.Form.Unsaved() {
		then()
		return
	}
	question, answers := h.text("The sheet “%v” has changes that are not in the project.", h.name), []string{h.text("Use in the project"), h.text("Give the changes up"), h.text("Cancel")}
	if len(h.Form.Problems()) > 0 {
		question = h.text("The sheet “%v” has changes that are not in the project, and figures that do not go together.", h.name)
		answers = answers[1:]
	}
	h.host.Ask().Choose(ask.Question{Title: h.text("Changed figures"), Text: question, Answers: answers}, func(i int) {
		switch i + 3 - len(answers) {
		case 0:
			if h.apply() {
				then()
			}
		case 1:
			h.Form.Show(h.Form.Begun())
			h.update()
			then()
		}
	})
}

// show shows another sheet of the project.
func (h *Page) show(i int) {
	if i < 0 || i >= len(h.uses()) || i == h.index() {
		return
	}
	to := h.uses()[i].Name
	h.leaveSheet(func() { h.showNamed(to) })
	h.choice.Update()
}

func (h *Page) showNamed(name string) {
	if s := h.project().Sheet(name); s != nil {
		h.name = name
		h.Form.Show(s)
	}
	h.update()
}

// free is a name that no sheet of the project has.
func (h *Page) free(name string) string {
	p := h.project()
	for n, s := 2, name; ; n++ {
		if p.Sheet(s) == nil {
			return s
		}
		s = name + " " + strconv.Itoa(n)
	}
}
