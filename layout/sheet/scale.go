package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet/lettering"
	"frontlay/model/length"
	"frontlay/model/message"
)

// scales are the full size and the reductions of ISO 5455 (series from memory),
// the largest first.
var scales = [...]int64{1, 2, 5, 10, 20, 50, 100, 200}

// DimensionStep is how far on paper one level of dimensions lies beyond the one
// before it. Figures lie flat, so upright dimensions stand as far apart as
// their figures are wide in the unit.
func DimensionStep(vertical bool, unit length.Unit) length.Length {
	switch {
	case !vertical:
		return mm(7)
	case unit == length.UnitInch || unit == length.UnitInchDecimal:
		return mm(20)
	default:
		return mm(14)
	}
}

// OnPaper is the area that a drawing takes on paper at 1:den, the drawing's
// 0,0 at 0,0: its geometry, its dimensions with their figures, its texts.
func OnPaper(d *drawing.Drawing, den int64, say message.Language) plane.Rect {
	var r plane.Rect
	for i, m := range d.Marks {
		b := markOnPaper(m, length.Length(den), say)
		if i == 0 {
			r = b
		} else {
			r = r.Union(b)
		}
	}
	return r
}

func markOnPaper(m drawing.Mark, den length.Length, say message.Language) plane.Rect {
	b := m.Bounds()
	r := plane.R(b.Min.X/den, b.Min.Y/den, b.Max.X/den, b.Max.Y/den)
	switch m := m.(type) {
	case *drawing.Dimension:
		away := length.Length(m.Level) * DimensionStep(m.Vertical, say.Unit)
		figure := lettering.Width(m.Prefix+say.Figure(m.Value), lettering.Small, false)/2 + mm(1)
		if m.Vertical {
			x := m.Line/den + away
			r = r.Union(plane.R(x-figure, r.Min.Y, x+figure, r.Max.Y))
		} else {
			y := m.Line/den + away
			r = r.Union(plane.R(r.Min.X, y-mm(2), r.Max.X, y+mm(2)))
		}
	case *drawing.Text:
		if m.Within.Empty() {
			at := plane.Point{X: m.At.X / den, Y: m.At.Y / den}
			r = r.Union(textArea(at, m.Anchor, m.Size, m.Bold, say.Say(m.Say)))
		}
	}
	return r
}

// fit places a drawing in the middle of an area at the largest scale at which
// it fits, and gives the scale's denominator.
func fit(d *drawing.Drawing, area plane.Rect, say message.Language) (Placed, int64) {
	den := scales[len(scales)-1]
	var r plane.Rect
	for _, s := range scales {
		r = OnPaper(d, s, say)
		if r.Width() <= area.Width() && r.Height() <= area.Height() {
			den = s
			break
		}
	}
	at := area.Centre().Sub(r.Centre())
	return Placed{Drawing: d, At: at, ScaleNum: 1, ScaleDen: den}, den
}

func scaleText(den int64) message.Message { return message.New("SCALE 1:%v", den) }
