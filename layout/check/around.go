package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// around tells where a front reaches into what stands around its cabinet: what lies in
// the plane of the fronts, which its own end panels do not where they are covered.
func (s *search) around(f *plan.Front) {
	c := &s.plan.Cabinets[f.Place.Cabinet]
	r := c.Reveals
	// No front can reach past its cabinet's edges but by a reveal below zero, or by
	// heights that do not add up, which another rule tells.
	if f.Kind == model.OpenNiche || c.Bays[f.Place.Bay].Over != 0 || min(r.Left, r.Right, r.Top, r.Bottom) >= 0 {
		return
	}
	if f.Inset {
		open := f.Opening
		s.past(f, leftEdge, open.Min.X-f.Face.Min.X, message.New("it reaches %v into the carcass side", open.Min.X-f.Face.Min.X))
		s.past(f, rightEdge, f.Face.Max.X-open.Max.X, message.New("it reaches %v into the carcass side", f.Face.Max.X-open.Max.X))
		s.past(f, bottomEdge, open.Min.Y-f.Face.Min.Y, message.New("it reaches %v into the carcass bottom", open.Min.Y-f.Face.Min.Y))
		s.past(f, topEdge, f.Face.Max.Y-open.Max.Y, message.New("it reaches %v into the carcass top", f.Face.Max.Y-open.Max.Y))
		return
	}
	s.past(f, bottomEdge, -f.Face.Min.Y, message.New("it reaches %v below the floor", -f.Face.Min.Y))
	src, left, right := s.plan.Project.CabinetAt(f.Place), c.Outline.Min.X, c.Outline.Max.X
	for _, b := range c.Beside {
		switch {
		case b.Kind == plan.WorktopBoard:
			s.past(f, topEdge, f.Face.Max.Y-b.Rect.Min.Y, message.New("it reaches %v into the worktop", f.Face.Max.Y-b.Rect.Min.Y))
			continue
		case b.Kind == plan.FillerBoard && b.Rect.Max.X <= c.Outline.Min.X:
			s.past(f, leftEdge, b.Rect.Max.X-f.Face.Min.X, message.New("it reaches %v into the filler", b.Rect.Max.X-f.Face.Min.X))
		case b.Kind == plan.FillerBoard:
			s.past(f, rightEdge, f.Face.Max.X-b.Rect.Min.X, message.New("it reaches %v into the filler", f.Face.Max.X-b.Rect.Min.X))
		}
		left, right = min(left, b.Rect.Min.X), max(right, b.Rect.Max.X)
	}
	for side, next := range [2]int{f.Place.Cabinet - 1, f.Place.Cabinet + 1} {
		if next < 0 || next >= len(s.plan.Cabinets) {
			continue
		}
		for _, b := range s.plan.Cabinets[next].Beside {
			if b.Kind != plan.WorktopBoard && f.Face.Overlaps(b.Rect) {
				into := [2]length.Length{b.Rect.Max.X - f.Face.Min.X, f.Face.Max.X - b.Rect.Min.X}[side]
				s.past(f, side, into, message.New("it reaches %v into what stands beside the next cabinet", into))
				break
			}
		}
	}
	if src.Left.Wall && src.Left.Filler == 0 {
		s.past(f, leftEdge, left-f.Face.Min.X, message.New("it reaches %v into the wall", left-f.Face.Min.X))
	}
	if src.Right.Wall && src.Right.Filler == 0 {
		s.past(f, rightEdge, f.Face.Max.X-right, message.New("it reaches %v into the wall", f.Face.Max.X-right))
	}
}

// past reports a front that reaches too far past an edge of its own, where it does; the
// reveal of that edge is then larger by as much.
func (s *search) past(f *plan.Front, edge int, by length.Length, what message.Message) {
	if by <= 0 {
		return
	}
	c, box := &s.plan.Cabinets[f.Place.Cabinet], f.Face
	which := [4]oneReveal{leftReveal(), rightReveal(), bottomReveal(), topReveal()}[edge]
	to := [4]length.Length{c.Reveals.Left, c.Reveals.Right, c.Reveals.Bottom, c.Reveals.Top}[edge] + by
	switch edge {
	case leftEdge:
		box.Max.X = box.Min.X + by
	case rightEdge:
		box.Min.X = box.Max.X - by
	case bottomEdge:
		box.Max.Y = box.Min.Y + by
	default:
		box.Min.Y = box.Max.Y - by
	}
	s.front(f, Finding{
		Found: by, What: what,
		Change: message.New("make the gap %v larger by %v, to %v", which.where, by, to),
		Spots:  []mark.Spot{onBoard(f, mark.Band, onFace, box)},
		Flag:   message.New("Reaches %v too far", by),
		Fixes:  s.revealTo(c, which, to),
	})
}
