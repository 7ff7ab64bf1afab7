package look_test

import (
	"image"
	"image/color"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"

	"frontlay/assets"
	"frontlay/ui/look"
)

// Every icon is drawn in the colour that is asked for, whole within its 20 units,
// and no two are the same.
func TestIcons(t *testing.T) {
	test.NewTempApp(t)
	line, over := color.NRGBA{R: 0x20, G: 0x40, B: 0xA0, A: 0xFF}, color.NRGBA{R: 0xFF, G: 0xFF, B: 0xFF, A: 0xFF}
	const side = 20
	seen := map[string]string{}
	for _, name := range assets.Icons() {
		r := look.Icon(name, line, over)
		if r == nil {
			t.Fatalf("%s is not there", name)
		}
		ground := fynecanvas.NewRectangle(color.White)
		c := test.NewTempWindow(t, container.NewStack(ground, fynecanvas.NewImageFromResource(r))).Canvas()
		c.(test.WindowlessCanvas).SetPadded(false)
		c.(test.WindowlessCanvas).Resize(fyne.NewSquareSize(side))
		picture := c.Capture()
		inked, edge := 0, 0
		pixels := ""
		eachPixel(picture, func(x, y int, p color.NRGBA) {
			on := p.R < 0x90
			if on {
				inked++
				pixels += "#"
			} else {
				pixels += "."
			}
			if on && (x == 0 || y == 0 || x == side-1 || y == side-1) {
				edge++
			}
			if on && p.B < p.R {
				t.Errorf("%s has the colour %v at %d, %d", name, p, x, y)
			}
		})
		if inked < 15 || edge > 0 {
			t.Errorf("%s: %d pixels are drawn, %d of them at the edge", name, inked, edge)
		}
		if other, same := seen[pixels]; same {
			t.Errorf("%s looks as %s does", name, other)
		}
		seen[pixels] = name
	}
	if look.Icon("none such", line, over) != nil {
		t.Error("an icon that is not there is given")
	}
}

// An icon has the same weight however large it is painted: on a screen of more
// pixels, and with large letters.
func TestIconsKeepTheirWeight(t *testing.T) {
	test.NewTempApp(t)
	black := color.NRGBA{A: 0xFF}
	for _, name := range assets.Icons() {
		share := func(side float32) (inked float64) {
			ground, icon := fynecanvas.NewRectangle(color.White), fynecanvas.NewImageFromResource(look.Icon(name, black, color.NRGBA{R: 0xFF, G: 0xFF, B: 0xFF, A: 0xFF}))
			c := test.NewTempWindow(t, container.NewStack(ground, icon)).Canvas().(test.WindowlessCanvas)
			c.SetPadded(false)
			c.Resize(fyne.NewSquareSize(side))
			eachPixel(c.Capture(), func(_, _ int, p color.NRGBA) { inked += 1 - float64(p.R)/0xFF })
			return inked / float64(side*side)
		}
		if small, large := share(20), share(80); large < 0.93*small || large > 1.07*small {
			t.Errorf("%s covers %.3f of its square, %.3f where it is four times as large", name, small, large)
		}
	}
}

func eachPixel(picture image.Image, visit func(x, y int, c color.NRGBA)) {
	b := picture.Bounds()
	for y := b.Min.Y; y < b.Max.Y; y++ {
		for x := b.Min.X; x < b.Max.X; x++ {
			visit(x, y, color.NRGBAModel.Convert(picture.At(x, y)).(color.NRGBA))
		}
	}
}
