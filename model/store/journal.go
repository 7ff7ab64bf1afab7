package store

import (
	"errors"
	"os"
	"path/filepath"
	"sync"
	"time"
)

// JournalDelay is how long an edit may wait before it is written. With the time
// that writing takes, unsaved work is on the disk within two seconds.
const JournalDelay = time.Second

// Entry is one state of unsaved work. Data makes the text to keep; it runs in
// another goroutine and must not look at anything that changes.
type Entry struct {
	Path  string // of the document; empty where it has none yet
	Title string
	Base  Stamp // of the file that the work began from
	Data  func() ([]byte, error)
}

// Journal keeps the unsaved work of one window on the disk, so that a crash
// loses at most the last two seconds. It holds only the newest state. Its
// methods may be called from any goroutine; only Flush and Clear wait for the
// disk.
type Journal struct {
	o    JournalOptions
	name string
	wake chan struct{}
	stop chan struct{}
	once sync.Once // closes stop
	done chan struct{}

	mu   sync.Mutex // guards next
	next *Entry     // noted, not yet written

	writing sync.Mutex // one writer at a time; taken before mu
}

// JournalOptions are where and how a journal is kept.
type JournalOptions struct {
	FS    FS
	Dir   string // a folder of the program's own; made where it is missing
	Owner Owner
	// After is time.After, or a test's.
	After func(time.Duration) <-chan time.Time
	// Now is time.Now, or a test's.
	Now func() time.Time
	// Failed is told what kept the journal from being written; it may be nil.
	Failed func(error)
}

// NewJournal begins a journal. Nothing is written until something is noted.
func NewJournal(o JournalOptions) *Journal {
	j := &Journal{o: o, name: filepath.Join(o.Dir, o.Owner.Session+journalSuffix),
		wake: make(chan struct{}, 1), stop: make(chan struct{}), done: make(chan struct{})}
	go j.run()
	return j
}

// Note takes the newest state of the work; it returns at once.
func (j *Journal) Note(e Entry) {
	j.mu.Lock()
	j.next = &e
	j.mu.Unlock()
	select {
	case j.wake <- struct{}{}:
	default: // it is awake
	}
}

func (j *Journal) run() {
	defer close(j.done)
	for {
		select {
		case <-j.stop:
			return
		case <-j.wake:
		}
		select {
		case <-j.stop:
			return
		case <-j.o.After(JournalDelay):
		}
		if err := j.Flush(); err != nil && j.o.Failed != nil {
			j.o.Failed(err)
		}
	}
}

// Flush writes what was noted and waits for it. On an error the state stays
// noted, and the one written before is still there.
func (j *Journal) Flush() error {
	j.writing.Lock()
	defer j.writing.Unlock()
	j.mu.Lock()
	e := j.next
	j.mu.Unlock()
	if e == nil {
		return nil
	}
	if err := j.write(e); err != nil {
		return err
	}
	j.mu.Lock()
	if j.next == e {
		j.next = nil
	}
	j.mu.Unlock()
	return nil
}

func (j *Journal) write(e *Entry) error {
	body, err := e.Data()
	if err != nil {
		return err
	}
	data, err := encodeJournal(Header{Path: e.Path, Title: e.Title, Base: e.Base, Owner: j.o.Owner, Written: j.o.Now().UTC()}, body)
	if err != nil {
		return err
	}
	if err := j.o.FS.MkdirAll(j.o.Dir, 0o700); err != nil {
		return saveError(j.name, err)
	}
	fresh := j.name + freshSuffix
	f, err := j.o.FS.OpenFile(fresh, os.O_WRONLY|os.O_CREATE|os.O_TRUNC, 0o600)
	if err != nil {
		return saveError(j.name, err)
	}
	if err := fill(f, data); err != nil {
		return saveError(j.name, errors.Join(err, j.o.FS.Remove(fresh)))
	}
	if err := j.o.FS.Rename(fresh, j.name); err != nil {
		return saveError(j.name, errors.Join(err, j.o.FS.Remove(fresh)))
	}
	if err := j.o.FS.SyncDir(j.o.Dir); err != nil {
		return saveError(j.name, err)
	}
	return nil
}

// Clear forgets what was noted and removes what was written: the work is saved,
// or the user has let it go.
func (j *Journal) Clear() error {
	j.writing.Lock()
	defer j.writing.Unlock()
	j.mu.Lock()
	j.next = nil
	j.mu.Unlock()
	return remove(j.o.FS, j.name)
}

// Stop ends the journal and leaves what is written. Call Clear before where
// nothing is to be offered at the next start. It can be called again.
func (j *Journal) Stop() {
	j.once.Do(func() { close(j.stop) })
	<-j.done
}
