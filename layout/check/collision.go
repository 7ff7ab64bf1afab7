package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

var collision = Rule{
	Name:     "collision",
	Title:    message.New("Fronts do not collide"),
	Wrong:    message.New("Fronts collide"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("Two fronts take the same place, so neither can be hung; or a front reaches into " +
		"what stands beside or over its cabinet: a worktop, a filler, the end panel or filler " +
		"of the next cabinet, a wall, the floor, or, for inset fronts, the carcass. A front may " +
		"hang below its carcass and cover its own end panel. Found is how far they " +
		"overlap, needed 0. Give one of them another size, or their cabinets other " +
		"reveals."),
	find: findCollision,
}

func findCollision(s *search) {
	for i := range s.plan.Cabinets {
		c := &s.plan.Cabinets[i]
		for j := range c.Bays {
			reach := s.reach(&c.Bays[j])
			for n := j + 1; n < len(c.Bays) && c.Bays[n].Stack.Min.X < reach; n++ {
				s.collide(&c.Bays[j], &c.Bays[n])
			}
			if i+1 < len(s.plan.Cabinets) && j == len(c.Bays)-1 && len(s.plan.Cabinets[i+1].Bays) > 0 {
				s.collide(&c.Bays[j], &s.plan.Cabinets[i+1].Bays[0])
			}
			for k := c.Bays[j].First; k < c.Bays[j].First+c.Bays[j].Count; k++ {
				s.around(&s.plan.Fronts[k])
			}
		}
	}
}

// reach is the right edge of the widest front of a stack.
func (s *search) reach(b *plan.Bay) length.Length {
	right := b.Stack.Max.X
	for i := b.First; i < b.First+b.Count; i++ {
		right = max(right, s.plan.Fronts[i].Face.Max.X)
	}
	return right
}

// collide compares two stacks from the bottom up.
func (s *search) collide(a, b *plan.Bay) {
	left := s.plan.Fronts[a.First : a.First+a.Count]
	right := s.plan.Fronts[b.First : b.First+b.Count]
	start := 0
	for i := range left {
		f := &left[i]
		if f.Kind == model.OpenNiche {
			continue
		}
		for start < len(right) && right[start].Face.Max.Y <= f.Face.Min.Y {
			start++
		}
		for k := start; k < len(right) && right[k].Face.Min.Y < f.Face.Max.Y; k++ {
			g := &right[k]
			if g.Kind == model.OpenNiche || !f.Face.Overlaps(g.Face) {
				continue
			}
			s.overlap(f, g, f.Face.Intersect(g.Face))
		}
	}
}

func (s *search) overlap(f, g *plan.Front, area plane.Rect) {
	found := min(area.Width(), area.Height())
	s.front(f, Finding{
		Found:  found,
		What:   message.New("it overlaps front %v by %v", called(g), found),
		Change: message.New("make one of the two smaller by %v, or the reveals between them larger", found),
		Spots:  []mark.Spot{onBoard(f, mark.Band, onFace, area)},
		Flag:   message.New("Fronts overlap, %v", found),
	})
}
