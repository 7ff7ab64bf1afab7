package ui

import (
	"path/filepath"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"

	"frontlay/layout"
	"frontlay/model/message"
)

// Export writes the files for machines and other programs into a folder and
// tells how many there are.
type Export func(folder string, r layout.Result, say message.Language) (int, error)

// exportFiles asks for a folder and writes the files into one of its own there,
// so that they do not mix with others.
func (w *window) exportFiles() {
	d := dialog.NewFolderOpen(func(l fyne.ListableURI, err error) {
		if err != nil {
			w.complain(err)
			return
		}
		if l == nil {
			return
		}
		folder := filepath.Join(l.Path(), w.fileName()+"-files")
		n, err := w.options.Export(folder, w.session.CommittedResult(), w.say())
		if err != nil {
			w.complain(err)
			return
		}
		w.tell(message.New("Files written into %v: %v", folder, n))
	}, w.win)
	w.startIn(d)
	w.showDialog(d)
	d.Resize(w.dialogSize())
}
