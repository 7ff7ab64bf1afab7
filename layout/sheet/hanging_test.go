package sheet

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// stackOf is a plan of one cabinet of 600 × 760 with so many fronts, 3 mm apart.
func stackOf(fronts int) *plan.Plan {
	p := planOf()
	p.Cabinets = []plan.Cabinet{{Outline: plane.R(0, 0, mm(600), mm(760))}}
	p.Project.Cabinets = []model.Cabinet{{}}
	sheet := &model.HardwareSheet{Connector: model.ConnectorFigures{AdjustUp: mm(2)}}
	each := (mm(760) - mm(3)*length.Length(fronts)) / length.Length(fronts)
	for i := range fronts {
		f := front(i+1, mm(597), each)
		low := length.Length(i) * (each + mm(3))
		f.Face = plane.R(mm(3)/2, low, mm(597)+mm(3)/2, low+each)
		f.Fitted, f.Sheet = true, sheet
		p.Fronts = append(p.Fronts, f)
	}
	return p
}

// pageTexts are all texts of pages, as they are said.
func pageTexts(pages []Page, say message.Language) []string {
	var all []string
	for i := range pages {
		for _, placed := range pages[i].Drawings() {
			for _, m := range placed.Drawing.Marks {
				if v, ok := m.(*drawing.Text); ok {
					all = append(all, say.Say(v.Say))
				}
			}
		}
	}
	return all
}

// Every gap of the plan has a box with its target and room to write, each front how
// far it can be moved, and a way that the sheet does not tell is a question.
func TestEveryGapHasItsBox(t *testing.T) {
	p := stackOf(3)
	pages := hangingPages(p, Options{}.with())
	if len(pages) != 1 {
		t.Fatalf("%d pages", len(pages))
	}
	boxes := 0
	for _, m := range pages[0].Placed[len(pages[0].Placed)-1].Drawing.Marks {
		if r, ok := m.(*drawing.Rectangle); ok && r.Meaning == drawing.Register {
			boxes++
			if r.Rect.Height() < mm(5) || r.Rect.Width() < mm(12) {
				t.Errorf("a box of %v × %v is too small to write in", r.Rect.Width(), r.Rect.Height())
			}
		}
	}
	if want := len(p.Gaps()); boxes != want || want != 10 { // below and beside three fronts, above one
		t.Errorf("%d boxes for %d gaps", boxes, want)
	}
	texts := pageTexts(pages, message.Language{})
	count := func(s string) (n int) {
		for _, one := range texts {
			if one == s {
				n++
			}
		}
		return n
	}
	if count("↕ ±2  ←→ ?") != 3 || count("1.5") != 6 || count("3") != 3 || count("0") != 1 {
		t.Errorf("the page says %q", texts)
	}
	order := strings.Join(texts, " ")
	if wall, work := strings.Index(order, "Fix the cabinets to the wall"), strings.Index(order, "from the bottom up"); wall < 0 || work < wall {
		t.Error("the wall does not come before the work from the bottom up")
	}
}

// Fronts that are too small to be written on have their gaps in a table.
func TestSmallFrontsAreInATable(t *testing.T) {
	p := stackOf(40)
	pages := hangingPages(p, Options{}.with())
	texts := pageTexts(pages[1:], message.Language{})
	for i := range p.Fronts {
		if !slices.Contains(texts, fmt.Sprintf("%d Glaze %d", i+1, i+1)) {
			t.Errorf("front %d has no row", i+1)
		}
	}
	measured := 0
	for _, s := range texts {
		if strings.HasPrefix(s, "____") {
			measured++
		}
	}
	if want := len(p.Gaps()); measured != want {
		t.Errorf("%d places to write for %d gaps", measured, want)
	}
}

// Up and down are told apart where they differ, and tilt where it is given.
func TestTheHangingPageTellsUpFromDown(t *testing.T) {
	sheet := &model.HardwareSheet{Connector: model.ConnectorFigures{AdjustUp: mm(2), AdjustSide: mm(1)}}
	f := &plan.Front{Kind: model.DrawerFront, Fitted: true, Sheet: sheet}
	g := &hanging{draft: &draft{}}
	for want, set := range map[string]func(*model.ConnectorFigures){
		"↕ ±2  ←→ ±1":            func(*model.ConnectorFigures) {},
		"↑ 2  ↓ 3  ←→ ±1":        func(c *model.ConnectorFigures) { c.AdjustDown = mm(3) },
		"↕ ±2  ←→ ±1  tilt ±1.5": func(c *model.ConnectorFigures) { c.AdjustTilt = mm(3) / 2 },
	} {
		one := sheet.Clone()
		set(&one.Connector)
		f.Sheet = one
		if got := g.moves(f); got != want {
			t.Errorf("it says %q, want %q", got, want)
		}
	}
}
