package work

import (
	"io"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"
	"time"

	"frontlay/model/store"
)

// memory is a file system without a disk: names are paths from the root, folders are
// there by themselves. Each kind of step can be made to fail.
type memory struct {
	files map[string]*content
	fails map[string]error // by step: read, write, rename, remove
	tick  time.Time
}

// content is a file under all its names.
type content struct {
	data []byte
	mode fs.FileMode
	time time.Time
}

func newMemory() *memory {
	return &memory{files: map[string]*content{}, fails: map[string]error{}, tick: time.Unix(1_700_000_000, 0)}
}

// put is another program that writes a file.
func (m *memory) put(name, text string) {
	m.tick = m.tick.Add(time.Second)
	m.files[name] = &content{[]byte(text), 0o644, m.tick}
}

func (m *memory) text(name string) string {
	if c := m.files[name]; c != nil {
		return string(c.data)
	}
	return ""
}

// names are the files in a folder.
func (m *memory) names(folder string) []string {
	var all []string
	for _, name := range slices.Sorted(maps.Keys(m.files)) {
		if filepath.Dir(name) == folder {
			all = append(all, filepath.Base(name))
		}
	}
	return all
}

func (m *memory) failed(step, name string) error {
	if err := m.fails[step]; err != nil {
		return &fs.PathError{Op: step, Path: name, Err: err}
	}
	return nil
}

func (m *memory) OpenFile(name string, flag int, mode fs.FileMode) (store.File, error) {
	step := "read"
	if flag&(os.O_WRONLY|os.O_RDWR) != 0 {
		step = "write"
	}
	if err := m.failed(step, name); err != nil {
		return nil, err
	}
	c := m.files[name]
	switch {
	case c == nil && flag&os.O_CREATE == 0:
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
	case c != nil && flag&os.O_EXCL != 0:
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrExist}
	case c == nil:
		m.tick = m.tick.Add(time.Second)
		c = &content{nil, mode, m.tick}
		m.files[name] = c
	}
	if flag&os.O_TRUNC != 0 {
		c.data = nil
	}
	return &openFile{strings.NewReader(string(c.data)), c, name}, nil
}

func (m *memory) Stat(name string) (fs.FileInfo, error) {
	if c := m.files[name]; c != nil {
		return info{c, name}, nil
	}
	if err := m.failed("stat", name); err != nil {
		return nil, err
	}
	return nil, &fs.PathError{Op: "stat", Path: name, Err: fs.ErrNotExist}
}

func (m *memory) Lstat(name string) (fs.FileInfo, error) { return m.Stat(name) }

func (m *memory) EvalSymlinks(name string) (string, error) {
	_, err := m.Stat(name)
	return name, err
}

func (m *memory) ReadDir(name string) ([]fs.DirEntry, error) {
	var all []fs.DirEntry
	for _, n := range m.names(name) {
		all = append(all, fs.FileInfoToDirEntry(info{m.files[filepath.Join(name, n)], n}))
	}
	return all, m.failed("read", name)
}

func (m *memory) MkdirAll(string, fs.FileMode) error  { return nil }
func (m *memory) Chmod(string, fs.FileMode) error     { return nil }
func (m *memory) ChownLike(string, fs.FileInfo) error { return nil }
func (m *memory) SyncDir(string) error                { return nil }
func (m *memory) Rename(from, to string) error        { return m.name("rename", from, to, true) }
func (m *memory) Link(from, to string) error          { return m.name("link", from, to, false) }

// name gives a file another name, or one more.
func (m *memory) name(step, from, to string, move bool) error {
	c := m.files[from]
	switch err := m.failed(step, to); {
	case err != nil:
		return err
	case c == nil:
		return &fs.PathError{Op: step, Path: from, Err: fs.ErrNotExist}
	case !move && m.files[to] != nil:
		return &fs.PathError{Op: step, Path: to, Err: fs.ErrExist}
	}
	m.files[to] = c
	if move && from != to {
		delete(m.files, from)
	}
	return nil
}

func (m *memory) Remove(name string) error {
	if err := m.failed("remove", name); err != nil {
		return err
	}
	if m.files[name] == nil {
		return &fs.PathError{Op: "remove", Path: name, Err: fs.ErrNotExist}
	}
	delete(m.files, name)
	return nil
}

// openFile is an open file.
type openFile struct {
	io.Reader
	c    *content
	name string
}

func (o *openFile) Write(p []byte) (int, error) {
	o.c.data = append(o.c.data, p...)
	return len(p), nil
}
func (o *openFile) Close() error               { return nil }
func (o *openFile) Sync() error                { return nil }
func (o *openFile) Stat() (fs.FileInfo, error) { return info{o.c, o.name}, nil }

type info struct {
	c    *content
	name string
}

func (i info) Name() string       { return filepath.Base(i.name) }
func (i info) Size() int64        { return int64(len(i.c.data)) }
func (i info) Mode() fs.FileMode  { return i.c.mode }
func (i info) ModTime() time.Time { return i.c.time }
func (i info) IsDir() bool        { return false }
func (i info) Sys() any           { return nil }

const (
	errFull   = syscall.ENOSPC
	errClosed = syscall.EACCES
)
