package pdfout

import (
	"bytes"
	"fmt"
	"math"
	"strconv"

	"github.com/jung-kurt/gofpdf"

	"frontlay/layout/ink"
	"frontlay/layout/lettering"
	"frontlay/model/length"
)

// pt is a length in points, 1/72 inch.
func pt(l length.Length) float64 { return float64(l) * (72.0 / 25.4e6) }

// canvas writes paths and letters on a page: an ink.Canvas. It writes four decimals of a point
// (0.00004 mm), which the library's own path functions do not. The first fault
// is kept in err and ends all drawing.
type canvas struct {
	pdf    *gofpdf.Fpdf
	height float64   // of the page
	middle ink.Point // of the page in mm, about which the printer's fault is corrected
	factor ink.Point // the correction across and up
	buf    []byte    // paths not yet handed over
	err    error
	pen    ink.Pen
	fresh  bool // pen is what the page has
	ink    ink.Colour
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
	c.buf = appendDecimal(c.buf, int64(math.Round(v*1e4)))
	c.buf = append(c.buf, ' ')
}

// appendDecimal writes a count of ten-thousandths as a decimal number, without
// zeros at its end. It is several times as fast as strconv for floats.
func appendDecimal(b []byte, n int64) []byte {
	if n < 0 {
		b = append(b, '-')
		n = -n
	}
	b = strconv.AppendInt(b, n/1e4, 10)
	if n %= 1e4; n == 0 {
		return b
	}
	b = append(b, '.', byte('0'+n/1000), byte('0'+n/100%10), byte('0'+n/10%10), byte('0'+n%10))
	for b[len(b)-1] == '0' {
		b = b[:len(b)-1]
	}
	return b
}

func (c *canvas) op(s string) {
	c.buf = append(c.buf, s...)
	c.buf = append(c.buf, '\n')
}

// xy appends a place.
func (c *canvas) xy(p ink.Point) {
	p = c.inPoints(p)
	c.number(p.X)
	c.number(p.Y)
}

// perMM is how many points a millimetre has.
const perMM = 72 / 25.4

// inPoints moves a place by the printer's correction and gives it in points:
// the coordinates are corrected, not by a transform, so that line widths and
// letters keep their size.
func (c *canvas) inPoints(p ink.Point) ink.Point {
	return ink.Point{
		X: (c.middle.X + (p.X-c.middle.X)*c.factor.X) * perMM,
		Y: (c.middle.Y + (p.Y-c.middle.Y)*c.factor.Y) * perMM,
	}
}

func (c *canvas) point(p ink.Point, op string) {
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

// use sets the pen where it is not set yet.
func (c *canvas) use(p ink.Pen) {
	if c.fresh && c.pen == p {
		return
	}
	c.number(p.Width * perMM)
	c.op("w")
	for _, v := range p.Colour {
		c.number(v)
	}
	c.op("RG")
	c.buf = append(c.buf, '[')
	for _, v := range p.Dash.Pattern() {
		c.number(v * perMM)
	}
	c.op("] 0 d 1 J 1 j")
	c.pen, c.fresh = p, true
}

// Line implements ink.Canvas.
func (c *canvas) Line(p ink.Pen, a, b ink.Point) {
	c.use(p)
	c.point(a, "m")
	c.point(b, "l")
	c.op("S")
}

// Rect implements ink.Canvas.
func (c *canvas) Rect(edge *ink.Pen, fill *ink.Colour, lo, hi ink.Point) {
	if fill != nil {
		c.fill(*fill)
	}
	if edge != nil {
		c.use(*edge)
	}
	c.area(lo, hi)
	c.op("re")
	switch {
	case fill != nil && edge != nil:
		c.op("B")
	case fill != nil:
		c.op("f")
	case edge != nil:
		c.op("S")
	default:
		c.op("n")
	}
}

// area appends a rectangle as place and size.
func (c *canvas) area(lo, hi ink.Point) {
	p, q := c.inPoints(lo), c.inPoints(hi)
	c.number(p.X)
	c.number(p.Y)
	c.number(q.X - p.X)
	c.number(q.Y - p.Y)
}

// fill sets the colour of surfaces and letters where it is not set yet. The
// library would set that of letters by itself, but knows nothing of ours.
func (c *canvas) fill(f ink.Colour) {
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

// Circle implements ink.Canvas. It draws eight Bézier arcs: off by 4 millionths of the radius, where the
// library's four are off by 3 thousandths.
func (c *canvas) Circle(p ink.Pen, m ink.Point, r float64) {
	c.use(p)
	at := func(angle, along float64) ink.Point {
		sin, cos := math.Sincos(angle)
		return ink.Point{X: m.X + r*(cos-along*sin), Y: m.Y + r*(sin+along*cos)}
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

// Triangle implements ink.Canvas.
func (c *canvas) Triangle(f ink.Colour, a, b, d ink.Point) {
	c.fill(f)
	c.point(a, "m")
	c.point(b, "l")
	c.point(d, "l")
	c.op("f")
}

// Clip implements ink.Canvas.
func (c *canvas) Clip(lo, hi ink.Point) {
	c.op("q")
	c.area(lo, hi)
	c.op("re W n")
	c.fresh, c.inked = false, false
}

// Unclip implements ink.Canvas.
func (c *canvas) Unclip() {
	c.op("Q")
	c.fresh, c.inked = false, false
}

// Text implements ink.Canvas. Letters beyond U+FFFF, which the library can't
// write, become a replacement mark.
func (c *canvas) Text(at ink.Point, size length.Length, bold, turned bool, f ink.Colour, s string) {
	c.fill(f)
	c.flush()
	p := c.inPoints(at)
	if math.IsNaN(p.X) || math.IsNaN(p.Y) {
		c.number(math.NaN()) // the library would write it without a word
		return
	}
	c.font(bold, pt(lettering.Em(size)))
	if !turned {
		c.pdf.Text(p.X, c.height-p.Y, writable(s))
		return
	}
	c.op("q 0 1 -1 0")
	c.xy(at)
	c.op("cm")
	c.flush()
	c.pdf.Text(0, c.height, writable(s))
	c.op("Q")
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
