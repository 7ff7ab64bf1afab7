package screen

import (
	"fmt"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
)

// Place is a box on the widget, in its own units.
type Place struct{ X, Y, Width, Height float32 }

// Places names what is on the screen and tells where, for scripts that work the
// window: fronts by their number, the division above a front, figures that can
// be typed, cabinets by their number from 1.
func (c *Screen) Places() map[string]Place {
	all := map[string]Place{}
	p := c.painter()
	put := func(name string, r plane.Rect) {
		pos, size := p.box(r)
		all[name] = Place{pos.X, pos.Y, size.Width, size.Height}
	}
	pl := c.session.Result().Plan
	for i := range pl.Fronts {
		f := &pl.Fronts[i]
		put(fmt.Sprintf("front %d", f.Number), f.Face)
		t := drawing.Subject{Kind: drawing.DivisionThing, Place: f.Place}
		if r, ok := c.rectOf(t); ok {
			put(fmt.Sprintf("division above %d", f.Number), r)
		}
		for _, g := range c.figures {
			if g.of.Kind == drawing.FrontHeight && g.of.Place == f.Place {
				all[fmt.Sprintf("height of %d", f.Number)] = Place{g.at.X, g.at.Y, g.size.Width, g.size.Height}
			}
		}
	}
	for i := range pl.Cabinets {
		put(fmt.Sprintf("cabinet %d", i+1), pl.Cabinets[i].Outline)
		for _, g := range c.figures {
			if g.of.Kind == drawing.CabinetWidth && g.of.Place.Cabinet == i {
				all[fmt.Sprintf("width of cabinet %d", i+1)] = Place{g.at.X, g.at.Y, g.size.Width, g.size.Height}
			}
		}
	}
	return all
}

// Objects are what the widget paints, in order: the paper, the picture, and what
// the hand adds.
func (c *Screen) Objects() []fyne.CanvasObject {
	all := append([]fyne.CanvasObject{c.paper}, c.picture.Objects...)
	return append(all, c.overlay.Objects...)
}
