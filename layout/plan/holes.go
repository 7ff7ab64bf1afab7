package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// drill works out every hole of a front, in the Face frame. Hole height from the
// front's bottom edge = height above the runner's lower edge + drop; distance
// from the side edge = connector inset + packing + side overlay, each side on its own.
func (m *maker) drill(f *Front) {
	m.placeHandles(f)
	if !f.Fitted {
		return
	}
	c := &f.Sheet.Connector
	f.EdgeDistance = Edges{Left: c.Inset + f.Overlay.Left + f.Packing.Left, Right: c.Inset + f.Overlay.Right + f.Packing.Right}
	f.Holes = make([]Hole, 0, 2*(len(f.Height.Holes)+len(f.Height.RailHoles)+len(f.Height.More))+len(f.Sheet.Stabiliser.Holes))
	f.addHoles()
	f.addStabiliser()
}

// addHoles adds the holes of the drawer height: connectors, rails and further ones.
func (f *Front) addHoles() {
	c := &f.Sheet.Connector
	both := func(kind HoleKind, up length.Length) {
		f.addHole(Hole{Side: Left, Kind: kind, AboveRunner: up, Diameter: c.Diameter, Depth: c.Depth}, c.Inset)
		f.addHole(Hole{Side: Right, Kind: kind, AboveRunner: up, Diameter: c.Diameter, Depth: c.Depth}, c.Inset)
	}
	for _, up := range f.Height.Holes {
		both(ConnectorHole, up)
	}
	for _, up := range f.Height.RailHoles {
		both(RailHole, up)
	}
	for _, p := range f.Height.More {
		f.addPattern(p)
	}
}

// addHole puts a hole on its side's line, inset from the face that the runner is screwed to.
func (f *Front) addHole(h Hole, inset length.Length) {
	x := inset + f.Overlay.Left + f.Packing.Left
	if h.Side == Right {
		x = f.Face.Width() - inset - f.Overlay.Right - f.Packing.Right
	}
	h.At = plane.Point{X: x, Y: h.AboveRunner + f.Drop}
	f.Holes = append(f.Holes, h)
}

// has tells whether the front is as high and wide as a pattern asks.
func (f *Front) has(p model.HolePattern) bool {
	return f.Face.Height() >= p.FromHeight && f.Face.Width() >= p.FromWidth
}

// addPattern adds a further hole where the front is as high and wide as it asks.
func (f *Front) addPattern(p model.HolePattern) {
	if !f.has(p) {
		return
	}
	c := &f.Sheet.Connector
	h := Hole{Kind: ConnectorHole, AboveRunner: p.Up, Diameter: or(p.Diameter, c.Diameter), Depth: or(p.Depth, c.Depth)}
	inset := or(p.Inset, c.Inset)
	if p.Sides != model.RightOnly {
		h.Side = Left
		f.addHole(h, inset)
	}
	if p.Sides != model.LeftOnly {
		h.Side = Right
		f.addHole(h, inset)
	}
}

// wide tells that a drawer has a stabiliser.
func (f *Front) wide() bool {
	from := f.Sheet.Stabiliser.FromWidth
	return from > 0 && f.Face.Width() >= from
}

// addStabiliser adds a stabiliser's holes to a wide front.
func (f *Front) addStabiliser() {
	s := &f.Sheet.Stabiliser
	if !f.wide() {
		return
	}
	f.Stabilised = true
	c := &f.Sheet.Connector
	// The stabiliser stands midway between the runners, which is not the
	// middle of a front that overlays its sides differently.
	middle := (f.Overlay.Left + f.Packing.Left + f.Face.Width() - f.Overlay.Right - f.Packing.Right) / 2
	for _, h := range s.Holes {
		side := Left
		if h.Across > 0 {
			side = Right
		}
		f.Holes = append(f.Holes, Hole{
			At:          plane.Point{X: middle + h.Across, Y: h.Up + f.Drop},
			Side:        side,
			Kind:        StabiliserHole,
			AboveRunner: h.Up,
			Diameter:    or(h.Diameter, c.Diameter),
			Depth:       or(h.Depth, c.Depth),
		})
	}
}

func or(a, b length.Length) length.Length {
	if a > 0 {
		return a
	}
	return b
}
