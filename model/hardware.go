package model

import (
	"cmp"
	"slices"

	"frontlay/model/length"
)

// HardwareUse is one hardware sheet under the name that bays use for it. Source
// is the name of a sample that ships or a path beside the project's file.
type HardwareUse struct {
	Name   string
	Source string
	Sheet  *HardwareSheet
}

// HardwareSheet holds the figures of one family of runners and drawers, copied
// by the user from the maker's documents. All heights are above the runner's
// lower edge unless told otherwise. Sheets are never changed in place.
type HardwareSheet struct {
	Name          string
	Note          string
	Sample        bool // the figures are invented
	Unit          length.Unit
	SideClearance length.Length // carcass inside face to drawer, each side
	Runner        RunnerFigures
	Connector     ConnectorFigures
	Stabiliser    Stabiliser
	Drawers       []DrawerHeight // lowest first
	Bottom        BottomFigures
	Back          BackFigures
	Box           BoxFigures
}

// RunnerFigures are the figures of the runner. LeastHeight is from the carcass
// bottom's upper face to the runner's lower edge, ClearanceBehind from the
// runner's (or drawer's) end to the back board, ClearanceAbove what must stay
// free above the drawer.
type RunnerFigures struct {
	LeastHeight     length.Length
	ClearanceBehind length.Length
	ClearanceAbove  length.Length
	Setback         length.Length // carcass front edge to the runner's front end
	ScrewReach      length.Length // how deep a runner's screw goes into the carcass side; 0: not given
	Play            length.Length // how far its screws can slip in slotted holes along it, from end to end
	Lengths         []RunnerLength
}

// RunnerLength is one runner of the family. Load is what it carries in kg, the
// pair together.
type RunnerLength struct {
	Length length.Length
	Load   float64
	Price  float64 // of the pair, in whatever money; 0: not given
	Screws []ScrewHole
}

// ScrewHole is a hole in the carcass side for a runner's screw: Back from the
// carcass's front edge, Up above the runner's lower edge.
type ScrewHole struct {
	Back, Up        length.Length
	Diameter, Depth length.Length
}

// ConnectorFigures are the figures of the front connector. Inset is from the
// carcass's inside face to the vertical line of hole centres. Diameter and
// Depth are of the holes in the rear face. AdjustUp, AdjustDown and AdjustSide tell how
// far the hung front can be moved each way. Where Kind is Screws there is no connector:
// the front is screwed on from inside, through the inner front of a wooden box.
type ConnectorFigures struct {
	Kind       ConnectorKind
	Inset      length.Length
	Diameter   length.Length
	Depth      length.Length
	AdjustUp   length.Length
	AdjustDown length.Length // 0: as far as up
	AdjustSide length.Length
	AdjustTilt length.Length // the front's upper edge, in and out
	// PerTurn and PerTurnSide are what a turn of the screw that adjusts moves the front up or
	// down, and to the side; 0: not given.
	PerTurn, PerTurnSide length.Length
	Play                 length.Length // how far a screw can slip in the slotted ones of its holes, from end to end
	Price                float64       // of the pair, in whatever money; 0: not given
}

// Down is how far a hung front can be moved down.
func (c *ConnectorFigures) Down() length.Length { return cmp.Or(c.AdjustDown, c.AdjustUp) }

// ConnectorKind tells what holds a front to its drawer.
type ConnectorKind uint8

// What holds a front.
const (
	Pair   ConnectorKind = iota // a pair of connectors
	Screws                      // screws alone
)

// DrawerHeight is one height of drawer: how far its sides and back rise above
// the runner's lower edge, and the heights of the connector's holes. RailHoles
// are those of a rail or high side; RailTop is how high that rises (0: none).
type DrawerHeight struct {
	Name      string
	SideTop   length.Length
	BackTop   length.Length // 0: as the side
	Holes     []length.Length
	RailTop   length.Length
	RailHoles []length.Length
	More      []HolePattern // further holes, for some fronts or one side only
	Weight    float64       // kg, without front and contents; 0: not given
	Price     float64       // of the set without runners, in whatever money; 0: not given
}

// HolePattern is a further connector hole that only some fronts have: those at
// least FromHeight high and FromWidth wide, on one side or both. Inset,
// Diameter and Depth are the connector's where they are zero.
type HolePattern struct {
	Up         length.Length // above the runner's lower edge
	Sides      HoleSides
	FromHeight length.Length
	FromWidth  length.Length
	Inset      length.Length
	Diameter   length.Length
	Depth      length.Length
}

// HoleSides tells on which sides of the front a hole is, seen from the room.
type HoleSides uint8

// The sides a hole can be on.
const (
	BothSides HoleSides = iota
	LeftOnly
	RightOnly
)

// Stabiliser is a part between the two runners that wide drawers need, with its
// own holes in the front. FromWidth is the front width from which it is needed;
// 0: the family has none. Holes are placed from the middle between the runners.
type Stabiliser struct {
	FromWidth length.Length
	Holes     []StabiliserHole
}

// StabiliserHole is a hole of the stabiliser: Across from the middle between the
// two runners (negative to the left, seen from the room), Up above the runner's
// lower edge. Diameter and Depth are the connector's where zero.
type StabiliserHole struct {
	Across, Up      length.Length
	Diameter, Depth length.Length
}

// Top is the highest part of the drawer above the runner's lower edge.
func (d *DrawerHeight) Top() length.Length { return max(d.SideTop, d.BackTop, d.RailTop) }

// BottomFigures are those of the drawer bottom: its underside above the
// runner's lower edge, its thickness, and what to deduct from the bay's inside
// width and from the runner's length for its size. LeastWidth is the least width
// of one that can be used; 0: not given.
type BottomFigures struct {
	Underside    length.Length
	Thickness    length.Length
	DeductWidth  length.Length
	DeductLength length.Length
	LeastWidth   length.Length
}

// UsualLeastWidth is the least width of a drawer bottom where the sheet gives none
// (from memory).
const UsualLeastWidth = 100 * length.Millimetre

// Least is the least width of a drawer bottom that can be used.
func (b BottomFigures) Least() length.Length {
	if b.LeastWidth > 0 {
		return b.LeastWidth
	}
	return UsualLeastWidth
}

// BackFigures are those of the drawer back: what to deduct from the bay's
// inside width for its width, and its thickness.
type BackFigures struct {
	DeductWidth length.Length
	Thickness   length.Length
}

// Drawer finds a drawer height by name, nil where the sheet has none.
func (s *HardwareSheet) Drawer(name string) *DrawerHeight {
	for i := range s.Drawers {
		if s.Drawers[i].Name == name {
			return &s.Drawers[i]
		}
	}
	return nil
}

// Sheet finds a sheet by the name that bays use, nil where there is none.
func (p *Project) Sheet(name string) *HardwareSheet {
	for i := range p.Hardware {
		if p.Hardware[i].Name == name {
			return p.Hardware[i].Sheet
		}
	}
	return nil
}

// Clone is a deep copy, to be changed before it takes the place of s.
func (s *HardwareSheet) Clone() *HardwareSheet {
	c := *s
	c.Runner.Lengths = slices.Clone(s.Runner.Lengths)
	for i := range c.Runner.Lengths {
		c.Runner.Lengths[i] = c.Runner.Lengths[i].Clone()
	}
	c.Drawers = slices.Clone(s.Drawers)
	for i := range c.Drawers {
		c.Drawers[i] = c.Drawers[i].Clone()
	}
	c.Stabiliser.Holes = slices.Clone(s.Stabiliser.Holes)
	return &c
}

// Clone is a deep copy.
func (l RunnerLength) Clone() RunnerLength {
	l.Screws = slices.Clone(l.Screws)
	return l
}

// Clone is a deep copy.
func (d DrawerHeight) Clone() DrawerHeight {
	d.Holes = slices.Clone(d.Holes)
	d.RailHoles = slices.Clone(d.RailHoles)
	d.More = slices.Clone(d.More)
	return d
}
