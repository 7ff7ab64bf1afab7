// Package files opens, saves and keeps what a window works on: it asks what the
// work wants to know, tells what came of it, knows the recent files, and looks out
// for other programs.
package files

import (
	"path/filepath"
	"strings"
	"time"

	"fyne.io/fyne/v2"

	"frontlay/assets"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/model/pack"
	"frontlay/ui/ask"
	"frontlay/ui/command"
	"frontlay/ui/session"
	"frontlay/ui/work"
)

const (
	// lookEvery is how often a window looks whether another program changed its
	// file.
	lookEvery = 3 * time.Second
	// mostRecent is how many files the list of recent ones holds.
	mostRecent = 8
)

// Names of the settings that are kept.
const (
	prefRecent = "recent files"
	prefFolder = "folder"
)

// Host is what the files need of the window around them.
type Host interface {
	Ask() *ask.Asker
	Preferences() fyne.Preferences
	Tell(message.Message)
	Refuse(message.Message)
	// Settle takes what is being typed, and goes on once nothing on a page over the
	// drawing can be lost.
	Settle(then func())
	// Show shows the session of the work, which has taken the place of another.
	Show()
	// Renew makes the menu of a command anew.
	Renew(command string)
	// Busy tells that the hand or a question is not to be interrupted.
	Busy() bool
	// Draft is the project with what is typed and not in it yet; nil: nothing is.
	Draft() *model.Project
}

// Files are those of one window.
type Files struct {
	Work *work.Work

	host Host
}

// New begins with a project that nobody would miss.
func New(h Host, k *work.Keeper, p *model.Project) *Files {
	return &Files{Work: k.Begin(p), host: h}
}

// Rows are the commands for what is open.
func (f *Files) Rows() []command.Command {
	return []command.Command{
		{Name: "open", Menu: "File", Words: "Open a project…", Scope: command.Anywhere, Leaves: true, Key: fyne.KeyO, Mod: command.Ctrl, Do: f.askOpen},
		{Name: "example", Menu: "File", Words: "Look at an example", Scope: command.Anywhere, Sub: f.exampleItems},
		{Name: "recent", Menu: "File", Words: "Open a recent project", Scope: command.Anywhere, Sub: f.recentItems},
		{Name: "save", Menu: "File", Words: "Save", Scope: command.Project, Button: command.Button{Icon: "save", Group: command.File}, Key: fyne.KeyS, Mod: command.Ctrl, After: true, Do: f.Save},
		{Name: "saveas", Menu: "File", Words: "Save as…", Scope: command.Project, Key: fyne.KeyS, Mod: command.Ctrl | command.Shift, Do: func() { f.Follow(f.Work.SaveAs(), nil) }},
	}
}

// Follow shows what came of a step of the work and asks what it asks. Once all is
// done it goes on with then, where that is given.
func (f *Files) Follow(o work.Outcome, then func()) {
	if o.Show {
		f.host.Show()
	}
	if o.File != "" {
		f.remember(o.File)
	}
	if !o.Told.Empty() {
		f.host.Tell(o.Told)
	}
	a := f.host.Ask()
	next := func() {
		switch {
		case o.Ask != nil:
			q := ask.Question{Title: a.Say().Say(o.Ask.Title), Text: a.Say().Say(o.Ask.Text)}
			for _, answer := range o.Ask.Answers {
				q.Answers = append(q.Answers, a.Say().Say(answer.Text))
			}
			a.Choose(q, func(i int) { f.Follow(o.Ask.Choose(i), then) })
		case o.Path != nil:
			a.Path(a.Say().Say(o.Path.Title), o.Path.Name, ".yaml", func(path string) { f.Follow(o.Path.Then(path), then) })
		case o.Done && then != nil:
			then()
		}
	}
	if o.Err != nil {
		a.ComplainThen(o.Err, next)
		return
	}
	next()
}

// Keep asks about unsaved work before something would lose it, then goes on unless
// the person would rather not.
func (f *Files) Keep(then func()) {
	f.host.Settle(func() { f.Follow(f.Work.Leave(), then) })
}

// Save writes the project to its file, or asks for one.
func (f *Files) Save() { f.Follow(f.Work.Save(), nil) }

// Begin opens a new project.
func (f *Files) Begin(p *model.Project) { f.Keep(func() { f.Follow(f.Work.New(p), nil) }) }

// Open opens a project, once nothing is lost by it.
func (f *Files) Open(path string) {
	f.Keep(func() { f.Follow(f.Work.Open(path), nil) })
}

// askOpen asks which project to open.
func (f *Files) askOpen() {
	f.Keep(func() {
		f.host.Ask().File([]string{".yaml", ".yml", pack.Ext}, func(path string) { f.Follow(f.Work.Open(path), nil) })
	})
}

// Dropped opens the first project among files that were dropped on the window.
func (f *Files) Dropped(u []fyne.URI) {
	for _, one := range u {
		if ext := strings.ToLower(one.Extension()); ext == ".yaml" || ext == ".yml" || pack.Is(one.Path()) {
			f.Open(one.Path())
			return
		}
	}
	f.host.Refuse(message.New("Drop a project (.yaml) or a packed job (.zip) here to open it."))
}

// Folder is where files are looked for: the project's folder, or the one used last.
func (f *Files) Folder() string {
	if path := f.Work.Path(); path != "" {
		return filepath.Dir(path)
	}
	return f.host.Preferences().String(prefFolder)
}

// remember puts a file at the head of the recent ones.
func (f *Files) remember(path string) {
	kept := []string{path}
	for _, p := range f.Recent() {
		if p != path && len(kept) < mostRecent {
			kept = append(kept, p)
		}
	}
	f.host.Preferences().SetStringList(prefRecent, kept)
	f.host.Preferences().SetString(prefFolder, filepath.Dir(path))
	f.host.Renew("recent")
}

// Recent are the paths of the recent files, the last one first.
func (f *Files) Recent() []string { return f.host.Preferences().StringList(prefRecent) }

// Example opens a project that ships.
func (f *Files) Example(name string) { f.Keep(func() { f.Follow(f.Work.Example(name), nil) }) }

func (f *Files) exampleItems() *fyne.Menu {
	m := fyne.NewMenu("")
	for _, name := range assets.Examples() {
		if e, err := f.Work.Keeper().Example(name); err == nil {
			m.Items = append(m.Items, fyne.NewMenuItem(e.Project.Title, func() { f.Example(name) }))
		}
	}
	return m
}

func (f *Files) recentItems() *fyne.Menu {
	m := fyne.NewMenu("")
	for _, p := range f.Recent() {
		m.Items = append(m.Items, fyne.NewMenuItem(filepath.Base(p)+"  –  "+filepath.Dir(p), func() { f.Open(p) }))
	}
	if len(m.Items) == 0 {
		none := fyne.NewMenuItem(f.host.Ask().Text("Nothing yet"), nil)
		none.Disabled = true
		m.Items = append(m.Items, none)
	}
	return m
}

// LookOut asks every few seconds, in the background, whether another program
// changed the file, until the window is closed.
func (f *Files) LookOut(closed <-chan struct{}) {
	go func() {
		tick := time.NewTicker(lookEvery)
		defer tick.Stop()
		for {
			select {
			case <-closed:
				return
			case <-tick.C:
			}
			fyne.Do(func() {
				if !f.host.Busy() {
					f.Follow(f.Work.Look(), nil)
				}
			})
		}
	}()
}

// Note hands what is not saved to the journal, where a change of the session is
// about that. A save clears the journal, and leaves what is typed and not in the
// project yet.
func (f *Files) Note(c session.Change) {
	if c&session.Document != 0 && !f.Work.Session().InGesture() || c&session.Saved != 0 && f.host.Draft() != nil {
		f.Journal()
	}
}

// Journal hands what is there to the journal, and empties that where everything is
// saved again: it would be offered at the next start for nothing.
func (f *Files) Journal() {
	s := f.Work.Session()
	p := f.host.Draft()
	if p == nil && s.Unsaved() {
		p = s.Committed()
	}
	if p != nil {
		f.Work.Note(p)
	} else if err := f.Work.Forget(); err != nil {
		f.host.Ask().Complain(err)
	}
}
