package paint

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/ui/look"
)

// Sheet is the part of the screen that a picture lies on: where lengths are on it,
// and what is drawn on it so far.
type Sheet struct {
	View    Lens
	Size    fyne.Size
	Palette look.Palette
	Objects []fyne.CanvasObject

	pixels float64 // of the screen, a unit
	x, y   Axis
}

// PX and PY give the place on the screen of an x and a y: on whole pixels for
// edges, in proportion between them for what is not one.
func (s *Sheet) PX(x length.Length) float32 {
	return float32(s.x.To((s.View.X+x.MM()*s.View.Scale)*s.pixels) / s.pixels)
}

// PY is described at PX.
func (s *Sheet) PY(y length.Length) float32 {
	return float32(s.y.To((s.View.Y-y.MM()*s.View.Scale)*s.pixels) / s.pixels)
}

// At gives the place of a point on the screen.
func (s *Sheet) At(q plane.Point) fyne.Position { return fyne.NewPos(s.PX(q.X), s.PY(q.Y)) }

// Rect gives the place of a rectangle on the screen.
func (s *Sheet) Rect(r plane.Rect) Box {
	return Box{s.PX(r.Min.X), s.PY(r.Max.Y), s.PX(r.Max.X), s.PY(r.Min.Y)}
}

// pixel is the size of a pixel in units of the screen.
func (s *Sheet) pixel() float32 { return float32(1 / s.pixels) }

// whole gives the nearest whole pixel.
func (s *Sheet) whole(v float32) float32 {
	return float32(math.Round(float64(v)*s.pixels) / s.pixels)
}

// Shown tells that a box on the screen is at least partly visible.
func (s *Sheet) Shown(b Box) bool {
	return b.X2 >= 0 && b.Y2 >= 0 && b.X1 <= s.Size.Width && b.Y1 <= s.Size.Height
}

// Line draws a straight line.
func (s *Sheet) Line(x1, y1, x2, y2 float32, c color.NRGBA, width float32) {
	if !s.Shown(Box{min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2)}) {
		return
	}
	l := fynecanvas.NewLine(c)
	l.StrokeWidth = width
	l.Position1, l.Position2 = fyne.NewPos(x1, y1), fyne.NewPos(x2, y2)
	s.Objects = append(s.Objects, l)
}

// Lengths of a dash and the gap behind it, in units of the screen (ISO 128 has
// dashes of 12 and gaps of 3 line widths; this is that at a width of a screen
// pixel, shortened so that short edges still show as dashed).
const dash, dashGap = 7, 4

// Dashed draws a line along an axis in dashes; what is far outside of the screen
// gets none.
func (s *Sheet) Dashed(x1, y1, x2, y2 float32, c color.NRGBA, width float32) {
	if y1 == y2 {
		x1, x2 = min(x1, x2), max(x1, x2)
		start := max(x1, x1+float32(int((max(x1, -20)-x1)/(dash+dashGap)))*(dash+dashGap))
		for x := start; x < min(x2, s.Size.Width); x += dash + dashGap {
			s.Line(x, y1, min(x+dash, x2), y1, c, width)
		}
		return
	}
	y1, y2 = min(y1, y2), max(y1, y2)
	start := y1 + float32(int((max(y1, -20)-y1)/(dash+dashGap)))*(dash+dashGap)
	for y := start; y < min(y2, s.Size.Height); y += dash + dashGap {
		s.Line(x1, y, x2, min(y+dash, y2), c, width)
	}
}

// fill paints a surface.
func (s *Sheet) fill(b Box, c color.NRGBA) { s.Surface(b, c, color.NRGBA{}, 0) }

// Surface paints a rectangle with its edge.
func (s *Sheet) Surface(b Box, fill, edge color.NRGBA, width float32) {
	if b.Empty() || !s.Shown(b) {
		return
	}
	r := fynecanvas.NewRectangle(fill)
	r.StrokeColor, r.StrokeWidth = edge, width
	r.Move(b.Place())
	r.Resize(b.Extent())
	s.Objects = append(s.Objects, r)
}

// Write writes a text of one line with its anchor at a place, and gives its box.
func (s *Sheet) Write(say string, at fyne.Position, a drawing.Anchor, size fyne.Size, letter float32, bold bool, c color.NRGBA) Box {
	b := BoxAt(at.SubtractXY(float32(a.X)*size.Width, float32(1-a.Y)*size.Height), size)
	if s.Shown(b) {
		t := fynecanvas.NewText(say, c)
		t.TextSize, t.TextStyle.Bold = letter, bold
		t.Move(b.Place())
		t.Resize(size)
		s.Objects = append(s.Objects, t)
	}
	return b
}
