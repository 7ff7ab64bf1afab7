package store

import (
	"errors"
	"io/fs"
	"path/filepath"
	"time"
)

// Papers keeps what is known of printed papers, each under the stamp that stands on
// it, in a folder of the program's own. Dir is that folder; it is made where it is
// missing. Papers are small; those not printed again for years are let go.
type Papers struct {
	FS  FS
	Dir string
	Now time.Time
}

const (
	maxPaper  = 4 << 20 // bytes
	paperKept = 5 * 365 * 24 * time.Hour
)

// Keep writes what is known of a paper. The error is *Error.
func (p Papers) Keep(stamp string, data []byte) error {
	if err := p.FS.MkdirAll(p.Dir, 0o755); err != nil {
		return replaceError(p.Dir, err)
	}
	p.letGo()
	return Replace(p.FS, p.name(stamp), data)
}

// Find gives what was kept under a stamp; the error wraps fs.ErrNotExist where
// nothing was.
func (p Papers) Find(stamp string) ([]byte, error) {
	data, _, err := read(p.FS, p.name(stamp), maxPaper)
	return data, err
}

func (p Papers) name(stamp string) string { return filepath.Join(p.Dir, stamp+".json") }

// letGo removes papers of years ago; one that can't be removed stays.
func (p Papers) letGo() {
	all, err := p.FS.ReadDir(p.Dir)
	if err != nil {
		return
	}
	for _, e := range all {
		if i, err := e.Info(); err == nil && p.Now.Sub(i.ModTime()) > paperKept {
			if err := p.FS.Remove(filepath.Join(p.Dir, e.Name())); err != nil && !errors.Is(err, fs.ErrNotExist) {
				return
			}
		}
	}
}
