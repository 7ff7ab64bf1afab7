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

var innerHidden = Rule{
	Name:     "inner-hidden",
	Title:    message.New("Fronts hide their inner drawers"),
	Wrong:    message.New("Inner drawer stands out"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("An inner drawer, or what it is to hold, stands above the upper edge of the front that " +
		"it is behind, or hangs below its lower edge: it is seen in the gap, and the front above " +
		"or below is in its way when it is pulled. Found is how far it reaches past the edge, " +
		"needed 0. Choose a lower drawer, move its runner, or make the front higher. Where it has " +
		"no room up to what is above, the rule on room above the drawer tells so."),
	find: findInnerHidden,
}

func findInnerHidden(s *search) {
	s.everyDrawer(func(f *plan.Front) {
		if f.Nth == 0 {
			return
		}
		top, low := f.Drawer.Body.Max.Y, f.Drawer.Body.Min.Y
		if h := s.contents(f).Height; h > 0 {
			top = max(top, f.Drawer.Bottom.Max.Y+h)
		}
		if over := top - f.Face.Max.Y; over > 0 && f.Drawer.Limit-top >= f.Sheet.Runner.ClearanceAbove {
			higher := s.height(f, over)
			s.front(f, Finding{
				Found:  over,
				What:   message.New("it stands %v above the upper edge of its front", over),
				Change: message.New("lower its runner by %v, to %v above where it is measured from, choose a lower drawer, or make the front higher by %v, to %v", over, f.Runner.Lower-over-f.Datum(), higher-f.Face.Height(), higher),
				Spots:  []mark.Spot{behind(f, f.Face.Max.Y, top)},
				Flag:   message.New("Inner drawer %v too high", over),
				Fixes:  append([]edit.Edit{raise(f, -over)}, append(lowerDrawers(f), s.higher(f, over)...)...),
			})
		}
		if under := f.Face.Min.Y - low; under > 0 && !f.OnFloor { // a board is below, which hides it and does not open
			s.front(f, Finding{
				Found:  under,
				What:   message.New("it hangs %v below the lower edge of its front", under),
				Change: raiseBy(f, under),
				Spots:  []mark.Spot{behind(f, low, f.Face.Min.Y)},
				Flag:   message.New("Inner drawer %v too low", under),
				Fixes:  []edit.Edit{raise(f, under)},
			})
		}
	})
}

var doorClear = model.Limit{Key: "door_clear", Title: message.New("between a drawer and the opened door"), Usual: 3 * length.Millimetre, Greatest: 200 * length.Millimetre}

var doorPassed = Rule{
	Name:     "door-passed",
	Title:    message.New("Drawers pass their door"),
	Wrong:    message.New("Drawer may hit its door"),
	Severity: Advice,
	Forbids:  Nothing,
	Limits:   []model.Limit{doorClear},
	Doc: message.New("A drawer behind a door may hit the door when it is pulled: opened at a right angle, the " +
		"door stands in the opening by its thickness less its overlay, as if it turned about its " +
		"edge (common practice, no source). Found is the packing at the hinges with the side " +
		"clearance of the runner, needed what the door takes and the clearance of the project's " +
		"limits. Hinges differ: what the hinge's maker says of it counts, and no hinge holes are " +
		"planned here. Put packing beside the runners, or hinges that swing the door clear."),
	find: findDoorPassed,
}

func findDoorPassed(s *search) {
	for i := range s.plan.Fronts {
		door := &s.plan.Fronts[i]
		if door.Kind != model.Door {
			continue
		}
		for f := range door.Drawers() {
			s.passes(door, f)
			break // its drawers have all the same hardware and packing
		}
	}
}

// passes tells where a drawer does not pass its door.
func (s *search) passes(door, f *plan.Front) {
	key, packing, overlay := "packing.left", f.Packing.Left, door.Overlay.Left
	right := s.plan.Project.FrontAt(door.Place).Hinged == model.HingedRight
	if right {
		key, packing, overlay = "packing.right", f.Packing.Right, door.Overlay.Right
	}
	found, needed := packing+f.Sheet.SideClearance, max(0, door.Thickness-overlay)+doorClear.In(s.plan.Project)
	if found >= needed {
		return
	}
	body := f.Drawer.Body
	box := plane.R(f.Opening.Min.X, body.Min.Y, f.Opening.Min.X+needed, body.Max.Y)
	if right {
		box.Min.X, box.Max.X = f.Opening.Max.X-needed, f.Opening.Max.X
	}
	near, far := inside(f)
	to := packing + needed - found
	at := model.Place{Cabinet: door.Place.Cabinet, Bay: door.Place.Bay, Front: -1}
	switch {
	case s.plan.Project.FrontAt(door.Place).Packing != nil:
		at = door.Place
	case right:
		at.Bay += max(door.Bays, 1) - 1
	}
	s.front(door, Finding{
		Found: found, Needed: needed,
		What:   message.New("its drawers are %v from the carcass at the hinges; opened at a right angle, the door may take %v there with the clearance", found, needed),
		Change: message.New("put packing of %v beside the runners there, which is %v more, or hinges that swing the door clear", to, needed-found),
		Spots:  []mark.Spot{{Shape: mark.Band, In: inDrawer, Front: door.Number, Box: box, Near: near, Far: far}},
		Flag:   message.New("Door in the way by %v", needed-found),
		Fixes:  []edit.Edit{edit.Set{At: at, Key: key, Value: to}},
	})
}
