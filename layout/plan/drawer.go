package plan

import (
	"math"

	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

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
	in := f.Between()
	left, right := in.Min.X+s.SideClearance, in.Max.X-s.SideClearance
	d.Body = plane.R(left, y+s.Lowest(), right, y+f.Height.Top())
	less, shorter := s.BottomDeducts()
	half := less / 2
	under := y + s.Bottom.Underside
	d.Bottom = plane.R(in.Min.X+half, under, in.Max.X-(less-half), under+s.Bottom.Thickness)
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
	inside := in.Width()
	d.BottomCut = Size{inside - less, f.Runner.Length - shorter}
	d.BackCut = Size{inside - s.BackDeducts(), d.Back - under - s.Bottom.Thickness}
	if s.Wooden() && s.Box.Bottom == model.AllRound {
		d.BackCut.Length = d.Back - y - s.SideLower()
	}
	d.Box = boxOf(f, &m.p.Boards)
}

// chooseHeight finds the drawer height asked for, or the tallest whose parts
// stay below the limit and whose holes lie in the front; where none does, the
// lowest.
func (m *maker) chooseHeight(f *Front, room length.Length) *model.DrawerHeight {
	heights := f.Sheet.Drawers
	name := m.p.FrontAt(f.Place).Drawer
	if f.Nth > 0 {
		name = m.p.FrontAt(f.Place).Inner[f.Nth-1].Drawer
	}
	if name != "" && name != model.DrawerAuto {
		if d := f.Sheet.Drawer(name); d != nil {
			return d
		}
		m.problem(Problem{Kind: DrawerUnknown, Place: f.Place, Name: name, Inner: f.Nth})
	}
	var best, lowest *model.DrawerHeight
	for k := range heights {
		d := &heights[k]
		if lowest == nil || d.Top() < lowest.Top() {
			lowest = d
		}
		fits := d.Top() <= room && (f.Nth > 0 || m.holesFit(f, d))
		if fits && (best == nil || d.Top() > best.Top()) {
			best = d
		}
	}
	if best != nil {
		return best
	}
	return lowest
}

// HoleEdge is what must stay between a hole's edge and the panel's. The layout
// keeps to it where it chooses a drawer height, the check tells where it can't.
var HoleEdge = model.Limit{
	Key: "hole_edge", Title: message.New("from a hole's edge to the panel's"),
	Usual: 8 * length.Millimetre, Unset: message.New("%v, or the hole's diameter where that is more", 8*length.Millimetre), Greatest: 2 * length.Metre,
}

// HoleEdgeIn is HoleEdge in a project, for a hole of that diameter.
func HoleEdgeIn(p *model.Project, diameter length.Length) length.Length {
	if v, set := p.Checks.Limits[HoleEdge.Key]; set {
		return v
	}
	return max(HoleEdge.Usual, diameter)
}

// holesFit tells whether a drawer height's holes keep their distance from the
// front's top edge, by the project's limit, and from where its board is thinner.
func (m *maker) holesFit(f *Front, d *model.DrawerHeight) bool {
	g := Front{Face: f.Face, Thickness: f.Thickness, Zones: f.Zones, Overlay: f.Overlay, Packing: f.Packing, Drop: f.Drop, Sheet: f.Sheet, Height: d, Holes: m.holes[:0]}
	g.addHoles()
	m.holes = g.Holes
	for i := range g.Holes {
		h := &g.Holes[i]
		if h.At.Y+h.Diameter/2+HoleEdgeIn(m.p, h.Diameter) > f.Face.Height() {
			return false
		}
		if thin, apart := g.Thin(h); thin != nil && apart < h.Diameter {
			return false
		}
	}
	return true
}

// limit is a height, run frame, that a drawer must stay below, and what is there.
type limit struct {
	at   length.Length
	kind AboveKind
}

func (l limit) lower(at length.Length, kind AboveKind) limit {
	if at < l.at {
		return limit{at, kind}
	}
	return l
}

// limitsAbove gives, for each front of a cabinet in the order of the plan, what
// its drawer must stay below: the lowest of what is above it in all the bays
// that it covers.
func (m *maker) limitsAbove(pc *Cabinet) []limit {
	first := pc.Bays[0].First
	last := &pc.Bays[len(pc.Bays)-1]
	limits := make([]limit, last.First+last.Count-first)
	for k := range limits {
		limits[k] = m.underTop(pc, m.plan.Fronts[first+k].Place)
	}
	for j := range pc.Bays {
		col := pc.Bays[j].Column
		for at, k := range col {
			l := &limits[k-first]
			if at+1 < len(col) {
				*l = m.under(&m.plan.Fronts[col[at+1]], *l)
			}
			if y, ok := m.shelfOver(&m.plan.Fronts[k]); ok {
				*l = l.lower(y, ShelfAbove)
			}
			if r, ok := m.railAbove(&m.plan.Fronts[k]); ok {
				*l = l.lower(r.Rect.Min.Y, RailAbove)
			}
			if r, ok := m.channelAbove(&m.plan.Fronts[k]); ok {
				*l = l.lower(r.Min.Y, ChannelAbove)
			}
		}
	}
	return limits
}

// underTop is the limit under the carcass top, or under a finger-pull channel that
// hangs from it: the cabinet's, or that of the highest front of the bay at a place.
func (m *maker) underTop(pc *Cabinet, at model.Place) limit {
	under := limit{pc.Inside.Max.Y, CarcassAbove}
	c := &m.p.Cabinets[pc.Place.Cabinet]
	if c.Channel.Height > 0 {
		under = under.lower(pc.underChannel(c), ChannelAbove)
	}
	if fronts := c.Bays[at.Bay].Fronts; len(fronts) > 0 && fronts[len(fronts)-1].Channel.Height > 0 {
		under = under.lower(pc.underChannel(c)-fronts[len(fronts)-1].Channel.Height, ChannelAbove)
	}
	return under
}

// under is the limit under the next front above: its panel, which a drawer that
// rises behind it would hit when it is pulled, its drawer, or the shelf under it.
func (m *maker) under(g *Front, l limit) limit {
	if g.Kind == model.OpenNiche {
		return l.lower(g.Clear.Min.Y-m.p.Boards.Carcass.Thickness, ShelfAbove)
	}
	if y, ok := m.shelfUnder(g); ok {
		return l.lower(y, ShelfAbove)
	}
	if y, any := g.lowest(math.MinInt64, -1); any {
		l = l.lower(y, DrawerAbove)
	}
	return l.lower(g.Face.Min.Y, FrontAbove)
}
