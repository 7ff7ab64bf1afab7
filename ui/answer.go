package ui

import (
	"fyne.io/fyne/v2"

	"frontlay/ui/field"
)

// answer is a button that Enter presses too, as people expect of a question;
// Fyne's takes the space bar only. Esc gives the answer that changes nothing.
type answer struct {
	field.Button
	escape func()
}

func newAnswer(text string, tapped, escape func()) *answer {
	a := &answer{escape: escape}
	a.ExtendBaseWidget(a)
	a.SetText(text)
	a.OnTapped = tapped
	return a
}

// TypedKey takes Enter and Esc besides the button's own keys.
func (a *answer) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		a.OnTapped()
	case fyne.KeyEscape:
		a.escape()
	default:
		a.Button.TypedKey(e)
	}
}
