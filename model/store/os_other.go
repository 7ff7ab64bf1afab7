//go:build !unix

package store

import (
	"errors"
	"io/fs"
	"os"
	"syscall"
)

// syncDir does nothing where folders can't be flushed.
func syncDir(string) error { return nil }

// chownLike does nothing: a new file has its folder's rights.
func chownLike(string, fs.FileInfo) error { return nil }

// The codes of Windows: ERROR_HANDLE_DISK_FULL, ERROR_DISK_FULL and
// ERROR_WRITE_PROTECT ("System Error Codes", Microsoft Learn; from memory).
const (
	handleDiskFull syscall.Errno = 39
	diskFull       syscall.Errno = 112
	writeProtect   syscall.Errno = 19
)

func full(err error) bool { return errors.Is(err, handleDiskFull) || errors.Is(err, diskFull) }

func readOnlySystem(err error) bool { return errors.Is(err, writeProtect) }

// running tells whether there is a process of that number, which Windows says
// when it is opened.
func running(pid int) bool {
	p, err := os.FindProcess(pid)
	if err != nil {
		return false
	}
	return p.Release() == nil
}

// born can't be known here.
func born(int) string { return "" }
