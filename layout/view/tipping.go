package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/tipping"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Tipping draws a cabinet from its left side with all drawers open, what is laid on the
// edge of the worst, where it would tip, and where a fixing to the wall would hold it. It is
// in the depth frame, like a section.
func Tipping(p *plan.Plan, i int) *drawing.Drawing {
	s := tipping.Of(p, i)
	c := s.Cabinet
	depth := p.Project.Cabinets[i].Depth
	d := &drawing.Drawing{Title: message.New("Open drawers of %v", s.Name)}
	body := filled(drawing.Carcass, of(drawing.CabinetThing, c.Place), plane.R(0, c.Outline.Min.Y, depth, c.Outline.Max.Y))
	d.Add(body)
	addBase(d, p, c, depth)
	for k := range p.Fronts {
		if f := &p.Fronts[k]; f.Place.Cabinet == i && f.Kind != model.OpenNiche {
			addPulled(d, f)
		}
	}
	least := -s.EdgeOut + s.Pivot
	addFloor(d, min(least, 0), depth)
	if s.Standing == model.FixedToWall {
		addFixing(d, depth, s.Height, message.New("fixed to the wall"))
		return d
	}
	worst := s.Worst()
	switch said := s.Told(); {
	case s.Standing == model.NotSaid:
		d.Title = message.New("Open drawers of %v; say in its form how it stands, and read there whether it tips", s.Name)
	case worst == nil || s.Edge == nil:
		d.Title = said
	}
	pivot := drawing.Tag{Meaning: drawing.Carcass}
	if worst != nil && worst.Margin() < 0 {
		pivot = drawing.Tag{Meaning: drawing.FindingMark, Severity: drawing.OfWarning}
	}
	const toe = 14 * length.Millimetre
	d.Add(
		&drawing.Line{Tag: pivot, From: plane.Point{X: s.Pivot}, To: plane.Point{X: s.Pivot - toe, Y: -2 * toe}},
		&drawing.Line{Tag: pivot, From: plane.Point{X: s.Pivot}, To: plane.Point{X: s.Pivot + toe, Y: -2 * toe}},
		&drawing.Line{Tag: pivot, From: plane.Point{X: s.Pivot - toe, Y: -2 * toe}, To: plane.Point{X: s.Pivot + toe, Y: -2 * toe}},
	)
	if worst == nil {
		return d
	}
	if e := s.Edge; e != nil {
		at := plane.Point{X: s.Pivot - s.EdgeOut, Y: e.Face.Max.Y}
		top := plane.Point{X: at.X, Y: at.Y + 70*length.Millimetre}
		d.Add(
			&drawing.Line{Tag: pivot, From: top, To: at},
			&drawing.Line{Tag: pivot, From: at, To: at.Add(plane.Point{X: -toe / 2, Y: 2 * toe})},
			&drawing.Line{Tag: pivot, From: at, To: at.Add(plane.Point{X: toe / 2, Y: 2 * toe})},
			&drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label}, At: top, Anchor: drawing.Anchor{X: 1}, Size: smallLetters, Say: message.New("%v", message.Kilograms(s.LoadKg))},
			across(drawing.Subject{}, at.X, s.Pivot, -2*toe, -1),
		)
	}
	if pull := s.Pull(worst); pull > 0 {
		addFixing(d, depth, s.Height, message.New("hold with %v", message.Newtons(pull)))
	}
	return d
}

// addPulled draws a front, and behind it its drawer, as far out as its runner lets them.
func addPulled(d *drawing.Drawing, f *plan.Front) {
	out := length.Length(0)
	if f.Fitted {
		out = f.Runner.Length
	}
	near, far := f.Board()
	if out > 0 {
		d.Add(filled(drawing.DrawerPart, of(drawing.DrawerThing, f.Place), plane.R(f.Runner.Start-out, f.Drawer.Body.Min.Y, f.Runner.Start, f.Drawer.Body.Max.Y)))
	}
	t := of(drawing.FrontThing, f.Place)
	d.Add(filled(drawing.Face, t, plane.R(near-out, f.Face.Min.Y, far-out, f.Face.Max.Y)))
	if out > 0 {
		room := plane.R(f.Runner.Start-out, f.Drawer.Body.Min.Y, 0, f.Drawer.Body.Max.Y)
		d.Add(&drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label, Of: t}, At: room.Centre(), Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: smallLetters, Say: numbered(f), Short: message.New("%v", f.Number), Within: room})
	}
}

// addFixing draws a wall behind a cabinet and a fixing to it, with what is to be said of it.
func addFixing(d *drawing.Drawing, depth, high length.Length, say message.Message) {
	const thick, past = 12 * length.Millimetre, 40 * length.Millimetre
	wall := drawing.Tag{Meaning: drawing.Carcass}
	d.Add(
		&drawing.Hatch{Tag: wall, Rect: plane.R(depth, 0, depth+thick, high+past), Close: true},
		&drawing.Line{Tag: wall, From: plane.Point{X: depth}, To: plane.Point{X: depth, Y: high + past}},
		&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge}, Centre: plane.Point{X: depth, Y: high}, Radius: 8 * length.Millimetre},
		upright(drawing.Subject{}, 0, high, depth+thick, 1),
		&drawing.Text{Tag: drawing.Tag{Meaning: drawing.Label}, At: plane.Point{X: depth, Y: high + past}, Size: smallLetters, Say: say},
	)
}
