// Package paint turns the marks of a drawing into Fyne's objects: pens, wood and
// hatches, and the whole pixels on which edges lie. It writes nothing.
package paint

import (
	"image/color"
	"math"
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/ui/look"
)

// Painter paints one picture. It leaves out what lies outside of the size that is
// shown.
type Painter struct {
	View    Lens
	Size    fyne.Size
	Palette look.Palette
	Front   Wood // of fronts
	Carcass Wood
	// Through lets one see through the fronts.
	Through bool
	// Plain leaves the grain out: many boards move.
	Plain   bool
	Objects []fyne.CanvasObject

	over    []fyne.CanvasObject // the marks of the chosen finding
	drawing *drawing.Drawing
	pixels  float64 // of the screen, a unit
	stock   *Stock
	x, y    Axis
}

// New begins a picture of a drawing under a lens, with so many pixels a unit of
// the screen. The stock gives boards that were painted before.
func New(d *drawing.Drawing, view Lens, size fyne.Size, pixels float32, s *Stock) *Painter {
	look := look.Current()
	p := &Painter{
		View: view.whole(float64(pixels)), Size: size, Palette: look, Front: Maple(look), Carcass: CarcassWood(look),
		pixels: float64(pixels), drawing: d, stock: s,
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

// PX and PY give the place on the screen of an x and a y: on whole pixels for
// edges, in proportion between them for what is not one.
func (p *Painter) PX(x length.Length) float32 {
	return float32(p.x.To((p.View.X+x.MM()*p.View.Scale)*p.pixels) / p.pixels)
}

// PY is described at PX.
func (p *Painter) PY(y length.Length) float32 {
	return float32(p.y.To((p.View.Y-y.MM()*p.View.Scale)*p.pixels) / p.pixels)
}

// At gives the place of a point on the screen.
func (p *Painter) At(q plane.Point) fyne.Position { return fyne.NewPos(p.PX(q.X), p.PY(q.Y)) }

// Rect gives the place of a rectangle on the screen.
func (p *Painter) Rect(r plane.Rect) Box {
	return Box{p.PX(r.Min.X), p.PY(r.Max.Y), p.PX(r.Max.X), p.PY(r.Min.Y)}
}

// pixel is the size of a pixel in units of the screen.
func (p *Painter) pixel() float32 { return float32(1 / p.pixels) }

// whole gives the nearest whole pixel.
func (p *Painter) whole(v float32) float32 {
	return float32(math.Round(float64(v)*p.pixels) / p.pixels)
}

// Shown tells that a box on the screen is at least partly visible.
func (p *Painter) Shown(b Box) bool {
	return b.X2 >= 0 && b.Y2 >= 0 && b.X1 <= p.Size.Width && b.Y1 <= p.Size.Height
}

// Line draws a straight line.
func (p *Painter) Line(x1, y1, x2, y2 float32, c color.NRGBA, width float32) {
	if !p.Shown(Box{min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2)}) {
		return
	}
	l := fynecanvas.NewLine(c)
	l.StrokeWidth = width
	l.Position1, l.Position2 = fyne.NewPos(x1, y1), fyne.NewPos(x2, y2)
	p.Objects = append(p.Objects, l)
}

// Lengths of a dash and the gap behind it, in units of the screen (ISO 128 has
// dashes of 12 and gaps of 3 line widths; this is that at a width of a screen
// pixel, shortened so that short edges still show as dashed).
const dash, dashGap = 7, 4

// Dashed draws a line along an axis in dashes; what is far outside of the screen
// gets none.
func (p *Painter) Dashed(x1, y1, x2, y2 float32, c color.NRGBA, width float32) {
	if y1 == y2 {
		x1, x2 = min(x1, x2), max(x1, x2)
		start := max(x1, x1+float32(int((max(x1, -20)-x1)/(dash+dashGap)))*(dash+dashGap))
		for x := start; x < min(x2, p.Size.Width); x += dash + dashGap {
			p.Line(x, y1, min(x+dash, x2), y1, c, width)
		}
		return
	}
	y1, y2 = min(y1, y2), max(y1, y2)
	start := y1 + float32(int((max(y1, -20)-y1)/(dash+dashGap)))*(dash+dashGap)
	for y := start; y < min(y2, p.Size.Height); y += dash + dashGap {
		p.Line(x1, y, x2, min(y+dash, y2), c, width)
	}
}

func (p *Painter) lineMark(m *drawing.Line) {
	pen := p.Palette.TagPen(m.Tag)
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

// fill paints a surface.
func (p *Painter) fill(b Box, c color.NRGBA) { p.Surface(b, c, color.NRGBA{}, 0) }

// Surface paints a rectangle with its edge.
func (p *Painter) Surface(b Box, fill, edge color.NRGBA, width float32) {
	if b.Empty() || !p.Shown(b) {
		return
	}
	r := fynecanvas.NewRectangle(fill)
	r.StrokeColor, r.StrokeWidth = edge, width
	r.Move(b.Place())
	r.Resize(b.Extent())
	p.Objects = append(p.Objects, r)
}

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
	const thin = 0x38
	surface := p.Palette.Runner
	if m.Meaning == drawing.DrawerPart {
		surface.A = thin
	}
	p.Surface(p.Rect(m.Rect), surface, p.Palette.RunnerEdge, 1)
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
		surface = p.Front.Base
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
