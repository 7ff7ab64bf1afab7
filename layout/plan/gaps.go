package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Gap is what is seen between an edge of a front and what it is set against when it is
// hung: another front, the edge of the carcass that it lies over, or the opening that
// it stands in. At is the middle of the gap at the middle of the front's edge, in the
// run frame. Size is below zero where the front reaches past that edge.
type Gap struct {
	Front    *Front
	Edge     Edge          // of the front
	Other    *Front        // what it is set against; nil: a board, or the carcass's edge
	Against  length.Length // x or y of the edge that it is set against, run frame
	At       plane.Point
	Size     length.Length
	Vertical bool // it runs up and down: beside the front, not under or over it
}

// Edge names an edge of a front, as seen from the room.
type Edge uint8

// The edges of a front.
const (
	LeftEdge Edge = iota
	RightEdge
	BottomEdge
	TopEdge
)

// Opposite is the edge of the front beside it that faces this one.
func (e Edge) Opposite() Edge {
	return [...]Edge{LeftEdge: RightEdge, RightEdge: LeftEdge, BottomEdge: TopEdge, TopEdge: BottomEdge}[e]
}

// Sign tells whether the gap at the edge grows (1) or shrinks (-1) where its front goes
// right or up.
func (e Edge) Sign() float64 {
	if e == LeftEdge || e == BottomEdge {
		return 1
	}
	return -1
}

// Gaps lists what is to be measured when fronts are hung, front by front: below and
// left of each front, above those that end a stack, right of those that end a row or see
// another front there than sees them: beside a high front stand several low ones. No pair
// of fronts is told twice. Open niches have none.
func (p *Plan) Gaps() []Gap {
	var all []Gap
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if f.Kind == model.OpenNiche {
			continue
		}
		c := p.Fronts[i].Face.Centre()
		edge := p.edges(f)
		add := func(e Edge, other *Front, against length.Length) {
			g := Gap{Front: f, Edge: e, Other: other, Against: against, Vertical: e <= RightEdge}
			switch e {
			case LeftEdge:
				g.At, g.Size = plane.Point{X: (against + f.Face.Min.X) / 2, Y: c.Y}, f.Face.Min.X-against
			case RightEdge:
				g.At, g.Size = plane.Point{X: (f.Face.Max.X + against) / 2, Y: c.Y}, against-f.Face.Max.X
			case BottomEdge:
				g.At, g.Size = plane.Point{X: c.X, Y: (against + f.Face.Min.Y) / 2}, f.Face.Min.Y-against
			case TopEdge:
				g.At, g.Size = plane.Point{X: c.X, Y: (f.Face.Max.Y + against) / 2}, against-f.Face.Max.Y
			}
			all = append(all, g)
		}
		switch g := p.beside(f, func(g *Front) bool { return across(g, c.X) && g.Face.Max.Y <= f.Face.Min.Y }, below); {
		case g == nil:
			add(BottomEdge, nil, edge.Min.Y)
		case g.Kind != model.OpenNiche:
			low := g.Face.Max.Y
			if r := p.RailOver(g); !r.Empty() {
				all = append(all, Gap{Front: g, Edge: TopEdge, Against: r.Min.Y, At: plane.Point{X: c.X, Y: (low + r.Min.Y) / 2}, Size: r.Min.Y - low})
				add(BottomEdge, nil, r.Max.Y)
				break
			}
			add(BottomEdge, g, low)
		}
		if p.beside(f, func(g *Front) bool { return across(g, c.X) && g.Face.Min.Y >= f.Face.Max.Y }, above) == nil {
			add(TopEdge, nil, edge.Max.Y)
		}
		switch g := p.leftOf(f); {
		case g == nil:
			add(LeftEdge, nil, edge.Min.X)
		case g.Kind != model.OpenNiche:
			add(LeftEdge, g, g.Face.Max.X)
		}
		switch g := p.rightOf(f); {
		case g == nil:
			add(RightEdge, nil, edge.Max.X)
		case g.Kind != model.OpenNiche && p.leftOf(g) != f:
			add(RightEdge, g, g.Face.Min.X)
		}
	}
	return all
}

// RailOver is the rail above a front, run frame; empty where there is none.
func (p *Plan) RailOver(f *Front) plane.Rect {
	if b := p.BayAt(f.Place); b != nil {
		for _, r := range b.Rails {
			if r.Of == f.Place {
				return r.Rect
			}
		}
	}
	return plane.Rect{}
}

// edges are what a front at an end of its stack or row is set against.
func (p *Plan) edges(f *Front) plane.Rect {
	c := &p.Cabinets[f.Place.Cabinet]
	switch {
	case !f.Inset:
		return c.Outline
	case f.Opening.Empty():
		return c.Bays[f.Place.Bay].Opening
	}
	return c.Bays[f.Place.Bay].Opening.Union(f.Opening)
}

// across and up tell that a front is there at an x or a y, or would be but for the gap
// that it keeps to another.
func across(g *Front, x length.Length) bool {
	return g.Face.Min.X-farApart <= x && x <= g.Face.Max.X+farApart
}
func up(g *Front, y length.Length) bool {
	return g.Face.Min.Y-farApart <= y && y <= g.Face.Max.Y+farApart
}

// leftOf and rightOf are what a front sees from the middle of its edge; nil where none is near.
func (p *Plan) leftOf(f *Front) *Front {
	return p.beside(f, func(g *Front) bool { return up(g, f.Face.Centre().Y) && g.Face.Max.X <= f.Face.Min.X }, left)
}

func (p *Plan) rightOf(f *Front) *Front {
	return p.beside(f, func(g *Front) bool { return up(g, f.Face.Centre().Y) && g.Face.Min.X >= f.Face.Max.X }, right)
}

// Span is from where to where both sides of the gap still stand at it, along its length: x of
// the run, or y of one that runs up and down. It is a single place where they stand past each other.
func (g *Gap) Span() (from, to length.Length) {
	along := func(f *Front) (from, to length.Length) {
		if g.Vertical {
			return f.Face.Min.Y, f.Face.Max.Y
		}
		return f.Face.Min.X, f.Face.Max.X
	}
	from, to = along(g.Front)
	if g.Other != nil {
		a, b := along(g.Other)
		if from, to = max(from, a), min(to, b); from > to {
			from, to = (from+to)/2, (from+to)/2
		}
	}
	return from, to
}

// Ways to look from a front; each gives how far another lies that way.
func below(f, g *Front) length.Length { return f.Face.Min.Y - g.Face.Max.Y }
func above(f, g *Front) length.Length { return g.Face.Min.Y - f.Face.Max.Y }
func left(f, g *Front) length.Length  { return f.Face.Min.X - g.Face.Max.X }
func right(f, g *Front) length.Length { return g.Face.Min.X - f.Face.Max.X }

// farApart is from where on nobody takes what is between two fronts for a gap: there
// is a board, a wall or another cabinet's edge between them. In a stack there is none,
// however wide a gap is asked for.
const farApart = 15 * length.Millimetre

// beside finds the nearest front that lies in a way, rather a board than an open niche;
// nil where none is near. An inset
// front has boards around its opening, and is set against them.
func (p *Plan) beside(f *Front, lies func(*Front) bool, way func(f, g *Front) length.Length) *Front {
	var nearest *Front
	for i := range p.Fronts {
		g := &p.Fronts[i]
		if g == f || g.Inset != f.Inset || f.Inset && g.Place.Cabinet != f.Place.Cabinet || !lies(g) {
			continue
		}
		d, stacked := way(f, g), g.Place.Cabinet == f.Place.Cabinet && g.Place.Bay == f.Place.Bay
		if (d <= farApart || stacked) && (nearest == nil || d < way(f, nearest) || nearest.Kind == model.OpenNiche && d == way(f, nearest)) {
			nearest = g
		}
	}
	return nearest
}
