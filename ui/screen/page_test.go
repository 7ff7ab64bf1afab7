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
	"frontlay/layout/lettering"
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

// A line of a page is no wider than on paper, however small the page is shown: else
// the cautions run over its edge.
func TestLinesOfAPageAreAsWideAsOnPaper(t *testing.T) {
	test.NewTempApp(t)
	const size = 2 * length.Millimetre
	for _, line := range []string{
		"drill, protect eyes, ears and lungs. Lift with two people. Look for cables and pipes before you drill into a wall. Fix tall and",
		"Tiefenanschlag einstellen, Hände und Handschuhe weg vom Bohrer; Augen, Ohren und Lunge schützen. Zu zweit heben.",
	} {
		for scale := 1.5; scale <= 6; scale += 0.05 {
			p := &paper{scale: scale, height: 20, measure: &paint.Measures{}}
			p.Text(ink.Point{X: 2, Y: 8}, size, false, false, ink.Colour{}, line)
			drawn := p.objects[0].MinSize().Width
			if want := float32(lettering.Width(line, size, false).MM() * scale); drawn > 1.01*want+1 || drawn < 0.7*want {
				t.Errorf("at %.2f units a millimetre %q is %.0f wide, not %.0f", scale, line[:10], drawn, want)
			}
		}
	}
}
