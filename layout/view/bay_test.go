package view

import (
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/model"
)

// A picture of a bay has each of its fronts with name and height, whole, and of the bays
// beside it as much as tells whether lines run through.
func TestBayShowsItsFrontsAndTheLinesBeside(t *testing.T) {
	p := plan.Make(projecttest.Demo(t))
	at := model.Place{Cabinet: 1, Front: -1} // Large tiles, Tiles A to L, Tiles M to Z
	d := Bay(p, at)
	names, beside := 0, 0
	for _, m := range d.Marks {
		switch m := m.(type) {
		case *drawing.Caption:
			f := p.FrontAt(m.Of.Place)
			if m.Of.Place.Bay != 0 || m.Of.Place.Cabinet != 1 || m.Height != f.Face.Height() || m.Face != f.Face {
				t.Errorf("caption %+v", m)
			}
			names++
		case *drawing.Rectangle:
			if m.Of.Kind != drawing.FrontThing || m.Of.Place.Cabinet == 1 && m.Of.Place.Bay == 0 {
				continue
			}
			f := p.FrontAt(m.Of.Place)
			if m.Rect.Width() > besideBay || m.Rect.Min.Y != f.Face.Min.Y || m.Rect.Max.Y != f.Face.Max.Y {
				t.Errorf("of front %d beside it shows %v", f.Number, m.Rect)
			}
			beside++
		}
	}
	if names != 3 || beside != 6 {
		t.Errorf("%d fronts with names, %d beside", names, beside)
	}
	if len(Bay(p, model.Place{Cabinet: 9}).Marks) > 0 {
		t.Error("a bay that is not there is drawn")
	}
}
