package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// placeChannels adds the finger-pull channels above a bay's own fronts, and the
// cabinet's at the top.
func (m *maker) placeChannels(pc *Cabinet, b *Bay) {
	for k := b.First; k < b.First+b.Count; k++ {
		f := &m.plan.Fronts[k]
		if r, ok := m.channelAbove(f); ok {
			b.Channels = append(b.Channels, m.channel(pc, r, m.p.FrontAt(f.Place).Channel.Depth))
		}
	}
	if c := &m.p.Cabinets[b.Place.Cabinet]; c.Channel.Height > 0 {
		low := pc.underChannel(c)
		r := plane.R(b.Opening.Min.X, low, b.Opening.Max.X, low+c.Channel.Height)
		b.Channels = append(b.Channels, m.channel(pc, r, c.Channel.Depth))
	}
}

// channel is that in a recess, which ends at the carcass's top at the latest. The board
// that closes it is of the carcass's, and stands upright at its back.
func (m *maker) channel(pc *Cabinet, r plane.Rect, depth length.Length) Channel {
	r.Max.Y = min(r.Max.Y, pc.Inside.Max.Y)
	c := Channel{Rect: r}
	if depth > 0 && !r.Empty() {
		c.Near, c.Far = depth, depth+m.p.Boards.Carcass.Thickness
	}
	return c
}

// channelAbove is the recess of the channel above a front, run frame; false where it has
// none. Its upper edge is where the front above begins, or where fronts are measured
// from at the top.
func (m *maker) channelAbove(f *Front) (plane.Rect, bool) {
	high := m.p.FrontAt(f.Place).Channel.Height
	if high <= 0 {
		return plane.Rect{}, false
	}
	top := f.Face.Max.Y + m.p.GapAbove(f.Place)
	if f.Topmost {
		top = f.Face.Max.Y + m.p.TopReveal(model.Place{Cabinet: f.Place.Cabinet, Bay: f.Place.Bay, Front: -1})
	}
	return plane.R(f.Opening.Min.X, top-high, f.Opening.Max.X, top), true
}
