package check

import (
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var span = Rule{
	Name:     "span",
	Title:    message.New("Wide fronts stand at an end of the stack"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: "A front is asked to span several bays but does not stand at the top or the " +
		"bottom of its stack, or the cabinet has not so many bays to its right. At the " +
		"bench it would cut through the stack beside it. Found is the number of bays " +
		"asked for. Move it to an end of its stack, or let it span fewer.",
	find: findSpan,
}

func findSpan(s *search) {
	for i := range s.plan.Problems {
		p := &s.plan.Problems[i]
		if p.Kind != plan.SpanNoPlace {
			continue
		}
		s.front(s.frontAt(p.Place), Finding{
			What:   message.New("it can't span %v bays from here", int(p.Amount)),
			Change: message.New("move it to the top or the bottom of its stack, with enough bays to its right, or let it span one bay"),
			Fixes:  []edit.Edit{edit.ReorderFront{At: p.Place}, edit.ReorderFront{At: p.Place, To: len(s.plan.Project.BayAt(p.Place).Fronts) - 1}, edit.SetSpan{At: p.Place, Count: 1}},
		})
	}
}
