package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// bore is a hole on a panel that is drilled from a sheet: At in the panel's
// drilling frame, its lower left corner at 0,0 as it lies before you.
type bore struct {
	at              plane.Point
	diameter, depth length.Length
	sheet           *model.HardwareSheet // that the figures of the drill are from; nil: none
	subject         drawing.Subject
	side            plan.Side // whose edge it is measured from, as seen from the room
	kind            plan.HoleKind
	through         bool // drilled right through
}

// whole is what must be on one sheet to drill the hole: its circle and the
// cross that reaches past it.
func (b bore) whole() plane.Rect {
	return plane.Rect{Min: b.at, Max: b.at}.Grow(b.diameter/2 + crossReach)
}

// crossReach is how far a centre cross reaches past its circle.
const crossReach = 2 * length.Millimetre

// rearBores are a front's holes in the rear frame.
func rearBores(f *plan.Front) []bore {
	var bores []bore
	for i, h := range f.Holes {
		bores = append(bores, bore{
			at: f.Rear(h.At), diameter: h.Diameter, depth: h.Depth, sheet: f.Sheet, side: h.Side, kind: h.Kind,
			subject: drawing.Subject{Kind: drawing.HoleThing, Place: f.Place, Index: i},
		})
	}
	return bores
}

// rearPanel draws the rear face as it lies before you: the edges to register
// on, and each hole with its true circle and centre cross.
func rearPanel(f *plan.Front) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("Rear face of front %v, %v", f.Number, f.Name)}
	d.Add(&drawing.Rectangle{
		Tag:  drawing.Tag{Meaning: drawing.Register, Of: drawing.Subject{Kind: drawing.FrontThing, Place: f.Place}},
		Rect: f.Blind(),
	})
	for _, b := range rearBores(f) {
		d.Add(b.marks()...)
	}
	return d
}

// marks are the true circle and the centre cross.
func (b bore) marks() []drawing.Mark {
	arm := b.diameter/2 + crossReach
	cross := drawing.Tag{Meaning: drawing.HoleCross, Of: b.subject}
	return []drawing.Mark{
		&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge, Of: b.subject}, Centre: b.at, Radius: b.diameter / 2},
		&drawing.Line{Tag: cross, From: plane.Point{X: b.at.X - arm, Y: b.at.Y}, To: plane.Point{X: b.at.X + arm, Y: b.at.Y}},
		&drawing.Line{Tag: cross, From: plane.Point{X: b.at.X, Y: b.at.Y - arm}, To: plane.Point{X: b.at.X, Y: b.at.Y + arm}},
	}
}

// sides gives the holes of one side that a corner template shows, lowest first:
// all but those of a stabiliser, which lie in the middle.
func sides(bores []bore, side plan.Side) []bore {
	var of []bore
	for _, b := range bores {
		if b.side == side && b.kind != plan.StabiliserHole {
			of = append(of, b)
		}
	}
	for i := 1; i < len(of); i++ {
		for j := i; j > 0 && of[j].at.Y < of[j-1].at.Y; j-- {
			of[j], of[j-1] = of[j-1], of[j]
		}
	}
	return of
}

// smallMap draws the panel small inside a box, its holes as dots, and hatches
// what this sheet shows; left out are the tiles that are not printed.
func (d *draft) smallMap(box, panel plane.Rect, bores []bore, shown plane.Rect, left []plane.Rect) {
	if panel.Empty() || box.Empty() {
		return
	}
	box = box.Grow(-mm(1) / 2) // the dots of holes at its edges
	// The map is only looked at, so whole micrometres of scale are enough.
	const per = 1_000_000
	scale := min(int64(box.Width())*per/int64(panel.Width()), int64(box.Height())*per/int64(panel.Height()))
	small := func(l length.Length) length.Length {
		return length.Length(int64(l) / 1000 * scale / (per / 1000))
	}
	at := func(p plane.Point) plane.Point {
		return plane.Point{X: box.Min.X + small(p.X-panel.Min.X), Y: box.Min.Y + small(p.Y-panel.Min.Y)}
	}
	area := func(r plane.Rect) plane.Rect { return plane.Rect{Min: at(r.Min), Max: at(r.Max)} }
	for _, r := range left {
		if r = r.Intersect(panel); !r.Empty() {
			d.dashedBox(area(r))
		}
	}
	if s := shown.Intersect(panel); !s.Empty() {
		d.own.Add(&drawing.Hatch{Tag: drawing.Tag{Meaning: drawing.Frame}, Rect: area(s)})
	}
	d.box(drawing.Frame, area(panel))
	for _, b := range bores {
		d.own.Add(&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.Frame}, Centre: at(b.at), Radius: mm(1) / 3})
	}
}

func (d *draft) dashedBox(r plane.Rect) {
	d.own.Add(&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Frame}, Rect: r, Dashed: true})
}
