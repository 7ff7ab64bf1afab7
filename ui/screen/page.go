package screen

import (
	"image/color"
	"math"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/export/picture"
	"frontlay/layout/ink"
	"frontlay/layout/lettering"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

// paper is an ink.Canvas that makes objects of the screen, so that a page shows
// as it will be printed.
type paper struct {
	at      fyne.Position // of the page's upper left corner
	scale   float64       // screen units a millimetre
	height  float64       // of the page in millimetres
	clip    *[2]ink.Point
	measure *paint.Measures
	fonts   map[written]float32
	objects []fyne.CanvasObject
}

// pageObjects draws a sheet of paper with everything on it, as large as a size
// on the screen allows.
func pageObjects(pg *sheet.Page, say message.Language, size fyne.Size, m *paint.Measures) []fyne.CanvasObject {
	w, h := pg.Width.MM(), pg.Height.MM()
	if w <= 0 || h <= 0 {
		return nil
	}
	const edge = 6
	scale := min((float64(size.Width)-2*edge)/w, (float64(size.Height)-2*edge)/h)
	whole := fyne.NewSize(float32(w*scale), float32(h*scale))
	p := &paper{scale: scale, height: h, measure: m, at: fyne.NewPos((size.Width-whole.Width)/2, (size.Height-whole.Height)/2)}
	sheetOf := fynecanvas.NewRectangle(color.White)
	sheetOf.StrokeColor, sheetOf.StrokeWidth = look.Current().Line, 1
	sheetOf.Move(p.at)
	sheetOf.Resize(whole)
	p.objects = append(p.objects, sheetOf)
	ink.Draw(p, pg.Drawings(), pg.LetterArea(), say)
	return p.objects
}

func (p *paper) place(q ink.Point) fyne.Position {
	return p.at.AddXY(float32(q.X*p.scale), float32((p.height-q.Y)*p.scale))
}

// width is a pen's width on the screen; thin ones stay visible.
func (p *paper) width(pen ink.Pen) float32 { return max(float32(pen.Width*p.scale), 0.6) }

func shade(c ink.Colour) color.NRGBA {
	return color.NRGBA{R: uint8(c[0] * 255), G: uint8(c[1] * 255), B: uint8(c[2] * 255), A: 255}
}

// Line draws a straight line, in strokes where its pen has a pattern that can be
// told apart on the screen.
func (p *paper) Line(pen ink.Pen, a, b ink.Point) {
	a, b, ok := p.clipped(a, b)
	if !ok {
		return
	}
	pattern := pen.Dash.Pattern()
	long := math.Hypot(b.X-a.X, b.Y-a.Y)
	if len(pattern) == 0 || long == 0 {
		p.stroke(pen, a, b)
		return
	}
	along := func(d float64) ink.Point {
		f := min(d/long, 1)
		return ink.Point{X: a.X + (b.X-a.X)*f, Y: a.Y + (b.Y-a.Y)*f}
	}
	for d, i := 0.0, 0; d < long; i++ {
		step := max(pattern[i%len(pattern)], 1/p.scale)
		if i%2 == 0 {
			p.stroke(pen, along(d), along(d+step))
		}
		d += step
	}
}

func (p *paper) stroke(pen ink.Pen, a, b ink.Point) {
	l := fynecanvas.NewLine(shade(pen.Colour))
	l.StrokeWidth = p.width(pen)
	l.Position1, l.Position2 = p.place(a), p.place(b)
	p.objects = append(p.objects, l)
}

// clipped is the part of a line inside the clip (Liang and Barsky's method).
func (p *paper) clipped(a, b ink.Point) (ink.Point, ink.Point, bool) {
	if p.clip == nil {
		return a, b, true
	}
	lo, hi := p.clip[0], p.clip[1]
	t0, t1 := 0.0, 1.0
	dx, dy := b.X-a.X, b.Y-a.Y
	for _, e := range [4][2]float64{{-dx, a.X - lo.X}, {dx, hi.X - a.X}, {-dy, a.Y - lo.Y}, {dy, hi.Y - a.Y}} {
		switch {
		case e[0] == 0 && e[1] < 0:
			return a, b, false
		case e[0] < 0:
			t0 = max(t0, e[1]/e[0])
		case e[0] > 0:
			t1 = min(t1, e[1]/e[0])
		}
	}
	if t0 > t1 {
		return a, b, false
	}
	return ink.Point{X: a.X + t0*dx, Y: a.Y + t0*dy}, ink.Point{X: a.X + t1*dx, Y: a.Y + t1*dy}, true
}

// Rect paints a rectangle's surface and its edge.
func (p *paper) Rect(edge *ink.Pen, fill *ink.Colour, lo, hi ink.Point) {
	if fill != nil {
		a, b := lo, hi
		if p.clip != nil {
			a = ink.Point{X: max(a.X, p.clip[0].X), Y: max(a.Y, p.clip[0].Y)}
			b = ink.Point{X: min(b.X, p.clip[1].X), Y: min(b.Y, p.clip[1].Y)}
		}
		if b.X > a.X && b.Y > a.Y {
			r := fynecanvas.NewRectangle(shade(*fill))
			from, to := p.place(ink.Point{X: a.X, Y: b.Y}), p.place(ink.Point{X: b.X, Y: a.Y})
			r.Move(from)
			r.Resize(fyne.NewSize(to.X-from.X, to.Y-from.Y))
			p.objects = append(p.objects, r)
		}
	}
	if edge != nil {
		c := [4]ink.Point{lo, {X: hi.X, Y: lo.Y}, hi, {X: lo.X, Y: hi.Y}}
		for i := range c {
			p.Line(*edge, c[i], c[(i+1)%4])
		}
	}
}

// Circle draws a circle whose centre is not clipped away.
func (p *paper) Circle(pen ink.Pen, centre ink.Point, radius float64) {
	if _, _, ok := p.clipped(centre, centre); !ok {
		return
	}
	c := fynecanvas.NewCircle(color.Transparent)
	c.StrokeColor, c.StrokeWidth = shade(pen.Colour), p.width(pen)
	c.Move(p.place(ink.Point{X: centre.X - radius, Y: centre.Y + radius}))
	c.Resize(fyne.NewSquareSize(float32(2 * radius * p.scale)))
	p.objects = append(p.objects, c)
}

// Triangle paints a surface by a few lines from one corner: those of pages are
// small arrow heads.
func (p *paper) Triangle(fill ink.Colour, a, b, c ink.Point) {
	const lines = 4
	pen := ink.Pen{Width: 0.2, Colour: fill}
	for i := range lines + 1 {
		f := float64(i) / lines
		p.Line(pen, a, ink.Point{X: b.X + (c.X-b.X)*f, Y: b.Y + (c.Y-b.Y)*f})
	}
}

// Clip begins an area outside of which nothing shows.
func (p *paper) Clip(lo, hi ink.Point) { p.clip = &[2]ink.Point{lo, hi} }

// Unclip ends it.
func (p *paper) Unclip() { p.clip = nil }

// turned paints a line that is written upwards as a picture, which the toolkit can't
// write; where that fails nothing is there, as the paper itself is another matter.
func (p *paper) turned(at ink.Point, size length.Length, bold bool, c ink.Colour, s string) {
	const finer = 2 // than a unit of the screen, for those with more pixels
	img, err := picture.Turned(s, size, bold, finer*p.scale, c)
	if err != nil {
		return
	}
	i := fynecanvas.NewImageFromImage(img)
	above, _ := lettering.Reach(s, size)
	whole := img.Bounds().Size()
	i.Resize(fyne.NewSize(float32(whole.X)/finer, float32(whole.Y)/finer))
	i.Move(p.place(ink.Point{X: at.X - (above + size).MM(), Y: at.Y}).SubtractXY(0, i.Size().Height))
	p.objects = append(p.objects, i)
}

// font is the size in which the toolkit's letters are about as wide as those of the
// paper: one for all lines of a height. Small letters are laid out in whole pixels, by
// which a line runs wider by leaps.
func (p *paper) font(size length.Length, bold bool) float32 {
	k := written{size, bold}
	if f, ok := p.fonts[k]; ok {
		return f
	}
	const usual = "Set a depth stop, protect your eyes and ears; 861 × 288 mm from the bottom edge"
	f := float32(lettering.Em(size).MM() * p.scale)
	want := float32(lettering.Width(usual, size, bold).MM() * p.scale)
	for range narrower {
		if p.measure.Of(usual, f, bold).Width <= want {
			break
		}
		f *= narrow
	}
	if p.fonts == nil {
		p.fonts = map[written]float32{}
	}
	p.fonts[k] = f
	return f
}

// written is how a line is written; narrower says how often letters are made smaller by
// narrow so that it is no wider than on paper.
type written struct {
	size length.Length
	bold bool
}

const (
	narrow   = 0.97
	narrower = 10
)

// Text writes one line as wide as on paper, where other letters are used.
func (p *paper) Text(at ink.Point, size length.Length, bold, turned bool, c ink.Colour, s string) {
	if turned {
		p.turned(at, size, bold, c, s)
		return
	}
	font, want := p.font(size, bold), float32(lettering.Width(s, size, bold).MM()*p.scale)
	for range narrower { // better a little narrow than over the frame
		if want <= 0 || p.measure.Of(s, font, bold).Width <= want {
			break
		}
		font *= narrow
	}
	t := fynecanvas.NewText(s, shade(c))
	t.TextSize, t.TextStyle.Bold = font, bold
	// Small letters are laid out in whole pixels: their base line is where the driver
	// has it, not at a part of their size.
	line, base := fyne.CurrentApp().Driver().RenderedTextSize(s, font, t.TextStyle, nil)
	t.Move(p.place(at).SubtractXY(0, base))
	t.Resize(fyne.NewSize(want, line.Height))
	p.objects = append(p.objects, t)
}
