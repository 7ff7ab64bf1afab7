package field

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/test"
)

// The width goes out by shares, but none gets less than it needs; nothing overlaps.
func TestAbreast(t *testing.T) {
	test.NewTempApp(t)
	block := func(least float32) fyne.CanvasObject {
		r := fynecanvas.NewRectangle(color.Black)
		r.SetMinSize(fyne.NewSize(least, 10))
		return r
	}
	for _, c := range []struct {
		name        string
		least, want [3]float32
	}{
		{"all fit", [3]float32{10, 10, 10}, [3]float32{100, 100, 200}},
		{"one needs more", [3]float32{160, 10, 10}, [3]float32{160, 80, 160}},
		{"then another does", [3]float32{200, 90, 10}, [3]float32{200, 90, 110}},
	} {
		o := []fyne.CanvasObject{block(c.least[0]), block(c.least[1]), block(c.least[2])}
		all := Abreast([]float32{1, 1, 2}, o...)
		line := all.Objects[1].MinSize().Width
		all.Resize(fyne.NewSize(400+2*line, 50))
		x := float32(0)
		for i, one := range o {
			if d := one.Size().Width - c.want[i]; d > 0.01 || d < -0.01 || one.Position().X-x > 0.01 || x-one.Position().X > 0.01 {
				t.Errorf("%s: %d is %v wide at %v, not %v at %v", c.name, i, one.Size().Width, one.Position().X, c.want[i], x)
			}
			x += one.Size().Width + line
		}
	}
}
