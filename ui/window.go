package ui

import (
	"sync"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/findings"
	"frontlay/ui/inspector"
	"frontlay/ui/look"
	"frontlay/ui/screen"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// window is one open project.
type window struct {
	app     fyne.App
	win     fyne.Window
	options Options
	theme   *look.Theme

	file     *yamlfile.File
	path     string // empty: never saved
	session  *session.Session
	language language
	group    *group
	shelf    *shelf        // the group's
	closed   chan struct{} // closed when the window is

	screen    *screen.Screen
	inspector *inspector.Panel
	findings  *findings.Panel
	strip     *strip
	status    *statusLine
	pointer   *field.Label
	ask       *ask.Asker
	under     drawing.Subject // what the pointer is over
	commands  []command
	menus     []*fyne.MenuItem // of the commands, by index
	desk      *fyne.Container  // the drawing with its panels
	down      *container.Split // the drawing and the findings below it
	across    *container.Split // both and the inspector
	start     *fyne.Container  // the start page
	beginning *beginning
	figures   *model.Project // of the new cabinet, while its page is made anew
	opened    bool           // a project is on the desk
	sheets    *sheetsPage    // nil while it is not shown

	work         Work // nil: the Files have no Keeper
	toldOfChange bool // that another program changed the file
	started      bool // the window is there to show questions
	pending      []func()
	recentMenu   *fyne.MenuItem
}

// open makes the first window, on the project that the options name.
func open(a fyne.App, th *look.Theme, o Options) *window { return openIn(&group{}, a, th, o) }

// openIn makes a window of a group.
func openIn(g *group, a fyne.App, th *look.Theme, o Options) *window {
	w := &window{app: a, win: a.NewWindow("frontlay"), options: o, theme: th, language: startLanguage(a), group: g, shelf: &g.shelf, closed: make(chan struct{})}
	w.ask = &ask.Asker{Win: w.win, Say: w.say, Begin: w.folder, Own: func() string { return w.path }}
	g.windows = append(g.windows, w)
	f, err := w.first()
	w.file = f
	w.session = session.New(f.Project, layout.Solve)
	w.build()
	w.win.Canvas().SetOnTypedKey(w.typedKey) // once: a window made anew may have a dialog open that has the keys
	w.watch()
	if w.opened {
		w.showDesk()
	} else {
		w.showStart()
	}
	if err != nil {
		w.ask.Complain(err)
	}
	w.win.SetCloseIntercept(w.quit)
	w.win.SetOnDropped(func(_ fyne.Position, u []fyne.URI) { w.dropped(u) })
	w.win.SetOnClosed(sync.OnceFunc(func() {
		close(w.closed)
		g.left(w)
	}))
	w.win.Resize(w.startSize())
	return w
}

// first reads the project to begin with. Where none is named or it can't be
// read, a new one takes its place behind the start page.
func (w *window) first() (*yamlfile.File, error) {
	var f *yamlfile.File
	var err error
	switch {
	case w.options.Open != "":
		f, err = w.openWork(w.options.Open)
		if err == nil {
			w.path = w.options.Open
		}
	case w.options.Demo:
		f, err = w.options.Files.Demo()
		w.newWork()
	default:
		w.newWork()
		return yamlfile.New(newProject(nil), check.Limits()), nil
	}
	if err != nil {
		return yamlfile.New(newProject(nil), check.Limits()), err
	}
	w.opened = true
	return f, nil
}

// say gives the language of the moment.
func (w *window) say() message.Language {
	return message.Language{Unit: w.session.Project().Unit, Comma: w.language.comma, Catalogue: w.language.catalogue}
}

func (w *window) text(s string, args ...any) string { return w.say().Say(message.New(s, args...)) }

// build puts the window together.
func (w *window) build() {
	w.status, w.pointer = newStatusLine(), field.NewLabel("")
	w.screen = screen.New(w.session, w.say)
	w.screen.SetRulers(w.app.Preferences().Bool(prefRulers))
	w.screen.SetSeeThrough(w.app.Preferences().Bool(prefThrough))
	w.screen.OnTell = w.refuse // a drawing tells only what can't be done
	w.screen.OnMenu = w.contextMenu
	w.screen.OnHover = w.hover
	w.screen.OnKey = w.windowKey
	w.inspector = inspector.New(w.session, w.say, w.refuse)
	w.findings = findings.New(w.session, w.say, w.tell)
	w.findings.OnRefuse = w.refuse
	w.findings.OnShow = func(check.Finding) { w.screen.Refresh() }
	w.commands = w.table()
	w.strip = newStrip(w)
	bottom := container.NewBorder(nil, nil, nil, w.pointer, w.status.label)
	w.down = container.NewVSplit(w.screen, w.findings.Object)
	w.across = container.NewHSplit(w.down, w.inspector.Object)
	w.down.Offset, w.across.Offset = w.panelShares()
	w.desk = container.NewBorder(w.strip.object, bottom, nil, nil, w.across)
	w.start = container.NewStack()
	w.win.SetContent(container.NewStack(w.desk, w.start))
	w.win.SetMainMenu(w.mainMenu())
	w.otherKeys()
}

// watch follows the session.
func (w *window) watch() {
	s := w.session
	s.Listen(func(c session.Change) {
		if w.session == s {
			w.tellChange(c)
			w.tellUnder()
			w.update()
			w.note(c)
		}
	})
	w.update()
}

// update shows what depends on the session outside of the panels: the title,
// and which commands can be used.
func (w *window) update() {
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
	w.updateMenus()
	w.strip.update()
}

// hover writes what lies under the pointer.
func (w *window) hover(t drawing.Subject) {
	w.under = t
	w.tellUnder()
	w.tellExplanation(w.explain(t))
}

// tellUnder names what lies under the pointer, as it is now.
func (w *window) tellUnder() {
	if text := w.say().Say(w.describe(w.under)); text != w.pointer.Text {
		w.pointer.SetText(text)
	}
}

// explain tells how the figure under the pointer came about; in a see-through
// drawing, over a front, its cover.
func (w *window) explain(t drawing.Subject) message.Message {
	pl := w.session.Result().Plan
	f := session.FrontOf(pl, t.Place)
	if f == nil {
		return message.Message{}
	}
	switch {
	case t.Kind == drawing.FrontHeight:
		if s := pl.HeightOf(f); len(s.Terms) > 0 {
			return s.Say()
		}
	case t.Kind == drawing.HoleThing && f.Fitted && t.Index >= 0 && t.Index < len(f.Holes):
		h := &f.Holes[t.Index]
		return message.New("%v;  %v", pl.EdgeDistanceOf(f, h.Side).Say(), pl.HoleHeightOf(f, h).Say())
	case t.Kind == drawing.FrontThing && f.Fitted && w.screen.SeeThrough():
		return pl.CoverOf(f).Say()
	}
	return message.Message{}
}

// describe names a thing with its size.
func (w *window) describe(t drawing.Subject) message.Message {
	pl := w.session.Result().Plan
	switch t.Kind {
	case drawing.FrontThing, drawing.HoleThing, drawing.RunnerThing, drawing.DrawerThing:
		if f := session.FrontOf(pl, t.Place); f != nil {
			if !f.Named() {
				return message.New("Front %v: %v × %v", f.Number, f.Face.Width(), f.Face.Height())
			}
			return message.New("Front %v, %v: %v × %v", f.Number, f.Name, f.Face.Width(), f.Face.Height())
		}
	case drawing.DivisionThing:
		return message.New("Division: drag it, Shift frees it")
	case drawing.PartitionThing:
		return message.New("Partition: drag it, Shift frees it")
	case drawing.FrontHeight, drawing.CabinetWidth, drawing.CabinetHeight, drawing.BayWidth:
		return message.New("Click to type this size")
	case drawing.CabinetThing, drawing.BayThing:
		if c := session.CabinetOf(pl, t.Place); c != nil {
			return message.New("%v: %v × %v", c.Name, c.Outline.Width(), c.Outline.Height())
		}
	}
	return message.Message{}
}

// typedKey takes keys that no widget wants.
func (w *window) typedKey(e *fyne.KeyEvent) {
	if w.start.Visible() {
		switch {
		case e.Name == fyne.KeyF1:
			w.do("keys")
		case e.Name == fyne.KeyF10:
			w.openMenus()
		case e.Name == fyne.KeyEscape && w.sheets != nil:
			w.sheets.leave(nil)
		case e.Name == fyne.KeyEscape && w.opened:
			w.showDesk()
		}
		return
	}
	w.screen.TypedKey(e)
}

// windowKey takes keys that the drawing has no use for.
func (w *window) windowKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyDelete, fyne.KeyBackspace:
		w.do("remove")
	case fyne.KeyF1:
		w.do("keys")
	case fyne.KeyF10:
		if w.shifted() {
			w.screen.TypedKey(&fyne.KeyEvent{Name: desktop.KeyMenu})
		} else {
			w.openMenus()
		}
	}
}

// shifted tells that Shift is held.
func (w *window) shifted() bool {
	if w.screen.Held != nil {
		return w.screen.Held()&shift != 0
	}
	d, ok := w.app.Driver().(desktop.Driver)
	return ok && d.CurrentKeyModifiers()&shift != 0
}

// openMenus goes to the row of menus, as letting go of Alt does in Fyne. The
// canvases of the desktop can do that, but no interface says so.
func (w *window) openMenus() {
	if c, ok := w.win.Canvas().(interface{ ToggleMenu() }); ok {
		c.ToggleMenu()
	}
}

// show puts another project into the window.
func (w *window) show(f *yamlfile.File, path string) {
	w.file, w.path = f, path
	w.session = session.New(f.Project, layout.Solve)
	w.tell(message.Message{})
	w.under = drawing.Subject{}
	w.screen.Watch(w.session)
	w.inspector.Watch(w.session)
	w.findings.Watch(w.session)
	w.watch()
	w.showDesk()
}

// take hands the tool to the screen.
func (w *window) take(t tool.Tool, hint message.Message) {
	if _, idle := t.(tool.Idle); !idle && w.screen.Picture() != screen.Elevation {
		w.screen.ShowPicture(screen.Elevation)
	}
	w.screen.Take(t)
	w.tell(hint)
	w.strip.update()
	w.win.Canvas().Focus(w.screen)
}

// here is the place that commands are about.
func (w *window) here() model.Place { return w.session.Here() }
