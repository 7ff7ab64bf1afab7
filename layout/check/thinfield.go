package check

import (
	"fmt"
	"slices"

	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var thinField = Rule{
	Name:     "thin-field",
	Title:    message.New("Holes keep to the frame"),
	Wrong:    message.New("Hole in the panel or the grip"),
	Severity: Error,
	Forbids:  Drilling,
	Doc: message.New("A hole falls into the panel of a frame, or into the grip of a front, where the board " +
		"is too thin to hold anything, or so near to it that the groove is cut open or the " +
		"edge splits off. Found is the material between the hole and the panel or grip " +
		"(negative: it reaches into it), needed the hole's own diameter (common practice, no " +
		"source). The holes of a handle may lie in the panel, away from the frame; they only " +
		"may not cross its edge. Make the stile or rail wider, choose a lower drawer, or " +
		"another board."),
	find: findThinField,
}

func findThinField(s *search) {
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		if len(f.Zones) == 0 {
			continue
		}
		for _, holes := range [2][]plan.Hole{f.Holes, f.HandleHoles} {
			var worst *plan.Hole
			var into *plan.Zone
			found, short := length.Length(0), length.Length(0)
			for k := range holes {
				h := &holes[k]
				z, apart := f.Thin(h)
				if z == nil || h.Kind == plan.HandleHole && z.Part == plan.PanelPart && apart <= -2*h.Diameter {
					continue
				}
				if miss := h.Diameter - apart; miss > short {
					worst, into, found, short = h, z, apart, miss
				}
			}
			if worst != nil {
				s.thin(f, worst, into, found)
			}
		}
	}
}

// thin reports a hole of a front that is found so far from a thin zone.
func (s *search) thin(f *plan.Front, h *plan.Hole, z *plan.Zone, found length.Length) {
	needed, found := h.Diameter, max(found, -h.Diameter)
	field := onBoard(f, mark.Outline, onFace, z.Rect.Move(f.Face.Min))
	finding := Finding{
		Found: found, Needed: needed,
		What:  intoThin(h, z, found),
		Spots: []mark.Spot{hole(f, h), field},
		Flag:  message.New("Hole %v too near thin wood", needed-found),
	}
	finding.Change, finding.Fixes = s.thicker(f, h, z)
	s.front(f, finding)
}

// intoThin says how a hole lies to a thin zone.
func intoThin(h *plan.Hole, z *plan.Zone, apart length.Length) message.Message {
	panel := z.Part == plan.PanelPart
	switch {
	case apart <= -h.Diameter && panel:
		return message.New("a hole of %v falls into the panel, which is %v thick", h.Diameter, z.Thickness)
	case apart <= -h.Diameter:
		return message.New("a hole of %v falls into the grip, where %v is left of the board", h.Diameter, z.Thickness)
	case apart < 0 && panel:
		return message.New("a hole of %v reaches %v into the panel; needed is %v of wood before it", h.Diameter, -apart, h.Diameter)
	case apart < 0:
		return message.New("a hole of %v reaches %v into the grip; needed is %v of wood before it", h.Diameter, -apart, h.Diameter)
	case panel:
		return message.New("a hole of %v leaves %v to the panel; needed is %v", h.Diameter, apart, h.Diameter)
	}
	return message.New("a hole of %v leaves %v to the grip; needed is %v", h.Diameter, apart, h.Diameter)
}

// thicker says what gives a hole wood to sit in, and the changes that may: a stile or
// rail that is wide enough for it, a lower grip, a lower drawer, the plain board.
func (s *search) thicker(f *plan.Front, h *plan.Hole, z *plan.Zone) (message.Message, []edit.Edit) {
	plain := edit.Set{At: f.Place, Key: "board", Value: model.PlainBoard}
	if h.Kind == plan.HandleHole {
		return message.New("move the handle into the middle of the stile or rail, or choose another board"), []edit.Edit{plain}
	}
	key, to := partFor(f, h, z)
	fixes := lowerDrawers(f)
	if at := s.boardPath(f); at != "" && to > 0 && to < max(f.Face.Width(), f.Face.Height())/3 {
		fixes = append(widened(at+".build.", key, to, f.Made.Filled()), fixes...)
	}
	fixes = append(fixes, plain)
	switch key {
	case "stile":
		return message.New("make the stiles at least %v wide, or choose another board", to), fixes
	case "top_rail":
		return message.New("make the top rail at least %v wide, or choose a lower drawer or another board", to), fixes
	case "bottom_rail":
		return message.New("make the bottom rail at least %v wide, or choose another board", to), fixes
	}
	return message.New("make the grip lower, or choose a lower drawer or another board"), fixes
}

// widened are the changes that give a figure of a build another value: rails are as wide
// as the stiles where nothing is said, so they may follow wider ones, or stay as they are
// where these would leave no panel in a low front.
func widened(build, key string, to length.Length, b model.Build) []edit.Edit {
	set := func(key string, to length.Length) edit.Edit {
		return edit.Set{At: model.Whole, Key: build + key, Value: to}
	}
	fixes := []edit.Edit{set(key, to)}
	if key == "stile" {
		fixes = append(fixes, edit.Several{
			Name:  message.New("Stiles %v, rails kept", to),
			Edits: []edit.Edit{set(key, to), set("top_rail", b.TopRail), set("bottom_rail", b.BottomRail)},
		})
	}
	return fixes
}

// partFor is the figure of a front's build that a hole asks for: the stile or rail that
// has to grow least for it, and its width then in whole millimetres, or the height of
// the grip.
func partFor(f *plan.Front, h *plan.Hole, z *plan.Zone) (key string, to length.Length) {
	r := h.Diameter/2 + h.Diameter
	if z.Part != plan.PanelPart {
		to = f.Face.Height() - h.At.Y - r
		if f.Made.Build.Edge == model.GripBottom {
			to = h.At.Y - r
		}
		return "height", to.FloorTo(length.Millimetre)
	}
	w, high := f.Face.Width(), f.Face.Height()
	least := length.Length(0)
	for _, c := range []struct {
		key     string
		has, to length.Length
	}{
		{"stile", z.Rect.Min.X, h.At.X + r},
		{"stile", w - z.Rect.Max.X, w - h.At.X + r},
		{"bottom_rail", z.Rect.Min.Y, h.At.Y + r},
		{"top_rail", high - z.Rect.Max.Y, high - h.At.Y + r},
	} {
		if more := c.to - c.has; key == "" || more < least {
			key, to, least = c.key, c.to.CeilTo(length.Millimetre), more
		}
	}
	return key, to
}

// boardPath is the path of a front's board in the project, empty for the plain one.
func (m mender) boardPath(f *plan.Front) string {
	all := m.plan.Project.Boards.Fronts
	if i := slices.IndexFunc(all, func(b model.FrontBoard) bool { return b.Name == f.Made.Name }); i >= 0 {
		return fmt.Sprintf("boards.fronts[%d]", i)
	}
	return ""
}
