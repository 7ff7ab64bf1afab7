//go:build !windows

package main

// leaveConsole is for Windows, where a console can be the program's own.
func leaveConsole() {}
