package work

import (
	"errors"
	"path/filepath"

	"frontlay/model/message"
	"frontlay/model/pack"
)

// Packed are the files of the project and its hardware sheets, as they are here, to be
// packed with what is made of them.
func (w *Work) Packed() ([]pack.File, error) {
	folder := ""
	if w.Path() != "" {
		folder = filepath.Dir(w.Path())
	}
	return pack.Job(w.file, w.session.Committed(), w.Name(), w.keeper.Sheets(folder, w.keeper.mayRead))
}

// unpack takes a packed job out into a folder and opens the project in it. Where the
// folder is there it asks what to do.
func (w *Work) unpack(archive, folder string) Outcome {
	path, err := pack.Unpack(w.keeper.FS, archive, folder)
	var there *pack.There
	switch {
	case errors.As(err, &there):
		return Outcome{Ask: w.thereQuestion(archive, there)}
	case err != nil:
		return Outcome{Err: err}
	}
	o := w.Open(path)
	if o.File != "" {
		o.Told = message.New("Unpacked into %v.", folder)
	}
	return o
}

func (w *Work) thereQuestion(archive string, t *pack.There) *Question {
	q := &Question{Title: message.New("Unpacked before"), Text: message.New("%v is there already.", t.Folder)}
	if _, err := w.keeper.FS.Stat(t.Project); err == nil {
		q.Answers = append(q.Answers, Answer{message.New("Open what is there"), func() Outcome { return w.Open(t.Project) }})
	}
	free := pack.Free(w.keeper.FS, t.Folder)
	q.Answers = append(q.Answers, Answer{message.New("Unpack into %v", filepath.Base(free)), func() Outcome { return w.unpack(archive, free) }}, cancel)
	return q
}
