package field

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
)

// unpainted is an app whose driver has painted nothing yet, as the desktop's in
// the moment after something was made.
type unpainted struct{ fyne.App }

func (u unpainted) Driver() fyne.Driver { return blind{u.App.Driver()} }

type blind struct{ fyne.Driver }

func (blind) CanvasForObject(fyne.CanvasObject) fyne.Canvas { return nil }

func (blind) AbsolutePositionForObject(fyne.CanvasObject) fyne.Position { return fyne.Position{} }

// What no canvas shows opens no menu, and the program goes on.
func TestNoMenuOpensOnNoCanvas(t *testing.T) {
	app := test.NewTempApp(t)
	press := func(key fyne.KeyName) func(fyne.Focusable) {
		return func(f fyne.Focusable) { f.TypedKey(&fyne.KeyEvent{Name: key}) }
	}
	right := func(f fyne.Focusable) { f.(fyne.SecondaryTappable).TappedSecondary(&fyne.PointEvent{}) }
	left := func(f fyne.Focusable) { f.(fyne.Tappable).Tapped(&fyne.PointEvent{}) }
	one := func() int { return 0 }
	for _, c := range []struct {
		name string
		made func() fyne.Focusable
		do   func(fyne.Focusable)
	}{
		{"a field, right", func() fyne.Focusable { return entryWith("12") }, right},
		{"several lines, right", func() fyne.Focusable { return NewLines(Source{Get: func() Value { return Value{} }}, 3) }, right},
		{"a text, right", func() fyne.Focusable { return NewText("") }, right},
		{"an offer, right", func() fyne.Focusable { return NewOffer([]string{"A4"}) }, right},
		{"an offer, its list", func() fyne.Focusable { return NewOffer([]string{"A4"}) }, press(fyne.KeyDown)},
		{"an offer, its arrow", func() fyne.Focusable { return NewOffer([]string{"A4"}).ActionItem.(*Button) }, left},
		{"a choice", func() fyne.Focusable { return NewChoice([]string{"a"}, one, func(int) {}) }, left},
		{"a choice, Enter", func() fyne.Focusable { return NewChoice([]string{"a"}, one, func(int) {}) }, press(fyne.KeyReturn)},
		{"a choice, the down key", func() fyne.Focusable { return NewChoice([]string{"a"}, one, func(int) {}) }, press(fyne.KeyDown)},
	} {
		t.Run(c.name, func(t *testing.T) {
			f := c.made()
			w := test.NewTempWindow(t, f.(fyne.CanvasObject))
			fyne.SetCurrentApp(unpainted{app})
			defer fyne.SetCurrentApp(app)
			c.do(f)
			if w.Canvas().Overlays().Top() != nil {
				t.Error("a menu is open")
			}
			fyne.SetCurrentApp(app)
			c.do(f)
			if w.Canvas().Overlays().Top() == nil {
				t.Error("no menu opens once it is painted")
			}
		})
	}
}
