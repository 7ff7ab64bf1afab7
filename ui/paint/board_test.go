package paint

import (
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/ui/look"
)

// A board alone has an edge in high contrast: no gap around it shows where it ends.
func TestABoardAloneHasAnEdge(t *testing.T) {
	for _, m := range []look.Mode{look.ContrastMode, look.DarkContrastMode} {
		d := &drawing.Drawing{}
		d.Add(&drawing.Rectangle{
			Tag: drawing.Tag{Meaning: drawing.Face, Of: drawing.Subject{Kind: drawing.FrontThing}}, Filled: true,
			Rect: plane.R(0, 0, 600*length.Millimetre, 300*length.Millimetre),
		})
		size := fyne.NewSize(700, 400)
		p := New(d, Fitted(d.Bounds(), Margins{Left: 20, Right: 20, Top: 20, Bottom: 20}, size), size, 1, &Stock{})
		p.Palette = m.Palette()
		p.Marks()
		edged := false
		for _, o := range p.Objects {
			if r, ok := o.(*fynecanvas.Rectangle); ok && r.StrokeWidth > 0 && r.StrokeColor == p.Palette.Ink {
				edged = true
			}
		}
		if !edged {
			t.Errorf("mode %v: no edge around the board", m)
		}
	}
}
