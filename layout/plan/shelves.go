package plan

import (
	"frontlay/layout/plane"
	"frontlay/model"
)

// placeShelves adds the shelves that the open niches of a stack need: one whose
// upper face is level with the niche's lower edge, one whose lower face is level
// with its upper edge, unless the carcass bottom or top is there; one between two
// niches. Overlay fronts below and above cover the shelves' edges, less the gap;
// behind inset fronts the shelves are set back by the fronts' thickness.
func (m *maker) placeShelves(b *Bay) {
	t := m.p.Boards.Carcass.Thickness
	stack := m.plan.Fronts[b.First : b.First+b.Count]
	for k := range stack {
		f := &stack[k]
		if f.Kind != model.OpenNiche {
			continue
		}
		left, right := f.Opening.Min.X, f.Opening.Max.X
		nicheAbove := k+1 < len(stack) && stack[k+1].Kind == model.OpenNiche
		nicheBelow := k > 0 && stack[k-1].Kind == model.OpenNiche
		if !f.Bottommost && !nicheBelow {
			b.Shelves = append(b.Shelves, Shelf{Rect: plane.R(left, f.Face.Min.Y-t, right, f.Face.Min.Y), Of: f.Place})
		}
		if f.Topmost {
			continue
		}
		y := f.Face.Max.Y
		if nicheAbove {
			y += (stack[k+1].Face.Min.Y-y)/2 - t/2
		}
		b.Shelves = append(b.Shelves, Shelf{Rect: plane.R(left, y, right, y+t), Of: f.Place, Over: true})
	}
}

// standOn tells what each front of a bay's column stands on: the carcass bottom,
// or the shelf over a niche.
func (m *maker) standOn(b *Bay) {
	t := m.p.Boards.Carcass.Thickness
	for at, k := range b.Column {
		f := &m.plan.Fronts[k]
		if f.Bottommost {
			f.OnFloor, f.Floor = true, f.Opening.Min.Y
			continue
		}
		if at == 0 {
			continue
		}
		below := &m.plan.Fronts[b.Column[at-1]]
		if below.Kind == model.OpenNiche {
			f.Floor = max(f.Floor, below.Face.Max.Y+t)
			f.OnFloor = true
		} else {
			f.Floor = max(f.Floor, below.Face.Max.Y)
		}
	}
}
