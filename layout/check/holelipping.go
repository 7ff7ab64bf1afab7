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
	Doc: message.New("A hole cuts into the lipping glued to one of the front's edges, which splits off or " +
		"shows the hole. Found is the distance from the front's edge to the hole, needed " +
		"the lipping's thickness. Choose a lower drawer, or make the front larger on that " +
		"side."),
	find: findHoleLipping,
}

func findHoleLipping(s *search) {
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		var lipping [4]length.Length
		lipping[leftEdge], lipping[rightEdge], lipping[bottomEdge], lipping[topEdge] = f.Made.LippingOf()
		for _, holes := range [2][]plan.Hole{f.Holes, f.HandleHoles} {
			h, found, edge := intoLipping(f, holes, lipping)
			if h == nil {
				continue
			}
			needed := lipping[edge]
			s.front(f, Finding{
				Found: found, Needed: needed,
				What:   message.New("a hole of %v comes to %v of the edge, into the lipping of %v", h.Diameter, found, needed),
				Change: s.roomForHole(f, h, edge, needed-found),
				Spots:  []mark.Spot{hole(f, h), edgeBeside(f, h, edge)},
				Flag:   message.New("Hole %v into the lipping", needed-found),
				Fixes:  s.mendHole(f, h, edge, needed-found),
			})
		}
	}
}

// intoLipping is the hole that reaches furthest into the lippings of a front, which are so
// thick at each edge; nil where none does.
func intoLipping(f *plan.Front, holes []plan.Hole, lipping [4]length.Length) (worst *plan.Hole, found length.Length, edge int) {
	most := length.Length(0)
	for i := range holes {
		h := &holes[i]
		r := h.Diameter / 2
		for k, d := range [...]length.Length{h.At.X, f.Face.Width() - h.At.X, h.At.Y, f.Face.Height() - h.At.Y} {
			if into := lipping[k] - (d - r); lipping[k] > 0 && into > most {
				worst, found, edge, most = h, d-r, k, into
			}
		}
	}
	return worst, found, edge
}
