package store

import (
	"encoding/json"
	"errors"
	"io/fs"
	"os"
	"os/user"
	"path/filepath"
	"time"

	"frontlay/model/message"
)

// Held is the error of Acquire where somebody else has the file open.
type Held struct {
	Path  string
	Owner Owner // zero where the lock can't be read
	Life  Life  // Running or Unknown; ended owners are taken over
}

// Error tells who has it.
func (h *Held) Error() string { return h.Say(message.Language{}) }

// Say is Error in another language.
func (h *Held) Say(l message.Language) string { return l.Say(h.told()) }

// As lets errors.As find a message.Message in the error.
func (h *Held) As(target any) bool { return asMessage(target, h.told()) }

func (h *Held) told() message.Message {
	o := h.Owner
	since := o.Since.Local().Format("2006-01-02 15:04")
	switch {
	case o.Session == "":
		return message.New("%v seems to be open somewhere else; its lock can't be read", h.Path)
	case h.Life == Running:
		return message.New("%v is open in another window since %v", h.Path, since)
	default:
		return message.New("%v is open on the computer %v by %v since %v, or was when that computer stopped", h.Path, o.Host, o.User, since)
	}
}

// Lock is the right to write a file, among the windows and machines that ask
// for it. It is a small file beside the one it locks.
type Lock struct {
	sys  FS
	name string
	me   Owner
}

// LockName is the path of the lock of a file. The file's links are resolved
// first, so that a file has one lock under all its names.
func LockName(target string) string {
	return filepath.Join(filepath.Dir(target), "."+fitting(filepath.Base(target))+".lock")
}

const (
	maxLock   = 64 << 10
	lockTries = 20
)

// Acquire takes the lock of a file, which need not be there yet. A lock left by
// a program on this machine that has ended is taken over. The error is *Held
// where another has it, *Error where no lock can be made; a folder that may not
// be written is such a case, and can be read without a lock.
func Acquire(sys FS, path string, me Owner) (*Lock, error) {
	target, err := follow(sys, path)
	if err != nil {
		return nil, lockError(path, err)
	}
	l := &Lock{sys: sys, name: LockName(target), me: me}
	for range lockTries {
		err = l.create()
		if err == nil {
			return l, nil
		}
		if !errors.Is(err, fs.ErrExist) {
			return nil, lockError(path, err)
		}
		owner, raw, err := l.read()
		if errors.Is(err, fs.ErrNotExist) {
			continue // released in between
		}
		if err != nil {
			return nil, &Held{Path: path}
		}
		life := LifeOf(owner, me.Host)
		if life != Ended {
			return nil, &Held{Path: path, Owner: owner, Life: life}
		}
		if err := l.takeAway(raw); err != nil {
			return nil, lockError(path, err)
		}
	}
	return nil, &Held{Path: path}
}

// Steal takes the lock whoever has it, after the user has said so. The other
// will notice by Mine.
func Steal(sys FS, path string, me Owner) (*Lock, error) {
	target, err := follow(sys, path)
	if err != nil {
		return nil, lockError(path, err)
	}
	l := &Lock{sys: sys, name: LockName(target), me: me}
	if err := ifThere(sys.Remove(l.name)); err != nil {
		return nil, lockError(path, err)
	}
	return Acquire(sys, path, me)
}

// Mine tells whether the lock has not been stolen.
func (l *Lock) Mine() bool {
	owner, _, err := l.read()
	return err == nil && owner.same(l.me)
}

// Release gives the lock back; one that was stolen is left alone.
func (l *Lock) Release() error {
	if !l.Mine() {
		return nil
	}
	return ifThere(l.sys.Remove(l.name))
}

// create makes the lock with its content at once, so that nobody sees half of
// it: written under a name of this window's, then given the lock's name, which
// fails where that is taken.
func (l *Lock) create() error {
	data, err := json.Marshal(l.me)
	if err != nil {
		return err
	}
	if _, err := l.sys.Lstat(l.name); err == nil {
		return fs.ErrExist
	}
	temp, err := writeBeside(l.sys, l.name, data, nil)
	if err != nil {
		return err
	}
	err = l.sys.Link(temp, l.name)
	if gone := l.sys.Remove(temp); err == nil || errors.Is(err, fs.ErrExist) {
		return errors.Join(err, gone)
	}
	// No second names here: make the file and fill it.
	f, err := l.sys.OpenFile(l.name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, 0o644)
	if err != nil {
		return err
	}
	if err := fill(f, data); err != nil {
		return errors.Join(err, l.sys.Remove(l.name))
	}
	return nil
}

func (l *Lock) read() (Owner, []byte, error) {
	data, _, err := read(l.sys, l.name, maxLock)
	if err != nil {
		return Owner{}, nil, err
	}
	var o Owner
	if err := json.Unmarshal(data, &o); err != nil || o.Session == "" {
		return Owner{}, nil, errors.Join(err, errors.New("the lock can't be read"))
	}
	return o, data, nil
}

// takeAway removes a lock whose owner has ended. Several programs may want to at
// the same time, and one may already have made a lock of its own: only who holds
// the right to take over may remove it, and looks once more with that in hand.
func (l *Lock) takeAway(stale []byte) error {
	right := &Lock{sys: l.sys, name: l.name + ".over", me: l.me}
	if err := right.create(); errors.Is(err, fs.ErrExist) {
		if owner, _, err := right.read(); err == nil && LifeOf(owner, l.me.Host) == Ended {
			return ifThere(l.sys.Remove(right.name)) // ended in the middle of it
		}
		time.Sleep(time.Millisecond)
		return nil
	} else if err != nil {
		return err
	}
	var gone error
	if _, now, err := l.read(); err == nil && string(now) == string(stale) {
		gone = ifThere(l.sys.Remove(l.name))
	}
	return errors.Join(gone, ifThere(l.sys.Remove(right.name)))
}

// ifThere lets pass that a file is not there.
func ifThere(err error) error {
	if errors.Is(err, fs.ErrNotExist) {
		return nil
	}
	return err
}

func lockError(path string, err error) error {
	e := &Error{Err: err, Message: message.New("%v can't be locked against other programs: %v", path, reason(err)),
		Advice: message.New("it can be looked at; save in another place")}
	if errors.Is(err, fs.ErrPermission) || readOnlySystem(err) {
		e.Message = message.New("the folder of %v may not be written", path)
	}
	return e
}

// Owner tells who holds a lock or wrote a journal: one window of one run of the
// program. Born tells two processes with the same number apart, where the
// system says when a process began; it is compared, never shown.
type Owner struct {
	Session string    `json:"session"` // unlike any other window's, on any machine
	User    string    `json:"user"`
	Host    string    `json:"host"`
	PID     int       `json:"pid"`
	Born    string    `json:"born,omitempty"`
	Since   time.Time `json:"since"`
}

// ThisProcess is the Owner for a window of this run of the program.
func ThisProcess(session string, now time.Time) Owner {
	o := Owner{Session: session, PID: os.Getpid(), Since: now.UTC().Truncate(time.Second)}
	o.Host, _ = os.Hostname() // empty where it is not known: then no other owner is taken to be here
	if u, err := user.Current(); err == nil {
		o.User = u.Username
	}
	o.Born = born(o.PID)
	return o
}

// same tells whether two owners are the same window.
func (o Owner) same(p Owner) bool {
	return o.Session == p.Session && o.Host == p.Host && o.PID == p.PID && o.Born == p.Born
}

// Life is what can be known of an owner.
type Life uint8

// What can be known: nothing, as on another machine; that it runs; that it has
// ended without tidying up.
const (
	Unknown Life = iota
	Running
	Ended
)

// LifeOf tells whether an owner still runs, as seen from the machine host.
func LifeOf(o Owner, host string) Life {
	switch {
	case o.Host == "" || o.Host != host || o.PID <= 0:
		return Unknown
	case !running(o.PID):
		return Ended
	case o.Born != "" && born(o.PID) != "" && o.Born != born(o.PID):
		return Ended // its number has been given to another process
	default:
		return Running
	}
}
