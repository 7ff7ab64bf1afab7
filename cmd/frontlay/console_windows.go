package main

import (
	"syscall"
	"unsafe"
)

// leaveConsole gives up a console that Windows made for this process alone, as it does
// before version 24H2 of Windows 11 where the program is not started from one: it would
// stand behind the window. The console of who typed the command stays.
func leaveConsole() {
	kernel := syscall.NewLazyDLL("kernel32.dll")
	var processes [2]uint32
	n, _, _ := kernel.NewProc("GetConsoleProcessList").Call(uintptr(unsafe.Pointer(&processes[0])), uintptr(len(processes)))
	if n == 1 {
		// Where it does not go it only stands there.
		_, _, _ = kernel.NewProc("FreeConsole").Call()
	}
}
