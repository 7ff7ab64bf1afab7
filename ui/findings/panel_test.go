package findings_test

import (
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/bar"
	"frontlay/ui/field"
	"frontlay/ui/findings"
	"frontlay/ui/replay"
	"frontlay/ui/session"
)

// shown is the panel in a window of its own.
type shown struct {
	*findings.Panel
	t             *testing.T
	session       *session.Session
	window        fyne.Window
	told, refused []string
}

// show shows a project that a rule finds nothing in, after these edits.
func show(t *testing.T, edits ...edit.Edit) *shown {
	t.Helper()
	path := filepath.Join("..", "..", "testdata", "rules", "cover-below", "clean.yaml")
	test.NewTempApp(t)
	s := &shown{t: t, session: session.New(projecttest.Read(t, path), layout.Solve)}
	for _, e := range edits {
		if err := s.session.Do(e); err != nil {
			t.Fatal(err)
		}
	}
	s.session.MarkSaved()
	s.Panel = findings.New(s.session, func() message.Language { return message.Language{} }, func(m message.Message) { s.told = append(s.told, m.String()) })
	s.OnRefuse = func(m message.Message) { s.refused = append(s.refused, m.String()) }
	s.window = test.NewTempWindow(t, s.Object)
	s.window.Resize(fyne.NewSize(1200, 900))
	s.Turn()
	return s
}

// spoiled has errors of several kinds: a drawer bottom below its front, and a
// front too low for its drawer.
func spoiled() []edit.Edit {
	low := length.MM(-20)
	return []edit.Edit{
		edit.Set{Key: "drop", Value: low},
		edit.SetHeight{At: model.Place{Front: 1}, Height: length.MM(90)},
	}
}

func (s *shown) found() []check.Finding { return s.session.Result().Findings }

func (s *shown) done() int { _, n := s.session.Steps(); return n }

// press presses the button that carries a text.
func (s *shown) press(starts string) {
	s.t.Helper()
	var b fyne.Tappable
	replay.Named(s.Object, "", func(name string, o fyne.CanvasObject) {
		if tapped, ok := o.(fyne.Tappable); ok && b == nil && strings.HasPrefix(name, starts) {
			b = tapped
		}
	})
	if b == nil {
		s.t.Fatalf("no button says %q", starts)
	}
	test.Tap(b)
}

func (s *shown) reads(parts ...string) {
	s.t.Helper()
	words := replay.Words(s.Object)
	for _, p := range parts {
		if !strings.Contains(words, p) {
			s.t.Errorf("%q is not shown in %s", p, words)
		}
	}
}

// counts are how many findings of each severity nobody accepts.
func (s *shown) counts() (n [3]int) {
	for _, f := range s.found() {
		if f.Accepted == "" {
			n[f.Severity]++
		}
	}
	return n
}

// The bar has a chip for each rule with its count, the worst first, and says how many
// rules pass; the list says each finding below its rule; where there is none both
// say so.
func TestItListsWhatIsFound(t *testing.T) {
	s := show(t, append(spoiled(), edit.SetSeverity{Rule: "runner-low", Severity: "warning"}, edit.SetSeverity{Rule: "hole-edge", Severity: "advice"})...)
	s.window.Resize(fyne.NewSize(2000, 1200)) // room for all words
	if n := s.counts(); n[check.Error] == 0 || n[check.Warning] == 0 || n[check.Advice] == 0 {
		t.Fatalf("the project is to have findings of each severity, and has %v", n)
	}
	words := replay.Words(s.Object)
	of := map[string]int{}
	for _, f := range s.found() {
		of[f.Rule]++
	}
	last := 0
	for _, severity := range []check.Severity{check.Error, check.Warning, check.Advice} {
		for _, r := range check.Rules() {
			k := slices.IndexFunc(s.found(), func(f check.Finding) bool { return f.Rule == r.Name })
			if k < 0 || s.found()[k].Severity != severity {
				continue
			}
			wrong := r.Wrong.String()
			if wrong == "" || r.Title.String() == wrong {
				t.Errorf("%s says %q where it finds something", r.Name, wrong)
			}
			if flag := s.found()[k].Flag; of[r.Name] == 1 && !flag.Empty() {
				wrong = flag.String()
			}
			head := wrong + " (" + severity.Word().String() + "): " + strconv.Itoa(of[r.Name])
			if chip := strconv.Itoa(of[r.Name]) + " " + wrong; !strings.Contains(words, chip) || !strings.Contains(words, head) {
				t.Errorf("%q or %q is not shown: %s", chip, head, words)
			}
			at := strings.Index(words, head)
			for _, f := range s.found() {
				if f.Rule != r.Name {
					continue
				}
				if line := f.Where.String() + ": " + f.What.String(); strings.Index(words, line) < at {
					t.Errorf("%q is not shown below its rule: %s", line, words)
				}
			}
			if severity != check.Error && at < last {
				t.Errorf("%q comes before what is worse", head)
			}
			if severity == check.Error {
				last = max(last, at)
			}
		}
	}
	on := 0
	for _, r := range check.Rules() {
		if s.session.Project().Checks.Severity[r.Name] != check.SeverityOff {
			on++
		}
	}
	s.reads(strconv.Itoa(on-len(of))+" of "+strconv.Itoa(on)+" rules pass", "Choose a finding")

	s.session.Go(0)
	s.reads("3 fronts, 12 holes, "+strconv.Itoa(on)+" rules: nothing found", "Checked – fronts: 3, holes in them: 12, rules: ", "Every front covers what it should")
	if words := replay.Words(s.Object); strings.Contains(words, "Mend it") || strings.Contains(words, "Accept") {
		t.Errorf("there is something to do about nothing: %s", words)
	}
	s.Choose(1)
	if s.Fix() || s.done() != 0 {
		t.Error("nothing was mended by a change")
	}
}

// Choosing goes round, selects what the finding is about, asks to show it, and
// tells what is wrong and what to change.
func TestChoosing(t *testing.T) {
	s := show(t, spoiled()...)
	var asked []string
	s.OnShow = func(f check.Finding) { asked = append(asked, f.Rule) }
	all := s.found()
	s.Choose(1)
	for i := range all {
		f := all[i]
		if sel := s.session.Selection(); len(sel) != 1 || sel[0] != session.Front(f.Place) {
			t.Errorf("%s: selected is %v", f.Rule, sel)
		}
		s.reads(f.Severity.Word().String()+": "+f.Where.String(), message.Language{}.Sentence(f.What), message.Language{}.Sentence(f.Change))
		s.Choose(1)
	}
	s.Choose(-1) // it was the first again
	if len(asked) != len(all)+2 || asked[0] != all[0].Rule || asked[len(all)] != all[0].Rule || asked[len(all)+1] != all[len(all)-1].Rule {
		t.Errorf("asked to show %v, of %d", asked, len(all))
	}
	if s.session.Unsaved() {
		t.Error("looking changes the project")
	}
}

func TestWhatAFindingIsAbout(t *testing.T) {
	at := func(cabinet, bay, front int) check.Finding {
		return check.Finding{Place: model.Place{Cabinet: cabinet, Bay: bay, Front: front}}
	}
	for name, c := range map[string]struct {
		f    check.Finding
		want drawing.SubjectKind
	}{
		"the project": {at(-1, -1, -1), drawing.Nothing},
		"a cabinet":   {at(1, -1, -1), drawing.CabinetThing},
		"a bay":       {at(1, 0, -1), drawing.BayThing},
		"a front":     {at(1, 0, 2), drawing.FrontThing},
	} {
		got := findings.Subject(c.f)
		if c.want == drawing.Nothing && len(got) == 0 {
			continue
		}
		if len(got) != 1 || got[0].Kind != c.want || got[0].Place != c.f.Place {
			t.Errorf("%s: %v", name, got)
		}
	}
}

// A mend is one step that takes its finding away and brings no error; what was
// done is told, and undo brings the finding back.
func TestMending(t *testing.T) {
	for name, mend := range map[string]func(*shown){
		"by its button": func(s *shown) { s.press("Mend it: ") },
		"by command":    func(s *shown) { s.Fix() },
		"in its row": func(s *shown) {
			for _, o := range test.LaidOutObjects(s.Object) {
				if b, ok := o.(fyne.Tappable); ok && strings.HasPrefix(replay.Words(o), "Drop ") {
					test.Tap(b)
					return
				}
			}
		},
	} {
		t.Run(name, func(t *testing.T) {
			s := show(t, spoiled()...)
			s.Choose(1)
			f, before, steps := s.found()[0], len(s.found()), s.done()
			mend(s)
			if s.done() != steps+1 || len(s.found()) >= before {
				t.Fatalf("%d steps, %d of %d findings left", s.done()-steps, len(s.found()), before)
			}
			if slices.ContainsFunc(s.found(), func(g check.Finding) bool { return g.Rule == f.Rule && g.Place == f.Place }) {
				t.Errorf("%s is still found", f.Rule)
			}
			if len(s.told) != 1 || !strings.HasPrefix(s.told[0], "Done: ") || len(s.refused) != 0 {
				t.Errorf("told %q, refused %q", s.told, s.refused)
			}
			s.session.Undo()
			if len(s.found()) != before {
				t.Errorf("after undo %d of %d findings", len(s.found()), before)
			}
		})
	}
}

// Without a chosen finding nothing is mended.
func TestFixNeedsAChoice(t *testing.T) {
	s := show(t, spoiled()...)
	steps := s.done()
	if s.Fix() || s.done() != steps {
		t.Error("something was mended")
	}
}

// reason is the field for the reason to accept the chosen finding.
func (s *shown) reason() *field.Text {
	s.t.Helper()
	var e *field.Text
	replay.Named(s.Object, "", func(_ string, o fyne.CanvasObject) {
		if text, ok := o.(*field.Text); ok {
			e = text
		}
	})
	if e == nil {
		s.t.Fatal("there is no field for a reason")
	}
	return e
}

// A finding is accepted with a reason, by Enter or the button, in one step; the
// project keeps it, the title counts it, and it can be taken back.
func TestAccepting(t *testing.T) {
	for name, accept := range map[string]func(*shown){
		"by Enter":      func(s *shown) { s.reason().TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn}) },
		"by its button": func(s *shown) { s.press("Accept") },
	} {
		t.Run(name, func(t *testing.T) {
			s := show(t, spoiled()...)
			s.Choose(1)
			f, before, steps := s.found()[0], len(s.found()), s.done()
			s.window.Canvas().Focus(s.reason())
			test.Type(s.reason(), "the bottom is veneered")
			accept(s)
			kept := s.session.Project().Checks.Accepted
			if s.done() != steps+1 || len(kept) != 1 || kept[0].Rule != f.Rule || kept[0].Reason != "the bottom is veneered" {
				t.Fatalf("%d steps, accepted is %+v", s.done()-steps, kept)
			}
			if n := s.counts(); n[0] != before-1 {
				t.Errorf("%d errors are left of %d", n[0], before)
			}
			s.reads("Accepted: 1", "Accepted: the bottom is veneered")
			s.press("No longer accept it")
			if n := len(s.session.Project().Checks.Accepted); n != 0 || s.done() != steps+2 {
				t.Errorf("%d still accepted after %d steps", n, s.done()-steps)
			}
			if n := s.counts(); n[0] != before {
				t.Errorf("%d errors are there again, of %d", n[0], before)
			}
			if got := s.reason().Text; got != "" {
				t.Errorf("the field for a reason holds %q", got)
			}
		})
	}
}

// Without a reason nothing is accepted, and it is said why.
func TestAcceptingNeedsAReason(t *testing.T) {
	for _, reason := range []string{"", "  ", "ok"} {
		s := show(t, spoiled()...)
		s.Choose(1)
		steps := s.done()
		s.reason().SetText(reason)
		s.press("Accept")
		if s.done() != steps || len(s.refused) != 1 || !strings.Contains(s.refused[0], "reason") {
			t.Errorf("%q: %d steps, refused %q", reason, s.done()-steps, s.refused)
		}
		if got := s.reason().Text; got != reason {
			t.Errorf("%q became %q in its field", reason, got)
		}
	}
}

// A reason that is being typed stays while its finding does, and is not taken for
// another finding's.
func TestAReasonBelongsToItsFinding(t *testing.T) {
	s := show(t, spoiled()...)
	s.Choose(1)
	s.reason().SetText("half a reas")
	if err := s.session.Do(edit.Set{At: model.Whole, Key: "title", Value: "Other"}); err != nil {
		t.Fatal(err)
	}
	if got := s.reason().Text; got != "half a reas" {
		t.Errorf("after another change it is %q", got)
	}
	s.Choose(1)
	if got := s.reason().Text; got != "" {
		t.Errorf("at the next finding it is %q", got)
	}
}

// While a hand drags, the list follows and keeps the chosen finding as long as it
// is there.
func TestItFollowsADrag(t *testing.T) {
	s := show(t, spoiled()...)
	s.Choose(1)
	f := s.found()[0]
	s.session.Begin()
	if err := s.session.Preview(edit.Set{At: model.Whole, Key: "title", Value: "Moved"}); err != nil {
		t.Fatal(err)
	}
	s.reads(f.Severity.Word().String() + ": " + f.Where.String())
	if err := s.session.Preview(edit.Several{Edits: []edit.Edit{
		edit.Set{Key: "drop"}, edit.SetHeight{At: model.Place{Front: 1}, Height: length.MM(230)},
	}}); err != nil {
		t.Fatal(err)
	}
	s.reads("rules: nothing found")
	s.session.Cancel()
	s.reads(f.Severity.Word().String() + ": " + f.Where.String())
}

// Another session's findings take the place of the first one's, which is heard of
// no more.
func TestWatchingAnother(t *testing.T) {
	s := show(t, spoiled()...)
	s.Choose(1)
	first := s.session
	clean := show(t)
	s.Watch(clean.session)
	s.reads("rules: nothing found")
	if err := first.Do(edit.Set{At: model.Whole, Key: "title", Value: "Unseen"}); err != nil {
		t.Fatal(err)
	}
	s.reads("rules: nothing found")
}

// A chip goes from place to place of what its rule has found, round and round.
func TestAChipGoesToTheNextPlace(t *testing.T) {
	s := show(t, edit.Set{Key: "drop", Value: length.MM(-20)}, edit.Set{At: model.Place{Front: 1}, Key: "drop", Value: length.MM(-20)})
	rule := s.found()[0].Rule
	var places []model.Place
	for _, f := range s.found() {
		if f.Rule == rule {
			places = append(places, f.Place)
		}
	}
	if len(places) < 2 {
		t.Fatalf("%s is found %d times", rule, len(places))
	}
	title := ""
	for _, r := range check.Rules() {
		if r.Name == rule {
			title = r.Wrong.String()
		}
	}
	for i := range 2 * len(places) {
		s.press(title)
		if sel := s.session.Selection(); len(sel) != 1 || sel[0].Place != places[i%len(places)] {
			t.Errorf("after %d presses %v is selected, want %v", i+1, sel, places[i%len(places)])
		}
	}
}

// However narrow the bar is it has one row, in which no chip is cut or lies over
// another: chips lose their words, those of the least findings first, and the worst keeps them
// as long as the others' signs have room beside it.
func TestTheBarHasOneRow(t *testing.T) {
	s := show(t, append(spoiled(), edit.SetSeverity{Rule: "runner-low", Severity: "warning"}, edit.SetSeverity{Rule: "hole-edge", Severity: "advice"})...)
	for _, width := range []float32{2000, 1200, 900, 700, 500, 300} {
		s.window.Resize(fyne.NewSize(width, 600))
		room, end, high := s.Object.Size().Width, float32(0), float32(0)
		var chips []*bar.Button
		replay.Named(s.Object, "", func(_ string, o fyne.CanvasObject) {
			b, is := o.(*bar.Button)
			if !is {
				return
			}
			if x := b.Position().X; x < end {
				t.Errorf("%v wide: %q begins at %v, the one before ends at %v", width, b.Named(), x, end)
			}
			end = b.Position().X + b.Size().Width
			if b.Size().Width < b.MinSize().Width {
				t.Errorf("%v wide: %q is cut", width, b.Named())
			}
			high = max(high, b.Size().Height)
			chips = append(chips, b) // the arrow last
		})
		need := chips[0].Width(false) + 2*20 // with what is around the row
		for _, b := range chips[1:] {
			need += b.Width(true) + 8
		}
		if worst := chips[0]; need <= room && worst.Size().Width < worst.Width(false) {
			t.Errorf("%v wide: the worst chip %q has lost its words, which need %v", width, worst.Named(), need)
		}
		if end > room || high > 36 {
			t.Errorf("%v wide: the bar's buttons end at %v of %v and are %v high", width, end, room, high)
		}
	}
}

// Esc closes the list, and the drawing has the keyboard.
func TestEscClosesTheList(t *testing.T) {
	s := show(t, spoiled()...)
	if !s.Open() || s.window.Canvas().Focused() == nil {
		t.Fatal("the list is not open, or has not the keyboard")
	}
	s.window.Canvas().Focused().TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if s.Open() || s.window.Canvas().Focused() != nil {
		t.Errorf("open is %v, the keyboard is at %v", s.Open(), s.window.Canvas().Focused())
	}
}
