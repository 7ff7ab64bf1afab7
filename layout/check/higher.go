package check

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// farthest is how many fronts away in its stack one is looked for that could
// give height to another: few, so that high stacks are checked quickly.
const farthest = 6

// higher are the changes that make a front higher by at least more: by the
// division to the higher one of its neighbours, by the other one, by what the
// fronts without a height of their own share, or by the highest front near. The
// height is a whole multiple of the rounding step.
func (s *search) higher(f *plan.Front, more length.Length) []edit.Edit {
	step := s.plan.Project.RoundingStep()
	height := f.Face.Height()
	to := (height + more).FloorTo(step)
	if to < height+more {
		to += step
	}
	by := to - height
	above, below := s.inStack(f, 1), s.inStack(f, -1)
	var fixes []edit.Edit
	if above != nil {
		fixes = append(fixes, moved(f, above, by, f))
	}
	if below != nil {
		fixes = append(fixes, moved(below, f, -by, f))
	}
	if above != nil && below != nil && below.Face.Height() > above.Face.Height() {
		fixes[0], fixes[1] = fixes[1], fixes[0]
	}
	fixes = append(fixes, edit.SetHeight{At: f.Place, Height: to})
	var giver *plan.Front
	for k := -farthest; k <= farthest; k++ {
		if g := s.inStack(f, k); g != nil && (k < -1 || k > 1) && (giver == nil || g.Face.Height() > giver.Face.Height()) {
			giver = g
		}
	}
	if giver != nil {
		less := giver.Face.Height() - by
		fixes = append(fixes, edit.Several{Name: twoHeights(f, to, giver, less), Edits: []edit.Edit{
			edit.SetHeight{At: f.Place, Height: to},
			edit.SetHeight{At: giver.Place, Height: less},
		}})
	}
	return fixes
}

// moved is the change that moves the division between two fronts up, or down for
// a negative length, named by what comes of it, one of them first.
func moved(lower, upper *plan.Front, up length.Length, first *plan.Front) edit.Edit {
	e := edit.MoveDivision{Below: lower.Place, Lower: lower.Face.Height() + up, Upper: upper.Face.Height() - up}
	name := twoHeights(lower, e.Lower, upper, e.Upper)
	if first == upper {
		name = twoHeights(upper, e.Upper, lower, e.Lower)
	}
	return edit.Several{Name: name, Edits: []edit.Edit{e}}
}

func twoHeights(f *plan.Front, high length.Length, g *plan.Front, other length.Length) message.Message {
	return message.New("%v %v high, %v %v high", f.Name, high, g.Name, other)
}

// inStack is the front so many places above another one in its stack, below it
// for a negative number; nil where there is none.
func (s *search) inStack(f *plan.Front, up int) *plan.Front {
	at := f.Place
	at.Front += up
	if s.plan.Project.FrontAt(at) == nil {
		return nil
	}
	return s.frontAt(at)
}

// ownDrops are the changes that let the layout work out drops which were set by
// hand: of a front and of the one above it.
func (s *search) ownDrops(f *plan.Front) []edit.Edit {
	var fixes []edit.Edit
	for _, at := range []model.Place{f.Place, {Cabinet: f.Place.Cabinet, Bay: f.Place.Bay, Front: f.Place.Front + 1}} {
		if src := s.plan.Project.FrontAt(at); src != nil && src.Drop != nil {
			fixes = append(fixes, edit.Set{At: at, Key: "drop"})
		}
	}
	return fixes
}
