package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// Button is a button that Enter presses too, that shows a ring while it has the
// focus, and that is scrolled to where it can be seen. Fyne's takes the space bar
// only, and one of the main colour hardly changes with the focus.
type Button struct {
	widget.Button
	Ring
	self fyne.Widget // the button, or what embeds it
}

// NewButton makes a button.
func NewButton(label string, tapped func()) *Button {
	b := &Button{}
	b.ExtendBaseWidget(b)
	b.Text, b.OnTapped = label, tapped
	return b
}

// ExtendBaseWidget takes what embeds the button, or the button itself.
func (b *Button) ExtendBaseWidget(self fyne.Widget) {
	b.self = self
	b.Button.ExtendBaseWidget(self)
}

// Named is what the button says.
func (b *Button) Named() string { return b.Text }

// Able enables a button or disables it.
func (b *Button) Able(on bool) {
	if on {
		b.Enable()
	} else {
		b.Disable()
	}
}

// FocusGained shows the ring.
func (b *Button) FocusGained() { b.Gain(b.self, &b.Button) }

// FocusLost takes the ring away.
func (b *Button) FocusLost() { b.Lose(b.self, &b.Button) }

// TypedKey takes Enter and Esc besides the button's own keys.
func (b *Button) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		b.press()
	case fyne.KeyEscape:
		Leave(b.self, e)
	case fyne.KeySpace:
		// Pressed by TypedRune: the desktop gives a space as a key and as a letter,
		// and the letter would land in the field that the press gave the focus.
	default:
		if !HandOn(b.self, e) {
			b.Button.TypedKey(e)
		}
	}
}

// TypedRune takes the space bar.
func (b *Button) TypedRune(r rune) {
	if r == ' ' {
		b.press()
	}
}

// press does what a tap does, and leaves the focus where it is: a tap takes it
// away, and Tab would begin at the top of the window again.
func (b *Button) press() {
	if !b.Disabled() && b.OnTapped != nil {
		b.OnTapped()
	}
}

// CreateRenderer draws the button with its ring.
func (b *Button) CreateRenderer() fyne.WidgetRenderer {
	return b.edge(b.Button.CreateRenderer(), func() bool { return b.Importance == widget.MediumImportance || b.Disabled() })
}
