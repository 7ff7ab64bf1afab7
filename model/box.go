package model

import "frontlay/model/length"

// BoxFigures are those of a wooden drawer box that is built for its runners; Sides of 0
// means that there is none, and that the drawer is the maker's. The bottom's thickness
// and underside are those of BottomFigures, the back's thickness is that of BackFigures.
// The box is as wide as the side clearances leave it, as long as its runner less
// Shorter, and starts with it.
type BoxFigures struct {
	Sides        length.Length // thickness
	Front        length.Length // thickness of the inner front, which the front is screwed to
	Corners      Corners
	Joint        length.Length // how far what stands between reaches into what runs through, at each end
	Bottom       BoxBottom
	GrooveDepth  length.Length
	GrooveHeight length.Length // lower edge of the sides up to the bottom's underside
	Shorter      length.Length
	Material     string  // of sides, inner front and back; empty: the sheet's name
	Density      float64 // likewise in kg/m³; 0: not known
	BottomBoard  string  // material of the bottom
	BottomWeighs float64 // its density in kg/m³
}

// Like gives the board of the project of which a part of a box is cut: of its material and
// thickness, and not of another density; false where there is none. The part's density
// counts where the board has none.
func (b *Boards) Like(thickness length.Length, material string, density float64) (Board, bool) {
	all := []Board{b.Carcass, b.Front, b.Back}
	for i := range b.Fronts {
		all = append(all, b.Fronts[i].Board)
	}
	for _, c := range all {
		if material == "" || c.Material != material || c.Thickness != thickness || c.Density > 0 && density > 0 && c.Density != density {
			continue
		}
		if c.Density == 0 {
			c.Density = density
		}
		return c, true
	}
	return Board{}, false
}

// Corners tells how the corners of a wooden box are put together.
type Corners uint8

// What runs through at the corners of a box.
const (
	SidesThrough  Corners = iota // inner front and back stand between the sides
	FrontsThrough                // the sides stand between inner front and back
)

// BoxBottom tells how the bottom of a wooden box is held.
type BoxBottom uint8

// How the bottom of a box is held.
const (
	UnderBack    BoxBottom = iota // in grooves of sides and inner front, pushed in below the back
	AllRound                      // in grooves of all four
	BottomLaidOn                  // from below, as large as the box
)

// Wooden tells that the drawer is a wooden box of which the sheet has the figures.
func (s *HardwareSheet) Wooden() bool { return s.Box.Sides > 0 }

// SideLower is from the runner's lower edge up to the lower edge of a box's sides.
func (s *HardwareSheet) SideLower() length.Length {
	if s.Box.Bottom == BottomLaidOn {
		return s.Bottom.Underside + s.Bottom.Thickness
	}
	return s.Bottom.Underside - s.Box.GrooveHeight
}

// Lowest is the lowest part of drawer and runner above the runner's lower edge, 0 or
// below: the bottom's underside, or the sides of a wooden box.
func (s *HardwareSheet) Lowest() length.Length {
	if s.Wooden() {
		return min(0, s.Bottom.Underside, s.SideLower())
	}
	return min(0, s.Bottom.Underside)
}

// BottomDeducts is how much less the drawer bottom is than the bay's inside width, and
// than the runner's length. That of a wooden box follows from its figures: between the
// grooves, or as large as the box.
func (s *HardwareSheet) BottomDeducts() (width, long length.Length) {
	b := &s.Box
	if !s.Wooden() {
		return s.Bottom.DeductWidth, s.Bottom.DeductLength
	}
	width, long = 2*s.SideClearance, b.Shorter
	switch b.Bottom {
	case UnderBack:
		return width + 2*(b.Sides-b.GrooveDepth), long + b.Front - b.GrooveDepth
	case AllRound:
		return width + 2*(b.Sides-b.GrooveDepth), long + b.Front + s.Back.Thickness - 2*b.GrooveDepth
	}
	return width, long
}

// SideAtFront is the thickness of a drawer side where it meets the front: what the
// sheet's figures leave between the drawer's outside and its back, or that of a wooden box
// whose sides run through; 0 where an inner front hides its ends.
func (s *HardwareSheet) SideAtFront() length.Length {
	switch {
	case !s.Wooden():
		return s.Back.DeductWidth/2 - s.SideClearance
	case s.Box.Corners == FrontsThrough:
		return 0
	}
	return s.Box.Sides
}

// BackDeducts is how much less the drawer back is than the bay's inside width; that of
// a wooden box follows from its figures.
func (s *HardwareSheet) BackDeducts() length.Length {
	if !s.Wooden() {
		return s.Back.DeductWidth
	}
	if s.Box.Corners == FrontsThrough {
		return 2 * s.SideClearance
	}
	return 2 * (s.SideClearance + s.Box.Sides - s.Box.Joint)
}
