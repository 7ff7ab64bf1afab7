package record

import (
	"context"
	"fmt"
	"io"
	"log/slog"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"time"

	"frontlay/model/store"
)

// maxLog is how large the log grows before it begins anew; the one before is
// kept beside it.
const maxLog = 512 << 10

// Log is a log file that the user can send: private things are taken out of
// every line. It never stands in the way of work: what can't be written is lost.
type Log struct {
	sys   store.FS
	name  string
	scrub Scrubber
	now   func() time.Time
	also  io.Writer

	mu   sync.Mutex
	file store.File
	size int64
}

// LogName is the path of the log in a folder.
func LogName(dir string) string { return filepath.Join(dir, "frontlay.log") }

// NewLog opens the log in dir, a folder of the program's own. also is written
// too, such as standard error when the user asks for it; it may be nil.
func NewLog(sys store.FS, dir string, s Scrubber, now func() time.Time, also io.Writer) *Log {
	l := &Log{sys: sys, name: LogName(dir), scrub: s, now: now, also: also}
	if sys.MkdirAll(dir, 0o700) == nil {
		l.open()
	}
	return l
}

// Logger gives a logger that writes to the log, from level on.
func (l *Log) Logger(level slog.Level) *slog.Logger { return slog.New(&handler{log: l, level: level}) }

// Close ends the log.
func (l *Log) Close() error {
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.file == nil {
		return nil
	}
	err := l.file.Close()
	l.file = nil
	return err
}

func (l *Log) open() {
	file, err := l.sys.OpenFile(l.name, os.O_WRONLY|os.O_CREATE|os.O_APPEND, 0o600)
	if err != nil {
		return
	}
	l.file, l.size = file, 0
	if info, err := file.Stat(); err == nil {
		l.size = info.Size()
	}
}

func (l *Log) write(line string) {
	line = l.scrub.Scrub(strings.ReplaceAll(line, "\n", "\\n")) + "\n"
	l.mu.Lock()
	defer l.mu.Unlock()
	if l.also != nil {
		_, _ = io.WriteString(l.also, line) // nothing to do about it
	}
	if l.file != nil && l.size+int64(len(line)) > maxLog {
		_ = l.file.Close()
		l.file = nil
		if l.sys.Rename(l.name, l.name+".before") == nil {
			l.open()
		}
	}
	if l.file == nil {
		return
	}
	n, _ := io.WriteString(l.file, line)
	l.size += int64(n)
}

// handler writes one line a record: time, level, message, key=value.
type handler struct {
	log   *Log
	level slog.Level
	begun string // attributes given before, written out
	group string
}

// Enabled tells whether the level is logged.
func (h *handler) Enabled(_ context.Context, level slog.Level) bool { return level >= h.level }

// Handle writes a record.
func (h *handler) Handle(_ context.Context, r slog.Record) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s %s %s%s", h.log.now().UTC().Format(time.RFC3339), r.Level, r.Message, h.begun)
	r.Attrs(func(a slog.Attr) bool {
		b.WriteString(h.text(a))
		return true
	})
	h.log.write(b.String())
	return nil
}

func (h *handler) text(a slog.Attr) string {
	return fmt.Sprintf(" %s%s=%q", h.group, a.Key, a.Value.Resolve().String())
}

// WithAttrs gives a handler that writes the attributes in every line.
func (h *handler) WithAttrs(attrs []slog.Attr) slog.Handler {
	c := *h
	for _, a := range attrs {
		c.begun += h.text(a)
	}
	return &c
}

// WithGroup gives a handler that writes the name before every key.
func (h *handler) WithGroup(name string) slog.Handler {
	c := *h
	c.group += name + "."
	return &c
}
