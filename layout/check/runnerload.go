package check

import (
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var runnerLoad = Rule{
	Name:     "runner-load",
	Title:    message.New("Runner carries the load"),
	Wrong:    message.New("Runner overloaded"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("Front, drawer and contents weigh more than the pair of runners carries, so they " +
		"sag and wear out. Found and needed are in kg: the weight and (at most) the " +
		"runner's load. The front's weight is its volume times the board's density, of a frame that of its parts. Use a " +
		"runner that carries more, or put less in."),
	find: findRunnerLoad,
}

func findRunnerLoad(s *search) {
	s.everyDrawer(func(f *plan.Front) {
		if f.Runner.Load <= 0 {
			return
		}
		total := f.WeightKg() + f.DrawerKg() + s.contents(f).Weight
		if total <= f.Runner.Load {
			return
		}
		depth := s.plan.Cabinets[f.Place.Cabinet].Depth - f.Runner.Start - f.Sheet.Runner.ClearanceBehind
		what := message.New("front, drawer and contents weigh %v; the runners carry %v", roundedUp(total), message.Kilograms(f.Runner.Load))
		if f.Nth > 0 {
			what = message.New("drawer and contents weigh %v; the runners carry %v", roundedUp(total), message.Kilograms(f.Runner.Load))
		}
		finding := Finding{
			FoundKg: total, NeededKg: f.Runner.Load,
			What:   what,
			Change: message.New("use runners that carry more, or keep %v out of the drawer", roundedUp(total-f.Runner.Load)),
			Spots:  runners(f),
			Flag:   message.New("%v too heavy", roundedUp(total-f.Runner.Load)),
		}
		if best := longestIn(f, depth, total); best > 0 {
			finding.Change = message.New("use the runners of %v, which carry more, or keep %v out of the drawer", best, roundedUp(total-f.Runner.Load))
			finding.Fixes = []edit.Edit{useRunner(f, best)}
		}
		s.front(f, finding)
	})
}

// roundedUp is a weight in kg that is said in tenths of its unit, rounded up: nobody
// weighs a drawer closer, and less than what is over would not be enough.
type roundedUp float64

// Say writes the weight with its unit.
func (kg roundedUp) Say(l message.Language) string { return message.Kilograms(kg).RoundedUp(l) }
