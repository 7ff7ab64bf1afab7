package hardware

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/assets"
	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

const mm = length.Millimetre

func sample(t *testing.T) *model.HardwareSheet {
	t.Helper()
	data, ok := assets.Sheet("sample-a")
	if !ok {
		t.Fatal("the sample is missing")
	}
	s, err := yamlfile.ReadSheet("sample-a", data)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// open shows a sheet in a window of 1000 × 700, and counts the changes it tells.
func open(t *testing.T, s *model.HardwareSheet) (*Page, fyne.Window, *int) {
	t.Helper()
	a := test.NewTempApp(t)
	a.Settings().SetTheme(&look.Theme{Mode: look.LightMode})
	changes := 0
	p := New(Options{Sheet: s, Say: func() message.Language { return message.Language{} }, Changed: func(*model.HardwareSheet) { changes++ }})
	w := test.NewTempWindow(t, p.Content())
	w.Resize(fyne.NewSize(1000, 700))
	return p, w, &changes
}

// field finds a field by its path.
func (p *Page) field(t *testing.T, path string) *row {
	t.Helper()
	r := p.form.rowAt(path)
	if r == nil {
		t.Fatalf("no field for %s", path)
	}
	return r
}

// enter types into a field as a person does, and goes on to another one.
func enter(w fyne.Window, r *row, text string) {
	w.Canvas().Focus(r.entry)
	r.entry.SetText(text)
	w.Canvas().Unfocus()
}

// Every figure that the file has a key for has a field, and every field shows a
// key of the file.
func TestEveryKeyHasAField(t *testing.T) {
	s := sample(t).Clone()
	s.Drawers[0].More = []model.HolePattern{{Up: 80 * mm}}
	s.Stabiliser.Holes = []model.StabiliserHole{{Up: 10 * mm}}
	p, _, _ := open(t, s)
	other := map[string]bool{ // keys with a field of another kind, or none of their own
		"frontlay_hardware": true, "note": true, "sample": true, "unit": true, "connector.kind": true, "box.corners": true, "box.bottom": true, "drawers[].more_holes[].sides": true,
	}
	have := map[string]bool{}
	for _, r := range p.form.all() {
		have[r.path] = true
		if r.like.Doc.Empty() {
			t.Errorf("%s is no key of the file", r.path)
		}
	}
	for _, path := range paths("", figure.Sheet(new(model.HardwareSheet))) {
		if !have[path] && !other[path] {
			t.Errorf("%s has no field", path)
		}
	}
}

// paths are those of the figures in rows, those of mappings and lists apart.
func paths(path string, rows []figure.Row) []string {
	var all []string
	for _, r := range rows {
		switch v := r.Value.(type) {
		case *figure.Group:
			all = append(all, paths(path+r.Key+".", v.Rows())...)
		case *figure.List:
			all = append(all, paths(path+r.Key+"[].", v.Empty())...)
		default:
			all = append(all, path+r.Key)
		}
	}
	return all
}

// A size that is typed makes a new sheet; the old one stays as it was.
func TestTypeFigures(t *testing.T) {
	cases := map[string]struct {
		path, text string
		got        func(*model.HardwareSheet) length.Length
		want       length.Length
	}{
		"a size":          {"runner.setback", "4.5", func(s *model.HardwareSheet) length.Length { return s.Runner.Setback }, 4500 * length.Micrometre},
		"a sum":           {"bottom.deduct_width", "2*12+40", func(s *model.HardwareSheet) length.Length { return s.Bottom.DeductWidth }, 64 * mm},
		"in another unit": {"connector.inset", "3/4 in", func(s *model.HardwareSheet) length.Length { return s.Connector.Inset }, 48 * length.Inch64th},
		"of a length":     {"runner.lengths[0].length", "310", func(s *model.HardwareSheet) length.Length { return s.Runner.Lengths[0].Length }, 310 * mm},
		"of a screw":      {"runner.lengths[0].screws[1].back", "160", func(s *model.HardwareSheet) length.Length { return s.Runner.Lengths[0].Screws[1].Back }, 160 * mm},
		"of holes":        {"drawers[0].holes", "80; 40", func(s *model.HardwareSheet) length.Length { return s.Drawers[0].Holes[0] }, 40 * mm},
		"left out again":  {"runner.screw_reach", " ", func(s *model.HardwareSheet) length.Length { return s.Runner.ScrewReach }, 0},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			s := sample(t).Clone()
			s.Runner.ScrewReach = 9 * mm
			before := s.Clone()
			p, w, changes := open(t, s)
			enter(w, p.field(t, c.path), c.text)
			if got := c.got(p.Sheet()); got != c.want {
				t.Errorf("it is %v, want %v", got, c.want)
			}
			if *changes != 1 || !p.Unsaved() {
				t.Errorf("%d changes are told, unsaved: %v", *changes, p.Unsaved())
			}
			if c.got(s) != c.got(before) || p.Sheet() == s {
				t.Error("the sheet was changed in place")
			}
			if !p.Undo() || p.Unsaved() || p.Undo() {
				t.Error("one undo does not lead back")
			}
			if !p.Redo() || c.got(p.Sheet()) != c.want || p.Redo() {
				t.Error("redo does not make the change again")
			}
		})
	}
}

// Millimetres that are typed among inches stay millimetres; what a 64th says exactly is
// said so.
func TestMillimetresAmongInches(t *testing.T) {
	for typed, want := range map[string]string{"5 mm": "5 mm", "12.5 mm": "12.5 mm", "25.4 mm": "1", "3/16": "3/16", "0.5 cm": "5 mm"} {
		for _, u := range []length.Unit{length.UnitInch, length.UnitInchDecimal} {
			if u == length.UnitInchDecimal && typed == "3/16" {
				continue
			}
			s := sample(t).Clone()
			s.Unit = u
			p, w, _ := open(t, s)
			enter(w, p.field(t, "connector.diameter"), typed)
			enter(w, p.field(t, "drawers[0].holes"), "1; "+typed)
			if got := p.field(t, "connector.diameter").entry.Text; got != want {
				t.Errorf("in %v %q comes back as %q, want %q", u, typed, got, want)
			}
			if got := p.field(t, "drawers[0].holes").entry.Text; got != want+"; 1" && got != "1; "+want {
				t.Errorf("in %v a hole at %q comes back in %q", u, typed, got)
			}
		}
	}
}

// What can't be read is told beside the field and never gets into the sheet.
func TestTypeNonsense(t *testing.T) {
	for path, text := range map[string]string{
		"runner.setback": "wide", "drawers[0].holes": "40; x", "runner.lengths[0].load": "much", "connector.depth": "",
	} {
		t.Run(path, func(t *testing.T) {
			p, w, changes := open(t, sample(t))
			r := p.field(t, path)
			w.Canvas().Focus(r.entry)
			r.entry.SetText(text)
			if r.entry.Take() {
				t.Error("it was taken")
			}
			w.Canvas().Unfocus()
			if *changes != 0 || p.Unsaved() || r.entry.Text == text {
				t.Errorf("%d changes; the field says %q", *changes, r.entry.Text)
			}
		})
	}
}

// Figures that contradict one another can be typed, are told, and lead to their
// field.
func TestFaultsLeadToTheirField(t *testing.T) {
	p, w, _ := open(t, sample(t))
	if len(p.Problems()) != 0 {
		t.Fatal(p.Problems())
	}
	p.chosen.drawer = 1
	p.update()
	enter(w, p.field(t, "drawers[1].side_top"), "20")
	p.chosen.drawer = 0
	p.update()
	found := p.Problems()
	if len(found) == 0 || found[0].Path != "drawers[1].side_top" {
		t.Fatalf("found %v", found)
	}
	p.goToPath(found[0].Path)
	r := p.field(t, found[0].Path)
	if p.chosen.drawer != 1 || w.Canvas().Focused() != r.entry || r.entry.Text != "20" {
		t.Errorf("drawer %d is shown, and its field says %q", p.chosen.drawer, r.entry.Text)
	}
	if err := p.judge(r, func(k *picked) { k.drawer.SideTop = 21 * mm }); err == nil {
		t.Error("typing another bad figure tells nothing")
	}
	if err := p.judge(r, func(k *picked) { k.drawer.SideTop = 148 * mm }); err != nil {
		t.Errorf("typing a good figure tells %v", err)
	}
}

// The field with the focus is the one that the sketch marks and the caption
// tells of; the sketch turns to the view that shows it.
func TestFocusMarksTheFigure(t *testing.T) {
	p, w, _ := open(t, sample(t))
	for path, side := range map[string]bool{
		"runner.setback": true, "side_clearance": false, "connector.diameter": false,
		"runner.lengths[0].screws[2].up": true, "drawers[0].rail_top": false, "back.thickness": true,
	} {
		w.Canvas().Focus(p.field(t, path).entry)
		plain, _ := plainPath(path)
		if p.sketch.Focus != plain || p.onSide != side {
			t.Errorf("%s: the sketch marks %s, from the side: %v", path, p.sketch.Focus, p.onSide)
		}
		if p.caption.text.Text != p.newRow(spec{path: plain}, -1).like.Doc.String() {
			t.Errorf("%s: the caption says %q", path, p.caption.text.Text)
		}
		shown := false
		for _, m := range p.sketch.Drawing.Marks {
			if _, ok := m.(*drawing.Dimension); ok {
				shown = shown || view.ShowsFigure(m, plain)
			}
		}
		if !shown {
			t.Errorf("%s is not on the sketch", path)
		}
	}
	if p.chosen.screw != 2 {
		t.Errorf("screw %d is dimensioned", p.chosen.screw)
	}
}

// A click on a figure of the sketch leads to its field.
func TestClickOnTheSketch(t *testing.T) {
	p, w, _ := open(t, sample(t))
	clicked := 0
	for _, f := range p.sketch.Written().Texts {
		if f.Of.Of.Figure == "" {
			continue
		}
		at := paint.OfBox(f.Box)
		test.TapCanvas(w.Canvas(), fyne.CurrentApp().Driver().AbsolutePositionForObject(p.sketch).AddXY((at.X1+at.X2)/2, (at.Y1+at.Y2)/2))
		r := p.form.rowOf(f.Of.Of.Figure)
		if r == nil || w.Canvas().Focused() != r.entry {
			t.Errorf("a click on %q does not lead to its field", f.Lines[0].Text)
			continue
		}
		clicked++
		w.Canvas().Unfocus()
		p.about, p.onSide = nil, false
		p.draw()
	}
	if clicked < 10 {
		t.Errorf("only %d figures are on the sketch", clicked)
	}
}

// Steps of one field, one after the other, are undone at once.
func TestStepsOfAFieldAreOneChange(t *testing.T) {
	p, w, _ := open(t, sample(t))
	r := p.field(t, "side_clearance")
	side := func() length.Length { return p.Sheet().SideClearance }
	was := side()
	w.Canvas().Focus(r.entry)
	for range 3 {
		r.entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	}
	if got := side(); got != was+3*mm {
		t.Fatalf("the clearance is %v", got)
	}
	if p.Undo(); side() != was || p.Undo() {
		t.Errorf("one undo leads to %v", side())
	}
}
