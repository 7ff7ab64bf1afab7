package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Check is a box to tick that shows a ring while it has the focus.
type Check struct {
	widget.Check
	ringOn bool
	self   fyne.CanvasObject // the widget that embeds it
}

// NewCheck makes a box to tick.
func NewCheck(label string, changed func(bool)) *Check {
	c := &Check{}
	c.self = c
	c.ExtendBaseWidget(c)
	c.Text, c.OnChanged = label, changed
	return c
}

// FocusGained shows the ring.
func (c *Check) FocusGained() {
	c.ringOn = true
	c.Check.FocusGained()
	Reveal(c.self)
}

// FocusLost takes the ring away.
func (c *Check) FocusLost() {
	c.ringOn = false
	c.Check.FocusLost()
}

// TypedKey takes Enter and Esc besides the box's own keys.
func (c *Check) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		c.SetChecked(!c.Checked)
	case fyne.KeyEscape:
		Leave(c.self, e)
	default:
		HandOn(c.self, e)
	}
}

// CreateRenderer draws the box with its ring.
func (c *Check) CreateRenderer() fyne.WidgetRenderer {
	r := c.Check.CreateRenderer()
	return hugging{newRing(r, func() bool { return c.ringOn }, false)}
}

// hugging keeps the ring around box and label, however wide the row is.
type hugging struct{ *ringed }

// Layout lays the box out in the size it has, and the ring around what is seen.
func (h hugging) Layout(s fyne.Size) {
	h.ringed.Layout(s)
	h.frame(fyne.NewSize(min(s.Width, h.MinSize().Width), s.Height))
}
