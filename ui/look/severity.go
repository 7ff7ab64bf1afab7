package look

import (
	"image/color"

	"frontlay/layout/drawing"
)

// Severity gives the sign that stands for a severity without colour, and the
// colour of its texts and marks.
func (p Palette) Severity(s drawing.Severity) (string, color.NRGBA) {
	switch s {
	case drawing.OfWarning:
		return "!", p.Warning
	case drawing.OfAdvice:
		return "i", p.Advice
	case drawing.OfAccepted:
		return "o", p.Soft
	default:
		return "×", p.Error
	}
}

// TagPen gives the pen of a mark with its severity, where it is a finding's.
func (p Palette) TagPen(t drawing.Tag) Pen {
	pen := p.Pen(t.Meaning)
	if t.Meaning == drawing.Shortfall || t.Meaning == drawing.FindingMark {
		const wash = 0x30
		_, c := p.Severity(t.Severity)
		pen.Line, pen.Surface = c, faded(c, wash)
	}
	return pen
}
