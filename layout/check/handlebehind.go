package check

import (
	"cmp"
	"slices"

	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

var handleRoom = model.Limit{
	Key: "handle_room", Title: message.New("around a handle's hole behind the front"),
	Usual: 4 * length.Millimetre, Greatest: 2 * length.Metre,
}

var handleBehind = Rule{
	Name:     "handle-behind",
	Title:    message.New("Handles have room behind the front"),
	Wrong:    message.New("Handle screw runs into the drawer"),
	Severity: Error,
	Forbids:  Drilling,
	Limits:   []model.Limit{handleRoom},
	Doc: message.New("The screw of a handle comes through the front where a drawer's side or rail ends, where " +
		"a connector sits, or at the edge of the inner front of a wooden drawer, so that its " +
		"head does not lie flat, or can't be reached. A side is as thick as the hardware sheet's " +
		"figures leave between the drawer's outside and its back; a connector reaches from the " +
		"lowest to the highest of its holes. A handle may be screwed through an inner front, " +
		"with longer screws. Found is what lies between the hole's edge and the part (negative: " +
		"it runs into it), needed the project's limit, 4 mm for a screw's head and a washer " +
		"(common practice, no source), at a connector that between two holes. Move the handle."),
	find: findHandleBehind,
}

// obstacle is a part of a drawer behind a front's rear face, Face frame: a rectangle,
// grown by round with round corners, to which a handle's hole must keep needed.
type obstacle struct {
	what          message.Message
	rect          plane.Rect
	round, needed length.Length
	level         bool // only ways up and down lead away from it
}

// behindHandles looks for what a handle's screws meet behind a front.
type behindHandles struct{ *search }

func findHandleBehind(on *search) {
	s := behindHandles{on}
	s.drawers(func(f *plan.Front) {
		var worst *plan.Hole
		var at obstacle
		short := length.Length(0)
		for _, o := range s.obstacles(f) {
			for i := range f.HandleHoles {
				if miss := o.needed - o.apart(&f.HandleHoles[i]); miss > short {
					short, worst, at = miss, &f.HandleHoles[i], o
				}
			}
		}
		if worst != nil {
			s.handleInto(f, worst, &at)
		}
	})
}

// handleInto reports a hole of a handle that comes too near to an obstacle.
func (s behindHandles) handleInto(f *plan.Front, h *plan.Hole, at *obstacle) {
	found := at.apart(h)
	what := message.New("behind the front, %v lies %v from a handle's hole; needed is %v", at.what, found, at.needed)
	if found < 0 {
		what = message.New("behind the front, %v lies in the way of a handle's screw, by %v; needed is %v between them", at.what, -found, at.needed)
	}
	steps := at.away(h)
	finding := Finding{
		Found: found, Needed: at.needed, What: what,
		Change: message.New("move the handle by %v", (steps[0].X + steps[0].Y).Abs()),
		Spots:  []mark.Spot{hole(f, h), onBoard(f, mark.Outline, onFace, at.rect.Grow(at.round).Move(f.Face.Min))},
		Flag:   message.New("Handle %v too near the drawer", at.needed-found),
	}
	for _, step := range steps {
		finding.Fixes = append(finding.Fixes, s.moveHandle(f, h, step)...)
	}
	s.front(f, finding)
}

// obstacles are the parts of a fitted drawer that end or sit at its front's rear face,
// in the way of the front's handles.
func (s behindHandles) obstacles(f *plan.Front) []obstacle {
	if len(f.HandleHoles) == 0 {
		return nil
	}
	d, room, move := &f.Drawer, handleRoom.In(s.plan.Project), plane.Point{}.Sub(f.Face.Min)
	var all []obstacle
	if thick := f.Sheet.SideAtFront(); thick > 0 {
		for _, x := range [2]length.Length{d.Body.Min.X, d.Body.Max.X - thick} {
			all = append(all, obstacle{what: message.New("the drawer's side"), rect: plane.R(x, d.Body.Min.Y, x+thick, d.Side).Move(move), needed: room})
			if d.Rail > d.Side {
				all = append(all, obstacle{what: message.New("the drawer's rail"), rect: plane.R(x, d.Side, x+thick, d.Rail).Move(move), needed: room})
			}
		}
	}
	screwed := f.Sheet.Connector.Kind == model.Screws
	if screwed || f.Sheet.Wooden() {
		top := plane.R(d.Body.Min.X, d.Side, d.Body.Max.X, d.Side).Move(move)
		all = append(all, obstacle{what: message.New("the upper edge of the inner front"), rect: top, needed: room, level: true})
	}
	if screwed {
		return all
	}
	return append(all, s.connectors(f)...)
}

// connectors are those of a front, from the lowest to the highest of the holes of one
// line. Beyond these the rule on two holes tells how near a handle may come.
func (s behindHandles) connectors(f *plan.Front) []obstacle {
	var all []obstacle
	for i := range f.Holes {
		h := &f.Holes[i]
		same := func(o *plan.Hole) bool { return o.Kind == h.Kind && o.Side == h.Side && o.At.X == h.At.X }
		if h.Kind != plan.ConnectorHole && h.Kind != plan.RailHole || slices.ContainsFunc(f.Holes[:i], func(o plan.Hole) bool { return same(&o) }) {
			continue // a stabiliser, or told with an earlier one
		}
		line := plane.Rect{Min: h.At, Max: h.At}
		for k := i + 1; k < len(f.Holes); k++ {
			if o := &f.Holes[k]; same(o) {
				line.Min.Y, line.Max.Y = min(line.Min.Y, o.At.Y), max(line.Max.Y, o.At.Y)
			}
		}
		all = append(all, obstacle{what: message.New("a connector"), rect: line, round: h.Diameter / 2, needed: leastHoleGap.In(s.plan.Project)})
	}
	return slices.DeleteFunc(all, func(o obstacle) bool { return o.rect.Min == o.rect.Max })
}

// apart is what lies between the edges of a hole and the obstacle, below zero how far the
// hole reaches into it.
func (o *obstacle) apart(h *plan.Hole) length.Length {
	x := max(o.rect.Min.X-h.At.X, h.At.X-o.rect.Max.X)
	y := max(o.rect.Min.Y-h.At.Y, h.At.Y-o.rect.Max.Y)
	out := max(x, y)
	if x > 0 && y > 0 { // across from its corner
		out = hypot(x, y)
	}
	return out - h.Diameter/2 - o.round
}

// away are the steps that bring a hole so far from the obstacle as is needed, the shortest
// first.
func (o *obstacle) away(h *plan.Hole) []plane.Point {
	r := o.rect.Grow(o.needed + h.Diameter/2 + o.round)
	steps := []plane.Point{{Y: r.Max.Y - h.At.Y}, {Y: r.Min.Y - h.At.Y}}
	if !o.level {
		steps = append(steps, plane.Point{X: r.Max.X - h.At.X}, plane.Point{X: r.Min.X - h.At.X})
	}
	slices.SortStableFunc(steps, func(a, b plane.Point) int {
		return cmp.Compare((a.X + a.Y).Abs(), (b.X + b.Y).Abs())
	})
	return steps
}
