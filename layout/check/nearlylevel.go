package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var levelWithin = model.Limit{Key: "nearly_level", Title: message.New("lines closer than this should be level"), Usual: 12 * length.Millimetre, Greatest: 2 * length.Metre}

var nearlyLevel = Rule{
	Name:     "nearly-level",
	Title:    message.New("Lines that nearly meet do meet"),
	Wrong:    message.New("Nearly level"),
	Severity: Advice,
	Forbids:  Nothing,
	Limits:   []model.Limit{levelWithin},
	Doc: message.New("Two neighbouring stacks have divisions that nearly line up but don't, which the " +
		"eye takes for a mistake. Found is the step between the two lines, needed 0 (or " +
		"more than the project's limit). Line the fronts up."),
	find: findNearlyLevel,
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
	top := func(col []int, k int) length.Length { return s.plan.Fronts[col[k]].Face.Max.Y }
	start, near := 0, levelWithin.In(s.plan.Project)
	for i := 0; i+1 < len(a.Column); i++ {
		y := top(a.Column, i)
		for start+1 < len(b.Column) && top(b.Column, start) <= y-near {
			start++
		}
		for k := start; k+1 < len(b.Column) && top(b.Column, k) < y+near; k++ {
			if step := top(b.Column, k) - y; step != 0 {
				s.step(&s.plan.Fronts[a.Column[i]], &s.plan.Fronts[b.Column[k]], &s.plan.Fronts[b.Column[k+1]], step)
			}
		}
	}
}

// step reports a front g whose top edge is a step off that of f beside it; above
// is the front above g.
func (s *search) step(f, g, above *plan.Front, step length.Length) {
	var fixes []edit.Edit
	change := message.New("line the two up, or set them clearly apart")
	if above.Place.Bay == g.Place.Bay {
		change = message.New("line the two up by making this front %v high, or set them clearly apart", g.Face.Height()-step)
		fixes = []edit.Edit{moved(g, above, -step, g)}
	}
	s.front(g, Finding{
		Found:  step.Abs(),
		What:   message.New("its top edge lies %v off that of front %v beside it", step.Abs(), called(f)),
		Change: change,
		Spots:  []mark.Spot{level(f, f.Face.Max.Y), level(g, g.Face.Max.Y)},
		Flag:   message.New("%v off level", step.Abs()),
		Fixes:  fixes,
	})
}
