//go:build !unix

package disk

import "os"

// running tells whether there is a process of that number, which Windows says
// when it is opened.
func running(pid int) bool {
	p, err := os.FindProcess(pid)
	if err != nil {
		return false
	}
	return p.Release() == nil
}
