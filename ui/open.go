package ui

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"

	"frontlay/model/message"
)

// mostRecent is how many files the list of recent ones holds.
const mostRecent = 8

// openDialog asks which project to open.
func (w *window) openDialog() {
	w.keepWork(func() { w.ask.File([]string{".yaml", ".yml"}, w.openFile) })
}

// folder is where files are looked for: the project's folder, or the one used last.
func (w *window) folder() string {
	if w.path != "" {
		return filepath.Dir(w.path)
	}
	return w.app.Preferences().String(prefFolder)
}

// openFile opens a project in this window.
func (w *window) openFile(path string) {
	f, err := w.openWork(path)
	if err != nil {
		if !w.askOutside(path, err) {
			w.ask.Complain(err)
		}
		return
	}
	w.show(f, path)
	w.remember(path)
	w.tell(message.New("Opened %v.", filepath.Base(path)))
}

// openDemo opens the demo project, which has no file of its own.
func (w *window) openDemo() {
	w.keepWork(func() {
		f, err := w.options.Files.Demo()
		if err != nil {
			w.ask.Complain(err)
			return
		}
		w.newWork()
		w.show(f, "")
	})
}

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

// remember puts a file at the head of the recent ones.
func (w *window) remember(path string) {
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
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
