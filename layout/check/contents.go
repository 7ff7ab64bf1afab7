package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/message"
)

var contents = Rule{
	Name:     "contents",
	Title:    message.New("What drawers hold is known"),
	Wrong:    message.New("Contents not known"),
	Severity: Advice,
	Forbids:  Nothing,
	Doc: message.New("The hardware sheet says what its runners carry, but for some drawers nobody has said " +
		"what they are to hold, so that their load was not checked: full, they may sag or come " +
		"off. It is told once for the project. Give each drawer the weight that it may hold."),
	find: findContents,
}

func findContents(s *search) {
	all, silent := 0, 0
	var spots []mark.Spot
	s.everyDrawer(func(f *plan.Front) {
		if f.Runner.Load <= 0 {
			return
		}
		all++
		if s.contents(f).Weight <= 0 {
			silent++
			spots = append(spots, s.drawer(f, mark.Outline))
		}
	})
	if silent == 0 {
		return
	}
	s.add(Finding{
		Place:  model.Whole,
		What:   message.New("the weight of the contents is not given, so that the load was not checked; drawers: %v of %v", silent, all),
		Change: message.New("give each drawer the weight that it may hold"),
		Spots:  spots,
		Flag:   message.New("Weight of the contents not given"),
	})
}
