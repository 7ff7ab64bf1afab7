package sketch

import (
	"image/color"
	"strings"

	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

// figures is the height on paper of a sketch's figures.
const figures = 3500 * length.Micrometre

// scaled are letters smaller than plain text.
type scaled struct {
	letter.Metrics
	by float64
}

// Sizes is the one size that a sketch has.
func (s scaled) Sizes(length.Length) []float64 {
	return []float64{s.by * s.Metrics.Sizes(figures)[0]}
}

// figured is a drawing whose figures take little room: without their unit, decimal
// inches to the nearest thousandth. The fields have them whole.
func figured(d *drawing.Drawing, say message.Language) *drawing.Drawing {
	all := &drawing.Drawing{Title: d.Title}
	for _, m := range d.Marks {
		if v, ok := m.(*drawing.Dimension); ok {
			short := *v
			if near, rounded := thousandth(v.Value); say.Unit == length.UnitInchDecimal && rounded {
				short.Prefix, short.Value = v.Prefix+"≈ ", near
			}
			if !v.Say.Empty() {
				short.Say.Args = []any{strings.TrimPrefix(short.Prefix, v.Prefix) + say.Figure(short.Value)}
			}
			m = &short
		}
		all.Add(m)
	}
	return all
}

// thousandth is the nearest thousandth of an inch, and whether a length is none.
func thousandth(v length.Length) (near length.Length, rounded bool) {
	const step = length.Inch / 1000
	half := step / 2
	if v < 0 {
		half = -half
	}
	return (v + half) / step * step, v%step != 0
}

// place finds where everything stands that is written, the figure with the focus in
// bold letters, and tells how many figures have no place.
func (p *painter) place() (lacking int) {
	const edge = 4
	l := letter.New(p.letters, p.style, p.say, paint.ToBox(paint.Box{X1: edge, Y1: edge, X2: p.size.Width - edge, Y2: p.size.Height - edge}))
	l.Strong = func(s drawing.Subject) bool { return p.stands(drawing.Tag{Of: s}) }
	l.Add(p.drawing, letter.Placing{At: func(q plane.Point) letter.Point {
		at := p.at(q)
		return letter.Point{X: float64(at.X), Y: -float64(at.Y)}
	}})
	p.written = l.Write()
	for i := range p.written.Dimensions {
		if p.written.Dimensions[i].Text < 0 {
			lacking++
		}
	}
	return lacking
}

// write paints what is written: the figure with the focus and what it measures last
// of all, in the colour of the selection.
func (p *painter) write(m *paint.Measures) {
	for _, focused := range []bool{false, true} {
		for i := range p.written.Dimensions {
			if d := &p.written.Dimensions[i]; p.stands(d.Of) == focused {
				p.dimension(d, focused)
			}
		}
	}
	leader := look.Pen{Line: p.palette.Soft, Width: 0.8}
	for _, s := range p.written.Leaders {
		p.stroke(s, leader)
	}
	for i := range p.written.Texts {
		t := &p.written.Texts[i]
		if _, figure := t.Mark.(*drawing.Dimension); figure || t.Ground {
			p.ground(paint.OfBox(t.Box).Grown(2, 1), t.On)
		}
	}
	for i := range p.written.Texts {
		t := &p.written.Texts[i]
		_, figure := t.Mark.(*drawing.Dimension)
		ink := p.palette.Soft
		switch {
		case p.stands(t.Of):
			ink = p.palette.Accent
		case figure || t.On != nil: // on a surface softer letters have too little contrast
			ink = paint.Legible(p.under(t.On), p.palette.Ink, p.palette.OnMaple)
		}
		for _, l := range t.Lines {
			p.objects = append(p.objects, m.Line(l, t.Size, t.Bold, ink))
		}
	}
}

// dimension draws the lines of a dimension; where it has the focus with a faint
// colour over what it measures.
func (p *painter) dimension(d *letter.Dimension, focused bool) {
	pen := look.Pen{Line: p.palette.Soft, Width: 0.8}
	if focused {
		pen = look.Pen{Line: p.palette.Accent, Width: 1.8}
		m := d.Mark.(*drawing.Dimension)
		a, b, c := p.at(m.From), p.at(m.To), d.Heads[0].Tip
		x1, x2, y1, y2 := min(a.X, b.X), max(a.X, b.X), min(a.Y, b.Y), max(a.Y, b.Y)
		if m.Vertical {
			x1, x2 = min(x1, float32(c.X)), max(x2, float32(c.X))
		} else {
			y1, y2 = min(y1, -float32(c.Y)), max(y2, -float32(c.Y))
		}
		p.tint(x1, y1, x2, y2)
	}
	for _, s := range d.Strokes {
		p.stroke(s, pen)
	}
	pen.Width = max(pen.Width, 1.4)
	for _, h := range d.Heads {
		x, y, arm := float32(h.Tip.X), -float32(h.Tip.Y), float32(p.style.Head)
		p.line(x-arm, y+arm, x+arm, y-arm, pen, false)
	}
}

func (p *painter) stroke(s letter.Stroke, pen look.Pen) {
	p.line(float32(s.From.X), -float32(s.From.Y), float32(s.To.X), -float32(s.To.Y), pen, false)
}

// tint lays a faint colour over what a figure measures.
func (p *painter) tint(x1, y1, x2, y2 float32) {
	p.surface(paint.Box{X1: x1, Y1: y1, X2: x1 + max(x2-x1, 1), Y2: y1 + max(y2-y1, 1)}, tinted(p.palette.Accent, 0x20), 0)
}

// ground makes letters readable over lines, on the surface where they stand.
func (p *painter) ground(b paint.Box, on *drawing.Rectangle) { p.surface(b, p.under(on), 2) }

// under is the colour of a surface, that of the sheet for none.
func (p *painter) under(on *drawing.Rectangle) color.NRGBA {
	if on != nil {
		if s := p.pen(on.Tag).Surface; s.A == 0xFF {
			return s
		}
	}
	return p.palette.Sheet
}

func (p *painter) surface(b paint.Box, c color.Color, radius float32) {
	r := fynecanvas.NewRectangle(c)
	r.CornerRadius = radius
	r.Move(b.Place())
	r.Resize(b.Extent())
	p.objects = append(p.objects, r)
}
