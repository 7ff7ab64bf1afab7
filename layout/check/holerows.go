package check

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var holeRows = Rule{
	Name:     "hole-rows",
	Title:    message.New("Runners are on hole rows"),
	Severity: Warning,
	Forbids:  Nothing,
	Doc: "The project asks for runners on hole rows and this one is off them, because its " +
		"drop is set by hand or the fronts can't be divided so, or because its first " +
		"screw is not the setback of the rows behind the front edge. Found is how far the " +
		"next row lies above its first screw hole, needed 0 (or the screw's distance from " +
		"the front edge and the setback). Let the layout choose the drop, or move the " +
		"front.",
	find: findHoleRows,
}

func findHoleRows(s *search) {
	if s.plan.Project.HoleRows.Mode == model.RowsFree {
		return
	}
	setback := s.plan.Project.HoleRows.Filled().Setback
	s.drawers(func(f *plan.Front) {
		if screws := f.Runner.Screws; len(screws) > 0 {
			want := setback
			if f.Inset { // the rows are set back behind the fronts
				want += f.Thickness
			}
			if screws[0].Back != want {
				s.front(f, Finding{
					Found: screws[0].Back, Needed: want,
					What:   message.New("the runner's first screw is %v behind the carcass's front edge; the hole row is at %v", screws[0].Back, want),
					Change: message.New("set the rows back by what the runner needs, or drill its holes apart from the rows"),
				})
			}
		}
		if f.Runner.OffRow == 0 {
			return
		}
		s.front(f, Finding{
			Found:  f.Runner.OffRow,
			What:   message.New("the runner is off the hole rows; the next row is %v higher", f.Runner.OffRow),
			Change: message.New("raise the runner by %v, or let the layout choose its drop", f.Runner.OffRow),
			Area:   strip(f, f.Runner.Lower, f.Runner.Lower+f.Runner.OffRow),
			Mark:   message.New("off the rows"),
			Fixes:  []edit.Edit{edit.Set{At: f.Place, Key: "drop"}, setDrop(f, f.Drop+f.Runner.OffRow)},
		})
	})
}
