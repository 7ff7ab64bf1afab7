package ui

import (
	"path/filepath"
	"strings"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"frontlay/model/message"
	"frontlay/ui/ask"
	"frontlay/ui/field"
	"frontlay/ui/session"
	"frontlay/ui/work"
)

const (
	// lookEvery is how often a window looks whether another program changed its
	// file.
	lookEvery = 3 * time.Second
	// mostRecent is how many files the list of recent ones holds.
	mostRecent = 8
	// keepSettings is how long Fyne may take to write settings that were changed
	// last; it does so a tenth of a second later.
	keepSettings = 400 * time.Millisecond
)

// follow shows what came of a step of the work and asks what it asks. Once all is
// done it goes on with then, where that is given.
func (w *window) follow(o work.Outcome, then func()) {
	if o.Show {
		w.show()
	}
	if o.File != "" {
		w.remember(o.File)
	}
	if !o.Told.Empty() {
		w.tell(o.Told)
	}
	next := func() {
		switch {
		case o.Ask != nil:
			q := ask.Question{Title: w.say().Say(o.Ask.Title), Text: w.say().Say(o.Ask.Text)}
			for _, a := range o.Ask.Answers {
				q.Answers = append(q.Answers, w.say().Say(a.Text))
			}
			w.ask.Choose(q, func(i int) { w.follow(o.Ask.Choose(i), then) })
		case o.Path != nil:
			w.ask.Path(w.say().Say(o.Path.Title), o.Path.Name, ".yaml", func(path string) { w.follow(o.Path.Then(path), then) })
		case o.Done && then != nil:
			then()
		}
	}
	if o.Err != nil {
		w.ask.ComplainThen(o.Err, next)
		return
	}
	next()
}

// keepWork asks about unsaved work before something would lose it, then goes on
// unless the person would rather not.
func (w *window) keepWork(then func()) {
	if w.page != nil {
		w.page.Leave(func() { w.keepChanges(then) })
		return
	}
	w.keepChanges(then)
}

func (w *window) keepChanges(then func()) {
	w.desk.Inspector.Take()
	w.follow(w.work.Leave(), then)
}

// save writes the project to its file, or asks for one.
func (w *window) save() { w.follow(w.work.Save(), nil) }

// openDialog asks which project to open.
func (w *window) openDialog() {
	w.keepWork(func() { w.ask.File([]string{".yaml", ".yml"}, w.openFile) })
}

// openFile opens a project in this window.
func (w *window) openFile(path string) { w.follow(w.work.Open(path), nil) }

// openDemo opens the demo project, which has no file of its own.
func (w *window) openDemo() { w.keepWork(func() { w.follow(w.work.Demo(), nil) }) }

// dropped opens the first project among files that were dropped on the window.
func (w *window) dropped(u []fyne.URI) {
	for _, one := range u {
		if ext := strings.ToLower(one.Extension()); ext == ".yaml" || ext == ".yml" {
			w.keepWork(func() { w.openFile(one.Path()) })
			return
		}
	}
	w.refuse(message.New("Drop a project file (.yaml) here to open it."))
}

// folder is where files are looked for: the project's folder, or the one used last.
func (w *window) folder() string {
	if path := w.work.Path(); path != "" {
		return filepath.Dir(path)
	}
	return w.app.Preferences().String(prefFolder)
}

// remember puts a file at the head of the recent ones.
func (w *window) remember(path string) {
	kept := []string{path}
	for _, p := range w.recent() {
		if p != path && len(kept) < mostRecent {
			kept = append(kept, p)
		}
	}
	w.app.Preferences().SetStringList(prefRecent, kept)
	w.app.Preferences().SetString(prefFolder, filepath.Dir(path))
	w.table.Renew("recent")
	w.win.MainMenu().Refresh()
}

func (w *window) recent() []string { return w.app.Preferences().StringList(prefRecent) }

func (w *window) recentItems() *fyne.Menu {
	m := fyne.NewMenu("")
	for _, p := range w.recent() {
		m.Items = append(m.Items, fyne.NewMenuItem(filepath.Base(p)+"  –  "+filepath.Dir(p), func() {
			w.keepWork(func() { w.openFile(p) })
		}))
	}
	if len(m.Items) == 0 {
		none := fyne.NewMenuItem(w.text("nothing yet"), nil)
		none.Disabled = true
		m.Items = append(m.Items, none)
	}
	return m
}

// begin is ready for the first window of the program, which also shows what
// earlier runs have left.
func (w *window) begin() {
	w.ready()
	w.showReports(w.options.Reports, func() { w.follow(w.work.Leftovers(), nil) })
}

// ready looks out for other programs, once the window is there.
func (w *window) ready() {
	w.desk.Inspector.Begin()
	go w.lookOut()
}

// lookOut asks every few seconds whether another program changed the file.
func (w *window) lookOut() {
	tick := time.NewTicker(lookEvery)
	defer tick.Stop()
	for {
		select {
		case <-w.closed:
			return
		case <-tick.C:
		}
		fyne.Do(func() {
			if w.sheets() == nil && !w.session.InGesture() && w.win.Canvas().Overlays().Top() == nil {
				w.follow(w.work.Look(), nil)
			}
		})
	}
}

// note hands what is not saved to the journal. A save clears that, and leaves the
// figures of a hardware sheet that are not in the project yet.
func (w *window) note(c session.Change) {
	if c&session.Document != 0 && !w.session.InGesture() || c&session.Saved != 0 && w.sheets().drafted() {
		w.journal()
	}
}

// journal hands what is there to the journal, and empties that where everything is
// saved again: it would be offered at the next start for nothing.
func (w *window) journal() {
	if w.sheets().drafted() || w.session.Unsaved() {
		w.work.Note(w.sheets().withDraft(w.session.Committed()))
	} else if err := w.work.Forget(); err != nil {
		w.ask.Complain(err)
	}
}

// showReports shows what earlier runs left that ended in an unforeseen way, to
// be copied and sent by who wants to: each once, one after the other, and then
// goes on.
func (w *window) showReports(reports []Report, then func()) {
	if len(reports) == 0 {
		then()
		return
	}
	r := reports[0]
	text := field.NewText("")
	text.MultiLine = true
	text.SetText(r.Text)
	text.Wrapping = fyne.TextWrapOff
	text.SetMinRowsVisible(14)
	intro := field.NewLabel(w.text("frontlay ended in an unforeseen way the last time. This report names no file and no person; send it to who keeps the program, if you like."))
	intro.Wrapping = fyne.TextWrapWord
	copyIt := field.NewButton(w.text("Copy the report"), func() { w.app.Clipboard().SetContent(r.Text) })
	box := container.NewBorder(intro, container.NewHBox(copyIt), nil, nil, text)
	d := w.ask.Notice(w.text("The last run"), w.text("Close"), box, nil, func() {
		if err := r.Discard(); err != nil {
			w.ask.Complain(err)
		}
		w.showReports(reports[1:], then)
	})
	d.Resize(fyne.NewSize(720, 460))
}

// quit closes the window after asking about unsaved work.
func (w *window) quit() {
	w.keepWork(func() {
		w.keepSize()
		_ = w.work.Close() // nobody is there to read it; a lock that is left is taken over later
		w.leave()
	})
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
