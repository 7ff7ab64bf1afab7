package plan_test

import (
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

// A drawer, a niche, a drawer: the niche has a shelf below and one above, the
// upper drawer stands on it.
func TestShelvesOfANiche(t *testing.T) {
	p := tradeProject()
	p.Cabinets[0].Bays[0].Fronts[1].Kind = model.OpenNiche
	got := plan.Make(p)
	niche, upper := &got.Fronts[1], &got.Fronts[2]
	shelves := got.Cabinets[0].Bays[0].Shelves
	if len(shelves) != 2 {
		t.Fatalf("%d shelves, want 2", len(shelves))
	}
	same(t, "upper face of the lower shelf", shelves[0].Rect.Max.Y, niche.Face.Min.Y)
	same(t, "lower face of the upper shelf", shelves[1].Rect.Min.Y, niche.Face.Max.Y)
	same(t, "width", shelves[0].Rect.Width(), 562*mm)
	same(t, "limit of the drawer below", got.Fronts[0].Drawer.Limit, niche.Face.Min.Y-19*mm)
	// The front overlays the shelf by its thickness less the gap: 19 − 3.
	same(t, "drop of the drawer above", upper.Drop, 16*mm)
	same(t, "its runner stands on the shelf", upper.Runner.Lower, shelves[1].Rect.Max.Y)
}

func TestTwoNichesShareAShelf(t *testing.T) {
	p := tradeProject()
	p.Cabinets[0].Bays[0].Fronts[1].Kind = model.OpenNiche
	p.Cabinets[0].Bays[0].Fronts[2].Kind = model.OpenNiche
	got := plan.Make(p)
	shelves := got.Cabinets[0].Bays[0].Shelves
	if len(shelves) != 2 {
		t.Fatalf("%d shelves, want one under and one between", len(shelves))
	}
	middle := (got.Fronts[1].Face.Max.Y + got.Fronts[2].Face.Min.Y) / 2
	same(t, "middle of the shelf between", (shelves[1].Rect.Min.Y+shelves[1].Rect.Max.Y)/2, middle)
}

// What is clear in a niche is what its boards leave, not what lies between its front
// lines. Overlay: at the carcass bottom a board of 19 with a reveal of 3 takes 16, so
// 200 from line to line are 184 clear. In the middle, shelves lie outside of the
// lines. Two niches share a shelf in the middle of their gap, which takes
// (19 − 3) / 2 = 8 of each. Under the top a channel takes nothing but the reveal, as
// the fronts end there, too. Inset: the reveal of 3 is open.
func TestClearHeightOfANiche(t *testing.T) {
	niche := func(h int64, clear bool) model.Front {
		return model.Front{Kind: model.OpenNiche, Height: length.MM(h), Clear: clear}
	}
	drawer := model.Front{Share: 1}
	cases := []struct {
		name        string
		fronts      []model.Front
		at          int
		change      func(*model.Cabinet)
		face, clear int64
	}{
		{"at the bottom, between lines", []model.Front{niche(200, false), drawer}, 0, nil, 200, 184},
		{"at the bottom, clear", []model.Front{niche(200, true), drawer}, 0, nil, 216, 200},
		{"at the top, clear", []model.Front{drawer, niche(200, true)}, 1, nil, 216, 200},
		{"in the middle", []model.Front{drawer, niche(200, true), drawer}, 1, nil, 200, 200},
		{"two, the lower one", []model.Front{niche(200, false), niche(200, true), drawer}, 0, nil, 200, 200 - 16 - 8},
		{"two, the upper one clear", []model.Front{niche(200, false), niche(200, true), drawer}, 1, nil, 208, 200},
		{"under a channel", []model.Front{drawer, niche(200, true)}, 1, func(c *model.Cabinet) { c.Channel.Height = length.MM(60) }, 197, 200},
		{"inset, at the bottom", []model.Front{niche(200, true), drawer}, 0, func(c *model.Cabinet) { c.Mount = model.Inset }, 197, 200},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			p := tradeProject()
			p.Cabinets[0].Bays[0].Fronts = c.fronts
			if c.change != nil {
				c.change(&p.Cabinets[0])
			}
			got := plan.Make(p)
			f := &got.Fronts[c.at]
			same(t, "from line to line", f.Face.Height(), length.MM(c.face))
			same(t, "clear", f.Clear.Height(), length.MM(c.clear))
			for _, s := range got.Cabinets[0].Bays[0].Shelves {
				if s.Rect.Overlaps(f.Clear) {
					t.Errorf("a shelf at %v reaches into the niche, %v", s.Rect, f.Clear)
				}
			}
			if len(got.Problems) > 0 {
				t.Errorf("problems %+v", got.Problems)
			}
		})
	}
}

// On hole rows, too, a drawer over a niche keeps off its shelf.
func TestNicheOnHoleRows(t *testing.T) {
	p := tradeProject()
	p.HoleRows = model.HoleRows{Mode: model.RowsMoveFronts, Datum: 19 * mm}
	p.Cabinets[0].Bays[0].Fronts[1].Kind = model.OpenNiche
	upper := &plan.Make(p).Fronts[2]
	same(t, "off its row by", upper.Runner.OffRow, 0)
	if upper.Drop < 16*mm || upper.Drop >= (16+1)*length.Millimetre {
		t.Errorf("drop %v, want 16 mm and no more", upper.Drop)
	}
}
