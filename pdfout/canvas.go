package pdfout

import (
	"bytes"
	"fmt"
	"math"
	"strconv"

	"github.com/jung-kurt/gofpdf"

	"frontlay/layout/sheet/lettering"
	"frontlay/model/length"
)

// pt is a length in points, 1/72 inch.
func pt(l length.Length) float64 { return float64(l) * (72.0 / 25.4e6) }

// canvas writes paths and letters on a page, in points, origin at the lower
// left corner, y up: the PDF's own frame. It writes four decimals of a point
// (0.00004 mm), which the library's own path functions do not. The first fault
// is kept in err and ends all drawing.
type canvas struct {
	pdf    *gofpdf.Fpdf
	height float64 // of the page
	middle point   // of the page, about which the printer's fault is corrected
	factor point   // the correction across and up
	buf    []byte  // paths not yet handed over
	err    error
	pen    pen
	fresh  bool // pen is what the page has
	ink    colour
	inked  bool // ink is what the page has
	bold   bool
	size   float64
	lined  bool // a font is set on this page
}

// number appends a coordinate.
func (c *canvas) number(v float64) {
	if math.IsNaN(v) || math.IsInf(v, 0) || math.Abs(v) > 1e7 {
		if c.err == nil {
			c.err = fmt.Errorf("a coordinate (%v) can't be written", v)
		}
		v = 0
	}
	// Rounding here keeps the digits short: AppendFloat with -1 gives the
	// fewest that read back as the same number.
	v = math.Round(v*1e4) / 1e4
	if v == 0 {
		v = 0 // never -0
	}
	c.buf = strconv.AppendFloat(c.buf, v, 'f', -1, 64)
	c.buf = append(c.buf, ' ')
}

func (c *canvas) op(s string) {
	c.buf = append(c.buf, s...)
	c.buf = append(c.buf, '\n')
}

// xy appends a place, moved by the printer's correction: the coordinates, not a
// transform, so that line widths and letters keep their size.
func (c *canvas) xy(p point) {
	p = c.corrected(p)
	c.number(p.x)
	c.number(p.y)
}

func (c *canvas) corrected(p point) point {
	return point{c.middle.x + (p.x-c.middle.x)*c.factor.x, c.middle.y + (p.y-c.middle.y)*c.factor.y}
}

func (c *canvas) point(p point, op string) {
	c.xy(p)
	c.op(op)
}

// flush hands the paths over to the page.
func (c *canvas) flush() {
	if len(c.buf) > 0 {
		c.pdf.RawWriteBuf(bytes.NewReader(c.buf))
		c.buf = c.buf[:0]
	}
}

// point is a place on the page in points.
type point struct{ x, y float64 }

// use sets the pen where it is not set yet.
func (c *canvas) use(p pen) {
	if c.fresh && c.pen == p {
		return
	}
	c.number(pt(p.width))
	c.op("w")
	for _, v := range p.colour {
		c.number(v)
	}
	c.op("RG")
	c.op(p.dash.pattern())
	c.op("1 J 1 j")
	c.pen, c.fresh = p, true
}

func (c *canvas) line(a, b point) {
	c.point(a, "m")
	c.point(b, "l")
	c.op("S")
}

// rect paints a rectangle's surface, its edge, or both.
func (c *canvas) rect(lo, hi point, fill *colour, stroke bool) {
	if fill != nil {
		c.fill(*fill)
	}
	c.area(lo, hi)
	c.op("re")
	switch {
	case fill != nil && stroke:
		c.op("B")
	case fill != nil:
		c.op("f")
	default:
		c.op("S")
	}
}

// area appends a rectangle as place and size.
func (c *canvas) area(lo, hi point) {
	lo, hi = c.corrected(lo), c.corrected(hi)
	c.number(lo.x)
	c.number(lo.y)
	c.number(hi.x - lo.x)
	c.number(hi.y - lo.y)
}

// fill sets the colour of surfaces and letters where it is not set yet. The
// library would set that of letters by itself, but knows nothing of ours.
func (c *canvas) fill(f colour) {
	if c.inked && c.ink == f {
		return
	}
	for _, v := range f {
		c.number(v)
	}
	c.op("rg")
	c.ink, c.inked = f, true
}

// eighth is the handle's share of the radius for an arc of 45°: 4/3·tan(θ/4).
var eighth = 4.0 / 3.0 * math.Tan(math.Pi/16)

// circle draws eight Bézier arcs: off by 4 millionths of the radius, where the
// library's four are off by 3 thousandths.
func (c *canvas) circle(m point, r float64) {
	at := func(angle, along float64) point {
		sin, cos := math.Sincos(angle)
		return point{m.x + r*(cos-along*sin), m.y + r*(sin+along*cos)}
	}
	c.point(at(0, 0), "m")
	for i := range 8 {
		from, to := float64(i)*math.Pi/4, float64(i+1)*math.Pi/4
		p, q := at(from, eighth), at(to, -eighth)
		c.xy(p)
		c.xy(q)
		c.point(at(to, 0), "c")
	}
	c.op("s")
}

// triangle fills an arrowhead.
func (c *canvas) triangle(a, b, d point, f colour) {
	c.fill(f)
	c.point(a, "m")
	c.point(b, "l")
	c.point(d, "l")
	c.op("f")
}

// clip begins an area outside of which nothing shows; unclip ends it.
func (c *canvas) clip(lo, hi point) {
	c.op("q")
	c.area(lo, hi)
	c.op("re W n")
	c.fresh, c.inked = false, false
}

func (c *canvas) unclip() {
	c.op("Q")
	c.fresh, c.inked = false, false
}

// text writes one line, its base line beginning at p. Letters beyond U+FFFF,
// which the library can't write, become a replacement mark.
func (c *canvas) text(p point, size length.Length, bold bool, s string, f colour) {
	c.fill(f)
	c.flush()
	p = c.corrected(p)
	if math.IsNaN(p.x) || math.IsNaN(p.y) {
		c.number(math.NaN()) // the library would write it without a word
		return
	}
	c.font(bold, pt(lettering.Em(size)))
	c.pdf.Text(p.x, c.height-p.y, writable(s))
}

// font sets the font where it is not set yet on this page.
func (c *canvas) font(bold bool, em float64) {
	if c.lined && c.bold == bold && c.size == em {
		return
	}
	style := ""
	if bold {
		style = "B"
	}
	c.pdf.SetFont(fontName, style, em)
	c.lined, c.bold, c.size = true, bold, em
}

func writable(s string) string {
	for _, r := range s {
		if r > 0xFFFF || r < 0x20 {
			return string(replaced(s))
		}
	}
	return s
}

func replaced(s string) []rune {
	letters := []rune(s)
	for i, r := range letters {
		switch {
		case r > 0xFFFF:
			letters[i] = '\uFFFD'
		case r < 0x20:
			letters[i] = ' '
		}
	}
	return letters
}
