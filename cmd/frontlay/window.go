//go:build cgo || ci

package main

import (
	"fyne.io/fyne/v2/app"

	"frontlay/ui"
)

// hasWindow tells that this build has its window.
const hasWindow = true

// openWindow runs the window until it is closed. It needs a display.
func openWindow(o ui.Options) { ui.Run(app.NewWithID("io.frontlay.frontlay"), o) }
