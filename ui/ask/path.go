package ask

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
	"frontlay/ui/field"
)

// File asks for a file to read, of some extensions, and goes on with its path.
func (a *Asker) File(extensions []string, then func(path string)) {
	d := dialog.NewFileOpen(func(r fyne.URIReadCloser, err error) {
		path := ""
		if r != nil && err == nil {
			path, err = r.URI().Path(), r.Close()
		}
		a.chosen(path, err, then)
	}, a.Win)
	d.SetFilter(storage.NewExtensionFileFilter(extensions))
	a.browse(d)
}

// Folder asks for a folder and goes on with its path.
func (a *Asker) Folder(then func(path string)) {
	d := dialog.NewFolderOpen(func(l fyne.ListableURI, err error) {
		path := ""
		if l != nil {
			path = l.Path()
		}
		a.chosen(path, err, then)
	}, a.Win)
	a.browse(d)
}

// chosen goes on where something was chosen.
func (a *Asker) chosen(path string, err error, then func(path string)) {
	switch {
	case err != nil:
		a.Complain(err)
	case path != "":
		then(path)
	}
}

// browse shows a dialog of Fyne's for files.
func (a *Asker) browse(d interface {
	dialog.Dialog
	SetLocation(fyne.ListableURI)
}) {
	if folder := a.Begin(); folder != "" {
		if l, err := storage.ListerForURI(storage.NewFileURI(folder)); err == nil {
			d.SetLocation(l)
		}
	}
	a.Show(d, nil)
	s := a.Win.Canvas().Size()
	d.Resize(fyne.NewSize(min(s.Width*0.8, 900), min(s.Height*0.8, 640)))
}

// Path asks for the path of a file to write, of an extension. Fyne's own dialog for
// saving empties the chosen file before anything is written, and a failed save
// would then have lost it; this one touches nothing.
func (a *Asker) Path(title, name, ext string, then func(path string)) {
	folder := a.Begin()
	if home, err := os.UserHomeDir(); folder == "" && err == nil {
		folder = home
	}
	nameEntry, folderEntry := field.NewText(a.Text("Name of the file")), field.NewText(a.Text("Folder"))
	nameEntry.SetText(name + ext)
	folderEntry.SetText(folder)
	outcome := wrapped("")
	path := ""
	judge := func() (err error) {
		path, err = pathOf(folderEntry.Text, nameEntry.Text, ext)
		a.tellPath(outcome, path, err)
		return err
	}
	nameEntry.OnChanged = func(string) { _ = judge() } // while it is typed, telling is enough
	folderEntry.OnChanged = nameEntry.OnChanged
	_ = judge()
	choose := field.NewButton(a.Text("Choose a folder…"), func() { a.Folder(folderEntry.SetText) })
	a.Form(Form{
		Title: title, Width: 560, Take: a.Text("Save"), Fields: []*field.Text{nameEntry, folderEntry},
		Body: field.Column(field.Labelled(a.Text("Name"), nameEntry),
			field.Labelled(a.Text("Folder"), container.NewBorder(nil, nil, nil, choose, folderEntry)), outcome),
		Good: func() bool {
			err := judge()
			if err == nil {
				err = cantWriteInto(filepath.Dir(path))
				a.tellPath(outcome, path, err)
			}
			return err == nil
		},
		Then: func() { a.MayReplace(title, path, then) },
	})
}

// tellPath tells where a file goes, or why it can't.
func (a *Asker) tellPath(l *field.Label, path string, err error) {
	l.Importance = widget.LowImportance
	m := message.New("It will be written to %v", path)
	if err != nil {
		l.Importance, m = widget.DangerImportance, message.Of(err)
	}
	l.SetText(a.Say().Say(m))
}

// MayReplace goes on with a path, after asking where another file is there.
func (a *Asker) MayReplace(title, path string, then func(path string)) {
	if _, err := os.Stat(path); err != nil || path == a.Own() {
		then(path)
		return
	}
	a.Choose(Question{Title: title, Text: a.Text("“%v” is there already.", filepath.Base(path)),
		Answers: []string{a.Text("Replace it"), a.Text("Cancel")}, First: 1}, func(i int) {
		if i == 0 {
			then(path)
		}
	})
}

// pathOf is the whole path that a typed folder and name stand for; the error is
// what is wrong with them. The name can hold folders of its own, from the typed
// folder on or from the root, and “~” is the home folder in both. Where the name
// has not the extension it gets it.
func pathOf(folder, name, ext string) (string, error) {
	name, folder = strings.TrimSpace(name), FromHome(strings.TrimSpace(folder))
	last := filepath.Base(filepath.FromSlash(name))
	if name == "" || strings.ContainsRune(name, 0) || os.IsPathSeparator(name[len(name)-1]) || last == "." || last == ".." || last == "~" {
		return "", message.New("Write a name for the file.")
	}
	path := FromHome(name)
	if !filepath.IsAbs(path) {
		if folder == "" {
			return "", message.New("Write the folder for the file, or choose one.")
		}
		path = filepath.Join(folder, path)
	}
	path, err := filepath.Abs(path)
	if err != nil {
		return "", err
	}
	if !strings.EqualFold(filepath.Ext(path), ext) && !(ext == ".yaml" && strings.EqualFold(filepath.Ext(path), ".yml")) {
		path += ext
	}
	in := filepath.Dir(path)
	info, err := os.Stat(in)
	if err == nil && !info.IsDir() {
		return "", message.New("“%v” is a file, not a folder.", in)
	}
	if err != nil {
		return "", folderTrouble(in, err)
	}
	if info, err := os.Stat(path); err == nil && info.IsDir() {
		return "", message.New("“%v” is a folder. Write a name for the file.", path)
	}
	return path, nil
}

// FromHome puts the home folder in the place of a leading “~”.
func FromHome(path string) string {
	rest, tilde := strings.CutPrefix(path, "~")
	if !tilde || rest != "" && !os.IsPathSeparator(rest[0]) {
		return path
	}
	home, err := os.UserHomeDir()
	if err != nil {
		return path
	}
	return filepath.Join(home, rest)
}

// folderTrouble tells why a folder can't be used.
func folderTrouble(folder string, err error) error {
	switch {
	case errors.Is(err, fs.ErrPermission):
		return message.New("The folder “%v” is closed to you: there is no permission. Choose another one.", folder)
	case errors.Is(err, fs.ErrNotExist):
		return message.New("The folder “%v” is not there. Choose another one.", folder)
	default:
		return message.New("The folder “%v” can't be used: %v", folder, message.Of(err))
	}
}

// cantWriteInto tells why nothing can be written into a folder, nil where it can.
// Only trying tells that for sure.
func cantWriteInto(folder string) error {
	f, err := os.CreateTemp(folder, ".frontlay-*")
	if err != nil {
		return folderTrouble(folder, err)
	}
	_ = f.Close() // nothing was written
	if err := os.Remove(f.Name()); err != nil {
		return folderTrouble(folder, err)
	}
	return nil
}
