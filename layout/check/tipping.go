package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/tipping"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var tips = Rule{
	Name:     "tipping",
	Title:    message.New("A cabinet that stands free does not tip by its figures"),
	Wrong:    message.New("Cabinet tips over"),
	Severity: Warning,
	Forbids:  Nothing,
	Doc: message.New("With all drawers open, and somebody leaning on the edge of one, a cabinet tips over " +
		"whoever stands before it. Found and needed are in kg: what the edge of the worst " +
		"drawer holds, and what is laid on it. Only cabinets that are said to stand free are " +
		"weighed. It is a caution worked out from weights, not a test: fix the piece to the " +
		"wall wherever you can, and have it tested by the standard that holds where it will " +
		"stand, such as ASTM F2057 or EN 14749."),
	find: findTipping,
}

func findTipping(s *search) {
	for i := range s.plan.Cabinets {
		if s.plan.Project.Cabinets[i].Standing() != model.StandsFree {
			continue
		}
		study := tipping.Of(s.plan, i)
		worst := study.Worst()
		if worst == nil || worst.Margin() >= 0 || study.Edge == nil {
			continue
		}
		c, e := study.Cabinet, study.Edge
		edge := onBoard(e, mark.Edge, mark.Section, across(e, e.Face.Max.Y, e.Face.Max.Y))
		s.add(Finding{
			Place: c.Place, FoundKg: study.EdgeKg(), NeededKg: study.LoadKg,
			What:   study.Why(),
			Change: message.New("fix it to the wall, at %v so that %v are held, and say so; or make it heavier, deeper, or its drawers lighter", study.Height, message.Newtons(study.Pull(worst))),
			Spots:  []mark.Spot{{Shape: mark.Outline, In: mark.Elevation, Box: c.Outline}, edge},
			Flag:   message.New("tips"),
			Fixes:  []edit.Edit{edit.Set{At: c.Place, Key: "base.stands", Value: model.FixedToWall}},
		})
	}
}
