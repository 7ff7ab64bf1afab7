package check

import (
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/message"
)

// runnerLow: the runner of a drawer on the carcass bottom, or on the shelf over
// a niche, lies lower above it than the hardware allows, so the drawer rubs or
// the runner can't be screwed on. Found is its lower edge above that board,
// needed the sheet's least height. Raise the runner.
func runnerLow() Rule {
	return Rule{"runner-low", message.New("Runner clears the board below"), Error, findRunnerLow}
}

func findRunnerLow(s *search) {
	s.drawers(func(f *plan.Front) {
		floor, board := f.Opening.Min.Y, message.New("the carcass bottom")
		if f.OnFloor && !f.Bottommost {
			floor, board = f.Floor, message.New("the shelf below")
		}
		found := f.Runner.Lower - floor
		needed := f.Sheet.Runner.LeastHeight
		if found >= needed {
			return
		}
		short := needed - found
		s.front(f, Finding{
			Found: found, Needed: needed,
			What:   message.New("the runner is %v above %v; needed is %v", found, board, needed),
			Change: message.New("raise the runner by %v", short),
			Area:   strip(f, f.Runner.Lower, f.Runner.Lower+short),
			Mark:   message.New("runner low by %v", short),
			Fixes:  []edit.Edit{setDrop(f, f.Drop+short)},
		})
	})
}
