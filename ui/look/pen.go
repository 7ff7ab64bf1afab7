package look

import (
	"image/color"

	"frontlay/layout/drawing"
)

// Pen is how a mark of a meaning is drawn: the colour and width of its lines,
// in screen units, and the colour of its surface.
type Pen struct {
	Line    color.NRGBA
	Width   float32
	Surface color.NRGBA // for filled marks; no alpha: none
}

// Pen gives the pen of a meaning.
func (p Palette) Pen(m drawing.Meaning) Pen {
	switch m {
	case drawing.Carcass, drawing.Plinth:
		return Pen{p.Ink, 1, p.Birch}
	case drawing.Face:
		return Pen{p.Ink, 1.5, p.Maple}
	case drawing.PanelPart:
		return Pen{p.Ink, 1.5, p.FixedPanel}
	case drawing.NichePart:
		return Pen{p.Soft, 1, p.Niche}
	case drawing.Hidden, drawing.DrawerPart:
		return Pen{p.Hidden, 1, color.NRGBA{}}
	case drawing.DrawerBottom:
		return Pen{p.BottomEdge, 1.5, p.DrawerBottom}
	case drawing.RunnerPart:
		return Pen{p.Hidden, 1, faded(p.Hidden, 0x50)}
	case drawing.HoleEdge:
		return Pen{p.Ink, 1.2, color.NRGBA{}}
	case drawing.HoleCross, drawing.CentreLine:
		return Pen{p.Soft, 0.8, color.NRGBA{}}
	case drawing.DimensionLine:
		return Pen{p.Soft, 0.8, color.NRGBA{}}
	case drawing.CoverBand:
		return Pen{p.Good, 0.8, p.Cover}
	case drawing.OverlayBand:
		if p.Flat { // its surface is that of the front
			return Pen{p.Hidden, 0.6, p.Birch}
		}
		return Pen{color.NRGBA{}, 0, p.Birch}
	case drawing.Covered:
		return Pen{p.Good, 0, faded(p.Good, 0x70)}
	case drawing.Tint:
		return Pen{color.NRGBA{}, 0, p.AccentTint}
	case drawing.FindingMark:
		return Pen{p.Error, 1.2, faded(p.Error, 0x30)}
	case drawing.Register, drawing.Cut:
		return Pen{p.Accent, 1, color.NRGBA{}}
	case drawing.Grid:
		return Pen{p.Line, 0.6, color.NRGBA{}}
	default:
		return Pen{p.Ink, 1, color.NRGBA{}}
	}
}

// Hatch gives the colour of the lines over a part of a meaning that is cut.
func (p Palette) Hatch(m drawing.Meaning) color.NRGBA {
	switch m {
	case drawing.Face, drawing.Carcass, drawing.PanelPart:
		return p.Grain
	default:
		return p.Pen(m).Line
	}
}

// Letters gives the colour of a text of a meaning.
func (p Palette) Letters(m drawing.Meaning) color.NRGBA {
	switch m {
	case drawing.CoverBand:
		return p.Good
	case drawing.FindingMark:
		return p.Error
	case drawing.Note:
		return p.Soft
	default:
		return p.Ink
	}
}

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

// Tint gives the ground of what is told of a severity.
func (p Palette) Tint(s drawing.Severity) color.NRGBA {
	switch s {
	case drawing.OfWarning:
		return p.WarningTint
	case drawing.OfAdvice:
		return p.AdviceTint
	case drawing.OfAccepted:
		return p.Panel
	default:
		return p.ErrorTint
	}
}

// TagLetters gives the colour of a figure of a mark, with its severity, where it is
// a finding's.
func (p Palette) TagLetters(t drawing.Tag) color.NRGBA {
	if t.Meaning == drawing.FindingMark {
		_, c := p.Severity(t.Severity)
		return c
	}
	return p.Letters(t.Meaning)
}

// TagPen gives the pen of a mark with its severity, where it is a finding's.
func (p Palette) TagPen(t drawing.Tag) Pen {
	pen := p.Pen(t.Meaning)
	if t.Meaning == drawing.FindingMark {
		const wash = 0x30
		_, c := p.Severity(t.Severity)
		pen.Line, pen.Surface = c, faded(c, wash)
	}
	return pen
}
