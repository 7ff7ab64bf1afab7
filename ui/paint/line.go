package paint

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/letter"
)

// Line is a line of a text as an object, its capitals so high.
func (m *Measures) Line(l letter.Line, size float64, bold bool, c color.NRGBA) fyne.CanvasObject {
	t := fynecanvas.NewText(l.Text, c)
	t.TextSize, t.TextStyle.Bold = float32(size/capitals), bold
	t.Move(fyne.NewPos(float32(l.At.X), -float32(l.At.Y)-ascent*t.TextSize))
	t.Resize(m.Of(l.Text, t.TextSize, bold))
	return t
}
