package screen

import (
	"image/color"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/ui/look"
)

// Every gap of the same size has the same number of pixels, at ten zooms, with
// and without rulers and wherever the picture stands: counted on the picture.
// The demo's fronts have gaps of 3 mm up and across.
func TestEqualGapsHaveEqualPixels(t *testing.T) {
	st := newStage(t)
	st.show(scenes(t)[0], manners(t)[0])
	c := st.screen
	pl := c.session.Result().Plan
	gap := look.Light().Gap
	looked := 0
	for _, rulers := range []bool{false, true} {
		c.SetRulers(rulers)
		for k := range 10 {
			c.Fit()
			if k > 0 {
				c.zoomAt(1+0.37*float64(k)-0.9*float64(k%2), fyne.NewPos(480, 300))
				c.Pan(0.3*float32(k), -0.7*float32(k))
			}
			img := st.window.Canvas().Capture()
			is := func(x, y int) bool {
				r, g, b, _ := img.At(x, y).RGBA()
				return color.NRGBA{R: uint8(r >> 8), G: uint8(g >> 8), B: uint8(b >> 8), A: 255} == gap
			}
			// run counts the pixels of a gap around a place along an axis.
			run := func(x, y, dx, dy int) int {
				for back := 0; back < 3 && !is(x, y); back++ {
					x, y = x+dx, y+dy
				}
				for is(x-dx, y-dy) {
					x, y = x-dx, y-dy
				}
				n := 0
				for ; is(x, y); n++ {
					x, y = x+dx, y+dy
				}
				return n
			}
			seen := map[int]int{}
			for i := range pl.Fronts {
				f := &pl.Fronts[i]
				at, size := c.view.Box(f.Face)
				x, y := int(at.X+size.Width*0.62), int(at.Y)-2
				above := f.Place
				above.Front++
				if c.session.Project().FrontAt(above) != nil && x > 60 && x < 950 && y > 40 && y < 590 {
					seen[run(x, y, 0, 1)]++
				}
				x, y = int(at.X+size.Width)-1, int(at.Y+size.Height*0.2)
				if last := f.Place.Cabinet == len(pl.Cabinets)-1; !last && x > 60 && x < 950 && y > 40 && y < 590 {
					seen[run(x, y, 1, 0)]++
				}
			}
			if len(seen) > 1 || seen[0] > 0 || seen[1] > 0 {
				t.Errorf("rulers %v, scale %.3f: gaps by their pixels: %v", rulers, c.view.Scale, seen)
				st.keep("gaps")
			}
			if len(seen) > 0 {
				looked++
			}
		}
	}
	if looked < 16 {
		t.Errorf("gaps were counted in %d pictures only", looked)
	}
}
