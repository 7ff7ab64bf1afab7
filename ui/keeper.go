package ui

import (
	"time"

	"frontlay/model"
	"frontlay/model/store"
	"frontlay/model/yamlfile"
)

// Keeper is what Files can be besides: it keeps the work of a window safe, with
// a lock on the file, a journal of what is not saved, and an eye on what other
// programs do to the file.
type Keeper interface {
	// Begin begins work that has no file yet.
	Begin() Work
	// Take opens a file to work on. Where another window has it the error is a
	// *store.Held that comes with the work all the same.
	Take(path string) (Work, *yamlfile.File, error)
	// Leftovers is the unsaved work of windows that ended without a word,
	// newest first.
	Leftovers() ([]Leftover, error)
}

// Work is one open document of one window.
type Work interface {
	// Save writes to the work's own file. The error is *store.Changed where
	// another program changed it, *store.Held where another window has it.
	Save(f *yamlfile.File, p *model.Project) error
	// SaveAs writes to another file, which is the work's own from then on.
	SaveAs(path string, f *yamlfile.File, p *model.Project) error
	// Overwrite is Save over what another program made of the file.
	Overwrite(f *yamlfile.File, p *model.Project, c *store.Changed) error
	// TakeLock takes the file from the window that has it.
	TakeLock() error
	// Reread reads the file anew and gives this window's version up.
	Reread() (*yamlfile.File, error)
	// Changed tells what another program made of the file, nil for nothing.
	Changed() *store.Changed
	// Note hands the newest unsaved state to the journal.
	Note(f *yamlfile.File, p *model.Project)
	// Forget empties the journal, as nothing is unsaved any more.
	Forget() error
	// Flush puts what was noted on the disk at once.
	Flush() error
	// Close gives the lock back and clears the journal.
	Close() error
}

// Leftover is unsaved work that can be opened again or let go.
type Leftover interface {
	// About tells its title, its file ("" for none) and when it was written.
	About() (title, path string, written time.Time)
	// Restore opens it as work. The error may be a *store.Held with the work.
	Restore() (Work, *yamlfile.File, error)
	// Discard lets it go.
	Discard() error
}
