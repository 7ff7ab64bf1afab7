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

var adjustment = Rule{
	Name:     "adjustment",
	Title:    message.New("Adjusting keeps cover and gaps"),
	Wrong:    message.New("Adjusting spoils cover or gaps"),
	Severity: Advice,
	Forbids:  Nothing,
	Doc: "A front that is moved by all that its connector adjusts shows the drawer bottom, or " +
		"meets the front or carcass beside it. Whoever hangs it must stop before that. Found is " +
		"the cover or the gap, needed what the connector adjusts, with the cover asked for. " +
		"Raise the runner, or make the gap larger.",
	find: findAdjustment,
}

func findAdjustment(s *search) {
	s.drawers(func(f *plan.Front) {
		found, asked := f.Drawer.Cover.Bottom, s.plan.Project.FrontAt(f.Place).Cover
		up := f.Sheet.Connector.AdjustUp
		needed := asked + up
		if up <= 0 || found >= needed || found < asked {
			return // less than what is asked for is told by another rule
		}
		s.front(f, Finding{
			Found: found, Needed: needed,
			What:   message.New("the connector moves the front up by %v; its cover of %v then falls short of %v", up, found, asked),
			Change: message.New("raise the runner by %v (drop %v), or move the front up by no more than %v", needed-found, f.Drop+needed-found, found-asked),
			Spots:  []mark.Spot{strip(f, f.Face.Min.Y, f.Face.Min.Y+needed)},
			Flag:   message.New("%v of adjustment is too much", up),
			Fixes:  []edit.Edit{setDrop(f, f.Drop+needed-found)},
		})
	})
	for i := range s.plan.Cabinets {
		c := &s.plan.Cabinets[i]
		up, side := s.adjusts(c)
		between := length.Length(0)
		if s.stacks(c) {
			between = up
		}
		if len(c.Bays) > 1 && c.Mount == model.Overlay {
			between = max(between, side)
		}
		s.room(c, gapReveal(), c.Reveals.Gap, between)
		if c.Mount == model.Inset {
			s.room(c, topReveal(), c.Reveals.Top, up)
			s.room(c, bottomReveal(), c.Reveals.Bottom, up)
			s.room(c, leftReveal(), c.Reveals.Left, side)
			s.room(c, rightReveal(), c.Reveals.Right, side)
		}
		s.roomBetween(i)
	}
	for i := range s.plan.Fronts {
		s.roomOver(&s.plan.Fronts[i])
	}
}

// roomOver compares the gap of its own above a front with what it, or the one above it,
// can be moved by.
func (s *search) roomOver(f *plan.Front) {
	src, above := s.plan.Project.FrontAt(f.Place), s.inStack(f, 1)
	if src.GapAbove == nil || above == nil || f.Kind == model.OpenNiche || above.Kind == model.OpenNiche {
		return
	}
	found, needed := *src.GapAbove, max(moves(f), moves(above))
	if found >= needed || found < leastGap.In(s.plan.Project) {
		return
	}
	s.front(f, s.tooNear(message.New("above the front"), found, needed, Finding{
		Spots: []mark.Spot{onBoard(f, mark.Gap, inDepth, across(f, f.Face.Max.Y, above.Face.Min.Y))},
		Fixes: []edit.Edit{edit.Set{At: f.Place, Key: "gap_above", Value: needed}},
	}))
}

// moves is how far a front can be moved up or down.
func moves(f *plan.Front) length.Length {
	if !f.Fitted {
		return 0
	}
	return f.Sheet.Connector.AdjustUp
}

// roomBetween compares the gap between the fronts of cabinet i and the next one with what
// either can be moved to the side, once for both of them. Where it is the gap of the
// whole project, what is told of a cabinet's own gaps is enough.
func (s *search) roomBetween(i int) {
	a, b, gap, ok := s.between(i)
	if !ok || gap < leastGap.In(s.plan.Project) || s.plan.Project.SharedGaps && (s.keepsGap(a) || s.keepsGap(b)) {
		return
	}
	_, left := s.adjusts(a)
	_, right := s.adjusts(b)
	needed := max(left, right)
	if gap >= needed {
		return
	}
	f := s.tooNear(message.New("to the next cabinet"), gap, needed, Finding{Place: a.Place, Fixes: s.otherBetween(a, b, needed)})
	for _, k := range a.Bays[len(a.Bays)-1].Column {
		g := &s.plan.Fronts[k]
		f.Spots = append(f.Spots, onBoard(g, mark.Gap, mark.Elevation|mark.Plan, plane.R(g.Face.Max.X, g.Face.Min.Y, g.Face.Max.X+gap, g.Face.Max.Y)))
	}
	s.add(f)
}

// adjusts is how far the fronts of a cabinet can be moved, up and to a side.
func (s *search) adjusts(c *plan.Cabinet) (up, side length.Length) {
	for j := range c.Bays {
		for k := c.Bays[j].First; k < c.Bays[j].First+c.Bays[j].Count; k++ {
			if f := &s.plan.Fronts[k]; f.Fitted {
				up, side = max(up, f.Sheet.Connector.AdjustUp), max(side, f.Sheet.Connector.AdjustSide)
			}
		}
	}
	return up, side
}

// room compares a gap with what fronts can be moved into it.
func (s *search) room(c *plan.Cabinet, which oneReveal, found, needed length.Length) {
	if found >= needed || found < leastGap.In(s.plan.Project) {
		return // too small a gap is told by another rule
	}
	s.add(s.tooNear(which.where, found, needed, Finding{Place: c.Place, Spots: s.gaps(c, which), Fixes: s.otherReveal(c, which, needed)}))
}

// tooNear is a finding in the words of a gap that fronts can be moved into.
func (s *search) tooNear(where message.Message, found, needed length.Length, f Finding) Finding {
	f.Found, f.Needed = found, needed
	f.What = message.New("the connectors move a front by %v, further than the gap %v, which is %v", needed, where, found)
	f.Change = message.New("make the gap larger by %v, to %v, or adjust the fronts by less", needed-found, needed)
	f.Flag = message.New("%v of adjustment is too much", needed)
	return f
}
