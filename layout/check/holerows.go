package check

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
)

// holeRows: the project asks for runners on hole rows and this one is off them,
// because its drop is set by hand or the fronts can't be divided so. Found is how
// far the next row lies above its first screw hole, needed 0. Let the layout
// choose the drop, or move the front.
func holeRows() Rule {
	return Rule{"hole-rows", message.New("Runners are on hole rows"), Warning, findHoleRows}
}

func findHoleRows(s *search) {
	if s.plan.Project.HoleRows.Mode == model.RowsFree {
		return
	}
	s.drawers(func(f *plan.Front) {
		if f.Runner.OffRow == 0 {
			return
		}
		s.front(f, Finding{
			Found:  f.Runner.OffRow,
			What:   message.New("the runner is off the hole rows; the next row is %v higher", f.Runner.OffRow),
			Change: message.New("raise the runner by %v, or let the layout choose its drop", f.Runner.OffRow),
			Area:   strip(f, f.Runner.Lower, f.Runner.Lower+f.Runner.OffRow),
			Mark:   message.New("off the rows"),
			Fixes:  []edit.Edit{edit.SetDrop{At: f.Place}, setDrop(f, f.Drop+f.Runner.OffRow)},
		})
	})
}
