package screen

import (
	"image/color"
	"math"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"frontlay/layout/ink"
	"frontlay/model/length"
	"frontlay/ui/paint"
)

// Figures stand on the base line that the page gives them, however small the page is
// shown: one that stands a little lower is struck through by its dimension line.
func TestFiguresOfAPageStandOnTheirBaseLine(t *testing.T) {
	test.NewTempApp(t)
	for scale := 2.0; scale <= 6; scale += 0.25 {
		p := &paper{scale: scale, height: 20, measure: &paint.Measures{}}
		at := ink.Point{X: 2, Y: 8}
		p.Text(at, 2500*length.Micrometre, false, false, ink.Colour{}, "174")
		ground := fynecanvas.NewRectangle(color.White)
		ground.Resize(fyne.NewSize(200, 200))
		w := test.NewTempWindow(t, container.NewWithoutLayout(append([]fyne.CanvasObject{ground}, p.objects...)...))
		w.SetPadded(false)
		w.Resize(fyne.NewSize(200, 200))
		picture := w.Canvas().Capture()
		lowest := 0
		for y := range 150 {
			for x := range 150 {
				if r, _, _, _ := picture.At(x, y).RGBA(); r < 0x7000 {
					lowest = y + 1
				}
			}
		}
		if want := p.place(at).Y; math.Abs(float64(lowest)-float64(want)) > 1 {
			t.Errorf("at %v units a millimetre figures end at %d; want %.1f", scale, lowest, want)
		}
	}
}
