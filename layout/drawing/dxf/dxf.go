// Package dxf writes drawings as DXF release 12 (AC1009, ASCII), the oldest and
// most widely read: lines, circles, closed polylines and texts on layers, at
// full size in millimetres, origin and axes as in the drawing.
package dxf

import (
	"bufio"
	"fmt"
	"io"
	"strconv"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Options say how a drawing is written. Layer names the layer of a mark; an
// empty name leaves the mark out. A nil Layer takes the mark's meaning. Texts
// are TextHeight high in the drawing (0: 25 mm) in the language of Say.
type Options struct {
	Layer      func(drawing.Mark) string
	TextHeight length.Length
	Say        message.Language
}

// Write writes the drawing. Dimensions become a line and their figure; hatches
// are left out. It fails where w fails.
func Write(w io.Writer, d *drawing.Drawing, o Options) error {
	d = d.Plain()
	if o.Layer == nil {
		o.Layer = func(m drawing.Mark) string { return strings.ToUpper(drawing.TagOf(m).Meaning.String()) }
	}
	if o.TextHeight <= 0 {
		o.TextHeight = 25 * length.Millimetre
	}
	f := &file{w: bufio.NewWriter(w), o: o}
	f.header(d.Bounds())
	f.layers(d)
	f.pair(0, "SECTION")
	f.pair(2, "ENTITIES")
	for _, m := range d.Marks {
		if layer := o.Layer(m); layer != "" {
			f.mark(m, Name(layer))
		}
	}
	f.pair(0, "ENDSEC")
	f.pair(0, "EOF")
	return f.w.Flush()
}

// Name makes a layer's name of a text: A to Z, digits, - and _ only, at most 31
// letters, as release 12 asks.
func Name(s string) string {
	var b strings.Builder
	for _, r := range strings.ToUpper(s) {
		switch {
		case r >= 'A' && r <= 'Z', r >= '0' && r <= '9', r == '-', r == '_':
			b.WriteRune(r)
		default:
			b.WriteByte('_')
		}
		if b.Len() == 31 {
			break
		}
	}
	if b.Len() == 0 {
		return "0"
	}
	return b.String()
}

type file struct {
	w *bufio.Writer // keeps the first fault for Flush
	o Options
}

func (f *file) pair(code int, value string) { fmt.Fprintf(f.w, "%3d\n%s\n", code, value) }

func (f *file) real(code int, l length.Length) { f.pair(code, number(l)) }

func (f *file) xy(code int, p plane.Point) {
	f.real(code, p.X)
	f.real(code+10, p.Y)
	f.pair(code+20, "0.0")
}

// number writes millimetres exactly, always with a decimal point.
func number(l length.Length) string {
	s := length.UnitMM.Format(l)
	if !strings.Contains(s, ".") {
		s += ".0"
	}
	return s
}

func (f *file) header(r plane.Rect) {
	f.pair(999, "all lengths in millimetres")
	f.pair(0, "SECTION")
	f.pair(2, "HEADER")
	f.pair(9, "$ACADVER")
	f.pair(1, "AC1009")
	f.pair(9, "$INSUNITS")
	f.pair(70, "4") // millimetres
	f.pair(9, "$MEASUREMENT")
	f.pair(70, "1") // metric
	f.pair(9, "$EXTMIN")
	f.xy(10, r.Min)
	f.pair(9, "$EXTMAX")
	f.xy(10, r.Max)
	f.pair(0, "ENDSEC")
}

// layers writes the table of layers, in the order in which they are first used,
// after the line type that they need.
func (f *file) layers(d *drawing.Drawing) {
	var names []string
	seen := map[string]bool{}
	for _, m := range d.Marks {
		if l := f.o.Layer(m); l != "" && !seen[Name(l)] {
			seen[Name(l)] = true
			names = append(names, Name(l))
		}
	}
	f.pair(0, "SECTION")
	f.pair(2, "TABLES")
	f.pair(0, "TABLE")
	f.pair(2, "LTYPE")
	f.pair(70, "1")
	f.pair(0, "LTYPE")
	f.pair(2, "CONTINUOUS")
	f.pair(70, "0")
	f.pair(3, "Solid line")
	f.pair(72, "65")
	f.pair(73, "0")
	f.pair(40, "0.0")
	f.pair(0, "ENDTAB")
	f.pair(0, "TABLE")
	f.pair(2, "LAYER")
	f.pair(70, strconv.Itoa(len(names)))
	for i, n := range names {
		f.pair(0, "LAYER")
		f.pair(2, n)
		f.pair(70, "0")
		f.pair(62, strconv.Itoa(i%6+1)) // a colour of its own
		f.pair(6, "CONTINUOUS")
	}
	f.pair(0, "ENDTAB")
	f.pair(0, "ENDSEC")
}

func (f *file) entity(kind, layer string) {
	f.pair(0, kind)
	f.pair(8, layer)
}

func (f *file) mark(m drawing.Mark, layer string) {
	switch m := m.(type) {
	case *drawing.Line:
		f.line(layer, m.From, m.To)
	case *drawing.Rectangle:
		f.rectangle(layer, m.Rect)
	case *drawing.Circle:
		f.entity("CIRCLE", layer)
		f.xy(10, m.Centre)
		f.real(40, m.Radius)
	case *drawing.Text:
		f.text(layer, m.At, m.Anchor, f.o.Say.Say(m.Say))
	case *drawing.Dimension:
		f.dimension(layer, m)
	case *drawing.Spot:
		f.spot(layer, m)
	}
}

func (f *file) line(layer string, a, b plane.Point) {
	f.entity("LINE", layer)
	f.xy(10, a)
	f.xy(11, b)
}

func (f *file) rectangle(layer string, r plane.Rect) {
	f.entity("POLYLINE", layer)
	f.pair(66, "1")
	f.xy(10, plane.Point{})
	f.pair(70, "1") // closed
	for _, p := range []plane.Point{r.Min, {X: r.Max.X, Y: r.Min.Y}, r.Max, {X: r.Min.X, Y: r.Max.Y}} {
		f.entity("VERTEX", layer)
		f.xy(10, p)
	}
	f.entity("SEQEND", layer)
}

// spot writes the place that a finding speaks of: a circle around a hole, else its
// outline, with its diagonals where something is not there.
func (f *file) spot(layer string, m *drawing.Spot) {
	r := m.Rect
	switch m.Shape {
	case mark.Ring:
		f.entity("CIRCLE", layer)
		f.xy(10, r.Centre())
		f.real(40, max(r.Width(), r.Height()))
		return
	case mark.Cross:
		f.line(layer, r.Min, r.Max)
		f.line(layer, plane.Point{X: r.Min.X, Y: r.Max.Y}, plane.Point{X: r.Max.X, Y: r.Min.Y})
	}
	f.rectangle(layer, r)
}

// text writes a text with its point as the alignment point: 72 across (0 left,
// 1 centre, 2 right), 73 up (1 bottom, 2 middle, 3 top).
func (f *file) text(layer string, at plane.Point, a drawing.Anchor, s string) {
	f.turned(layer, at, a, s, false)
}

// turned writes a text that, where it is turned, is read from the right.
func (f *file) turned(layer string, at plane.Point, a drawing.Anchor, s string, turned bool) {
	if s == "" {
		return
	}
	f.entity("TEXT", layer)
	f.xy(10, at)
	f.real(40, f.o.TextHeight)
	f.pair(1, ascii(s))
	if turned {
		f.pair(50, "90")
	}
	f.pair(72, strconv.Itoa(int(2*a.X)))
	f.xy(11, at)
	f.pair(73, strconv.Itoa(1+int(2*a.Y)))
}

// ascii writes what is not ASCII as release 12 does (%%c is a diameter sign), or
// as a plain letter near to it.
func ascii(s string) string {
	var b strings.Builder
	for _, r := range s {
		switch {
		case r == 'Ø':
			b.WriteString("%%c")
		case r == '×':
			b.WriteByte('x')
		case r == '–', r == '−':
			b.WriteByte('-')
		case r == '’', r == '“', r == '”':
			b.WriteByte('\'')
		case r == '≈':
			b.WriteByte('~')
		case r == '\u00a0':
			b.WriteByte(' ')
		case r == 'ä', r == 'ö', r == 'ü', r == 'Ä', r == 'Ö', r == 'Ü', r == 'ß':
			b.WriteString(map[rune]string{'ä': "ae", 'ö': "oe", 'ü': "ue", 'Ä': "Ae", 'Ö': "Oe", 'Ü': "Ue", 'ß': "ss"}[r])
		case r < 0x20 || r > 0x7e:
			b.WriteByte('?')
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// dimension writes the measured line and its figure.
func (f *file) dimension(layer string, m *drawing.Dimension) {
	a, b := plane.Point{X: m.From.X, Y: m.Line}, plane.Point{X: m.To.X, Y: m.Line}
	step := 3 * f.o.TextHeight * length.Length(m.Level)
	if m.Vertical {
		a, b = plane.Point{X: m.Line + step, Y: m.From.Y}, plane.Point{X: m.Line + step, Y: m.To.Y}
	} else {
		a.Y, b.Y = a.Y+step, b.Y+step
	}
	f.line(layer, a, b)
	middle := plane.Point{X: (a.X + b.X) / 2, Y: (a.Y + b.Y) / 2}
	// Above the line as one reads it, from below or from the right (ISO 129-1, from
	// memory).
	if m.Vertical {
		middle.X -= f.o.TextHeight / 2
	} else {
		middle.Y += f.o.TextHeight / 2
	}
	f.turned(layer, middle, drawing.Anchor{X: 0.5}, m.Prefix+f.o.Say.Figure(m.Value), m.Vertical)
}
