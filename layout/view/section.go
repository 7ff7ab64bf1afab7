package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Section draws an upright section through a bay from front to back: x is the
// depth from the carcass's front edge (fronts of overlay cabinets at negative
// x), y the run frame's. All that is cut is hatched, parts that touch in other
// directions. The front at the place, where it is one, is tinted.
func Section(p *plan.Plan, at model.Place) *drawing.Drawing {
	c := &p.Cabinets[at.Cabinet]
	b := &c.Bays[at.Bay]
	d := &drawing.Drawing{Title: message.New("Section through %v, bay %v", c.Name, at.Bay+1)}
	depth := p.Project.Cabinets[at.Cabinet].Depth
	for _, k := range b.Column {
		if f := &p.Fronts[k]; f.Place == at {
			r := rect(drawing.Tint, drawing.Subject{}, plane.R(-f.Thickness, f.Face.Min.Y, depth, f.Face.Max.Y))
			r.Filled = true
			d.Add(r)
		}
	}
	carcass := drawing.Tag{Meaning: drawing.Carcass, Of: of(drawing.CabinetThing, c.Place)}
	for _, q := range p.Boards(at.Cabinet) {
		if x := b.Opening.Centre().X; x < q.Rect.Min.X || q.Rect.Max.X <= x {
			continue
		}
		switch q.Kind {
		case plan.WorktopBoard, plan.PlinthBoard:
		case plan.BackBoard:
			addCut(d, carcass, plane.R(q.Near, q.Rect.Min.Y, q.Far, q.Rect.Max.Y), false)
		default:
			addCut(d, carcass, plane.R(q.Near, q.Rect.Min.Y, q.Far, q.Rect.Max.Y), true)
		}
	}
	addBase(d, p, c, depth)
	addFloor(d, -frontOf(p, b), depth)
	for _, w := range c.Beside {
		if w.Kind == plan.WorktopBoard {
			addCut(d, drawing.Tag{Meaning: drawing.Carcass}, plane.R(-frontOf(p, b), w.Rect.Min.Y, depth, w.Rect.Max.Y), false)
		}
	}
	var below *plan.Front
	asked := false
	for _, k := range b.Column {
		asked = asked || coverAsked(p, &p.Fronts[k]) > 0
	}
	for _, k := range b.Column {
		s := frontSection{d: d, f: &p.Fronts[k], below: below, depth: depth, cover: coverAsked(p, &p.Fronts[k]), asked: asked}
		s.add()
		below = s.f
	}
	level := -1
	if !c.Plinth.Empty() && p.Project.CabinetAt(c.Place).Base.Setback > 0 {
		level--
	}
	d.Add(across(drawing.Subject{}, 0, depth, -floor, level))
	d.Add(upright(of(drawing.CabinetHeight, c.Place), c.Outline.Min.Y, c.Outline.Max.Y, depth, 1))
	if c.Outline.Min.Y > 0 && c.Plinth.Empty() {
		d.Add(upright(drawing.Subject{}, 0, c.Outline.Min.Y, depth, 1))
	}
	return d
}

// addBase draws what a cabinet stands on: its plinth board, which its neighbour's list may
// have, the feet, which are not cut, or the wall that it hangs on. A setback is dimensioned.
func addBase(d *drawing.Drawing, p *plan.Plan, c *plan.Cabinet, depth length.Length) {
	t := drawing.Tag{Meaning: drawing.Carcass}
	base := p.Project.CabinetAt(c.Place).Base
	if len(c.Feet) > 0 {
		broad, high := c.Feet[0].Width(), c.Feet[0].Max.Y
		front := base.Setback + broad
		for _, x := range []length.Length{front, depth - front - broad} {
			d.Add(&drawing.Rectangle{Tag: t, Rect: plane.R(x, 0, x+broad, high)})
		}
	}
	if !c.Plinth.Empty() {
		addCut(d, t, plane.R(base.Setback, 0, base.Setback+p.Project.Boards.Carcass.Thickness, c.Plinth.Max.Y), false)
		if base.Setback > 0 {
			d.Add(across(drawing.Subject{}, 0, base.Setback, -floor, -1))
		}
	}
	if base.Kind == model.OnWall {
		d.Add(&drawing.Hatch{Tag: t, Rect: plane.R(depth, -floor, depth+floor, c.Outline.Max.Y), Close: true},
			&drawing.Line{Tag: t, From: plane.Point{X: depth}, To: plane.Point{X: depth, Y: c.Outline.Max.Y}})
	}
}

// floor is how much of the floor is drawn below its line.
const floor = 8 * length.Millimetre

// addFloor draws the floor below a section, some way past both ends.
func addFloor(d *drawing.Drawing, from, to length.Length) {
	const past = 15 * length.Millimetre
	t := drawing.Tag{Meaning: drawing.Carcass}
	d.Add(
		&drawing.Hatch{Tag: t, Rect: plane.R(from-past, -floor, to+past, 0), Close: true},
		&drawing.Line{Tag: t, From: plane.Point{X: from - past}, To: plane.Point{X: to + past}},
	)
}

// frontOf is how far the fronts of a bay stand out before the carcass; a worktop, of
// which the project knows the thickness alone, is drawn as far.
func frontOf(p *plan.Plan, b *plan.Bay) length.Length {
	out := length.Length(0)
	for _, k := range b.Column {
		near, _ := p.Fronts[k].Board()
		out = max(out, -near)
	}
	return out
}

// coverAsked is what a front is asked to cover of its drawer bottom.
func coverAsked(p *plan.Plan, f *plan.Front) length.Length {
	if src := p.Project.FrontAt(f.Place); src != nil && f.Kind == model.DrawerFront {
		return src.Cover
	}
	return 0
}

// addCut draws a part that is cut: hatched, with its outline over the hatch.
func addCut(d *drawing.Drawing, t drawing.Tag, r plane.Rect, falling bool) {
	d.Add(
		&drawing.Hatch{Tag: drawing.Tag{Meaning: t.Meaning}, Rect: r, Falling: falling},
		&drawing.Rectangle{Tag: t, Rect: r},
	)
}

// frontSection is one front of a section. cover is what it is asked to cover;
// asked tells that one of the fronts of the section is.
type frontSection struct {
	d     *drawing.Drawing
	f     *plan.Front
	below *plan.Front // nil: none
	depth length.Length
	cover length.Length
	asked bool
}

// add draws the front with its drawer and runner, and dimensions what makes it
// fit: height, drop, cover and cover asked for, room above.
func (s *frontSection) add() {
	f := s.f
	t := drawing.Tag{Meaning: drawing.Face, Of: of(drawing.FrontThing, f.Place)}
	if f.Kind != model.OpenNiche {
		for _, c := range cutThrough(f, true) {
			s.d.Add(&drawing.Rectangle{Tag: t, Rect: c.Rect, Filled: true})
			s.d.Add(&drawing.Hatch{Tag: t, Rect: c.Rect, Falling: c.Part == plan.PanelPart},
				&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Face}, Rect: c.Rect})
		}
	}
	outermost := -3
	if s.asked {
		outermost--
	}
	s.d.Add(upright(of(drawing.FrontHeight, f.Place), f.Face.Min.Y, f.Face.Max.Y, -f.Thickness, outermost))
	if f.Kind == model.OpenNiche { // what is clear in it stands in the middle
		s.d.Add(upright(drawing.Subject{}, f.Clear.Min.Y, f.Clear.Max.Y, s.depth/2, 0))
	}
	if f.Fitted {
		s.drawer()
		s.measures()
	}
	s.inner()
}

// inner draws the inner drawers behind the front, with the room above each, and how far
// their runners are above one another, from the one below or from where they are measured.
func (s *frontSection) inner() {
	from := s.f.Datum()
	if s.f.Fitted {
		from = s.f.Runner.Lower
	}
	for g := range s.f.Drawers() {
		if g.Nth == 0 {
			continue
		}
		behind := frontSection{d: s.d, f: g, depth: s.depth}
		behind.drawer()
		behind.room()
		if g.Runner.Lower > from {
			s.d.Add(upright(drawing.Subject{}, from, g.Runner.Lower, -s.f.Thickness, -1))
		}
		from = max(from, g.Runner.Lower)
	}
}

// room dimensions the room above a drawer.
func (s *frontSection) room() {
	f := s.f
	if end := min(f.Runner.Start+f.LengthAtLeast(), s.depth); f.Drawer.Body.Max.Y != f.Drawer.Limit {
		m := upright(drawing.Subject{}, min(f.Drawer.Body.Max.Y, f.Drawer.Limit), max(f.Drawer.Body.Max.Y, f.Drawer.Limit), end-end/8, 0)
		m.Value = f.Drawer.Limit - f.Drawer.Body.Max.Y
		s.d.Add(m)
	}
}

// drawer draws the drawer on its runner: the drawer's side behind the cut, the
// runner as a body, the bottom cut. Where no runner fits it is drawn all the same,
// as it would be with the shortest one: dashed, as what is wrong is.
func (s *frontSection) drawer() {
	f, fits := s.f, s.f.Runner.Length > 0
	start, end := f.Runner.Start, f.Runner.Start+f.LengthAtLeast()
	part := func(m drawing.Meaning, kind drawing.SubjectKind, r plane.Rect) *drawing.Rectangle {
		p := rect(m, of(kind, f.Place), r)
		if !fits {
			p.Meaning, p.Severity, p.Dashed = drawing.FindingMark, drawing.OfError, true
		}
		return p
	}
	runner := part(drawing.RunnerPart, drawing.RunnerThing, plane.R(start, f.Runner.Lower, end, f.RunnerEnds()[0].Max.Y))
	runner.Filled = fits
	side := part(drawing.DrawerPart, drawing.DrawerThing, plane.R(start, f.Drawer.Body.Min.Y, end, f.Drawer.Side))
	s.d.Add(side, runner)
	if f.Drawer.Rail > f.Drawer.Side {
		y := f.Drawer.Rail
		s.d.Add(&drawing.Line{Tag: side.Tag, From: plane.Point{X: start, Y: y}, To: plane.Point{X: end, Y: y}, Dashed: side.Dashed})
	}
	if b := f.Drawer.Box; b != nil {
		side.Rect.Max.X = start + b.Length
		if p := b.Part(plan.BoxLeftSide); p != nil {
			side.Rect.Min.Y = p.Rect.Min.Y
		}
		s.box(b)
	} else {
		bottom := part(drawing.DrawerBottom, drawing.DrawerThing, plane.R(start, f.Drawer.Bottom.Min.Y, end, f.Drawer.Bottom.Max.Y))
		if fits {
			addCut(s.d, bottom.Tag, bottom.Rect, true)
		} else {
			s.d.Add(bottom)
		}
		if thick := f.Sheet.Back.Thickness; fits && thick > 0 && f.Drawer.Back > f.Drawer.Bottom.Max.Y {
			addCut(s.d, side.Tag, plane.R(end-thick, f.Drawer.Bottom.Max.Y, end, f.Drawer.Back), false)
		}
	}
	for _, h := range f.Runner.Screws {
		addHole(s.d, drawing.Subject{}, plane.Point{X: h.Back, Y: h.Y}, h.Diameter)
	}
	name := numbered(f)
	if f.Nth > 0 {
		name = message.New("%v, inner drawer %v", f.Number, f.Nth)
	}
	room := labelRoom(f, start, min(end, s.depth))
	label := &drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label, Of: of(drawing.FrontThing, f.Place)}, At: room.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: smallLetters, Short: name, Within: room}
	label.Say = message.New("%v, runner %v", name, f.Runner.Length)
	if !fits {
		label.Say = message.New("%v: no runner fits, see Findings", name)
		label.Short = message.New("%v: no runner fits", name)
	}
	s.d.Add(label)
}

// box draws the boards of a wooden box that are cut: inner front, back, and the bottom
// over the edges of its grooves.
func (s *frontSection) box(b *plan.Box) {
	for _, k := range []plan.BoxPartKind{plan.BoxFront, plan.BoxBack, plan.BoxBottom} {
		p := b.Part(k)
		if p == nil {
			continue
		}
		r := rect(drawing.DrawerPart, of(drawing.DrawerThing, s.f.Place), plane.R(p.Near, p.Rect.Min.Y, p.Far, p.Rect.Max.Y))
		if k == plan.BoxBottom {
			r.Meaning = drawing.DrawerBottom
		}
		r.Filled = true
		s.d.Add(r)
		addCut(s.d, r.Tag, r.Rect, k == plan.BoxBottom)
	}
}

// measures dimensions what makes a drawer fit. Drop and cover that are those of the
// front below are not told again.
func (s *frontSection) measures() {
	f := s.f
	measure := func(a, b length.Length, x length.Length, level int, say func(length.Length) message.Message) {
		if a != b {
			m := upright(drawing.Subject{}, min(a, b), max(a, b), x, level)
			m.Value, m.Say = b-a, say(b-a)
			s.d.Add(m)
		}
	}
	same := s.below != nil && s.below.Fitted
	if !same || s.below.Drop != f.Drop {
		measure(f.Face.Min.Y, f.Runner.Lower, -f.Thickness, -1, func(v length.Length) message.Message { return message.New("drop %v", message.Bare(v)) })
	}
	if !same || s.below.Drawer.Cover.Bottom != f.Drawer.Cover.Bottom || s.cover > f.Drawer.Cover.Bottom {
		measure(f.Face.Min.Y, f.Drawer.Bottom.Min.Y, -f.Thickness, -2, func(v length.Length) message.Message { return message.New("cover %v", message.Bare(v)) })
	}
	if s.cover > 0 {
		measure(f.Face.Min.Y, f.Face.Min.Y+s.cover, -f.Thickness, -3, func(v length.Length) message.Message { return message.New("cover asked for %v", message.Bare(v)) })
	}
	s.room()
}

// labelRoom is where a drawer's name stands: over its bottom or in the room
// above it, whichever is higher, left of the dimension there.
func labelRoom(f *plan.Front, start, end length.Length) plane.Rect {
	inside := plane.R(start, f.Drawer.Bottom.Max.Y, end, f.Drawer.Side)
	above := plane.R(start, f.Drawer.Body.Max.Y, end-(end-start)/4, f.Drawer.Limit)
	if above.Height() > inside.Height() {
		return above
	}
	return inside
}
