//go:build unix

package store

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"runtime"
	"strings"
	"syscall"
)

// syncDir flushes a folder. File systems that can't (EINVAL, ENOTSUP) have
// nothing to flush.
func syncDir(name string) error {
	d, err := os.Open(name)
	if err != nil {
		return err
	}
	defer d.Close()
	if err := d.Sync(); err != nil && !errors.Is(err, syscall.EINVAL) && !errors.Is(err, syscall.ENOTSUP) {
		return err
	}
	return nil
}

// chownLike does nothing where the owner is the same already.
func chownLike(name string, like fs.FileInfo) error {
	info, err := os.Stat(name)
	if err != nil {
		return err
	}
	has, ok := info.Sys().(*syscall.Stat_t)
	wants, ok2 := like.Sys().(*syscall.Stat_t)
	if !ok || !ok2 || has.Uid == wants.Uid && has.Gid == wants.Gid {
		return nil
	}
	return os.Chown(name, int(wants.Uid), int(wants.Gid))
}

func full(err error) bool {
	return errors.Is(err, syscall.ENOSPC) || errors.Is(err, syscall.EDQUOT)
}

func readOnlySystem(err error) bool { return errors.Is(err, syscall.EROFS) }

// running tells whether there is a process of that number that still does
// something. Signal 0 only asks (kill(2)); no right to ask means that there is
// one. A process that has ended and that nobody has waited for yet is none, where
// the system tells.
func running(pid int) bool {
	if err := syscall.Kill(pid, 0); err != nil && !errors.Is(err, syscall.EPERM) {
		return false
	}
	fields := statOf(pid)
	return len(fields) == 0 || fields[0] != "Z" && fields[0] != "X"
}

// statOf gives the fields of proc(5) of Linux, /proc/pid/stat, from the third on,
// which is the state; none where they can't be known.
func statOf(pid int) []string {
	if runtime.GOOS != "linux" {
		return nil
	}
	stat, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid))
	if err != nil {
		return nil
	}
	// The second field is the program's name in brackets and can hold anything.
	return strings.Fields(string(stat[bytes.LastIndexByte(stat, ')')+1:]))
}

// born is the time at which a process began, in clock ticks since the machine
// started (field 22), with the machine's boot id; "" where it can't be known.
func born(pid int) string {
	const startTime = 22 - 3
	fields := statOf(pid)
	if len(fields) <= startTime {
		return ""
	}
	boot, err := os.ReadFile("/proc/sys/kernel/random/boot_id")
	if err != nil {
		return ""
	}
	return strings.TrimSpace(string(boot)) + " " + fields[startTime]
}
