package screen

import "fyne.io/fyne/v2"

// Objects are what the widget paints, in order: the paper, the picture, and what
// the hand adds.
func (c *Screen) Objects() []fyne.CanvasObject {
	all := append([]fyne.CanvasObject{c.paper}, c.picture.Objects...)
	return append(all, c.overlay.Objects...)
}
