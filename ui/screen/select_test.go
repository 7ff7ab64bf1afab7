package screen_test

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/drawing"
	"frontlay/layout/projecttest"
	"frontlay/ui/replay"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// selected are the numbers of the selected fronts.
func (d *desk) selected() map[int]bool {
	all := map[int]bool{}
	for _, f := range d.session.Result().Plan.Fronts {
		if d.session.IsSelected(session.Front(f.Place)) {
			all[f.Number] = true
		}
	}
	return all
}

func (d *desk) expect(t *testing.T, what string, numbers ...int) {
	t.Helper()
	got := d.selected()
	ok := len(got) == len(numbers)
	for _, n := range numbers {
		ok = ok && got[n]
	}
	if !ok {
		t.Errorf("%s selects %v, want %v", what, got, numbers)
	}
}

// corner is a corner of a front on the screen: x and y are 0 or 1, from the upper
// left one.
func (d *desk) corner(number int, x, y float32) fyne.Position {
	r := replay.Places(d.Screen)["front "+string(rune('0'+number))]
	return fyne.NewPos(r.X+x*r.Width, r.Y+y*r.Height)
}

// A frame selects the fronts that lie wholly in it, wherever it begins; what was
// selected is no longer, but where Ctrl or Shift is held.
func TestAFrameSelects(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	above, right := d.corner(3, 0, 0).SubtractXY(-6, 8), d.corner(2, 1, 1).AddXY(5, 5)
	d.pointer.Drag(above.SubtractXY(12, 0), right, 5)
	d.expect(t, "a frame around 2 and 3", 2, 3)
	d.pointer.Drag(d.centre(t, "front 1"), d.corner(1, 1, 0), 5)
	d.expect(t, "a frame inside of a front")
	d.pointer.Click(d.centre(t, "front 1"))
	d.pointer.Held, d.held = fyne.KeyModifierShift, fyne.KeyModifierShift
	d.pointer.Drag(above.SubtractXY(12, 0), right, 5)
	d.expect(t, "a frame with Shift", 1, 2, 3)
	if d.steps() != 0 {
		t.Error("a frame has changed the project")
	}

	// Escape lets go of a frame.
	d.pointer.Held, d.held = 0, 0
	d.pointer.Move(above.SubtractXY(12, 0))
	d.pointer.Press(desktop.MouseButtonPrimary)
	d.pointer.Move(right)
	d.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	d.pointer.Release()
	d.expect(t, "a frame that is given up", 1, 2, 3)
}

func TestClicksAddAndTakeAway(t *testing.T) {
	for name, held := range map[string]fyne.KeyModifier{"Ctrl": fyne.KeyModifierShortcutDefault, "Shift": fyne.KeyModifierShift} {
		t.Run(name, func(t *testing.T) {
			d := newDesk(t, projecttest.Demo(t))
			d.pointer.Click(d.centre(t, "front 1"))
			d.pointer.Held, d.held = held, held
			d.pointer.Click(d.centre(t, "front 4"))
			d.pointer.Click(d.centre(t, "front 7"))
			d.expect(t, "clicks", 1, 4, 7)
			d.pointer.Click(d.centre(t, "front 4"))
			d.expect(t, "a click on what is selected", 1, 7)
			d.pointer.Click(fyne.NewPos(5, 5))
			d.expect(t, "a click beside the run", 1, 7)
			d.pointer.Click(d.centre(t, "division above 1"))
			if !d.session.Selected(drawing.DivisionThing) || d.steps() != 0 {
				t.Errorf("a click on a division selects %v, steps: %d", d.session.Selection(), d.steps())
			}
		})
	}
}

// Space held, or the middle button, moves the picture and nothing else, with every
// tool, which stays in the hand.
func TestTheHandMovesThePicture(t *testing.T) {
	for _, in := range []tool.Tool{tool.Idle{}, tool.DrawDivision{}, tool.DrawCabinet{}} {
		d := newDesk(t, projecttest.Demo(t))
		d.Take(in)
		at := d.centre(t, "division above 1")
		drag := func(b desktop.MouseButton) {
			before := d.centre(t, "front 1")
			d.pointer.Move(at)
			d.pointer.Press(b)
			d.pointer.Move(at.AddXY(30, 20))
			d.pointer.Release()
			if moved := d.centre(t, "front 1").Subtract(before); max(moved.X-30, 30-moved.X, moved.Y-20, 20-moved.Y) > 0.01 {
				t.Errorf("with %T in the hand the picture moves by %v", in, moved)
			}
			if fmt.Sprintf("%T", d.Hand()) != fmt.Sprintf("%T", in) || d.steps() != 0 {
				t.Errorf("%T is in the hand afterwards, not %T; steps: %d", d.Hand(), in, d.steps())
			}
		}
		drag(desktop.MouseButtonTertiary)
		d.KeyDown(&fyne.KeyEvent{Name: fyne.KeySpace})
		drag(desktop.MouseButtonPrimary)
		d.KeyUp(&fyne.KeyEvent{Name: fyne.KeySpace})
	}
}

// With every tool a click on a figure types it and draws nothing.
func TestFiguresAreTypedWithEveryTool(t *testing.T) {
	for _, in := range []tool.Tool{tool.Idle{}, tool.DrawDivision{}, tool.DrawPartition{}, tool.DrawCabinet{}} {
		d := newDesk(t, projecttest.Demo(t))
		d.Take(in)
		d.pointer.Click(d.centre(t, "height of 2"))
		canvas := fyne.CurrentApp().Driver().CanvasForObject(d.Screen)
		test.Type(canvas.Focused(), "255")
		canvas.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
		if h := d.face(2).Height().MM(); h != 255 || d.steps() != 1 {
			t.Errorf("with %T in the hand the front is %v, steps: %d", in, h, d.steps())
		}
		if fmt.Sprintf("%T", d.Hand()) != fmt.Sprintf("%T", in) {
			t.Errorf("%T is in the hand afterwards, not %T", d.Hand(), in)
		}
	}
}

// A double click on a name types it, where it stands; a single one selects.
func TestADoubleClickRenames(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	canvas := fyne.CurrentApp().Driver().CanvasForObject(d.Screen)
	at := d.centre(t, "name of 2")
	d.pointer.Click(at)
	if canvas.Focused() != fyne.Focusable(d.Screen) {
		t.Fatal("one click opens the name")
	}
	d.expect(t, "a click on a name", 2)
	d.pointer.Click(at)
	if canvas.Focused() == fyne.Focusable(d.Screen) {
		t.Fatal("a double click opens nothing")
	}
	test.Type(canvas.Focused(), "Bowls 2")
	canvas.Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if got := d.session.Project().FrontAt(d.session.Here()).Name; got != "Bowls 2" || d.steps() != 1 {
		t.Errorf("the name is %q, steps: %d", got, d.steps())
	}
	d.Screen.TypedRune('2')
	if canvas.Focused() != fyne.Focusable(d.Screen) {
		t.Error("a digit after a name goes to the height")
	}
}

func TestShiftAndArrowsExtend(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	key := func(shift bool, names ...fyne.KeyName) {
		d.held = 0
		if shift {
			d.held = fyne.KeyModifierShift
		}
		for _, n := range names {
			d.TypedKey(&fyne.KeyEvent{Name: n})
		}
	}
	key(false, fyne.KeyUp)
	key(true, fyne.KeyUp, fyne.KeyUp)
	d.expect(t, "Shift and Up twice", 1, 2, 3)
	key(true, fyne.KeyUp)
	d.expect(t, "Shift and Up at the end of the stack", 1, 2, 3)
	key(true, fyne.KeyDown)
	d.expect(t, "Shift and Down", 1, 2)
	key(true, fyne.KeyRight)
	if n := len(d.selected()); n != 3 {
		t.Errorf("Shift and Right: %d fronts are selected", n)
	}
	key(false, fyne.KeyUp)
	if n := len(d.selected()); n != 1 {
		t.Errorf("Up alone: %d fronts are selected", n)
	}
}
