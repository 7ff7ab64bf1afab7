package field

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
)

// HandOn gives keys that no field has a use for to what has: the page keys move
// the column that holds the field, and function keys work wherever the focus is.
// It is true where it did.
func HandOn(o fyne.CanvasObject, e *fyne.KeyEvent) bool {
	c := CanvasOf(o)
	if c == nil {
		return false
	}
	switch {
	case e.Name == fyne.KeyPageUp, e.Name == fyne.KeyPageDown:
		if lines, ok := o.(interface{ ownPages() bool }); ok && lines.ownPages() {
			return false
		}
		all := scrollsAround(c, o)
		return len(all) > 0 && Move(all[0], e.Name)
	case len(e.Name) > 1 && strings.HasPrefix(string(e.Name), "F") && c.OnTypedKey() != nil:
		c.OnTypedKey()(e)
		return true
	}
	return false
}

// Move moves a scroll by a key; it is false for keys that do not.
func Move(s *container.Scroll, key fyne.KeyName) bool {
	const line = 40
	page := s.Size().Height - line
	to := s.Offset
	switch key {
	case fyne.KeyDown:
		to.Y += line
	case fyne.KeyUp:
		to.Y -= line
	case fyne.KeyRight:
		to.X += line
	case fyne.KeyLeft:
		to.X -= line
	case fyne.KeyPageDown:
		to.Y += page
	case fyne.KeyPageUp:
		to.Y -= page
	case fyne.KeyHome:
		to.Y = 0
	case fyne.KeyEnd:
		to.Y = s.Content.Size().Height
	default:
		return false
	}
	most := s.Content.Size().Subtract(s.Size())
	to.X, to.Y = max(min(to.X, most.Width), 0), max(min(to.Y, most.Height), 0)
	s.ScrollToOffset(to)
	return true
}

// ownPages tells that the page keys move the cursor of several lines.
func (e *Entry) ownPages() bool { return e.MultiLine }

// ownPages tells that the page keys move the cursor of several lines.
func (t *Text) ownPages() bool { return t.MultiLine }
