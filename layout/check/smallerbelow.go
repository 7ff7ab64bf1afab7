package check

import (
	"frontlay/layout/mark"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var smallerBelow = Rule{
	Name:     "smaller-below",
	Title:    message.New("Fronts do not grow upwards"),
	Wrong:    message.New("Lower front smaller than above"),
	Severity: Warning,
	Forbids:  Nothing,
	Doc: message.New("A stack is to be equal or graduated, and fronts were moved so that runners fall on " +
		"hole rows: now a front is lower than the one above it, which looks top-heavy. Found is " +
		"its height, needed that of the one above. Let the runners move instead of the fronts, " +
		"or give the front a height of its own."),
	find: findSmallerBelow,
}

func findSmallerBelow(s *search) {
	p := s.plan.Project
	if p.HoleRows.Mode != model.RowsMoveFronts {
		return
	}
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		if p.BayAt(f.Place).Division.Rule == model.DivideShares || p.FrontAt(f.Place).Height > 0 {
			continue
		}
		above := s.inStack(f, 1)
		if above == nil || p.FrontAt(above.Place).Height > 0 {
			continue
		}
		found, needed := f.Face.Height(), above.Face.Height()
		if needed-found <= p.RoundingStep() {
			continue // the odd rest
		}
		s.front(f, Finding{
			Found: found, Needed: needed,
			What:   message.New("the front is %v high and the one above it %v, though the stack is to be equal or to grow downwards", found, needed),
			Change: message.New("let runners move to the hole rows instead of fronts, or make this front %v high", s.height(f, needed-found)),
			Spots: []mark.Spot{
				tall(f, inDepth, f.Face.Centre().X, f.Face.Min.Y, f.Face.Max.Y),
				tall(above, inDepth, f.Face.Centre().X, above.Face.Min.Y, above.Face.Max.Y),
			},
			Flag: message.New("Lower than above by %v", needed-found),
			Fixes: append(s.higher(f, needed-found), edit.Several{
				Name:  message.New("Let runners move to the hole rows instead of fronts"),
				Edits: []edit.Edit{edit.Set{At: model.Whole, Key: "hole_rows.mode", Value: int(model.RowsMoveRunners)}},
			}),
		})
	}
}
