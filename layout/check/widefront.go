package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var wideFrom = model.Limit{Key: "wide_front", Title: message.New("width from which a stabiliser is asked for"), Usual: 900 * length.Millimetre, Greatest: 20 * length.Metre}

var wideFront = Rule{
	Name:     "wide-front",
	Title:    message.New("Wide drawers have a stabiliser"),
	Wrong:    message.New("Wide drawer without stabiliser"),
	Severity: Warning,
	Forbids:  Nothing,
	Limits:   []model.Limit{wideFrom},
	Doc: message.New("A drawer is so wide that it racks and jams when it is pulled at one side, and " +
		"its hardware has no stabiliser between the runners. Found is the front's width, " +
		"needed (less than) the width of the project's limits. Divide the bay, or use " +
		"hardware with a stabiliser."),
	find: findWideFront,
}

func findWideFront(s *search) {
	s.drawers(func(f *plan.Front) {
		found, needed := f.Face.Width(), wideFrom.In(s.plan.Project)
		// A sheet with a stabiliser tells itself from which width on it is needed.
		if f.Sheet.Stabiliser.FromWidth > 0 || needed <= 0 || found < needed {
			return
		}
		s.front(f, Finding{
			Found: found, Needed: needed,
			What:   message.New("the front is %v wide and its drawer has no stabiliser; from %v on it may rack", found, needed),
			Change: message.New("divide the bay, or use hardware with a stabiliser"),
			Spots:  []mark.Spot{wide(f, f.Face.Min.Y+f.Face.Height()/4, f.Face.Min.X, f.Face.Max.X)},
			Flag:   message.New("%v wide, no stabiliser", found),
			Fixes:  s.stabilised(f),
		})
	})
}

// stabilised are the changes to hardware sheets of the project that have a
// stabiliser, for the bay and for the front alone.
func (s *search) stabilised(f *plan.Front) []edit.Edit {
	var fixes []edit.Edit
	for _, h := range s.plan.Project.Hardware {
		if h.Sheet != nil && h.Sheet.Stabiliser.FromWidth > 0 {
			bay := model.Place{Cabinet: f.Place.Cabinet, Bay: f.Place.Bay, Front: -1}
			fixes = append(fixes, edit.ChooseHardware{At: bay, Name: h.Name}, edit.ChooseFrontHardware{At: f.Place, Name: h.Name})
		}
	}
	return fixes
}
