package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

var holeLipping = Rule{
	Name:     "hole-lipping",
	Title:    message.New("Holes keep out of the lipping"),
	Wrong:    message.New("Hole in the lipping"),
	Severity: Error,
	Forbids:  Drilling,
	Doc: "A hole cuts into the lipping glued to the front's edges, which splits off or " +
		"shows the hole. Found is the distance from the front's edge to the hole, needed " +
		"the lipping's thickness. Choose a lower drawer, or make the front larger on that " +
		"side.",
	find: findHoleLipping,
}

func findHoleLipping(s *search) {
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		lipping := f.Made.Lipping
		if lipping <= 0 {
			continue
		}
		for _, holes := range [2][]plan.Hole{f.Holes, f.HandleHoles} {
			h, found, edge := intoLipping(f, holes, lipping)
			if h == nil {
				continue
			}
			s.front(f, Finding{
				Found: found, Needed: lipping,
				What:   message.New("a hole of %v comes to %v of the edge, into the lipping of %v", h.Diameter, found, lipping),
				Change: s.roomForHole(f, h, edge, lipping-found),
				Spots:  []mark.Spot{hole(f, h), edgeBeside(f, h, edge)},
				Flag:   message.New("Hole %v into the lipping", lipping-found),
				Fixes:  s.mendHole(f, h, edge, lipping-found),
			})
		}
	}
}

func intoLipping(f *plan.Front, holes []plan.Hole, lipping length.Length) (worst *plan.Hole, found length.Length, edge int) {
	found = lipping
	for i := range holes {
		h := &holes[i]
		r := h.Diameter / 2
		for k, d := range [...]length.Length{h.At.X, f.Face.Width() - h.At.X, h.At.Y, f.Face.Height() - h.At.Y} {
			if d-r < found {
				worst, found, edge = h, d-r, k
			}
		}
	}
	return worst, found, edge
}
