package season

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// wood asks a plan what of it is of solid wood.
type wood struct{ plan *plan.Plan }

// term is a size across the grain of a board; false where the board is not of solid wood.
func (w wood) term(what message.Message, size length.Length, b *model.Board) (Term, bool) {
	s, ok := w.plan.Project.SpeciesOf(b)
	return Term{What: what, Size: size, Species: s, Sawn: b.Sawn}, ok && size > 0
}

// up tells that a front's grain runs upwards; where it is not given it runs from side to
// side, as drawer fronts have it (common practice, no source).
func up(b *model.Board) bool { return b.Grain == "vertical" }

// parts of a frame by what they are; nil of other fronts.
func frame(f *plan.Front) map[plan.Part]*plan.Zone {
	var parts map[plan.Part]*plan.Zone
	for i := range f.Zones {
		if z := &f.Zones[i]; z.Part <= plan.PanelPart {
			if parts == nil {
				parts = map[plan.Part]*plan.Zone{}
			}
			parts[z.Part] = z
		}
	}
	return parts
}

// edges are the terms by which each edge of a front moves outwards as it swells, from
// where the front is held.
func (w wood) edges(f *plan.Front) (edges [4]Terms) {
	b := &f.Made.Board
	put := func(e plan.Edge, what message.Message, size length.Length, half bool) {
		if t, ok := w.term(what, size, b); ok {
			t.Half = half
			edges[e] = append(edges[e], t)
		}
	}
	if parts := frame(f); parts != nil {
		// Stiles run along the front's height and rails along its width, which keep; the
		// panel floats. A stile moves outwards from the rails' shoulders; a rail from its
		// tenons, evenly both ways.
		put(plan.LeftEdge, message.New("left stile"), parts[plan.LeftStile].Rect.Width(), false)
		put(plan.RightEdge, message.New("right stile"), parts[plan.RightStile].Rect.Width(), false)
		put(plan.BottomEdge, message.New("bottom rail"), parts[plan.BottomRail].Rect.Height(), true)
		put(plan.TopEdge, message.New("top rail"), parts[plan.TopRail].Rect.Height(), true)
		return edges
	}
	if up(b) { // the drawer holds it at both sides alike
		put(plan.LeftEdge, message.New("left of the middle"), f.Face.Width()/2, false)
		put(plan.RightEdge, message.New("right of the middle"), f.Face.Width()/2, false)
		return edges
	}
	held := heldAt(f)
	put(plan.BottomEdge, message.New("below where it is held"), held, false)
	put(plan.TopEdge, message.New("above where it is held"), f.Face.Height()-held, false)
	return edges
}

// heldAt is the height at which a front is held fast, Face frame: its lowest hole, since
// what is fixed low and slotted above moves up from there; the middle of a panel without
// holes.
func heldAt(f *plan.Front) length.Length {
	if len(f.Holes) == 0 {
		return f.Face.Height() / 2
	}
	y := f.Holes[0].At.Y
	for i := range f.Holes {
		y = min(y, f.Holes[i].At.Y)
	}
	return max(min(y, f.Face.Height()), 0)
}

// front is what of a front's width and height moves.
func (w wood) front(f *plan.Front) Front {
	e := w.edges(f)
	v := Front{Front: f}
	v.Width = append(append(v.Width, e[plan.LeftEdge]...), e[plan.RightEdge]...)
	v.Height = append(append(v.Height, e[plan.BottomEdge]...), e[plan.TopEdge]...)
	return v
}

// carcass is by how many mm a point of a carcass at a height moves up for 1 % of
// moisture: only sides whose grain does not run upwards move in their height. Widths never
// do: the grain of bottom and top runs from side to side.
func (w wood) carcass(cabinet int, y length.Length) float64 {
	b := &w.plan.Project.Boards.Carcass
	if b.Grain != "horizontal" {
		return 0
	}
	t, ok := w.term(message.Message{}, y-w.plan.Cabinets[cabinet].Outline.Min.Y, b)
	if !ok {
		return 0
	}
	return t.Rate()
}

// moves is by how many mm an edge of a front moves right or up for 1 % of moisture.
func (w wood) moves(f *plan.Front, e plan.Edge) float64 {
	out := w.edges(f)[e].Rate()
	switch e {
	case plan.LeftEdge:
		return -out
	case plan.RightEdge:
		return out
	}
	held := f.Face.Min.Y + heldAt(f)
	if f.Fitted {
		held = f.Runner.Lower
	}
	by := w.carcass(f.Place.Cabinet, held)
	if e == plan.BottomEdge {
		return by - out
	}
	return by + out
}

// gap is how a gap changes. A rail between inset fronts counts as not moving.
func (w wood) gap(g plan.Gap) Gap {
	against := 0.0
	switch {
	case g.Other != nil:
		against = w.moves(g.Other, g.Edge.Opposite())
	case !g.Vertical:
		against = w.carcass(g.Front.Place.Cabinet, g.Against)
	}
	return Gap{g, g.Edge.Sign() * (w.moves(g.Front, g.Edge) - against)}
}
