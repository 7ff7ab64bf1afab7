package field

import "fyne.io/fyne/v2"

// NewLines makes a field for several lines, of which rows are seen. Enter begins
// a line; leaving the field takes what was typed.
func NewLines(s Source, rows int) *Entry {
	e := NewEntry(s)
	e.MultiLine, e.Wrapping = true, fyne.TextWrapWord
	e.SetMinRowsVisible(rows)
	return e
}

// AcceptsTab lets Tab leave the field, also one of several lines.
func (e *Entry) AcceptsTab() bool { return false }
