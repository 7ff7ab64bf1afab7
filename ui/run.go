// Package ui is the window.
package ui

import (
	"time"

	"fyne.io/fyne/v2"

	"frontlay/assets"
	"frontlay/ui/look"
	"frontlay/ui/page/exporting"
	"frontlay/ui/page/help"
	"frontlay/ui/page/printing"
	"frontlay/ui/work"
)

// Run opens the window and returns when it is closed. The application must be a
// new one.
func Run(a fyne.App, o Options) {
	first(a, o).show()
	a.Run()
}

// first makes the first window of an application.
func first(a fyne.App, o Options) *window {
	th := &look.Theme{Mode: look.Mode(a.Preferences().Int(prefLook)), Large: a.Preferences().Bool(prefLarge)}
	a.SetIcon(fyne.NewStaticResource("icon.png", assets.IconPNG()))
	a.Settings().SetTheme(th)
	w := open(a, th, o)
	a.Lifecycle().SetOnStarted(w.begin)
	if o.Exit != nil {
		// Where the system ends the program, as at logging out. Fyne 2.7.4 would
		// then write its settings and read them at once, half written, with an
		// error on the terminal.
		a.Lifecycle().SetOnStopped(o.Exit)
	}
	return w
}

// open makes the first window of a group.
func open(a fyne.App, th *look.Theme, o Options) *window { return openIn(newGroup(a, th), o) }

// Names of the settings that are kept.
const (
	prefLook     = "look"
	prefLarge    = "large text"
	prefLanguage = "language" // empty: the desktop's
	prefUnit     = "unit"
	prefWidth    = "window width"
	prefHeight   = "window height"
)

const (
	// mostPictures is how many recent projects the start page shows.
	mostPictures = 4
	// keepSettings is how long Fyne may take to write settings that were changed
	// last; it does so a tenth of a second later.
	keepSettings = 400 * time.Millisecond
)

// What the window needs is said where it is used.
type (
	Write         = printing.Write
	Printer       = printing.Printer
	PrintJob      = printing.Job
	KnownPrinters = printing.KnownPrinters
	Report        = help.Report
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
	Export exporting.Write
	// Pack, where it is given, writes a whole job as one file.
	Pack Pack
	// Open is the project to open; empty: the example, or the start page.
	Open string
	// Example is the one to open where no project is named; empty: none.
	Example string
	// Reports are what earlier runs that ended in an unforeseen way left behind.
	Reports []Report
	// Version is that of the program.
	Version string
	// Date gives the date and time as they are to be printed.
	Date func() string
	// Exit, where it is given, ends the program after its last window was left
	// in good order, and where the system ends it. It is called in a goroutine of
	// its own.
	Exit func()
}
