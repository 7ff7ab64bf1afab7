package field

import (
	"fyne.io/fyne/v2"
	fynetheme "fyne.io/fyne/v2/theme"
)

// Title is a name in large letters that can become another one: F2, Enter and a
// double click show the field for it in its place, until that is left.
type Title struct {
	Words
	entry *Entry
}

// NewTitle makes a title. The field is hidden while the name is only read.
func NewTitle(text string, entry *Entry) *Title {
	t := &Title{entry: entry}
	t.text = newCaption(text, false)
	t.text.tight, t.text.bold, t.text.large = true, true, true
	t.name = fynetheme.ColorNameForeground
	t.ExtendBaseWidget(t)
	if entry != nil {
		entry.Hide()
		entry.left = func() { t.swap(false) }
		entry.OnSubmitted = func(string) {
			if entry.Take() {
				t.swap(false)
				t.Tapped(nil)
			}
		}
		t.Use(entry.source)
	}
	return t
}

// Use makes the field for the name tell of another thing from now on.
func (t *Title) Use(s Source) {
	s.Focused = func() { t.swap(true) }
	t.entry.Use(s)
}

// swap shows the field in the place of the name, or the name again.
func (t *Title) swap(typing bool) {
	if typing {
		t.Hide()
		t.entry.Show()
	} else {
		t.entry.Hide()
		t.Show()
	}
}

// Rename brings the keys to the field for another name.
func (t *Title) Rename() {
	if c := CanvasOf(t); c != nil && t.entry != nil {
		t.swap(true)
		c.Focus(t.entry)
	}
}

// DoubleTapped renames.
func (t *Title) DoubleTapped(*fyne.PointEvent) { t.Rename() }

// Tapped brings the keys here.
func (t *Title) Tapped(*fyne.PointEvent) {
	if c := CanvasOf(t); c != nil {
		c.Focus(t)
	}
}

// TypedKey renames on F2 and Enter.
func (t *Title) TypedKey(e *fyne.KeyEvent) {
	switch {
	case t.entry == nil:
		t.Words.TypedKey(e)
	case e.Name == fyne.KeyF2, e.Name == fyne.KeyReturn, e.Name == fyne.KeyEnter:
		t.Rename()
	default:
		t.Words.TypedKey(e)
	}
}
