package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var besideClear = model.Limit{Key: "beside_clear", Title: message.New("clearance beside an opening front"), Usual: 3 * length.Millimetre, Greatest: 2 * length.Metre}

var besidePath = Rule{
	Name:     "beside-path",
	Title:    message.New("Drawers open past what stands beside"),
	Wrong:    message.New("A drawer can't open"),
	Severity: Error,
	Forbids:  Nothing,
	Limits:   []model.Limit{besideClear},
	Doc: message.New("Beside the run stands something that reaches into the way of an opening drawer: " +
		"a door casing at the wall, or the handles of a run round the corner. Found is " +
		"the distance from the wall to the front, needed how far the thing projects and " +
		"the clearance of the project's limits. Put a filler between, or a wider one."),
	find: findBesidePath,
}

func findBesidePath(s *search) {
	for i := range s.plan.Cabinets {
		c := &s.plan.Cabinets[i]
		src := &s.plan.Project.Cabinets[i]
		for j := range c.Bays {
			b := &c.Bays[j]
			for k := b.First; k < b.First+b.Count; k++ {
				f := &s.plan.Fronts[k]
				s.beside(f, src.Left, false, f.Face.Min.X-c.Outline.Min.X+src.Left.EndPanel+src.Left.Filler)
				s.beside(f, src.Right, true, c.Outline.Max.X-f.Face.Max.X+src.Right.EndPanel+src.Right.Filler)
			}
		}
	}
}

func (s *search) beside(f *plan.Front, b model.Beside, right bool, found length.Length) {
	if f.Kind != model.DrawerFront || b.Projection <= 0 {
		return
	}
	needed := b.Projection + besideClear.In(s.plan.Project)
	if found >= needed {
		return
	}
	side, key := message.New("left"), "left.filler"
	in := plane.R(f.Face.Min.X-found, f.Face.Min.Y, f.Face.Min.X-found+needed, f.Face.Max.Y)
	if right {
		in.Min.X, in.Max.X = f.Face.Max.X+found-needed, f.Face.Max.X+found
		side, key = message.New("right"), "right.filler"
	}
	b.Filler += needed - found
	s.front(f, Finding{
		Found: found, Needed: needed,
		What:   message.New("the front is %v from the wall on the %v, where something projects %v; needed is %v", found, side, b.Projection, needed),
		Change: message.New("put a filler of %v at the %v, which is %v more", b.Filler, side, needed-found),
		Spots:  []mark.Spot{beforeFace(f, in)},
		Flag:   message.New("Can't open, %v short", needed-found),
		Fixes: []edit.Edit{edit.Several{
			Name:  message.New("Filler of %v at the %v", b.Filler, side),
			Edits: []edit.Edit{edit.SetCabinet(f.Place, key, b.Filler)},
		}},
	})
}

// beforeFace is a place in the way of an opening drawer, seen from above as far
// out as the front is thick, three times.
func beforeFace(f *plan.Front, box plane.Rect) mark.Spot {
	near, _ := f.Board()
	return mark.Spot{Shape: mark.Band, In: mark.Elevation | mark.Plan, Front: f.Number, Box: box, Near: near - 3*f.Thickness, Far: near}
}
