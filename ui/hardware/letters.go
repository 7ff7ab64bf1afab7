package hardware

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/model/length"
	"frontlay/ui/look"
)

// figureText is what is written at a dimension. A board whose size is the bay's
// or the runner's less a figure says so.
func (p *painter) figureText(m *drawing.Dimension) string {
	if say := m.Say; !say.Empty() {
		say.Args = []any{p.figure(m.Value)}
		return p.say.Say(say)
	}
	return m.Prefix + p.figure(m.Value)
}

// figure writes a length, decimal inches to the nearest thousandth, as more
// places than that would take the room of the sketch. The field has them all.
func (p *painter) figure(v length.Length) string {
	const thousandth = length.Inch / 1000
	if p.say.Unit != length.UnitInchDecimal || v%thousandth == 0 {
		return p.say.Figure(v)
	}
	half := thousandth / 2
	if v < 0 {
		half = -half
	}
	return "≈ " + p.say.Figure((v+half)/thousandth*thousandth)
}

// dimension draws a dimension with its figure lying flat in a break of the line
// (unidirectional dimensioning, allowed by ISO 129), or beside the line where it
// does not fit between the ends.
func (p *painter) dimension(m *drawing.Dimension, focused bool) {
	pen := look.Pen{Line: p.palette.Soft, Width: 0.8}
	ink := p.palette.Ink
	if focused {
		pen, ink = look.Pen{Line: p.palette.Accent, Width: 1.8}, p.palette.Accent
	}
	s := p.figureText(m)
	box := p.measure(s, focused)
	a, b := p.at(m.From), p.at(m.To)
	if m.Vertical {
		p.uprightDimension(m, s, box, a, b, pen, ink, focused)
		return
	}
	y := p.py(m.Line) - float32(m.Level)*p.stepY
	if a.X > b.X {
		a, b = b, a
	}
	if focused {
		p.tint(a.X, min(y, a.Y), b.X, max(y, a.Y))
	}
	p.extend(a.X, a.Y, a.X, y, pen)
	p.extend(b.X, b.Y, b.X, y, pen)
	p.tick(a.X, y, pen)
	p.tick(b.X, y, pen)
	middle := (a.X + b.X) / 2
	if b.X-a.X < box.Width+12 {
		if !m.Say.Empty() { // without the words, perhaps
			s = m.Prefix + p.figure(m.Value)
			box = p.measure(s, focused)
		}
	}
	if b.X-a.X < box.Width+12 {
		p.line(a.X, y, b.X, y, pen, false)
		p.beside(m, s, box, a.X, b.X, y, ink, focused)
		return
	}
	p.line(a.X, y, b.X, y, pen, false)
	at := fyne.NewPos(middle-box.Width/2, y-box.Height/2)
	p.write(m, s, p.free([]fyne.Position{at}, box), box, ink, focused)
}

// beside writes a figure right or left of a short dimension, above or below it.
func (p *painter) beside(m *drawing.Dimension, s string, box fyne.Size, x1, x2, y float32, ink color.NRGBA, focused bool) {
	middle := (x1 + x2 - box.Width) / 2
	places := []fyne.Position{
		fyne.NewPos(x2+7, y-box.Height/2), fyne.NewPos(x1-7-box.Width, y-box.Height/2),
		fyne.NewPos(middle, y-box.Height-3), fyne.NewPos(middle, y+3),
	}
	p.write(m, s, p.free(places, box), box, ink, focused)
}

func (p *painter) uprightDimension(m *drawing.Dimension, s string, box fyne.Size, a, b fyne.Position, pen look.Pen, ink color.NRGBA, focused bool) {
	x := p.px(m.Line) + float32(m.Level)*p.stepX
	if a.Y > b.Y {
		a, b = b, a
	}
	if focused {
		p.tint(min(x, a.X, b.X), a.Y, max(x, a.X, b.X), b.Y)
	}
	p.extend(a.X, a.Y, x, a.Y, pen)
	p.extend(b.X, b.Y, x, b.Y, pen)
	p.tick(x, a.Y, pen)
	p.tick(x, b.Y, pen)
	middle := (a.Y + b.Y) / 2
	if b.Y-a.Y < box.Height+2 {
		p.line(x, a.Y, x, b.Y, pen, false)
		places := []fyne.Position{
			fyne.NewPos(x-box.Width/2, a.Y-box.Height-5), fyne.NewPos(x-box.Width/2, b.Y+5),
			fyne.NewPos(x+6, middle-box.Height/2), fyne.NewPos(x-6-box.Width, middle-box.Height/2),
		}
		if m.From.Y < 0 { // measured down from the runner's lower edge
			places[0], places[1] = places[1], places[0]
		}
		p.write(m, s, p.free(places, box), box, ink, focused)
		return
	}
	p.line(x, a.Y, x, b.Y, pen, false)
	at := fyne.NewPos(x-box.Width/2, middle-box.Height/2)
	places := []fyne.Position{at}
	for _, up := range []float32{0.5, -0.5, 1, -1, 1.5, -1.5, 2, -2} { // a neighbour's figure may be there
		if to := at.SubtractXY(0, up*box.Height); to.Y >= a.Y && to.Y+box.Height <= b.Y {
			places = append(places, to)
		}
	}
	p.write(m, s, p.free(places, box), box, ink, focused)
}

// tint lays a faint colour over what a figure measures.
func (p *painter) tint(x1, y1, x2, y2 float32) {
	r := fynecanvas.NewRectangle(tinted(p.palette.Accent, 0x20))
	r.Move(fyne.NewPos(x1, y1))
	r.Resize(fyne.NewSize(max(x2-x1, 1), max(y2-y1, 1)))
	p.objects = append(p.objects, r)
}

// extend draws the line from a measured point to its dimension line, with a
// small distance from the point and a little past the line.
func (p *painter) extend(x1, y1, x2, y2 float32, pen look.Pen) {
	const free, past = 2, 4
	pen.Width = min(pen.Width, 1)
	way := func(d float32) float32 {
		switch {
		case d > free:
			return 1
		case d < -free:
			return -1
		}
		return 0
	}
	if wx, wy := way(x2-x1), way(y2-y1); wx != 0 || wy != 0 {
		p.line(x1+wx*free, y1+wy*free, x2+wx*past, y2+wy*past, pen, false)
	}
}

func (p *painter) tick(x, y float32, pen look.Pen) {
	pen.Width = max(pen.Width, 1.4)
	p.line(x-4, y+4, x+4, y-4, pen, false)
}

// write puts a figure on a ground that makes it readable over lines.
func (p *painter) write(m *drawing.Dimension, s string, at fyne.Position, box fyne.Size, c color.NRGBA, bold bool) {
	ground := fynecanvas.NewRectangle(p.palette.Sheet)
	ground.CornerRadius = 2
	ground.Move(at.SubtractXY(2, 0))
	ground.Resize(box.AddWidthHeight(4, 0))
	p.written = append(p.written, ground, p.letters(s, at, box, c, bold))
	p.figures = append(p.figures, placedFigure{m.Of.Figure, s, at, box})
}

func (p *painter) letters(s string, at fyne.Position, box fyne.Size, c color.NRGBA, bold bool) fyne.CanvasObject {
	t := fynecanvas.NewText(s, c)
	t.TextSize, t.TextStyle.Bold = p.text, bold
	t.Move(at)
	t.Resize(box)
	return t
}

// free gives the first place where nothing is written yet, else the first.
func (p *painter) free(places []fyne.Position, box fyne.Size) fyne.Position {
	for _, at := range places {
		if !p.over(at, box) {
			return at
		}
	}
	p.crowded++
	return places[0]
}

// over tells that a box lies over something written, or not whole on the sketch.
func (p *painter) over(at fyne.Position, size fyne.Size) bool {
	const edge = 4
	if at.X < edge || at.Y < edge || at.X+size.Width > p.size.Width-edge || at.Y+size.Height > p.size.Height-edge {
		return true
	}
	for _, all := range [][]placedFigure{p.figures, p.names} {
		for _, f := range all {
			if at.X < f.at.X+f.size.Width+2 && f.at.X < at.X+size.Width+2 && at.Y+2 < f.at.Y+f.size.Height && f.at.Y+2 < at.Y+size.Height {
				return true
			}
		}
	}
	return false
}

// crossed tells that a hole or a line that is drawn already runs through a box. The
// lines of a surface, on which a name lies, are faint enough.
func (p *painter) crossed(at fyne.Position, size fyne.Size, onSurface bool) bool {
	for _, o := range p.objects {
		var a, b fyne.Position
		switch v := o.(type) {
		case *fynecanvas.Line:
			if onSurface {
				continue
			}
			a, b = v.Position1, v.Position2
		case *fynecanvas.Circle:
			a, b = v.Position1, v.Position2
		default:
			continue
		}
		if min(a.X, b.X) < at.X+size.Width && at.X < max(a.X, b.X) && min(a.Y, b.Y) < at.Y+size.Height && at.Y < max(a.Y, b.Y) {
			return true
		}
	}
	return false
}

// name writes what a part is, where it has room and lies over nothing written,
// with the line that leads to the part.
func (p *painter) name(m *drawing.Text, leader *drawing.Line) {
	s := p.say.Say(m.Say)
	box := p.measure(s, false)
	at := p.at(m.At)
	at.X += 3 - float32(m.Anchor.X)*(box.Width+6) // a little away from its point
	at.Y -= float32(1-m.Anchor.Y) * box.Height
	if !m.Within.Empty() {
		a, b := p.px(m.Within.Min.X), p.px(m.Within.Max.X)
		c, d := p.py(m.Within.Max.Y), p.py(m.Within.Min.Y)
		if box.Width > b-a || 0.75*box.Height > d-c {
			return
		}
	}
	if p.over(at, box) || p.crossed(at, box, !m.Within.Empty()) {
		return
	}
	if leader != nil {
		a, b := p.at(leader.From), p.at(leader.To)
		p.line(a.X, a.Y, b.X, b.Y, p.pen(leader.Tag), false)
	}
	ink := p.palette.Soft
	if !m.Within.Empty() { // on a surface, where softer letters have too little contrast
		ink = p.palette.Ink
	}
	p.objects = append(p.objects, p.letters(s, at, box, ink, false))
	p.names = append(p.names, placedFigure{at: at, size: box})
}
