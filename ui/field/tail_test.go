package field

import (
	"fmt"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
)

// counted is a field of a number that steps by one, in a window, and what it was told
// of steppers that are held.
func counted(t *testing.T) (e *Entry, n *int, held *[]bool, c fyne.Canvas) {
	n, held = new(int), new([]bool)
	e = NewEntry(Source{
		Get:    func() Value { return Value{Text: fmt.Sprint(*n)} },
		Step:   func(by int) error { *n += by; return nil },
		Held:   func(on bool) { *held = append(*held, on) },
		Unit:   "mm",
		Figure: true,
	})
	w := test.NewTempWindow(t, container.NewVBox(e, NewText("")))
	w.Resize(fyne.NewSize(140, 100))
	return e, n, held, w.Canvas()
}

// at is a press of the first button at a place of the tail.
func (t *tail) press(y float32) {
	at := fyne.PointEvent{Position: fyne.NewPos(t.Size().Width-4, y)}
	t.MouseIn(&desktop.MouseEvent{PointEvent: at})
	t.MouseDown(&desktop.MouseEvent{PointEvent: at, Button: desktop.MouseButtonPrimary})
}

// A stepper that is held steps at once, and again and again until it is let go, which
// is told once however the press ends; the field has the focus then.
func TestAHeldStepperRepeats(t *testing.T) {
	for name, end := range map[string]func(*tail){
		"let go":          func(s *tail) { s.MouseUp(nil) },
		"after a drag":    func(s *tail) { s.Dragged(nil); s.DragEnd() },
		"pointer is gone": func(s *tail) { s.MouseOut() },
	} {
		t.Run(name, func(t *testing.T) {
			test.NewTempApp(t)
			e, n, held, c := counted(t)
			var next func()
			stopped := 0
			e.tail.after = func(_ time.Duration, do func()) func() { next = do; return func() { stopped++ } }
			e.tail.press(2)
			next()
			next()
			end(e.tail)
			next() // the time had come already
			if *n != 3 || e.Text != "3" || stopped != 1 {
				t.Errorf("three steps lead to %d, the field shows %q, called off %d times", *n, e.Text, stopped)
			}
			if fmt.Sprint(*held) != "[true false]" {
				t.Errorf("told %v", *held)
			}
			if c.Focused() != e {
				t.Error("the field has not the focus")
			}
			e.tail.press(e.tail.Size().Height - 2)
			e.tail.MouseUp(nil)
			if *n != 2 {
				t.Errorf("the lower stepper leads to %d", *n)
			}
		})
	}
}

// Steppers are there for the pointer and the focus only, the unit until the figure
// names one of its own.
func TestWhatTheTailShows(t *testing.T) {
	test.NewTempApp(t)
	e, _, _, c := counted(t)
	seen := func(want bool, when string) {
		t.Helper()
		if e.tail.stepping() != want || e.tail.arrows[0].Hidden == want {
			t.Errorf("%s the steppers are shown: %v", when, !want)
		}
	}
	seen(false, "at rest")
	e.MouseIn(nil)
	seen(true, "under the pointer")
	e.MouseOut()
	seen(false, "after it")
	c.Focus(e)
	seen(true, "with the focus")
	if e.tail.unit.Hidden || e.tail.unit.Text != "mm" {
		t.Errorf("the unit is %q, hidden %v", e.tail.unit.Text, e.tail.unit.Hidden)
	}
	e.SetText("3 in")
	if !e.tail.unit.Hidden {
		t.Error("3 in has a unit behind it")
	}
	if left := e.tail.Position().X; left < entryNeed("3 in")-1 || e.tail.Size().Width < wide(&e.source) {
		t.Errorf("the tail begins at %v and is %v wide", left, e.tail.Size().Width)
	}
}

// The wheel steps the field that has the focus, where the pointer is over it; over
// any other, and beside it, the column scrolls and no figure changes.
func TestTheWheelStepsOnlyTheFocus(t *testing.T) {
	test.NewTempApp(t)
	n := [2]int{}
	var all [2]*Entry
	for i := range all {
		all[i] = NewEntry(Source{Get: func() Value { return Value{Text: fmt.Sprint(n[i])} }, Step: func(by int) error { n[i] += by; return nil }})
	}
	scroll, o := Scrolled(Column(all[0], all[1], Spacer(900)))
	w := test.NewTempWindow(t, o)
	w.Resize(fyne.NewSize(200, 200))
	over := func(e *Entry) fyne.Position {
		return fyne.CurrentApp().Driver().AbsolutePositionForObject(e).AddXY(20, 10)
	}
	top := o.(*fyne.Container).Objects[1].(*wheel) // test.Scroll does not say where the pointer is
	wheel := func(at fyne.Position, dy float32) {
		top.Scrolled(&fyne.ScrollEvent{PointEvent: fyne.PointEvent{AbsolutePosition: at}, Scrolled: fyne.NewDelta(0, dy)})
	}
	wheel(over(all[0]), -25)
	if n != [2]int{} || scroll.Offset.Y == 0 {
		t.Errorf("without the focus the wheel leads to %v, the column is at %v", n, scroll.Offset.Y)
	}
	scroll.ScrollToTop()
	w.Canvas().Focus(all[1])
	wheel(over(all[1]), 25)
	wheel(over(all[1]), 25)
	wheel(over(all[1]), -25)
	if n != [2]int{0, 1} || scroll.Offset.Y != 0 {
		t.Errorf("two up and one down lead to %v, the column is at %v", n, scroll.Offset.Y)
	}
	wheel(over(all[0]), -25)
	if n != [2]int{0, 1} || scroll.Offset.Y == 0 {
		t.Errorf("over another field the wheel leads to %v, the column is at %v", n, scroll.Offset.Y)
	}
	scroll.ScrollToTop()
	all[1].SetText("")
	wheel(over(all[1]), -25)
	if n != [2]int{0, 1} || scroll.Offset.Y == 0 {
		t.Errorf("over an empty field the wheel leads to %v, the column is at %v", n, scroll.Offset.Y)
	}
}

// A list opens with the keys on what is chosen, so that the down key leads to the
// one after it.
func TestAListBeginsAtWhatIsChosen(t *testing.T) {
	for at := -1; at < 3; at++ {
		test.NewTempApp(t)
		got := -1
		c := NewChoice([]string{"a", "b", "c", "d"}, func() int { return at }, func(i int) { got = i })
		w := test.NewTempWindow(t, container.NewVBox(c))
		w.Resize(fyne.NewSize(200, 400))
		w.Canvas().Focus(c)
		typed(c, fyne.KeyReturn)
		list := w.Canvas().Focused()
		if list == fyne.Focusable(c) {
			t.Fatal("no list is open")
		}
		typed(list, fyne.KeyDown, fyne.KeyReturn)
		if got != at+1 {
			t.Errorf("from %d the down key leads to %d", at, got)
		}
		if w.Canvas().Focused() != fyne.Focusable(c) {
			t.Errorf("the focus is at %T afterwards", w.Canvas().Focused())
		}
	}
}

// A field with something wrong in it has a line in the colour of errors, with the
// focus and without.
func TestWhatIsWrongHasAnEdge(t *testing.T) {
	test.NewTempApp(t)
	bad := false
	e := NewEntry(Source{Get: func() Value { return Value{Text: "1"} }, Bad: func() bool { return bad }})
	ring := test.WidgetRenderer(e).(*ringed)
	if !ring.outer.Hidden {
		t.Error("at first it has a line")
	}
	bad = true
	e.Update()
	if ring.outer.Hidden || !e.bad {
		t.Error("it has no line")
	}
	bad = false
	e.Update()
	if !ring.outer.Hidden {
		t.Error("mended, it keeps its line")
	}
}
