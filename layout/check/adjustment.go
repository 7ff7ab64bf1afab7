package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
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
		if stacked(c) {
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
	}
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
	s.add(Finding{
		Place: c.Place, Found: found, Needed: needed,
		What:   message.New("the connectors move a front by %v, further than the gap %v, which is %v", needed, which.where, found),
		Change: message.New("make the gap larger by %v, to %v, or adjust the fronts by less", needed-found, needed),
		Spots:  s.gaps(c, which),
		Flag:   message.New("%v of adjustment is too much", needed),
		Fixes:  s.otherReveal(c, which, needed),
	})
}
