package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var runnerDepth = Rule{
	Name:     "runner-depth",
	Title:    message.New("Runner fits the depth"),
	Wrong:    message.New("Runner too long"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("The runner is longer than the cabinet is deep inside, the front's thickness " +
		"counted where it is inset. The drawer would not close. Found is the depth that " +
		"the runner and its clearance need, needed (at most) the depth there is. Use a " +
		"shorter runner or make the cabinet deeper."),
	find: findRunnerDepth,
}

func findRunnerDepth(s *search) {
	s.everyDrawer(func(f *plan.Front) {
		depth := s.plan.Cabinets[f.Place.Cabinet].Depth
		r := &f.Sheet.Runner
		use := f.Runner.Length
		if use == 0 {
			use = f.LengthAtLeast()
		}
		found := f.Runner.Start + use + r.ClearanceBehind
		if found <= depth {
			return
		}
		fix := Finding{
			Found: found, Needed: depth,
			What:  message.New("the runner of %v takes %v of depth with its setback and clearance; the inside is %v deep", use, found, depth),
			Spots: append(runners(f), tooDeep(f, depth, found)),
			Flag:  message.New("Runner too long by %v", found-depth),
		}
		room := depth - f.Runner.Start - r.ClearanceBehind
		best := longestIn(f, room, 0)
		if best == 0 {
			deep := s.plan.Project.CabinetAt(f.Place).Depth + found - depth
			fix.Change = message.New("make the cabinet deeper by %v, to %v; the hardware sheet has no runner that is shorter", found-depth, deep)
			fix.Fixes = append(fix.Fixes, edit.SetCabinet(f.Place, "depth", deep))
		} else {
			fix.Change = message.New("use the runner of %v, or make the cabinet deeper by %v", best, found-depth)
			fix.Fixes = append(fix.Fixes, useRunner(f, best))
		}
		s.front(f, fix)
	})
}

// useRunner is the change to a runner of a length.
func useRunner(f *plan.Front, l length.Length) edit.Edit {
	if f.Nth > 0 {
		return setInner(f, "runner", l)
	}
	return edit.SetRunner{At: f.Place, Length: l}
}

// longestIn is the longest runner of a front's sheet that fits a depth and
// carries at least load kg (runners whose load is not given don't count where a
// load is asked for); 0 where there is none.
func longestIn(f *plan.Front, room length.Length, load float64) length.Length {
	best := length.Length(0)
	for i := range f.Sheet.Runner.Lengths {
		l := &f.Sheet.Runner.Lengths[i]
		if l.Length <= room && l.Length > best && l.Load >= load {
			best = l.Length
		}
	}
	return best
}

// tooDeep is what a drawer needs behind the depth that there is.
func tooDeep(f *plan.Front, depth, needed length.Length) mark.Spot {
	ends := f.RunnerEnds()
	return mark.Spot{Shape: mark.Band, In: mark.Section | mark.Plan, Front: f.Number, Box: ends[0].Union(ends[1]), Near: depth, Far: needed}
}
