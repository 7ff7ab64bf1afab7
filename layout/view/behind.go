package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// addBehind draws what a front hides: drawer, runners, holes, and the cover of
// the drawer bottom as a band with its figure. A shortfall is hatched and
// written by the finding that tells of it.
func addBehind(d *drawing.Drawing, f *plan.Front) {
	for _, h := range f.HandleHoles {
		addHole(d, drawing.Subject{}, h.At.Add(f.Face.Min), h.Diameter)
	}
	if !f.Fitted {
		return
	}
	s := of(drawing.DrawerThing, f.Place)
	body := rect(drawing.DrawerPart, s, plane.R(f.Drawer.Body.Min.X, f.Drawer.Body.Min.Y, f.Drawer.Body.Max.X, f.Drawer.Side))
	body.Dashed = true
	d.Add(body)
	if f.Drawer.Rail > f.Drawer.Side {
		y := f.Drawer.Rail
		d.Add(&drawing.Line{Tag: body.Tag, Dashed: true, From: plane.Point{X: body.Rect.Min.X, Y: y}, To: plane.Point{X: body.Rect.Max.X, Y: y}})
	}
	d.Add(coverBand(f)...)
	bottom := rect(drawing.DrawerBottom, s, f.Drawer.Bottom)
	bottom.Filled = true
	d.Add(bottom)
	for _, r := range runnerEnds(f) {
		d.Add(rect(drawing.RunnerPart, of(drawing.RunnerThing, f.Place), r))
	}
	for i, h := range f.Holes {
		addHole(d, drawing.Subject{Kind: drawing.HoleThing, Place: f.Place, Index: i}, h.At.Add(f.Face.Min), h.Diameter)
	}
}

// coverBand is the strip of the front below the drawer bottom's underside.
func coverBand(f *plan.Front) []drawing.Mark {
	c := f.Drawer.Cover.Bottom
	if c <= 0 {
		return nil
	}
	s := of(drawing.DrawerThing, f.Place)
	band := rect(drawing.CoverBand, s, plane.R(f.Drawer.Bottom.Min.X, f.Face.Min.Y, f.Drawer.Bottom.Max.X, f.Drawer.Bottom.Min.Y))
	band.Filled = true
	return []drawing.Mark{band, &drawing.Text{
		Tag:    drawing.Tag{Meaning: drawing.CoverBand, Of: s},
		At:     plane.Point{X: f.Face.Centre().X, Y: f.Drawer.Bottom.Max.Y},
		Anchor: drawing.BottomCentre, Size: smallLetters,
		Say: message.New("cover %v", c), Short: message.New("%v", c), Within: f.Face,
	}}
}

// runnerEnds are the two runners seen from the front: as wide as the side
// clearance, from the lower edge to the same distance above the first screw, or
// as high as wide where the sheet tells no screw.
func runnerEnds(f *plan.Front) [2]plane.Rect {
	w := f.Sheet.SideClearance
	h := w
	if len(f.Runner.Screws) > 0 {
		h = max(h, 2*(f.Runner.Screws[0].Y-f.Runner.Lower))
	}
	y := f.Runner.Lower
	return [2]plane.Rect{
		plane.R(f.Opening.Min.X, y, f.Opening.Min.X+w, y+h),
		plane.R(f.Opening.Max.X-w, y, f.Opening.Max.X, y+h),
	}
}

// addHole draws a hole: its true circle and a cross that reaches past it.
func addHole(d *drawing.Drawing, s drawing.Subject, at plane.Point, diameter length.Length) {
	d.Add(&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge, Of: s}, Centre: at, Radius: diameter / 2})
	arm := diameter/2 + diameter/4
	cross := drawing.Tag{Meaning: drawing.HoleCross, Of: s}
	d.Add(&drawing.Line{Tag: cross, From: plane.Point{X: at.X - arm, Y: at.Y}, To: plane.Point{X: at.X + arm, Y: at.Y}})
	d.Add(&drawing.Line{Tag: cross, From: plane.Point{X: at.X, Y: at.Y - arm}, To: plane.Point{X: at.X, Y: at.Y + arm}})
}
