package view

import (
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Lens is the place that a finding speaks of, enlarged: a part of the view in
// which it is seen best.
type Lens struct {
	Title   message.Message
	Drawing *drawing.Drawing
	Clip    plane.Rect  // of the drawing: what is to be seen
	In      mark.Views  // the view that it is a part of
	At      model.Place // and the front of which that view is
}

// Sizes of what a lens shows at least, and around a place.
const (
	lensWide   = 130 * length.Millimetre
	lensHigh   = 50 * length.Millimetre
	lensAround = 20 * length.Millimetre
)

// LensOn enlarges the place of a finding; false for one that has no place of its
// own in a front or behind it.
func LensOn(p *plan.Plan, f *check.Finding) (Lens, bool) {
	for _, in := range []mark.Views{mark.Rear, mark.Section, mark.Plan} {
		for i := range f.Spots {
			s := &f.Spots[i]
			if s.In&in == 0 || s.Front == 0 || in == mark.Rear && s.Shape != mark.Ring && s.In&(mark.Section|mark.Plan) != 0 {
				continue // what has depth is seen best where that is
			}
			if l, ok := lensIn(p, f, s, in); ok {
				return l, true
			}
		}
	}
	return Lens{}, false
}

// lensIn makes the lens on a place in one of the views.
func lensIn(p *plan.Plan, f *check.Finding, s *mark.Spot, in mark.Views) (Lens, bool) {
	front := &p.Fronts[s.Front-1]
	if in == mark.Plan && !front.Fitted {
		return Lens{}, false
	}
	l := Lens{In: in, At: front.Place}
	var seen plane.Rect
	var whole *drawing.Drawing
	switch in {
	case mark.Rear:
		l.Title = message.New("Rear face of front %v: left is RIGHT", front.Number)
		whole, seen = Rear(front), fromRear(front, s)
	case mark.Section:
		l.Title = message.New("Front %v, cut", front.Number)
		if s.Shape == mark.Band && s.Box.Max.Y < front.Face.Centre().Y {
			l.Title = message.New("Lower edge of front %v, cut", front.Number)
		}
		bay := front.Place
		bay.Front = -1
		whole, seen = Section(p, bay), s.FromSide()
	default:
		l.Title = message.New("Front %v, from above", front.Number)
		whole, seen = DrawerPlan(p, front), s.FromAbove(front.Opening.Min.X)
	}
	l.Clip = clipAround(seen, in, front)
	l.Drawing = &drawing.Drawing{Title: l.Title}
	for _, m := range whole.Marks {
		switch m.(type) {
		case *drawing.Dimension, *drawing.Text:
			continue
		}
		if m.Bounds().Grow(length.Nanometre).Overlaps(l.Clip) {
			l.Drawing.Add(m)
		}
	}
	l.marks(p, f, s, seen)
	if in == mark.Section {
		l.names(p, front)
	}
	return l, true
}

// clipAround is what a lens shows around a place. Of a long one it shows an end,
// of the edge between two fronts both.
func clipAround(seen plane.Rect, in mark.Views, f *plan.Front) plane.Rect {
	const most = 4 // lenses
	r := seen
	if in == mark.Section && r.Width() < lensWide { // from the left of the front into the drawer
		near, _ := f.Board()
		r.Min.X = min(r.Min.X, near) - lensAround*3/2
		r.Max.X = max(r.Max.X+lensAround, r.Min.X+lensWide)
		return tallEnough(r)
	}
	r = r.Grow(lensAround)
	if r.Width() > most*lensWide {
		r.Max.X = r.Min.X + lensWide
	}
	if more := lensWide - r.Width(); more > 0 {
		r.Min.X, r.Max.X = r.Min.X-more/2, r.Max.X+more-more/2
	}
	return tallEnough(r)
}

func tallEnough(r plane.Rect) plane.Rect {
	const most = 2 // as high as wide
	if r.Height() > most*r.Width() {
		r.Min.Y = r.Max.Y - lensHigh
	}
	if more := lensHigh - r.Height(); more > 0 {
		r.Min.Y, r.Max.Y = r.Min.Y-more/2, r.Max.Y+more-more/2
	}
	return r
}

// marks adds what is found: of a band both edges, dashed, and its height; of others
// their marks, and how far a hole is from an edge.
func (l *Lens) marks(p *plan.Plan, f *check.Finding, first *mark.Spot, seen plane.Rect) {
	t := drawing.Tag{Meaning: drawing.FindingMark, Of: subject(f), Severity: Severity(f)}
	if first.Shape == mark.Band {
		l.Drawing.Add(&drawing.Rectangle{Tag: t, Rect: seen, Filled: true, Dashed: true})
		l.measure(t, seen, l.In == mark.Section)
		return
	}
	for i := range f.Spots {
		s := &f.Spots[i]
		if s.In&l.In == 0 || s.Front == 0 {
			continue
		}
		front := &p.Fronts[s.Front-1]
		var r plane.Rect
		switch l.In {
		case mark.Rear:
			r = fromRear(front, s)
		case mark.Section:
			r = s.FromSide()
		default:
			r = s.FromAbove(front.Opening.Min.X)
		}
		if !r.Grow(length.Nanometre).Overlaps(l.Clip) || l.In == mark.Rear && front.Place != l.At {
			continue
		}
		l.Drawing.Add(&drawing.Spot{Tag: t, Shape: s.Shape, Rect: r, Chosen: true})
		if s.Shape == mark.Edge && first.Shape == mark.Ring && l.In == mark.Rear {
			l.fromEdge(t, seen, r)
		}
	}
}

// measure dimensions a band: its height at the left, or its width below.
func (l *Lens) measure(t drawing.Tag, r plane.Rect, upright bool) {
	line := &drawing.Line{Tag: t, Dashed: true}
	other := *line
	if upright {
		x := l.Clip.Min.X + lensAround/2
		line.From, line.To = plane.Point{X: x, Y: r.Min.Y}, plane.Point{X: r.Min.X, Y: r.Min.Y}
		other.From, other.To = plane.Point{X: x, Y: r.Max.Y}, plane.Point{X: r.Min.X, Y: r.Max.Y}
		l.Drawing.Add(line, &other, &drawing.Dimension{
			Tag: t, From: line.From, To: other.From, Vertical: true, Line: x, Value: r.Height(),
		})
		return
	}
	y := l.Clip.Min.Y + lensAround/2
	line.From, line.To = plane.Point{X: r.Min.X, Y: y}, plane.Point{X: r.Min.X, Y: r.Min.Y}
	other.From, other.To = plane.Point{X: r.Max.X, Y: y}, plane.Point{X: r.Max.X, Y: r.Min.Y}
	l.Drawing.Add(line, &other, &drawing.Dimension{Tag: t, From: line.From, To: other.From, Line: y, Value: r.Width()})
}

// fromEdge dimensions what is left between a hole and a panel's edge.
func (l *Lens) fromEdge(t drawing.Tag, hole, edge plane.Rect) {
	at := hole.Centre()
	d := &drawing.Dimension{Tag: t, From: at, To: at}
	if edge.Width() == 0 {
		if edge.Min.X < at.X {
			d.From.X, d.To.X = edge.Min.X, hole.Min.X
		} else {
			d.From.X, d.To.X = hole.Max.X, edge.Min.X
		}
		d.Line, d.Value = at.Y, d.To.X-d.From.X
	} else {
		if edge.Min.Y < at.Y {
			d.From.Y, d.To.Y = edge.Min.Y, hole.Min.Y
		} else {
			d.From.Y, d.To.Y = hole.Max.Y, edge.Min.Y
		}
		d.Vertical, d.Line, d.Value = true, at.X, d.To.Y-d.From.Y
	}
	l.Drawing.Add(d)
}

// names writes into the parts of a section what they are, where they show.
func (l *Lens) names(p *plan.Plan, f *plan.Front) {
	name := func(r plane.Rect, m, short message.Message) {
		if r = r.Intersect(l.Clip); !r.Empty() {
			l.Drawing.Add(&drawing.Text{
				Tag: drawing.Tag{Meaning: drawing.Label}, At: r.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5},
				Size: smallLetters, Say: m, Short: short, Within: r,
			})
		}
	}
	b := &p.Cabinets[f.Place.Cabinet].Bays[f.Place.Bay]
	for _, k := range b.Column {
		g := &p.Fronts[k]
		near, far := g.Board()
		if g.Kind != model.OpenNiche {
			name(plane.R(near, g.Face.Min.Y, far, g.Face.Max.Y), message.New("front %v", g.Number), message.New("%v", g.Number))
		}
		for g := range g.Drawers() {
			start, end := inDepth(g)
			name(plane.R(start, g.Drawer.Bottom.Min.Y, end, g.Drawer.Bottom.Max.Y), message.New("drawer bottom"), message.Message{})
			name(plane.R(start, g.Drawer.Bottom.Max.Y, end, g.RunnerEnds()[0].Max.Y), message.New("runner"), message.Message{})
		}
	}
}

func inDepth(f *plan.Front) (start, end length.Length) {
	return f.Runner.Start, f.Runner.Start + f.LengthAtLeast()
}

// fromRear is a place in the rear face of a front.
func fromRear(f *plan.Front, s *mark.Spot) plane.Rect {
	a, b := f.Rear(s.Box.Min.Sub(f.Face.Min)), f.Rear(s.Box.Max.Sub(f.Face.Min))
	return plane.R(b.X, a.Y, a.X, b.Y)
}
