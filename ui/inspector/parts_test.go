package inspector_test

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/inspector"
	"frontlay/ui/replay"
	"frontlay/ui/session"
)

// words are those that can be pressed and begin so; nil: there are none.
func (s *shown) words(begin string) *field.Words {
	for _, w := range replay.All[*field.Words](s.Object) {
		if strings.HasPrefix(w.Named(), begin) {
			return w
		}
	}
	return nil
}

func (s *shown) fold(title string) *field.Fold {
	s.t.Helper()
	for _, f := range replay.All[*field.Fold](s.Object) {
		if f.Named() == title {
			return f
		}
	}
	s.t.Fatalf("there is no section %q", title)
	return nil
}

// spoil lowers the runner of a front so far that its drawer bottom shows.
func (s *shown) spoil() {
	s.t.Helper()
	if err := s.session.Do(edit.Set{At: model.Place{Front: 1}, Key: "drop", Value: length.MM(-30)}); err != nil {
		s.t.Fatal(err)
	}
	s.session.Select(front(0, 0, 1))
}

// A section that is folded shows nothing of itself but what it says in short, and is
// folded for the next thing too, and for the next window.
func TestSectionsFold(t *testing.T) {
	s := show(t)
	kept := fyne.CurrentApp().Preferences()
	s.Remember(kept)
	s.session.Select(front(0, 0, 0))
	fold := s.fold("Drawer")
	if !strings.Contains(replay.Words(s.Object), "Least cover") {
		t.Fatal("it is folded at first")
	}
	test.Tap(fold)
	if words := replay.Words(s.Object); strings.Contains(words, "Least cover") || !strings.Contains(words, "Drawer tall") {
		t.Errorf("folded it shows %s", words)
	}
	s.session.Select(front(0, 0, 1))
	if strings.Contains(replay.Words(s.Object), "Least cover") {
		t.Error("it is open for another front")
	}
	other := inspector.New(s.session, func() message.Language { return message.Language{} }, func(message.Message) {})
	other.Remember(kept)
	other.Begin()
	if strings.Contains(replay.Words(other.Object), "Least cover") {
		t.Error("it is open in another window")
	}
	for _, key := range []fyne.KeyName{fyne.KeyReturn, fyne.KeyLeft, fyne.KeyRight} {
		was := fold.Open()
		fold.TypedKey(&fyne.KeyEvent{Name: key})
		if fold.Open() == was {
			t.Errorf("%s does nothing", key)
		}
	}
}

// The path names where a front is, and leads there.
func TestThePathLeadsUp(t *testing.T) {
	s := show(t)
	for _, c := range []struct {
		words string
		field string
	}{{"Bay 2", "Clear width"}, {"Test tiles", "Height of carcass"}, {"Glaze bench", "Carcass"}} {
		s.session.Select(front(1, 1, 0))
		test.Tap(s.words(c.words))
		if s.Fields()[c.field] == nil {
			t.Errorf("%s leads to %v", c.words, s.session.Selection())
		}
	}
}

// The name is read, until F2, Enter or a double click brings the keys to the field for
// another one; Enter takes it, and the keys are at the name again.
func TestANameBecomesAnother(t *testing.T) {
	for way, begin := range map[string]func(*field.Title){
		"F2":           func(n *field.Title) { n.TypedKey(&fyne.KeyEvent{Name: fyne.KeyF2}) },
		"Enter":        func(n *field.Title) { n.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn}) },
		"double click": func(n *field.Title) { n.DoubleTapped(nil) },
	} {
		s := show(t)
		s.session.Select(front(0, 0, 1))
		name := replay.All[*field.Title](s.Object)[0]
		if name.Named() != "Jars" || s.Fields()["Name"].Visible() {
			t.Fatalf("at first it says %q, the field is seen: %v", name.Named(), s.Fields()["Name"].Visible())
		}
		begin(name)
		e := s.Fields()["Name"]
		if s.window.Canvas().Focused() != e || name.Visible() {
			t.Fatalf("%s: the keys are at %T", way, s.window.Canvas().Focused())
		}
		test.Type(e, "Pots")
		e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
		if got := s.session.Project().FrontAt(model.Place{Front: 1}).Name; got != "Pots" || name.Named() != "Pots" || s.window.Canvas().Focused() != fyne.Focusable(name) {
			t.Errorf("%s: it is called %q, reads %q, the keys are at %T", way, got, name.Named(), s.window.Canvas().Focused())
		}
	}
}

// What was found about a front is told on a card; its button makes the change that the
// advice speaks of, in one step, and the card is gone.
func TestACardMends(t *testing.T) {
	s := show(t)
	s.spoil()
	mend := s.words("Mend: ")
	if mend == nil || !strings.Contains(mend.Named(), "-14 mm") {
		t.Fatalf("no button mends: %s", replay.Words(s.Object))
	}
	words, steps := replay.Words(s.Object), s.done()
	if !strings.Contains(words, "drop -14 mm") {
		t.Errorf("the advice does not say the button's figure: %s", words)
	}
	s.window.Canvas().Focus(mend)
	mend.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	if got := *s.session.Project().FrontAt(model.Place{Front: 1}).Drop; got != length.MM(-14) || s.done() != steps+1 {
		t.Errorf("the drop is %v after %d steps", got, s.done()-steps)
	}
	if strings.Contains(replay.Words(s.Object), "drawer bottom shows") {
		t.Error("it is still told")
	}
}

// A finding is accepted for a reason on its card, and taken back there.
func TestACardAccepts(t *testing.T) {
	s := show(t)
	s.spoil()
	test.Tap(s.words("Accept…"))
	reason, ok := s.window.Canvas().Focused().(*field.Text)
	if !ok {
		t.Fatalf("the keys are at %T", s.window.Canvas().Focused())
	}
	before := len(s.session.Project().Checks.Accepted)
	test.Type(reason, "the bottom is veneered")
	reason.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	kept := s.session.Project().Checks.Accepted
	if len(kept) != before+1 || kept[before].Reason != "the bottom is veneered" {
		t.Fatalf("accepted is %+v", kept)
	}
	i := slices.IndexFunc(s.session.Result().Findings, func(f check.Finding) bool { return f.Accepted == "the bottom is veneered" })
	s.session.ChooseFinding(i)
	test.Tap(s.words("No longer accept it"))
	if n := len(s.session.Project().Checks.Accepted); n != before {
		t.Errorf("%d are accepted", n)
	}
}

// A figure that was worked out tells how it came about, and stands out with a sign where
// the check blames it; so does the field that mends it.
func TestFiguresTellHowTheyCameAbout(t *testing.T) {
	s := show(t)
	s.spoil()
	at := slices.IndexFunc(replay.All[*field.Outcome](s.Object), func(o *field.Outcome) bool { return strings.HasPrefix(o.Named(), "Cover below") })
	o := replay.All[*field.Outcome](s.Object)[at]
	if o.Named() != "Cover below -16 mm" || !o.Blamed() {
		t.Errorf("%q is blamed: %v", o.Named(), o.Blamed())
	}
	test.Tap(o)
	if !strings.Contains(replay.Words(o), "cover -16 mm = drop -30 mm") {
		t.Errorf("it tells %s", replay.Words(o))
	}
	test.Tap(o)
	if strings.Contains(replay.Words(o), "=") {
		t.Error("pressed again it still tells")
	}
	if err := s.session.Do(edit.Set{At: model.Place{Front: 1}, Key: "drop", Value: length.Length(0)}); err != nil {
		t.Fatal(err)
	}
	if o.Blamed() {
		t.Error("it is blamed for nothing")
	}
}

// The search shows the figures of what is selected that have the word, and only those;
// else it tells which other thing has one, and leads there.
func TestSearching(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 1))
	s.Find()
	search, ok := s.window.Canvas().Focused().(interface {
		fyne.Focusable
		SetText(string)
	})
	if !ok {
		t.Fatalf("the keys are at %T", s.window.Canvas().Focused())
	}
	test.Type(search, "LEAST")
	words := replay.Words(s.Object)
	for _, w := range []string{"Least cover", "Least height"} { // the second is in a folded section
		if !strings.Contains(words, w) {
			t.Errorf("%q is not shown in %s", w, words)
		}
	}
	if strings.Contains(words, "Contents") || strings.Contains(words, "Worked out") {
		t.Errorf("more is shown: %s", words)
	}
	search.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown})
	if s.window.Canvas().Focused() != s.Fields()["Least cover"] {
		t.Errorf("the down key leads to %T", s.window.Canvas().Focused())
	}
	s.Find()
	search.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if words := replay.Words(s.Object); !strings.Contains(words, "Contents weight") || strings.Contains(words, "Least height") {
		t.Errorf("given up, it shows %s", words)
	}
	test.Type(search, "plinth")
	hint := s.words("“Plinth” is a figure of cabinets")
	if hint == nil {
		t.Fatalf("it does not tell where that is: %s", replay.Words(s.Object))
	}
	test.Tap(hint)
	if len(s.session.Selection()) != 1 || s.session.Selection()[0] != session.Cabinet(model.Place{}) || s.Fields()["Plinth"] == nil {
		t.Errorf("it leads to %v", s.session.Selection())
	}
	if words := replay.Words(s.Object); !strings.Contains(words, "Plinth set back") {
		t.Errorf("where it leads it shows %s", words)
	}
	search.SetText("carcass") // a section's name stands for all in it
	if words := replay.Words(s.Object); !strings.Contains(words, "Stands on") {
		t.Errorf("of the section it shows %s", words)
	}
	search.SetText("as measured") // one of a bay
	if s.words("“Opening as measured” is a figure of bays") == nil {
		t.Errorf("of another thing's section it says %s", replay.Words(s.Object))
	}
	search.SetText("nonsense")
	if !strings.Contains(replay.Words(s.Object), "No figure is called “nonsense”.") {
		t.Errorf("of nonsense it says %s", replay.Words(s.Object))
	}
}

// The sheet of a front's hardware is named, and leads to the page of sheets.
func TestTheHardwareLeadsToItsSheet(t *testing.T) {
	s := show(t)
	shown := ""
	s.OnSheet = func(name string) { shown = name }
	s.session.Select(session.Cabinet(model.Place{Cabinet: 1}))
	test.Tap(s.words("Sample B"))
	if shown != "boxes" {
		t.Errorf("it leads to %q", shown)
	}
}

// A stepper that is held makes one step of the history, however often it repeats.
func TestAHeldStepperIsOneStep(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	e := s.field("Height")
	before := s.done()
	e.Hold(1, 3)
	if got := s.session.Project().FrontAt(model.Place{}).Height; got != length.MM(323) || s.done() != before+1 {
		t.Errorf("the height is %v after %d steps", got, s.done()-before)
	}
}

// So do the notches of the wheel and the keys up and down.
func TestNotchesAndKeysAreOneStep(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	e := s.field("Height")
	before := s.done()
	e.FocusGained()
	e.Wheel(true)
	e.Wheel(true)
	e.TypedKey(&fyne.KeyEvent{Name: fyne.KeyUp})
	if got := s.session.Project().FrontAt(model.Place{}).Height; got != length.MM(323) || s.done() != before+1 {
		t.Errorf("the height is %v after %d steps", got, s.done()-before)
	}
	e.FocusGained() // again, later
	e.Wheel(false)
	if s.done() != before+2 {
		t.Errorf("%d steps after it was left", s.done()-before)
	}
}
