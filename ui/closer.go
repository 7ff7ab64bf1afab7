package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/field"
)

// closer is the button of a dialog that is only to be read: Enter and Esc close
// it, and the keys that move through a text move what it shows.
type closer struct {
	field.Button
	close  func()
	scroll *container.Scroll // nil: nothing to move
}

func newCloser(label string, hide func(), scroll *container.Scroll) *closer {
	c := &closer{close: hide, scroll: scroll}
	c.ExtendBaseWidget(c)
	c.Text, c.OnTapped = label, hide
	return c
}

// TypedKey closes the dialog or moves its text.
func (c *closer) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyEscape {
		c.close()
		return
	}
	if c.scroll == nil || !field.Move(c.scroll, e.Name) {
		c.Button.TypedKey(e)
	}
}

// focusCloser gives the focus to the closer in a dialog, if there is one.
func focusCloser(c fyne.Canvas, o fyne.CanvasObject) bool {
	switch v := o.(type) {
	case *closer:
		c.Focus(v)
		return true
	case *widget.PopUp:
		return focusCloser(c, v.Content)
	case *fyne.Container:
		for _, one := range v.Objects {
			if focusCloser(c, one) {
				return true
			}
		}
	}
	return false
}
