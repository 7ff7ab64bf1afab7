package field

import (
	"strings"

	"fyne.io/fyne/v2"
)

// HandOn gives keys that no field has a use for to the window: function keys
// work wherever the focus is. It is true where it did.
func HandOn(o fyne.CanvasObject, e *fyne.KeyEvent) bool {
	if len(e.Name) < 2 || !strings.HasPrefix(string(e.Name), "F") {
		return false
	}
	c := fyne.CurrentApp().Driver().CanvasForObject(o)
	if c == nil || c.OnTypedKey() == nil {
		return false
	}
	c.OnTypedKey()(e)
	return true
}
