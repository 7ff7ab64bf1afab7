package pdfout

import (
	"math"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model/message"
)

// writer draws the placed drawings of one page. Lines come first; letters are
// kept and written last, so that none is hidden and each can give way to those
// before it.
type writer struct {
	*canvas
	say     message.Language
	texts   []lettered
	figures []figure
	taken   []box
}

// placing maps a drawing to the page.
type placing struct {
	ox, oy float64 // the drawing's origin in points, scaled
	ax, ay float64
	k      float64 // points on paper for a nanometre in the drawing
	clip   *box
}

func (p placing) at(q plane.Point) point {
	return point{p.ax + float64(q.X)*p.k - p.ox, p.ay + float64(q.Y)*p.k - p.oy}
}

// box is an area of the page in points.
type box struct{ lo, hi point }

func (b box) overlaps(o box) bool {
	return b.lo.x < o.hi.x && o.lo.x < b.hi.x && b.lo.y < o.hi.y && o.lo.y < b.hi.y
}

func (b box) holds(p point) bool {
	return p.x >= b.lo.x && p.x <= b.hi.x && p.y >= b.lo.y && p.y <= b.hi.y
}

func (w *writer) placed(p *sheet.Placed) {
	if p.Drawing == nil {
		return
	}
	at := placing{k: pt(1) * float64(p.ScaleNum) / float64(p.ScaleDen)}
	at.ox, at.oy = float64(p.Origin.X)*at.k, float64(p.Origin.Y)*at.k
	at.ax, at.ay = pt(p.At.X), pt(p.At.Y)
	if !p.Clip.Empty() {
		at.clip = &box{point{pt(p.Clip.Min.X), pt(p.Clip.Min.Y)}, point{pt(p.Clip.Max.X), pt(p.Clip.Max.Y)}}
		w.clip(at.clip.lo, at.clip.hi)
	}
	for _, m := range p.Drawing.Marks {
		if !at.hidden(m) {
			w.mark(m, at)
		}
	}
	if at.clip != nil {
		w.unclip()
	}
	w.flush()
}

// hidden tells that a mark lies outside the clip. Dimensions are never hidden:
// they reach beyond what they measure.
func (p placing) hidden(m drawing.Mark) bool {
	if _, ok := m.(*drawing.Dimension); ok || p.clip == nil {
		return false
	}
	r := m.Bounds()
	b := box{p.at(r.Min), p.at(r.Max)}
	return !b.pad(pt(um(1000))).overlaps(*p.clip)
}

func (w *writer) mark(m drawing.Mark, at placing) {
	t := drawing.TagOf(m)
	if t.Meaning == drawing.Grip {
		return // something to take hold of on a screen
	}
	switch m := m.(type) {
	case *drawing.Line:
		w.use(penFor(t.Meaning, m.Dashed))
		w.line(at.at(m.From), at.at(m.To))
	case *drawing.Rectangle:
		w.rectangle(m, at)
	case *drawing.Circle:
		w.use(penFor(t.Meaning, false))
		w.circle(at.at(m.Centre), float64(m.Radius)*at.k)
	case *drawing.Text:
		w.texts = append(w.texts, lettered{m, at})
	case *drawing.Dimension:
		w.dimension(m, at)
	case *drawing.Hatch:
		w.hatch(m, at)
	}
}

func (w *writer) rectangle(m *drawing.Rectangle, at placing) {
	w.use(penFor(m.Meaning, m.Dashed))
	lo, hi := at.at(m.Rect.Min), at.at(m.Rect.Max)
	if m.Filled {
		f := fillFor(m.Meaning)
		w.rect(lo, hi, &f, true)
		return
	}
	w.rect(lo, hi, nil, true)
}

// hatch draws lines that rise at 45°, 1.5 mm apart on paper.
func (w *writer) hatch(m *drawing.Hatch, at placing) {
	p := penFor(m.Meaning, false)
	w.use(pen{um(130), p.colour, solid})
	lo, hi := at.at(m.Rect.Min), at.at(m.Rect.Max)
	step := pt(um(1500)) * math.Sqrt2
	if m.Meaning == drawing.Frame {
		step /= 2 // of a small map
	}
	if hi.x-lo.x > 1e5 || hi.y-lo.y > 1e5 {
		return // larger than any page: nothing to see, and endless lines
	}
	// On a line y = x + d; d runs from the lower right corner to the upper left.
	for d := lo.y - hi.x + step/2; d < hi.y-lo.x; d += step {
		a := point{math.Max(lo.x, lo.y-d), math.Max(lo.y, lo.x+d)}
		b := point{math.Min(hi.x, hi.y-d), math.Min(hi.y, hi.x+d)}
		w.line(a, b)
	}
}
