package ink

import (
	"math"

	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// writer draws the placed drawings of one page.
type writer struct {
	Canvas
	letters *letter.Picture
	say     message.Language
}

// placing maps a drawing to the page.
type placing struct {
	ox, oy float64 // the drawing's origin in millimetres, scaled
	ax, ay float64
	k      float64 // millimetres on paper for a nanometre in the drawing
	clip   *letter.Box
}

func (p placing) at(q plane.Point) Point {
	return Point{p.ax + float64(q.X)*p.k - p.ox, p.ay + float64(q.Y)*p.k - p.oy}
}

// Draw draws what is placed on a page as one picture whose letters stay in an
// area, texts in the language and unit of say. Lines come first, letters last, so
// that none is hidden.
func Draw(c Canvas, placed []drawing.Placed, in plane.Rect, say message.Language) {
	w := &writer{c, letter.New(lettering.OnPaper{}, style(), say, letter.Box{Lo: onPage(in.Min), Hi: onPage(in.Max)}), say}
	for i := range placed {
		w.placed(&placed[i])
	}
	w.write(w.letters.Write())
}

func onPage(q plane.Point) letter.Point { return letter.Point{X: q.X.MM(), Y: q.Y.MM()} }

// style is how dimensions are drawn on paper, in millimetres: arrows of 15° (ISO
// 129-1, from memory).
func style() letter.Style {
	return letter.Style{
		Above: true, Head: 2.5, Half: 0.33 /* 2.5·tan 7.5° */, Arrows: true, Past: 1.5, Gap: 0.9, Figure: lettering.Small, Lines: true,
		StepX: drawing.DimensionStep.MM(), StepY: drawing.DimensionStep.MM(),
	}
}

func (w *writer) placed(p *drawing.Placed) {
	if p.Drawing == nil {
		return
	}
	at := placing{k: 1e-6 * float64(p.ScaleNum) / float64(p.ScaleDen)}
	at.ox, at.oy = float64(p.Origin.X)*at.k, float64(p.Origin.Y)*at.k
	at.ax, at.ay = p.At.X.MM(), p.At.Y.MM()
	if !p.Clip.Empty() {
		at.clip = &letter.Box{Lo: onPage(p.Clip.Min), Hi: onPage(p.Clip.Max)}
		w.Clip(Point(at.clip.Lo), Point(at.clip.Hi))
	}
	for _, m := range p.Drawing.Marks {
		if !at.hidden(m) {
			w.mark(m, at)
		}
	}
	if at.clip != nil {
		w.Unclip()
	}
	w.letters.Add(p.Drawing, letter.Placing{
		At: func(q plane.Point) letter.Point { return letter.Point(at.at(q)) }, Clip: at.clip,
	})
}

// write paints what is written on the page: dimensions, then letters, on grounds
// where they need them. Texts that have their place on the page stand as they are.
func (w *writer) write(all *letter.Written) {
	for i := range all.Dimensions {
		d := &all.Dimensions[i]
		pen := penFor(d.Of.Meaning, false)
		for _, s := range d.Strokes {
			w.Line(pen, Point(s.From), Point(s.To))
		}
		for _, h := range d.Heads {
			w.head(h)
		}
	}
	for _, s := range all.Leaders {
		w.Line(penFor(drawing.Label, false), Point(s.From), Point(s.To))
	}
	for i := range all.Texts {
		if t := &all.Texts[i]; t.Ground && !placedByPage(t) {
			fill := white()
			if t.On != nil {
				fill = fillFor(t.On.Meaning)
			}
			const pad = 0.45
			w.Rect(nil, &fill, Point{t.Box.Lo.X - pad, t.Box.Lo.Y - pad}, Point{t.Box.Hi.X + pad, t.Box.Hi.Y + pad})
		}
	}
	for _, r := range all.Rings {
		w.ring(r.Box)
	}
	for i := range all.Texts {
		t := &all.Texts[i]
		for _, l := range t.Lines {
			w.Text(Point{l.At.X, l.At.Y}, length.FromMM(t.Size), t.Bold, t.Turned, inkFor(t.Of.Meaning), l.Text)
		}
	}
}

// placedByPage tells that a text has its place from the page, which knows what
// runs there.
func placedByPage(t *letter.Text) bool {
	m, ok := t.Mark.(*drawing.Text)
	return ok && m.Within.Empty()
}

// head draws the arrow at an end of a dimension.
func (w *writer) head(h letter.Head) {
	half := style().Half
	tip, a, b := Point(h.Tip), Point(h.Back), Point(h.Back)
	if h.Tip.X == h.Back.X {
		a.X, b.X = a.X-half, b.X+half
	} else {
		a.Y, b.Y = a.Y-half, b.Y+half
	}
	w.Triangle(black(), tip, a, b)
}

// ring draws the ring of a number: a circle, or two halves of one with lines
// between them where the number is wide.
func (w *writer) ring(b letter.Box) {
	pen, r := penFor(drawing.Label, false), (b.Hi.Y-b.Lo.Y)/2
	if wide := b.Hi.X - b.Lo.X; wide <= 2*r+0.01 {
		w.Circle(pen, Point{b.Lo.X + wide/2, b.Lo.Y + r}, r)
		return
	}
	const steps = 16
	y := b.Lo.Y + r
	for _, end := range []struct{ x, way float64 }{{b.Lo.X + r, -1}, {b.Hi.X - r, 1}} {
		from := Point{end.x, y - r}
		for k := 1; k <= steps; k++ {
			sin, cos := math.Sincos(math.Pi * (float64(k)/steps - 0.5))
			to := Point{end.x + end.way*cos*r, y + sin*r}
			w.Line(pen, from, to)
			from = to
		}
	}
	w.Line(pen, Point{b.Lo.X + r, b.Lo.Y}, Point{b.Hi.X - r, b.Lo.Y})
	w.Line(pen, Point{b.Lo.X + r, b.Hi.Y}, Point{b.Hi.X - r, b.Hi.Y})
}

// hidden tells that a mark lies outside the clip. Dimensions are never hidden:
// they reach beyond what they measure.
func (p placing) hidden(m drawing.Mark) bool {
	if _, ok := m.(*drawing.Dimension); ok || p.clip == nil {
		return false
	}
	r := m.Bounds()
	lo, hi := p.at(r.Min), p.at(r.Max)
	const air = 1.0
	return hi.X+air <= p.clip.Lo.X || lo.X-air >= p.clip.Hi.X || hi.Y+air <= p.clip.Lo.Y || lo.Y-air >= p.clip.Hi.Y
}

func (w *writer) mark(m drawing.Mark, at placing) {
	t := drawing.TagOf(m)
	if t.Meaning == drawing.Grip {
		return // something to take hold of on a screen
	}
	switch m := m.(type) {
	case *drawing.Line:
		w.Line(penFor(t.Meaning, m.Dashed), at.at(m.From), at.at(m.To))
	case *drawing.Rectangle:
		if m.Board != nil {
			w.board(m, at)
			return
		}
		w.rectangle(m, at)
	case *drawing.Circle:
		w.Circle(penFor(t.Meaning, false), at.at(m.Centre), float64(m.Radius)*at.k)
	case *drawing.Hatch:
		w.hatch(m, at)
	case *drawing.Spot:
		w.spot(m, at)
	}
}

func (w *writer) rectangle(m *drawing.Rectangle, at placing) {
	p := penFor(m.Meaning, m.Dashed)
	var fill *Colour
	if m.Filled {
		f := fillFor(m.Meaning)
		fill = &f
	}
	w.Rect(&p, fill, at.at(m.Rect.Min), at.at(m.Rect.Max))
}

// hatch draws lines at 45°, 1.5 mm apart on paper, close ones half of that.
func (w *writer) hatch(m *drawing.Hatch, at placing) {
	p := Pen{Width: 0.13, Colour: penFor(m.Meaning, false).Colour}
	step := 1.5
	if m.Close || m.Meaning == drawing.Frame { // of a small map
		step /= 2
	}
	w.slanted(p, at.at(m.Rect.Min), at.at(m.Rect.Max), step*math.Sqrt2, m.Falling)
}

// slanted draws lines at 45° in a rectangle, so far apart along its edges.
func (w *writer) slanted(p Pen, lo, hi Point, step float64, falling bool) {
	if hi.X-lo.X > 1e5 || hi.Y-lo.Y > 1e5 {
		return // larger than any page: nothing to see, and endless lines
	}
	// On a line y = x + d; d runs from the lower right corner to the upper left.
	for d := lo.Y - hi.X + step/2; d < hi.Y-lo.X; d += step {
		a := Point{math.Max(lo.X, lo.Y-d), math.Max(lo.Y, lo.X+d)}
		b := Point{math.Min(hi.X, hi.Y-d), math.Min(hi.Y, hi.X+d)}
		if falling { // as in a mirror
			a.X, b.X = lo.X+hi.X-a.X, lo.X+hi.X-b.X
		}
		w.Line(p, a, b)
	}
}
