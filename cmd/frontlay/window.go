//go:build cgo || ci

package main

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/app"

	"frontlay/assets"
	"frontlay/ui"
)

// hasWindow tells that this build has its window.
const hasWindow = true

// openWindow runs the window until it is closed. It needs a display.
func openWindow(o ui.Options) {
	a := app.NewWithID("io.frontlay.frontlay")
	a.SetIcon(fyne.NewStaticResource("icon.png", assets.IconPNG()))
	ui.Run(a, o)
}
