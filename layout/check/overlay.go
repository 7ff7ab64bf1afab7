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

var leastOverlay = model.Limit{Key: "least_overlay", Title: message.New("least overlay"), Usual: 1 * length.Millimetre, Greatest: 2 * length.Metre}

var overlay = Rule{
	Name:     "overlay",
	Title:    message.New("Front covers the carcass edges"),
	Wrong:    message.New("Carcass edge shows"),
	Severity: Error,
	Forbids:  Nothing,
	Limits:   []model.Limit{leastOverlay},
	Doc: message.New("An overlay front does not cover a carcass edge that it should: side or partition " +
		"on its left and right, the bottom below the lowest front, the top above the " +
		"highest (unless a finger-pull channel is there). At the bench one sees past the " +
		"front into the cabinet. Found is the overlay of that edge, needed the least " +
		"overlay of the project's limits. Make the reveal smaller."),
	find: findOverlay,
}

func findOverlay(s *search) {
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		if f.Inset || f.Kind == model.OpenNiche {
			continue
		}
		face, open := f.Face, f.Opening
		s.edge(f, leftEdge, f.Overlay.Left, plane.R(min(open.Min.X, face.Min.X), face.Min.Y, max(open.Min.X, face.Min.X), face.Max.Y))
		s.edge(f, rightEdge, f.Overlay.Right, plane.R(min(face.Max.X, open.Max.X), face.Min.Y, max(face.Max.X, open.Max.X), face.Max.Y))
		c := &s.plan.Cabinets[f.Place.Cabinet]
		if c.Bays[f.Place.Bay].Over != 0 {
			continue // its height is told by another rule
		}
		if f.Bottommost {
			s.edge(f, bottomEdge, f.Overlay.Bottom, across(f, min(open.Min.Y, face.Min.Y), max(open.Min.Y, face.Min.Y)))
		}
		if f.Topmost && !s.underChannel(f) {
			s.edge(f, topEdge, f.Overlay.Top, across(f, min(face.Max.Y, open.Max.Y), max(face.Max.Y, open.Max.Y)))
		}
	}
}

// underChannel tells that a finger-pull channel is above a front.
func (s *search) underChannel(f *plan.Front) bool {
	return f.Topmost && s.plan.Project.CabinetAt(f.Place).Channel.Height > 0 || s.plan.Project.FrontAt(f.Place).Channel.Height > 0
}

// edge compares the overlay at one edge.
func (s *search) edge(f *plan.Front, which int, found length.Length, area plane.Rect) {
	needed := leastOverlay.In(s.plan.Project)
	if found >= needed {
		return
	}
	in := mark.Plan
	if area.Width() == f.Face.Width() {
		in = mark.Section
	}
	side, short := sideNames(which), needed-found
	c := &s.plan.Cabinets[f.Place.Cabinet]
	var fixes []edit.Edit
	var change message.Message
	switch which {
	case bottomEdge:
		to := c.Reveals.Bottom - short
		fixes, change = s.otherReveal(c, bottomReveal(), to), smaller(bottomReveal(), short, to)
	case topEdge:
		if own := s.plan.Project.FrontAt(f.Place).GapAbove; own != nil {
			fixes, change = []edit.Edit{edit.Set{At: f.Place, Key: "gap_above", Value: *own - short}}, message.New("make the gap above smaller by %v, to %v", short, *own-short)
			break
		}
		to := c.Reveals.Top - short
		fixes, change = s.otherReveal(c, topReveal(), to), smaller(topReveal(), short, to)
	default:
		fixes, change = s.widen(f, which == rightEdge, short), s.narrower(f, which == rightEdge, short)
	}
	what := message.New("the front overlays the carcass by %v at its %v edge; needed is %v", found, side, needed)
	if found < 0 {
		what = message.New("the front ends %v short of the carcass at its %v edge; needed is an overlay of %v", -found, side, needed)
	}
	s.front(f, Finding{
		Found: found, Needed: needed, What: what,
		Change: change,
		Spots:  []mark.Spot{onBoard(f, mark.Band, onFace|in, area)},
		Flag:   message.New("Overlay short by %v", needed-found),
		Fixes:  fixes,
	})
}
