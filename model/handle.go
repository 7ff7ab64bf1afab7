package model

import "frontlay/model/length"

// Handle is a pattern of holes for handles or knobs, drilled through a front from its
// face: where each of Count (0: one) has its screws. Spacing is between the two screws
// of one (0: one screw), side by side, or one above the other where it is Upright.
//
// Of FromTop, FromBottom, AboveMiddle and OnLine at most one is not 0, as of FromLeft,
// FromRight and BesideMiddle: they place the middle of the handle, by the front's edges
// as seen from the room, by its middle, or by a height in the run frame. The middle of
// the front holds where all are 0. Two handles stand alike from both side edges.
type Handle struct {
	None     bool // there is none, whatever the cabinet or the project says
	Count    int
	Spacing  length.Length
	Upright  bool
	Diameter length.Length // of the holes; 0: UsualHandleHole
	Price    float64       // of one handle or knob, in whatever money; 0: not given

	FromTop, FromBottom               length.Length
	AboveMiddle                       length.Length // below zero: below it
	OnLine                            length.Length // run frame
	FromLeft, FromRight, BesideMiddle length.Length // BesideMiddle of one handle: below zero to the left
}

// UsualHandleHole is the diameter of a handle's holes where none is given: screws of 4 mm
// with room to adjust (common practice, no source).
const UsualHandleHole = 5 * length.Millimetre

// HandleOf gives the handle of the front at a place: its own, or for a drawer that of its
// cabinet or of the project; nil where there is none. Around tells that it is not its own.
func (p *Project) HandleOf(at Place) (h *Handle, around bool) {
	f := p.FrontAt(at)
	switch {
	case f == nil || f.Kind == OpenNiche:
		return nil, false
	case f.Handle != nil:
		h = f.Handle
	case f.Kind == DrawerFront:
		h, around = p.HandleAround(at), true
	}
	if h == nil || h.None {
		return nil, false
	}
	return h, around
}

// HandleAround gives the pattern of what is around a place: of the cabinet for a front,
// or else of the project; nil where neither has one.
func (p *Project) HandleAround(at Place) *Handle {
	if c := p.CabinetAt(at); c != nil && at.Bay >= 0 && c.Handle != nil {
		return c.Handle
	}
	if at.Cabinet >= 0 {
		return p.Handle
	}
	return nil
}

// HandleAt is where the handle of the thing at a place is kept, a front, a cabinet or the
// project; nil where it has none to keep.
func (p *Project) HandleAt(at Place) **Handle {
	switch {
	case at.Cabinet < 0:
		return &p.Handle
	case at.Front >= 0 && p.FrontAt(at) != nil:
		return &p.FrontAt(at).Handle
	case at.Bay < 0 && p.CabinetAt(at) != nil:
		return &p.CabinetAt(at).Handle
	}
	return nil
}

// clone is a copy, nil of nil.
func (h *Handle) clone() *Handle {
	if h == nil {
		return nil
	}
	c := *h
	return &c
}
