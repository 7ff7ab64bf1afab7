package check

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

var runnerScrews = Rule{
	Name:     "runner-screws",
	Title:    message.New("Runners in use have screw holes"),
	Wrong:    message.New("Screw holes not known"),
	Severity: Advice,
	Forbids:  Nothing,
	Doc: message.New("The hardware sheet has no screw holes for a runner length that is used, so no runner " +
		"templates can be made for it and hole rows can't be kept. It is told once for each " +
		"length, where it is used first. Found is the length of the runner. Write its holes from " +
		"the maker's drilling drawing into the sheet, or drill with the runner as its own " +
		"template."),
	find: findRunnerScrews,
}

func findRunnerScrews(s *search) {
	type used struct {
		sheet  *model.HardwareSheet
		length length.Length
	}
	told := map[used]bool{}
	s.everyDrawer(func(f *plan.Front) {
		u := used{f.Sheet, f.Runner.Length}
		if f.Runner.Length == 0 || len(f.Runner.Screws) > 0 || told[u] {
			return
		}
		told[u] = true
		s.front(f, Finding{
			Found:  u.length,
			What:   message.New("the runner of %v has no screw holes in the hardware sheet %v, so no runner templates can be made", u.length, f.Sheet.Name),
			Spots:  runners(f),
			Flag:   message.New("No screw holes known"),
			Change: message.New("write its screw holes into the hardware sheet, or drill with the runner itself as the template"),
		})
	})
}
