package work

import (
	"errors"
	"path/filepath"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/model/pack"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
	"frontlay/ui/session"
)

// Work is what one window works on. It is not safe for several goroutines.
type Work struct {
	keeper  *Keeper
	doc     *store.Document
	file    *yamlfile.File // what stands in the file beside the project
	session *session.Session
	told    *store.Changed // what the person was asked about last
}

// Begin begins with a project that has no file yet and that nobody would miss.
func (k *Keeper) Begin(p *model.Project) *Work {
	w := &Work{keeper: k}
	w.put(store.NewDocument(k.options()), yamlfile.New(p, check.Limits()))
	return w
}

// put makes a document what the window works on.
func (w *Work) put(doc *store.Document, f *yamlfile.File) {
	w.doc, w.told = doc, nil
	w.keeper.keep(doc, true)
	w.show(f)
}

func (w *Work) show(f *yamlfile.File) {
	w.file, w.session = f, session.New(f.Project, layout.Solve)
}

// replace is put in the place of a document, which is closed.
func (w *Work) replace(doc *store.Document, f *yamlfile.File) Outcome {
	err := w.Close()
	w.put(doc, f)
	return Outcome{Show: true, Err: err, Done: true}
}

// Keeper is what the work is kept by.
func (w *Work) Keeper() *Keeper { return w.keeper }

// Session is the project with its history. Another one takes its place where an
// Outcome says Show.
func (w *Work) Session() *session.Session { return w.session }

// Path is where the work is saved, from the root; empty where it has no file yet.
func (w *Work) Path() string { return w.doc.Path() }

// New puts a new project in the place of what is open. It is not saved.
func (w *Work) New(p *model.Project) Outcome {
	o := w.replace(store.NewDocument(w.keeper.options()), yamlfile.New(p, check.Limits()))
	w.session.MarkUnsaved()
	w.Note(p)
	return o
}

// Example opens a project that ships, which has no file of its own.
func (w *Work) Example(name string) Outcome {
	f, err := w.keeper.Example(name)
	if err != nil {
		return Outcome{Err: err}
	}
	return w.replace(store.NewDocument(w.keeper.options()), f)
}

// Open opens a file in the place of what is open, which stays where the file can't
// be read. A packed job is taken out beside it before. A file that another window has can be looked at.
func (w *Work) Open(path string) Outcome {
	if pack.Is(path) {
		return w.unpack(path, pack.Folder(path))
	}
	if abs, err := filepath.Abs(path); err == nil && abs == w.Path() {
		return w.again("Opened %v.")
	}
	doc, data, err := store.Open(w.keeper.options(), path)
	if doc == nil {
		return Outcome{Err: err}
	}
	f, wrong := w.keeper.read(path, data, filepath.Dir(path))
	if wrong != nil {
		_ = doc.Close() // nothing was done to it
		return w.unread(wrong, func() Outcome { return w.Open(path) })
	}
	o := w.replace(doc, f)
	o.File, o.Told, o.Ask = w.Path(), message.New("Opened %v.", filepath.Base(path)), heldQuestion(err)
	return o
}

// again reads the file anew and gives the window's version up, once it is clear
// that the file can be read.
func (w *Work) again(told string) Outcome {
	var f *yamlfile.File
	err := w.doc.Reread(func(data []byte) (err error) {
		f, err = w.keeper.read(w.Path(), data, filepath.Dir(w.Path()))
		return err
	})
	if f == nil {
		return w.unread(err, func() Outcome { return w.again(told) })
	}
	w.show(f)
	return Outcome{Show: true, File: w.Path(), Told: message.New(told, filepath.Base(w.Path())), Err: err, Done: true}
}

// unread is what comes of a project that could not be read: where it wants a
// hardware sheet elsewhere, whether it may, and then the same step again.
func (w *Work) unread(err error, again func() Outcome) Outcome {
	var outside *store.Outside
	if !errors.As(err, &outside) {
		return Outcome{Err: err}
	}
	return Outcome{Ask: &Question{
		Title: message.New("A hardware sheet elsewhere"),
		Text:  message.New("This project wants to read %v, which is not in its folder.", outside.Path),
		Answers: []Answer{{message.New("Read it"), func() Outcome {
			w.keeper.allow(outside.Path)
			return again()
		}}, cancel},
	}}
}

// heldQuestion tells that another window has the file, where it has; other locks
// that can't be had stand in nobody's way.
func heldQuestion(err error) *Question {
	var held *store.Held
	if !errors.As(err, &held) {
		return nil
	}
	return &Question{Title: message.New("Open elsewhere"), Text: message.New("%v\n%v", message.Of(held), message.New("You can look at it here, and save changes beside it.")),
		Answers: []Answer{{Text: message.New("Look at it")}}}
}

// Leftovers offers the unsaved work of windows that ended without a word, one
// piece after the other.
func (w *Work) Leftovers() Outcome {
	left, err := store.Leftovers(w.keeper.FS, w.keeper.journals(), w.keeper.Owner().Host)
	return Outcome{Err: err, Ask: w.offer(left)}
}

func (w *Work) offer(left []*store.Leftover) *Question {
	if len(left) == 0 {
		return nil
	}
	one, rest := left[0], left[1:]
	where := message.New("It was never saved to a file.")
	if one.Path != "" {
		where = message.New("It belongs to %v.", one.Path)
	}
	return &Question{
		Title: message.New("Unsaved work was found"),
		Text:  message.New("“%v”, as it was on %v. %v", one.Title, one.Written.Local().Format("2006-01-02 15:04:05"), where),
		Answers: []Answer{
			{message.New("Open it again"), func() Outcome { return w.restore(one) }}, // the rest is offered at the next start
			{message.New("Discard it"), func() Outcome { return Outcome{Err: one.Discard(), Ask: w.offer(rest)} }},
			{message.New("Ask me later"), func() Outcome { return Outcome{Ask: w.offer(rest)} }},
		},
	}
}

// restore opens unsaved work again; it stays unsaved, and where it was left until it
// is in this window's journal.
func (w *Work) restore(l *store.Leftover) Outcome {
	name, folder := l.Path, filepath.Dir(l.Path)
	if name == "" {
		name, folder = l.Title, ""
	}
	f, err := w.keeper.read(name, l.Data, folder)
	if err != nil {
		return w.unread(err, func() Outcome { return w.restore(l) })
	}
	doc, err := store.Restore(w.keeper.options(), l)
	if doc == nil {
		return Outcome{Err: err}
	}
	o := w.replace(doc, f)
	w.session.MarkUnsaved()
	o.Told, o.Ask = message.New("Opened again; it is not saved yet."), heldQuestion(err)
	o.Err = errors.Join(o.Err, l.Discard())
	return o
}

// Note hands the newest state that is not saved to the journal.
func (w *Work) Note(p *model.Project) {
	f := w.file // the journal writes in its own time, and the work may be saved by then
	w.doc.Note(p.Title, func() ([]byte, error) { return f.Draft(p) })
}

// Forget empties the journal, as nothing is unsaved any more.
func (w *Work) Forget() error { return w.doc.Forget() }

// Flush puts what was noted on the disk at once.
func (w *Work) Flush() error { return w.doc.Flush() }

// Close ends the work after it was saved or let go: the lock is given back and the
// journal cleared.
func (w *Work) Close() error {
	w.keeper.keep(w.doc, false)
	return w.doc.Close()
}
