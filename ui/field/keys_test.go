package field

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
)

func typed(f fyne.Focusable, keys ...fyne.KeyName) {
	for _, k := range keys {
		f.TypedKey(&fyne.KeyEvent{Name: k})
	}
}

// The page keys move a form from every kind of field, so that text between two
// fields can be read, and function keys reach the window.
func TestKeysThatFieldsHandOn(t *testing.T) {
	test.NewTempApp(t)
	for name, f := range map[string]fyne.Focusable{
		"entry": entryWith("1"), "text": NewText("hint"), "button": NewButton("On", nil), "box": NewCheck("On", nil),
		"mark":   NewMark("On", func() bool { return false }, func(bool) {}),
		"choice": NewChoice([]string{"a"}, func() int { return 0 }, func(int) {}),
		"offer":  NewOffer([]string{"A4"}),
	} {
		t.Run(name, func(t *testing.T) {
			scroll, o := Scrolled(Column(f.(fyne.CanvasObject), Spacer(900)))
			w := test.NewTempWindow(t, container.NewStack(o))
			w.Resize(fyne.NewSize(200, 200))
			var got []fyne.KeyName
			w.Canvas().SetOnTypedKey(func(e *fyne.KeyEvent) { got = append(got, e.Name) })
			w.Canvas().Focus(f)
			typed(f, fyne.KeyPageDown)
			down := scroll.Offset.Y
			typed(f, fyne.KeyPageDown, fyne.KeyPageUp, fyne.KeyPageUp)
			if up := scroll.Offset.Y; down < 50 || up != 0 {
				t.Errorf("page down leads to %v, page up back to %v", down, up)
			}
			typed(f, fyne.KeyF1, fyne.KeyF)
			if len(got) != 1 || got[0] != fyne.KeyF1 {
				t.Errorf("the window got %v", got)
			}
		})
	}
}

// A view is moved by the keys in both directions, and not past its edges.
func TestAViewMovesByKeys(t *testing.T) {
	test.NewTempApp(t)
	picture := fynecanvas.NewRectangle(color.Black)
	picture.SetMinSize(fyne.NewSize(500, 900))
	v := NewView(picture)
	test.NewTempWindow(t, container.NewStack(v)).Resize(fyne.NewSize(200, 200))
	typed(v, fyne.KeyRight, fyne.KeyDown)
	if o := v.Scroll.Offset; o.X <= 0 || o.Y <= 0 {
		t.Errorf("it stands at %v", o)
	}
	typed(v, fyne.KeyLeft, fyne.KeyLeft, fyne.KeyEnd, fyne.KeyPageDown)
	if o := v.Scroll.Offset; o.X != 0 || o.Y != 900-v.Scroll.Size().Height {
		t.Errorf("it stands at %v of %v", o, v.Scroll.Size())
	}
	typed(v, fyne.KeyHome)
	if v.Scroll.Offset.Y != 0 {
		t.Error("Home does not lead to the top")
	}
}
