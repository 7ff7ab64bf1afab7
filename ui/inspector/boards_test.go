package inspector_test

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/drawing"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/replay"
	"frontlay/ui/session"
	"frontlay/ui/sketch"
)

// A front's build is one choice, with its figures under it: frames are made of a board
// of their own, whose figures and name hold for every front of it.
func TestABuildIsOneChoice(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	test.Tap(s.fold("Build of fronts"))
	choose := func(option string) { t.Helper(); s.choose(option) }
	if strings.Contains(replay.Words(s.Object), "Stiles") {
		t.Error("a plain front has stiles")
	}
	choose("new: frames with a panel")
	p := s.session.Project()
	if len(p.Boards.Fronts) != 1 || p.FrontAt(model.Place{}).Board != "frames" || len(s.session.Result().Plan.Fronts[0].Zones) != 5 {
		t.Fatalf("the front is of %q, of boards %+v", p.FrontAt(model.Place{}).Board, p.Boards.Fronts)
	}
	s.enter("Stiles", "75")
	s.enter("Name of the board", "oak frames")
	p = s.session.Project()
	if b := p.BoardOf(model.Place{}); b.Name != "oak frames" || b.Build.Stile != length.MM(75) || p.BoardOf(model.Place{Front: 1}).Name != model.PlainBoard {
		t.Errorf("the front is of %+v", b)
	}
	s.session.Select(front(0, 0, 1))
	choose("oak frames")
	if z := s.session.Result().Plan.Fronts[1].Zones; len(z) != 5 || z[0].Rect.Width() != length.MM(75) {
		t.Errorf("the second front has zones %v", z)
	}
	choose("board with a grip")
	if z := s.session.Result().Plan.Fronts[0].Zones; len(z) != 2 || !strings.Contains(replay.Words(s.Object), "Height of the grip") {
		t.Errorf("the first front has zones %v", z)
	}
	choose("as the cabinet")
	if b := s.session.Project().BoardOf(model.Place{Front: 1}); b.Name != model.PlainBoard {
		t.Errorf("the second front is of %q", b.Name)
	}
}

// Nothing selected, the stock sheet of a board, the saw and how grain is matched are
// typed and chosen; a bay can say otherwise.
func TestStockAndMatchedGrain(t *testing.T) {
	s := show(t)
	s.session.Select()
	for _, section := range []string{"Carcass board", "Build of fronts", "Saw"} {
		test.Tap(s.fold(section))
	}
	s.enter("Stock sheet, along the grain", "2500")
	s.enter("Stock sheet, across", "1250")
	s.enter("Kerf", "3.2")
	s.choose("through the run")
	p := s.session.Project()
	if b := p.Boards.Carcass.Stock; b != (model.Stock{Length: length.MM(2500), Width: length.MM(1250)}) || p.Saw.Kerf != 32*length.Millimetre/10 || p.Matched != model.MatchedAcross {
		t.Errorf("%+v, %+v, %q", b, p.Saw, p.Matched)
	}
}

// Beside the figures of a build is a section through a front, in which the one that is
// typed stands out; the edging of the board is its own. A front's rail is typed where its
// gap is.
func TestANamedBoardAndARailOfItsOwn(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	test.Tap(s.fold("Build of fronts"))
	s.choose("new: frames with a panel")
	drawn := replay.All[*sketch.Sketch](s.Object)
	if len(drawn) != 1 {
		t.Fatalf("%d sections are drawn", len(drawn))
	}
	s.enter("Stiles", "75")
	measured := func() (v length.Length) {
		for _, m := range drawn[0].Drawing.Marks {
			if d, ok := m.(*drawing.Dimension); ok && view.ShowsFigure(d, drawn[0].Focus) {
				v = d.Value
			}
		}
		return v
	}
	if drawn[0].Focus != "build.stile" || measured() != length.MM(75) {
		t.Errorf("marked is %q, %v", drawn[0].Focus, measured())
	}
	drawn[0].OnPick("build.panel.groove")
	if s.window.Canvas().Focused() != s.Fields()["Groove"] || measured() != model.UsualGroove {
		t.Errorf("a click on the groove marks %q, %v", drawn[0].Focus, measured())
	}
	test.Tap(s.fold("Wood and edging of the board"))
	s.enter("Material", "oak")
	s.enter("Lipping", "0.8")
	s.choose("left and right edge")
	test.Tap(s.fold("Wood of the panel"))
	p := s.session.Project()
	if b := p.Boards.Fronts[0]; b.Material != "oak" || b.Lipping != 800*length.Micrometre || b.Edging.Fronts != model.EdgeSides || p.Boards.Front.Lipping != 0 {
		t.Errorf("the board is %+v", b)
	}

	if err := s.session.Do(edit.Set{At: model.Place{Bay: -1, Front: -1}, Key: "mount", Value: int(model.Inset)}); err != nil {
		t.Fatal(err)
	}
	s.session.Select(drawing.Subject{Kind: drawing.DivisionThing})
	s.enter("Rail between fronts", "22")
	rail := func() model.Rail { return s.session.Project().RailAbove(model.Place{}) }
	if rail() != (model.Rail{Height: length.MM(22), Depth: model.UsualRailDepth}) || s.session.Project().RailAbove(model.Place{Front: 1}).Height != 0 {
		t.Errorf("the rail is %v", rail())
	}
	s.enter("Depth of the rail", "60")
	if rail().Depth != length.MM(60) {
		t.Errorf("the rail is %v", rail())
	}
	s.enter("Rail between fronts", "")
	if rail().Height != 0 || s.session.Project().FrontAt(model.Place{}).Rail != nil {
		t.Errorf("emptied, the rail is %v", rail())
	}
}

// choose chooses what a field offers.
func (s *shown) choose(option string) {
	s.t.Helper()
	for _, c := range replay.All[*field.Choice](s.Object) {
		if i := slices.Index(c.Options, option); i >= 0 {
			c.SetSelectedIndex(i)
			return
		}
	}
	s.t.Fatalf("nothing offers %q", option)
}

// What decides which fields there are may change while they are seen: a channel asks for
// its depth, wider edging for its edges, a back that is let in for how deep.
func TestFieldsFollowWhatIsTyped(t *testing.T) {
	s := show(t)
	has := func(label string, want bool) {
		t.Helper()
		if got := s.Fields()[label] != nil; got != want {
			t.Errorf("there is a field %q: %v", label, got)
		}
	}
	s.session.Select(front(0, 0, 1))
	has("Depth of the channel", false)
	s.Find()
	search := s.window.Canvas().Focused()
	test.Type(search, "channel")
	s.enter("Finger-pull channel", "30")
	has("Depth of the channel", true)
	if w := replay.Words(s.Object); !strings.Contains(w, "Depth of the channel") || strings.Contains(w, "Gap above") {
		t.Errorf("of what is looked for it shows %s", w)
	}
	search.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	s.session.Select(session.Cabinet(model.Place{Bay: -1, Front: -1}))
	test.Tap(s.fold("Carcass"))
	has("Rebate or groove", false)
	s.choose("grooved")
	has("Rebate or groove", true)
	has("Plinth set back", true)
	s.choose("feet")
	has("Plinth set back", false)
	has("Rail between fronts", false)
	s.choose("inset")
	has("Rail between fronts", true)
	s.session.Select()
	test.Tap(s.fold("Carcass board"))
	has("Price of edging", false)
	s.enter("Lipping", "1")
	has("Price of edging", true)
}
