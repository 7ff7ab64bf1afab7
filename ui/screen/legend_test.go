package screen

import (
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/ui/look"
)

// written tells that a text stands in the picture as it is.
func (s *stage) written(text string) bool {
	return slices.ContainsFunc(s.screen.picture.Objects, func(o fyne.CanvasObject) bool {
		t, ok := o.(*fynecanvas.Text)
		return ok && t.Text == text
	})
}

// Where one sees through the fronts a legend tells what is seen, clear of texts,
// buttons, run and lens; in a small sheet there is none.
func TestLegend(t *testing.T) {
	st := newStage(t)
	c := st.screen
	for _, name := range []string{"", "cover-below"} {
		st.window.Resize(fyne.NewSize(960, 640))
		sc := scenes(t)[0]
		if name != "" {
			sc = scene{project: flagged(t, name)}
		}
		for _, mode := range []look.Mode{look.LightMode, look.DarkContrastMode} {
			st.look(mode)
			st.show(sc, manners(t)[0])
			c.SetSeeThrough(false)
			if !c.legend.Empty() || st.written("Behind the fronts") {
				t.Errorf("%q: a legend where nothing is behind the fronts", name)
			}
			if name != "" {
				c.session.ChooseFinding(0)
			}
			c.SetSeeThrough(true)
			if c.legend.Empty() {
				t.Fatalf("%q: no legend", name)
			}
			for _, e := range behind {
				if !st.written(c.say().Say(e.say)) {
					t.Errorf("%q: %q is not told", name, c.say().Say(e.say))
				}
			}
			p := c.painter()
			if !c.legend.Within(p.window()) {
				t.Errorf("%q: the legend lies at %v", name, c.legend)
			}
			others := []box{c.corner.room(p), c.strip.box(), c.card.pictured(), p.Rect(c.extent())}
			if name != "" && others[2].Empty() {
				t.Errorf("%q: no lens", name)
			}
			for _, w := range c.written {
				others = append(others, w.box)
			}
			for _, o := range others {
				if o.Overlaps(c.legend) {
					t.Errorf("%q: the legend at %v lies over %v", name, c.legend, o)
				}
			}
			if c.Free(c.legend.Place(), c.legend.Extent()) {
				t.Errorf("%q: the legend's place is told to be free", name)
			}
		}
	}
	st.window.Resize(fyne.NewSize(320, 260))
	c.repaint()
	if !c.legend.Empty() || st.written("Behind the fronts") {
		t.Errorf("a legend at %v in a small sheet", c.legend)
	}
}
