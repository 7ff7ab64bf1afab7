package ui

import (
	"path/filepath"
	"strings"
	"time"

	"frontlay/model/message"
	"frontlay/ui/ask"
)

// save writes the project to its file, or asks for one. then, where given, runs
// after it was saved.
func (w *window) save(then func()) {
	if w.path == "" {
		w.saveAs(then)
		return
	}
	w.saveTo(w.path, then)
}

// saveAs asks for a file and writes the project to it.
func (w *window) saveAs(then func()) {
	w.ask.Path(w.text("Save as"), w.fileName(), ".yaml", func(path string) { w.saveTo(path, then) })
}

// fileName is a file's name made from the title, without signs that file
// systems do not like.
func (w *window) fileName() string {
	if w.path != "" {
		return strings.TrimSuffix(filepath.Base(w.path), filepath.Ext(w.path))
	}
	name := strings.Map(func(r rune) rune {
		switch {
		case strings.ContainsRune(`/\:*?"<>|`, r), r < ' ':
			return '-'
		case r == ' ':
			return '-'
		}
		return r
	}, strings.ToLower(strings.TrimSpace(w.session.Project().Title)))
	if name == "" || strings.HasPrefix(name, ".") {
		return "project"
	}
	return name
}

// saveTo writes the project to a path and lets the person choose where
// something stands in the way.
func (w *window) saveTo(path string, then func()) { w.finishSave(path, w.write(path), then) }

// finishSave goes on from a save that ended with err.
func (w *window) finishSave(path string, err error, then func()) {
	if err != nil {
		if !w.obstacle(err, then) {
			w.ask.Complain(err)
		}
		return
	}
	w.path = path
	w.session.MarkSaved()
	w.remember(path)
	w.tell(message.New("Saved as %v.", filepath.Base(path)))
	if then != nil {
		then()
	}
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
	if !w.session.Unsaved() {
		then()
		return
	}
	w.ask.Choose(ask.Question{
		Title: w.text("Unsaved changes"), Text: w.text("“%v” has changes that are not saved.", w.session.Project().Title),
		Answers: []string{w.text("Save"), w.text("Don't save"), w.text("Go back")},
	}, func(i int) {
		switch i {
		case 0:
			w.save(then)
		case 1:
			then()
		}
	})
}

// quit closes the window after asking about unsaved work.
func (w *window) quit() {
	w.keepWork(func() {
		w.keepSize()
		w.setWork(nil)
		w.leave()
	})
}

// keepSettings is how long Fyne may take to write settings that were changed
// last; it does so a tenth of a second later.
const keepSettings = 400 * time.Millisecond

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
