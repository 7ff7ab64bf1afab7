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
	At       plane.Point
	Size     length.Length
	Vertical bool // it runs up and down: beside the front, not under or over it
}

// Gaps lists what is to be measured when fronts are hung, front by front: below and
// left of each front, above and right of those that end a stack or a row. Open niches
// have none.
func (p *Plan) Gaps() []Gap {
	var all []Gap
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if f.Kind == model.OpenNiche {
			continue
		}
		c := p.Fronts[i].Face.Centre()
		edge := p.edges(f)
		add := func(from, to, across length.Length, vertical bool) {
			at := plane.Point{X: across, Y: (from + to) / 2}
			if vertical {
				at = plane.Point{X: (from + to) / 2, Y: across}
			}
			all = append(all, Gap{Front: f, At: at, Size: to - from, Vertical: vertical})
		}
		switch g := p.beside(f, func(g *Front) bool { return across(g, c.X) && g.Face.Max.Y <= f.Face.Min.Y }, below); {
		case g == nil:
			add(edge.Min.Y, f.Face.Min.Y, c.X, false)
		case g.Kind != model.OpenNiche:
			low := g.Face.Max.Y
			if r := p.RailOver(g); !r.Empty() {
				add(low, r.Min.Y, c.X, false)
				low = r.Max.Y
			}
			add(low, f.Face.Min.Y, c.X, false)
		}
		if p.beside(f, func(g *Front) bool { return across(g, c.X) && g.Face.Min.Y >= f.Face.Max.Y }, above) == nil {
			add(f.Face.Max.Y, edge.Max.Y, c.X, false)
		}
		switch g := p.beside(f, func(g *Front) bool { return up(g, c.Y) && g.Face.Max.X <= f.Face.Min.X }, left); {
		case g == nil:
			add(edge.Min.X, f.Face.Min.X, c.Y, true)
		case g.Kind != model.OpenNiche:
			add(g.Face.Max.X, f.Face.Min.X, c.Y, true)
		}
		if p.beside(f, func(g *Front) bool { return up(g, c.Y) && g.Face.Min.X >= f.Face.Max.X }, right) == nil {
			add(f.Face.Max.X, edge.Max.X, c.Y, true)
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
