// Package store keeps the user's work: it saves whole files or none, notices what
// other programs changed, journals unsaved edits, locks open files, and finds
// hardware sheets. It knows nothing of what is in the files.
//
// # Promises
//
//   - At any moment, also if the machine stops, a saved file is whole: the version
//     before or the new one. The version before stays beside it.
//   - A file that another program changed or removed is never written over
//     without the user's word.
//   - Unsaved work is on the disk within two seconds, and offered at the next
//     start if the program ended without saving or asking.
//   - What can't be done says so in the user's words, and the work stays in the
//     window.
//
// # Files
//
// Beside a project bench.yaml:
//
//	bench.yaml.before        the version before the last save
//	.bench.yaml.lock         while a window has it open: whose
//	.bench.yaml.1.saving     for a moment, while it is saved
//
// In the program's own folder:
//
//	SESSION.journal          unsaved work of one window (.new while it is written,
//	                         .broken where it could not be read)
//
// Hard links to a project are not kept: a save gives its name to a new file.
// Symbolic links, permissions and, where the user may, the owner are kept.
//
// # Tests
//
// The file system comes in through FS, so that tests make every step of a save,
// of the journal and of a lock fail. Three tests have a long form:
//
//	FRONTLAY_KILLS=300 go test ./model/store -run 'TestKill$' -v -timeout 60m
//	FRONTLAY_SOAK=100000 go test ./model/store -run LongDay -v -timeout 60m
//	go test ./model/store -run '^$' -fuzz FuzzJournal -fuzztime 10m
package store

import (
	"path/filepath"
	"sync"
	"time"
)

// Options is what documents need of the world around them.
type Options struct {
	FS      FS
	Limit   int64          // the largest document, in bytes
	Journal JournalOptions // Owner is the window's; FS is Options.FS where it is nil
}

// Document is one open file of one window, with its lock and its journal. Its
// methods may be called from any goroutine.
type Document struct {
	o       Options
	journal *Journal

	mu    sync.Mutex
	path  string // empty: it has no file yet
	known Stamp
	lock  *Lock // nil: none could be had, or none is needed

	looking chan look // a look at the file that has not ended, nil for none
}

// NewDocument begins a document without a file.
func NewDocument(o Options) *Document {
	if o.Journal.FS == nil {
		o.Journal.FS = o.FS
	}
	return &Document{o: o, journal: NewJournal(o.Journal)}
}

// Open locks and reads a file. Where the lock can't be had the error of the lock
// comes with the data and the document all the same (*Held or *Error), so that
// it can be looked at and saved elsewhere; without data and document, the file
// can't be read.
func Open(o Options, path string) (*Document, []byte, error) {
	data, stamp, err := Read(o.FS, path, o.Limit)
	if err != nil {
		return nil, nil, err
	}
	path = absolute(path)
	d := NewDocument(o)
	d.path, d.known = path, stamp
	d.lock, err = Acquire(o.FS, path, o.Journal.Owner)
	if err == nil {
		// A save that was killed may have left a file beside; not being able to
		// remove it does no harm.
		_ = Sweep(o.FS, path)
	}
	return d, data, err
}

// absolute is a path that means the same at the next start, whatever folder that
// is in.
func absolute(path string) string {
	if abs, err := filepath.Abs(path); err == nil {
		return abs
	}
	return path // the folder the program is in has been removed
}

// Restore opens the document that unsaved work was left of, as that work began
// from it: if the file has changed since, Save says so. The work is noted at
// once in this window's journal, so that the leftover can be discarded; where that
// fails there is no document. With a document the error is *Held or nil: a file
// whose folder is gone, or may not be written, can be saved elsewhere.
func Restore(o Options, l *Leftover) (*Document, error) {
	d := NewDocument(o)
	d.path, d.known = l.Path, l.Base
	d.Note(l.Title, func() ([]byte, error) { return l.Data, nil })
	if err := d.Flush(); err != nil {
		d.journal.Stop()
		return nil, err
	}
	if d.path == "" {
		return d, nil
	}
	var err error
	d.lock, err = Acquire(o.FS, d.path, o.Journal.Owner)
	if held, ok := err.(*Held); ok {
		return d, held
	}
	return d, nil
}

// Path is where the document is saved, from the root; empty where it has no file yet.
func (d *Document) Path() string {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.path
}

// Locked tells whether this window holds the file's lock.
func (d *Document) Locked() bool {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.lock != nil && d.lock.Mine()
}

// Note takes the newest unsaved state for the journal; see Journal.Note.
func (d *Document) Note(title string, data func() ([]byte, error)) {
	d.mu.Lock()
	e := Entry{Path: d.path, Title: title, Base: d.known, Data: data}
	d.mu.Unlock()
	d.journal.Note(e)
}

// Save writes data to the document's file and clears the journal. The error is
// *Changed where another program changed the file: ask the user, then call
// Overwrite, Reread or SaveAs. It is *Held where another window has the lock:
// ask, then call TakeLock or SaveAs.
func (d *Document) Save(data []byte) (Saved, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.save(data, d.known)
}

// Overwrite is Save where the user has chosen to keep this window's version
// over the one that c told of. What has changed since then is *Changed again.
func (d *Document) Overwrite(data []byte, c *Changed) (Saved, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	return d.save(data, c.Now)
}

func (d *Document) save(data []byte, known Stamp) (Saved, error) {
	if err := d.ensureLock(); err != nil {
		return Saved{}, err
	}
	saved, err := Save(d.o.FS, d.path, data, known)
	if err != nil {
		return saved, err
	}
	d.known = saved.Stamp
	return saved, d.journal.Clear()
}

// ensureLock takes the lock where this window has none, or lost it. Only
// another owner stands in the way of saving; where locks can't be made at all,
// the stamp still tells what others changed.
func (d *Document) ensureLock() error {
	if d.lock != nil && d.lock.Mine() {
		return nil
	}
	lock, err := Acquire(d.o.FS, d.path, d.o.Journal.Owner)
	if held, ok := err.(*Held); ok {
		d.lock = nil
		return held
	}
	d.lock = lock
	return nil
}

// TakeLock takes the lock from whoever has it, after the user has said so.
func (d *Document) TakeLock() error {
	d.mu.Lock()
	defer d.mu.Unlock()
	lock, err := Steal(d.o.FS, d.path, d.o.Journal.Owner)
	if err == nil {
		d.lock = lock
	}
	return err
}

// SaveAs writes data to another file, which the document is from then on. A file
// that is there already is replaced: ask before. The error is *Held where the
// other file is open elsewhere, and nothing is written then; take says that the
// user wants to have it all the same.
func (d *Document) SaveAs(path string, data []byte, take bool) (Saved, error) {
	d.mu.Lock()
	defer d.mu.Unlock()
	path = absolute(path)
	lock, err := Acquire(d.o.FS, path, d.o.Journal.Owner)
	own := false
	if h, held := err.(*Held); held {
		switch own = h.Owner.same(d.o.Journal.Owner); {
		case own:
			lock = d.lock
		case !take:
			return Saved{}, err
		default:
			if lock, err = Steal(d.o.FS, path, d.o.Journal.Owner); err != nil {
				return Saved{}, err
			}
		}
	}
	now, err := StampOf(d.o.FS, path, Stamp{})
	if err == nil {
		var saved Saved
		if saved, err = Save(d.o.FS, path, data, now); err == nil {
			if d.lock != nil && !own {
				_ = d.lock.Release() // a lock left behind is taken over later
			}
			d.path, d.known, d.lock = path, saved.Stamp, lock
			return saved, d.journal.Clear()
		}
	}
	if lock != nil && !own {
		_ = lock.Release()
	}
	return Saved{}, err
}

// Reread reads the file anew, for a user who takes the other program's version.
// That counts once accept has found it good; then the journal is cleared. The error
// of accept is given back, and everything is as it was.
func (d *Document) Reread(accept func(data []byte) error) error {
	data, stamp, err := Read(d.o.FS, d.Path(), d.o.Limit)
	if err == nil {
		err = accept(data)
	}
	if err != nil {
		return err
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	d.known = stamp
	return d.journal.Clear()
}

// Forget empties the journal: nothing is unsaved any more, as after an undo back to
// what was saved.
func (d *Document) Forget() error { return d.journal.Clear() }

// Flush puts what was noted on the disk at once, for a program that is about to
// end in an unforeseen way.
func (d *Document) Flush() error { return d.journal.Flush() }

// Close ends the document after its work was saved or let go: the journal is
// cleared and the lock given back.
func (d *Document) Close() error {
	d.journal.Stop()
	err := d.journal.Clear()
	d.mu.Lock()
	defer d.mu.Unlock()
	if d.lock != nil {
		if released := d.lock.Release(); err == nil {
			err = released
		}
		d.lock = nil
	}
	return err
}

// lookPatience is how long Changed waits for the file system. A folder on a
// network that is gone can keep a program waiting for minutes.
const lookPatience = 200 * time.Millisecond

// look is what was found of a file.
type look struct {
	path       string
	known, now Stamp
	err        error
}

// Changed tells what another program made of the file since it was read or
// saved here, nil where it is as it was. It can be asked every second, also by
// the goroutine that draws the window: where the file system does not answer
// soon, it is nil until it does.
func (d *Document) Changed() *Changed {
	d.mu.Lock()
	if d.path == "" {
		d.mu.Unlock()
		return nil
	}
	answer := d.looking
	if answer == nil {
		answer = make(chan look, 1)
		d.looking = answer
		l := look{path: d.path, known: d.known}
		go func() {
			l.now, l.err = StampOf(d.o.FS, l.path, l.known)
			answer <- l
		}()
	}
	d.mu.Unlock()
	select {
	case l := <-answer:
		return d.seen(l)
	case <-d.o.Journal.After(lookPatience):
		return nil
	}
}

// seen tells what a look means now; the document may have been saved since.
func (d *Document) seen(l look) *Changed {
	d.mu.Lock()
	defer d.mu.Unlock()
	d.looking = nil
	if l.err != nil || l.path != d.path || !l.known.Same(d.known) || l.now.Same(d.known) {
		return nil // a file that can't be read just now is told when it is saved
	}
	return &Changed{Path: d.path, Now: l.now}
}
