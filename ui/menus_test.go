package ui

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/ui/command"
)

// The menu of what is selected opens by the keyboard alone.
func TestTheMenuOfWhatIsSelectedByKeys(t *testing.T) {
	w, _, _ := newWindow(t, "")
	held := fyne.KeyModifier(0)
	w.desk.Screen.Held = func() fyne.KeyModifier { return held }
	w.session.Select(w.face(2))
	for _, c := range []struct {
		key   fyne.KeyName
		held  fyne.KeyModifier
		opens bool
	}{{desktop.KeyMenu, 0, true}, {fyne.KeyF10, command.Shift, true}, {fyne.KeyF10, 0, false}} {
		held = c.held
		w.win.Canvas().Focus(w.desk.Screen)
		w.win.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: c.key})
		if opened := w.win.Canvas().Overlays().Top() != nil; opened != c.opens {
			t.Errorf("%s with %v: the menu is open: %v", c.key, c.held, opened)
		}
		w.closeOverlays()
	}
}
