//go:build cgo || ci

package main

import (
	"os"
	"runtime"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"frontlay/ui"
)

// hasWindow tells that this build has its window.
const hasWindow = true

// openWindow runs the window until it is closed. It needs a display.
func openWindow(o ui.Options) { ui.Run(newApp(), o) }

// newApp makes the application, light where the desktop says nothing: Fyne 2.7.4
// takes a silent desktop other than Windows and macOS for a dark one. What such a
// desktop says reaches Fyne later and takes the place of this.
func newApp() fyne.App {
	const env = "FYNE_THEME"
	_, said := os.LookupEnv(env)
	_, err := os.Stat((&app.SettingsSchema{}).StoragePath()) // what the person set for all programs of Fyne
	if said || err == nil || runtime.GOOS == "windows" || runtime.GOOS == "darwin" {
		return app.NewWithID(id)
	}
	if os.Setenv(env, "light") == nil {
		defer func() { _ = os.Unsetenv(env) }() // programs that this one starts decide for themselves
	}
	return app.NewWithID(id)
}

const id = "io.frontlay.frontlay"
