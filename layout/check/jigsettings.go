package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var settingsApart = model.Limit{Key: "settings_apart", Title: message.New("jig settings closer than this should be one"), Usual: 3 * length.Millimetre, Greatest: 2 * length.Metre}

var jigSettings = Rule{
	Name:     "jig-settings",
	Title:    message.New("Jig settings that nearly agree do agree"),
	Wrong:    message.New("Jig settings nearly agree"),
	Severity: Advice,
	Forbids:  Nothing,
	Limits:   []model.Limit{settingsApart},
	Doc: message.New("Two fronts with the same edge distances have drops that nearly agree, and raising " +
		"one's runner would make them agree: the jig has to be set twice for nothing, and the " +
		"two settings are easily mistaken. It is told once for each two drops. Found is the " +
		"difference, needed 0 or the project's limit. Give both the greater drop. Where runners " +
		"are kept on hole rows nothing is said."),
	find: findJigSettings,
}

func findJigSettings(s *search) {
	if s.plan.Project.HoleRows.Mode != model.RowsFree {
		return
	}
	type setting struct {
		left, right, drop length.Length
	}
	with := map[setting][]*plan.Front{}
	var settings []setting // as they are met
	s.drawers(func(f *plan.Front) {
		k := setting{f.EdgeDistance.Left, f.EdgeDistance.Right, f.Drop}
		if with[k] == nil {
			settings = append(settings, k)
		}
		with[k] = append(with[k], f)
	})
	needed := settingsApart.In(s.plan.Project)
	for _, low := range settings {
		var to *setting // the nearest one above
		for i := range settings {
			k := &settings[i]
			if apart := k.drop - low.drop; k.left == low.left && k.right == low.right && apart > 0 && apart < needed && (to == nil || k.drop < to.drop) {
				to = k
			}
		}
		if to == nil {
			continue
		}
		by, raise := to.drop-low.drop, edit.Several{Name: message.New("Drop of %v", to.drop)}
		for _, f := range with[low] {
			if !s.canRaise(f, by) {
				raise.Edits = nil
				break
			}
			raise.Edits = append(raise.Edits, setDrop(f, to.drop))
		}
		if raise.Edits == nil {
			continue
		}
		f, other := with[low][0], with[*to][0]
		s.front(f, Finding{
			Found: by, Needed: needed,
			What:   message.New("its drop of %v differs from that of front %v by %v, so that the jig must be set twice", low.drop, called(other), by),
			Change: message.New("raise its runner by %v (drop %v)", by, to.drop),
			Spots:  []mark.Spot{runnerLine(f), runnerLine(other)},
			Flag:   message.New("Jig set twice for %v", by),
			Fixes:  []edit.Edit{raise},
		})
	}
}

// canRaise tells that a runner can be raised with room for its drawer and holes.
func (s *search) canRaise(f *plan.Front, by length.Length) bool {
	if f.Drawer.RoomAbove-by < f.Sheet.Runner.ClearanceAbove {
		return false
	}
	for _, h := range f.Holes {
		if h.At.Y+by+h.Diameter/2+plan.HoleEdgeIn(s.plan.Project, h.Diameter) > f.Face.Height() {
			return false
		}
	}
	return true
}

// runnerLine is the lower edge of a front's runners.
func runnerLine(f *plan.Front) mark.Spot {
	s := level(f, f.Runner.Lower)
	s.Near, s.Far = inside(f)
	return s
}
