package model

import "frontlay/model/length"

// InnerDrawer is a drawer behind a front that is not its own: behind a door, or over the
// drawer of a higher front. It is pulled when that is open, and has no holes in it. Its
// hardware sheet is the front's. Up is from the board that the front stands on, or else
// from the front's bottom edge, up to the runner's lower edge. Drawer, Runner and
// Contents are as those of a Front.
type InnerDrawer struct {
	Drawer   string
	Runner   length.Length
	Up       length.Length
	Contents Contents
}

// Packing is what stands between the carcass and the runners of a drawer, at its left
// and right seen from the room: how thick it is; 0: none.
type Packing struct{ Left, Right length.Length }

// HasDrawer tells that a front has a drawer behind it, its own or an inner one.
func (f *Front) HasDrawer() bool { return f.Kind == DrawerFront || len(f.Inner) > 0 }

// Holds tells that drawers may be behind a front of a kind: it opens.
func (k Kind) Holds() bool { return k == DrawerFront || k == Door }

// PackingOf gives the packing of the drawers behind the front at a place: its own, or
// else that of the bays that it covers, the first and the last of so many.
func (p *Project) PackingOf(at Place, bays int) Packing {
	f, c := p.FrontAt(at), p.CabinetAt(at)
	if f.Packing != nil {
		return *f.Packing
	}
	last := min(at.Bay+max(bays, 1), len(c.Bays)) - 1
	return Packing{c.Bays[at.Bay].Packing.Left, c.Bays[last].Packing.Right}
}
