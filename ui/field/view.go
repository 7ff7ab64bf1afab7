package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// View is a picture that can be larger than its place. Tab reaches it, and the
// arrow and page keys move it.
type View struct {
	widget.BaseWidget
	Ring
	Scroll *container.Scroll
}

// NewView makes a view of an object.
func NewView(o fyne.CanvasObject) *View {
	v := &View{Scroll: container.NewScroll(o)}
	v.ExtendBaseWidget(v)
	return v
}

// FocusGained shows the ring.
func (v *View) FocusGained() { v.Gain(v, nil) }

// FocusLost takes the ring away.
func (v *View) FocusLost() { v.Lose(v, nil) }

// TypedRune takes no letters.
func (v *View) TypedRune(rune) {}

// TypedKey moves the picture.
func (v *View) TypedKey(e *fyne.KeyEvent) {
	switch {
	case e.Name == fyne.KeyEscape:
		Leave(v, e)
	case !Move(v.Scroll, e.Name):
		HandOn(v, e)
	}
}

// CreateRenderer draws the picture with its ring.
func (v *View) CreateRenderer() fyne.WidgetRenderer {
	return v.Around(widget.NewSimpleRenderer(v.Scroll))
}
