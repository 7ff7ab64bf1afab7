package screen

import (
	"image"
	"image/color"
	"math"
	"slices"
	"testing"

	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/ui/look"
)

// Every text of the drawing has a contrast of at least 4.5:1 (WCAG 2.2, success
// criterion 1.4.3) with what is painted above and below its letters, wood and all.
func TestTextsAreLegibleAsDrawn(t *testing.T) {
	st := newStage(t)
	c := st.screen
	demo := scenes(t)[0]
	for _, of := range []struct {
		mode     look.Mode
		material string
		through  bool
	}{
		{look.LightMode, "", false}, {look.LightMode, "", true}, {look.LightMode, "walnut", false}, {look.LightMode, "black", true},
		{look.DarkMode, "", false}, {look.DarkMode, "", true}, {look.DarkMode, "white", false},
		{look.ContrastMode, "", false}, {look.ContrastMode, "", true}, {look.DarkContrastMode, "", false}, {look.DarkContrastMode, "", true},
	} {
		st.look(of.mode)
		demo.project.Boards.Front.Material = of.material
		st.show(demo, manners(t)[0])
		c.SetSeeThrough(of.through)
		img := st.window.Canvas().Capture()
		looked := 0
		for _, o := range c.picture.Objects {
			w, ok := o.(*fynecanvas.Text)
			if !ok || !lettersOf(w).within(slab{4, 4, c.Size().Width - 4, c.Size().Height - 4}, 0) {
				continue
			}
			looked++
			if r := contrastAround(img, lettersOf(w), w.Color); r < 4.5 {
				t.Errorf("mode %d, %q, see-through %v: %s has %.2f:1", of.mode, of.material, of.through, say(w), r)
			}
		}
		if looked < 30 {
			t.Errorf("mode %d: only %d texts", of.mode, looked)
		}
	}
}

// contrastAround is the contrast of a text's colour with the middle one of the
// colours above and below its letters.
func contrastAround(img image.Image, at slab, of color.Color) float64 {
	var all []float64
	for x := int(at.x1) + 1; x < int(at.x2)-1; x++ {
		for _, y := range []int{int(at.y1) - 1, int(at.y2) + 2} {
			a, b := relativeLuminance(of)+0.05, relativeLuminance(img.At(x, y))+0.05
			all = append(all, max(a, b)/min(a, b))
		}
	}
	slices.Sort(all)
	return all[len(all)/2]
}

// relativeLuminance is that of WCAG 2.2 (W3C Recommendation, section "relative
// luminance", from memory).
func relativeLuminance(c color.Color) float64 {
	r, g, b, _ := c.RGBA()
	linear := func(v uint32) float64 {
		s := float64(v) / 0xFFFF
		if s <= 0.04045 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*linear(r) + 0.7152*linear(g) + 0.0722*linear(b)
}
