package view

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/opening"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Opening draws the measured opening of the bay at a place with the best fronts in it, or else the
// niche that was measured with the run in it, which comes first where the whole is meant; the frame
// is that of the shape.
func Opening(p *plan.Plan, at model.Place) *drawing.Drawing {
	if n := opening.OfNiche(p); n != nil && at.Cabinet < 0 {
		return Niche(n)
	}
	at.Cabinet, at.Bay = max(at.Cabinet, 0), max(at.Bay, 0)
	if s := opening.OfBay(p, at); s != nil {
		d, k := measured(s.Shape, message.New("%v: opening, and in it the best fronts, %v × %v", s.Where(), s.Best.Width, opening.Shown(s.Best.Height)))
		w, h := s.Shape.Mean()
		r := plane.R(s.Bay.Stack.Min.X-s.Bay.Opening.Min.X, s.Bay.Stack.Min.Y-s.Bay.Opening.Min.Y,
			w-s.Bay.Opening.Max.X+s.Bay.Stack.Max.X, h-s.Bay.Opening.Max.Y+s.Bay.Stack.Max.Y)
		k.outline(d, s.Best.Corners(), r)
		return d
	}
	if n := opening.OfNiche(p); n != nil {
		return Niche(n)
	}
	b := p.BayAt(model.Place{Cabinet: at.Cabinet, Bay: at.Bay, Front: -1})
	d := &drawing.Drawing{Title: message.New("Opening, not measured")}
	if b != nil {
		r := plane.R(0, 0, b.Opening.Width(), b.Opening.Height())
		d.Add(&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Carcass}, Rect: r},
			label(r.Centre(), drawing.Anchor{X: 0.5, Y: 0.5}, message.New("not measured: choose the bay and type what the tape says, under %v", message.New("Opening as measured"))))
	}
	return d
}

// Niche draws the niche that was measured with the run in it.
func Niche(n *opening.Niche) *drawing.Drawing {
	d, k := measured(n.Shape, message.New("The niche, and in it the run without its fillers"))
	w, _ := n.Shape.Mean()
	k.outline(d, cornersOf(n.Run), plane.R(n.Left.Planned, 0, w-n.Right.Planned, n.Run.Height()))
	return d
}

// cornersOf are the corners of a rectangle: lower left, lower right, upper right, upper left.
func cornersOf(r plane.Rect) [4]plane.Point {
	return [4]plane.Point{r.Min, {X: r.Max.X, Y: r.Min.Y}, r.Max, {X: r.Min.X, Y: r.Max.Y}}
}

func label(at plane.Point, anchor drawing.Anchor, say message.Message) *drawing.Text {
	return &drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label}, At: at, Anchor: anchor, Size: smallLetters, Say: say}
}

// enlarged draws what a shape is off from a rectangle so many times as large.
type enlarged int64

// point is where a point is drawn that should lie elsewhere.
func (k enlarged) point(is, should plane.Point) plane.Point {
	return plane.Point{X: should.X + length.Length(k)*(is.X-should.X), Y: should.Y + length.Length(k)*(is.Y-should.Y)}
}

// outline draws what stands in an opening, by its corners and the rectangle that they should have.
// Where that is far from as large as the opening it is left out: nothing else would be seen.
func (k enlarged) outline(d *drawing.Drawing, is [4]plane.Point, should plane.Rect) {
	around := d.Bounds()
	if far(should.Width(), around.Width(), 2) || far(should.Height(), around.Height(), 2) {
		return
	}
	at := cornersOf(should)
	for i := range at {
		at[i] = k.point(is[i], at[i])
	}
	for i := range at {
		d.Add(&drawing.Line{Tag: drawing.Tag{Meaning: drawing.Face}, From: at[i], To: at[(i+1)%4]})
	}
}

// far tells that one of two lengths is more than so many times the other.
func far(a, b, times length.Length) bool { return a > times*b || b > times*a }

// measured draws a shape with its figures: as much larger than it is off as stays small beside it. Figures to
// measure again are bold and have a question mark.
func measured(s *opening.Shape, title message.Message) (*drawing.Drawing, enlarged) {
	w, h := s.Mean()
	should := [...][3]plane.Point{
		opening.Left:   {{}, {Y: h / 2}, {Y: h}},
		opening.Right:  {{X: w}, {X: w, Y: h / 2}, {X: w, Y: h}},
		opening.Bottom: {{}, {X: w / 2}, {X: w}},
		opening.Top:    {{Y: h}, {X: w / 2, Y: h}, {X: w, Y: h}},
	}
	most := length.Nanometre
	for e := range should {
		for i, p := range s.Edge(opening.Edge(e)) {
			most = max(most, (p.X - should[e][i].X).Abs(), (p.Y - should[e][i].Y).Abs())
		}
	}
	k := enlarged(10)
	for k > 1 && length.Length(k)*most > min(w, h)/8 {
		k--
	}
	d := &drawing.Drawing{Title: title}
	if k > 1 {
		d.Title = message.New("%v; what it is off is drawn %v times as large", title, int(k))
	}
	var edge [4][3]plane.Point
	for e := range should {
		for i, p := range s.Edge(opening.Edge(e)) {
			edge[e][i] = k.point(p, should[e][i])
		}
		d.Add(&drawing.Line{Tag: drawing.Tag{Meaning: drawing.Carcass}, From: edge[e][0], To: edge[e][1]},
			&drawing.Line{Tag: drawing.Tag{Meaning: drawing.Carcass}, From: edge[e][1], To: edge[e][2]})
	}
	if far(w, h, 8) {
		return d, k // figures have no room; the table has them
	}
	for _, r := range s.Read {
		addReading(d, edge, r, slices.Contains(s.Doubt.Again, r.Figure))
	}
	return d, k
}

// addReading writes a measured figure where it was measured.
func addReading(d *drawing.Drawing, edge [4][3]plane.Point, r opening.Reading, again bool) {
	left, right, bottom, top := edge[opening.Left], edge[opening.Right], edge[opening.Bottom], edge[opening.Top]
	between := func(a, b plane.Point, share length.Length) plane.Point { // share in sixths
		return plane.Point{X: a.X + (b.X-a.X)*share/6, Y: a.Y + (b.Y-a.Y)*share/6}
	}
	tag, say := drawing.Tag{Meaning: drawing.Label}, message.New("%v", opening.Shown(r.Measured))
	if r.Figure.Signed() {
		off := say
		if r.Measured != 0 {
			off = r.Figure.Off(opening.Shown(r.Measured.Abs()), r.Measured < 0)
		}
		if say = message.New("plumb: %v", off); r.Figure == opening.Level {
			say = message.New("level: %v", off)
		}
	}
	if again {
		tag.Severity, say = drawing.OfAdvice, message.New("%v ?", say)
	}
	t := &drawing.Text{Tag: tag, Size: smallLetters, Say: say, Bold: again, Yields: true} // the table has it too
	across := func(from, to plane.Point) {
		d.Add(&drawing.Line{Tag: drawing.Tag{Meaning: drawing.CentreLine}, From: from, To: to, Dashed: true})
	}
	// What stands at an edge keeps a little from it.
	pad := min((right[1].X-left[1].X).Abs(), (top[1].Y-bottom[1].Y).Abs()) / 50
	at := func(p plane.Point, dx, dy length.Length, x, y float64) {
		t.At, t.Anchor = plane.Point{X: p.X + dx*pad, Y: p.Y + dy*pad}, drawing.Anchor{X: x, Y: y}
	}
	switch r.Figure {
	case opening.WidthBottom:
		at(bottom[1], 0, -1, 0.5, 1)
	case opening.WidthTop:
		at(top[1], 0, 1, 0.5, 0)
	case opening.WidthMiddle:
		across(left[1], right[1])
		at(left[1], 2, 1, 0, 0)
	case opening.HeightLeft:
		at(left[1], -1, 0, 1, 0.5)
	case opening.HeightRight:
		at(right[1], 1, 0, 0, 0.5)
	case opening.HeightMiddle:
		across(bottom[1], top[1])
		at(between(bottom[1], top[1], 1), 1, 0, 0, 0.5)
	case opening.Rising:
		across(bottom[0], top[2])
		at(between(bottom[0], top[2], 5), 0, 0, 1, 0)
	case opening.Falling:
		across(top[0], bottom[2])
		at(between(top[0], bottom[2], 1), 0, 0, 0, 0)
	case opening.PlumbLeft:
		at(left[2], 0, 5, 0, 0)
	case opening.PlumbRight:
		at(right[2], 0, 9, 1, 0)
	default:
		at(bottom[0], 0, -5, 0, 1)
	}
	d.Add(t)
}
