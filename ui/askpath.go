package ui

import (
	"os"
	"path/filepath"

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
	outcome := field.NewLabel("")
	outcome.Wrapping = fyne.TextWrapWord
	tell := func(path, trouble string) {
		outcome.Importance = widget.DangerImportance
		if trouble == "" {
			outcome.Importance, trouble = widget.LowImportance, w.text("Written will be: %v", path)
		}
		outcome.SetText(trouble)
	}
	judge := func(string) { tell(w.pathOf(folderEntry.Text, nameEntry.Text, ext)) }
	nameEntry.OnChanged, folderEntry.OnChanged = judge, judge
	judge("")
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
		if trouble == "" {
			trouble = w.cantWriteInto(filepath.Dir(path))
		}
		if trouble != "" {
			tell(path, trouble)
			return
		}
		d.Hide()
		if _, err := os.Stat(path); err == nil && path != w.path {
			w.chooseFrom(title, w.text("“%v” is there already.", filepath.Base(path)),
				[]string{w.text("Replace it"), w.text("Go back")}, 1, func(i int) {
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
		field.Labelled(w.text("Folder"), container.NewBorder(nil, nil, nil, choose, folderEntry)), outcome)
	d = dialog.NewCustomWithoutButtons(title, container.New(minWidth{560}, body), w.win)
	d.SetButtons([]fyne.CanvasObject{field.NewButton(w.text("Go back"), func() { d.Hide() }), save})
	w.showDialog(d)
	w.win.Canvas().Focus(nameEntry)
	nameEntry.TypedShortcut(&fyne.ShortcutSelectAll{})
}
