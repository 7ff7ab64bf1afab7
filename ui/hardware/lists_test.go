package hardware

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
)

// press presses the n-th button of a text, from 0.
func press(t *testing.T, p *Page, text string, n int) {
	t.Helper()
	var all []*field.Button
	var walk func(o fyne.CanvasObject)
	walk = func(o fyne.CanvasObject) {
		if !o.Visible() {
			return
		}
		switch v := o.(type) {
		case *field.Button:
			if v.Text == text {
				all = append(all, v)
			}
		case *container.Scroll:
			walk(v.Content)
		case *fyne.Container:
			for _, c := range v.Objects {
				walk(c)
			}
		}
	}
	walk(p.form.scroll)
	if n >= len(all) {
		t.Fatalf("%d buttons say %q", len(all), text)
	}
	test.Tap(all[n])
}

// The buttons of the form in their order.
const (
	addLength = iota
	addScrew
	addDrawer
	addFurther
	addStabiliser
)

func TestLists(t *testing.T) {
	p, w, _ := open(t, sample(t))
	press(t, p, "Add", addLength)
	if l := p.sheet.Runner.Lengths; len(l) != 5 || p.chosen.runner != 4 || l[4].Length != 350*mm || len(l[4].Screws) != 3 {
		t.Errorf("a length is added: %d, %d", len(l), p.chosen.runner)
	}
	press(t, p, "Add", addScrew)
	press(t, p, "×", 0)
	if s := p.now().runner.Screws; len(s) != 3 || s[2].Back != 293*mm || s[0].Back != 165*mm {
		t.Errorf("screws are %v", s)
	}
	if len(p.sheet.Runner.Lengths[0].Screws) != 3 || p.sheet.Runner.Lengths[0].Screws[0].Back != 37*mm {
		t.Error("the length it was copied from changed too")
	}
	press(t, p, "Add", addDrawer)
	if d := p.now().drawer; d.Name != "low 2" || d.SideTop != 92*mm || len(p.sheet.Drawers) != 4 {
		t.Errorf("the drawer height added is %q", d.Name)
	}
	press(t, p, "Add", addFurther)
	enter(w, p.field(t, "drawers[3].more_holes[0].from_width"), "900")
	press(t, p, "Add", addStabiliser)
	enter(w, p.field(t, "stabiliser.holes[0].across"), "-16")
	if m := p.now().more; m == nil || m.FromWidth != 900*mm || len(p.sheet.Drawers[0].More) != 0 {
		t.Errorf("the further hole is %v", m)
	}
	if found := p.Problems(); len(found) > 0 {
		t.Error(found)
	}
	press(t, p, "Remove", 0)
	press(t, p, "Remove", 1)
	if len(p.sheet.Runner.Lengths) != 4 || len(p.sheet.Drawers) != 3 {
		t.Errorf("after removing: %d lengths, %d drawers", len(p.sheet.Runner.Lengths), len(p.sheet.Drawers))
	}
	for p.Undo() {
	}
	if p.Unsaved() {
		t.Error("undo does not lead back to the start")
	}
}

// A form without lengths and drawers can still be filled in again.
func TestEmptySheet(t *testing.T) {
	p, _, _ := open(t, &model.HardwareSheet{Name: "bare"})
	if len(p.Problems()) == 0 {
		t.Error("an empty sheet is not faulted")
	}
	press(t, p, "Add", 0)
	press(t, p, "Add", 2)
	if len(p.sheet.Runner.Lengths) != 1 || len(p.sheet.Drawers) != 1 {
		t.Errorf("%d lengths and %d drawers were added", len(p.sheet.Runner.Lengths), len(p.sheet.Drawers))
	}
}

// A blank sheet has no fault and says that its figures are no maker's.
func TestBlank(t *testing.T) {
	for u := length.UnitMM; u <= length.UnitInchDecimal; u++ {
		s := Blank(message.Language{Unit: u})
		if found := figure.SheetFaults(s); len(found) > 0 {
			t.Error(found)
		}
		if text := u.Format(s.Bottom.DeductWidth) + u.Format(s.Drawers[0].Holes[1]); strings.Contains(text, "≈") {
			t.Errorf("the figures are not round: %s", text)
		}
	}
}

// Showing another sheet forgets what was being typed and the steps of the last.
func TestShowAnother(t *testing.T) {
	p, w, _ := open(t, sample(t))
	enter(w, p.field(t, "runner.setback"), "9")
	p.field(t, "runner.clearance_behind").entry.SetText("77")
	other := Blank(message.Language{})
	p.Show(other)
	if p.Sheet() != other || p.Unsaved() || p.Undo() || p.field(t, "runner.clearance_behind").entry.Text != "10" {
		t.Errorf("the other sheet is shown as %v", p.Sheet().Name)
	}
}

// The unit changes how figures are written, not how large they are.
func TestUnit(t *testing.T) {
	p, _, _ := open(t, sample(t))
	p.change(func(k *picked) { k.sheet.Unit = length.UnitCM })
	if got := p.field(t, "connector.inset").entry.Text; got != "2" || p.sheet.Connector.Inset != 20*mm {
		t.Errorf("20 mm are written %s cm", got)
	}
}

// On a window of 1000 × 700 nothing written on a sketch lies over something else
// written, or past its edge, and no hole lies in letters, in each unit, with plain
// and large text.
func TestNothingOverlaps(t *testing.T) {
	p, w, _ := open(t, sample(t))
	for _, large := range []bool{false, true} {
		fyne.CurrentApp().Settings().SetTheme(&look.Theme{Mode: look.DarkMode, Large: large})
		w.Resize(fyne.NewSize(1000, 700))
		for u := length.UnitMM; u <= length.UnitInchDecimal; u++ {
			s := sample(t).Clone()
			s.Unit = u
			for drawer := range s.Drawers {
				for _, onSide := range []bool{false, true} {
					p.sheet, p.chosen.drawer, p.onSide = s, drawer, onSide
					p.draw()
					checkPlaces(t, p.sketch)
				}
			}
		}
	}
}

func checkPlaces(t *testing.T, s *sketch) {
	t.Helper()
	for i, a := range s.figures {
		if a.at.X < 0 || a.at.Y < 0 || a.at.X+a.size.Width > s.Size().Width || a.at.Y+a.size.Height > s.Size().Height {
			t.Errorf("%q lies past the edge, at %v of %v", a.text, a.at, s.Size())
		}
		for _, b := range s.figures[:i] {
			if a.at.X+1 < b.at.X+b.size.Width && b.at.X+1 < a.at.X+a.size.Width && a.at.Y+3 < b.at.Y+b.size.Height && b.at.Y+3 < a.at.Y+a.size.Height {
				t.Errorf("%q lies over %q (unit %v)", a.text, b.text, s.say.Unit)
			}
		}
	}
	for _, o := range s.box.Objects {
		hole, ok := o.(*fynecanvas.Circle)
		if !ok {
			continue
		}
		for _, o := range s.box.Objects {
			name, ok := o.(*fynecanvas.Text)
			if !ok || slices.ContainsFunc(s.figures, func(f placedFigure) bool { return f.text == name.Text }) {
				continue // figures have a ground of their own
			}
			a, b := name.Position(), hole.Position()
			if a.X < b.X+hole.Size().Width && b.X < a.X+name.Size().Width && a.Y < b.Y+hole.Size().Height && b.Y < a.Y+name.Size().Height {
				t.Errorf("a hole lies in the letters of %q (unit %v)", name.Text, s.say.Unit)
			}
		}
	}
}

// A hole that is removed by the keyboard gives the focus to the next one's button.
func TestRemovingByKeyboardKeepsTheFocus(t *testing.T) {
	p, w, _ := open(t, sample(t))
	g := p.form.grids[0]
	columns, holes := len(g.columns)+1, len(p.sheet.Runner.Lengths[0].Screws)
	w.Canvas().Focus(g.stops[columns-1])
	for left := holes - 1; left >= 0; left-- {
		w.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
		if n := len(p.sheet.Runner.Lengths[0].Screws); n != left {
			t.Fatalf("%d holes are left, want %d", n, left)
		}
		if left > 0 && w.Canvas().Focused() != g.stops[columns-1] {
			t.Fatalf("with %d left the focus is at %v", left, w.Canvas().Focused())
		}
	}
	if f := w.Canvas().Focused(); f != nil {
		t.Errorf("the focus is still at %v, which is gone", f)
	}
}
