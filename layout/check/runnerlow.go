package check

import (
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/message"
)

// runnerLow: the lowest drawer's runner lies lower above the carcass bottom than
// the hardware allows, so the drawer rubs or the runner can't be screwed on.
// Found is its lower edge above the carcass bottom, needed the sheet's least
// height. Raise the runner.
func runnerLow() Rule {
	return Rule{"runner-low", message.New("Runner clears the carcass bottom"), Error, findRunnerLow}
}

func findRunnerLow(s *search) {
	s.drawers(func(f *plan.Front) {
		found := f.Runner.Lower - f.Opening.Min.Y
		needed := f.Sheet.Runner.LeastHeight
		if found >= needed {
			return
		}
		short := needed - found
		s.front(f, Finding{
			Found: found, Needed: needed,
			What:   message.New("the runner is %v above the carcass bottom; needed is %v", found, needed),
			Change: message.New("raise the runner by %v", short),
			Area:   strip(f, f.Runner.Lower, f.Runner.Lower+short),
			Mark:   message.New("runner low by %v", short),
			Fixes:  []edit.Edit{setDrop(f, f.Drop+short)},
		})
	})
}
