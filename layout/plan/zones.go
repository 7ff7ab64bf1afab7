package plan

import (
	"math"

	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// Zone is a part of a front that is of one thickness. Rect is what is seen of it from
// the room, Face frame; the zones of a front cover it without overlap. Whole is the
// part as it is cut, with what sits in a groove of its neighbours. Recess is how far
// its rear face lies back from that of the front, towards the room.
type Zone struct {
	Part      Part
	Rect      plane.Rect
	Whole     plane.Rect
	Thickness length.Length
	Recess    length.Length
}

// Part tells what a zone is.
type Part uint8

// The parts of fronts that are not of one thickness all over: those of a frame, and
// of a board with a grip.
const (
	LeftStile Part = iota
	RightStile
	BottomRail
	TopRail
	PanelPart
	BoardPart
	GripPart
)

// ZonesOf divides a front of a size into the zones of its board's build; none where it
// is of one thickness all over. What has no room is cut off: stiles take half of the
// width at most, and so on; the check tells of it.
func ZonesOf(b *model.FrontBoard, w, h length.Length) []Zone {
	build, t := b.Filled(), b.Thickness
	zone := func(part Part, r plane.Rect, thick, recess length.Length) Zone {
		return Zone{Part: part, Rect: r, Whole: r, Thickness: min(thick, t), Recess: max(min(recess, t-thick), 0)}
	}
	switch build.Kind {
	case model.Frame:
		stile := min(build.Stile, w/2)
		low := min(build.BottomRail, h/2)
		high := h - min(build.TopRail, h/2)
		zones := []Zone{
			zone(LeftStile, plane.R(0, 0, stile, h), t, 0),
			zone(RightStile, plane.R(w-stile, 0, w, h), t, 0),
			zone(BottomRail, plane.R(stile, 0, w-stile, low), t, 0),
			zone(TopRail, plane.R(stile, high, w-stile, h), t, 0),
			zone(PanelPart, plane.R(stile, low, w-stile, high), build.Panel.Thickness, build.Panel.Recess),
		}
		for i := 2; i < 4; i++ {
			r := &zones[i].Whole
			r.Min.X, r.Max.X = r.Min.X-build.Tenon, r.Max.X+build.Tenon
		}
		zones[4].Whole = zones[4].Rect.Grow(max(min(build.Panel.Groove, stile, low, h-high)-build.Panel.Room, 0))
		return zones
	case model.GripEdged:
		strip := min(build.Height, h)
		left := min(build.Left, t)
		if build.Edge == model.GripBottom {
			return []Zone{
				zone(BoardPart, plane.R(0, strip, w, h), t, 0),
				zone(GripPart, plane.R(0, 0, w, strip), left, t-left),
			}
		}
		return []Zone{
			zone(BoardPart, plane.R(0, 0, w, h-strip), t, 0),
			zone(GripPart, plane.R(0, h-strip, w, h), left, t-left),
		}
	}
	return nil
}

// ZoneAt is the thinnest zone that a hole touches; all of the front where it is of one
// thickness all over.
func (f *Front) ZoneAt(h *Hole) Zone {
	at := Zone{Part: BoardPart, Rect: f.Blind(), Whole: f.Blind(), Thickness: f.Thickness}
	for i := range f.Zones {
		if z := &f.Zones[i]; z.apart(h) < 0 && z.Thickness <= at.Thickness {
			at = *z
		}
	}
	return at
}

// Face is how far the zone's face lies back from the front's.
func (z *Zone) Face(f *Front) length.Length { return f.Thickness - z.Recess - z.Thickness }

// Of is the board that a zone is cut from: the front's, or a panel's. The grain of stiles
// and rails runs along them (common practice, no source).
func (z *Zone) Of(f *Front) model.Board {
	b := f.Made.Board
	switch z.Part {
	case LeftStile, RightStile:
		b.Grain = "vertical"
	case TopRail, BottomRail:
		b.Grain = "horizontal"
	case PanelPart:
		b = f.Made.PanelBoard()
		b.Thickness = z.Thickness
	}
	return b
}

// Thin is the zone thinner than the front's board that is nearest to a hole, and what
// lies between their edges, below zero where the hole reaches into it; nil where the
// front has none.
func (f *Front) Thin(h *Hole) (nearest *Zone, apart length.Length) {
	for i := range f.Zones {
		if z := &f.Zones[i]; z.Thickness < f.Thickness {
			if d := z.apart(h); nearest == nil || d < apart {
				nearest, apart = z, d
			}
		}
	}
	return nearest, apart
}

// apart is what lies between the edges of a hole and the zone; below zero how far the
// hole reaches into it, more than its own diameter where all of it lies in there.
func (z *Zone) apart(h *Hole) length.Length {
	x := max(z.Rect.Min.X-h.At.X, h.At.X-z.Rect.Max.X)
	y := max(z.Rect.Min.Y-h.At.Y, h.At.Y-z.Rect.Max.Y)
	out := max(x, y)
	if x > 0 && y > 0 { // across from its corner
		out = length.Length(math.Hypot(float64(x), float64(y)))
	}
	return out - h.Diameter/2
}

// WeightKg is a front's weight in kg: width · height · thickness · density of each of
// its parts; of a board without density, nothing. The panel of a frame fills the groove
// that it sits in. Inner drawers carry no front.
func (f *Front) WeightKg() float64 {
	kg := func(r plane.Rect, thick length.Length, density float64) float64 {
		return length.VolumeM3(r.Width(), r.Height(), thick) * density
	}
	if f.Nth > 0 {
		return 0
	}
	if len(f.Zones) == 0 {
		return kg(f.Blind(), f.Thickness, f.Made.Density)
	}
	sum := 0.0
	for i := range f.Zones {
		z := &f.Zones[i]
		if z.Part != PanelPart {
			sum += kg(z.Rect, z.Thickness, f.Made.Density)
			continue
		}
		sum += kg(z.Whole, z.Thickness, z.Of(f).Density) - (kg(z.Whole, z.Thickness, f.Made.Density) - kg(z.Rect, z.Thickness, f.Made.Density))
	}
	return sum
}
