// Package svg writes a drawing as SVG 1.1, in millimetres, with the same pens
// and places of figures as on paper.
package svg

import (
	"bufio"
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/ink"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Options say how a drawing is written: its scale is 1:Den (0: full size), its
// texts are in the language and unit of Say.
type Options struct {
	Den int64
	Say message.Language
}

// margin is what stays white around the drawing.
const margin = 5 * length.Millimetre

// Write writes the drawing as large as it is at the scale, with a small margin.
// It fails on lengths that can't be written and where w fails.
func Write(w io.Writer, d *drawing.Drawing, o Options) error {
	o.Den = max(o.Den, 1)
	r := d.OnPaper(o.Den, o.Say).Grow(margin)
	c := &canvas{w: bufio.NewWriter(w), height: r.Height().MM()}
	fmt.Fprintf(c.w, `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="%[1]smm" height="%[2]smm" viewBox="0 0 %[1]s %[2]s">
<title>%[3]s</title>
<g font-family="Go, 'DejaVu Sans', sans-serif" stroke-linecap="round" stroke-linejoin="round">
`, c.n(r.Width().MM()), c.n(c.height), escaped(o.Say.Say(d.Title)))
	ink.Draw(c, []drawing.Placed{{
		Drawing: d, At: plane.Point{X: -r.Min.X, Y: -r.Min.Y}, ScaleNum: 1, ScaleDen: o.Den,
	}}, plane.R(0, 0, r.Width(), r.Height()), o.Say)
	fmt.Fprint(c.w, "</g>\n</svg>\n")
	if err := c.w.Flush(); err != nil {
		return err
	}
	return c.err
}

// canvas implements ink.Canvas; SVG's y runs down.
type canvas struct {
	w      *bufio.Writer // keeps the first fault for Flush
	height float64
	err    error
	clips  int
}

// n writes a number of millimetres with up to five decimals.
func (c *canvas) n(v float64) string {
	if math.IsNaN(v) || math.IsInf(v, 0) || math.Abs(v) > 1e7 {
		c.err = errors.New("a coordinate of the drawing can’t be written")
		v = 0
	}
	return strconv.FormatFloat(math.Round(v*1e5)/1e5, 'f', -1, 64)
}

func (c *canvas) xy(p ink.Point) (x, y string) { return c.n(p.X), c.n(c.height - p.Y) }

func (c *canvas) stroke(p ink.Pen) string {
	s := fmt.Sprintf(`stroke="%s" stroke-width="%s"`, hex(p.Colour), c.n(p.Width))
	if pattern := p.Dash.Pattern(); len(pattern) > 0 {
		var all []string
		for _, v := range pattern {
			all = append(all, c.n(v))
		}
		s += fmt.Sprintf(` stroke-dasharray="%s"`, strings.Join(all, " "))
	}
	return s
}

func hex(c ink.Colour) string {
	return fmt.Sprintf("#%02x%02x%02x", int(c[0]*255+0.5), int(c[1]*255+0.5), int(c[2]*255+0.5))
}

// Line implements ink.Canvas.
func (c *canvas) Line(p ink.Pen, a, b ink.Point) {
	x1, y1 := c.xy(a)
	x2, y2 := c.xy(b)
	fmt.Fprintf(c.w, "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\" %s/>\n", x1, y1, x2, y2, c.stroke(p))
}

// Rect implements ink.Canvas.
func (c *canvas) Rect(edge *ink.Pen, fill *ink.Colour, lo, hi ink.Point) {
	look := `fill="none"`
	if fill != nil {
		look = fmt.Sprintf(`fill="%s"`, hex(*fill))
	}
	if edge != nil {
		look += " " + c.stroke(*edge)
	}
	x, y := c.xy(ink.Point{X: lo.X, Y: hi.Y})
	fmt.Fprintf(c.w, "<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" %s/>\n", x, y, c.n(hi.X-lo.X), c.n(hi.Y-lo.Y), look)
}

// Circle implements ink.Canvas.
func (c *canvas) Circle(p ink.Pen, m ink.Point, r float64) {
	x, y := c.xy(m)
	fmt.Fprintf(c.w, "<circle cx=\"%s\" cy=\"%s\" r=\"%s\" fill=\"none\" %s/>\n", x, y, c.n(r), c.stroke(p))
}

// Triangle implements ink.Canvas.
func (c *canvas) Triangle(fill ink.Colour, p, q, r ink.Point) {
	var at []string
	for _, v := range []ink.Point{p, q, r} {
		x, y := c.xy(v)
		at = append(at, x+","+y)
	}
	fmt.Fprintf(c.w, "<polygon points=\"%s\" fill=\"%s\"/>\n", strings.Join(at, " "), hex(fill))
}

// Clip implements ink.Canvas.
func (c *canvas) Clip(lo, hi ink.Point) {
	c.clips++
	x, y := c.xy(ink.Point{X: lo.X, Y: hi.Y})
	fmt.Fprintf(c.w, "<clipPath id=\"clip%d\"><rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\"/></clipPath>\n<g clip-path=\"url(#clip%d)\">\n",
		c.clips, x, y, c.n(hi.X-lo.X), c.n(hi.Y-lo.Y), c.clips)
}

// Unclip implements ink.Canvas.
func (c *canvas) Unclip() { fmt.Fprint(c.w, "</g>\n") }

// Text implements ink.Canvas. textLength keeps the width that was reckoned with,
// whatever font the reader has.
func (c *canvas) Text(at ink.Point, size length.Length, bold, turned bool, colour ink.Colour, s string) {
	x, y := c.xy(at)
	weight := ""
	if bold {
		weight = ` font-weight="bold"`
	}
	if turned {
		weight += fmt.Sprintf(` transform="rotate(-90 %s %s)"`, x, y)
	}
	fmt.Fprintf(c.w, "<text x=\"%s\" y=\"%s\" font-size=\"%s\"%s fill=\"%s\" textLength=\"%s\" lengthAdjust=\"spacingAndGlyphs\">%s</text>\n",
		x, y, c.n(lettering.Em(size).MM()), weight, hex(colour), c.n(lettering.Width(s, size, bold).MM()), escaped(s))
}

func escaped(s string) string {
	var b strings.Builder
	// EscapeText replaces what XML can't hold; a Builder does not fail.
	_ = xml.EscapeText(&b, []byte(s))
	return b.String()
}
