package disk

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"strings"
	"syscall"
)

// running tells whether there is a process of that number that still does
// something. Signal 0 only asks (kill(2)); no right to ask means that there is
// one. A process that has ended and that nobody has waited for yet is none.
func running(pid int) bool {
	if err := syscall.Kill(pid, 0); err != nil && !errors.Is(err, syscall.EPERM) {
		return false
	}
	fields := statOf(pid)
	return len(fields) == 0 || fields[0] != "Z" && fields[0] != "X"
}

// statOf gives the fields of proc(5), /proc/pid/stat, from the third on, which
// is the state; none where they can't be known.
func statOf(pid int) []string {
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
