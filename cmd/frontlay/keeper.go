package main

import (
	"crypto/rand"
	"encoding/hex"
	"os"
	"path/filepath"
	"time"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
	"frontlay/ui"
)

// keptIn is the program's own folder for journals, reports and the log.
func keptIn() (string, error) {
	dir, err := os.UserConfigDir()
	if err != nil {
		return "", err
	}
	return filepath.Join(dir, "frontlay"), nil
}

// journals is the folder of the journals inside the program's own.
func journals(home string) string { return filepath.Join(home, "journal") }

// desk is what a new window's document needs of the world.
func (w *windowFiles) desk() store.Options {
	return store.Options{
		FS: store.OS{}, Limit: maxFile,
		Journal: store.JournalOptions{
			FS: store.OS{}, Dir: journals(w.home), Owner: owner(),
			After: time.After, Now: time.Now,
			Failed: func(err error) { w.log.Warn("journal", "error", err) },
		},
	}
}

// owner names one window of this run unlike any other.
func owner() store.Owner {
	var id [8]byte
	// crypto/rand does not fail on any system that Go supports.
	_, _ = rand.Read(id[:])
	return store.ThisProcess(hex.EncodeToString(id[:]), time.Now())
}

// Begin begins work that has no file yet.
func (w *windowFiles) Begin() ui.Work {
	k := &keptWork{files: w, doc: store.NewDocument(w.desk())}
	w.open(k)
	return k
}

// Take opens a file to work on, with its lock.
func (w *windowFiles) Take(path string) (ui.Work, *yamlfile.File, error) {
	doc, data, lockErr := store.Open(w.desk(), path)
	if doc == nil {
		return nil, nil, lockErr
	}
	f, err := yamlfile.Read(path, data, w.sheets(filepath.Dir(path)), check.Limits())
	if err != nil {
		_ = doc.Close() // nothing was done to it
		return nil, nil, err
	}
	k := &keptWork{files: w, doc: doc}
	w.open(k)
	return k, f, heldOnly(lockErr)
}

// heldOnly drops the errors of locks that can't be made at all (a read-only
// folder, say): the file can be worked on, and its stamp is watched.
func heldOnly(err error) error {
	if h, ok := err.(*store.Held); ok {
		return h
	}
	return nil
}

// Leftovers is the unsaved work of windows that ended without a word.
func (w *windowFiles) Leftovers() ([]ui.Leftover, error) {
	found, err := store.Leftovers(store.OS{}, journals(w.home), owner().Host)
	var left []ui.Leftover
	for _, l := range found {
		left = append(left, &leftover{files: w, l: l})
	}
	return left, err
}

// keptWork is one open document.
type keptWork struct {
	files *windowFiles
	doc   *store.Document
}

func (k *keptWork) Save(f *yamlfile.File, p *model.Project) error {
	data, err := f.Write(p)
	if err == nil {
		_, err = k.doc.Save(data)
	}
	return adopted(f, p, data, err)
}

// adopted lets f follow what was saved, so that comments stay with what is
// renamed, saved and then moved.
func adopted(f *yamlfile.File, p *model.Project, data []byte, err error) error {
	if err != nil {
		return err
	}
	next, err := f.Adopt(p, data)
	if err == nil {
		*f = *next
	}
	return err
}

func (k *keptWork) SaveAs(path string, f *yamlfile.File, p *model.Project) error {
	data, err := f.Write(p)
	if err == nil {
		_, err = k.doc.SaveAs(path, data)
	}
	return adopted(f, p, data, err)
}

func (k *keptWork) Overwrite(f *yamlfile.File, p *model.Project, c *store.Changed) error {
	data, err := f.Write(p)
	if err == nil {
		_, err = k.doc.Overwrite(data, c)
	}
	return adopted(f, p, data, err)
}

func (k *keptWork) TakeLock() error { return k.doc.TakeLock() }

func (k *keptWork) Reread() (*yamlfile.File, error) {
	data, err := k.doc.Reread()
	if err != nil {
		return nil, err
	}
	return yamlfile.Read(k.doc.Path(), data, k.files.sheets(filepath.Dir(k.doc.Path())), check.Limits())
}

func (k *keptWork) Changed() *store.Changed { return k.doc.Changed() }

func (k *keptWork) Note(f *yamlfile.File, p *model.Project) {
	now := *f // the journal writes in its own time, and f changes when it is saved
	k.doc.Note(p.Title, func() ([]byte, error) { return now.Draft(p) })
}

func (k *keptWork) Forget() error { return k.doc.Forget() }

func (k *keptWork) Flush() error { return k.doc.Flush() }

func (k *keptWork) Close() error {
	k.files.closed(k)
	return k.doc.Close()
}

// leftover is unsaved work that can be offered.
type leftover struct {
	files *windowFiles
	l     *store.Leftover
}

func (l *leftover) About() (title, path string, written time.Time) {
	return l.l.Title, l.l.Path, l.l.Written
}

func (l *leftover) Restore() (ui.Work, *yamlfile.File, error) {
	name, folder := l.l.Path, filepath.Dir(l.l.Path)
	if name == "" {
		name, folder = l.l.Title, ""
	}
	f, err := yamlfile.Read(name, l.l.Data, l.files.sheets(folder), check.Limits())
	if err != nil {
		return nil, nil, err
	}
	doc, err := store.Restore(l.files.desk(), l.l)
	if _, held := err.(*store.Held); err != nil && !held {
		_ = doc.Close() // the leftover itself stays where it is
		return nil, nil, err
	}
	k := &keptWork{files: l.files, doc: doc}
	l.files.open(k)
	return k, f, err
}

func (l *leftover) Discard() error { return l.l.Discard() }
