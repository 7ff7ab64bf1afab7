package ui

import (
	"path/filepath"

	"frontlay/layout"
	"frontlay/model/message"
)

// Export writes the files for machines and other programs into a folder and
// tells how many there are.
type Export func(folder string, r layout.Result, say message.Language) (int, error)

// exportFiles asks for a folder and writes the files into one of its own there,
// so that they do not mix with others.
func (w *window) exportFiles() {
	w.ask.Folder(func(path string) {
		folder := filepath.Join(path, w.work.Name()+"-files")
		n, err := w.options.Export(folder, w.session.CommittedResult(), w.say())
		if err != nil {
			w.ask.Complain(err)
			return
		}
		w.tell(message.New("Files written into %v: %v", folder, n))
	})
}
