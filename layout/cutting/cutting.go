// Package cutting lays parts on stock sheets so that a saw that cuts from edge to
// edge (a panel saw, a track saw with its rail) can part them, and says in which
// order it cuts. It knows sizes and grain only: what the parts are is its caller's.
//
// Frame of a sheet: origin at its lower left corner before it is trimmed, x along
// its length, in which its grain runs, y across.
package cutting

import (
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// Stock is one size of sheet. Trim is what is cut off each of its four edges
// before anything else, as edges from the factory are bruised; Kerf is what the saw
// turns to dust in each cut. Both may be zero.
type Stock struct {
	Length, Width length.Length
	Kerf, Trim    length.Length
}

// Inside is what is left of a sheet when it is trimmed; it may be empty.
func (s Stock) Inside() plane.Rect {
	return plane.R(s.Trim, s.Trim, s.Length-s.Trim, s.Width-s.Trim)
}

// Part is a rectangle to cut. Along is its size along the grain, Across the other;
// where Turns is true its grain does not matter and it may lie either way.
type Part struct {
	Along, Across length.Length
	Turns         bool
}

// Plan says what is cut from which sheet. TooLarge are the parts, by their place
// in the list, that are larger than a trimmed sheet, or have no size: they lie
// nowhere, all others on exactly one sheet.
type Plan struct {
	Stock    Stock
	Sheets   []*Piece
	TooLarge []int
}

// Piece is a piece of a sheet: what a cut parts in two, a part, or what is left
// over. The first of a sheet is what trimming leaves of it.
type Piece struct {
	Area plane.Rect
	Cut  *Cut
	Part int // place in the list of parts; -1: none
}

// Cut parts a piece from edge to edge. At is where the blade's near side runs, in
// the sheet's frame: along x where it is Upright, else along y. Near is the piece
// before the blade, Far what lies behind it; Far is nil where the blade is as wide
// as what was left. Number says when it is made, from 1 on each sheet; the cuts that trim the sheet
// come before.
type Cut struct {
	Upright   bool
	At        length.Length
	Near, Far *Piece
	Number    int
}

// Placed is where a part lies. Turned tells that its grain runs across the sheet's.
type Placed struct {
	Part   int
	Area   plane.Rect
	Turned bool
}

// Walk visits a piece and everything that is cut from it, in the order of cutting.
func (p *Piece) Walk(visit func(*Piece)) {
	if p == nil {
		return
	}
	visit(p)
	if p.Cut != nil {
		p.Cut.Near.Walk(visit)
		p.Cut.Far.Walk(visit)
	}
}

// Parts are the parts that are cut from a piece, in the order of cutting.
func (p *Piece) Parts(parts []Part) []Placed {
	var all []Placed
	p.Walk(func(q *Piece) {
		if q.Part >= 0 {
			part := parts[q.Part]
			turned := part.Along != q.Area.Width() || part.Across != q.Area.Height()
			all = append(all, Placed{Part: q.Part, Area: q.Area, Turned: turned})
		}
	})
	return all
}

// Offcuts are what is left over of a piece when all its parts are cut from it.
func (p *Piece) Offcuts() []plane.Rect {
	var all []plane.Rect
	p.Walk(func(q *Piece) {
		if q.Part < 0 && q.Cut == nil {
			all = append(all, q.Area)
		}
	})
	return all
}

// Cuts are the cuts of a piece with what each parts, in their order.
func (p *Piece) Cuts() []*Piece {
	var all []*Piece
	p.Walk(func(q *Piece) {
		if q.Cut != nil {
			all = append(all, q)
		}
	})
	return all
}

// number numbers the cuts in their order.
func (p *Piece) number() {
	for i, q := range p.Cuts() {
		q.Cut.Number = i + 1
	}
}
