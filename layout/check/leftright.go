package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

var sidesApart = model.Limit{Key: "sides_apart", Title: message.New("edge distances closer than this are mistaken for each other"), Usual: 15 * length.Millimetre, Greatest: 2 * length.Metre}

var leftRight = Rule{
	Name:     "left-right",
	Title:    message.New("Left and right can't be mistaken"),
	Wrong:    message.New("Left and right alike"),
	Severity: Advice,
	Forbids:  Nothing,
	Limits:   []model.Limit{sidesApart},
	Doc: message.New("The edge distances of a front differ between left and right, but by so little that " +
		"nobody notices when the front is drilled the wrong way round. It is told once for each " +
		"pair of distances. Found is the difference, needed 0 or the project's limit. Mark left " +
		"and right on the rear face before drilling."),
	find: findLeftRight,
}

func findLeftRight(s *search) {
	told := map[[2]length.Length]bool{}
	s.drawers(func(f *plan.Front) {
		left, right := f.EdgeDistance.Left, f.EdgeDistance.Right
		pair := [2]length.Length{min(left, right), max(left, right)}
		found, needed := pair[1]-pair[0], sidesApart.In(s.plan.Project)
		if found == 0 || found >= needed || told[pair] {
			return
		}
		told[pair] = true
		s.front(f, Finding{
			Found: found, Needed: needed,
			What:   message.New("the edge distances are %v at the left and %v at the right, as seen from the room: a front drilled the wrong way round is not noticed", left, right),
			Change: message.New("mark left and right on the rear face of each front before drilling"),
			Spots: []mark.Spot{
				wide(f, f.Face.Centre().Y, f.Face.Min.X, f.Face.Min.X+left),
				wide(f, f.Face.Centre().Y, f.Face.Max.X-right, f.Face.Max.X),
			},
			Flag: message.New("Sides differ by only %v", found),
		})
	})
}
