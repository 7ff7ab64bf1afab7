package plan

import (
	"iter"

	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Between is the opening less the packing: between the faces that the runners are screwed
// to, run frame.
func (f *Front) Between() plane.Rect {
	r := f.Opening
	r.Min.X, r.Max.X = r.Min.X+f.Packing.Left, r.Max.X-f.Packing.Right
	return r
}

// HasPacking tells that a front has drawers, and packing beside their runners.
func (f *Front) HasPacking() bool {
	for range f.Drawers() {
		return f.Packing != (model.Packing{})
	}
	return false
}

// PackingStrips are the strips of packing that the runners of a drawer are screwed to, run
// frame: each as high as its runner is drawn, and as long (common practice, no source).
func (f *Front) PackingStrips() []plane.Rect {
	var strips []plane.Rect
	ends := f.RunnerEnds()
	if f.Packing.Left > 0 {
		strips = append(strips, plane.R(f.Opening.Min.X, ends[0].Min.Y, ends[0].Min.X, ends[0].Max.Y))
	}
	if f.Packing.Right > 0 {
		strips = append(strips, plane.R(ends[1].Max.X, ends[1].Min.Y, f.Opening.Max.X, ends[1].Max.Y))
	}
	return strips
}

// Drawers are the fitted drawers behind a front: its own, then the inner ones.
func (f *Front) Drawers() iter.Seq[*Front] {
	return func(yield func(*Front) bool) {
		if f.Fitted && !yield(f) {
			return
		}
		for k := range f.Inner {
			if f.Inner[k].Fitted && !yield(&f.Inner[k]) {
				return
			}
		}
	}
}

// Drawers are the fitted drawers of a plan, those of each front together.
func (p *Plan) Drawers() iter.Seq[*Front] {
	return func(yield func(*Front) bool) {
		for i := range p.Fronts {
			for f := range p.Fronts[i].Drawers() {
				if !yield(f) {
					return
				}
			}
		}
	}
}

// Called says which front it is, or behind which front which inner drawer: by number and
// name.
func (f *Front) Called() message.Message {
	if f.Nth > 0 {
		return message.New("%v %v (inner drawer %v)", f.Number, f.Name, f.Nth)
	}
	return message.New("%v %v", f.Number, f.Name)
}

// Datum is the height, run frame, that runners of inner drawers are measured from: the
// upper face of the board that the front stands on, or else the front's bottom edge.
func (f *Front) Datum() length.Length {
	if f.OnFloor {
		return f.Floor
	}
	return f.Face.Min.Y
}

// placeInner places the runners of the inner drawers behind a front.
func (m *maker) placeInner(f *Front) {
	src := m.p.FrontAt(f.Place)
	if len(src.Inner) == 0 || !src.Kind.Holds() {
		return
	}
	f.Inner = make([]Front, len(src.Inner))
	for k := range src.Inner {
		g, doc := &f.Inner[k], &src.Inner[k]
		*g = *f
		g.Kind, g.Nth = model.DrawerFront, k+1
		g.Inner, g.Runner, g.Holes, g.HandleHoles, g.Handles = nil, Runner{}, nil, nil, nil
		if g.Sheet == nil {
			continue
		}
		g.Runner.Lower = f.Datum() + doc.Up
		m.chooseRunner(g, doc.Runner)
		g.Drop = g.Runner.Lower - g.Face.Min.Y
		m.placeScrews(g)
	}
}

// Lowest is the lower edge of the lowest of the drawers behind a front, or of those that
// are higher than a runner at a height, run frame; false where there are none. Their
// runners are placed.
func (f *Front) lowest(above length.Length, but int) (length.Length, bool) {
	low, any := length.Length(0), false
	see := func(g *Front) {
		y := g.Runner.Lower
		if g.Kind != model.DrawerFront || g.Sheet == nil || g.Nth == but || y < above || y == above && g.Nth < but {
			return
		}
		if y += g.Sheet.Lowest(); !any || y < low {
			low, any = y, true
		}
	}
	see(f)
	for k := range f.Inner {
		see(&f.Inner[k])
	}
	return low, any
}

// placeDrawers places all drawers behind a front: each stays below the next one above it,
// and all below what is above the front.
func (m *maker) placeDrawers(f *Front, above limit) {
	place := func(g *Front) {
		l := above
		if y, any := f.lowest(g.Runner.Lower, g.Nth); any {
			l = l.lower(y, DrawerAbove)
		}
		m.placeDrawer(g, l.at)
		g.Drawer.Above = l.kind
	}
	place(f)
	for k := range f.Inner {
		g := &f.Inner[k]
		place(g)
		g.Drawer.Cover = Edges{} // no front of its own
		g.Stabilised = g.Fitted && g.wide()
	}
}
