package inspector_test

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2/test"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/replay"
)

// A front's build is one choice, with its figures under it: frames are made of a board
// of their own, whose figures and name hold for every front of it.
func TestABuildIsOneChoice(t *testing.T) {
	s := show(t)
	s.session.Select(front(0, 0, 0))
	test.Tap(s.fold("Board and build"))
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
	for _, section := range []string{"Carcass board", "Board and build", "Saw"} {
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
