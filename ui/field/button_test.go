package field

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
)

// The space bar presses a button once, and its letter does not land in the field
// that the press gives the focus: the desktop sends the key, then the letter, each
// to what has the focus at that moment.
func TestTheSpaceBarPressesOnce(t *testing.T) {
	test.NewTempApp(t)
	name, pressed := NewText(""), 0
	name.SetText("bench")
	b := NewButton("Write", nil)
	c := test.NewTempWindow(t, container.NewVBox(b, name)).Canvas()
	b.OnTapped = func() {
		pressed++
		c.Focus(name)
		name.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
	c.Focus(b)
	c.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	c.Focused().TypedRune(' ')
	if pressed != 1 || name.Text != "bench" {
		t.Errorf("pressed %d times, the field says %q", pressed, name.Text)
	}
}

// Keys that press a button leave the focus on it.
func TestAPressedButtonKeepsTheFocus(t *testing.T) {
	test.NewTempApp(t)
	pressed := 0
	b := NewButton("On", func() { pressed++ })
	c := test.NewTempWindow(t, container.NewVBox(b)).Canvas()
	c.Focus(b)
	b.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	b.TypedRune(' ')
	if pressed != 2 || c.Focused() != b {
		t.Errorf("pressed %d times, the focus is at %v", pressed, c.Focused())
	}
	b.Able(false)
	b.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if pressed != 2 {
		t.Error("a button that is off was pressed")
	}
}

// sign is a button of another package, which embeds the one here.
type sign struct{ Button }

// A button that another widget embeds is scrolled to where it is seen when it gets
// the focus, and hands on the page keys and the function keys, as one by itself.
func TestAnEmbeddedButtonIsScrolledTo(t *testing.T) {
	test.NewTempApp(t)
	b := &sign{}
	b.ExtendBaseWidget(b)
	b.SetText("far below")
	s := container.NewVScroll(container.NewVBox(Spacer(900), b))
	w := test.NewTempWindow(t, s)
	w.Resize(fyne.NewSize(200, 150))
	w.Canvas().Focus(b)
	if s.Offset.Y == 0 {
		t.Error("the button has the focus and is not seen")
	}
	was := s.Offset.Y
	b.TypedKey(&fyne.KeyEvent{Name: fyne.KeyPageUp})
	if s.Offset.Y >= was {
		t.Errorf("the page key takes the column from %v to %v", was, s.Offset.Y)
	}
}
