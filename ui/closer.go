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
	if c.scroll == nil || !c.move(e.Name) {
		c.Button.TypedKey(e)
	}
}

// move scrolls; it is false for keys that do not.
func (c *closer) move(key fyne.KeyName) bool {
	const line = 40
	page := c.scroll.Size().Height - line
	to := c.scroll.Offset
	switch key {
	case fyne.KeyDown:
		to.Y += line
	case fyne.KeyUp:
		to.Y -= line
	case fyne.KeyPageDown:
		to.Y += page
	case fyne.KeyPageUp:
		to.Y -= page
	case fyne.KeyHome:
		to.Y = 0
	case fyne.KeyEnd:
		to.Y = c.scroll.Content.Size().Height
	default:
		return false
	}
	to.Y = max(min(to.Y, c.scroll.Content.Size().Height-c.scroll.Size().Height), 0)
	c.scroll.ScrollToOffset(to)
	return true
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
