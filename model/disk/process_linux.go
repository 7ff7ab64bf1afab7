package disk

import (
	"bytes"
	"fmt"
	"os"
	"strings"
)

// born is the time at which a process began, in clock ticks since the machine
// started, with the machine's boot id (proc(5): /proc/pid/stat field 22); ""
// where it can't be known.
func born(pid int) string {
	stat, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", pid))
	if err != nil {
		return ""
	}
	// The second field is the program's name in brackets and can hold anything.
	end := bytes.LastIndexByte(stat, ')')
	fields := strings.Fields(string(stat[end+1:]))
	const startTime = 22 - 3 // fields behind the name begin with the third
	if len(fields) <= startTime {
		return ""
	}
	boot, err := os.ReadFile("/proc/sys/kernel/random/boot_id")
	if err != nil {
		return ""
	}
	return strings.TrimSpace(string(boot)) + " " + fields[startTime]
}
