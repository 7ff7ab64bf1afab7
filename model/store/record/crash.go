// Package record writes what the user can send to who keeps the program: a log, and
// reports of runs that ended in an unforeseen way, without private names and paths.
// It never stands in the way of work.
//
// In the program's own folder:
//
//	SESSION.crash            what the runtime said when the program ended unforeseen
//	frontlay.log             the log (.before: the one before)
package record

import (
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"strings"
	"time"

	"frontlay/model/store"
)

const (
	crashSuffix = ".crash"
	// maxCrash bounds what is read of a report; a stack of many goroutines can be
	// long, and its head tells enough.
	maxCrash = 256 << 10
)

// CrashFile is where the runtime writes what it says of a panic that nobody
// recovers, in whatever goroutine, or of a fault of its own. The file holds one
// line about the program until then.
type CrashFile struct {
	name string
	file *os.File
}

type crashHead struct {
	About string      `json:"about"`
	Owner store.Owner `json:"owner"`
	Began time.Time   `json:"began"`
}

// WatchCrashes begins to watch for the whole program. dir is a folder of the
// program's own and is made where it is missing; about is the program's version.
// There is one CrashFile in a process.
func WatchCrashes(dir string, o store.Owner, about string) (*CrashFile, error) {
	if err := os.MkdirAll(dir, 0o700); err != nil {
		return nil, err
	}
	name := filepath.Join(dir, o.Session+crashSuffix)
	file, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_TRUNC|os.O_APPEND, 0o600)
	if err != nil {
		return nil, err
	}
	line, err := json.Marshal(crashHead{About: about + ", " + runtime.Version() + ", " + runtime.GOOS + "/" + runtime.GOARCH, Owner: o, Began: o.Since})
	if err == nil {
		_, err = file.Write(append(line, '\n'))
	}
	if err == nil {
		err = debug.SetCrashOutput(file, debug.CrashOptions{})
	}
	if err != nil {
		return nil, errors.Join(err, file.Close())
	}
	return &CrashFile{name, file}, nil
}

// Record writes what a recovered panic said, for a program that goes on or ends
// in good order.
func (c *CrashFile) Record(panicked any, stack []byte) error {
	_, err := fmt.Fprintf(c.file, "panic: %v [recovered]\n\n%s\n", panicked, stack)
	return errors.Join(err, c.file.Sync())
}

// Close ends the watch in good order. Where nothing happened, nothing is left.
func (c *CrashFile) Close() error {
	err := errors.Join(debug.SetCrashOutput(nil, debug.CrashOptions{}), c.file.Close())
	data, readErr := head(store.OS{}, c.name, maxCrash)
	if _, said := splitCrash(data); readErr == nil && said == "" {
		return errors.Join(err, os.Remove(c.name))
	}
	return err
}

// Crash is what a run of the program left when it ended in an unforeseen
// way.
type Crash struct {
	Text string // may be sent as it is: private things are taken out
	name string
	sys  store.FS
}

// Discard removes the report, after the user has seen it.
func (r *Crash) Discard() error { return gone(r.sys.Remove(r.name)) }

// Crashes finds the reports of runs that have ended, as seen from the
// machine host. Runs that were merely killed leave none; their files are
// removed.
func Crashes(sys store.FS, dir, host string, s Scrubber) ([]*Crash, error) {
	entries, err := sys.ReadDir(dir)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	var found []*Crash
	var failed error
	for _, e := range entries {
		name := filepath.Join(dir, e.Name())
		if !e.Type().IsRegular() || !strings.HasSuffix(name, crashSuffix) {
			continue
		}
		data, err := head(sys, name, maxCrash)
		if err != nil {
			failed = errors.Join(failed, err)
			continue
		}
		h, said := splitCrash(data)
		switch {
		case said == "" && store.LifeOf(h.Owner, host) == store.Running:
		case said == "":
			failed = errors.Join(failed, gone(sys.Remove(name)))
		default:
			text := fmt.Sprintf("frontlay ended in an unforeseen way.\n%s\nbegan %s\n\n%s\n", h.About, h.Began.UTC().Format(time.RFC3339), said)
			found = append(found, &Crash{Text: s.Scrub(text), name: name, sys: sys})
		}
	}
	return found, failed
}

// splitCrash parts the line about the program from what was said; "" is said
// where nothing happened.
func splitCrash(data []byte) (crashHead, string) {
	var h crashHead
	first, rest, _ := strings.Cut(string(data), "\n")
	if json.Unmarshal([]byte(first), &h) != nil {
		return crashHead{}, strings.TrimSpace(string(data))
	}
	return h, strings.TrimSpace(rest)
}

// head reads at most limit bytes from the beginning of a file.
func head(sys store.FS, path string, limit int64) ([]byte, error) {
	f, err := sys.OpenFile(path, os.O_RDONLY, 0)
	if err != nil {
		return nil, err
	}
	defer f.Close()
	data, err := io.ReadAll(io.LimitReader(f, limit))
	if err != nil {
		return nil, err
	}
	return data, nil
}

// gone is the error of a removal; that nothing was there is none.
func gone(err error) error {
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	return err
}
