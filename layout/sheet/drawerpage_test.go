package sheet

import (
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// drawers is a pedestal with a number of drawers, each narrower than the last.
func drawers(count int) *plan.Plan {
	p := pedestal()
	p.Project.Boards = model.Boards{Carcass: model.Board{Thickness: mm(19)}, Back: model.Board{Thickness: mm(8)}}
	first := p.Fronts[0]
	p.Fronts = nil
	for i := range count {
		f := first
		f.Number, f.Place.Front = i+1, i
		f.Opening.Max.X -= mm(int64(i) * 90)
		width := f.Opening.Width() - mm(62)
		f.Drawer.Bottom = plane.R(f.Opening.Min.X+mm(31), mm(218), f.Opening.Max.X-mm(31), mm(234))
		f.Drawer.BottomCut = plan.Size{Width: width, Length: mm(432)}
		f.Drawer.BackCut = plan.Size{Width: width - mm(12), Length: mm(64)}
		p.Fronts = append(p.Fronts, f)
	}
	return p
}

func TestDrawersStandFourToASheet(t *testing.T) {
	for count, want := range map[int]int{1: 1, 2: 1, 3: 1, 4: 1, 5: 2} {
		if d := Make(drawers(count), nil, Options{Parts: []Part{DrawerPlans}}); len(d.Pages) != want {
			t.Errorf("%d drawers on %d sheets; want %d", count, len(d.Pages), want)
		}
	}
}

// A size that is cut is worse than none: it stands below the drawing where the
// drawing has no room for it.
func TestNoSizeOfADrawerIsCut(t *testing.T) {
	p := drawers(5)
	seen := 0
	for _, unit := range []length.Unit{length.UnitMM, length.UnitInch} {
		o := Options{Parts: []Part{DrawerPlans}}
		o.Say.Unit = unit
		for _, page := range Make(p, nil, o).Pages {
			for _, placed := range page.Drawings() {
				for _, m := range placed.Drawing.Marks {
					text, ok := m.(*drawing.Text)
					if !ok || !strings.Contains(text.Say.String(), "drawer b") {
						continue
					}
					seen++
					s := o.Say.Say(text.Say)
					if room := text.Within.Width() / length.Length(placed.ScaleDen); !text.Within.Empty() && lettering.Width(s, lettering.Small, text.Bold) > room {
						t.Errorf("%q has %v", s, room)
					}
				}
			}
		}
	}
	if seen < 20 {
		t.Errorf("%d sizes; want bottom and back of 5 drawers in two units", seen)
	}
}
