package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Handle is a placed handle or knob of a front: the middle of its screws, Face frame, and
// its one hole or two, the left or the lower one first.
type Handle struct {
	At      plane.Point
	Upright bool
	Holes   []Hole
	Price   float64 // of each; 0: not given
}

// Spacing is between the holes of a handle; 0 of one hole.
func (h *Handle) Spacing() length.Length {
	d := h.Holes[len(h.Holes)-1].At.Sub(h.Holes[0].At)
	return d.X + d.Y
}

// placeHandles places the handles of a front. Their holes go through it, so that the
// depth of each is its thickness where it is.
func (m *maker) placeHandles(f *Front) {
	h, around := m.p.HandleOf(f.Place)
	if h == nil {
		return
	}
	y := handleHeight(f, h, around)
	xs := handlesAcross(f.Face.Width(), h)
	f.HandleHoles = make([]Hole, 0, 2*len(xs))
	for i, x := range xs {
		f.addHandle(h, plane.Point{X: x, Y: y}, i)
	}
}

// handleHeight is how high the middle of a front's handle is, Face frame. A line through
// the run counts only for fronts that it crosses, unless it is said of the front itself.
func handleHeight(f *Front, h *model.Handle, around bool) length.Length {
	high := f.Face.Height()
	line := h.OnLine - f.Face.Min.Y
	switch {
	case h.FromBottom > 0:
		return h.FromBottom
	case h.OnLine > 0 && (!around || 0 < line && line < high):
		return line
	}
	return high - or(h.FromTop, high/2) + h.AboveMiddle
}

// handlesAcross are how far the middles of one handle or two are from the left edge of a
// front of a width.
func handlesAcross(w length.Length, h *model.Handle) []length.Length {
	if h.Count < 2 {
		x := or(h.FromLeft, w/2+h.BesideMiddle)
		if h.FromRight > 0 {
			x = w - h.FromRight
		}
		return []length.Length{x}
	}
	x := or(or(h.FromLeft, h.FromRight), w/4)
	if h.BesideMiddle != 0 {
		x = w/2 - h.BesideMiddle.Abs()
	}
	return []length.Length{x, w - x}
}

// addHandle adds a handle with its middle at a point, Face frame, the first or the second
// of its front.
func (f *Front) addHandle(h *model.Handle, at plane.Point, i int) {
	hole := Hole{Kind: HandleHole, Diameter: or(h.Diameter, model.UsualHandleHole), At: at}
	if i > 0 {
		hole.Side = Right
	}
	from := len(f.HandleHoles)
	f.HandleHoles = append(f.HandleHoles, hole)
	if h.Spacing > 0 {
		f.HandleHoles = append(f.HandleHoles, hole)
		a, b := &f.HandleHoles[from], &f.HandleHoles[from+1]
		if h.Upright {
			a.At.Y -= h.Spacing / 2
			b.At.Y = a.At.Y + h.Spacing
		} else {
			a.At.X -= h.Spacing / 2
			b.At.X = a.At.X + h.Spacing
			b.Side = Right
		}
	}
	holes := f.HandleHoles[from:len(f.HandleHoles):len(f.HandleHoles)]
	for k := range holes {
		holes[k].Depth = f.ZoneAt(&holes[k]).Thickness
	}
	f.Handles = append(f.Handles, Handle{At: at, Upright: h.Upright && h.Spacing > 0, Holes: holes, Price: h.Price})
}

// HandleWith is the handle that a hole is of, and whether it is the second of two that
// stand alike; nil where it is of none.
func (f *Front) HandleWith(h *Hole) (handle *Handle, second bool) {
	for i := range f.Handles {
		for k := range f.Handles[i].Holes {
			if f.Handles[i].Holes[k].At == h.At {
				return &f.Handles[i], i > 0
			}
		}
	}
	return nil, false
}
