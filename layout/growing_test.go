package layout_test

import (
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
)

// worsen makes the shortfall behind one kind of finding larger.
type worsen struct {
	rule string
	do   func(p *model.Project, f check.Finding, by length.Length)
}

func everySheet(p *model.Project, change func(*model.HardwareSheet)) {
	for i := range p.Hardware {
		s := *p.Hardware[i].Sheet
		change(&s)
		p.Hardware[i].Sheet = &s
	}
}

func limit(p *model.Project, key string, to length.Length) {
	if p.Checks.Limits == nil {
		p.Checks.Limits = map[string]length.Length{}
	}
	p.Checks.Limits[key] = to
}

var worse = []worsen{
	{"cover-below", func(p *model.Project, f check.Finding, by length.Length) { p.FrontAt(f.Place).Cover += by }},
	{"cover-beside", func(p *model.Project, f check.Finding, by length.Length) {
		everySheet(p, func(s *model.HardwareSheet) { s.SideClearance -= by })
	}},
	{"overlay", func(p *model.Project, f check.Finding, by length.Length) {
		limit(p, "least_overlay", f.Needed+by)
	}},
	{"room-above", func(p *model.Project, f check.Finding, by length.Length) {
		everySheet(p, func(s *model.HardwareSheet) { s.Runner.ClearanceAbove += by })
	}},
	{"runner-depth", func(p *model.Project, f check.Finding, by length.Length) {
		everySheet(p, func(s *model.HardwareSheet) { s.Runner.ClearanceBehind += by })
	}},
	{"runner-low", func(p *model.Project, f check.Finding, by length.Length) {
		everySheet(p, func(s *model.HardwareSheet) { s.Runner.LeastHeight += by })
	}},
	{"hole-edge", func(p *model.Project, f check.Finding, by length.Length) { limit(p, "hole_edge", 10*mm+by) }},
	{"hole-gap", func(p *model.Project, f check.Finding, by length.Length) {
		limit(p, "hole_gap", f.Needed+by)
	}},
	{"hole-lipping", func(p *model.Project, f check.Finding, by length.Length) { p.Boards.Front.Lipping += by }},
	{"hole-depth", func(p *model.Project, f check.Finding, by length.Length) { limit(p, "web", f.Needed+by) }},
	{"partition-screws", func(p *model.Project, f check.Finding, by length.Length) {
		everySheet(p, func(s *model.HardwareSheet) { s.Runner.ScrewReach += by })
	}},
	{"runner-load", func(p *model.Project, f check.Finding, by length.Length) {
		p.FrontAt(f.Place).Contents.Weight += by.MM()
	}},
	{"beside-path", func(p *model.Project, f check.Finding, by length.Length) {
		for i := range p.Cabinets {
			if p.Cabinets[i].Left.Projection > 0 {
				p.Cabinets[i].Left.Projection += by
			}
		}
	}},
	{"wide-front", func(p *model.Project, f check.Finding, by length.Length) {
		limit(p, "wide_front", f.Needed-by)
	}},
}

// TestFindingsStayWhenAShortfallGrows makes what is short shorter still: the
// finding must not go away. Runner lengths are pinned, so that the engine does
// not evade.
func TestFindingsStayWhenAShortfallGrows(t *testing.T) {
	met := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
		p.HoleRows.Mode = model.RowsFree
		for i := range p.Cabinets {
			for j := range p.Cabinets[i].Bays {
				for k := range p.Cabinets[i].Bays[j].Fronts {
					f := &p.Cabinets[i].Bays[j].Fronts[k]
					if f.Runner == 0 {
						f.Runner = 450 * mm
					}
					if f.Drop == nil {
						d := projecttest.Tenths(t, -5, 20, "drop")
						f.Drop = &d
					}
					if f.Drawer == "" {
						f.Drawer = "mid"
					}
				}
			}
		}
		found := layout.Solve(p).Findings
		by := projecttest.Tenths(t, 1, 30, "by")
		for _, f := range found {
			for _, w := range worse {
				if w.rule != f.Rule {
					continue
				}
				met[f.Rule]++
				q := p.Clone()
				w.do(q, f, by)
				if countAt(layout.Solve(q).Findings, f) == 0 {
					t.Fatalf("%v at %v is gone though the shortfall grew by %v", f.Rule, f.Where, by)
				}
			}
		}
	})
	for _, w := range worse {
		if met[w.rule] == 0 {
			t.Errorf("no project had a finding of %s", w.rule)
		}
	}
}
