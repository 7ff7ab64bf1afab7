package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
)

// spanOf is how many bays the front at a place really spans: 1 where it does not
// stand in an unbroken run of spanning fronts from an end of its stack, or where
// there are not so many bays.
func (m *maker) spanOf(at model.Place) int {
	c := &m.p.Cabinets[at.Cabinet]
	fronts := c.Bays[at.Bay].Fronts
	n := fronts[at.Front].Span
	if n <= 1 || at.Bay+n > len(c.Bays) || len(fronts) == 1 {
		return 1
	}
	if at.Front < lowRun(fronts, n) || at.Front >= len(fronts)-highRun(fronts, n) {
		return n
	}
	return 1
}

// lowRun counts the fronts from the bottom of a stack that span n bays.
func lowRun(fronts []model.Front, n int) int {
	k := 0
	for k < len(fronts) && fronts[k].Span == n {
		k++
	}
	return k
}

// highRun counts them from the top.
func highRun(fronts []model.Front, n int) int {
	k := 0
	for k < len(fronts) && fronts[len(fronts)-1-k].Span == n {
		k++
	}
	return k
}

// leaveSpans takes what spanning fronts of bays to the left cover off a stack; false where
// such a bay is being divided already.
func (m *maker) leaveSpans(i, j int, s *stack) bool {
	c := &m.p.Cabinets[i]
	for b := 0; b < j; b++ {
		fronts := c.Bays[b].Fronts
		for k := range fronts {
			at := model.Place{Cabinet: i, Bay: b, Front: k}
			n := m.spanOf(at)
			if b+n <= j {
				continue
			}
			if !m.solveStack(i, b) {
				return false
			}
			of := &m.stacks[i][b]
			if k < lowRun(fronts, n) {
				if low := of.top[k] + m.gapAbove(i, b, k); low > s.low {
					s.low, s.lowNiche = low, fronts[k].Kind == model.OpenNiche
				}
			} else if high := of.bottom[k] - m.gapAbove(i, j, len(c.Bays[j].Fronts)-1); high < s.high {
				s.high, s.highNiche = high, fronts[k].Kind == model.OpenNiche
			}
		}
	}
	return true
}

// spanned gives the stack areas of the bays that a front covers as one, whose
// sides are the front's, and the opening that its drawer runs in.
func (m *maker) spanned(at model.Place) (area, opening plane.Rect) {
	bays := m.plan.Cabinets[at.Cabinet].Bays
	last := at.Bay + m.spanOf(at) - 1
	return bays[at.Bay].Stack.Union(bays[last].Stack), bays[at.Bay].Opening.Union(bays[last].Opening)
}

// trimPartitions ends partitions where spanning fronts pass them: at the shelf that
// such a front needs, or at that of a spanning niche.
func (m *maker) trimPartitions(i int) {
	pc := &m.plan.Cabinets[i]
	t := m.p.Boards.Carcass.Thickness
	for j := range pc.Partitions {
		r := &pc.Partitions[j]
		for _, k := range pc.Bays[j+1].Column {
			f := &m.plan.Fronts[k]
			if f.Place.Bay > j {
				continue
			}
			low, high := f.Face.Max.Y+m.p.GapAbove(f.Place), f.Face.Min.Y-m.gapBelow(f.Place)
			below := low <= m.stacks[i][j+1].low
			if f.Kind == model.OpenNiche {
				low, high = f.Clear.Max.Y+t, f.Clear.Min.Y-t
			}
			if below {
				r.Min.Y = max(r.Min.Y, low)
			} else {
				r.Max.Y = min(r.Max.Y, high)
			}
		}
	}
}
