//go:build !unix

package disk

import (
	"errors"
	"syscall"
)

// The codes of Windows: ERROR_HANDLE_DISK_FULL, ERROR_DISK_FULL and
// ERROR_WRITE_PROTECT ("System Error Codes", Microsoft Learn; from memory).
const (
	handleDiskFull syscall.Errno = 39
	diskFull       syscall.Errno = 112
	writeProtect   syscall.Errno = 19
)

func full(err error) bool { return errors.Is(err, handleDiskFull) || errors.Is(err, diskFull) }

func readOnlySystem(err error) bool { return errors.Is(err, writeProtect) }
