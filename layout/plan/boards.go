package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// CarcassBoard is a board of a carcass, or around it, as it stands there: Rect in the run
// frame, from Near to Far in the depth frame, with all that lies in grooves.
type CarcassBoard struct {
	Board
	Near, Far length.Length
	Of        model.Place   // of a shelf, a rail and packing: the front that asks for it
	Over      bool          // of a shelf: it lies over that front
	Groove    length.Length // of a side, bottom and top: depth of the groove or rebate of the back; 0: none
	Milled    length.Length // how wide that is, in the depth frame
}

// Deep is how deep a board is, from front to back.
func (b *CarcassBoard) Deep() length.Length { return b.Far - b.Near }

// Boards lists the boards of a cabinet, by its index, and of what stands beside, over and
// under it, in the order in which they are cut. What is cut, what sections show and what
// stands beside a drawer are read from it.
func (p *Plan) Boards(i int) []CarcassBoard {
	c := &p.Cabinets[i]
	o, in := c.Outline, c.Inside
	var all []CarcassBoard
	add := func(kind BoardKind, r plane.Rect, near, far length.Length) *CarcassBoard {
		if r.Empty() || near >= far {
			return &CarcassBoard{} // such as the back of a carcass that has none
		}
		all = append(all, CarcassBoard{Board: Board{kind, r}, Near: near, Far: far})
		return &all[len(all)-1]
	}
	for _, b := range []Board{
		{LeftSideBoard, plane.R(o.Min.X, o.Min.Y, in.Min.X, o.Max.Y)},
		{RightSideBoard, plane.R(in.Max.X, o.Min.Y, o.Max.X, o.Max.Y)},
		{BottomBoard, plane.R(in.Min.X, o.Min.Y, in.Max.X, in.Min.Y)},
		{TopBoard, plane.R(in.Min.X, in.Max.Y, in.Max.X, o.Max.Y)},
	} {
		of := add(b.Kind, b.Rect, 0, c.Sides)
		of.Groove, of.Milled = c.Back.Depth, c.Back.Milled
	}
	for _, r := range c.Partitions {
		add(PartitionBoard, r, 0, c.Depth)
	}
	behind := length.Length(0) // inset fronts
	if c.Mount == model.Inset {
		behind = c.Fronts
	}
	for j := range c.Bays {
		for _, s := range c.Bays[j].Shelves {
			b := add(ShelfBoard, s.Rect, behind, c.Depth)
			b.Of, b.Over = s.Of, s.Over
		}
	}
	for j := range c.Bays {
		for _, h := range c.Bays[j].Channels {
			add(ChannelBoard, h.Rect, h.Near, h.Far)
		}
	}
	for j := range c.Bays {
		for _, r := range c.Bays[j].Rails {
			add(RailBoard, r.Rect, 0, r.Depth).Of = r.Of
		}
	}
	for j := range c.Bays {
		for k := c.Bays[j].First; k < c.Bays[j].First+c.Bays[j].Count; k++ {
			for f := range p.Fronts[k].Drawers() {
				for _, r := range f.PackingStrips() {
					add(PackingBoard, r, f.Runner.Start, f.Runner.Start+f.Runner.Length).Of = f.Place
				}
			}
		}
	}
	add(BackBoard, c.Back.Rect, c.Back.Near, c.Back.Far)
	add(PlinthBoard, p.plinthFrom(i), c.PlinthBack, c.PlinthBack+p.Project.Boards.Carcass.Thickness)
	for _, b := range c.Beside {
		switch b.Kind {
		case EndPanelBoard:
			// Beside overlay fronts it ends level with their faces, so that nobody
			// sees their edges (common practice, no source); behind those that cover
			// it, with the carcass.
			near := length.Length(0)
			if c.Mount == model.Overlay && !c.Covers(b) {
				near = -c.Fronts
			}
			add(b.Kind, b.Rect, near, max(c.Sides, c.Back.Far))
		case FillerBoard:
			add(b.Kind, b.Rect, 0, p.Project.Boards.Front.Thickness)
		case WorktopBoard: // of which the project knows the thickness alone
			add(b.Kind, b.Rect, -c.Fronts, max(c.Sides, c.Back.Far))
		}
	}
	return all
}

// Made is the board of the project that a board of a carcass is cut from, as thick as it
// is there; without thickness for a worktop, of which the project knows no more.
func (p *Plan) Made(b *CarcassBoard) model.Board {
	boards := &p.Project.Boards
	of := boards.Carcass
	switch b.Kind {
	case WorktopBoard:
		return model.Board{}
	case BackBoard:
		return boards.Back
	case FillerBoard:
		return boards.Front
	case EndPanelBoard:
		of = boards.Front
		of.Thickness = b.Rect.Width()
	case LeftSideBoard, RightSideBoard, PartitionBoard, PackingBoard:
		of.Thickness = b.Rect.Width()
	case BottomBoard, TopBoard, ShelfBoard:
		of.Thickness = b.Rect.Height()
	case RailBoard: // of a board as thick as the smaller of its height and depth
		of.Thickness = min(b.Rect.Height(), b.Deep())
	}
	return of
}

// plinthFrom is the plinth board that begins under a cabinet: as long as the run where one
// runs through, and empty under those that the board of one at the left runs under.
func (p *Plan) plinthFrom(i int) plane.Rect {
	if i > 0 && p.plinthRuns(i-1) {
		return plane.Rect{}
	}
	r := p.Cabinets[i].Plinth
	for ; p.plinthRuns(i); i++ {
		r = r.Union(p.Cabinets[i+1].Plinth)
	}
	return r
}

// plinthRuns tells that one plinth board runs on from a cabinet under its right
// neighbour: the project asks for it, nothing stands between the two, and their
// plinths are alike.
func (p *Plan) plinthRuns(i int) bool {
	if !p.Project.OnePlinth || i+1 >= len(p.Cabinets) {
		return false
	}
	a, b := &p.Cabinets[i], &p.Cabinets[i+1]
	return !a.Plinth.Empty() && a.Plinth.Height() == b.Plinth.Height() && a.Plinth.Max.X == b.Plinth.Min.X && a.PlinthBack == b.PlinthBack
}

// railAbove is the rail above a front, midway between it and the next; false where it has
// none.
func (m *maker) railAbove(f *Front) (Rail, bool) {
	r := m.p.RailAbove(f.Place)
	if r.Height <= 0 {
		return Rail{}, false
	}
	y := f.Face.Max.Y + (m.p.GapAbove(f.Place)-r.Height)/2
	return Rail{plane.R(f.Opening.Min.X, y, f.Opening.Max.X, y+r.Height), r.Depth, f.Place}, true
}

// placeRails adds the rails above a bay's own fronts.
func (m *maker) placeRails(b *Bay) {
	for k := b.First; k < b.First+b.Count; k++ {
		if r, ok := m.railAbove(&m.plan.Fronts[k]); ok {
			b.Rails = append(b.Rails, r)
		}
	}
}

// Back is the placed back of a cabinet: Rect in the run frame with what lies in its
// rebate or groove, which is Depth deep, at most Deepest, and Milled wide; Near and Far in
// the depth frame. Rect is empty where the cabinet has no back.
type Back struct {
	Rect                   plane.Rect
	Near, Far              length.Length
	Depth, Deepest, Milled length.Length
}

// placeBack puts a cabinet's back behind its carcass, or lets it into sides, bottom and
// top. The carcass is as deep as the cabinet, less a back that is laid on.
func (m *maker) placeBack(pc *Cabinet, c *model.Cabinet) {
	thick := m.p.Boards.Back.Thickness
	pc.Back = Back{Rect: pc.Outline, Near: c.Depth - thick, Far: c.Depth}
	pc.Sides = c.Depth - thick
	if c.Back.Kind != model.LaidOn && thick > 0 {
		pc.Sides = c.Depth
		pc.Back.Near, pc.Back.Far = pc.Back.Near-c.Back.Setback, pc.Back.Far-c.Back.Setback
		pc.Back.Depth, pc.Back.Deepest = m.grooveOf(pc, c)
		pc.Back.Rect = pc.Inside.Grow(pc.Back.Depth)
		pc.Back.Milled = thick
		if c.Back.Kind == model.Rebated { // open to the back
			pc.Back.Milled += c.Back.Setback
		}
		pc.Back.Milled = min(pc.Back.Milled, pc.Sides) // no more than there is
	}
	pc.Depth = pc.Back.Near
	if thick == 0 {
		pc.Back.Rect = plane.Rect{}
	}
}

// grooveOf is the depth of the back's rebate or groove: as asked for, or half of the
// thinnest board that it is milled into (common practice, no source), and never so deep
// that less than a millimetre is left of that; and how deep it could be.
func (m *maker) grooveOf(pc *Cabinet, c *model.Cabinet) (depth, deepest length.Length) {
	thinnest := min(m.p.Boards.Carcass.Thickness, pc.Inside.Min.X-pc.Outline.Min.X, pc.Outline.Max.X-pc.Inside.Max.X)
	deepest = max(0, thinnest-length.Millimetre)
	if c.Back.Depth > 0 {
		return min(c.Back.Depth, deepest), deepest
	}
	return thinnest / 2, deepest
}

// placeBase puts a cabinet on its plinth or feet; one that hangs on the wall stands on
// nothing. Of feet those in front are placed, evenly, as they are seen: where they really
// stand is told by their maker.
func (m *maker) placeBase(pc *Cabinet, c *model.Cabinet) {
	under := plane.R(pc.Outline.Min.X, 0, pc.Outline.Max.X, c.Plinth)
	if c.Plinth <= 0 || c.Base.Kind == model.OnWall {
		return
	}
	if c.Base.Kind == model.OnPlinth {
		pc.Plinth, pc.PlinthBack = under, c.Base.Setback
	}
	const broad = 40 * length.Millimetre
	n := length.Length((c.Feet() + 1) / 2)
	for k := range n {
		x := under.Min.X + under.Width()/20
		if room := under.Width() - under.Width()/10 - broad; n > 1 {
			x += room * k / (n - 1)
		} else {
			x = under.Centre().X - broad/2
		}
		pc.Feet = append(pc.Feet, plane.R(x, 0, x+broad, c.Plinth))
	}
}
