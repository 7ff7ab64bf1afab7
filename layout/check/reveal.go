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

var (
	leastGap    = model.Limit{Key: "least_reveal", Title: message.New("least gap"), Usual: 1 * length.Millimetre, Greatest: 2 * length.Metre, NotAbove: "greatest_reveal"}
	greatestGap = model.Limit{Key: "greatest_reveal", Title: message.New("greatest gap"), Usual: 6 * length.Millimetre, Greatest: 2 * length.Metre, NotBelow: "least_reveal"}
)

// GapsWanted is from where to where a gap may be in a project.
func GapsWanted(p *model.Project) (least, greatest length.Length) {
	return leastGap.In(p), greatestGap.In(p)
}

var reveal = Rule{
	Name:     "reveal",
	Title:    message.New("Gaps are even and sensible"),
	Wrong:    message.New("Gap too small or too large"),
	Severity: Warning,
	Forbids:  Nothing,
	Limits:   []model.Limit{leastGap, greatestGap},
	Doc: message.New("A visible gap is so small that fronts rub, or so large that it looks wrong: " +
		"between two fronts of a stack or of neighbours, between a front and a worktop, " +
		"end panel or filler, or around an inset front. Found is the gap, needed the " +
		"least (or greatest) of the project's limits. Change the reveals."),
	find: findReveal,
}

func findReveal(s *search) {
	for i := range s.plan.Cabinets {
		c := &s.plan.Cabinets[i]
		src := &s.plan.Project.Cabinets[i]
		r := c.Reveals
		inset := c.Mount == model.Inset
		if s.keepsGap(c) {
			s.gap(c, gapReveal(), r.Gap)
		}
		if inset || src.Worktop > 0 && src.Channel.Height == 0 {
			s.gap(c, topReveal(), r.Top)
		}
		if inset {
			s.gap(c, bottomReveal(), r.Bottom)
		}
		if inset || touchesBeside(src.Left) {
			s.gap(c, leftReveal(), r.Left)
		}
		if inset || touchesBeside(src.Right) {
			s.gap(c, rightReveal(), r.Right)
		}
		s.neighbours(i)
	}
	for i := range s.plan.Fronts {
		s.ownGap(&s.plan.Fronts[i])
	}
}

// ownGap compares the gap of its own that a front has above it, which may be as wide as
// it likes before a finger-pull channel.
func (s *search) ownGap(f *plan.Front) {
	src := s.plan.Project.FrontAt(f.Place)
	top := f.Place.Front+1 == len(s.plan.Project.BayAt(f.Place).Fronts)
	if src.GapAbove == nil || top && !f.Inset {
		return // at the top it is told where the carcass's edge shows
	}
	gap := *src.GapAbove
	found, ok := s.outOfRange(message.New("above the front"), gap)
	if !ok || gap > found.Needed && s.underChannel(f) {
		return
	}
	found.Spots = []mark.Spot{onBoard(f, mark.Gap, inDepth, across(f, f.Face.Max.Y, f.Face.Max.Y+gap))}
	found.Fixes = []edit.Edit{edit.Set{At: f.Place, Key: "gap_above", Value: found.Needed}, edit.Set{At: f.Place, Key: "gap_above"}}
	s.front(f, found)
}

// keepsGap tells that fronts of a cabinet keep its gap between them: side by side, or in
// a stack, where they have no gap of their own.
func (s *search) keepsGap(c *plan.Cabinet) bool {
	return len(c.Bays) > 1 && c.Mount == model.Overlay || s.stacks(c)
}

func (s *search) stacks(c *plan.Cabinet) bool {
	for j := range c.Bays {
		fronts := s.plan.Project.Cabinets[c.Place.Cabinet].Bays[j].Fronts
		for k := 0; k+1 < len(fronts); k++ {
			if f := &fronts[k]; f.GapAbove == nil && f.Channel.Height == 0 {
				return true
			}
		}
	}
	return false
}

func touchesBeside(b model.Beside) bool { return b.EndPanel > 0 || b.Filler > 0 || b.Wall }

// gap compares one reveal of a cabinet.
func (s *search) gap(c *plan.Cabinet, which oneReveal, found length.Length) {
	if found < 0 {
		return // fronts that reach past an edge are asked for; what they meet there, they collide with
	}
	f, ok := s.outOfRange(which.where, found)
	if !ok {
		return
	}
	f.Place = c.Place
	f.Spots = s.gaps(c, which)
	f.Fixes = s.otherReveal(c, which, f.Needed)
	s.add(f)
}

func (s *search) outOfRange(where message.Message, found length.Length) (Finding, bool) {
	least, greatest := leastGap.In(s.plan.Project), greatestGap.In(s.plan.Project)
	switch {
	case found < least:
		return Finding{
			Found: found, Needed: least,
			What:   message.New("the gap %v is %v; at least %v keeps fronts from rubbing", where, found, least),
			Change: message.New("make the gap larger by %v, to %v", least-found, least),
			Flag:   message.New("Gap too small by %v", least-found),
		}, true
	case found > greatest:
		return Finding{
			Found: found, Needed: greatest,
			What:   message.New("the gap %v is %v; more than %v looks wrong", where, found, greatest),
			Change: message.New("make the gap smaller by %v, to %v", found-greatest, greatest),
			Flag:   message.New("Gap too large by %v", found-greatest),
		}, true
	}
	return Finding{}, false
}

// neighbours compares the gap between the fronts of cabinet i and the next one,
// where they stand side by side.
func (s *search) neighbours(i int) {
	a, b, gap, ok := s.between(i)
	if !ok || gap < 0 { // they collide
		return
	}
	if f, ok := s.outOfRange(message.New("to the next cabinet"), gap); ok {
		f.Place = a.Place
		last := &a.Bays[len(a.Bays)-1]
		for _, k := range last.Column {
			g := &s.plan.Fronts[k]
			f.Spots = append(f.Spots, onBoard(g, mark.Gap, mark.Elevation|mark.Plan, plane.R(g.Face.Max.X, g.Face.Min.Y, g.Face.Max.X+gap, g.Face.Max.Y)))
		}
		f.Fixes = s.otherBetween(a, b, f.Needed)
		s.add(f)
	}
}

// between is the gap between the fronts of cabinet i and the next one; false where they
// do not stand side by side over the edges of their carcasses.
func (s *search) between(i int) (a, b *plan.Cabinet, gap length.Length, ok bool) {
	if i+1 >= len(s.plan.Cabinets) {
		return nil, nil, 0, false
	}
	a, b = &s.plan.Cabinets[i], &s.plan.Cabinets[i+1]
	if a.Outline.Max.X != b.Outline.Min.X || a.Mount == model.Inset || b.Mount == model.Inset || len(a.Bays) == 0 || len(b.Bays) == 0 {
		return nil, nil, 0, false
	}
	return a, b, b.Bays[0].Stack.Min.X - a.Bays[len(a.Bays)-1].Stack.Max.X, true
}

// otherBetween are the changes that give the gap between the fronts of two
// cabinets another size: the one gap that they share, or half of it each.
func (s *search) otherBetween(a, b *plan.Cabinet, to length.Length) []edit.Edit {
	if s.plan.Project.SharedGaps {
		return []edit.Edit{s.projectReveal(gapReveal(), to)}
	}
	return []edit.Edit{edit.Set{At: model.Whole, Key: "shared_gaps", Value: true}, edit.Several{
		Name: message.New("Set the gap %v to %v", message.New("to the next cabinet"), to),
		Edits: []edit.Edit{
			edit.SetCabinet(a.Place, rightReveal().key, to-to/2),
			edit.SetCabinet(b.Place, leftReveal().key, to/2),
		},
	}}
}
