package paint

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// shadowReach is how wide a gap is at most that is painted as the shadow between
// two boards, and kept equal to others of its size. What is wider is a space.
const shadowReach = 12 * length.Millimetre

// leastReveal is how many pixels a reveal at the outline of a carcass has at
// least.
const leastReveal = 1

// gapOf is a gap between two edges in lengths.
type gapOf struct {
	from, to length.Length
	least    int
}

// edgesOf are the edges of a drawing that are snapped to whole pixels, and the
// gaps between them.
type edgesOf struct {
	xs, ys   []length.Length // ascending, each once
	across   []gapOf         // between edges of xs
	up       []gapOf         // between edges of ys
	fronts   []*drawing.Rectangle
	plinths  []*drawing.Rectangle
	cabinets []*drawing.Rectangle // carcasses that fronts lie over or stand in
}

// isFront tells that a rectangle is what is seen of a front.
func isFront(r *drawing.Rectangle) bool {
	switch r.Meaning {
	case drawing.Face, drawing.PanelPart, drawing.NichePart:
		return r.Of.Kind == drawing.FrontThing
	}
	return false
}

// isBoard tells that a rectangle is a part of the carcass or beside it.
func isBoard(r *drawing.Rectangle) bool {
	return r.Meaning == drawing.Carcass || r.Meaning == drawing.Plinth
}

// findEdges looks which edges a drawing has.
func findEdges(d *drawing.Drawing) *edgesOf {
	e := &edgesOf{}
	byCabinet := map[int][]*drawing.Rectangle{}
	for _, m := range d.Marks {
		r, ok := m.(*drawing.Rectangle)
		if !ok || !isFront(r) && !isBoard(r) {
			continue
		}
		e.xs, e.ys = append(e.xs, r.Rect.Min.X, r.Rect.Max.X), append(e.ys, r.Rect.Min.Y, r.Rect.Max.Y)
		switch {
		case isFront(r):
			e.fronts = append(e.fronts, r)
			byCabinet[r.Of.Place.Cabinet] = append(byCabinet[r.Of.Place.Cabinet], r)
		case r.Meaning == drawing.Plinth:
			e.plinths = append(e.plinths, r)
		case r.Meaning == drawing.Carcass && (r.Of.Kind == drawing.CabinetThing || r.Of.Kind == drawing.BayThing):
			e.cabinets = append(e.cabinets, r)
		}
	}
	for _, all := range byCabinet {
		e.gapsUp(all)
	}
	e.gapsAcross()
	e.reveals()
	e.xs, e.ys = once(e.xs), once(e.ys)
	return e
}

func once(list []length.Length) []length.Length {
	slices.Sort(list)
	return slices.Compact(list)
}

// gapsUp adds the gap above each front of a cabinet, to the next one over it.
func (e *edgesOf) gapsUp(fronts []*drawing.Rectangle) {
	for _, f := range fronts {
		next := length.Length(0)
		found := false
		for _, g := range fronts {
			over := g.Rect.Min.X < f.Rect.Max.X && f.Rect.Min.X < g.Rect.Max.X && g.Rect.Min.Y > f.Rect.Max.Y
			if over && (!found || g.Rect.Min.Y < next) {
				next, found = g.Rect.Min.Y, true
			}
		}
		if found && next-f.Rect.Max.Y <= shadowReach {
			e.up = append(e.up, gapOf{f.Rect.Max.Y, next, LeastGap})
		}
	}
}

// gapsAcross adds the gap at the right of each front, to the next left edge.
func (e *edgesOf) gapsAcross() {
	var lefts, rights []length.Length
	for _, f := range e.fronts {
		lefts, rights = append(lefts, f.Rect.Min.X), append(rights, f.Rect.Max.X)
	}
	lefts = once(lefts)
	for _, x := range once(rights) {
		i, _ := slices.BinarySearch(lefts, x+1)
		if i < len(lefts) && lefts[i]-x <= shadowReach {
			e.across = append(e.across, gapOf{x, lefts[i], LeastGap})
		}
	}
}

// reveals add the gaps between fronts and the edges of what they lie over or
// stand in, where no other front is nearer.
func (e *edgesOf) reveals() {
	inGap := func(list []gapOf, at length.Length) bool {
		return slices.ContainsFunc(list, func(g gapOf) bool { return g.from == at || g.to == at })
	}
	across, up := e.across, e.up
	seen := map[gapOf]bool{}
	add := func(list *[]gapOf, g gapOf) {
		if g.from < g.to && g.to-g.from <= shadowReach && !seen[g] {
			seen[g] = true
			*list = append(*list, g)
		}
	}
	for _, f := range e.fronts {
		for _, c := range e.cabinets {
			if c.Of.Place.Cabinet != f.Of.Place.Cabinet || !c.Rect.Overlaps(f.Rect) {
				continue
			}
			least := leastReveal
			if c.Of.Kind == drawing.BayThing {
				least = LeastGap
			}
			if !inGap(across, f.Rect.Min.X) {
				add(&e.across, gapOf{c.Rect.Min.X, f.Rect.Min.X, least})
			}
			if !inGap(across, f.Rect.Max.X) {
				add(&e.across, gapOf{f.Rect.Max.X, c.Rect.Max.X, least})
			}
			if !inGap(up, f.Rect.Min.Y) {
				add(&e.up, gapOf{c.Rect.Min.Y, f.Rect.Min.Y, least})
			}
			if !inGap(up, f.Rect.Max.Y) {
				add(&e.up, gapOf{f.Rect.Max.Y, c.Rect.Max.Y, least})
			}
		}
	}
}

// axes snap the edges under a lens, with so many pixels a unit of the screen.
// That of y counts down, as the screen does.
func (e *edgesOf) axes(v Lens, pixels float64) (x, y Axis) {
	perMM := v.Scale * pixels
	snap := func(edges []length.Length, gaps []gapOf, origin, sign float64) Axis {
		at := make([]float64, len(edges))
		place := make(map[length.Length]int, len(edges))
		for i, l := range edges {
			if sign < 0 {
				i = len(edges) - 1 - i
			}
			at[i] = origin + sign*l.MM()*perMM
			place[l] = i
		}
		list := make([]Gap, 0, len(gaps))
		for _, g := range gaps {
			from, to := place[g.from], place[g.to]
			list = append(list, Gap{From: min(from, to), To: max(from, to), Long: (g.to - g.from).MM() * perMM, Least: g.least})
		}
		return NewAxis(at, Snap(at, list))
	}
	return snap(e.xs, e.across, v.X*pixels, 1), snap(e.ys, e.up, v.Y*pixels, -1)
}

// ends tells at which sides of a plinth no other one goes on.
func (e *edgesOf) ends(m *drawing.Rectangle) (left, right bool) {
	left, right = true, true
	for _, o := range e.plinths {
		if o != m && o.Rect.Grow(shadowReach).Overlaps(m.Rect) {
			left, right = left && o.Rect.Min.X > m.Rect.Min.X, right && o.Rect.Max.X < m.Rect.Max.X
		}
	}
	return left, right
}

// shadows are the places behind fronts and the narrow gaps around them, one for
// each bay.
func (e *edgesOf) shadows() []plane.Rect {
	type bay struct{ cabinet, bay int }
	var order []bay
	of := map[bay]plane.Rect{}
	for _, f := range e.fronts {
		b := bay{f.Of.Place.Cabinet, f.Of.Place.Bay}
		r, known := of[b]
		if !known {
			order, r = append(order, b), f.Rect
		}
		of[b] = r.Union(f.Rect)
	}
	var list []plane.Rect
	for _, b := range order {
		r := of[b]
		wide := r
		for _, g := range e.across {
			if g.from == r.Max.X {
				wide.Max.X = max(wide.Max.X, g.to)
			}
			if g.to == r.Min.X {
				wide.Min.X = min(wide.Min.X, g.from)
			}
		}
		for _, g := range e.up {
			if g.from == r.Max.Y {
				wide.Max.Y = max(wide.Max.Y, g.to)
			}
			if g.to == r.Min.Y {
				wide.Min.Y = min(wide.Min.Y, g.from)
			}
		}
		list = append(list, wide)
	}
	return list
}
