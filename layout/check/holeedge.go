package check

import (
	"slices"

	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var holeEdge = Rule{
	Name:     "hole-edge",
	Title:    message.New("Holes keep away from the edges"),
	Wrong:    message.New("Hole too near an edge"),
	Severity: Error,
	Forbids:  Drilling,
	Limits:   []model.Limit{plan.HoleEdge},
	Doc: message.New("A hole lies outside of the front or so near its edge that the board may split or " +
		"the connector stands out. Found is the material between the hole and the nearest " +
		"edge (negative: past it), needed the project's limit; where none is set, 8 mm or the " +
		"hole's own diameter, whichever is more (common practice, no source). Choose a lower drawer, or make the front larger on that side."),
	find: findHoleEdge,
}

func findHoleEdge(s *search) {
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		for _, holes := range [2][]plan.Hole{f.Holes, f.HandleHoles} {
			if h, found, side := nearest(f, holes, s.plan.Project); h != nil {
				s.nearEdge(f, h, found, side)
			}
		}
	}
}

// nearest finds the hole that falls most short of its distance from an edge,
// nil where none does.
func nearest(f *plan.Front, holes []plan.Hole, p *model.Project) (worst *plan.Hole, found length.Length, side int) {
	short := length.Length(0)
	for i := range holes {
		h := &holes[i]
		r := h.Diameter / 2
		edges := [4]length.Length{h.At.X - r, f.Face.Width() - h.At.X - r, h.At.Y - r, f.Face.Height() - h.At.Y - r}
		for k, d := range edges {
			if miss := plan.HoleEdgeIn(p, h.Diameter) - d; miss > short {
				short, worst, found, side = miss, h, d, k
			}
		}
	}
	return worst, found, side
}

// The edges of a front, in the order of sideNames.
const (
	leftEdge = iota
	rightEdge
	bottomEdge
	topEdge
)

func sideNames(k int) message.Message {
	return [4]message.Message{message.New("left"), message.New("right"), message.New("bottom"), message.New("top")}[k]
}

// toEdge and pastEdge have the preposition in them, as other languages bend the
// name behind it.
func toEdge(k int) message.Message {
	return [4]message.Message{message.New("to the left edge"), message.New("to the right edge"), message.New("to the bottom edge"), message.New("to the top edge")}[k]
}

func pastEdge(k int) message.Message {
	return [4]message.Message{message.New("past the left edge"), message.New("past the right edge"), message.New("past the bottom edge"), message.New("past the top edge")}[k]
}

func (s *search) nearEdge(f *plan.Front, h *plan.Hole, found length.Length, edge int) {
	needed := plan.HoleEdgeIn(s.plan.Project, h.Diameter)
	what := message.New("a hole of %v leaves %v %v; needed is %v", h.Diameter, found, toEdge(edge), needed)
	if found < 0 {
		what = message.New("a hole of %v reaches %v %v; needed is %v inside of it", h.Diameter, -found, pastEdge(edge), needed)
	}
	fix := Finding{
		Found: found, Needed: needed, What: what,
		Change: s.roomForHole(f, h, edge, needed-found),
		Spots:  []mark.Spot{hole(f, h), edgeBeside(f, h, edge)},
		Flag:   message.New("Hole %v too near the edge", needed-found),
	}
	fix.Fixes = s.mendHole(f, h, edge, needed-found)
	s.front(f, fix)
}

// mendHole are the changes that may bring a hole further from an edge by short.
func (s *search) mendHole(f *plan.Front, h *plan.Hole, edge int, short length.Length) []edit.Edit {
	switch {
	case h.Kind == plan.HandleHole:
		return s.moveHandle(f, h, [...]plane.Point{{X: short}, {X: -short}, {Y: short}, {Y: -short}}[edge])
	case edge == leftEdge || edge == rightEdge:
		return append(s.widen(f, edge == rightEdge, short), s.widenBoth(f, short)...)
	case edge == topEdge:
		return slices.Concat(lowerDrawers(f), []edit.Edit{setDrop(f, f.Drop-short)}, s.higher(f, short))
	default:
		return slices.Concat([]edit.Edit{setDrop(f, f.Drop+short)}, lowerDrawers(f))
	}
}

// roomForHole says what to change where a hole is too near an edge by short.
func (s *search) roomForHole(f *plan.Front, h *plan.Hole, edge int, short length.Length) message.Message {
	side := sideNames(edge)
	switch {
	case h.Kind == plan.HandleHole:
		return message.New("move the handle by %v, away from the %v edge", short, side)
	case edge == topEdge && len(lowerDrawers(f)) > 0:
		return message.New("choose a lower drawer, lower the runner by %v (drop %v), or give the front as much more at the top", short, f.Drop-short)
	case edge == topEdge:
		return message.New("lower the runner by %v (drop %v), or give the front as much more at the top", short, f.Drop-short)
	case edge == bottomEdge:
		return message.New("raise the runner by %v (drop %v), or give the front as much more at the bottom", short, f.Drop+short)
	default:
		return s.narrower(f, edge == rightEdge, short)
	}
}

// edgeBeside is the part of a front's edge beside a hole.
func edgeBeside(f *plan.Front, h *plan.Hole, edge int) mark.Spot {
	const long = 3 // holes
	at, face := h.At.Add(f.Face.Min), f.Face
	r := face.Intersect(plane.Rect{Min: at, Max: at}.Grow(long * h.Diameter))
	switch edge {
	case leftEdge:
		r.Min.X, r.Max.X = face.Min.X, face.Min.X
	case rightEdge:
		r.Min.X, r.Max.X = face.Max.X, face.Max.X
	case bottomEdge:
		r.Min.Y, r.Max.Y = face.Min.Y, face.Min.Y
	default:
		r.Min.Y, r.Max.Y = face.Max.Y, face.Max.Y
	}
	return onBoard(f, mark.Edge, onFace, r)
}
