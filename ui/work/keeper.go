// Package work opens, saves and keeps what a window works on: the project with its
// file, lock and journal. It knows no widget: where a person has to choose, a step
// comes back with a question, and each answer is the step that goes on.
package work

import (
	"path/filepath"
	"sync"
	"time"

	"frontlay/assets"
	"frontlay/layout/check"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

// Keeper keeps the work of all windows of one run of the program. Its methods may
// be called from any goroutine.
type Keeper struct {
	FS   store.FS
	Home string // the program's own folder; made where it is missing
	// Sheets finds hardware sheets for a project in a folder (empty: it has none
	// yet), elsewhere only those that are allowed.
	Sheets func(folder string, allowed func(path string) bool) yamlfile.SheetSource
	// Owner names a document's owner, unlike any other.
	Owner func() store.Owner
	After func(time.Duration) <-chan time.Time
	Now   func() time.Time
	// Failed hears what kept unsaved work from being journalled.
	Failed func(error)

	mu      sync.Mutex
	open    map[*store.Document]bool // for a program that ends unforeseen
	allowed map[string]bool          // sheets outside of a project's folder
}

// options are what a new document needs.
func (k *Keeper) options() store.Options {
	return store.Options{FS: k.FS, Limit: yamlfile.MaxBytes,
		Journal: store.JournalOptions{Dir: k.journals(), Owner: k.Owner(), After: k.After, Now: k.Now, Failed: k.Failed}}
}

// journals is the folder of the journals inside the program's own.
func (k *Keeper) journals() string { return filepath.Join(k.Home, "journal") }

// Example reads a project that ships to be looked at.
func (k *Keeper) Example(name string) (*yamlfile.File, error) {
	data, _ := assets.Example(name)
	return k.read(name+".yaml", data, "")
}

// Look reads a project only to be looked at.
func (k *Keeper) Look(path string) (*yamlfile.File, error) {
	data, err := k.ReadFile(path)
	if err != nil {
		return nil, err
	}
	return k.read(path, data, filepath.Dir(path))
}

func (k *Keeper) read(name string, data []byte, folder string) (*yamlfile.File, error) {
	return yamlfile.Read(name, data, k.Sheets(folder, k.mayRead), check.Limits())
}

// ReadFile reads a file that is not larger than a project can be. The error is
// *store.Error.
func (k *Keeper) ReadFile(path string) ([]byte, error) {
	data, _, err := store.Read(k.FS, path, yamlfile.MaxBytes)
	return data, err
}

// WriteFile writes a file in the place of what is there; that stays beside it.
func (k *Keeper) WriteFile(path string, data []byte) error {
	now, err := store.StampOf(k.FS, path, store.Stamp{})
	if err == nil {
		_, err = store.Save(k.FS, path, data, now)
	}
	return err
}

func (k *Keeper) mayRead(path string) bool {
	k.mu.Lock()
	defer k.mu.Unlock()
	return k.allowed[path]
}

// allow lets projects read a hardware sheet outside of their folder.
func (k *Keeper) allow(path string) {
	k.mu.Lock()
	defer k.mu.Unlock()
	if k.allowed == nil {
		k.allowed = map[string]bool{}
	}
	k.allowed[path] = true
}

// keep notes that a document is open, or not any more.
func (k *Keeper) keep(d *store.Document, open bool) {
	k.mu.Lock()
	defer k.mu.Unlock()
	switch {
	case !open:
		delete(k.open, d)
	case k.open == nil:
		k.open = map[*store.Document]bool{d: true}
	default:
		k.open[d] = true
	}
}

// Flush puts the unsaved work of all windows on the disk at once.
func (k *Keeper) Flush() {
	k.mu.Lock()
	defer k.mu.Unlock()
	for d := range k.open {
		if err := d.Flush(); err != nil && k.Failed != nil {
			k.Failed(err)
		}
	}
}
