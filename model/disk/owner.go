package disk

import (
	"os"
	"os/user"
	"time"
)

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
