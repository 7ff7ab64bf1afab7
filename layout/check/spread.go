package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/tolerance"
	"frontlay/model/length"
	"frontlay/model/message"
)

var adjustingShort = Rule{
	Name:     "adjusting-short",
	Title:    message.New("Adjusting makes up for errors of making"),
	Wrong:    message.New("Adjusting is not enough"),
	Severity: Warning,
	Forbids:  Nothing,
	Doc: message.New("A gap comes out further from its planned size than it may be, and further than the " +
		"connectors of the fronts beside it can be adjusted, in more than one of twenty cabinets. " +
		"Told where the project says how exactly things are made, once for each cabinet, and for " +
		"what lies between two, of the worst gap. Found is by how much adjusting makes that gap " +
		"wider and narrower, needed its likely spread at the worse of its ends less what is " +
		"wanted. Work more exactly where most of it comes from, or use connectors that adjust by " +
		"more."),
	find: findAdjustingShort,
}

func findAdjustingShort(s *search) {
	process := s.plan.Project.Process
	if process == nil {
		return
	}
	b := tolerance.Of(s.plan)
	most, _ := b.Largest()
	for home := range s.homes() {
		var worst *tolerance.Gap
		var lacks length.Length
		var spots []mark.Spot
		for k := range b.Gaps {
			g := &b.Gaps[k]
			if !home.has(&g.Gap) {
				continue
			}
			short := b.Short(g)
			if short <= 0 {
				continue
			}
			spots = append(spots, gapSpot(&g.Gap))
			if short > lacks {
				worst, lacks = g, short
			}
		}
		if worst == nil {
			continue
		}
		within, spread, reach := *b.Process.Within, b.Spread(worst).End, b.Reach(worst)
		s.add(Finding{
			Place: s.plan.Cabinets[home.last].Place, Found: reach, Needed: spread - within,
			What: message.New("the gap %v, at front %v, is likely off by up to %v at one end; %v may remain, and adjusting takes away %v",
				revealOf(s.plan, &worst.Gap).where, called(worst.Front), tolerance.Shown(spread), within, reach),
			Change: message.New("work more exactly: most comes from %v, ± %v; or use connectors that adjust by %v more", most.Say(), b.Size(most), tolerance.Shown(lacks)),
			Spots:  spots,
			Flag:   message.New("adjusting lacks %v", tolerance.Shown(lacks)),
		})
	}
}
