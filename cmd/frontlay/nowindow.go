//go:build !cgo && !ci

package main

import "fmt"

// runWindow says that this build has no window.
func runWindow(args []string, c console) int {
	fmt.Fprintln(c.err, "This frontlay was built without its window (cgo was off). The commands work: see frontlay --help.")
	return exitFailed
}
