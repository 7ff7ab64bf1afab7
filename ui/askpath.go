package ui

import (
	"os"
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/field"
)

// askPath asks for the path of a file to write. Fyne's own dialog for saving
// empties the chosen file before anything is written, and a failed save would
// then have lost it; this one touches nothing.
func (w *window) askPath(title, name, ext string, then func(path string)) {
	folder := w.app.Preferences().String(prefFolder)
	if w.path != "" {
		folder = filepath.Dir(w.path)
	}
	if home, err := os.UserHomeDir(); folder == "" && err == nil {
		folder = home
	}
	nameEntry, folderEntry := field.NewText(""), field.NewText("")
	nameEntry.SetText(name + ext)
	nameEntry.SetPlaceHolder(w.text("name of the file"))
	folderEntry.SetText(folder)
	folderEntry.SetPlaceHolder(w.text("folder"))
	problem := widget.NewLabel("")
	problem.Importance, problem.Wrapping = widget.DangerImportance, fyne.TextWrapWord
	choose := field.NewButton(w.text("Choose…"), func() {
		d := dialog.NewFolderOpen(func(l fyne.ListableURI, err error) {
			if err == nil && l != nil {
				folderEntry.SetText(l.Path())
			}
		}, w.win)
		w.startIn(d)
		d.Show()
		d.Resize(w.dialogSize())
	})
	var d *dialog.CustomDialog
	take := func() {
		path, trouble := w.pathOf(folderEntry.Text, nameEntry.Text, ext)
		if trouble != "" {
			problem.SetText(trouble)
			return
		}
		d.Hide()
		if _, err := os.Stat(path); err == nil && path != w.path {
			w.choose(title, w.text("“%v” is there already.", filepath.Base(path)),
				[]string{w.text("Replace it"), w.text("Go back")}, func(i int) {
					if i == 0 {
						then(path)
					}
				})
			return
		}
		then(path)
	}
	save := field.NewButton(w.text("Save"), take)
	save.Importance = widget.HighImportance
	nameEntry.OnSubmitted = func(string) { take() }
	folderEntry.OnSubmitted = func(string) { take() }
	body := field.Column(field.Labelled(w.text("Name"), nameEntry),
		field.Labelled(w.text("Folder"), container.NewBorder(nil, nil, nil, choose, folderEntry)), problem)
	d = dialog.NewCustomWithoutButtons(title, container.New(minWidth{560}, body), w.win)
	d.SetButtons([]fyne.CanvasObject{field.NewButton(w.text("Go back"), func() { d.Hide() }), save})
	w.showDialog(d)
	w.win.Canvas().Focus(nameEntry)
	nameEntry.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// pathOf joins a folder and a name, or says what is wrong with them.
func (w *window) pathOf(folder, name, ext string) (path, trouble string) {
	name, folder = strings.TrimSpace(name), strings.TrimSpace(folder)
	if name == "" || strings.ContainsAny(name, "/\\\x00") || name == "." || name == ".." {
		return "", w.text("Write a name for the file, without slashes in it.")
	}
	if info, err := os.Stat(folder); err != nil || !info.IsDir() {
		return "", w.text("The folder “%v” is not there. Choose another one.", folder)
	}
	if !strings.EqualFold(filepath.Ext(name), ext) && !(ext == ".yaml" && strings.EqualFold(filepath.Ext(name), ".yml")) {
		name += ext
	}
	return filepath.Join(folder, name), ""
}
