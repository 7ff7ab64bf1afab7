package ink

import (
	"math"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/message"
)

// writer draws the placed drawings of one page. Lines come first; letters are
// kept and written last, so that none is hidden and each can give way to those
// before it.
type writer struct {
	Canvas
	say        message.Language
	drawings   int // how many were placed
	texts      []lettered
	dimensions []*dimension
	taken      places // by letters
	strokes    places // how far each of dimensions reaches with its arrows, at most
	room       box    // where letters may stand: the page without its margins
}

// placing maps a drawing to the page.
type placing struct {
	ox, oy float64 // the drawing's origin in millimetres, scaled
	ax, ay float64
	k      float64 // millimetres on paper for a nanometre in the drawing
	clip   *box
}

func (p placing) at(q plane.Point) Point {
	return Point{p.ax + float64(q.X)*p.k - p.ox, p.ay + float64(q.Y)*p.k - p.oy}
}

// box is an area of the page in millimetres.
type box struct{ lo, hi Point }

func (b box) overlaps(o box) bool {
	return b.lo.X < o.hi.X && o.lo.X < b.hi.X && b.lo.Y < o.hi.Y && o.lo.Y < b.hi.Y
}

func (b box) holds(p Point) bool {
	return p.X >= b.lo.X && p.X <= b.hi.X && p.Y >= b.lo.Y && p.Y <= b.hi.Y
}

// Draw draws what is placed on a page as one picture whose letters stay in an
// area, texts in the language and unit of say.
func Draw(c Canvas, placed []drawing.Placed, in plane.Rect, say message.Language) {
	w := &writer{Canvas: c, say: say, room: box{Point{in.Min.X.MM(), in.Min.Y.MM()}, Point{in.Max.X.MM(), in.Max.Y.MM()}}}
	for i := range placed {
		w.placed(&placed[i])
	}
	w.letters()
}

func (w *writer) placed(p *drawing.Placed) {
	if p.Drawing == nil {
		return
	}
	at := placing{k: 1e-6 * float64(p.ScaleNum) / float64(p.ScaleDen)}
	at.ox, at.oy = float64(p.Origin.X)*at.k, float64(p.Origin.Y)*at.k
	at.ax, at.ay = p.At.X.MM(), p.At.Y.MM()
	if !p.Clip.Empty() {
		at.clip = &box{Point{p.Clip.Min.X.MM(), p.Clip.Min.Y.MM()}, Point{p.Clip.Max.X.MM(), p.Clip.Max.Y.MM()}}
		w.Clip(at.clip.lo, at.clip.hi)
	}
	for _, m := range p.Drawing.Marks {
		if !at.hidden(m) {
			w.mark(m, at)
		}
	}
	if at.clip != nil {
		w.Unclip()
	}
	w.drawings++
}

// hidden tells that a mark lies outside the clip. Dimensions are never hidden:
// they reach beyond what they measure.
func (p placing) hidden(m drawing.Mark) bool {
	if _, ok := m.(*drawing.Dimension); ok || p.clip == nil {
		return false
	}
	r := m.Bounds()
	b := box{p.at(r.Min), p.at(r.Max)}
	return !b.pad(1.0).overlaps(*p.clip)
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
		w.rectangle(m, at)
	case *drawing.Circle:
		w.Circle(penFor(t.Meaning, false), at.at(m.Centre), float64(m.Radius)*at.k)
	case *drawing.Text:
		w.texts = append(w.texts, lettered{m, at, w.drawings})
	case *drawing.Dimension:
		w.queue(m, at)
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
