package paint

import (
	"image"
	"image/color"
	"math"

	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/ui/look"
)

// leastGrained is how high a board is at least on the screen that shows grain.
const leastGrained = 24

// part is what an image shows.
type part uint8

const (
	board part = iota
	panel      // a board that does not move: with a groove along its edges
	niche
	plinth
)

// spec is all that an image depends on. Sizes and places are in pixels.
type spec struct {
	part  part
	wood  Wood
	dark  color.NRGBA     // of a niche's back
	w, h  int             // of the whole part
	shown image.Rectangle // what is painted of it
	edge  int             // a unit of the screen
	from  cut
}

// front paints what is seen of a front: a board with a light edge above and at
// the left and a dark one below and at the right, without an outline, because
// the gap around it is one.
func (p *Painter) front(m *drawing.Rectangle) {
	b := p.Rect(m.Rect)
	if b.Empty() || !p.Shown(b) {
		return
	}
	s := spec{part: board, wood: p.wood(m.Of)}
	switch m.Meaning {
	case drawing.NichePart:
		s.part, s.wood, s.dark = niche, p.Carcass, p.Palette.Niche
	case drawing.PanelPart:
		s.part, s.wood.Base = panel, mixed(s.wood.Base, p.Palette.FixedPanel, 0.5)
	}
	surface := s.wood.Base
	if s.part == niche {
		surface = s.dark
	}
	switch {
	case p.Through && s.part == board:
		p.Surface(b, p.Face(m.Of).Base, p.Face(m.Of).Shade, 1.5)
	case p.Palette.Flat && !elevation(p.drawing): // no gap is around it
		p.Surface(b, surface, p.Palette.Ink, 1.5)
		p.groove(s, b)
	case p.Palette.Flat:
		p.fill(b, surface)
		p.groove(s, b)
	case b.Y2-b.Y1 < leastGrained || p.Plain && s.part == board:
		p.fill(b, surface)
		px := p.pixel()
		p.fill(Box{b.X1, b.Y1, b.X2, b.Y1 + px}, s.wood.Light)
		p.fill(Box{b.X1, b.Y2 - px, b.X2, b.Y2}, s.wood.Shade)
		p.groove(s, b)
	default:
		p.image(m.Tag, s, b)
	}
}

// wood is what a front is of.
func (p *Painter) wood(of drawing.Subject) Wood {
	if p.Own == nil || of.Kind == drawing.Nothing {
		return p.Front
	}
	return p.Own(of.Place)
}

// Face is what is seen of a front: its wood, or glass.
func (p *Painter) Face(of drawing.Subject) Wood {
	if p.Through {
		return Glass(p.wood(of), p.Palette)
	}
	return p.wood(of)
}

// joint is the pen for the lines between the parts of a front: finer than the gaps
// around it, so that these are still what is seen first.
func (p *Painter) joint(of drawing.Subject) look.Pen {
	if p.Palette.Flat {
		return look.Pen{Line: p.Palette.Ink, Width: 1}
	}
	const depth = 0.55
	w := p.Face(of)
	return look.Pen{Line: mixed(w.Base, w.On, depth), Width: 1}
}

// groove draws the groove of a fixed panel, where it has no image.
func (p *Painter) groove(s spec, b Box) {
	if g := b.Grown(-grooveIn, -grooveIn); s.part == panel && g.Y2-g.Y1 > 2*grooveIn {
		edge := s.wood.Shade
		if p.Palette.Flat {
			edge = p.Palette.Ink
		}
		p.Surface(g, color.NRGBA{}, edge, 1)
	}
}

// plinthIn is how far a plinth that stands back is drawn shorter at the ends of the
// run, in units of the screen.
const plinthIn = 4

// plinth paints a plinth, which stands back under its cabinet: with the shade of
// the cabinet over it, and shorter than the run.
func (p *Painter) plinth(m *drawing.Rectangle) {
	b := p.Rect(m.Rect)
	if b.Empty() || !p.Shown(b) {
		return
	}
	if p.Palette.Flat {
		p.Surface(b, p.Palette.Birch, p.Palette.Ink, 1)
		return
	}
	left, right := p.stock.edges(p.drawing).ends(m)
	if left {
		b.X1 += plinthIn
	}
	if right {
		b.X2 -= plinthIn
	}
	p.image(m.Tag, spec{part: plinth, wood: p.Carcass}, b)
}

// step is how far the part of a board that is painted reaches at least past what
// is shown of it, so that a board which is moved is not painted anew each time.
const step = 256

// image paints a part as an image.
func (p *Painter) image(t drawing.Tag, s spec, b Box) {
	px := func(v float32) int { return int(math.Round(float64(v) * p.pixels)) }
	x, y := px(b.X1), px(b.Y1)
	s.w, s.h = px(b.X2)-x, px(b.Y2)-y
	s.edge = max(px(1), 1)
	s.from = cut{x - px(float32(p.View.X)), y - px(float32(p.View.Y))}
	down := func(v int) int { return int(math.Floor(float64(v)/step)) * step }
	seen := image.Rect(down(-x), down(-y), down(px(p.Size.Width)-x)+step, down(px(p.Size.Height)-y)+step)
	s.shown = seen.Intersect(image.Rect(0, 0, s.w, s.h))
	if s.shown.Empty() {
		return
	}
	at := func(v int) float32 { return float32(float64(v) / p.pixels) }
	p.Objects = append(p.Objects, p.stock.take(t, s, Box{
		at(x + s.shown.Min.X), at(y + s.shown.Min.Y), at(x + s.shown.Max.X), at(y + s.shown.Max.Y),
	}))
}

// grooveIn is how far from its edges the groove of a fixed panel lies, and
// nicheSide how thick the sides of a niche are drawn; in units of the screen.
const (
	grooveIn  = 7
	nicheSide = 6
)

// paint makes the image.
func (s spec) paint(w, h int) image.Image {
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	fill := func(x1, y1, x2, y2 int, colour func(y int) color.NRGBA) {
		r := image.Rect(x1, y1, x2, y2).Sub(s.shown.Min).Intersect(img.Rect)
		for y := r.Min.Y; y < r.Max.Y; y++ {
			c := opaqueOf(colour(y + s.shown.Min.Y))
			for x := r.Min.X; x < r.Max.X; x++ {
				img.SetRGBA(x, y, c)
			}
		}
	}
	plain := func(c color.NRGBA) func(int) color.NRGBA { return func(int) color.NRGBA { return c } }
	// shaded is a colour that is darkest at the top and itself from a part of the height on.
	shaded := func(c color.NRGBA, until, depth float64) func(int) color.NRGBA {
		return func(y int) color.NRGBA {
			f := 1 - min(float64(y)/(until*float64(s.h)), 1)
			return mixed(c, color.NRGBA{A: 255}, depth*f)
		}
	}
	e := s.edge
	frame := func(in int, upper, left, lower, right color.NRGBA) {
		fill(s.w-in-e, in, s.w-in, s.h-in, plain(right))
		fill(in, in, in+e, s.h-in, plain(left))
		fill(in, s.h-in-e, s.w-in, s.h-in, plain(lower))
		fill(in, in, s.w-in, in+e, plain(upper))
	}
	soft, pale := mixed(s.wood.Base, s.wood.Shade, 0.7), mixed(s.wood.Base, s.wood.Light, 0.6)
	switch s.part {
	case board, panel:
		grained(img, s)
		frame(0, s.wood.Light, pale, s.wood.Shade, soft)
		if in := grooveIn * e; s.part == panel && s.w > 4*in && s.h > 4*in {
			frame(in, s.wood.Shade, soft, pale, pale)
			frame(in+e, pale, pale, soft, soft)
		}
	case niche:
		fill(0, 0, s.w, s.h, shaded(s.dark, 0.6, 0.32))
		side := min(nicheSide*e, s.w/8, s.h/4)
		line := mixed(s.dark, color.NRGBA{A: 255}, 0.45)
		fill(0, 0, side, s.h, shaded(s.wood.Base, 0.4, 0.18))
		fill(s.w-side, 0, s.w, s.h, shaded(s.wood.Base, 0.4, 0.18))
		fill(0, s.h-2*e, s.w, s.h, plain(s.wood.Base))
		fill(side, 0, side+e, s.h-2*e, plain(line))
		fill(s.w-side-e, 0, s.w-side, s.h-2*e, plain(line))
	case plinth:
		c := mixed(s.wood.Base, color.NRGBA{A: 255}, 0.1)
		fill(0, 0, s.w, s.h, shaded(c, 0.35, 0.3))
		fill(0, 0, e, s.h, plain(s.wood.Shade))
		fill(s.w-e, 0, s.w, s.h, plain(s.wood.Shade))
	}
	return img
}

// Sizes of the floor under the run, in units of the screen.
const (
	floorHigh  = 34
	shadowHigh = 5
	sheetEdge  = 2 // which shows the focus
)

// floor paints the floor on which the run stands: a line, the floor, which fades
// into the sheet, and the run's shadow on it.
func (p *Painter) floor(e *edgesOf) {
	y := p.PY(0)
	if y < -floorHigh || y > p.Size.Height+2 {
		return
	}
	line := mixed(p.Palette.Sheet, p.Palette.Ink, 0.6)
	if !p.Palette.Flat {
		near := mixed(p.Palette.Sheet, p.Palette.Ink, 0.1)
		fading := fynecanvas.NewVerticalGradient(near, p.Palette.Sheet)
		moveTo(fading, Box{sheetEdge, y, p.Size.Width - sheetEdge, y + floorHigh})
		p.Objects = append(p.Objects, fading)
		var run plane.Rect
		for i, c := range e.cabinets {
			if i == 0 {
				run = c.Rect
			}
			run = run.Union(c.Rect)
		}
		b := p.Rect(run)
		p.fill(Box{b.X1 - shadowHigh, y, b.X2 + shadowHigh, y + shadowHigh}, mixed(near, p.Palette.Gap, 0.14))
	}
	p.Line(sheetEdge, y, p.Size.Width-sheetEdge, y, line, 1.2)
}
