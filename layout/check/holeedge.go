package check

import (
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// holeEdge: a hole lies outside of the front or so near its edge that the board
// may split or the connector stands out. Found is the material between the hole
// and the nearest edge (negative: past it), needed the project's limit, or the
// hole's own diameter where none is set. Choose a lower drawer, or make the
// front larger on that side.
func holeEdge() Rule {
	return Rule{"hole-edge", message.New("Holes keep away from the edges"), Error, findHoleEdge}
}

func findHoleEdge(s *search) {
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		for _, holes := range [2][]plan.Hole{f.Holes, f.HandleHoles} {
			if h, found, side := nearest(f, holes, s.limits); h != nil {
				s.nearEdge(f, h, found, side)
			}
		}
	}
}

// nearest finds the hole that falls most short of its distance from an edge,
// nil where none does.
func nearest(f *plan.Front, holes []plan.Hole, l limits) (worst *plan.Hole, found length.Length, side message.Message) {
	short := length.Length(0)
	for i := range holes {
		h := &holes[i]
		r := h.Diameter / 2
		edges := [4]length.Length{h.At.X - r, f.Face.Width() - h.At.X - r, h.At.Y - r, f.Face.Height() - h.At.Y - r}
		for k, d := range edges {
			if miss := l.edgeFor(h.Diameter) - d; miss > short {
				short, worst, found, side = miss, h, d, sideNames(k)
			}
		}
	}
	return worst, found, side
}

// The edges that sideNames knows besides left and right.
const (
	bottomEdge = 2
	topEdge    = 3
)

func sideNames(k int) message.Message {
	return [4]message.Message{message.New("left"), message.New("right"), message.New("bottom"), message.New("top")}[k]
}

func (s *search) nearEdge(f *plan.Front, h *plan.Hole, found length.Length, side message.Message) {
	needed := s.limits.edgeFor(h.Diameter)
	what := message.New("a hole of %v leaves %v to the %v edge; needed is %v", h.Diameter, found, side, needed)
	if found < 0 {
		what = message.New("a hole of %v reaches %v past the %v edge; needed is %v inside of it", h.Diameter, -found, side, needed)
	}
	fix := Finding{
		Found: found, Needed: needed, What: what,
		Change: s.roomForHole(f, h, side, needed-found),
		Area:   around(f, h),
		Mark:   message.New("hole too near the edge"),
	}
	if h.Kind != plan.HandleHole {
		fix.Fixes = append(s.lowerDrawers(f), setDrop(f, f.Drop+needed-found), setDrop(f, f.Drop-(needed-found)))
	}
	s.front(f, fix)
}

// roomForHole says what to change where a hole is too near an edge by short.
func (s *search) roomForHole(f *plan.Front, h *plan.Hole, side message.Message, short length.Length) message.Message {
	switch {
	case h.Kind == plan.HandleHole:
		return message.New("move the handle by %v, away from the %v edge", short, side)
	case side.Text == sideNames(topEdge).Text && len(s.lowerDrawers(f)) > 0:
		return message.New("choose a lower drawer, or give the front %v more at the %v", short, side)
	case side.Text == sideNames(bottomEdge).Text:
		return message.New("raise the runner by %v, or give the front %v more at the %v", short, short, side)
	default:
		return message.New("give the front %v more at the %v", short, side)
	}
}

// around is the area of a hole in the run frame.
func around(f *plan.Front, h *plan.Hole) plane.Rect {
	at := h.At.Add(f.Face.Min)
	return plane.Rect{Min: at, Max: at}.Grow(h.Diameter)
}
