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
	t := p.Project.Boards.Carcass.Thickness
	back := p.Project.Boards.Back.Thickness
	boards := []plane.Rect{
		plane.R(0, c.Outline.Min.Y, depth-back, c.Outline.Min.Y+t),
		plane.R(0, c.Outline.Max.Y-t, depth-back, c.Outline.Max.Y),
	}
	for j := range c.Bays[:at.Bay+1] { // those of spanning fronts are listed at their first bay
		for _, shelf := range c.Bays[j].Shelves {
			if shelf.Rect.Max.X > b.Opening.Min.X {
				boards = append(boards, plane.R(shelfStart(p, c), shelf.Rect.Min.Y, depth-back, shelf.Rect.Max.Y))
			}
		}
	}
	for j := range c.Bays[:at.Bay+1] { // likewise those of spanning fronts
		for _, h := range c.Bays[j].Channels {
			if h.Far > h.Near && h.Rect.Max.X > b.Opening.Min.X {
				boards = append(boards, plane.R(h.Near, h.Rect.Min.Y, h.Far, h.Rect.Max.Y))
			}
		}
	}
	carcass := drawing.Tag{Meaning: drawing.Carcass, Of: of(drawing.CabinetThing, c.Place)}
	for _, r := range boards {
		addCut(d, carcass, r, true)
	}
	addCut(d, carcass, plane.R(depth-back, c.Outline.Min.Y, depth, c.Outline.Max.Y), false)
	if !c.Plinth.Empty() {
		addCut(d, drawing.Tag{Meaning: drawing.Carcass}, plane.R(0, 0, t, c.Plinth.Max.Y), false)
	}
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
	d.Add(across(drawing.Subject{}, 0, depth, -floor, -1))
	d.Add(upright(of(drawing.CabinetHeight, c.Place), c.Outline.Min.Y, c.Outline.Max.Y, depth, 1))
	return d
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
			addCut(s.d, drawing.Tag{Meaning: drawing.Face}, c.Rect, c.Part == plan.PanelPart)
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
	bottom := part(drawing.DrawerBottom, drawing.DrawerThing, plane.R(start, f.Drawer.Bottom.Min.Y, end, f.Drawer.Bottom.Max.Y))
	if fits {
		addCut(s.d, bottom.Tag, bottom.Rect, true)
	} else {
		s.d.Add(bottom)
	}
	if thick := f.Sheet.Back.Thickness; fits && thick > 0 && f.Drawer.Back > f.Drawer.Bottom.Max.Y {
		addCut(s.d, side.Tag, plane.R(end-thick, f.Drawer.Bottom.Max.Y, end, f.Drawer.Back), false)
	}
	for _, h := range f.Runner.Screws {
		addHole(s.d, drawing.Subject{}, plane.Point{X: h.Back, Y: h.Y}, h.Diameter)
	}
	room := labelRoom(f, start, min(end, s.depth))
	label := &drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label, Of: of(drawing.FrontThing, f.Place)}, At: room.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: smallLetters, Short: numbered(f), Within: room}
	label.Say = message.New("%v, runner %v", numbered(f), f.Runner.Length)
	if !fits {
		label.Say = message.New("%v: no runner fits, see Findings", numbered(f))
		label.Short = message.New("%v: no runner fits", numbered(f))
	}
	s.d.Add(label)
}

// measures dimensions what makes a drawer fit. Drop and cover that are those of the
// front below are not told again.
func (s *frontSection) measures() {
	f := s.f
	measure := func(a, b length.Length, x length.Length, level int, say func(length.Length) message.Message) {
		if a != b {
			m := upright(drawing.Subject{}, min(a, b), max(a, b), x, level)
			m.Value = b - a
			if say != nil {
				m.Say = say(b - a)
			}
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
	end := min(f.Runner.Start+f.LengthAtLeast(), s.depth)
	measure(f.Drawer.Body.Max.Y, f.Drawer.Limit, end-end/8, 0, nil)
}

// shelfStart is where shelves begin, depth frame: behind inset fronts.
func shelfStart(p *plan.Plan, c *plan.Cabinet) length.Length {
	if c.Mount == model.Inset {
		return c.Fronts
	}
	return 0
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
