package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var facesNotFlush = Rule{
	Name:     "faces-not-flush",
	Title:    message.New("Faces beside each other are flush"),
	Wrong:    message.New("Faces not flush"),
	Severity: Advice,
	Forbids:  Nothing,
	Doc: message.New("Two fronts that lie over the carcass, one above the other or side by side, are of " +
		"boards of different thickness, so that the face of one stands before that of the " +
		"other. Found is the step between the faces, needed 0. Fronts of cabinets of different " +
		"depth are not compared, nor are inset ones, whose faces are level with the carcass. " +
		"Make them of boards that are alike thick, or accept what is meant."),
	find: findFacesNotFlush,
}

func findFacesNotFlush(s *search) {
	told := map[int]bool{}
	compare := func(f, g *plan.Front) {
		if f.Thickness < g.Thickness {
			f, g = g, f
		}
		if f.Thickness == g.Thickness || f.Inset || f.Kind == model.OpenNiche || g.Kind == model.OpenNiche || told[f.Number] {
			return
		}
		told[f.Number] = true
		s.proud(f, g)
	}
	for i := range s.plan.Cabinets {
		c := &s.plan.Cabinets[i]
		for j := range c.Bays {
			col := c.Bays[j].Column
			for k := 0; k+1 < len(col); k++ {
				compare(&s.plan.Fronts[col[k]], &s.plan.Fronts[col[k+1]])
			}
			if j > 0 {
				s.facing(&c.Bays[j-1], &c.Bays[j], compare)
			}
		}
		if a, b, _, ok := s.between(i); ok && s.plan.Project.Cabinets[i].Depth == s.plan.Project.Cabinets[i+1].Depth {
			s.facing(&a.Bays[len(a.Bays)-1], &b.Bays[0], compare)
		}
	}
}

// facing calls do for the fronts of neighbouring bays that face each other.
func (s *search) facing(a, b *plan.Bay, do func(f, g *plan.Front)) {
	for _, i := range a.Column {
		for _, k := range b.Column {
			f, g := &s.plan.Fronts[i], &s.plan.Fronts[k]
			if i != k && f.Face.Min.Y < g.Face.Max.Y && g.Face.Min.Y < f.Face.Max.Y {
				do(f, g)
			}
		}
	}
}

// proud reports a front whose face stands before that of another one.
func (s *search) proud(f, g *plan.Front) {
	step := f.Thickness - g.Thickness
	thickness := "boards.front.thickness"
	if at := s.boardPath(f); at != "" {
		thickness = at + ".thickness"
	}
	s.front(f, Finding{
		Found:  step,
		What:   message.New("its face stands %v before that of front %v next to it", step, called(g)),
		Change: message.New("make its board %v thick, or both fronts of one board", g.Thickness),
		Spots: []mark.Spot{
			onBoard(f, mark.Outline, mark.Elevation, f.Face),
			{Shape: mark.Band, In: mark.Section | mark.Plan, Front: f.Number, Box: f.Face, Near: -f.Thickness, Far: -g.Thickness},
		},
		Flag: message.New("Face %v before the next", step),
		Fixes: []edit.Edit{
			edit.Set{At: f.Place, Key: "board", Value: g.Made.Name},
			edit.Set{At: model.Whole, Key: thickness, Value: g.Thickness},
		},
	})
}
