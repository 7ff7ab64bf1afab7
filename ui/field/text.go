package field

import "fyne.io/fyne/v2"

// Text is a field of a dialog or page that is about nothing in the document: what
// is typed stays in it.
type Text struct{ Input }

// NewText makes a field. hint is shown grey while it is empty.
func NewText(hint string) *Text {
	t := &Text{}
	t.ExtendBaseWidget(t)
	t.PlaceHolder = hint
	return t
}

// Need is the width that shows the text or the hint whole.
func (t *Text) Need() float32 { return entryNeed(t.Text, t.PlaceHolder) }

// AcceptsTab lets Tab leave the field, also one of several lines.
func (t *Text) AcceptsTab() bool { return false }

// TypedKey hands Esc on.
func (t *Text) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyEscape {
		Leave(t, e)
		return
	}
	if !HandOn(t, e) {
		t.Entry.TypedKey(e)
	}
}
