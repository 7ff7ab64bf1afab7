package check

import (
	"math"

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
	Doc: "Front, drawer and contents weigh more than the pair of runners carries, so they " +
		"sag and wear out. Found and needed are in kg: the weight and (at most) the " +
		"runner's load. The front's weight is its volume times the board's density, of a frame that of its parts. Use a " +
		"runner that carries more, or put less in.",
	find: findRunnerLoad,
}

func findRunnerLoad(s *search) {
	s.drawers(func(f *plan.Front) {
		if f.Runner.Load <= 0 {
			return
		}
		total := f.WeightKg() + f.Height.Weight + s.plan.Project.FrontAt(f.Place).Contents.Weight
		if total <= f.Runner.Load {
			return
		}
		depth := s.plan.Cabinets[f.Place.Cabinet].Depth - f.Runner.Start - f.Sheet.Runner.ClearanceBehind
		finding := Finding{
			FoundKg: total, NeededKg: f.Runner.Load,
			What:   message.New("front, drawer and contents weigh %v kg; the runners carry %v kg", tenthUp(total), f.Runner.Load),
			Change: message.New("use runners that carry more, or keep %v kg out of the drawer", tenthUp(total-f.Runner.Load)),
			Spots:  runners(f),
			Flag:   message.New("%v kg too heavy", tenthUp(total-f.Runner.Load)),
		}
		if best := longestIn(f, depth, total); best > 0 {
			finding.Change = message.New("use the runners of %v, which carry more, or keep %v kg out of the drawer", best, tenthUp(total-f.Runner.Load))
			finding.Fixes = []edit.Edit{edit.SetRunner{At: f.Place, Length: best}}
		}
		s.front(f, finding)
	})
}

// tenthUp rounds kg up to a tenth: nobody weighs a drawer closer, and less than
// what is over would not be enough.
func tenthUp(kg float64) float64 { return math.Ceil(kg*10-1e-6) / 10 }
