package ui

import (
	"net/url"
	"path/filepath"
	"sync"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/arrange"
	"frontlay/ui/ask"
	"frontlay/ui/command"
	"frontlay/ui/desk"
	"frontlay/ui/files"
	"frontlay/ui/page/help"
	"frontlay/ui/page/printing"
	"frontlay/ui/page/sheets"
	"frontlay/ui/page/start"
	"frontlay/ui/session"
	"frontlay/ui/tool"
	"frontlay/ui/work"
)

// window is one open project. Its rooms know what they need of it and nothing of
// each other.
type window struct {
	app     fyne.App
	win     fyne.Window
	options Options
	group   *group
	closed  chan struct{} // closed when the window is

	ask     *ask.Asker
	files   *files.Files
	session *session.Session // of the work

	stage    *stage
	desk     *desk.Desk
	table    *command.Table
	arranger *arrange.Arranger
}

// openIn makes a window of a group, on the project that the options name. Where
// nothing is named, or it can't be read, a new project takes its place behind the
// start page.
func openIn(g *group, o Options) *window {
	w := &window{app: g.app, win: g.app.NewWindow(programName), options: o, group: g, closed: make(chan struct{})}
	w.ask = &ask.Asker{Win: w.win, Say: w.Say, Begin: func() string { return w.files.Folder() }, Own: func() string { return w.files.Work.Path() }}
	w.files = files.New(w, o.Keeper, start.Project())
	w.stage = &stage{win: w.win, ask: w.ask}
	g.windows = append(g.windows, w)
	var first work.Outcome
	switch {
	case o.Open != "":
		first = w.files.Work.Open(o.Open)
	case o.Example != "":
		first = w.files.Work.Example(o.Example)
	}
	w.stage.opened, first.Show = first.Show, false
	w.session = w.files.Work.Session()
	w.build()
	w.win.Canvas().SetOnTypedRune(w.stage.typedRune)
	w.win.Canvas().SetOnTypedKey(w.stage.typedKey) // once: a window made anew may have a dialog open that has the keys
	w.watch()
	if w.stage.opened {
		w.stage.showDesk()
	} else {
		w.showStart(nil)
	}
	w.files.Follow(first, nil)
	w.win.SetCloseIntercept(w.quit)
	w.win.SetOnDropped(func(_ fyne.Position, u []fyne.URI) { w.files.Dropped(u) })
	w.win.SetOnClosed(sync.OnceFunc(func() {
		close(w.closed)
		g.left(w)
	}))
	w.win.Resize(startSize(w.app.Preferences()))
	return w
}

// build puts the window together.
func (w *window) build() {
	w.desk = desk.New(w)
	w.desk.Inspector.OnSheet = func(name string) { w.showSheets(sheets.New(w, w.options.Keeper, name)) }
	w.desk.Inspector.OnPropose = func(at model.Place) { showDividing(w, at) }
	w.arranger = arrange.New(w, &w.group.copied)
	w.table = command.New(w.Say, w.rows()...)
	w.desk.Furnish(w.table, w.stage.run)
	w.stage.furnish(w.desk, w.table)
}

// watch follows the session.
func (w *window) watch() {
	s := w.session
	s.Listen(func(c session.Change) {
		if w.session == s {
			w.desk.Changed(c)
			w.Update()
			w.files.Note(c)
		}
	})
	w.Update()
}

// rebuild makes every widget anew, for another language or size of letters. A
// page over the drawing that can't be made anew goes back to the drawing.
func (w *window) rebuild() {
	w.desk.Inspector.Take()
	picture, through, over := w.desk.Screen.Picture(), w.desk.Screen.SeeThrough(), w.stage.page
	w.session.Forget()
	w.build()
	w.desk.Inspector.Begin()
	w.watch()
	w.desk.Screen.ShowPicture(picture)
	w.desk.Screen.SetSeeThrough(through)
	switch p := over.(type) {
	case *sheets.Page:
		w.showSheets(p.Again())
	case *start.Page:
		p.Take()
		w.showStart(p.Session.Committed())
	default:
		w.stage.clear()
	}
	w.Update()
}

// show puts the window on the screen. GLFW 3.3 takes the title that it is made with for the
// class of the window, by which desktops find the program: that is the program's name.
func (w *window) show() {
	w.win.SetTitle(programName)
	w.win.Show()
	w.win.SetTitle(w.title())
}

// Update shows what depends on the session outside of the panels: the title,
// and which commands can be used.
func (w *window) Update() {
	if title := w.title(); w.win.Title() != title {
		w.win.SetTitle(title)
	}
	if w.table.Update() && !w.session.InGesture() {
		w.win.MainMenu().Refresh()
	}
	w.desk.Update(w.files.Work.State())
}

// programName stands in titles, and is the class of windows.
const programName = "frontlay"

// title says what is on the desk, in which file, and whether it is saved.
func (w *window) title() string {
	if !w.stage.opened {
		return programName
	}
	name, state := w.session.Project().Title, w.Say().Say(w.files.Work.State())
	if name == "" {
		name = w.ask.Text("Untitled")
	}
	if path := w.files.Work.Path(); path != "" {
		return name + " – " + filepath.Base(path) + ", " + state + " – " + programName
	}
	return name + " – " + state + " – " + programName
}

// begin is ready for the first window of the program, which also shows what
// earlier runs have left.
func (w *window) begin() {
	w.ready()
	help.Reports(w.ask, w.app.Clipboard(), w.options.Reports, func() { w.files.Follow(w.files.Work.Leftovers(), nil) })
}

// ready looks out for other programs, once the window is there.
func (w *window) ready() {
	w.desk.Inspector.Begin()
	w.files.LookOut(w.closed)
}

// quit closes the window after asking about unsaved work.
func (w *window) quit() {
	w.files.Keep(func() {
		w.keepSize()
		_ = w.files.Work.Close() // nobody is there to read it; a lock that is left is taken over later
		w.leave()
	})
}

// keepSize notes the window's size and that of its panels; what its text looks
// like is kept already.
func (w *window) keepSize() {
	w.desk.KeepShares()
	s, p := w.win.Canvas().Size(), w.app.Preferences()
	p.SetFloat(prefWidth, float64(s.Width))
	p.SetFloat(prefHeight, float64(s.Height))
	p.SetInt(prefUnit, int(w.session.Project().Unit))
}

// leave closes the window. With the last one the program ends by Options.Exit:
// where Fyne 2.7.4 ends its own loop it can send to a channel that it has just
// closed, and what was saved in good order would look like a crash.
func (w *window) leave() {
	if w.options.Exit == nil || len(w.app.Driver().AllWindows()) > 1 {
		w.win.Close()
		return
	}
	w.win.Hide()
	time.AfterFunc(keepSettings, w.options.Exit)
}

// showStart puts the start page over the desk, with the figures of a new cabinet
// that are there already; nil: none are.
func (w *window) showStart(figures *model.Project) {
	p := start.New(w, figures, doors(w.ask, w.files, w.options.Keeper, func() { w.stage.do("open") }))
	w.stage.showOver(p, w.ask.Text("Drawer fronts, planned and drilled right"), p.Object)
	p.Focus()
}

// showSheets shows the page of hardware sheets over the desk.
func (w *window) showSheets(p *sheets.Page) *sheets.Page {
	w.stage.showOver(p, w.ask.Text("Hardware sheets"), p.Object, p.Use)
	return p
}

// turnSheets shows the page of hardware sheets, or the drawing again where that page
// has been left.
func (w *window) turnSheets() {
	if _, there := w.stage.page.(*sheets.Page); there {
		w.stage.showDesk()
		return
	}
	w.showSheets(sheets.Here(w, w.options.Keeper))
}

// showPrinting shows the page for printing over the desk, of which a chapter of the
// manual tells.
func (w *window) showPrinting(chapter reading, page func(printing.Host, printing.System) *printing.Page) {
	p := page(w, w.system())
	w.stage.showOver(chapter, w.ask.Text("Templates, drawings and lists"), p.Object)
	p.Focus()
}

// system is what the computer can do with pages.
func (w *window) system() printing.System {
	return printing.System{Write: w.options.Write, Printer: w.options.Printer, Known: w.options.Known, Date: w.options.Date}
}

// What the rooms of the window ask of it.

// Session is the open project at work.
func (w *window) Session() *session.Session { return w.session }

// Say is the language of the moment.
func (w *window) Say() message.Language {
	say := w.group.speech.language
	say.Unit = w.session.Project().Unit
	return say
}

// Ask asks over the window.
func (w *window) Ask() *ask.Asker { return w.ask }

// FileName is what files of the project are called.
func (w *window) FileName() string { return w.files.Work.Name() }

// OpenURL opens what another program shows.
func (w *window) OpenURL(u *url.URL) error { return w.app.OpenURL(u) }

// Preferences are the settings that are kept.
func (w *window) Preferences() fyne.Preferences { return w.app.Preferences() }

// Key takes keys that the drawing has no use for.
func (w *window) Key(e *fyne.KeyEvent) { w.stage.key(e) }

// Large tells that the text is large.
func (w *window) Large() bool { return w.group.theme.Large }

// Unit is that of the project that was on the desk last.
func (w *window) Unit() length.Unit {
	return length.Unit(w.app.Preferences().IntWithFallback(prefUnit, int(length.UnitMM)))
}

// Begin opens a new project.
func (w *window) Begin(p *model.Project) { w.files.Begin(p) }

// Show shows the project that has taken the place of the one before.
func (w *window) Show() {
	w.session = w.files.Work.Session()
	w.desk.Watch(w.session)
	w.watch()
	w.stage.showDesk()
}

// Settle goes on once nothing that is typed can be lost.
func (w *window) Settle(then func()) { w.stage.settle(then) }

// Busy tells that the hand, a question or changed figures are not to be
// interrupted.
func (w *window) Busy() bool {
	_, sheets := w.stage.page.(*sheets.Page)
	return sheets || w.session.InGesture() || w.win.Canvas().Overlays().Top() != nil
}

// Draft is the project with what is changed on a page and not in it yet; nil:
// nothing is.
func (w *window) Draft() *model.Project {
	if p, ok := w.stage.page.(*sheets.Page); ok {
		return p.Draft(w.session.Committed())
	}
	return nil
}

// Drafted notes a draft in the journal.
func (w *window) Drafted() { w.files.Journal() }

// Renew makes the menu of a command anew.
func (w *window) Renew(command string) {
	w.table.Renew(command)
	w.win.MainMenu().Refresh()
}

// Do makes an edit, selects what it has made, and tells where it can't be made.
func (w *window) Do(e edit.Edit, made ...drawing.Subject) bool {
	if err := w.session.Do(e); err != nil {
		w.Refuse(tool.Said(err))
		return false
	}
	if len(made) > 0 {
		w.session.Select(made...)
	}
	w.Tell(e.Label())
	return true
}

// Tell writes what was done to the status line.
func (w *window) Tell(m message.Message) { w.desk.Tell(m) }

// Refuse writes there why something can't be done.
func (w *window) Refuse(m message.Message) { w.desk.Refuse(m) }

// CopiedNow lets every window paste what was copied.
func (w *window) CopiedNow() {
	for _, one := range w.group.windows {
		one.Update()
	}
}

// Menu shows the commands for what is selected.
func (w *window) Menu(at fyne.Position) {
	things := map[drawing.SubjectKind]command.Things{
		drawing.FrontThing: command.Fronts, drawing.DivisionThing: command.Divisions, drawing.PartitionThing: command.Bays,
		drawing.BayThing: command.Bays, drawing.CabinetThing: command.Cabinets,
	}
	on := command.Nothing
	if sel := w.session.Selection(); len(sel) > 0 {
		on = things[sel[0].Kind]
	}
	widget.ShowPopUpMenuAtPosition(w.table.Context(on, w.stage.run), w.win.Canvas(), at)
}
