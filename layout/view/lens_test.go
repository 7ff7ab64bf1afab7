package view_test

import (
	"testing"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/view"
	"frontlay/model/length"
)

// A lens shows the place of a finding, with what is found marked in it and, of a
// band, the height that it has; only what lies in no front and behind none has no
// lens.
func TestLenses(t *testing.T) {
	for _, r := range check.Rules() {
		t.Run(r.Name, func(t *testing.T) {
			solved := solve(t, rule(r.Name))
			f := &solved.Findings[0]
			l, ok := view.LensOn(solved.Plan, f)
			if !ok {
				t.Fatal("the finding has no lens")
			}
			if l.Title.Empty() || l.Clip.Width() < 50*length.Millimetre || l.Clip.Height() < 20*length.Millimetre {
				t.Errorf("it shows %v of %v", l.Clip, l.Title)
			}
			found, dimension, view := 0, length.Length(-1), 0
			for _, m := range l.Drawing.Marks {
				if drawing.TagOf(m).Meaning != drawing.FindingMark {
					view++
					continue
				}
				if d, ok := m.(*drawing.Dimension); ok {
					dimension = d.Value
				}
				b := m.Bounds().Grow(length.Nanometre)
				if b.Overlaps(l.Clip) {
					found++
				}
			}
			if found == 0 || view == 0 {
				t.Errorf("%d marks of the finding and %d of what is around it are to be seen", found, view)
			}
			if r.Name == "cover-below" && (dimension != f.Needed-f.Found || l.In != mark.Section) {
				t.Errorf("in view %d the shortfall is %v, want %v in the section", l.In, dimension, f.Needed-f.Found)
			}
		})
	}
}

// Each rule marks its place in the elevation, and where it is about depth, the
// rear face or the drawer, there too: the finding of its project is to be seen in
// each view that one of its places names.
func TestEveryRuleMarksItsViews(t *testing.T) {
	for _, r := range check.Rules() {
		t.Run(r.Name, func(t *testing.T) {
			solved := solve(t, rule(r.Name))
			p, f := solved.Plan, &solved.Findings[0]
			if f.Flag.Empty() || len(f.Spots) == 0 {
				t.Fatalf("the flag is %q, the places are %v", f.Flag, f.Spots)
			}
			found := view.Found{All: solved.Findings, Chosen: 1}
			want, other := mark.Views(0), mark.Views(0)
			front := f.Spots[0].Front
			for _, s := range f.Spots {
				want |= s.In
				if s.Front > 0 {
					front = s.Front
				}
			}
			if want&mark.Elevation == 0 {
				t.Error("nothing is marked in the elevation")
			}
			drawn := map[mark.Views]*drawing.Drawing{
				mark.Elevation: view.Elevation(p, view.ElevationOptions{Found: found}),
				mark.Section:   {}, mark.Rear: {}, mark.Plan: {},
			}
			if front > 0 {
				g := &p.Fronts[front-1]
				found.AddToSection(drawn[mark.Section], p, g.Place)
				found.AddToRear(drawn[mark.Rear], p, g)
				found.AddToPlan(drawn[mark.Plan], p, g)
			}
			for in, d := range drawn {
				chosen := 0
				for _, m := range d.Marks {
					if s, ok := m.(*drawing.Spot); ok && s.Chosen {
						chosen++
					}
				}
				if want&in != 0 && chosen == 0 || want&in == 0 && chosen > 0 {
					t.Errorf("view %d has %d marks of the chosen finding, asked for in %b", in, chosen, want)
				}
				if chosen > 0 {
					other |= in
				}
			}
			if other == 0 {
				t.Error("nothing is marked")
			}
		})
	}
}
