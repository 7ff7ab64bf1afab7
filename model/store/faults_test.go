package store_test

import (
	"io/fs"
	"strings"
	"syscall"

	"frontlay/model/store"
)

// faulty is a file system whose steps can be made to fail. fail is asked before
// each step, which is told with its place in the order of all steps.
type faulty struct {
	store.OS
	steps []string
	fail  func(n int, step string) error
	room  int64 // bytes that can still be written; below 0: any number
}

func sound() *faulty { return &faulty{fail: func(int, string) error { return nil }, room: -1} }

func (f *faulty) step(what, name string) error {
	f.steps = append(f.steps, what+" "+name)
	return f.fail(len(f.steps)-1, what)
}

func (f *faulty) did(what string) int {
	n := 0
	for _, s := range f.steps {
		if strings.HasPrefix(s, what+" ") {
			n++
		}
	}
	return n
}

func (f *faulty) OpenFile(name string, flag int, perm fs.FileMode) (store.File, error) {
	if err := f.step("open", name); err != nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: err}
	}
	file, err := f.OS.OpenFile(name, flag, perm)
	if err != nil {
		return nil, err
	}
	return &faultyFile{file, f, name}, nil
}

func (f *faulty) Stat(name string) (fs.FileInfo, error) {
	if err := f.step("stat", name); err != nil {
		return nil, &fs.PathError{Op: "stat", Path: name, Err: err}
	}
	return f.OS.Stat(name)
}

func (f *faulty) Chmod(name string, mode fs.FileMode) error {
	if err := f.step("chmod", name); err != nil {
		return &fs.PathError{Op: "chmod", Path: name, Err: err}
	}
	return f.OS.Chmod(name, mode)
}

func (f *faulty) Link(oldName, newName string) error {
	if err := f.step("link", newName); err != nil {
		return &fs.PathError{Op: "link", Path: newName, Err: err}
	}
	return f.OS.Link(oldName, newName)
}

func (f *faulty) Rename(oldName, newName string) error {
	if err := f.step("rename", newName); err != nil {
		return &fs.PathError{Op: "rename", Path: newName, Err: err}
	}
	return f.OS.Rename(oldName, newName)
}

func (f *faulty) Remove(name string) error {
	if err := f.step("remove", name); err != nil {
		return &fs.PathError{Op: "remove", Path: name, Err: err}
	}
	return f.OS.Remove(name)
}

func (f *faulty) SyncDir(name string) error {
	if err := f.step("syncdir", name); err != nil {
		return &fs.PathError{Op: "sync", Path: name, Err: err}
	}
	return f.OS.SyncDir(name)
}

type faultyFile struct {
	store.File
	sys  *faulty
	name string
}

// Write writes half of what fails, as a full disk does.
func (f *faultyFile) Write(p []byte) (int, error) {
	if err := f.sys.step("write", f.name); err != nil {
		n, _ := f.File.Write(p[:len(p)/2])
		return n, &fs.PathError{Op: "write", Path: f.name, Err: err}
	}
	if room := f.sys.room; room >= 0 && int64(len(p)) > room {
		n, _ := f.File.Write(p[:room])
		f.sys.room = 0
		return n, &fs.PathError{Op: "write", Path: f.name, Err: syscall.ENOSPC}
	}
	if f.sys.room >= 0 {
		f.sys.room -= int64(len(p))
	}
	return f.File.Write(p)
}

func (f *faultyFile) Read(p []byte) (int, error) {
	if err := f.sys.step("read", f.name); err != nil {
		return 0, &fs.PathError{Op: "read", Path: f.name, Err: err}
	}
	return f.File.Read(p)
}

func (f *faultyFile) Sync() error {
	if err := f.sys.step("sync", f.name); err != nil {
		return &fs.PathError{Op: "sync", Path: f.name, Err: err}
	}
	return f.File.Sync()
}

func (f *faultyFile) Close() error {
	err := f.File.Close()
	if failed := f.sys.step("close", f.name); failed != nil {
		return &fs.PathError{Op: "close", Path: f.name, Err: failed}
	}
	return err
}
