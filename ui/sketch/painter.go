package sketch

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

// painter turns a sketch's marks into objects of the screen.
type painter struct {
	drawing *drawing.Drawing
	say     message.Language
	focus   string
	palette look.Palette
	letters scaled
	style   letter.Style
	size    fyne.Size
	scale   float64 // screen units a millimetre
	x, y    float64 // of the drawing's origin
	objects []fyne.CanvasObject
	written *letter.Written
}

// rooms are the ways to make room, tried until every figure has its place: how far
// levels of upright dimensions are apart, as a part of the widest figure, and the
// size of letters as a part of the plain text's.
var rooms = []struct{ step, letters float64 }{{0.6, 1}, {0.6, 0.85}, {0.4, 0.85}, {1.1, 1}, {1.1, 0.85}, {0.6, 0.7}, {1.1, 0.7}, {0.4, 0.7}}

// painted paints a sketch with as much room as its figures need.
func painted(s *Sketch, size fyne.Size) *painter {
	var best *painter
	least := 0
	for _, room := range rooms {
		p := &painter{drawing: figured(s.Drawing, s.say), size: size, say: s.say, focus: s.Focus, palette: look.Current(), letters: scaled{s.measures.Letters(), room.letters}}
		lacking := p.fit(size, room.step)
		lacking += p.place()
		if best == nil || lacking < least {
			best, least = p, lacking
		}
		if least == 0 {
			break
		}
	}
	best.surface(paint.Box{X2: size.Width, Y2: size.Height}, best.palette.Sheet, 4)
	best.paint(&s.measures)
	return best
}

// fit chooses scale and origin so that the marks and their dimensions fill the
// size, and tells how bad it is if they leave no room for the sketch itself.
func (p *painter) fit(size fyne.Size, step float64) (lacking int) {
	r := p.drawing.Bounds()
	var left, right, below, above int
	widest, letters := 0.0, p.letters.Sizes(figures)[0]
	for _, m := range p.drawing.Marks {
		d, ok := m.(*drawing.Dimension)
		if !ok {
			continue
		}
		if d.Vertical {
			left, right = min(left, d.Level), max(right, d.Level)
			widest = max(widest, p.letters.Width(d.Prefix+p.say.Figure(d.Value), letters, true))
		} else {
			below, above = min(below, d.Level), max(above, d.Level)
		}
	}
	const tick, edge = 4, 10
	p.style = letter.Style{
		Head: tick, Half: tick, Past: tick, Gap: 3, Figure: figures, StepX: max(2.4*letters, widest*step+6), StepY: 3.1 * letters,
	}
	edgeY := 1.7 * letters
	l, t := edge-float64(left)*p.style.StepX, edgeY+float64(above)*p.style.StepY
	w, h := float64(size.Width)-l-edge-float64(right)*p.style.StepX, float64(size.Height)-t-edgeY+float64(below)*p.style.StepY
	if left < 0 {
		l, w = l+widest/2, w-widest/2
	}
	if right > 0 {
		w -= widest / 2
	}
	if w < 100 || h < 60 {
		lacking = 100 // nothing is left of the sketch itself
	}
	rw, rh := max(r.Width().MM(), 1), max(r.Height().MM(), 1)
	p.scale = max(min(w/rw, h/rh), 0.001)
	p.x = l + (w-rw*p.scale)/2 - r.Min.X.MM()*p.scale
	p.y = t + (h+rh*p.scale)/2 + r.Min.Y.MM()*p.scale
	return lacking
}

func (p *painter) at(q plane.Point) fyne.Position { return fyne.NewPos(p.px(q.X), p.py(q.Y)) }
func (p *painter) px(x length.Length) float32     { return float32(p.x + x.MM()*p.scale) }
func (p *painter) py(y length.Length) float32     { return float32(p.y - y.MM()*p.scale) }

// paint adds all marks, and over them what is written.
func (p *painter) paint(m *paint.Measures) {
	for _, m := range p.drawing.Marks {
		switch v := m.(type) {
		case *drawing.Rectangle:
			p.rectangle(v)
		case *drawing.Hatch:
			p.hatch(v)
		}
	}
	for _, m := range p.drawing.Marks {
		switch v := m.(type) {
		case *drawing.Line:
			a, b := p.at(v.From), p.at(v.To)
			p.line(a.X, a.Y, b.X, b.Y, p.pen(v.Tag), v.Dashed)
		case *drawing.Circle:
			p.circle(v)
		}
	}
	p.write(m)
}

// stands tells that a mark shows the figure with the focus.
func (p *painter) stands(t drawing.Tag) bool {
	return view.ShowsFigure(&drawing.Line{Tag: t}, p.focus)
}

// pen is the pen of a mark; what shows the figure with the focus is drawn with
// the one of the selection.
func (p *painter) pen(t drawing.Tag) look.Pen {
	pen := p.palette.Pen(t.Meaning)
	if p.stands(t) {
		pen.Line, pen.Width = p.palette.Accent, max(pen.Width, 2)
		if pen.Surface.A > 0 {
			pen.Surface = tinted(p.palette.Accent, 0x50)
		}
	}
	return pen
}

func tinted(c color.NRGBA, alpha uint8) color.NRGBA {
	c.A = alpha
	return c
}

func (p *painter) line(x1, y1, x2, y2 float32, pen look.Pen, dashed bool) {
	const dash, gap = 7, 4
	if !dashed || x1 != x2 && y1 != y2 {
		l := fynecanvas.NewLine(pen.Line)
		l.StrokeWidth = pen.Width
		l.Position1, l.Position2 = fyne.NewPos(x1, y1), fyne.NewPos(x2, y2)
		p.objects = append(p.objects, l)
		return
	}
	for along, all := float32(0), max(x2-x1, x1-x2)+max(y2-y1, y1-y2); along < all; along += dash + gap {
		end := min(along+dash, all)
		p.line(x1+(x2-x1)*along/all, y1+(y2-y1)*along/all, x1+(x2-x1)*end/all, y1+(y2-y1)*end/all, pen, false)
	}
}

func (p *painter) rectangle(m *drawing.Rectangle) {
	pen := p.pen(m.Tag)
	a, b := p.at(plane.Point{X: m.Rect.Min.X, Y: m.Rect.Max.Y}), p.at(plane.Point{X: m.Rect.Max.X, Y: m.Rect.Min.Y})
	if m.Dashed {
		p.line(a.X, a.Y, b.X, a.Y, pen, true)
		p.line(a.X, b.Y, b.X, b.Y, pen, true)
		p.line(a.X, a.Y, a.X, b.Y, pen, true)
		p.line(b.X, a.Y, b.X, b.Y, pen, true)
		return
	}
	r := fynecanvas.NewRectangle(color.Transparent)
	if m.Filled {
		r.FillColor = pen.Surface
	}
	r.StrokeColor, r.StrokeWidth = pen.Line, pen.Width
	r.Move(a)
	r.Resize(fyne.NewSize(b.X-a.X, b.Y-a.Y))
	p.objects = append(p.objects, r)
}

func (p *painter) circle(m *drawing.Circle) {
	pen := p.pen(m.Tag)
	c, r := p.at(m.Centre), max(float32(m.Radius.MM()*p.scale), 2)
	o := fynecanvas.NewCircle(color.Transparent)
	o.StrokeColor, o.StrokeWidth = pen.Line, pen.Width
	o.Move(c.SubtractXY(r, r))
	o.Resize(fyne.NewSize(2*r, 2*r))
	p.objects = append(p.objects, o)
}

// hatch draws faint lines at 45° clipped to the rectangle.
func (p *painter) hatch(m *drawing.Hatch) {
	pen := p.pen(m.Tag)
	pen.Line, pen.Width = tinted(p.palette.Soft, 0x60), 0.8
	a, b := p.at(plane.Point{X: m.Rect.Min.X, Y: m.Rect.Max.Y}), p.at(plane.Point{X: m.Rect.Max.X, Y: m.Rect.Min.Y})
	w, h := b.X-a.X, b.Y-a.Y
	const step = 9
	for s := float32(step); s < w+h; s += step {
		p.line(a.X+min(s, w), a.Y+max(s-w, 0), a.X+max(s-h, 0), a.Y+min(s, h), pen, false)
	}
}
