package ui

import (
	"net/url"
	"sync"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/arrange"
	"frontlay/ui/ask"
	"frontlay/ui/command"
	"frontlay/ui/desk"
	"frontlay/ui/look"
	"frontlay/ui/page/start"
	"frontlay/ui/session"
	"frontlay/ui/tool"
	"frontlay/ui/work"
)

// window is one open project.
type window struct {
	app     fyne.App
	win     fyne.Window
	options Options
	theme   *look.Theme
	ask     *ask.Asker

	work    *work.Work
	session *session.Session // of the work
	speech  speech
	group   *group
	closed  chan struct{} // closed when the window is

	desk     *desk.Desk
	table    *command.Table
	arranger *arrange.Arranger
	front    *fyne.Container // what lies over the desk
	page     page            // that, nil where nothing does
	opened   bool            // a project is on the desk
}

// open makes the first window, on the project that the options name.
func open(a fyne.App, th *look.Theme, o Options) *window { return openIn(&group{}, a, th, o) }

// openIn makes a window of a group.
func openIn(g *group, a fyne.App, th *look.Theme, o Options) *window {
	w := &window{app: a, win: a.NewWindow("frontlay"), options: o, theme: th, speech: firstSpeech(a), group: g, closed: make(chan struct{})}
	w.ask = &ask.Asker{Win: w.win, Say: w.say, Begin: w.folder, Own: func() string { return w.work.Path() }}
	g.windows = append(g.windows, w)
	first := w.first()
	w.session = w.work.Session()
	w.build()
	w.win.Canvas().SetOnTypedKey(w.typedKey) // once: a window made anew may have a dialog open that has the keys
	w.watch()
	if w.opened {
		w.showDesk()
	} else {
		w.showStart()
	}
	w.follow(first, nil)
	w.win.SetCloseIntercept(w.quit)
	w.win.SetOnDropped(func(_ fyne.Position, u []fyne.URI) { w.dropped(u) })
	w.win.SetOnClosed(sync.OnceFunc(func() {
		close(w.closed)
		g.left(w)
	}))
	w.win.Resize(w.startSize())
	return w
}

// first opens what the window begins with. Where nothing is named, or it can't be
// read, a new project takes its place behind the start page. What the outcome asks
// or tells is left for the window to show.
func (w *window) first() (o work.Outcome) {
	w.work = w.options.Keeper.Begin(start.Project())
	switch {
	case w.options.Open != "":
		o = w.work.Open(w.options.Open)
	case w.options.Demo:
		o = w.work.Demo()
	}
	w.opened, o.Show = o.Show, false
	return o
}

// say gives the language of the moment.
func (w *window) say() message.Language {
	say := w.speech.language
	say.Unit = w.session.Project().Unit
	return say
}

func (w *window) text(s string, args ...any) string { return w.say().Say(message.New(s, args...)) }

// build puts the window together.
func (w *window) build() {
	w.desk = desk.New(w)
	w.arranger = arrange.New(w, &w.group.copied)
	w.table = command.New(w.say, w.fileRows(), w.editRows(), w.arranger.EditRows(), w.sheetRows(), w.arranger.StackRows(),
		w.desk.DrawRows(), w.arranger.CabinetRows(), w.desk.PictureRows(), w.templateRows(), w.desk.SightRows(),
		w.desk.CheckRows(), w.ruleRows(), w.settingRows(), w.helpRows())
	w.desk.Furnish(w.table, w.run)
	w.front = container.NewStack()
	w.win.SetContent(container.NewStack(w.desk.Object, w.front))
	w.win.SetMainMenu(w.table.MainMenu(w.run))
	w.table.AddOthers(w.win.Canvas(), w.run)
}

// watch follows the session.
func (w *window) watch() {
	s := w.session
	s.Listen(func(c session.Change) {
		if w.session == s {
			w.desk.Changed(c)
			w.Update()
			w.note(c)
		}
	})
	w.Update()
}

// Update shows what depends on the session outside of the panels: the title,
// and which commands can be used.
func (w *window) Update() {
	name := w.session.Project().Title
	if name == "" {
		name = w.text("Untitled")
	}
	if w.session.Unsaved() {
		name = "* " + name
	}
	if title := name + " – frontlay"; w.win.Title() != title {
		w.win.SetTitle(title)
	}
	if w.table.Update() && !w.session.InGesture() {
		w.win.MainMenu().Refresh()
	}
	w.desk.Update()
}

// typedKey takes keys that no widget wants.
func (w *window) typedKey(e *fyne.KeyEvent) {
	switch {
	case w.page == nil:
		w.desk.Screen.TypedKey(e)
	case e.Name == fyne.KeyF1, e.Name == fyne.KeyF10:
		w.Key(e)
	case e.Name == fyne.KeyEscape && w.opened:
		w.page.Leave(w.showDesk)
	}
}

// Key takes keys that the drawing has no use for.
func (w *window) Key(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyDelete, fyne.KeyBackspace:
		w.do("remove")
	case fyne.KeyF1:
		w.do("keys")
	case fyne.KeyF10:
		if w.page == nil && w.shifted() {
			w.desk.Screen.TypedKey(&fyne.KeyEvent{Name: desktop.KeyMenu})
		} else {
			w.openMenus()
		}
	}
}

// shifted tells that Shift is held.
func (w *window) shifted() bool {
	if w.desk.Screen.Held != nil {
		return w.desk.Screen.Held()&command.Shift != 0
	}
	d, ok := w.app.Driver().(desktop.Driver)
	return ok && d.CurrentKeyModifiers()&command.Shift != 0
}

// openMenus goes to the row of menus, as letting go of Alt does in Fyne. The
// canvases of the desktop can do that, but no interface says so.
func (w *window) openMenus() {
	if c, ok := w.win.Canvas().(interface{ ToggleMenu() }); ok {
		c.ToggleMenu()
	}
}

// show shows the project that has taken the place of the one before.
func (w *window) show() {
	w.session = w.work.Session()
	w.desk.Watch(w.session)
	w.watch()
	w.showDesk()
}

// What the rooms of the window ask of it.

// Session is the open project at work.
func (w *window) Session() *session.Session { return w.session }

// Say is the language of the moment.
func (w *window) Say() message.Language { return w.say() }

// Ask asks over the window.
func (w *window) Ask() *ask.Asker { return w.ask }

// FileName is what files of the project are called.
func (w *window) FileName() string { return w.work.Name() }

// OpenURL opens what another program shows.
func (w *window) OpenURL(u *url.URL) error { return w.app.OpenURL(u) }

// Preferences are the settings that are kept.
func (w *window) Preferences() fyne.Preferences { return w.app.Preferences() }

// Large tells that the text is large.
func (w *window) Large() bool { return w.theme.Large }

// Do makes an edit, selects what it has made, and tells where it can't be made.
func (w *window) Do(e edit.Edit, made ...drawing.Subject) bool {
	if err := w.session.Do(e); err != nil {
		w.refuse(tool.Said(err))
		return false
	}
	if len(made) > 0 {
		w.session.Select(made...)
	}
	w.tell(e.Label())
	return true
}

// Tell writes what was done to the status line.
func (w *window) Tell(m message.Message) { w.tell(m) }

// Refuse writes there why something can't be done.
func (w *window) Refuse(m message.Message) { w.refuse(m) }

func (w *window) tell(m message.Message)   { w.desk.Tell(m) }
func (w *window) refuse(m message.Message) { w.desk.Refuse(m) }

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
	widget.ShowPopUpMenuAtPosition(w.table.Context(on, w.run), w.win.Canvas(), at)
}
