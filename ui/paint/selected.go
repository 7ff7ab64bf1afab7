package paint

import (
	"image/color"

	fynecanvas "fyne.io/fyne/v2/canvas"
)

// How what is chosen or pointed at is shown: tints in parts of 255, widths in units
// of the screen.
const (
	chosenTint  = 0x12 // 7 %
	pointedTint = 0x0F // 6 %
	chosenEdge  = 2.5
	selectHalo  = 1.5
)

// Selected draws a frame around a thing that is selected, with a halo in the sheet's
// colour, so that it is told apart from whatever it lies on.
func (s *Sheet) Selected(b Box) {
	if !s.Shown(b) {
		return
	}
	const out = 1
	s.Surface(b.Grown(out+selectHalo, out+selectHalo), color.NRGBA{}, s.Palette.Sheet, selectHalo)
	s.Surface(b.Grown(out, out), s.selectedTint(), s.Palette.Accent, chosenEdge)
}

func (s *Sheet) selectedTint() color.NRGBA {
	tint := s.Palette.Accent
	tint.A = chosenTint
	return tint
}

// Tinted is a colour as it is seen in a thing that is selected.
func (s *Sheet) Tinted(c color.NRGBA) color.NRGBA { return Under(c, s.selectedTint()) }

// Under is a colour as it is seen under a tint.
func Under(c, tint color.NRGBA) color.NRGBA { return mixed(c, tint, float64(tint.A)/255) }

// Pointed tints what a press would choose.
func (s *Sheet) Pointed(b Box) {
	tint := s.Palette.Accent
	tint.A = pointedTint
	s.fill(b, tint)
}

// Sizes of a bar that can be taken hold of, and of the grip on it.
const (
	barWide   = 5
	gripLong  = 28
	gripWide  = 13
	gripLines = 10
)

// Bar draws over a line that can be moved a bar with a grip on it, in which two
// lines lie along it.
func (s *Sheet) Bar(b Box) {
	w, h := b.X2-b.X1, b.Y2-b.Y1
	c := s.Palette.Accent
	mx, my := s.whole((b.X1+b.X2)/2), s.whole((b.Y1+b.Y2)/2)
	across := h > w
	if across {
		b = b.Grown(max(barWide-w, 0)/2, 0)
	} else {
		b = b.Grown(0, max(barWide-h, 0)/2)
	}
	s.fill(b, c)
	grip, lines, off := Box{mx, my, mx, my}.Grown(gripLong/2, gripWide/2), Box{mx, my, mx, my}.Grown(gripLines/2, 0), float32(2)
	if across {
		grip, lines = Box{mx, my, mx, my}.Grown(gripWide/2, gripLong/2), Box{mx, my, mx, my}.Grown(0, gripLines/2)
	}
	r := fynecanvas.NewRectangle(c)
	r.CornerRadius = gripWide / 2
	moveTo(r, grip)
	s.Objects = append(s.Objects, r)
	for _, o := range []float32{-off, off} {
		dx, dy := float32(0), o
		if across {
			dx, dy = o, 0
		}
		s.Line(lines.X1+dx, lines.Y1+dy, lines.X2+dx, lines.Y2+dy, s.Palette.OnAccent, 1.2)
	}
}
