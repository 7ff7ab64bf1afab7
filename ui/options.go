// Package ui is the window.
package ui

import (
	"frontlay/ui/page/printing"
	"frontlay/ui/work"
)

// What the computer does with pages.
type (
	Write         = printing.Write
	Printer       = printing.Printer
	PrintJob      = printing.Job
	KnownPrinters = printing.KnownPrinters
)

// Options are what the window needs from the world around it.
type Options struct {
	// Keeper opens, saves and keeps projects.
	Keeper *work.Keeper
	Write  Write
	// Printer, where it is given, prints without a PDF in between.
	Printer Printer
	// Known keeps what is known of printers; nil: nothing is.
	Known KnownPrinters
	// Export, where it is given, writes files for machines and other programs.
	Export Export
	// Open is the project to open; empty: the demo, or the start page.
	Open string
	// Demo opens the demo where no project is named.
	Demo bool
	// Reports are what earlier runs that ended in an unforeseen way left behind.
	Reports []Report
	// Date is today's date as it is to be printed.
	Date string
	// Exit, where it is given, ends the program after its last window was left
	// in good order, and where the system ends it. It is called in a goroutine of
	// its own.
	Exit func()
}

// Report tells of an earlier run that ended in an unforeseen way, without
// private things. Discard lets it go.
type Report struct {
	Text    string
	Discard func() error
}
