package model

import (
	"maps"

	"frontlay/model/length"
	"frontlay/model/message"
)

// HoleRows describe the rows of holes in the carcass sides. Datum is from the
// carcass's lower edge to the first row. Zero fields stand for the trade's
// custom: pitch 32 mm, setback 37 mm from the front edge, or from behind inset fronts.
type HoleRows struct {
	Mode    RowMode
	Pitch   length.Length
	Datum   length.Length
	Setback length.Length
}

// RowMode tells whether runners must fall on hole rows, and what gives way.
type RowMode uint8

// The modes: rows do not matter; fronts stay as drawn and runners move up to the
// next row; fronts are chosen so that runners fall on rows with the least change.
const (
	RowsFree RowMode = iota
	RowsMoveRunners
	RowsMoveFronts
)

// The trade's customary figures of the 32 mm system (common practice, no
// source); both can be changed in the project.
const (
	UsualPitch   = 32 * length.Millimetre
	UsualSetback = 37 * length.Millimetre
)

// Filled gives the rows with the customary figures where the project has none.
func (r HoleRows) Filled() HoleRows {
	if r.Pitch <= 0 {
		r.Pitch = UsualPitch
	}
	if r.Setback <= 0 {
		r.Setback = UsualSetback
	}
	return r
}

// Checks are the project's settings of the check. Severity maps a rule's name
// to "error", "warning", "advice" or "off"; Limits maps the keys of limits to
// what the project sets instead of the usual.
type Checks struct {
	Severity map[string]string
	Limits   map[string]length.Length
	Accepted []Accepted
}

// Accepted is a finding that the user has accepted, with the reason. It is told
// by its rule and its place in words: the cabinet's name, the bay's number (from
// 1) and the front's name or number in the stack; empty and 0 where the finding
// is about more than that. A cabinet or front whose name is empty or given twice
// is told by its number, from 1. Short is how far the figure was off when it was
// accepted: one that is further off is told again; 0 accepts any.
type Accepted struct {
	Rule    string
	Cabinet string
	Bay     int
	Front   string
	Short   length.Length
	Reason  string
}

// Clone is a deep copy.
func (c Checks) Clone() Checks {
	c.Severity = maps.Clone(c.Severity)
	c.Limits = maps.Clone(c.Limits)
	c.Accepted = append([]Accepted(nil), c.Accepted...)
	return c
}

// Limit is a length that a rule of the check compares with and that a project
// can set, from Least to Greatest. Usual holds where the project sets none; where
// that is not one figure, Unset says it in words.
type Limit struct {
	Key      string          // its name in a project file
	Title    message.Message // what it bounds, to be read after a colon
	Usual    length.Length
	Unset    message.Message
	Least    length.Length
	Greatest length.Length
	NotAbove string // key of a limit that this one must not be above, where a project sets both
	NotBelow string // key of one that it must not be below
}

// In is what holds in a project.
func (l Limit) In(p *Project) length.Length {
	if v, set := p.Checks.Limits[l.Key]; set {
		return v
	}
	return l.Usual
}
