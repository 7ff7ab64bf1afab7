package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var frontReach = model.Limit{
	Key: "front_reach", Title: message.New("from the highest fixing to the top of a front"), Usual: 150 * length.Millimetre,
	Unset: message.New("%v, or a third of the front's height where that is more", 150*length.Millimetre), Greatest: 20 * length.Metre,
}

var heldNearTop = Rule{
	Name:     "front-reach",
	Title:    message.New("Fronts are held near their top"),
	Wrong:    message.New("Front held too low"),
	Severity: Warning,
	Forbids:  Nothing,
	Limits:   []model.Limit{frontReach},
	Doc: message.New("A front reaches so far above its highest hole that it wobbles and tears at the " +
		"connectors when the drawer is pulled by it. Found is the height above the middle of " +
		"that hole, needed (at most) the project's limit; where none is set, 150 mm or a third " +
		"of the front's height, whichever is more (from memory). Choose a higher drawer or one " +
		"with rails, or divide the front."),
	find: findHeldNearTop,
}

func findHeldNearTop(s *search) {
	s.drawers(func(f *plan.Front) {
		if len(f.Holes) == 0 {
			return
		}
		highest := f.Holes[0].At.Y
		for i := range f.Holes {
			highest = max(highest, f.Holes[i].At.Y)
		}
		var spots []mark.Spot
		for i := range f.Holes {
			if h := &f.Holes[i]; h.At.Y == highest {
				spots = append(spots, hole(f, h), tall(f, onFace|mark.Section, f.Face.Min.X+h.At.X, f.Face.Min.Y+highest, f.Face.Max.Y))
			}
		}
		height := f.Face.Height()
		needed := frontReach.In(s.plan.Project)
		if _, set := s.plan.Project.Checks.Limits[frontReach.Key]; !set {
			needed = max(needed, height/3)
		}
		found := height - highest
		if found <= needed {
			return
		}
		s.front(f, Finding{
			Found: found, Needed: needed,
			What:   message.New("the front reaches %v above its highest hole; at most %v holds it still", found, needed),
			Change: message.New("choose a higher drawer or one with rails, or divide the front"),
			Spots:  spots,
			Flag:   message.New("Held too low, by %v", found-needed),
			Fixes:  s.tallerDrawers(f),
		})
	})
}

// tallerDrawers are the changes to each taller drawer height, the tallest first.
func (s *search) tallerDrawers(f *plan.Front) []edit.Edit {
	var fixes []edit.Edit
	for i := len(f.Sheet.Drawers) - 1; i >= 0; i-- {
		if d := &f.Sheet.Drawers[i]; d.Top() > f.Height.Top() {
			fixes = append(fixes, edit.SetDrawer{At: f.Place, Drawer: d.Name})
		}
	}
	return fixes
}
