package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var runnerLow = Rule{
	Name:     "runner-low",
	Title:    message.New("Runner clears the board below"),
	Wrong:    message.New("Runner too low"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("The runner of a drawer on the carcass bottom or on a shelf lies " +
		"lower above it than the hardware allows, so the drawer rubs or the runner can't " +
		"be screwed on; or an upper drawer hangs lower than the top edge of the front " +
		"below, which it would hit when it is pulled. Found is its lower edge above that " +
		"board or edge, needed the sheet's least height (0 over a front). Raise the " +
		"runner."),
	find: findRunnerLow,
}

func findRunnerLow(s *search) {
	s.everyDrawer(func(f *plan.Front) {
		found, needed := f.Runner.Lower-f.Floor, f.Sheet.Runner.LeastHeight
		above, below := message.New("above the carcass bottom"), message.New("below the carcass bottom")
		switch {
		case !f.OnFloor:
			found, needed = f.Drawer.Body.Min.Y-f.Floor, 0
			below = message.New("below the top edge of the front below")
		case f.OnRail:
			above, below = message.New("above the rail below"), message.New("below the rail below")
		case !f.Bottommost:
			above, below = message.New("above the shelf below"), message.New("below the shelf below")
		}
		if found >= needed {
			return
		}
		short := needed - found
		s.front(f, Finding{
			Found: found, Needed: needed,
			What:   lowWords(found, needed, above, below),
			Change: raiseBy(f, short),
			Spots:  []mark.Spot{behind(f, f.Runner.Lower, f.Runner.Lower+short)},
			Flag:   message.New("Runner low by %v", short),
			Fixes:  []edit.Edit{raise(f, short)},
		})
	})
}

// raiseBy says how a runner is raised.
func raiseBy(f *plan.Front, up length.Length) message.Message {
	if f.Nth > 0 {
		return message.New("raise the runner by %v, to %v above where it is measured from", up, f.Runner.Lower+up-f.Datum())
	}
	return message.New("raise the runner by %v (drop %v)", up, f.Drop+up)
}

// lowWords says how low a runner is; above and below name the board, with the
// preposition, as other languages bend the name behind it.
func lowWords(found, needed length.Length, above, below message.Message) message.Message {
	if found < 0 {
		return message.New("the drawer lies %v %v", -found, below)
	}
	return message.New("the runner is %v %v; needed is %v", found, above, needed)
}
