package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

var (
	web        = model.Limit{Key: "web", Title: message.New("from a hole's bottom to the face"), Usual: 3 * length.Millimetre, Greatest: 2 * length.Metre}
	drillPoint = model.Limit{Key: "drill_point", Title: message.New("the drill's point reaches deeper by"), Usual: length.Millimetre, Greatest: 2 * length.Metre}
)

// DrillPoint is how far the point of the drill may reach past the depth of a
// hole: the project's, or 1 mm.
func DrillPoint(p *model.Project) length.Length { return drillPoint.In(p) }

var holeDepth = Rule{
	Name:     "hole-depth",
	Title:    message.New("Holes do not come through the face"),
	Wrong:    message.New("Holes too deep"),
	Severity: Error,
	Forbids:  Drilling,
	Limits:   []model.Limit{web, drillPoint},
	Doc: message.New("A hole in the rear face is so deep that the drill comes through the face, or its " +
		"bottom shows there. Found is what stays of the board under the hole and the " +
		"drill's point, needed the web of the project's limits; the board is as thick as the part of the " +
		"front that the hole is in. Use a thicker front, or a " +
		"connector with shallower holes; set the depth stop."),
	find: findHoleDepth,
}

func findHoleDepth(s *search) {
	s.drawers(func(f *plan.Front) {
		found, deepest, at := length.Length(0), length.Length(0), plan.Zone{}
		for i := range f.Holes {
			h := &f.Holes[i]
			z := f.ZoneAt(h)
			if left := z.Thickness - h.Depth - drillPoint.In(s.plan.Project); h.Depth > 0 && (deepest == 0 || left < found) {
				found, deepest, at = left, h.Depth, z
			}
		}
		needed := web.In(s.plan.Project)
		if deepest == 0 || found >= needed {
			return
		}
		var spots []mark.Spot
		for i := range f.Holes {
			if h := &f.Holes[i]; h.Depth == deepest && f.ZoneAt(h).Thickness == at.Thickness {
				left := hole(f, h) // what is left of the board
				left.Shape, left.In = mark.Band, mark.Section
				left.Near += at.Face(f)
				left.Far = max(left.Near+found, left.Near)
				spots = append(spots, hole(f, h), left)
			}
		}
		what := message.New("a hole %v deep leaves %v of the front's %v; needed is %v", deepest, found, at.Thickness, needed)
		if found <= 0 {
			what = message.New("a hole %v deep comes through the face of a front %v thick; %v must stay", deepest, at.Thickness, needed)
		}
		s.front(f, Finding{
			Found: found, Needed: needed, What: what,
			Change: message.New("use a front at least %v thicker, or a connector with shallower holes", needed-found),
			Spots:  spots,
			Flag:   message.New("Holes too deep by %v", needed-found),
		})
	})
}
