package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/assets"
	"frontlay/ui/look"
)

// Run opens the window and returns when it is closed. The application must be a
// new one.
func Run(a fyne.App, o Options) { first(a, o).win.ShowAndRun() }

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

// Names of the settings that are kept.
const (
	prefLook   = "look"
	prefLarge  = "large text"
	prefRecent = "recent files"
	prefFolder = "folder"
	prefHints  = "hints shown"
	prefUnit   = "unit"
	prefWidth  = "window width"
	prefHeight = "window height"
)
