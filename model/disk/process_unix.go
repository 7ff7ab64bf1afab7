//go:build unix && !linux

package disk

import (
	"errors"
	"syscall"
)

// running tells whether there is a process of that number. Signal 0 only asks
// (kill(2)); no right to ask means that there is one.
func running(pid int) bool {
	err := syscall.Kill(pid, 0)
	return err == nil || errors.Is(err, syscall.EPERM)
}
