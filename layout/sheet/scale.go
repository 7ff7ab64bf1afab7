package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// scales gives the denominators of the scales of a system of units, the largest scale
// first. Metric ones are the full size and the reductions of ISO 5455; in inches they
// are those that a rule for inches on a foot has, from full size to 1/64 in = 1 ft
// (series from memory).
func scales(unit length.Unit) []int64 {
	if unit.Inches() {
		return []int64{1, 2, 4, 8, 12, 16, 24, 32, 48, 96, 192, 384, 768}
	}
	return []int64{1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000, 10_000}
}

// leastDetailed is the smallest scale at which gaps between fronts are dimensioned.
func leastDetailed(unit length.Unit) int64 {
	if unit.Inches() {
		return 24
	}
	return 20
}

// fit places a drawing in the middle of an area at the largest scale at which
// it fits, and gives the scale's denominator.
func fit(d *drawing.Drawing, area plane.Rect, say message.Language) (drawing.Placed, int64) {
	return fitFrom(d, area, say, 1)
}

// fitFrom is fit at a scale no larger than 1:from.
func fitFrom(d *drawing.Drawing, area plane.Rect, say message.Language, from int64) (drawing.Placed, int64) {
	var r plane.Rect
	var den int64
	for _, s := range scales(say.Unit) {
		if den = s; s < from {
			continue
		}
		if r = d.OnPaper(s, say); r.Width() <= area.Width() && r.Height() <= area.Height() {
			break
		}
	}
	at := area.Centre().Sub(r.Centre())
	return drawing.Placed{Drawing: d, At: at, ScaleNum: 1, ScaleDen: den}, den
}

// scaleText says a scale as its system of units does.
func scaleText(den int64, unit length.Unit) message.Message {
	if unit.Inches() && den > 1 {
		const foot = 304_800 * length.Micrometre
		return message.New("SCALE %v = 1 ft (1:%v)", foot/length.Length(den), den)
	}
	return message.New("SCALE 1:%v", den)
}
