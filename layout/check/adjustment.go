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
	Doc: message.New("A front that is moved by all that its connector adjusts shows the drawer bottom, or " +
		"meets the front or carcass beside it. Two neighbours may both be moved towards each " +
		"other: one up and the other down, or both to the side. Whoever hangs them must stop " +
		"before that. Found is the cover or the gap, needed what the connectors adjust, with the " +
		"cover asked for. Gaps inside a cabinet are told once for each cabinet, that to the next " +
		"one at the left one. Raise the runner, or make the gap larger."),
	find: findAdjustment,
}

// adjusting compares gaps and covers with what the connectors move fronts by.
type adjusting struct{ *search }

func findAdjustment(on *search) {
	s := adjusting{on}
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
		if s.keepsGap(c) {
			s.room(c, gapReveal(), c.Reveals.Gap, s.towardsInside(c))
		}
		if c.Mount == model.Inset {
			m := s.adjusts(c)
			s.room(c, topReveal(), c.Reveals.Top, m.up)
			s.room(c, bottomReveal(), c.Reveals.Bottom, m.down)
			s.room(c, leftReveal(), c.Reveals.Left, m.side)
			s.room(c, rightReveal(), c.Reveals.Right, m.side)
		}
		s.roomBetween(i)
	}
	for i := range s.plan.Fronts {
		s.roomOver(&s.plan.Fronts[i])
	}
}

// roomOver compares the gap of its own above a front with how far it and the one above it
// can be moved towards each other.
func (s adjusting) roomOver(f *plan.Front) {
	src, above := s.plan.Project.FrontAt(f.Place), s.inStack(f, 1)
	if src.GapAbove == nil || above == nil || f.Kind == model.OpenNiche || above.Kind == model.OpenNiche {
		return
	}
	found, needed := *src.GapAbove, s.towards(f, above)
	if found >= needed || found < leastGap.In(s.plan.Project) {
		return
	}
	s.front(f, s.tooNear(message.New("above the front"), found, needed, Finding{
		Spots: []mark.Spot{onBoard(f, mark.Gap, inDepth, across(f, f.Face.Max.Y, above.Face.Min.Y))},
		Fixes: []edit.Edit{edit.Set{At: f.Place, Key: "gap_above", Value: needed}},
	}))
}

// towards is how much of a gap two fronts can close, one above the other: both of it,
// or where a rail stands between them each of its own.
func (s adjusting) towards(below, above *plan.Front) length.Length {
	up, down := movesOf(below).up, movesOf(above).down
	if !s.plan.RailOver(below).Empty() {
		return max(up, down)
	}
	return up + down
}

// moves is how far a front can be moved.
type moves struct{ up, down, side length.Length }

func movesOf(f *plan.Front) moves {
	if !f.Fitted {
		return moves{}
	}
	c := &f.Sheet.Connector
	return moves{c.AdjustUp, c.Down(), c.AdjustSide}
}

// adjusts is the furthest that fronts of a cabinet can be moved each way.
func (s adjusting) adjusts(c *plan.Cabinet) (most moves) {
	for j := range c.Bays {
		m := s.bayAdjusts(&c.Bays[j])
		most = moves{max(most.up, m.up), max(most.down, m.down), max(most.side, m.side)}
	}
	return most
}

func (s adjusting) bayAdjusts(b *plan.Bay) (most moves) {
	for _, k := range b.Column {
		m := movesOf(&s.plan.Fronts[k])
		most = moves{max(most.up, m.up), max(most.down, m.down), max(most.side, m.side)}
	}
	return most
}

// towardsInside is the furthest that two neighbours of a cabinet, with its gap between
// them, can be moved towards each other.
func (s adjusting) towardsInside(c *plan.Cabinet) (most length.Length) {
	for j := range c.Bays {
		col := c.Bays[j].Column
		for n := 0; n+1 < len(col); n++ {
			below, above := &s.plan.Fronts[col[n]], &s.plan.Fronts[col[n+1]]
			if src := s.plan.Project.FrontAt(below.Place); src.GapAbove == nil && src.Channel.Height == 0 && below.Kind != model.OpenNiche && above.Kind != model.OpenNiche {
				most = max(most, s.towards(below, above))
			}
		}
		if j > 0 && c.Mount == model.Overlay {
			most = max(most, s.facing(&c.Bays[j-1], &c.Bays[j]))
		}
	}
	return most
}

// facing is the furthest that two fronts of neighbouring bays that face each other can be
// moved towards each other.
func (s adjusting) facing(a, b *plan.Bay) (most length.Length) {
	s.search.facing(a, b, func(f, g *plan.Front) { most = max(most, movesOf(f).side+movesOf(g).side) })
	return most
}

// roomBetween compares the gap between the fronts of cabinet i and the next one with how
// far both can be moved into it, once for both of them. Where it is the gap of the whole
// project and is told already of one of the cabinets, that is enough.
func (s adjusting) roomBetween(i int) {
	a, b, gap, ok := s.between(i)
	if !ok || gap < leastGap.In(s.plan.Project) {
		return
	}
	told := func(c *plan.Cabinet) bool { return s.keepsGap(c) && s.towardsInside(c) > c.Reveals.Gap }
	last := &a.Bays[len(a.Bays)-1]
	needed := s.facing(last, &b.Bays[0])
	if gap >= needed || s.plan.Project.SharedGaps && (told(a) || told(b)) {
		return
	}
	f := s.tooNear(message.New("to the next cabinet"), gap, needed, Finding{Place: a.Place, Fixes: s.otherBetween(a, b, needed)})
	for _, k := range last.Column {
		g := &s.plan.Fronts[k]
		f.Spots = append(f.Spots, onBoard(g, mark.Gap, mark.Elevation|mark.Plan, plane.R(g.Face.Max.X, g.Face.Min.Y, g.Face.Max.X+gap, g.Face.Max.Y)))
	}
	s.add(f)
}

// room compares a gap with what fronts can be moved into it.
func (s adjusting) room(c *plan.Cabinet, which oneReveal, found, needed length.Length) {
	if found >= needed || found < leastGap.In(s.plan.Project) {
		return // too small a gap is told by another rule
	}
	s.add(s.tooNear(which.where, found, needed, Finding{Place: c.Place, Spots: s.gaps(c, which), Fixes: s.otherReveal(c, which, needed)}))
}

// tooNear is a finding in the words of a gap that fronts can be moved into.
func (s adjusting) tooNear(where message.Message, found, needed length.Length, f Finding) Finding {
	f.Found, f.Needed = found, needed
	f.What = message.New("the connectors move fronts by %v, further than the gap %v, which is %v", needed, where, found)
	f.Change = message.New("make the gap larger by %v, to %v, or adjust the fronts by less", needed-found, needed)
	f.Flag = message.New("%v of adjustment is too much", needed)
	return f
}
