package store

import (
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// FS is what this package needs of a file system. Names are paths of the
// operating system. Errors are as those of package os.
type FS interface {
	// OpenFile is as os.OpenFile.
	OpenFile(name string, flag int, perm fs.FileMode) (File, error)
	// Stat follows links; Lstat does not.
	Stat(name string) (fs.FileInfo, error)
	Lstat(name string) (fs.FileInfo, error)
	// EvalSymlinks gives the path without links.
	EvalSymlinks(name string) (string, error)
	ReadDir(name string) ([]fs.DirEntry, error)
	MkdirAll(name string, perm fs.FileMode) error
	Chmod(name string, mode fs.FileMode) error
	// ChownLike gives a file the owner and group of another, where the user may.
	ChownLike(name string, like fs.FileInfo) error
	// Link makes a second name for a file, where the file system can.
	Link(oldName, newName string) error
	// Rename replaces newName at once where it exists.
	Rename(oldName, newName string) error
	Remove(name string) error
	// SyncDir makes the entries of a folder durable.
	SyncDir(name string) error
}

// File is an open file.
type File interface {
	io.ReadWriteCloser
	Sync() error
	Stat() (fs.FileInfo, error)
}

// OS is the file system of the machine.
type OS struct{}

// OpenFile opens a file.
func (OS) OpenFile(name string, flag int, perm fs.FileMode) (File, error) {
	f, err := os.OpenFile(name, flag, perm)
	if err != nil {
		return nil, err
	}
	return f, nil
}

// Stat follows links.
func (OS) Stat(name string) (fs.FileInfo, error) { return os.Stat(name) }

// Lstat does not follow links.
func (OS) Lstat(name string) (fs.FileInfo, error) { return os.Lstat(name) }

// EvalSymlinks gives the path without links.
func (OS) EvalSymlinks(name string) (string, error) { return filepath.EvalSymlinks(name) }

// ReadDir lists a folder, in order of names.
func (OS) ReadDir(name string) ([]fs.DirEntry, error) { return os.ReadDir(name) }

// MkdirAll makes a folder and those above it.
func (OS) MkdirAll(name string, perm fs.FileMode) error { return os.MkdirAll(name, perm) }

// Chmod sets permissions.
func (OS) Chmod(name string, mode fs.FileMode) error { return os.Chmod(name, mode) }

// ChownLike gives a file the owner and group of another.
func (OS) ChownLike(name string, like fs.FileInfo) error { return chownLike(name, like) }

// Link makes a second name for a file.
func (OS) Link(oldName, newName string) error { return os.Link(oldName, newName) }

// Rename replaces newName at once.
func (OS) Rename(oldName, newName string) error { return os.Rename(oldName, newName) }

// Remove removes a file.
func (OS) Remove(name string) error { return os.Remove(name) }

// SyncDir makes the entries of a folder durable.
func (OS) SyncDir(name string) error { return syncDir(name) }
