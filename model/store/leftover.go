package store

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"io/fs"
	"maps"
	"path/filepath"
	"slices"
	"strings"
	"time"
)

const (
	journalSuffix = ".journal"
	freshSuffix   = ".new" // of a journal that is being written
	journalFirst  = "frontlay-journal 1\n"
	// maxJournal bounds what is read of one: a project's limit and a header.
	maxJournal = 5 << 20
)

// Header tells whose work a journal holds.
type Header struct {
	Path    string    `json:"path"`
	Title   string    `json:"title"`
	Base    Stamp     `json:"base"`
	Owner   Owner     `json:"owner"`
	Written time.Time `json:"written"`
	Sum     string    `json:"sha256"` // of the body
}

var errJournal = errors.New("the journal can't be read")

// encodeJournal puts a header line of JSON before the body.
func encodeJournal(h Header, body []byte) ([]byte, error) {
	sum := sha256.Sum256(body)
	h.Sum = hex.EncodeToString(sum[:])
	line, err := json.Marshal(h)
	if err != nil {
		return nil, err
	}
	return slices.Concat([]byte(journalFirst), line, []byte("\n"), body), nil
}

// DecodeJournal reads a journal's bytes. A journal that is not whole is an
// error.
func DecodeJournal(data []byte) (Header, []byte, error) {
	var h Header
	rest, ok := bytes.CutPrefix(data, []byte(journalFirst))
	line, body, ok2 := bytes.Cut(rest, []byte("\n"))
	if !ok || !ok2 || json.Unmarshal(line, &h) != nil {
		return Header{}, nil, errJournal
	}
	sum := sha256.Sum256(body)
	if h.Sum != hex.EncodeToString(sum[:]) || h.Owner.Session == "" {
		return Header{}, nil, errJournal
	}
	return h, body, nil
}

// Leftover is unsaved work of a window that ended without saving or asking.
type Leftover struct {
	Header
	Data []byte
	Life Life // Ended, or Unknown for work from another machine
	name string
	sys  FS
}

// Discard removes it, after its work was restored or let go.
func (l *Leftover) Discard() error {
	name := strings.TrimSuffix(l.name, freshSuffix)
	return errors.Join(remove(l.sys, name), remove(l.sys, name+freshSuffix))
}

func remove(sys FS, name string) error {
	if err := sys.Remove(name); err != nil && !errors.Is(err, fs.ErrNotExist) {
		return err
	}
	return nil
}

// Leftovers finds the unsaved work that can be offered, newest first: journals
// in dir whose windows have ended, as seen from the machine host. Work that its
// file holds already is removed unasked. Journals that can't be read are set
// aside under another name, once. The error tells what could not be read; the
// rest is found all the same.
func Leftovers(sys FS, dir, host string) ([]*Leftover, error) {
	entries, err := sys.ReadDir(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, readError(dir, err)
	}
	newest := map[string]*Leftover{} // by session
	var failed error
	for _, e := range entries {
		name := filepath.Join(dir, e.Name())
		if !e.Type().IsRegular() || !strings.HasSuffix(strings.TrimSuffix(name, freshSuffix), journalSuffix) {
			continue
		}
		l, err := leftover(sys, name, host)
		failed = errors.Join(failed, err)
		if l == nil {
			continue
		}
		if was := newest[l.Owner.Session]; was == nil || l.Written.After(was.Written) {
			newest[l.Owner.Session] = l
		}
	}
	found := slices.Collect(maps.Values(newest))
	slices.SortFunc(found, func(a, b *Leftover) int {
		return cmp.Or(b.Written.Compare(a.Written), cmp.Compare(a.name, b.name))
	})
	return found, failed
}

// saved tells whether the work is in its file: the program ended after the save,
// before the journal was cleared.
func saved(sys FS, path string, body []byte) bool {
	if path == "" {
		return false
	}
	data, _, err := read(sys, path, maxCompare)
	return err == nil && bytes.Equal(data, body)
}

// leftover reads one journal; nil where it is still in use or not whole.
func leftover(sys FS, name, host string) (*Leftover, error) {
	data, _, err := read(sys, name, maxJournal)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil // its window has tidied up in between
	}
	if err != nil && !errors.Is(err, ErrTooLarge) {
		return nil, readError(name, err)
	}
	h, body, err := DecodeJournal(data)
	if err != nil {
		if strings.HasSuffix(name, freshSuffix) {
			return nil, nil // being written, or never finished
		}
		return nil, sys.Rename(name, name+".broken")
	}
	life := LifeOf(h.Owner, host)
	if life == Running {
		return nil, nil
	}
	if saved(sys, h.Path, body) {
		return nil, sys.Remove(name)
	}
	return &Leftover{Header: h, Data: body, Life: life, name: name, sys: sys}, nil
}
