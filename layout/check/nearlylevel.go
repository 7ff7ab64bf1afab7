package check

import (
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// nearlyLevel: two neighbouring stacks have divisions that nearly line up but
// don't, which the eye takes for a mistake. Found is the step between the two
// lines, needed 0 (or more than the project's limit). Line the fronts up.
func nearlyLevel() Rule {
	return Rule{"nearly-level", message.New("Lines that nearly meet do meet"), Advice, findNearlyLevel}
}

func findNearlyLevel(s *search) {
	var before *plan.Bay
	for i := range s.plan.Cabinets {
		for j := range s.plan.Cabinets[i].Bays {
			b := &s.plan.Cabinets[i].Bays[j]
			if before != nil {
				s.level(before, b)
			}
			before = b
		}
	}
}

// level compares the divisions of two neighbouring stacks from the bottom up.
func (s *search) level(a, b *plan.Bay) {
	left := s.plan.Fronts[a.First : a.First+a.Count]
	right := s.plan.Fronts[b.First : b.First+b.Count]
	start, near := 0, s.limits.nearlyLevel
	for i := 0; i+1 < len(left); i++ {
		y := left[i].Face.Max.Y
		for start+1 < len(right) && right[start].Face.Max.Y <= y-near {
			start++
		}
		for k := start; k+1 < len(right) && right[k].Face.Max.Y < y+near; k++ {
			if step := right[k].Face.Max.Y - y; step != 0 {
				s.step(&left[i], &right[k], right, k, step)
			}
		}
	}
}

func (s *search) step(f, g *plan.Front, right []plan.Front, k int, step length.Length) {
	lower, upper := g.Face.Height()-step, right[k+1].Face.Height()+step
	fixes := []edit.Edit{edit.MoveDivision{Below: g.Place, Lower: lower, Upper: upper}}
	s.front(g, Finding{
		Found:  step.Abs(),
		What:   message.New("its top edge lies %v off that of front %v (%v) beside it", step.Abs(), f.Number, f.Name),
		Change: message.New("line the two up, or set them clearly apart"),
		Area:   strip(g, min(g.Face.Max.Y, f.Face.Max.Y), max(g.Face.Max.Y, f.Face.Max.Y)),
		Fixes:  fixes,
	})
}
