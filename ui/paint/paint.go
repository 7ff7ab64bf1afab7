// Package paint turns the marks of a drawing into Fyne's objects: pens, wood and
// hatches, and the whole pixels on which edges lie. It writes nothing.
package paint

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/ui/look"
)

// Painter paints one picture. It leaves out what lies outside of the size that is
// shown.
type Painter struct {
	Sheet
	Front Wood // of fronts
	// Own gives the wood of the front at a place; nil: all are of Front.
	Own     func(model.Place) Wood
	Carcass Wood
	// Through lets one see through the fronts.
	Through bool
	// Plain leaves the grain out: many boards move.
	Plain bool

	over    []fyne.CanvasObject // the marks of the chosen finding
	many    bool                // places are marked, so that each is marked quietly
	picked  bool                // a finding is chosen: the marks of others are quieter still
	drawing *drawing.Drawing
	stock   *Stock
}

// New begins a picture of a drawing under a lens, with so many pixels a unit of
// the screen. The stock gives boards that were painted before.
func New(d *drawing.Drawing, view Lens, size fyne.Size, pixels float32, s *Stock) *Painter {
	look := look.Current()
	p := &Painter{
		Sheet: Sheet{View: view.whole(float64(pixels)), Size: size, Palette: look, pixels: float64(pixels)},
		Front: Maple(look), Carcass: CarcassWood(look), drawing: d, stock: s,
	}
	p.x, p.y = s.edges(d).axes(p.View, p.pixels)
	return p
}

// Marks adds the lines and surfaces of the drawing: what is found in it over
// everything else, but for the chosen finding, which waits for Chosen.
func (p *Painter) Marks() {
	d, e := p.drawing, p.stock.edges(p.drawing)
	p.stock.begin()
	defer p.stock.end()
	if len(e.fronts) > 0 && len(e.cabinets) > 0 && elevation(d) {
		p.floor(e)
	}
	dark := false
	for _, m := range d.Marks {
		if r, ok := m.(*drawing.Rectangle); ok && isFront(r) && !dark && elevation(d) {
			dark = true // behind the first of all fronts
			for _, s := range e.shadows() {
				p.fill(p.Rect(s), p.Palette.Gap)
			}
		}
		p.mark(m)
	}
	const several = 12
	spots := 0
	for _, m := range d.Marks {
		if s, ok := m.(*drawing.Spot); ok {
			spots++
			p.many = p.many || spots > several
			p.picked = p.picked || s.Chosen
		}
	}
	for _, m := range d.Marks {
		if s, ok := m.(*drawing.Spot); ok {
			p.spot(s)
		}
	}
}

// elevation tells that a drawing shows the run from the room: what divides its
// fronts can be taken hold of.
func elevation(d *drawing.Drawing) bool {
	return slices.ContainsFunc(d.Marks, func(m drawing.Mark) bool {
		r, ok := m.(*drawing.Rectangle)
		return ok && r.Of.Kind == drawing.CabinetThing && r.Filled
	})
}

func (p *Painter) mark(m drawing.Mark) {
	switch v := m.(type) {
	case *drawing.Line:
		p.lineMark(v)
	case *drawing.Rectangle:
		p.rectangle(v)
	case *drawing.Circle:
		p.circle(v)
	case *drawing.Hatch:
		p.hatch(v)
	}
}

func (p *Painter) lineMark(m *drawing.Line) {
	pen := p.Palette.TagPen(m.Tag)
	if m.Meaning == drawing.Face && m.Of.Kind == drawing.FrontThing {
		pen = p.joint(m.Of)
	}
	a, b := p.At(m.From), p.At(m.To)
	if m.Meaning == drawing.HoleCross && abs(a.X-b.X)+abs(a.Y-b.Y) < dot { // under its dot
		return
	}
	if m.Dashed && (m.From.X == m.To.X || m.From.Y == m.To.Y) {
		p.Dashed(a.X, a.Y, b.X, b.Y, pen.Line, pen.Width)
		return
	}
	p.Line(a.X, a.Y, b.X, b.Y, pen.Line, pen.Width)
}

func abs(v float32) float32 { return max(v, -v) }

func (p *Painter) rectangle(m *drawing.Rectangle) {
	switch {
	case m.Meaning == drawing.Grip:
		return
	case isFront(m):
		p.front(m)
		return
	case m.Meaning == drawing.Plinth && m.Filled:
		p.plinth(m)
		return
	case m.Meaning == drawing.Covered:
		p.covered(p.Rect(m.Rect), p.Palette.TagPen(m.Tag).Surface)
		return
	case p.Through && (m.Meaning == drawing.DrawerPart || m.Meaning == drawing.RunnerPart):
		p.behind(m)
		return
	}
	b := p.Rect(m.Rect)
	if !p.Shown(b) {
		return
	}
	pen := p.Palette.TagPen(m.Tag)
	if m.Dashed {
		if m.Filled {
			p.fill(b, pen.Surface)
		}
		p.Dashed(b.X1, b.Y1, b.X2, b.Y1, pen.Line, pen.Width)
		p.Dashed(b.X1, b.Y2, b.X2, b.Y2, pen.Line, pen.Width)
		p.Dashed(b.X1, b.Y1, b.X1, b.Y2, pen.Line, pen.Width)
		p.Dashed(b.X2, b.Y1, b.X2, b.Y2, pen.Line, pen.Width)
		return
	}
	surface := color.NRGBA{}
	switch {
	case m.Filled && m.Meaning == drawing.Face:
		surface = p.wood(m.Of).Base
	case m.Filled:
		surface = pen.Surface
	case m.Meaning == drawing.Carcass && m.Of.Kind == drawing.BayThing: // an opening into the dark
		surface = p.Palette.Gap
	}
	p.Surface(b, surface, pen.Line, pen.Width)
}

// behind paints what is seen through a front: the drawer, through which the holes
// are seen, and its runner.
func (p *Painter) behind(m *drawing.Rectangle) {
	p.Surface(p.Rect(m.Rect), p.metal(m.Meaning), p.Palette.RunnerEdge, 1)
}

// metal is the colour of a runner, or of a drawer, which is thin.
func (p *Painter) metal(m drawing.Meaning) color.NRGBA {
	const thin = 0x38
	c := p.Palette.Runner
	if m == drawing.DrawerPart {
		c.A = thin
	}
	return c
}

// Sample paints in a box how what is seen behind a front looks, for a legend.
func (p *Painter) Sample(m drawing.Meaning, b Box) {
	pen := p.Palette.Pen(m)
	switch m {
	case drawing.RunnerPart:
		p.Surface(b, p.metal(m), p.Palette.RunnerEdge, 1)
	case drawing.FindingMark:
		s := stylus{Painter: p, severity: drawing.OfError, ink: p.Palette.Error, tint: p.Palette.ErrorTint, width: 2}
		s.band(b, true)
	case drawing.HoleEdge:
		x, y, r := p.whole((b.X1+b.X2)/2), p.whole((b.Y1+b.Y2)/2), float32(dot)/2+1
		p.Line(x-2*r, y, x+2*r, y, pen.Line, 1)
		p.Line(x, y-2*r, x, y+2*r, pen.Line, 1)
		s := stylus{Painter: p}
		s.circleAt(x, y, r, pen.Line, pen.Width)
	default:
		p.Surface(b, pen.Surface, pen.Line, pen.Width)
	}
}

// signHigh is how high the sign of a front is that covers its drawer bottom.
const signHigh = 3

// covered paints at the lower edge of a front that it covers its drawer bottom: a
// quiet sign, left out where it would be all that is seen of the front, and where
// colours tell nothing.
func (p *Painter) covered(b Box, c color.NRGBA) {
	if p.Palette.Flat || b.X2-b.X1 < leastGrained {
		return
	}
	px := p.pixel()
	p.fill(Box{b.X1, b.Y2 - signHigh, b.X2, b.Y2 - px}, c)
}

// dot is how large a hole that is too small for a ring is drawn. At less than
// so many screen units a millimetre small holes are left out: dots of holes 32 mm
// apart would run together.
const (
	dot          = 4
	leastForDots = dot / 32.0
)

// Ring is where a circle is painted: one too small for a ring is a dot that can
// be seen. It is false for one that is left out.
func (p *Painter) Ring(m *drawing.Circle) (b Box, small, ok bool) {
	at, size := p.At(m.Centre), float32(2*m.Radius.MM()*p.View.Scale)
	small = size < dot
	half := max(size, dot) / 2
	b = Box{at.X, at.Y, at.X, at.Y}.Grown(half, half)
	return b, small, !(small && p.View.Scale < leastForDots) && p.Shown(b)
}

func (p *Painter) circle(m *drawing.Circle) {
	b, small, ok := p.Ring(m)
	if !ok {
		return
	}
	pen := p.Palette.TagPen(m.Tag)
	c := fynecanvas.NewCircle(color.Transparent)
	c.StrokeColor, c.StrokeWidth = pen.Line, pen.Width
	if small {
		c.FillColor = pen.Line
	}
	c.Move(b.Place())
	c.Resize(b.Extent())
	p.Objects = append(p.Objects, c)
}

// hatchStep is between two lines of a hatch, in units of the screen.
const hatchStep = 7

// hatch draws lines at 45° clipped to the rectangle, which rise to the right or
// fall.
func (p *Painter) hatch(m *drawing.Hatch) {
	pen := p.Palette.TagPen(m.Tag)
	b := p.Rect(m.Rect).Common(Box{0, 0, p.Size.Width, p.Size.Height})
	if b.Empty() {
		return
	}
	surface := pen.Surface
	if m.Meaning == drawing.Face {
		surface = p.wood(m.Of).Base
	}
	p.fill(b, surface)
	w, h := b.X2-b.X1, b.Y2-b.Y1
	step, colour := float32(hatchStep), p.Palette.Hatch(m.Meaning)
	if m.Close {
		step /= 2
	}
	for s := step; s < w+h; s += step {
		// the line from (s,0) going down left, in the box's own frame
		ax, ay := s, float32(0)
		if ax > w {
			ax, ay = w, s-w
		}
		bx, by := float32(0), s
		if by > h {
			bx, by = s-h, h
		}
		if m.Falling {
			ax, bx = w-ax, w-bx
		}
		p.Line(b.X1+ax, b.Y1+ay, b.X1+bx, b.Y1+by, colour, min(pen.Width, 1))
	}
}
