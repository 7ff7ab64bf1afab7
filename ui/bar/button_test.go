package bar_test

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"frontlay/ui/bar"
	"frontlay/ui/look"
	"frontlay/ui/tip"
)

// shown is a window with one button, and a clock that the test turns.
type shown struct {
	*bar.Button
	layer   *tip.Layer
	pressed int
	turn    func() // lets the time go by
}

func show(t *testing.T, words string) *shown {
	t.Helper()
	test.NewTempApp(t).Settings().SetTheme(&look.Theme{})
	s := &shown{turn: func() {}}
	s.Button = bar.NewButton(bar.Plain, "undo", words, func() { s.pressed++ })
	s.Tip = func() tip.Text { return tip.Text{Name: "Undo", Keys: "Ctrl+Z"} }
	content := tip.Over(container.NewWithoutLayout(s.Button))
	w := test.NewTempWindow(t, content)
	w.Resize(fyne.NewSize(400, 200))
	s.Move(fyne.NewPos(360, 150))
	s.Resize(s.MinSize())
	s.layer = tip.Of(s.Button)
	s.layer.After = func(d time.Duration, do func()) func() {
		if d != 400*time.Millisecond {
			t.Errorf("the tip comes after %v", d)
		}
		stopped := false
		s.turn = func() {
			if !stopped {
				do()
			}
		}
		return func() { stopped = true }
	}
	return s
}

// The tip shows once the pointer rests or the button has the focus, not before; it
// goes when the pointer leaves, the focus does, or the button is pressed.
func TestTip(t *testing.T) {
	e := &desktop.MouseEvent{}
	for name, c := range map[string]struct{ come, leave func(s *shown) }{
		"pointer": {func(s *shown) { s.MouseIn(e) }, func(s *shown) { s.MouseOut() }},
		"focus":   {func(s *shown) { s.FocusGained() }, func(s *shown) { s.FocusLost() }},
		"press":   {func(s *shown) { s.MouseIn(e) }, func(s *shown) { test.Tap(s.Button) }},
		"key":     {func(s *shown) { s.FocusGained() }, func(s *shown) { s.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn}) }},
	} {
		t.Run(name, func(t *testing.T) {
			s := show(t, "")
			c.come(s)
			if s.layer.Shown() != (tip.Text{}) {
				t.Error("it shows at once")
			}
			s.turn()
			if got := s.layer.Shown(); got != (tip.Text{Name: "Undo", Keys: "Ctrl+Z"}) {
				t.Errorf("it says %+v", got)
			}
			c.leave(s)
			if s.layer.Shown() != (tip.Text{}) {
				t.Error("it stays")
			}
			c.come(s)
			c.leave(s)
			s.turn()
			if s.layer.Shown() != (tip.Text{}) {
				t.Error("it comes after all")
			}
		})
	}
}

// Enter, the space bar and the pointer press a button once each, and nothing does
// while it is switched off.
func TestPressing(t *testing.T) {
	s := show(t, "Undo")
	for i, press := range []func(){
		func() { test.Tap(s.Button) },
		func() { s.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn}) },
		func() { s.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace}); s.TypedRune(' ') },
	} {
		press()
		if s.pressed != i+1 {
			t.Errorf("after %d presses it was pressed %d times", i+1, s.pressed)
		}
	}
	s.Able(false)
	test.Tap(s.Button)
	s.TypedRune(' ')
	if s.pressed != 3 {
		t.Error("it was pressed though it is switched off")
	}
}

// Choosing a button moves nothing; leaving its words out makes it as wide as its
// icon needs.
func TestWidth(t *testing.T) {
	s := show(t, "Division")
	before := s.MinSize()
	s.Choose(true)
	if s.MinSize() != before {
		t.Errorf("chosen it needs %v, before %v", s.MinSize(), before)
	}
	s.Short(true)
	if w := s.MinSize().Width; w >= before.Width || w < look.IconSize() {
		t.Errorf("without words it is %v wide, with them %v", w, before.Width)
	}
	if s.MinSize().Height != before.Height {
		t.Error("without words it is not as high")
	}
}
