package drawing

import (
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Placed is a drawing on a page: a drawing's point Origin comes to the page's
// point At, and lengths are multiplied by ScaleNum/ScaleDen (1/1 for
// templates). Only what lies inside Clip (page coordinates; empty: the whole
// page) is shown.
type Placed struct {
	Drawing            *Drawing
	Origin             plane.Point
	At                 plane.Point
	ScaleNum, ScaleDen int64
	Clip               plane.Rect
}

// DimensionStep is how far on paper one level of dimensions lies beyond the one
// before it: room for a figure past the ends of extension lines that is nearer to its
// own line than to the next.
const DimensionStep = 8 * length.Millimetre

// OnPaper is the area that the drawing takes on paper at 1:den, its own
// 0,0 at 0,0: its geometry, its dimensions with their figures, its texts.
func (d *Drawing) OnPaper(den int64, say message.Language) plane.Rect {
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

// figureRoom is what a figure takes above its line.
const figureRoom = 5 * length.Millimetre

func markOnPaper(m Mark, den length.Length, say message.Language) plane.Rect {
	b := m.Bounds()
	r := plane.R(b.Min.X/den, b.Min.Y/den, b.Max.X/den, b.Max.Y/den)
	switch m := m.(type) {
	case *Dimension:
		// A figure too wide for its distance stands over its middle.
		half := lettering.Width(m.Prefix+say.Figure(m.Value), lettering.Small, false)/2 + length.MM(1)
		line := m.Line/den + length.Length(m.Level)*DimensionStep
		if m.Vertical {
			y := (r.Min.Y + r.Max.Y) / 2
			r = r.Union(plane.R(line-figureRoom, min(r.Min.Y, y-half), line+length.MM(2), max(r.Max.Y, y+half)))
		} else {
			x := (r.Min.X + r.Max.X) / 2
			r = r.Union(plane.R(min(r.Min.X, x-half), line-length.MM(2), max(r.Max.X, x+half), line+figureRoom))
		}
	case *Text:
		if m.Within.Empty() {
			at := plane.Point{X: m.At.X / den, Y: m.At.Y / den}
			r = r.Union(TextArea(at, m.Anchor, m.Size, m.Bold, say.Say(m.Say)))
		}
	}
	return r
}

// TextArea is the area that a text takes on the page, the tails of its letters
// included.
func TextArea(at plane.Point, a Anchor, size length.Length, bold bool, s string) plane.Rect {
	w := lettering.Width(s, size, bold)
	r := plane.R(at.X, at.Y, at.X+w, at.Y+size)
	r = r.Move(plane.Point{X: -part(w, a.X), Y: -part(size, a.Y)})
	r.Min.Y -= lettering.Descent(size)
	return r
}

// part is 0, a half or all of a length.
func part(v length.Length, of float64) length.Length { return v * length.Length(2*of) / 2 }
