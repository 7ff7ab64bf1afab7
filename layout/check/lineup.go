package check

import (
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var lineUp = Rule{
	Name:     "line-up",
	Title:    message.New("Fronts line up as asked"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: "A front is asked to line up with another and can't: there is no such front, two " +
		"bays wait for each other, or the line lies where this front can't end. At the " +
		"bench the line that should run through the elevation has a step. Found is how " +
		"far off the line is, where there is one. Line up with another front, or give " +
		"this one a height.",
	find: findLineUp,
}

func findLineUp(s *search) {
	for i := range s.plan.Problems {
		p := &s.plan.Problems[i]
		f := Finding{Change: message.New("line it up with another front, or give it a height of its own")}
		switch p.Kind {
		case plan.LineUpUnknown:
			f.What = message.New("there is no single front named %v to line up with", p.Name)
		case plan.LineUpCircle:
			f.What = message.New("this bay and the one of %v wait for each other to line up", p.Name)
		case plan.LineUpNoRoom:
			f.Found = p.Amount.Abs()
			f.What = message.New("the line to meet lies %v away from where this front can end", p.Amount.Abs())
		default:
			continue
		}
		f.Fixes = []edit.Edit{edit.LineUp{At: p.Place}}
		s.front(s.frontAt(p.Place), f)
	}
}
