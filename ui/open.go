package ui

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"frontlay/model/message"
)

// mostRecent is how many files the list of recent ones holds.
const mostRecent = 8

// openDialog asks which project to open.
func (w *window) openDialog() {
	w.keepWork(func() { w.askFile([]string{".yaml", ".yml"}, w.openFile) })
}

// askFile asks for a file to read, of some extensions, and goes on with its path.
func (w *window) askFile(extensions []string, then func(path string)) {
	d := dialog.NewFileOpen(func(r fyne.URIReadCloser, err error) {
		if err != nil {
			w.complain(err)
			return
		}
		if r == nil {
			return
		}
		path := r.URI().Path()
		if err := r.Close(); err != nil {
			w.complain(err)
			return
		}
		then(path)
	}, w.win)
	d.SetFilter(storage.NewExtensionFileFilter(extensions))
	w.startIn(d)
	w.showDialog(d)
	d.Resize(w.dialogSize())
}

func (w *window) dialogSize() fyne.Size {
	s := w.win.Canvas().Size()
	return fyne.NewSize(min(s.Width*0.8, 900), min(s.Height*0.8, 640))
}

// located is a dialog that can begin in a folder.
type located interface{ SetLocation(fyne.ListableURI) }

// startIn begins a file dialog in the folder used last.
func (w *window) startIn(d located) {
	folder := w.app.Preferences().String(prefFolder)
	if w.path != "" {
		folder = filepath.Dir(w.path)
	}
	if folder == "" {
		return
	}
	if l, err := storage.ListerForURI(storage.NewFileURI(folder)); err == nil {
		d.SetLocation(l)
	}
}

// openFile opens a project in this window.
func (w *window) openFile(path string) {
	f, err := w.openWork(path)
	if err != nil {
		if !w.askOutside(path, err) {
			w.complain(err)
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
			w.complain(err)
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
	w.recentMenu.ChildMenu = w.recentItems()
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
