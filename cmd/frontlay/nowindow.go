//go:build !cgo && !ci

package main

import "frontlay/ui"

// hasWindow tells that this build has no window: Fyne's needs cgo.
const hasWindow = false

// openWindow is never called in this build.
func openWindow(ui.Options) {}
