package work

import (
	"errors"
	"path/filepath"
	"strings"

	"frontlay/model/message"
	"frontlay/model/store"
)

// Save writes the project to its file, or asks for one.
func (w *Work) Save() Outcome {
	if w.Path() == "" {
		return w.SaveAs()
	}
	return w.write(w.doc.Save, w.obstacle)
}

// SaveAs asks for a file and writes the project to it.
func (w *Work) SaveAs() Outcome {
	return Outcome{Path: &PathQuestion{Title: message.New("Save as"), Name: w.Name(), Then: w.SaveTo}}
}

// SaveTo writes the project to a file, which is the work's own from then on. What
// is there already is replaced: ask before.
func (w *Work) SaveTo(path string) Outcome {
	if path == w.Path() {
		return w.Save()
	}
	return w.saveTo(path, false)
}

func (w *Work) saveTo(path string, take bool) Outcome {
	return w.write(
		func(data []byte) (store.Saved, error) { return w.doc.SaveAs(path, data, take) },
		func(err error) Outcome { return w.held(err, func() Outcome { return w.saveTo(path, true) }) },
	)
}

// write makes the text of the project and has it saved. obstacle is what comes of a
// save that failed.
func (w *Work) write(save func(data []byte) (store.Saved, error), obstacle func(error) Outcome) Outcome {
	p := w.session.Committed()
	data, err := w.file.Write(p)
	if err != nil {
		return Outcome{Err: err}
	}
	if _, err := save(data); err != nil {
		return obstacle(err)
	}
	// Comments stay with what is renamed, saved and then moved.
	f, err := w.file.Adopt(p, data)
	if err != nil {
		return Outcome{Err: err}
	}
	w.file, w.told = f, nil
	w.session.MarkSaved()
	return Outcome{File: w.Path(), Told: message.New("Saved as %v.", filepath.Base(w.Path())), Done: true}
}

// obstacle is what comes of a save to the work's own file that failed: a question
// where something stands in the way that can be chosen about.
func (w *Work) obstacle(err error) Outcome {
	var changed *store.Changed
	if errors.As(err, &changed) {
		return w.changed(changed)
	}
	return w.held(err, func() Outcome {
		if err := w.doc.TakeLock(); err != nil {
			return Outcome{Err: err}
		}
		return w.Save()
	})
}

// changed asks what becomes of a file that another program changed.
func (w *Work) changed(c *store.Changed) Outcome {
	return Outcome{Ask: &Question{Title: message.New("Changed by another program"), Text: message.Of(c), Answers: []Answer{
		{message.New("Save mine beside it"), w.SaveAs},
		{message.New("Keep mine"), func() Outcome {
			return w.write(func(data []byte) (store.Saved, error) { return w.doc.Overwrite(data, c) }, w.obstacle)
		}},
		{message.New("Take theirs"), func() Outcome { return w.again("Read %v again.") }},
		cancel,
	}}}
}

// held asks what becomes of a save to a file that another window has; all the same
// is the step that saves there.
func (w *Work) held(err error, allTheSame func() Outcome) Outcome {
	var held *store.Held
	if !errors.As(err, &held) {
		return Outcome{Err: err}
	}
	return Outcome{Ask: &Question{Title: message.New("Open elsewhere"), Text: message.Of(held), Answers: []Answer{
		{message.New("Save mine beside it"), w.SaveAs},
		{message.New("Save here all the same"), allTheSame},
		cancel,
	}}}
}

// Look asks what becomes of the file where another program changed it, once for
// each change. It can be asked every second.
func (w *Work) Look() Outcome {
	c := w.doc.Changed()
	if c == nil || w.told != nil && w.told.Now.Same(c.Now) {
		return Outcome{}
	}
	w.told = c
	return w.changed(c)
}

// Leave asks about unsaved work before something would lose it. It is done where
// nothing will be lost against the person's word.
func (w *Work) Leave() Outcome {
	if !w.session.Unsaved() {
		return Outcome{Done: true}
	}
	return Outcome{Ask: &Question{
		Title: message.New("Unsaved changes"),
		Text:  message.New("“%v” has changes that are not saved.", w.session.Project().Title),
		Answers: []Answer{
			{message.New("Save"), w.Save},
			{message.New("Don't save"), func() Outcome { return Outcome{Done: true} }},
			cancel,
		},
	}}
}

// State tells in a word or three whether the work is saved.
func (w *Work) State() message.Message {
	switch unsaved := w.session.Unsaved(); {
	case unsaved && w.Path() == "":
		return message.New("not saved yet")
	case unsaved:
		return message.New("not saved")
	case w.Path() == "":
		return message.New("no file yet")
	}
	return message.New("saved")
}

// Name is a name for a file: that of the work's own, or one made from the title,
// without signs that file systems do not like.
func (w *Work) Name() string {
	if path := w.Path(); path != "" {
		return strings.TrimSuffix(filepath.Base(path), filepath.Ext(path))
	}
	name := strings.Map(func(r rune) rune {
		if strings.ContainsRune(`/\:*?"<>| `, r) || r < ' ' {
			return '-'
		}
		return r
	}, strings.ToLower(strings.TrimSpace(w.session.Project().Title)))
	if name == "" || strings.HasPrefix(name, ".") {
		return "project"
	}
	return name
}
