package field

import (
	"fyne.io/fyne/v2"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Check is a box to tick that shows a ring while it has the focus.
type Check struct {
	widget.Check
	Ring
	self fyne.Widget // the box, or what embeds it
}

// NewCheck makes a box to tick.
func NewCheck(label string, changed func(bool)) *Check {
	c := &Check{}
	c.ExtendBaseWidget(c)
	c.Text, c.OnChanged = label, changed
	return c
}

// ExtendBaseWidget takes what embeds the box, or the box itself.
func (c *Check) ExtendBaseWidget(self fyne.Widget) {
	c.self = self
	c.Check.ExtendBaseWidget(self)
}

// Hang is what is free beside the box.
func (c *Check) Hang() float32 { return fynetheme.Size(fynetheme.SizeNameInnerPadding) }

// FocusGained shows the ring.
func (c *Check) FocusGained() { c.Gain(c.self, &c.Check) }

// FocusLost takes the ring away.
func (c *Check) FocusLost() { c.Lose(c.self, &c.Check) }

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
	return hugging{newRing(c.Check.CreateRenderer(), &c.Ring)}
}

// hugging keeps the ring around box and label, however wide the row is.
type hugging struct{ *ringed }

// Layout lays the box out in the size it has, and the ring around what is seen.
func (h hugging) Layout(s fyne.Size) {
	h.ringed.Layout(s)
	h.frame(fyne.NewSize(min(s.Width, h.MinSize().Width), s.Height))
}
