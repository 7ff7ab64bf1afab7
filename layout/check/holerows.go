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

var holeRows = Rule{
	Name:     "hole-rows",
	Title:    message.New("Runners are on hole rows"),
	Wrong:    message.New("Off the hole rows"),
	Severity: Warning,
	Forbids:  Nothing,
	Doc: message.New("The project asks for runners on hole rows and this one is off them, because its " +
		"drop is set by hand or the fronts can't be divided so, or because its first " +
		"screw is not the setback of the rows behind the front edge. Found is how far the " +
		"next row lies above its first screw hole (below it, where that is nearer and the " +
		"drawer stays hidden and free), needed 0 (or the screw's distance from " +
		"the front edge and the setback). Let the layout choose the drop, or move the " +
		"front."),
	find: findHoleRows,
}

func findHoleRows(s *search) {
	if s.plan.Project.HoleRows.Mode == model.RowsFree {
		return
	}
	rows := s.plan.Project.HoleRows
	s.everyDrawer(func(f *plan.Front) {
		if screws := f.Runner.Screws; len(screws) > 0 {
			want := rows.Filled().Setback
			if f.Inset && rows.Setback <= 0 { // nobody says where they are: as usual, counted from behind the fronts
				want += f.Thickness
			}
			if screws[0].Back != want {
				s.front(f, Finding{
					Found: screws[0].Back, Needed: want,
					What:   message.New("the runner's first screw is %v behind the carcass's front edge; the hole row is at %v", screws[0].Back, want),
					Change: message.New("set the rows back %v, as the runner needs it, or drill its holes apart from the rows", screws[0].Back),
					Spots:  offSetback(f, want),
					Flag:   message.New("Screws %v off the rows", (screws[0].Back - want).Abs()),
					Fixes:  []edit.Edit{edit.Set{At: model.Whole, Key: "hole_rows.setback", Value: screws[0].Back}},
				})
			}
		}
		if f.Runner.OffRow == 0 {
			return
		}
		up := f.Runner.OffRow
		down := rows.Filled().Pitch - up
		off := Finding{
			Found:  up,
			What:   message.New("the runner is off the hole rows; the next row is %v higher", up),
			Change: message.New("raise the runner by %v (drop %v), or let the layout choose its drop", up, f.Drop+up),
			Spots:  offRow(f, up),
			Flag:   message.New("%v off the hole rows", up),
			Fixes:  []edit.Edit{edit.Set{At: f.Place, Key: "drop"}, setDrop(f, f.Drop+up)},
		}
		if f.Nth > 0 {
			off.Change = raiseBy(f, up)
			off.Fixes = []edit.Edit{raise(f, up), raise(f, -down)}
			s.front(f, off)
			return
		}
		if down < up && s.canLower(f, down) {
			off.Found = down
			off.What = message.New("the runner is off the hole rows; the next row is %v lower", down)
			off.Change = message.New("lower the runner by %v (drop %v), or let the layout choose its drop", down, f.Drop-down)
			off.Spots, off.Flag = offRow(f, -down), message.New("%v off the hole rows", down)
			off.Fixes = []edit.Edit{setDrop(f, f.Drop-down), off.Fixes[0], off.Fixes[1]}
		}
		s.front(f, off)
	})
}

// canLower tells that a runner can be lowered and its front still hides the
// drawer bottom, and the drawer clears what is below.
func (s *search) canLower(f *plan.Front, by length.Length) bool {
	if f.Drawer.Cover.Bottom-by < s.plan.Project.FrontAt(f.Place).Cover {
		return false
	}
	if f.OnFloor {
		return f.Runner.Lower-by >= f.Floor+f.Sheet.Runner.LeastHeight
	}
	return f.Drawer.Body.Min.Y-by >= f.Floor
}

// offRow are the first screws of a runner and the row so far above them, at both
// sides.
func offRow(f *plan.Front, up length.Length) []mark.Spot {
	first := &f.Runner.Screws[0]
	near, far := inside(f)
	in := f.Between()
	spots := []mark.Spot{{
		Shape: mark.Edge, In: inDepth, Front: f.Number, Near: near, Far: far,
		Box: plane.R(in.Min.X, first.Y+up, in.Max.X, first.Y+up),
	}}
	return append(spots, screw(f, first, in.Min.X), screw(f, first, in.Max.X))
}

// offSetback are the first screws of a runner, and where the row of holes stands
// that they miss.
func offSetback(f *plan.Front, row length.Length) []mark.Spot {
	first, in := &f.Runner.Screws[0], f.Between()
	line := mark.Spot{
		Shape: mark.Edge, In: mark.Section | mark.Plan, Front: f.Number, Near: row, Far: row,
		Box: plane.R(in.Min.X, f.Face.Min.Y, in.Max.X, f.Face.Max.Y),
	}
	return []mark.Spot{line, screw(f, first, in.Min.X), screw(f, first, in.Max.X)}
}
