package model

import "frontlay/model/length"

// Measured is what a tape, a plumb line and a level said of an opening that is there: the
// bay of an existing carcass, or the niche that a whole run stands in. All sizes are clear,
// as seen from the room; 0, or nil where 0 can be measured, tells that one was not taken.
//
// Plumb is how far the upper end of a side lies to the right of its lower end, Level how
// far the right end of the bottom lies above its left end; both are below zero the other
// way. Back are widths behind, where the back board is or the runners end.
type Measured struct {
	Widths  MeasuredWidths
	Heights MeasuredHeights
	// Rising is the diagonal from the lower left corner to the upper right one, Falling the
	// one from the upper left corner to the lower right one.
	Rising, Falling       length.Length
	PlumbLeft, PlumbRight *length.Length
	Level                 *length.Length
	Back                  MeasuredWidths
	Within                length.Length // how far each figure may be off either way; 0: UsualWithin
}

// MeasuredWidths are clear widths at three heights.
type MeasuredWidths struct{ Bottom, Middle, Top length.Length }

// MeasuredHeights are clear heights at three places across.
type MeasuredHeights struct{ Left, Middle, Right length.Length }

// UsualWithin is how far a figure read off a tape to the whole millimetre may be off: half
// of that (computed); what the tape itself adds is the maker's to tell.
const UsualWithin = length.Millimetre / 2

// Tape is how far each figure may be off either way.
func (m *Measured) Tape() length.Length {
	if m.Within > 0 {
		return m.Within
	}
	return UsualWithin
}

// clone is a copy of its own; nil of nil.
func (m *Measured) clone() *Measured {
	if m == nil {
		return nil
	}
	c := *m
	c.PlumbLeft, c.PlumbRight, c.Level = copied(c.PlumbLeft), copied(c.PlumbRight), copied(c.Level)
	return &c
}
