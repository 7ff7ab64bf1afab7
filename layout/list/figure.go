package list

import (
	"strings"

	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// makersLength is a figure of a hardware sheet. Drills and runners are bought in
// the sheet's unit: where that is metric and the project is in inches, or the
// other way round, it is written in both.
type makersLength struct {
	length.Length
	unit length.Unit
}

// Say writes the length in the sheet's unit and, where the project counts in the
// other system, the project's after it.
func (m makersLength) Say(l message.Language) string {
	if inches(m.unit) == inches(l.Unit) {
		return l.Length(m.Length)
	}
	own := l
	own.Unit = m.unit
	return own.Length(m.Length) + " (" + l.Length(m.Length) + ")"
}

func inches(u length.Unit) bool { return u == length.UnitInch || u == length.UnitInchDecimal }

// drillFigure writes a diameter or depth that comes from the front's hardware
// sheet. In the project's own system, and in files, it is a plain figure.
func drillFigure(l length.Length, f *plan.Front, say Speaker, forFiles bool) string {
	if forFiles || f.Sheet == nil || inches(f.Sheet.Unit) == inches(say.Unit) {
		return say.Figure(l)
	}
	return makersLength{l, f.Sheet.Unit}.Say(say)
}

// unitWord names a unit where it stands in a sentence.
func unitWord(u length.Unit) message.Message {
	if inches(u) {
		return message.New("inches")
	}
	return message.New("%v", u.Symbol())
}

// noteRounded says below a table what ≈ stands for, where it has any.
func (t *Table) noteRounded(say Speaker) {
	for _, r := range t.Rows {
		for _, c := range r.Cells {
			if strings.Contains(c, "≈") {
				t.Notes = append(t.Notes, say.Say(message.New("≈ figures are rounded; the template is exact.")))
				return
			}
		}
	}
}
