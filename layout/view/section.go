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
// x), y the run frame's.
func Section(p *plan.Plan, at model.Place) *drawing.Drawing {
	c := &p.Cabinets[at.Cabinet]
	b := &c.Bays[at.Bay]
	d := &drawing.Drawing{Title: message.New("Section through %v, bay %v", c.Name, at.Bay+1)}
	depth := p.Project.Cabinets[at.Cabinet].Depth
	t := p.Project.Boards.Carcass.Thickness
	back := p.Project.Boards.Back.Thickness
	boards := []plane.Rect{
		plane.R(0, c.Outline.Min.Y, depth-back, c.Outline.Min.Y+t),
		plane.R(0, c.Outline.Max.Y-t, depth-back, c.Outline.Max.Y),
		plane.R(depth-back, c.Outline.Min.Y, depth, c.Outline.Max.Y),
	}
	for j := range c.Bays[:at.Bay+1] { // those of spanning fronts are listed at their first bay
		for _, shelf := range c.Bays[j].Shelves {
			if shelf.Rect.Max.X > b.Opening.Min.X {
				boards = append(boards, plane.R(shelfStart(p, c), shelf.Rect.Min.Y, depth-back, shelf.Rect.Max.Y))
			}
		}
	}
	for _, r := range boards {
		d.Add(rect(drawing.Carcass, of(drawing.CabinetThing, c.Place), r), &drawing.Hatch{Tag: drawing.Tag{Meaning: drawing.Carcass}, Rect: r})
	}
	if !c.Plinth.Empty() {
		d.Add(rect(drawing.Carcass, drawing.Subject{}, plane.R(0, 0, t, c.Plinth.Max.Y)))
	}
	var below *plan.Front
	for _, k := range b.Column {
		addFrontSection(d, &p.Fronts[k], below, depth)
		below = &p.Fronts[k]
	}
	d.Add(across(drawing.Subject{}, 0, depth, 0, -1))
	d.Add(upright(of(drawing.CabinetHeight, c.Place), c.Outline.Min.Y, c.Outline.Max.Y, depth, 1))
	return d
}

// addFrontSection draws one front of the section with its drawer and runner,
// and dimensions what makes it fit: height, drop, cover, room above. Drop and
// cover that are those of the front below (nil for none) are not told again.
func addFrontSection(d *drawing.Drawing, f, below *plan.Front, depth length.Length) {
	s := of(drawing.FrontThing, f.Place)
	x := -f.Thickness
	if f.Inset {
		x = 0
	}
	panel := plane.R(x, f.Face.Min.Y, x+f.Thickness, f.Face.Max.Y)
	if f.Kind != model.OpenNiche {
		r := rect(drawing.Face, s, panel)
		r.Filled = true
		d.Add(r)
	}
	d.Add(upright(of(drawing.FrontHeight, f.Place), f.Face.Min.Y, f.Face.Max.Y, -f.Thickness, -3))
	if f.Kind == model.OpenNiche { // what is clear in it stands in the middle
		d.Add(upright(drawing.Subject{}, f.Clear.Min.Y, f.Clear.Max.Y, depth/2, 0))
	}
	if !f.Fitted {
		return
	}
	if f.Runner.Length <= 0 {
		sectionWithout(d, f, depth)
		return
	}
	start, end := f.Runner.Start, f.Runner.Start+f.Runner.Length
	side := rect(drawing.DrawerPart, of(drawing.DrawerThing, f.Place), plane.R(start, f.Drawer.Body.Min.Y, end, f.Drawer.Side))
	bottom := rect(drawing.DrawerBottom, side.Of, plane.R(start, f.Drawer.Bottom.Min.Y, end, f.Drawer.Bottom.Max.Y))
	bottom.Filled = true
	lower := &drawing.Line{Tag: drawing.Tag{Meaning: drawing.RunnerPart, Of: of(drawing.RunnerThing, f.Place)}, From: plane.Point{X: start, Y: f.Runner.Lower}, To: plane.Point{X: end, Y: f.Runner.Lower}}
	d.Add(side, bottom, lower)
	if f.Drawer.Rail > f.Drawer.Side {
		d.Add(&drawing.Line{Tag: side.Tag, From: plane.Point{X: start, Y: f.Drawer.Rail}, To: plane.Point{X: end, Y: f.Drawer.Rail}})
	}
	for _, h := range f.Runner.Screws {
		addHole(d, drawing.Subject{}, plane.Point{X: h.Back, Y: h.Y}, h.Diameter)
	}
	room := labelRoom(f, start, end)
	d.Add(&drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label, Of: s}, At: room.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: smallLetters, Say: message.New("%v, runner %v", numbered(f), f.Runner.Length), Short: numbered(f), Within: room})
	measure := func(a, b length.Length, x length.Length, level int) {
		if a != b {
			m := upright(drawing.Subject{}, min(a, b), max(a, b), x, level)
			m.Value = b - a
			d.Add(m)
		}
	}
	same := below != nil && below.Fitted
	if !same || below.Drop != f.Drop {
		measure(f.Face.Min.Y, f.Runner.Lower, -f.Thickness, -1)
	}
	if !same || below.Drawer.Cover.Bottom != f.Drawer.Cover.Bottom {
		measure(f.Face.Min.Y, f.Drawer.Bottom.Min.Y, -f.Thickness, -2)
	}
	measure(f.Drawer.Body.Max.Y, f.Drawer.Limit, end-f.Runner.Length/8, 0)
}

// sectionWithout writes behind a front why its drawer is not drawn, in two lines
// so that it has room in the shallow cabinets where that happens.
func sectionWithout(d *drawing.Drawing, f *plan.Front, depth length.Length) {
	third := f.Face.Height() / 3
	for i, m := range []message.Message{message.New("see Findings"), message.New("no runner fits")} {
		room := plane.R(0, f.Face.Min.Y+third/2+length.Length(i)*third, depth, f.Face.Min.Y+third*3/2+length.Length(i)*third)
		d.Add(&drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label, Of: of(drawing.FrontThing, f.Place)}, At: room.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: smallLetters, Bold: true, Say: m, Within: room})
	}
}

// shelfStart is where shelves begin, depth frame: behind inset fronts.
func shelfStart(p *plan.Plan, c *plan.Cabinet) length.Length {
	if c.Mount == model.Inset {
		return p.Project.Boards.Front.Thickness
	}
	return 0
}

// labelRoom is where a drawer's name stands: over its bottom or in the room
// above it, whichever is higher, left of the dimension there.
func labelRoom(f *plan.Front, start, end length.Length) plane.Rect {
	inside := plane.R(start, f.Drawer.Bottom.Max.Y, end, f.Drawer.Side)
	above := plane.R(start, f.Drawer.Body.Max.Y, end-f.Runner.Length/4, f.Drawer.Limit)
	if above.Height() > inside.Height() {
		return above
	}
	return inside
}
