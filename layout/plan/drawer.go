package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// limitAbove is the height, run frame, that the drawer of the k-th front of a
// stack must stay below, and what is there: the lower of the next drawer's
// runner and bottom, the shelf of an open niche, or the carcass top.
func (m *maker) limitAbove(stack []Front, k int) (length.Length, AboveKind) {
	for _, g := range stack[k+1:] {
		switch {
		case g.Kind == model.OpenNiche:
			return g.Face.Min.Y - m.p.Boards.Carcass.Thickness, ShelfAbove
		case g.Kind == model.DrawerFront && g.Sheet != nil:
			return g.Runner.Lower + min(0, g.Sheet.Bottom.Underside), DrawerAbove
		}
	}
	f := &stack[k]
	last := stack[len(stack)-1]
	if !last.Topmost {
		// A front of a bay to the left spans over this one.
		if n := m.spanning(f.Place); n != nil && n.Sheet != nil && n.Kind == model.DrawerFront {
			return n.Runner.Lower + min(0, n.Sheet.Bottom.Underside), DrawerAbove
		}
	}
	return f.Opening.Max.Y, CarcassAbove
}

// spanning finds the lowest front of a bay to the left that passes over the top
// of the bay at a place.
func (m *maker) spanning(at model.Place) *Front {
	high := m.stacks[at.Cabinet][at.Bay].high
	gap := m.plan.Cabinets[at.Cabinet].Reveals.Gap
	for b := 0; b < at.Bay; b++ {
		pb := &m.plan.Cabinets[at.Cabinet].Bays[b]
		for k := pb.First; k < pb.First+pb.Count; k++ {
			if f := &m.plan.Fronts[k]; f.Face.Min.Y == high+gap && m.spanOf(f.Place) > at.Bay-b {
				return f
			}
		}
	}
	return nil
}

// placeDrawer chooses the drawer's height and places its body; limit is what it
// must stay below, run frame.
func (m *maker) placeDrawer(f *Front, limit length.Length) {
	if f.Kind != model.DrawerFront || f.Sheet == nil {
		return
	}
	room := limit - f.Sheet.Runner.ClearanceAbove - f.Runner.Lower
	f.Height = m.chooseHeight(f, room)
	if f.Height == nil {
		return
	}
	f.Fitted = true
	s, y := f.Sheet, f.Runner.Lower
	d := &f.Drawer
	left, right := f.Opening.Min.X+s.SideClearance, f.Opening.Max.X-s.SideClearance
	d.Body = plane.R(left, y+min(0, s.Bottom.Underside), right, y+f.Height.Top())
	half := s.Bottom.DeductWidth / 2
	under := y + s.Bottom.Underside
	d.Bottom = plane.R(f.Opening.Min.X+half, under, f.Opening.Max.X-(s.Bottom.DeductWidth-half), under+s.Bottom.Thickness)
	d.Side = y + f.Height.SideTop
	d.Back = d.Side
	if f.Height.BackTop > 0 {
		d.Back = y + f.Height.BackTop
	}
	if f.Height.RailTop > 0 {
		d.Rail = y + f.Height.RailTop
	}
	d.Limit = limit
	d.RoomAbove = limit - d.Body.Max.Y
	d.Cover = Edges{Left: left - f.Face.Min.X, Right: f.Face.Max.X - right, Bottom: under - f.Face.Min.Y}
	inside := f.Opening.Width()
	d.BottomCut = Size{inside - s.Bottom.DeductWidth, f.Runner.Length - s.Bottom.DeductLength}
	d.BackCut = Size{inside - s.Back.DeductWidth, d.Back - under - s.Bottom.Thickness}
}

// chooseHeight finds the drawer height asked for, or the tallest whose parts
// stay below the limit and whose holes lie in the front; where none does, the
// lowest.
func (m *maker) chooseHeight(f *Front, room length.Length) *model.DrawerHeight {
	heights := f.Sheet.Drawers
	name := m.p.FrontAt(f.Place).Drawer
	if name != "" && name != model.DrawerAuto {
		if d := f.Sheet.Drawer(name); d != nil {
			return d
		}
		m.problem(Problem{Kind: DrawerUnknown, Place: f.Place, Name: name})
	}
	var best, lowest *model.DrawerHeight
	for k := range heights {
		d := &heights[k]
		if lowest == nil || d.Top() < lowest.Top() {
			lowest = d
		}
		fits := d.Top() <= room && highestHole(d)+f.Drop+f.Sheet.Connector.Diameter*3/2 <= f.Face.Height()
		if fits && (best == nil || d.Top() > best.Top()) {
			best = d
		}
	}
	if best != nil {
		return best
	}
	return lowest
}

func highestHole(d *model.DrawerHeight) length.Length {
	top := length.Length(0)
	for _, h := range d.Holes {
		top = max(top, h)
	}
	for _, h := range d.RailHoles {
		top = max(top, h)
	}
	return top
}
