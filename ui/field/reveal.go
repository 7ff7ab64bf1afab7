package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// Reveal scrolls what lies around an object so far that it can be seen whole. It
// finds the scrolled columns from the top, as objects don't know what holds them.
func Reveal(o fyne.CanvasObject) {
	c := CanvasOf(o)
	if c == nil {
		return
	}
	for _, s := range scrollsAround(c, o) {
		scrollTo(s, o)
	}
}

// scrollsAround are the scrolled columns around an object, the innermost first.
func scrollsAround(c fyne.Canvas, o fyne.CanvasObject) []*container.Scroll {
	top := c.Content()
	if over := c.Overlays().Top(); over != nil {
		top = over
	}
	var scrolls []*container.Scroll
	if !pathTo(o, top, &scrolls) {
		return nil
	}
	return scrolls
}

// pathTo collects the scrolled columns from an object up to one that holds it,
// the innermost first.
func pathTo(o, from fyne.CanvasObject, scrolls *[]*container.Scroll) bool {
	if from == o {
		return true
	}
	if from == nil || !from.Visible() {
		return false
	}
	switch v := from.(type) {
	case *fyne.Container:
		for _, c := range v.Objects {
			if pathTo(o, c, scrolls) {
				return true
			}
		}
	case *container.Scroll:
		if pathTo(o, v.Content, scrolls) {
			*scrolls = append(*scrolls, v)
			return true
		}
	case *container.Split:
		return pathTo(o, v.Leading, scrolls) || pathTo(o, v.Trailing, scrolls)
	case *widget.PopUp:
		return pathTo(o, v.Content, scrolls)
	}
	return false
}

// scrollTo moves a column just so far that an object in it is seen.
func scrollTo(s *container.Scroll, o fyne.CanvasObject) {
	driver := fyne.CurrentApp().Driver()
	y := driver.AbsolutePositionForObject(o).Y - driver.AbsolutePositionForObject(s).Y
	high, seen := o.Size().Height, s.Size().Height
	const around = 12
	to := s.Offset
	switch {
	case seen < high:
	case y < around:
		to.Y += y - around
	case y+high > seen-around:
		to.Y += y + high - seen + around
	}
	to.Y = max(min(to.Y, s.Content.Size().Height-seen), 0)
	if to != s.Offset {
		s.ScrollToOffset(to)
	}
}

// Leave hands Esc on: a dialog gets it, and closes; elsewhere the focus goes back
// to the window, whose drawing takes the next one.
func Leave(o fyne.CanvasObject, e *fyne.KeyEvent) {
	c := CanvasOf(o)
	switch {
	case c == nil:
	case c.Overlays().Top() != nil && c.OnTypedKey() != nil:
		c.OnTypedKey()(e)
	default:
		c.Unfocus()
	}
}
