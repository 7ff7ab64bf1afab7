package model

import "frontlay/model/length"

// BaseKind tells what a cabinet stands on.
type BaseKind uint8

// What a cabinet stands on: a plinth with its board, feet that are seen, or nothing, as
// it hangs on the wall.
const (
	OnPlinth BaseKind = iota
	OnFeet
	OnWall
)

// Base is what a cabinet stands on. Setback is from the carcass's front edge back to the
// face of the plinth board, or to the front feet. FeetCount is how many feet carry it (see
// Cabinet.Feet). FixedAt is how high above the floor it is fixed to the wall, or would be;
// 0: at the carcass's upper edge.
type Base struct {
	Kind      BaseKind
	Setback   length.Length
	FeetCount int
	Stands    Standing
	FixedAt   length.Length
}

// Standing tells what keeps a cabinet from tipping: nobody has said it yet, its own
// weight, the wall that it is fixed to.
type Standing uint8

// What can keep a cabinet from tipping.
const (
	NotSaid Standing = iota
	StandsFree
	FixedToWall
)

// Standing is what keeps the cabinet from tipping; the wall too where it hangs on it.
func (c *Cabinet) Standing() Standing {
	if c.Base.Kind == OnWall {
		return FixedToWall
	}
	return c.Base.Stands
}

// UsualEdgeLoad is laid on the edge of an open drawer where the project does not say what:
// the weight in kg that ASTM F2057-23 hangs there, 60 lb (from memory).
const UsualEdgeLoad = 27.2

// EdgeLoad is what is laid on the edge of the worst drawer when it is asked whether a
// cabinet tips, in kg.
func (p *Project) EdgeLoad() float64 {
	if p.TippingLoad > 0 {
		return p.TippingLoad
	}
	return UsualEdgeLoad
}

// UsualFeet is how many feet carry a cabinet that stands on feet alone.
const UsualFeet = 4

// Feet is how many feet carry a cabinet: those asked for, UsualFeet where it stands on
// feet alone, none where it hangs on the wall or stands on the floor.
func (c *Cabinet) Feet() int {
	switch {
	case c.Plinth <= 0 || c.Base.Kind == OnWall:
		return 0
	case c.Base.FeetCount == 0 && c.Base.Kind == OnFeet:
		return UsualFeet
	}
	return c.Base.FeetCount
}

// BackKind tells how a back is fixed to its carcass.
type BackKind uint8

// The ways: laid on behind it, in a rebate that is open to the back, in a groove.
const (
	LaidOn BackKind = iota
	Rebated
	Grooved
)

// BackFit is how a cabinet's back is fixed. Depth is how deep the rebate or the groove is in
// sides, bottom and top; 0: half of the thinnest of them. Setback is from their rear
// edges to the back's rear face.
type BackFit struct {
	Kind    BackKind
	Depth   length.Length
	Setback length.Length
}

// Rail is a rail that stands between two inset fronts, or lies there, from the carcass's
// front edge back: Height is its height as the room sees it, Depth how far it reaches
// back, 0: UsualRailDepth. The gap of the fronts is kept at both its edges. Height 0:
// none.
type Rail struct {
	Height, Depth length.Length
}

// UsualRailDepth is the depth of a rail that is given none (common practice, no source).
const UsualRailDepth = 80 * length.Millimetre

// RailAbove gives the rail that stands above the front at a place: its own, or else the
// cabinet's. There is none over overlay fronts, at the top of a stack, at a finger-pull
// channel, nor where shelves are: beside an open niche or a front that spans bays.
func (p *Project) RailAbove(at Place) Rail {
	f, c, b := p.FrontAt(at), p.CabinetAt(at), p.BayAt(at)
	if f == nil || c.Mount != Inset || at.Front+1 >= len(b.Fronts) || f.Channel.Height > 0 {
		return Rail{}
	}
	for _, g := range b.Fronts[at.Front : at.Front+2] {
		if g.Kind == OpenNiche || g.Span > 1 {
			return Rail{}
		}
	}
	r := c.Rail
	if f.Rail != nil {
		r = *f.Rail
	}
	if r.Height <= 0 {
		return Rail{}
	}
	if r.Depth <= 0 {
		r.Depth = UsualRailDepth
	}
	return r
}
