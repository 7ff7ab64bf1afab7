// Package model is the document: what the user said, and nothing that can be
// worked out from it. All lengths are exact (see model/length).
package model

import "frontlay/model/length"

// Project is one document: a run of cabinets, its boards, hardware sheets and
// notes. Projects are values to the rest of the program: an edit copies one
// (Clone) and changes the copy.
type Project struct {
	Title    string
	Notes    string
	Unit     length.Unit
	Rounding Rounding
	Hardware []HardwareUse // the first is used where a bay names none
	Boards   Boards
	Reveals  Reveals
	Cabinets []Cabinet // left to right
}

// Rounding says how computed front heights are rounded. Step is 1 mm where it
// is zero. What is left of an opening after whole steps goes to the front at
// the end named by Rest.
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

// Boards are the sheet goods of the project.
type Boards struct {
	Carcass, Front, Back Board
}

// Board is one kind of sheet: thickness, density in kg/m³ (0: not given),
// material, and grain direction ("horizontal", "vertical" or "").
type Board struct {
	Thickness length.Length
	Density   float64
	Material  string
	Grain     string
}

// Reveals are the visible gaps. Left, Right, Top and Bottom are edge reveals:
// for overlay fronts from the carcass's outline inwards, for inset fronts from
// the opening inwards. Gap is between two fronts. All are zero or more.
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

// Cabinet is one carcass. Height is the carcass alone; the plinth stands below
// it. Width is the outside, Depth from the front edge of the side to the back of
// the cabinet, the back board's thickness included.
type Cabinet struct {
	Name    string
	Width   length.Length
	Height  length.Length
	Depth   length.Length
	Plinth  length.Length
	Mount   Mount
	Reveals *Reveals // nil: the project's
	Bays    []Bay    // left to right
}

// Bay is a clear opening between sides or partitions with one stack of fronts.
// Width is the clear inside width; where it is zero the bay takes a share of
// what the fixed ones leave (Share, 1 where it is zero).
type Bay struct {
	Hardware  string // name in Project.Hardware; empty: the first
	Width     length.Length
	Share     float64
	Partition length.Length // the partition at this bay's right; 0: the carcass board
	Fronts    []Front       // bottom to top
}

// Kind is what stands at a place in the stack.
type Kind uint8

// The kinds of things that a stack is made of.
const (
	DrawerFront Kind = iota
	FixedPanel
	OpenNiche
)

// DrawerAuto asks for the tallest drawer that fits.
const DrawerAuto = "auto"

// Front is one place in the stack. Height is fixed where it is above zero;
// otherwise the front takes a share of what is left (Share, 1 where zero).
// Drawer names a drawer height of the hardware sheet, DrawerAuto (also "") the
// tallest that fits. Drop is nil for the drop the layout works out.
type Front struct {
	Name   string
	Kind   Kind
	Height length.Length
	Share  float64
	Drawer string
	Drop   *length.Length
	Cover  length.Length // the least cover asked for, 0 or more
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
	c.Cabinets = append([]Cabinet(nil), p.Cabinets...)
	for i := range c.Cabinets {
		cab := &c.Cabinets[i]
		if cab.Reveals != nil {
			r := *cab.Reveals
			cab.Reveals = &r
		}
		cab.Bays = append([]Bay(nil), cab.Bays...)
		for j := range cab.Bays {
			cab.Bays[j] = cab.Bays[j].Clone()
		}
	}
	return &c
}

// Clone is a deep copy of a bay.
func (b Bay) Clone() Bay {
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
