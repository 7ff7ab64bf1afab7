package sheet

import (
	"strings"
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// The holes of a handle stand in the schedule of a rear face, but are drilled
// from the other side: it says so, once.
func TestTheRearScheduleSaysFromWhereTheHandleIsDrilled(t *testing.T) {
	f := lopsided()
	for _, x := range []int64{234, 362} {
		f.HandleHoles = append(f.HandleHoles, plan.Hole{At: plane.Point{X: mm(x), Y: mm(200)}, Kind: plan.HandleHole, Diameter: mm(5)})
	}
	page := Make(planOf(f), nil, Options{Parts: []Part{RearFaces}}).Pages[0]
	if n := strings.Count(words(page), "handle: drill from the FACE"); n != 1 {
		t.Errorf("told %d times: %s", n, words(page))
	}
}

// A drawer for which no runner is short enough has its page, which says so.
func TestADrawerWithoutARunnerHasAPlan(t *testing.T) {
	p := pedestal()
	p.Project.Boards = model.Boards{Carcass: model.Board{Thickness: mm(19)}, Back: model.Board{Thickness: mm(8)}}
	p.Fronts[0].Runner.Length = 0
	d := Make(p, nil, Options{Parts: []Part{DrawerPlans}})
	if len(d.Pages) != 1 || !strings.Contains(words(d.Pages[0]), "no runner fits, see Findings") {
		t.Fatalf("%d pages", len(d.Pages))
	}
	if s := words(d.Pages[0]); strings.Contains(s, "drawer bottom") {
		t.Errorf("it draws a drawer bottom: %s", s)
	}
}

// Nor does its section leave it out without a word.
func TestASectionSaysThatNoRunnerFits(t *testing.T) {
	for _, fits := range []bool{true, false} {
		p := pedestal()
		p.Project.Cabinets = []model.Cabinet{{Depth: mm(540)}}
		p.Cabinets[0].Bays = []plan.Bay{{Count: 1, Column: []int{0}, Opening: p.Fronts[0].Opening}}
		if !fits {
			p.Fronts[0].Runner.Length = 0
		}
		d := Make(p, nil, Options{Parts: []Part{Sections}})
		if len(d.Pages) != 1 {
			t.Fatalf("%d pages", len(d.Pages))
		}
		if s := words(d.Pages[0]); strings.Contains(s, "no runner fits") == fits || strings.Contains(s, "see Findings") == fits {
			t.Errorf("a runner fits: %v; the section says %s", fits, s)
		}
	}
}

// In a project in inches the drill of a metric sheet is named as it is sold, on
// templates and beside the rear face.
func TestDrillsAreNamedInTheUnitOfTheirSheet(t *testing.T) {
	f := lopsided()
	f.Sheet = &model.HardwareSheet{Unit: length.UnitMM}
	inches := Options{Say: message.Language{Unit: length.UnitInch}}
	label := inches.Say.Say(rearBores(&f)[0].drilling())
	if label != "Ø 10 mm (≈ 25/64 in), 12 mm (≈ 15/32 in) deep" {
		t.Errorf("a hole’s label: %q", label)
	}
	for part, want := range map[Part]string{RearFaces: " 10 mm 12 mm ", CornerTemplates: "≈ figures are rounded; the template is exact."} {
		inches.Parts = []Part{part}
		if s := words(Make(planOf(f), nil, inches).Pages[0]); !strings.Contains(s, want) {
			t.Errorf("%s has no %q: %s", part, want, s)
		}
	}
}
