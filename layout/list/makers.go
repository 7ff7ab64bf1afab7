package list

import (
	"strings"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// MakersLength is a figure of a hardware sheet. Drills and runners are bought in
// the sheet's unit: where that is metric and the project is in inches, or the
// other way round, it is written in both.
type MakersLength struct {
	Length length.Length
	Sheet  *model.HardwareSheet // nil: it is of no sheet, and the project's unit alone counts
}

// Say writes the length in the sheet's unit and, where the project counts in the
// other system, the project's after it.
func (m MakersLength) Say(l message.Language) string {
	if !m.foreign(l) {
		if s := m.Own(l); s != l.Figure(m.Length) {
			return s
		}
		return l.Length(m.Length)
	}
	return m.Own(l) + " (" + l.Length(m.Length) + ")"
}

// Own writes the length where there is little room: in the sheet's unit, with its
// symbol, where the project counts in the other system; else as a plain figure.
func (m MakersLength) Own(l message.Language) string {
	if !m.foreign(l) {
		if m.Sheet != nil {
			return l.Typed(m.Length) // 5 mm among inches, where that was typed
		}
		return l.Figure(m.Length)
	}
	l.Unit = m.Sheet.Unit
	return l.Length(m.Length)
}

func (m MakersLength) foreign(l message.Language) bool {
	return m.Sheet != nil && m.Sheet.Unit.Inches() != l.Unit.Inches()
}

// Rounded says what ≈ before a figure means.
func Rounded() message.Message { return message.New("≈ figures are rounded; the template is exact.") }

// InInches tells that lengths are said in inches, where most figures of metric
// parts are rounded.
func InInches(say Speaker) bool { return say.Unit.Inches() }

// drillFigure writes a diameter or depth that comes from the front's hardware
// sheet. In the project's own system, and in files, it is a plain figure.
func drillFigure(l length.Length, f *plan.Front, say Speaker, forFiles bool) string {
	m := MakersLength{l, f.Sheet}
	if forFiles || !m.foreign(say) {
		return say.Figure(l)
	}
	return m.Say(say)
}

// UnitWord names a unit where it stands in a sentence.
func UnitWord(u length.Unit) message.Message {
	if u.Inches() {
		return message.New("inches")
	}
	return message.New("%v", u.Symbol())
}

// noteRounded says below a table what ≈ stands for, where it has any.
func (t *Table) noteRounded(say Speaker) {
	for _, r := range t.Rows {
		for _, c := range r.Cells {
			if strings.Contains(c, "≈") {
				t.Notes = append(t.Notes, say.Say(Rounded()))
				return
			}
		}
	}
}
