// Package model is the document: what the user said, and nothing that can be
// worked out from it. All lengths are exact (see model/length).
package model

import (
	"frontlay/model/length"
	"frontlay/model/message"
)

// Project is one document: a run of cabinets, its boards, hardware sheets and
// notes. Projects are values to the rest of the program: an edit copies one
// (Clone) and changes the copy.
type Project struct {
	Title string
	// Number, Client, DrawnBy and Revision tell papers of one job from those of
	// another, and an older drawing from a newer one.
	Number, Client, DrawnBy, Revision string

	Notes    string
	Unit     length.Unit
	Rounding Rounding
	Hardware []HardwareUse // the first is used where a bay names none
	Boards   Boards
	Board    string // front board of all that have no other: a name in Boards.Fronts; empty: PlainBoard
	Reveals  Reveals
	HoleRows HoleRows
	Saw      Saw
	Climate  Climate
	Process  *Process  // how exactly things are made; nil: it was not asked
	Species  []Species // with coefficients of their own, before those of the Handbook
	Matched  string    // of all bays that have no other
	Handle   *Handle   // of all drawers that have no other; nil: none
	Checks   Checks
	Cabinets []Cabinet // left to right
	// SharedGaps tells that fronts of neighbouring cabinets keep one Gap
	// between them, instead of the edge reveals of both.
	SharedGaps bool
	// OnePlinth tells that one plinth board runs under cabinets that stand side by side
	// with plinths that are alike.
	OnePlinth bool
	// Niche is what the tape said of the niche that the whole run stands in; nil: in none.
	Niche *Measured
	// TippingLoad is laid on the edge of an open drawer, in kg; 0: UsualEdgeLoad.
	TippingLoad float64
}

// Rounding says how computed front heights are rounded. Step is 1 mm where it
// is zero. Where a stack is no whole number of steps, the front at the end named
// by Rest takes the odd rest; fronts with a height of their own keep it.
type Rounding struct {
	Step length.Length
	Rest RestTo
}

// RestTo names the front of a stack that takes the odd rest.
type RestTo uint8

// The ends that can take the odd rest of a division.
const (
	RestBottom RestTo = iota
	RestTop
)

// Boards are the sheet goods of the project. Fronts are front boards beside Front, the
// plain one, each with its name.
type Boards struct {
	Carcass, Front, Back Board
	Fronts               []FrontBoard
}

// Board is one kind of sheet: thickness, density in kg/m³ (0: not given),
// material, and grain direction ("horizontal", "vertical" or ""). Lipping is the
// thickness of a lipping glued to the edges that Edging names, 0 for none; the cut size
// is less by it. Species names the wood of a solid board, empty: it is none and does not
// move; Sawn is its cut. Price is that of a square metre, in whatever money; 0: not given.
type Board struct {
	Thickness length.Length
	Lipping   length.Length
	Edging    Edging
	Density   float64
	Material  string
	Grain     string
	Species   string
	Sawn      Sawn
	Stock     Stock
	Price     float64
}

// Stock is the size in which a board is bought: Length in the direction of its
// grain, Width across; both 0 where it is not given. Plain tells that it has no
// grain, so that parts may lie either way.
type Stock struct {
	Length, Width length.Length
	Plain         bool
}

// Saw is how stock sheets are cut: Kerf is what each cut turns to dust, Trim what is
// cut off each edge of a sheet before anything else.
type Saw struct{ Kerf, Trim length.Length }

// Reveals are the visible gaps. Left, Right, Top and Bottom are edge reveals:
// for overlay fronts from the carcass's outline inwards, for inset fronts from
// the opening inwards. Gap is between two fronts, zero or more; an edge reveal below
// zero is how far overlay fronts reach past the outline.
type Reveals struct {
	Left, Right, Top, Bottom, Gap length.Length
}

// Mount tells whether fronts lie over the carcass edges or in the opening.
type Mount uint8

// The two ways a front sits on a carcass.
const (
	Overlay Mount = iota
	Inset
)

// Matched of a project, cabinet or bay tells which fronts are cut from one board in
// order, so that the grain runs from each into the next: none, those of a stack, those
// of a row through the run. Empty: what is around says so.
const (
	NotMatched     = "none"
	MatchedUpright = "vertical"
	MatchedAcross  = "horizontal"
)

// Cabinet is one carcass. Height is the carcass alone; the plinth stands below
// it. Width is the outside, Depth from the front edge of the side to the back of
// the cabinet, the back board's thickness included. Plinth is how high the carcass stands
// above the floor, whatever on.
type Cabinet struct {
	Name    string
	Width   length.Length
	Height  length.Length
	Depth   length.Length
	Plinth  length.Length
	Base    Base
	Back    BackFit
	Rail    Rail // between its inset fronts
	Mount   Mount
	Board   string        // front board; empty: the project's
	Matched string        // empty: the project's
	Handle  *Handle       // of its drawers; nil: the project's
	Reveals *Reveals      // nil: the project's
	Worktop length.Length // thickness of a worktop on the carcass; 0: none
	Channel Channel       // a finger-pull channel at the top that fronts stay below, from where they are measured downwards: the outline, or the opening for inset fronts
	Left    Beside        // the left side, and what stands there
	Right   Beside
	Bays    []Bay // left to right
}

// Channel is a finger-pull channel: a recess behind a gap, so that fingers reach behind
// the front below it. Height is from its upper edge, where the front above begins,
// down; 0: none. Depth is from the carcass's front edge to a board that closes it at
// the back; 0: it has none of the carcass's boards, such as a bought profile.
type Channel struct {
	Height, Depth length.Length
}

// Beside is a side of a cabinet, and what stands there: an end panel, then a filler,
// then perhaps a wall or a corner. Projection is how far something at the wall
// (a door casing, the handles of a run round the corner) reaches into the way of
// an opening drawer, from the wall towards the cabinet; 0: nothing does.
type Beside struct {
	Side       length.Length // thickness of the cabinet's own side; 0: the carcass board's
	EndPanel   length.Length // thickness; 0: none
	Filler     length.Length // width; 0: none
	Wall       bool
	Projection length.Length
}

// Bay is a clear opening between sides or partitions with one stack of fronts.
// Width is the clear inside width; where it is zero the bay takes a share of
// what the fixed ones leave (Share, 1 where it is zero).
type Bay struct {
	Hardware  string // name in Project.Hardware; empty: the first
	Width     length.Length
	Share     float64
	Partition length.Length // the partition at this bay's right; 0: the carcass board
	Division  Division
	Matched   string    // empty: the cabinet's
	Packing   Packing   // beside its drawers' runners
	Measured  *Measured // its opening in a carcass that is there; nil: it is built as planned
	Fronts    []Front   // bottom to top
}

// Division is the rule by which fronts without a height of their own share what
// is left of a stack.
type Division struct {
	Rule  DivisionRule
	Step  length.Length // DivideStep: each front is taller by this than the one above it
	Ratio float64       // DivideRatio: each front is taller by this factor than the one above it
}

// DivisionRule names a rule of division.
type DivisionRule uint8

// The rules: by each front's share, all equal, growing downwards by a step
// (arithmetic), growing downwards by a ratio (geometric).
const (
	DivideShares DivisionRule = iota
	DivideEqual
	DivideStep
	DivideRatio
)

// Kind is what stands at a place in the stack.
type Kind uint8

// The kinds of things that a stack is made of.
const (
	DrawerFront Kind = iota
	FixedPanel
	OpenNiche
	Door // covers inner drawers, or none
)

// Hinged tells at which side of a door its hinges are, seen from the room.
type Hinged uint8

// The sides of a door.
const (
	HingedLeft Hinged = iota
	HingedRight
)

// DrawerAuto asks for the tallest drawer that fits.
const DrawerAuto = "auto"

// Front is one place in the stack. Height, from front line to front line, or
// between the boards around an open niche where Clear is set, is fixed where above
// zero;
// otherwise the front takes a share of what is left (Share, 1 where zero).
// Drawer names a drawer height of the hardware sheet, DrawerAuto (also "") the
// tallest that fits. Drop is nil for the drop the layout works out.
type Front struct {
	Name     string
	Kind     Kind
	Height   length.Length
	Clear    bool // Height is clear, between the boards of an open niche
	Share    float64
	Least    length.Length // least height of a computed front; 0: none
	Greatest length.Length // greatest height of a computed front; 0: none
	Locked   bool          // edits and the hole rows leave its fixed height alone
	LineUp   *LineUp       // its top edge is level with another front's edge
	Span     int           // how many bays it spans, to the right; 0 and 1: its own
	Board    string        // front board; empty: the cabinet's
	Hardware string        // sheet name; empty: the bay's
	Drawer   string
	Runner   length.Length // runner length asked for; 0: the longest that fits
	Drop     *length.Length
	Cover    length.Length  // the least cover asked for, 0 or more
	GapAbove *length.Length // visible gap above it; nil: its channel's height, or else the cabinet's gap
	Channel  Channel        // a finger-pull channel in the gap above it
	Rail     *Rail          // the rail above an inset front; nil: the cabinet's
	Contents Contents
	Inner    []InnerDrawer // behind it, bottom to top
	Packing  *Packing      // beside the runners of all drawers behind it; nil: the bay's
	Hinged   Hinged        // of a door
	Handle   *Handle       // nil: a drawer's is the cabinet's
	AsBuilt  *AsBuilt      // the gaps around it when it is hung; nil: not measured
}

// LineUp asks for a front's top edge to be level with an edge of another front,
// named by its cabinet, the number of its bay (from 1) and its name, or its
// number in the stack (from 1 at the bottom) where it has none. Bottom tells
// that it is the other front's bottom edge.
type LineUp struct {
	Cabinet string
	Bay     int
	Front   string
	Bottom  bool
}

// Contents is what a drawer is to hold: the height above the drawer bottom's
// upper face and the weight in kg; 0 where not given.
type Contents struct {
	Height length.Length
	Weight float64
}

// RoundingStep is the step to which computed heights are rounded: the project's,
// or 1 mm, or 1/32 inch in a project in inches.
func (p *Project) RoundingStep() length.Length {
	switch {
	case p.Rounding.Step > 0:
		return p.Rounding.Step
	case p.Unit.Inches():
		return 2 * length.Inch64th
	default:
		return length.Millimetre
	}
}

// Place names a thing in a project by its indexes from 0; -1 where the place is
// wider than that (a whole bay, cabinet, or the project).
type Place struct {
	Cabinet, Bay, Front int
}

// Whole is the place of the project as a whole.
var Whole = Place{-1, -1, -1}

// Clone is a deep copy, hardware sheets excepted: those are shared and never
// changed in place.
func (p *Project) Clone() *Project {
	c := *p
	c.Hardware = append([]HardwareUse(nil), p.Hardware...)
	c.Boards.Fronts = append([]FrontBoard(nil), p.Boards.Fronts...)
	c.Species = append([]Species(nil), p.Species...)
	c.Checks = p.Checks.Clone()
	c.Handle = p.Handle.clone()
	c.Process = p.Process.clone()
	c.Niche = p.Niche.clone()
	c.Cabinets = append([]Cabinet(nil), p.Cabinets...)
	for i := range c.Cabinets {
		cab := &c.Cabinets[i]
		if cab.Reveals != nil {
			r := *cab.Reveals
			cab.Reveals = &r
		}
		cab.Handle = cab.Handle.clone()
		cab.Bays = append([]Bay(nil), cab.Bays...)
		for j := range cab.Bays {
			cab.Bays[j] = cab.Bays[j].Clone()
		}
	}
	return &c
}

// Clone is a deep copy of a bay.
func (b Bay) Clone() Bay {
	b.Measured = b.Measured.clone()
	b.Fronts = append([]Front(nil), b.Fronts...)
	for i := range b.Fronts {
		b.Fronts[i] = b.Fronts[i].Clone()
	}
	return b
}

// Clone is a deep copy of a front.
func (f Front) Clone() Front {
	if f.Drop != nil {
		d := *f.Drop
		f.Drop = &d
	}
	if f.GapAbove != nil {
		g := *f.GapAbove
		f.GapAbove = &g
	}
	if f.Rail != nil {
		r := *f.Rail
		f.Rail = &r
	}
	f.Inner = append([]InnerDrawer(nil), f.Inner...)
	if f.Packing != nil {
		k := *f.Packing
		f.Packing = &k
	}
	if f.LineUp != nil {
		l := *f.LineUp
		f.LineUp = &l
	}
	f.Handle = f.Handle.clone()
	f.AsBuilt = f.AsBuilt.clone()
	return f
}

// FrontAt gives the front at a place, nil where there is none.
func (p *Project) FrontAt(at Place) *Front {
	b := p.BayAt(at)
	if b == nil || at.Front < 0 || at.Front >= len(b.Fronts) {
		return nil
	}
	return &b.Fronts[at.Front]
}

// BayAt gives the bay at a place, nil where there is none.
func (p *Project) BayAt(at Place) *Bay {
	c := p.CabinetAt(at)
	if c == nil || at.Bay < 0 || at.Bay >= len(c.Bays) {
		return nil
	}
	return &c.Bays[at.Bay]
}

// CabinetName says which cabinet a place is in: its name, or its number in the run where it
// has none.
func (p *Project) CabinetName(at Place) message.Message {
	if c := p.CabinetAt(at); c != nil && c.Name != "" {
		return message.New("%v", c.Name)
	}
	return message.New("cabinet %v", at.Cabinet+1)
}

// CabinetAt gives the cabinet at a place, nil where there is none.
func (p *Project) CabinetAt(at Place) *Cabinet {
	if at.Cabinet < 0 || at.Cabinet >= len(p.Cabinets) {
		return nil
	}
	return &p.Cabinets[at.Cabinet]
}

// RevealsOf gives the reveals that hold for a cabinet.
func (p *Project) RevealsOf(c *Cabinet) Reveals {
	if c.Reveals != nil {
		return *c.Reveals
	}
	return p.Reveals
}

// GapAbove gives what is between the front at a place and what is above it: the visible gap,
// which is its own, or else the height of its channel, or else the cabinet's gap; with a
// rail there, the rail and that gap at both its edges.
func (p *Project) GapAbove(at Place) length.Length {
	gap := p.RevealsOf(p.CabinetAt(at)).Gap
	if f := p.FrontAt(at); f != nil {
		gap = f.ownGap(gap)
	}
	if r := p.RailAbove(at); r.Height > 0 {
		gap = gap + r.Height + gap
	}
	return gap
}

// ownGap is the gap above a front: its own, or else its channel's, or else usual.
func (f *Front) ownGap(usual length.Length) length.Length {
	switch {
	case f.GapAbove != nil:
		return *f.GapAbove
	case f.Channel.Height > 0:
		return f.Channel.Height
	}
	return usual
}

// TopReveal gives what the highest front of the bay at a place keeps from where fronts
// are measured at the top: its own gap, or else the cabinet's reveal.
func (p *Project) TopReveal(at Place) length.Length {
	top := p.RevealsOf(p.CabinetAt(at)).Top
	if b := p.BayAt(at); b != nil && len(b.Fronts) > 0 {
		top = b.Fronts[len(b.Fronts)-1].ownGap(top)
	}
	return top
}

// SheetFor gives the hardware sheet of a bay, nil where the name is unknown or
// the project has none.
func (p *Project) SheetFor(b *Bay) *HardwareSheet {
	for i := range p.Hardware {
		if p.Hardware[i].Name == b.Hardware || b.Hardware == "" {
			return p.Hardware[i].Sheet
		}
	}
	return nil
}
