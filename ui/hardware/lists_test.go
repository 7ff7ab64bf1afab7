package hardware

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/paint"
	"frontlay/ui/sketch"
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

// The buttons of the form in their order; × are those of lengths, screws, drawers.
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
	if w.Canvas().Focused() != p.field(t, "runner.lengths[4].length").entry {
		t.Error("the new row has not the focus")
	}
	press(t, p, "Add", addScrew)
	press(t, p, "×", 5)
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
	press(t, p, "×", 0)
	press(t, p, "×", 4+3)
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
					checkPlaces(t, p.sketch, u)
				}
			}
		}
	}
}

func checkPlaces(t *testing.T, s *sketch.Sketch, unit length.Unit) {
	t.Helper()
	whole := paint.Box{X2: s.Size().Width, Y2: s.Size().Height}
	for i := range s.Written().Texts {
		a := &s.Written().Texts[i]
		if !paint.OfBox(a.Box).Within(whole) {
			t.Errorf("%q lies past the edge, at %v of %v", a.Lines[0].Text, a.Box, s.Size())
		}
		for k := range i {
			if b := &s.Written().Texts[k]; paint.OfBox(a.Box).Overlaps(paint.OfBox(b.Box)) {
				t.Errorf("%q lies over %q (unit %v)", a.Lines[0].Text, b.Lines[0].Text, unit)
			}
		}
		if _, figure := a.Mark.(*drawing.Dimension); figure {
			continue // it has a ground of its own
		}
		for _, o := range test.WidgetRenderer(s).Objects()[0].(*fyne.Container).Objects {
			if hole, ok := o.(*fynecanvas.Circle); ok && paint.OfBox(a.Box).Overlaps(paint.BoxAt(hole.Position(), hole.Size())) {
				t.Errorf("a hole lies in the letters of %q (unit %v)", a.Lines[0].Text, unit)
			}
		}
	}
	for i := range s.Written().Dimensions {
		if s.Written().Dimensions[i].Text < 0 {
			t.Errorf("the figure of %s has no place (unit %v)", s.Written().Dimensions[i].Of.Of.Figure, unit)
		}
	}
}

// A hole that is removed by the keyboard gives the focus to the next one's button.
func TestRemovingByKeyboardKeepsTheFocus(t *testing.T) {
	p, w, _ := open(t, sample(t))
	g := p.form.grids[1]
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

// Lengths are typed into one field as they stand in a document; each gets what the
// first has. Screw holes are typed the same way, and keep what else belongs to them.
func TestSeveralFiguresInOneField(t *testing.T) {
	for name, c := range map[string]struct {
		path, text string
		got        func(*model.HardwareSheet) []length.Length
		want       []length.Length
	}{
		"lengths":       {"runner.lengths[0].length", "450 350 400 600", lengthsOf, []length.Length{350 * mm, 400 * mm, 450 * mm, 600 * mm}},
		"pasted":        {"runner.lengths[0].length", "350\t400\n450", lengthsOf, []length.Length{350 * mm, 400 * mm, 450 * mm}},
		"screws":        {"runner.lengths[0].screws", "37 69 261.5", backsOf, []length.Length{37 * mm, 69 * mm, 261500 * length.Micrometre}},
		"with commas":   {"runner.lengths[0].screws", "37, 69", backsOf, []length.Length{37 * mm, 69 * mm}},
		"none":          {"runner.lengths[0].screws", "", backsOf, nil},
		"with units":    {"drawers[0].holes", "48 mm 3 1/2 in 80", holesOf, []length.Length{48 * mm, 80 * mm, 224 * length.Inch64th}},
		"only one size": {"runner.lengths[0].length", "900 - 2*18", lengthsOf, []length.Length{864 * mm}},
	} {
		t.Run(name, func(t *testing.T) {
			s := sample(t).Clone()
			s.Runner.Lengths = s.Runner.Lengths[:1]
			p, w, changes := open(t, s)
			enter(w, p.field(t, c.path), c.text)
			if got := c.got(p.Sheet()); !slices.Equal(got, c.want) || *changes != 1 {
				t.Errorf("they are %v after %d changes, want %v", got, *changes, c.want)
			}
			for _, l := range p.Sheet().Runner.Lengths {
				if l.Load != s.Runner.Lengths[0].Load {
					t.Errorf("%v carries %v", l.Length, l.Load)
				}
				for _, h := range l.Screws {
					if was := s.Runner.Lengths[0].Screws[0]; h.Up != was.Up || h.Diameter != was.Diameter || h.Depth != was.Depth {
						t.Errorf("a hole is %v", h)
					}
				}
			}
		})
	}
}

func lengthsOf(s *model.HardwareSheet) (all []length.Length) {
	for _, l := range s.Runner.Lengths {
		all = append(all, l.Length)
	}
	return all
}

func backsOf(s *model.HardwareSheet) (all []length.Length) {
	for _, h := range s.Runner.Lengths[0].Screws {
		all = append(all, h.Back)
	}
	return all
}

func holesOf(s *model.HardwareSheet) []length.Length { return s.Drawers[0].Holes }

// Enter goes down a column and makes a row below the last one; the rows are in order
// once the sheet is taken.
func TestEnterMakesRows(t *testing.T) {
	s := sample(t).Clone()
	s.Runner.Lengths = s.Runner.Lengths[:1]
	p, w, _ := open(t, s)
	w.Canvas().Focus(p.field(t, "runner.lengths[0].length").entry)
	for _, text := range []string{"500", "400", "450"} {
		e := w.Canvas().Focused().(*field.Entry)
		e.SetText(text)
		e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	}
	if w.Canvas().Focused() != p.field(t, "runner.lengths[3].length").entry {
		t.Errorf("the focus is at %v", w.Canvas().Focused())
	}
	p.field(t, "runner.lengths[3].length").entry.SetText("550")
	p.Take()
	if got := lengthsOf(p.Sheet()); !slices.Equal(got, []length.Length{400 * mm, 450 * mm, 500 * mm, 550 * mm}) {
		t.Errorf("the lengths are %v", got)
	}
}

// The holes below the table are those of the length that the keys are at.
func TestTheTableChoosesTheLength(t *testing.T) {
	p, w, _ := open(t, sample(t))
	for i := range p.sheet.Runner.Lengths {
		w.Canvas().Focus(p.field(t, fmt.Sprintf("runner.lengths[%d].load", i)).entry)
		if p.chosen.runner != i {
			t.Errorf("chosen is %d at %d", p.chosen.runner, i)
		}
		enter(w, p.field(t, fmt.Sprintf("runner.lengths[%d].screws[0].up", i)), fmt.Sprint(20+i))
		if got := p.sheet.Runner.Lengths[i].Screws[0].Up; got != length.MM(int64(20+i)) {
			t.Errorf("of length %d it is %v", i, got)
		}
	}
}

// A press on a name in a table selects it whole, as it does a figure beside it: what
// is typed replaces the name that a new height begins with.
func TestANameInATableIsReplaced(t *testing.T) {
	p, w, _ := open(t, Blank(message.Language{}))
	name := p.field(t, "drawers[].name").entry
	w.Canvas().Focus(name)
	at := fyne.PointEvent{Position: fyne.NewPos(name.Size().Width/2, 10)}
	name.MouseDown(&desktop.MouseEvent{PointEvent: at, Button: desktop.MouseButtonPrimary})
	name.MouseUp(&desktop.MouseEvent{PointEvent: at, Button: desktop.MouseButtonPrimary})
	test.Tap(name)
	name.TypedRune('x')
	if name.Text != "x" {
		t.Errorf("the name is %q", name.Text)
	}
}
