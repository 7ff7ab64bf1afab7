package picture

import (
	"fmt"
	"image"
	"image/color"
	"image/draw"
	"math"

	"golang.org/x/image/font"
	"golang.org/x/image/font/gofont/gobold"
	"golang.org/x/image/font/gofont/goregular"
	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"golang.org/x/image/vector"

	"frontlay/layout/ink"
	"frontlay/layout/lettering"
	"frontlay/model/length"
)

// canvas is an ink.Canvas of pixels, y down. The first fault is kept in err.
type canvas struct {
	img   *image.RGBA
	clip  image.Rectangle
	per   float64       // pixels for a millimetre
	fonts [2]*sfnt.Font // regular, bold
	glyph sfnt.Buffer
	err   error
}

func (c *canvas) load() error {
	for i, ttf := range [][]byte{goregular.TTF, gobold.TTF} {
		f, err := sfnt.Parse(ttf)
		if err != nil {
			return fmt.Errorf("the letters of a picture can’t be read: %w", err)
		}
		c.fonts[i] = f
	}
	return nil
}

// at is a place of the page in pixels.
func (c *canvas) at(p ink.Point) ink.Point {
	return ink.Point{X: p.X * c.per, Y: float64(c.img.Rect.Max.Y) - p.Y*c.per}
}

// step is a part of an outline in pixels: a line to To, or a curve to it about its
// handles; Move begins a new one.
type step struct {
	kind sfnt.SegmentOp
	a, b ink.Point // handles of curves
	to   ink.Point
}

// fill paints an outline.
func (c *canvas) fill(f ink.Colour, outline []step) {
	lo, hi := ink.Point{X: math.Inf(1), Y: math.Inf(1)}, ink.Point{X: math.Inf(-1), Y: math.Inf(-1)}
	grow := func(p ink.Point) {
		lo.X, lo.Y = math.Min(lo.X, p.X), math.Min(lo.Y, p.Y)
		hi.X, hi.Y = math.Max(hi.X, p.X), math.Max(hi.Y, p.Y)
	}
	for _, s := range outline {
		grow(s.to)
		switch s.kind {
		case sfnt.SegmentOpCubeTo:
			grow(s.b)
			fallthrough
		case sfnt.SegmentOpQuadTo:
			grow(s.a)
		}
	}
	if math.IsNaN(lo.X+lo.Y+hi.X+hi.Y) || math.IsInf(lo.X+lo.Y+hi.X+hi.Y, 0) {
		if len(outline) > 0 && c.err == nil {
			c.err = fmt.Errorf("a coordinate of the picture can’t be painted")
		}
		return
	}
	// What lies outside is cut off: it costs nothing, however large it is.
	const far = 1 << 14
	lo.X, lo.Y, hi.X, hi.Y = math.Max(lo.X, -far), math.Max(lo.Y, -far), math.Min(hi.X, 2*far), math.Min(hi.Y, 2*far)
	r := image.Rect(int(math.Floor(lo.X)), int(math.Floor(lo.Y)), int(math.Ceil(hi.X))+1, int(math.Ceil(hi.Y))+1)
	shown := r.Intersect(c.clip)
	if shown.Empty() {
		return
	}
	z := vector.NewRasterizer(shown.Dx(), shown.Dy())
	xy := func(p ink.Point) (float32, float32) {
		return float32(p.X - float64(shown.Min.X)), float32(p.Y - float64(shown.Min.Y))
	}
	for i, s := range outline {
		x, y := xy(s.to)
		ax, ay := xy(s.a)
		bx, by := xy(s.b)
		switch s.kind {
		case sfnt.SegmentOpMoveTo:
			if i > 0 {
				z.ClosePath()
			}
			z.MoveTo(x, y)
		case sfnt.SegmentOpLineTo:
			z.LineTo(x, y)
		case sfnt.SegmentOpQuadTo:
			z.QuadTo(ax, ay, x, y)
		case sfnt.SegmentOpCubeTo:
			z.CubeTo(ax, ay, bx, by, x, y)
		}
	}
	z.ClosePath()
	z.DrawOp = draw.Over
	z.Draw(c.img, shown, image.NewUniform(rgb(f)), image.Point{})
}

func rgb(f ink.Colour) color.RGBA {
	v := func(x float64) uint8 { return uint8(math.Round(255 * math.Min(math.Max(x, 0), 1))) }
	return color.RGBA{R: v(f[0]), G: v(f[1]), B: v(f[2]), A: 255}
}

// polygon is an outline with straight edges.
func polygon(points ...ink.Point) []step {
	outline := []step{{kind: sfnt.SegmentOpMoveTo, to: points[0]}}
	for _, p := range points[1:] {
		outline = append(outline, step{kind: sfnt.SegmentOpLineTo, to: p})
	}
	return outline
}

// Line implements ink.Canvas.
func (c *canvas) Line(p ink.Pen, a, b ink.Point) {
	from, to := c.at(a), c.at(b)
	dx, dy := to.X-from.X, to.Y-from.Y
	long := math.Hypot(dx, dy)
	if long == 0 {
		return
	}
	dx, dy = dx/long, dy/long
	half := c.half(p)
	stroke := func(s, e float64) {
		// As on paper, lines reach half their width past their ends, so that those
		// that meet at a corner fill it.
		s, e = s-half, e+half
		x1, y1, x2, y2 := from.X+dx*s, from.Y+dy*s, from.X+dx*e, from.Y+dy*e
		nx, ny := -dy*half, dx*half
		c.fill(p.Colour, polygon(ink.Point{X: x1 + nx, Y: y1 + ny}, ink.Point{X: x2 + nx, Y: y2 + ny}, ink.Point{X: x2 - nx, Y: y2 - ny}, ink.Point{X: x1 - nx, Y: y1 - ny}))
	}
	pattern := p.Dash.Pattern()
	if len(pattern) == 0 || long > 1e5 {
		stroke(0, long)
		return
	}
	for s, i := 0.0, 0; s < long; i++ {
		e := s + pattern[i%len(pattern)]*c.per
		if i%2 == 0 {
			stroke(s+half, math.Max(math.Min(e, long)-half, s+half))
		}
		s = e
	}
}

// half is half the width of a pen in pixels: no line is less than a pixel wide.
func (c *canvas) half(p ink.Pen) float64 { return math.Max(p.Width*c.per, 1) / 2 }

// Rect implements ink.Canvas.
func (c *canvas) Rect(edge *ink.Pen, fill *ink.Colour, lo, hi ink.Point) {
	p, q := ink.Point{X: hi.X, Y: lo.Y}, ink.Point{X: lo.X, Y: hi.Y}
	if fill != nil {
		c.fill(*fill, polygon(c.at(lo), c.at(p), c.at(hi), c.at(q)))
	}
	if edge != nil {
		c.Line(*edge, lo, p)
		c.Line(*edge, p, hi)
		c.Line(*edge, hi, q)
		c.Line(*edge, q, lo)
	}
}

// Circle implements ink.Canvas.
func (c *canvas) Circle(p ink.Pen, centre ink.Point, radius float64) {
	m, r, half := c.at(centre), radius*c.per, c.half(p)
	ring := circle(m, r+half, 1)
	if r > half {
		ring = append(ring, circle(m, r-half, -1)...)
	}
	c.fill(p.Colour, ring)
}

// circle is a circle of eight arcs, turning one way or the other: a third-degree curve
// of 45° has its handles 4/3·tan(θ/4) of the radius from its ends.
func circle(m ink.Point, r, way float64) []step {
	handle := 4.0 / 3.0 * math.Tan(math.Pi/16)
	at := func(angle, along float64) ink.Point {
		sin, cos := math.Sincos(angle)
		return ink.Point{X: m.X + r*(cos-along*sin), Y: m.Y + way*r*(sin+along*cos)}
	}
	outline := []step{{kind: sfnt.SegmentOpMoveTo, to: at(0, 0)}}
	for i := range 8 {
		from, to := float64(i)*math.Pi/4, float64(i+1)*math.Pi/4
		outline = append(outline, step{kind: sfnt.SegmentOpCubeTo, a: at(from, handle), b: at(to, -handle), to: at(to, 0)})
	}
	return outline
}

// Triangle implements ink.Canvas.
func (c *canvas) Triangle(f ink.Colour, a, b, d ink.Point) {
	c.fill(f, polygon(c.at(a), c.at(b), c.at(d)))
}

// Clip implements ink.Canvas.
func (c *canvas) Clip(lo, hi ink.Point) {
	a, b := c.at(lo), c.at(hi)
	c.clip = image.Rect(int(math.Round(a.X)), int(math.Round(b.Y)), int(math.Round(b.X)), int(math.Round(a.Y))).Intersect(c.img.Rect)
}

// Unclip implements ink.Canvas.
func (c *canvas) Unclip() { c.clip = c.img.Rect }

// Text implements ink.Canvas. A letter that the fonts do not have becomes their mark
// for that.
func (c *canvas) Text(at ink.Point, size length.Length, bold, turned bool, f ink.Colour, s string) {
	c.write(at, size, bold, turned, f, s)
}

func (c *canvas) write(at ink.Point, size length.Length, bold, turned bool, f ink.Colour, s string) {
	face := c.fonts[0]
	if bold {
		face = c.fonts[1]
	}
	pen := c.at(at)
	units := fixed.I(int(face.UnitsPerEm())) // so that outlines come in units of the font
	k := lettering.Em(size).MM() * c.per / float64(units)
	for _, r := range s {
		i, err := face.GlyphIndex(&c.glyph, r)
		if err != nil {
			c.fault(err)
			return
		}
		segments, err := face.LoadGlyph(&c.glyph, i, units, nil)
		if err != nil {
			c.fault(err)
			return
		}
		place := func(p fixed.Point26_6) ink.Point {
			x, y := float64(p.X)*k, float64(p.Y)*k
			if turned {
				x, y = y, -x
			}
			return ink.Point{X: pen.X + x, Y: pen.Y + y}
		}
		var outline []step
		for _, g := range segments {
			switch g.Op {
			case sfnt.SegmentOpQuadTo:
				outline = append(outline, step{kind: g.Op, a: place(g.Args[0]), to: place(g.Args[1])})
			case sfnt.SegmentOpCubeTo:
				outline = append(outline, step{kind: g.Op, a: place(g.Args[0]), b: place(g.Args[1]), to: place(g.Args[2])})
			default:
				outline = append(outline, step{kind: g.Op, to: place(g.Args[0])})
			}
		}
		if len(outline) > 0 {
			c.fill(f, outline)
		}
		wide, err := face.GlyphAdvance(&c.glyph, i, units, font.HintingNone)
		if err != nil {
			c.fault(err)
			return
		}
		if turned {
			pen.Y -= float64(wide) * k
		} else {
			pen.X += float64(wide) * k
		}
	}
}

func (c *canvas) fault(err error) {
	if c.err == nil {
		c.err = fmt.Errorf("a letter of the picture can’t be painted: %w", err)
	}
}
