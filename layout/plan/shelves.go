package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// placeShelves adds the shelves that a bay's own fronts need: those of its open
// niches, and those over and under its spanning fronts. Overlay fronts below and
// above cover the shelves' edges, less the gap; behind inset fronts the shelves are
// set back by the fronts' thickness.
func (m *maker) placeShelves(b *Bay) {
	for at, k := range b.Column {
		f := &m.plan.Fronts[k]
		if f.Place.Bay != b.Place.Bay {
			continue
		}
		if f.Kind == model.OpenNiche {
			m.placeNiche(b, at)
			continue
		}
		if y, ok := m.shelfOver(f); ok {
			m.addShelf(b, y, f, true)
		}
		if y, ok := m.shelfUnder(f); ok {
			m.addShelf(b, y, f, false)
		}
	}
}

// placeNiche adds the shelves of the open niche at a place of a column: one below
// and one above, unless the carcass bottom or top is there, or a spanning front that
// has its shelf there; one between two niches.
func (m *maker) placeNiche(b *Bay, at int) {
	f := &m.plan.Fronts[b.Column[at]]
	below, above := !f.Bottommost, !f.Topmost
	if at > 0 {
		g := &m.plan.Fronts[b.Column[at-1]]
		_, its := m.shelfOver(g)
		below = below && !its && g.Kind != model.OpenNiche
	}
	if at+1 < len(b.Column) {
		_, its := m.shelfUnder(&m.plan.Fronts[b.Column[at+1]])
		above = above && !its
	}
	if below {
		m.addShelf(b, f.Clear.Min.Y-m.p.Boards.Carcass.Thickness, f, false)
	}
	if above {
		m.addShelf(b, f.Clear.Max.Y, f, true)
	}
}

// boardsIn is how far the boards below and above an open niche reach past its front
// lines: the carcass's bottom and top (or the channel there), less their reveals, at
// the ends of the stack, and the shelf in the middle of the gap between two niches.
// A shelf between a niche and a front does not: its upper face is level with the
// niche's lower edge, or its lower face with the upper edge. Below zero is how far a
// board stays away, behind inset fronts.
func (m *maker) boardsIn(i, j, k int) (below, above length.Length) {
	pc, s := &m.plan.Cabinets[i], &m.stacks[i][j]
	area, fronts := pc.Bays[j].Stack, m.p.Cabinets[i].Bays[j].Fronts
	t := m.p.Boards.Carcass.Thickness
	half := func(gap length.Length) length.Length { return t/2 - gap/2 } // of the shelf between two niches, in the lower one
	switch {
	case k == 0 && s.low == area.Min.Y:
		below = pc.Inside.Min.Y - area.Min.Y
	case k == 0 && s.lowNiche, k > 0 && fronts[k-1].Kind == model.OpenNiche:
		gap := m.gapBelow(model.Place{Cabinet: i, Bay: j, Front: k})
		below = t - gap - half(gap)
	}
	switch last := len(fronts) - 1; {
	case k == last && s.high == area.Max.Y:
		above = area.Max.Y - m.underTop(pc, pc.Bays[j].Place).at
	case k == last && s.highNiche, k < last && fronts[k+1].Kind == model.OpenNiche:
		above = half(m.gapAbove(i, j, k))
	}
	return below, above
}

// addShelf adds a shelf of the width of a front's opening, its lower face at y.
func (m *maker) addShelf(b *Bay, y length.Length, f *Front, over bool) {
	r := plane.R(f.Opening.Min.X, y, f.Opening.Max.X, y+m.p.Boards.Carcass.Thickness)
	b.Shelves = append(b.Shelves, Shelf{Rect: r, Of: f.Place, Over: over})
}

// shelfOver is the lower face, run frame, of the shelf over a spanning front on
// which the partitions stand that it cuts off; false where it has none. The shelf's
// upper face is level with the lower edges of the fronts above.
func (m *maker) shelfOver(f *Front) (length.Length, bool) {
	stack := m.p.BayAt(f.Place).Fronts
	if f.Kind == model.OpenNiche || f.Bays < 2 || f.Place.Front != lowRun(stack, f.Bays)-1 || !m.cutsOff(f) {
		return 0, false
	}
	return f.Face.Max.Y + m.p.GapAbove(f.Place) - m.p.Boards.Carcass.Thickness, true
}

// shelfUnder is the lower face, run frame, of the shelf under a spanning front that
// lies on the partitions which it cuts off; false where it has none. The shelf's
// lower face is level with the upper edges of the fronts below.
func (m *maker) shelfUnder(f *Front) (length.Length, bool) {
	stack := m.p.BayAt(f.Place).Fronts
	if f.Kind == model.OpenNiche || f.Bays < 2 || f.Place.Front != len(stack)-highRun(stack, f.Bays) || !m.cutsOff(f) {
		return 0, false
	}
	return f.Face.Min.Y - m.gapBelow(f.Place), true
}

// gapBelow is the gap below a front: that above the one below it in its stack, or the
// cabinet's where it is the lowest.
func (m *maker) gapBelow(at model.Place) length.Length {
	at.Front--
	return m.p.GapAbove(at)
}

// cutsOff tells that something is left of a partition that a spanning front passes.
func (m *maker) cutsOff(f *Front) bool {
	for _, r := range m.plan.Cabinets[f.Place.Cabinet].Partitions[f.Place.Bay : f.Place.Bay+f.Bays-1] {
		if r.Height() > 0 {
			return true
		}
	}
	return false
}

// standOn tells what each front of a bay's column stands on: the carcass bottom,
// or a shelf.
func (m *maker) standOn(b *Bay) {
	t := m.p.Boards.Carcass.Thickness
	for at, k := range b.Column {
		f := &m.plan.Fronts[k]
		if f.Bottommost {
			f.OnFloor, f.Floor = true, f.Opening.Min.Y
			continue
		}
		if at == 0 {
			continue
		}
		below := &m.plan.Fronts[b.Column[at-1]]
		floor, shelf := below.Face.Max.Y, true
		if y, ok := m.shelfOver(below); ok {
			floor = y + t
		} else if y, ok := m.shelfUnder(f); ok {
			floor = y + t
		} else if below.Kind == model.OpenNiche {
			floor = below.Clear.Max.Y + t
		} else if r, ok := m.railAbove(below); ok {
			// Its runner passes over the rail, as it would over a shelf.
			floor, f.OnRail = r.Rect.Max.Y, true
		} else {
			shelf = false
		}
		f.Floor = max(f.Floor, floor)
		f.OnFloor = f.OnFloor || shelf
	}
}
