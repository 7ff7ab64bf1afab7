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
