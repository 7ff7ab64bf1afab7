package inspector_test

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/inspector"
	"frontlay/ui/replay"
	"frontlay/ui/session"
)

// shown is the inspector of the demo in a window of its own.
type shown struct {
	*inspector.Panel
	t       *testing.T
	session *session.Session
	window  fyne.Window
	told    []string
}

func show(t *testing.T) *shown {
	t.Helper()
	test.NewTempApp(t)
	s := &shown{t: t, session: session.New(projecttest.Demo(t), layout.Solve)}
	s.Panel = inspector.New(s.session, func() message.Language { return message.Language{Unit: s.session.Project().Unit} },
		func(m message.Message) { s.told = append(s.told, m.String()) })
	s.Begin()
	s.window = test.NewTempWindow(t, s.Object)
	s.window.Resize(fyne.NewSize(400, 2400))
	return s
}

// on goes on with the next case of a table in the same window.
func (s *shown) on(t *testing.T) {
	s.t, s.told = t, nil
	s.window.Canvas().Unfocus()
	s.session.Go(0)
}

func front(cabinet, bay, front int) drawing.Subject {
	return session.Front(model.Place{Cabinet: cabinet, Bay: bay, Front: front})
}

// field is the field of a label, with the focus.
func (s *shown) field(label string) *field.Entry {
	s.t.Helper()
	e := s.Fields()[label]
	if e == nil {
		s.t.Fatalf("there is no field %q", label)
	}
	s.window.Canvas().Focus(e)
	return e
}

// write types over what a field holds, as a person does who has clicked it twice.
func (s *shown) write(label, text string) *field.Entry {
	s.t.Helper()
	e := s.field(label)
	e.TypedShortcut(&fyne.ShortcutSelectAll{})
	if text == "" {
		e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyBackspace})
	}
	test.Type(e, text)
	return e
}

func (s *shown) enter(label, text string) {
	s.t.Helper()
	s.write(label, text).TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
}

func (s *shown) done() int { _, n := s.session.Steps(); return n }

// Each kind of thing shows what it is, its own fields, and none of another's.
func TestEachSelectionShowsItsOwn(t *testing.T) {
	s := show(t)
	mixed := []drawing.Subject{front(0, 0, 0), front(0, 0, 1)}
	for name, c := range map[string]struct {
		sel      []drawing.Subject
		words    []string
		fields   []string
		without  []string
		nonWords []string
	}{
		"nothing":      {nil, []string{"Glaze bench project", "Boards", "Reveals", "Hole rows in the carcass sides"}, []string{"Title", "Carcass", "Notes"}, []string{"Height", "Drop", "Width", "Pitch"}, nil},
		"a drawer":     {mixed[:1], []string{"Glaze bench › Glazes › Bay 1 Buckets 1 drawer", "Sample A", "Worked out", "861 × 320 mm", "How it came about"}, []string{"Name", "Height", "Drop", "Contents weight", "Contents height"}, []string{"Title", "Width", "Below", "Share of the rest", "Least height", "Diameter"}, nil},
		"a niche":      {[]drawing.Subject{front(1, 1, 1)}, []string{"Notebooks 8 open niche", "Front size"}, []string{"Name", "Height"}, []string{"Drop", "Contents weight"}, []string{"Cover below"}},
		"two fronts":   {mixed, []string{"2 fronts"}, []string{"Height", "Drop"}, []string{"Name", "Title"}, []string{"Worked out"}},
		"a division":   {[]drawing.Subject{{Kind: drawing.DivisionThing}}, []string{"Division", "Drag the division"}, []string{"Below", "Above"}, []string{"Height", "Title"}, nil},
		"a partition":  {[]drawing.Subject{{Kind: drawing.PartitionThing, Place: model.Place{Cabinet: 1}}}, []string{"Partition"}, []string{"Clear width left", "Clear width right"}, []string{"Below", "Clear width"}, nil},
		"a bay":        {[]drawing.Subject{{Kind: drawing.BayThing, Place: model.Place{Cabinet: 1, Front: -1}}}, []string{"Glaze bench › Test tiles Bay 1", "Hardware", "Remove bay"}, []string{"Clear width"}, []string{"Clear width left", "Width", "Step to the next"}, nil},
		"a cabinet":    {[]drawing.Subject{session.Cabinet(model.Place{Cabinet: 2})}, []string{"Glaze bench Oxides cabinet", "Size Sample A, metal-sided drawers", "Reveals of this cabinet", "3 of 3", "At its right"}, []string{"Width", "Plinth", "Left", "End panel"}, []string{"Title", "Height", "Carcass"}, nil},
		"all gone now": {[]drawing.Subject{front(7, 7, 7)}, []string{"project"}, []string{"Title"}, []string{"Height"}, nil},
	} {
		t.Run(name, func(t *testing.T) {
			s.on(t)
			s.session.Select(c.sel...)
			words := replay.Words(s.Object)
			for _, w := range c.words {
				if !strings.Contains(words, w) {
					t.Errorf("%q is not shown in %s", w, words)
				}
			}
			for _, w := range c.nonWords {
				if strings.Contains(words, w) {
					t.Errorf("%q is shown", w)
				}
			}
			for _, f := range c.fields {
				if s.Fields()[f] == nil {
					t.Errorf("there is no field %q", f)
				}
			}
			for _, f := range c.without {
				if s.Fields()[f] != nil {
					t.Errorf("there is a field %q", f)
				}
			}
		})
	}
}

// What is typed and entered is in the project by one step with a label, the
// figures that follow from it are shown at once, and undo leads back.
func TestEnterChangesTheProject(t *testing.T) {
	s := show(t)
	for name, c := range map[string]struct {
		sel         drawing.Subject
		field, text string
		shows       string // in the field afterwards
		words       string // beside it
		of          func(p *model.Project) any
		want        any
	}{
		"a height":          {front(0, 0, 0), "Height", "300", "300", "861 × 300 mm", func(p *model.Project) any { return p.FrontAt(model.Place{}).Height }, length.MM(300)},
		"a sum":             {front(0, 0, 0), "Height", "320-2*18", "284", "861 × 284 mm", func(p *model.Project) any { return p.FrontAt(model.Place{}).Height }, length.MM(284)},
		"another unit":      {front(0, 0, 0), "Height", "30 cm", "300", "", func(p *model.Project) any { return p.FrontAt(model.Place{}).Height }, length.MM(300)},
		"a decimal comma":   {front(0, 0, 0), "Drop", "2,5", "2.5", "", func(p *model.Project) any { return *p.FrontAt(model.Place{}).Drop }, 2500 * length.Micrometre},
		"a name":            {front(0, 0, 0), "Name", "Pails", "Pails", "", func(p *model.Project) any { return p.FrontAt(model.Place{}).Name }, "Pails"},
		"a weight":          {front(0, 0, 0), "Contents weight", "24,5", "24.5", "", func(p *model.Project) any { return p.FrontAt(model.Place{}).Contents.Weight }, 24.5},
		"a cabinet's width": {session.Cabinet(model.Place{}), "Width", "900", "900", "", func(p *model.Project) any { return p.Cabinets[0].Width }, length.MM(900)},
		"a bay's width":     {drawing.Subject{Kind: drawing.BayThing, Place: model.Place{Cabinet: 1, Front: -1}}, "Clear width", "400", "400", "", func(p *model.Project) any { return p.Cabinets[1].Bays[0].Width }, length.MM(400)},
		"a board":           {drawing.Subject{}, "Fronts", "19", "19", "", func(p *model.Project) any { return p.Boards.Front.Thickness }, length.MM(19)},
	} {
		t.Run(name, func(t *testing.T) {
			s.on(t)
			s.session.Select(c.sel)
			was := s.field(c.field).Text
			s.enter(c.field, c.text)
			if got := c.of(s.session.Project()); got != c.want {
				t.Errorf("the project has %v, want %v", got, c.want)
			}
			if got := s.Fields()[c.field].Text; got != c.shows {
				t.Errorf("the field shows %q, want %q", got, c.shows)
			}
			if words := replay.Words(s.Object); !strings.Contains(words, c.words) {
				t.Errorf("%q is not shown in %s", c.words, words)
			}
			if label, ok := s.session.CanUndo(); s.done() != 1 || !ok || label.Empty() {
				t.Errorf("%d steps, the last called %q", s.done(), label)
			}
			s.session.Undo()
			if got := s.Fields()[c.field].Text; got != was {
				t.Errorf("after undo the field shows %q, want %q", got, was)
			}
		})
	}
}

// What can't be is told below the field while it is typed and when it is entered;
// the project stays as it is, and who leaves the field hears what became of it.
func TestWhatIsRefusedChangesNothing(t *testing.T) {
	s := show(t)
	for name, c := range map[string]struct {
		sel               drawing.Subject
		field, text, says string
	}{
		"no size":            {front(0, 0, 0), "Height", "tall", "not a number"},
		"too high":           {front(0, 0, 0), "Height", "2000", "at most"},
		"less than nothing":  {front(0, 0, 0), "Height", "-5", "-5"},
		"an unknown unit":    {front(0, 0, 0), "Height", "30 px", "px"},
		"no thickness":       {drawing.Subject{}, "Carcass", "0", "0"},
		"no width":           {session.Cabinet(model.Place{}), "Width", "0", "0"},
		"wider than its bay": {drawing.Subject{Kind: drawing.PartitionThing, Place: model.Place{Cabinet: 1}}, "Clear width left", "5000", "left"},
	} {
		t.Run(name, func(t *testing.T) {
			s.on(t)
			s.session.Select(c.sel)
			e := s.write(c.field, c.text)
			was, before := s.session.Project(), e
			e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
			if s.session.Project() != was || s.done() != 0 {
				t.Fatal("the project has changed")
			}
			if words := replay.Words(s.Object); !strings.Contains(words, c.says) {
				t.Errorf("%q is not said in %s", c.says, words)
			}
			if e.Text != c.text || s.Fields()[c.field] != before {
				t.Errorf("the field shows %q; what was typed is to stay while it has the focus", e.Text)
			}
			s.window.Canvas().Unfocus()
			if e.Text == c.text || len(s.told) == 0 || !strings.Contains(s.told[len(s.told)-1], c.text) {
				t.Errorf("left, the field shows %q and %q is told", e.Text, s.told)
			}
		})
	}
}

// A number that can't be is refused as a size is.
func TestNumbersAreRefused(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 1))
	for _, text := range []string{"two", "1e400", "0x10 kg"} {
		s.enter("Share of the rest", text)
		if s.done() != 0 {
			t.Fatalf("%q was taken", text)
		}
		s.field("Share of the rest").Restore()
	}
}

// Esc gives back what the document holds.
func TestEscGivesBack(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	e := s.write("Height", "123")
	e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if e.Text != "320" || s.done() != 0 {
		t.Errorf("the field shows %q after %d steps", e.Text, s.done())
	}
}

// An emptied field gives the figure back to what computes it, which is shown in
// grey: a drop, and the reveals of a cabinet that are then the project's.
func TestEmptiedFieldsAreWorkedOut(t *testing.T) {
	s := show(t)
	for name, c := range map[string]struct {
		sel         drawing.Subject
		field, text string
		given       func(p *model.Project) bool
	}{
		"a drop":      {front(0, 0, 1), "Drop", "7", func(p *model.Project) bool { return p.FrontAt(model.Place{Front: 1}).Drop != nil }},
		"a reveal":    {session.Cabinet(model.Place{}), "Left", "7", func(p *model.Project) bool { return p.Cabinets[0].Reveals != nil }},
		"an end":      {session.Cabinet(model.Place{}), "End panel", "19", func(p *model.Project) bool { return p.Cabinets[0].Left.EndPanel > 0 }},
		"a bay":       {drawing.Subject{Kind: drawing.BayThing, Place: model.Place{Cabinet: 1, Front: -1}}, "Clear width", "400", func(p *model.Project) bool { return p.Cabinets[1].Bays[0].Width > 0 }},
		"a row pitch": {drawing.Subject{}, "Pitch", "25", func(p *model.Project) bool { return p.HoleRows.Pitch > 0 }},
	} {
		t.Run(name, func(t *testing.T) {
			s.on(t)
			if err := s.session.Do(edit.Set{At: model.Whole, Key: "hole_rows.mode", Value: int(model.RowsMoveFronts)}); err != nil {
				t.Fatal(err)
			}
			s.session.Select(c.sel)
			grey := s.field(c.field).PlaceHolder
			if e := s.field(c.field); e.Text != "" || grey == "" {
				t.Fatalf("at first it holds %q, grey %q", e.Text, grey)
			}
			s.enter(c.field, c.text)
			if e := s.field(c.field); e.Text != c.text || !c.given(s.session.Project()) {
				t.Fatalf("entered, it holds %q", e.Text)
			}
			s.enter(c.field, "")
			if e := s.field(c.field); e.Text != "" || e.PlaceHolder != grey || c.given(s.session.Project()) {
				t.Errorf("emptied, it holds %q, grey %q, want grey %q", e.Text, e.PlaceHolder, grey)
			}
		})
	}
}

// Fields of several fronts show what all have, and set it for all in one step.
func TestSeveralFrontsAtOnce(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 1), front(0, 0, 2))
	if e := s.field("Drop"); e.Text != "" || e.PlaceHolder == "several" {
		t.Errorf("both drops are worked out to the same: %q, grey %q", e.Text, e.PlaceHolder)
	}
	if e := s.field("Height"); e.Text != "" || e.PlaceHolder != "several" {
		t.Errorf("the heights differ: %q, grey %q", e.Text, e.PlaceHolder)
	}
	s.enter("Height", "150")
	for i := 1; i <= 2; i++ {
		if h := s.session.Project().FrontAt(model.Place{Front: i}).Height; h != length.MM(150) {
			t.Errorf("front %d is %v high", i+1, h)
		}
	}
	if label, _ := s.session.CanUndo(); s.done() != 1 || !strings.Contains(label.String(), "2 fronts") {
		t.Errorf("%d steps, the last called %q", s.done(), label)
	}
	if e := s.field("Height"); e.Text != "150" {
		t.Errorf("now both are the same: %q", e.Text)
	}
}

// The two heights at a division keep their sum.
func TestDivisionKeepsTheSum(t *testing.T) {
	s := show(t)
	s.session.Select(drawing.Subject{Kind: drawing.DivisionThing})
	sum := func() length.Length {
		f := s.session.Result().Plan.Fronts
		return f[0].Face.Height() + f[1].Face.Height()
	}
	was := sum()
	for _, c := range [][2]string{{"Below", "300"}, {"Above", "200"}} {
		s.enter(c[0], c[1])
		if got := s.field(c[0]).Text; got != c[1] || sum() != was {
			t.Errorf("%s is %q; the two are %v together, want %v", c[0], got, sum(), was)
		}
	}
}

// What is being typed is about what was selected: selecting another front neither
// changes that one nor leaves the digits in its field.
func TestTypingNeverLandsOnAnotherFront(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	s.write("Height", "150")
	s.session.Select(front(0, 0, 1))
	if h := s.session.Project().FrontAt(model.Place{Front: 1}).Height; h != 0 {
		t.Errorf("the other front is %v high now", h)
	}
	if e := s.Fields()["Height"]; e.Text != "" {
		t.Errorf("its field holds %q", e.Text)
	}
	s.window.Canvas().Unfocus()
	if h := s.session.Project().FrontAt(model.Place{Front: 1}).Height; h != 0 {
		t.Errorf("once the field is left, the other front is %v high", h)
	}
}

// A change made elsewhere shows in the fields, but not over what is being typed.
func TestChangesFromElsewhereShow(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	s.write("Name", "Pai")
	if err := s.session.Do(edit.SetHeight{Height: length.MM(310)}); err != nil {
		t.Fatal(err)
	}
	if h, n := s.Fields()["Height"].Text, s.Fields()["Name"].Text; h != "310" || n != "Pai" {
		t.Errorf("the height shows %q, the name that is being typed %q", h, n)
	}
	if err := s.session.Do(edit.SetUnit{Unit: length.UnitInch}); err != nil {
		t.Fatal(err)
	}
	if got := s.Fields()["Height"].Text; got != "≈ 12 13/64" { // 310 / 25.4 = 12.2047; 13/64 = 0.2031
		t.Errorf("in inches the height shows %q", got)
	}
}

// Taking what is typed before the panel goes takes what can be and gives up the rest.
func TestTake(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	s.Fields()["Name"].SetText("Pails")
	s.Fields()["Height"].SetText("tall")
	s.Take()
	if f := s.session.Project().FrontAt(model.Place{}); f.Name != "Pails" || f.Height != length.MM(320) || s.done() != 1 {
		t.Errorf("taken: %q, %v, in %d steps", f.Name, f.Height, s.done())
	}
	if got := s.Fields()["Height"].Text; got != "320" {
		t.Errorf("what can't be taken stays as %q", got)
	}
}

// A front that becomes a niche has no drawer to be asked about any more.
func TestANicheHasNoDrawer(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	if err := s.session.Do(edit.SetKind{Kind: model.OpenNiche}); err != nil {
		t.Fatal(err)
	}
	if s.Fields()["Drop"] != nil || strings.Contains(replay.Words(s.Object), "Cover below") {
		t.Error("it still shows the drawer's fields")
	}
	s.session.Undo()
	if s.Fields()["Drop"] == nil || !strings.Contains(replay.Words(s.Object), "Cover below") {
		t.Error("a drawer again, it shows no drawer's fields")
	}
}

// Before it begins the panel has no fields: a window can be on the screen first.
func TestItIsEmptyUntilItBegins(t *testing.T) {
	s := show(t)
	late := inspector.New(s.session, func() message.Language { return message.Language{} }, func(message.Message) {})
	s.session.Select(front(0, 0, 0))
	if n := len(late.Fields()); n != 0 {
		t.Errorf("%d fields", n)
	}
	late.Begin()
	if late.Fields()["Height"] == nil {
		t.Error("begun, there is no height of the front that is selected")
	}
}
