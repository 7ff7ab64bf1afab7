// Package view turns a plan into drawings: the elevation of the run, sections,
// the rear face of a front, the inside face of a carcass side.
package view

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Letter heights on paper (ISO 3098 series, from memory).
const (
	smallLetters  = 2500 * length.Micrometre
	normalLetters = 3500 * length.Micrometre
)

// ElevationOptions choose what an elevation shows.
type ElevationOptions struct {
	SeeThrough bool  // drawers, runners, holes and covers behind the fronts
	Found      Found // marked where it is
	Chains     bool  // of heights and widths, with their gaps, outside of the run: for who has no window to ask
	Handles    bool  // as with Chains, without these
	From, To   int   // only the cabinets from the one up to the other; all where To is 0
	Locks      bool  // which fronts are locked at their heights
	Covers     bool  // which fronts cover their drawer bottoms enough
}

// Elevation draws the run from the room, in the run frame.
func Elevation(p *plan.Plan, o ElevationOptions) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("Front elevation")}
	from, to := o.cabinets(p)
	switch first := p.Cabinets[from:to]; {
	case len(first) == len(p.Cabinets):
	case len(first) == 1:
		d.Title = message.New("Front elevation of %v", first[0].Name)
	default:
		d.Title = message.New("Front elevation, %v to %v", first[0].Name, first[len(first)-1].Name)
	}
	for i := from; i < to; i++ {
		addCarcass(d, p, i, o.SeeThrough)
	}
	worst := o.Found.worst()
	within := func(f *plan.Front) bool { return f.Place.Cabinet >= from && f.Place.Cabinet < to }
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if !within(f) {
			continue
		}
		c := addFront(d, f, o.SeeThrough, worst[f.Number])
		if at := f.Place; o.Locks && p.Project.Cabinets[at.Cabinet].Bays[at.Bay].Fronts[at.Front].Locked {
			c.Note, c.NoteShort = message.New("locked"), message.New("lkd.")
		}
		if o.Chains {
			c.Height = 0
		}
		if o.Chains || o.Handles {
			d.Add(handles(f)...)
		}
	}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if !within(f) {
			continue
		}
		if o.SeeThrough {
			addBehind(d, f)
		}
		if c := f.Drawer.Cover.Bottom; o.Covers && f.Fitted && c > 0 && c >= p.Project.FrontAt(f.Place).Cover {
			d.Add(filled(drawing.Covered, of(drawing.DrawerThing, f.Place), below(f)))
		}
	}
	for i := from; i < to; i++ {
		addGrips(d, p, i)
	}
	o.Found.addToElevation(d, p)
	addRunDimensions(d, p, o)
	return d
}

// cabinets are those that are drawn, from the one up to the other.
func (o *ElevationOptions) cabinets(p *plan.Plan) (from, to int) {
	if o.To == 0 {
		return 0, len(p.Cabinets)
	}
	return o.From, o.To
}

// extentOf is that of some cabinets, with what stands beside, over and under them.
func extentOf(p *plan.Plan, from, to int) plane.Rect {
	if from == 0 && to == len(p.Cabinets) {
		return p.Extent
	}
	e := p.Cabinets[from].Outline
	for i := from; i < to; i++ {
		e = e.Union(p.Cabinets[i].Around())
	}
	for i := range p.Fronts {
		if f := &p.Fronts[i]; f.Place.Cabinet >= from && f.Place.Cabinet < to {
			e = e.Union(f.Face)
		}
	}
	e.Min.Y = min(e.Min.Y, 0) // the floor, also under what hangs on the wall
	return e
}

func of(kind drawing.SubjectKind, at model.Place) drawing.Subject {
	return drawing.Subject{Kind: kind, Place: at}
}

func rect(m drawing.Meaning, s drawing.Subject, r plane.Rect) *drawing.Rectangle {
	return &drawing.Rectangle{Tag: drawing.Tag{Meaning: m, Of: s}, Rect: r}
}

func filled(m drawing.Meaning, s drawing.Subject, r plane.Rect) *drawing.Rectangle {
	f := rect(m, s, r)
	f.Filled = true
	return f
}

// addCarcass draws a carcass, its plinth and what stands beside it. Edges that
// overlay fronts hide are dashed in see-through views and left out in others.
func addCarcass(d *drawing.Drawing, p *plan.Plan, i int, through bool) {
	c := &p.Cabinets[i]
	s := of(drawing.CabinetThing, c.Place)
	for _, b := range c.Beside {
		r := rect(drawing.Carcass, drawing.Subject{}, b.Rect)
		r.Filled = true
		d.Add(r)
	}
	if !c.Plinth.Empty() {
		r := rect(drawing.Plinth, s, c.Plinth)
		r.Filled = true
		d.Add(r)
	}
	for _, f := range c.Feet {
		r := rect(drawing.Plinth, drawing.Subject{}, f)
		r.Filled, r.Dashed = c.Plinth.Empty(), !c.Plinth.Empty()
		if c.Plinth.Empty() || through { // a plinth board hides them
			d.Add(r)
		}
	}
	body := rect(drawing.Carcass, s, c.Outline)
	body.Filled = true
	d.Add(body)
	for j := range c.Bays {
		b := &c.Bays[j]
		open := rect(drawing.Hidden, of(drawing.BayThing, b.Place), b.Opening)
		if c.Mount == model.Inset {
			open.Meaning = drawing.Carcass
		}
		open.Dashed = c.Mount == model.Overlay
		if through || c.Mount == model.Inset || b.Count == 0 {
			d.Add(open)
		}
		for _, h := range b.Channels { // seen behind the gap, and between the fronts' edges
			d.Add(filled(drawing.NichePart, drawing.Subject{}, h.Rect))
		}
		for _, rail := range b.Rails {
			d.Add(filled(drawing.Carcass, drawing.Subject{}, rail.Rect))
		}
		for _, shelf := range b.Shelves {
			if through {
				r := rect(drawing.Hidden, drawing.Subject{}, shelf.Rect)
				r.Dashed = true
				d.Add(r)
			}
		}
	}
}

// addFront draws a front, and gives its caption, which has the severity of the worst
// that is found about it.
func addFront(d *drawing.Drawing, f *plan.Front, through bool, worst drawing.Severity) *drawing.Caption {
	m := drawing.Face
	switch f.Kind {
	case model.FixedPanel:
		m = drawing.PanelPart
	case model.OpenNiche:
		m = drawing.NichePart
	}
	s := of(drawing.FrontThing, f.Place)
	r := rect(m, s, f.Face)
	r.Filled = true
	d.Add(r)
	for _, l := range zoneLines(f, false) {
		l.From, l.To = l.From.Add(f.Face.Min), l.To.Add(f.Face.Min)
		d.Add(l)
	}
	c := &drawing.Caption{
		Tag: drawing.Tag{Meaning: drawing.Label, Of: s, Severity: worst}, Face: f.Face, Top: through, Size: normalLetters,
		Number: f.Number, Name: ownName(f), Height: f.Face.Height(),
	}
	if f.Kind == model.Door {
		c.Note, c.NoteShort = message.New("door"), message.New("door")
	}
	d.Add(c)
	if f.Kind == model.OpenNiche {
		d.Add(&drawing.Text{
			Tag: drawing.Tag{Meaning: drawing.Label, Of: s}, At: plane.Point{X: f.Face.Centre().X, Y: f.Face.Min.Y}, Anchor: drawing.Anchor{X: 0.5, Y: -0.4}, Size: smallLetters,
			Say: message.New("clear %v", f.Clear.Height()), Short: message.New("(%v)", f.Clear.Height()), Within: f.Face,
		})
	}
	return c
}

// numbered is a front's number, with its name where it has one of its own.
func numbered(f *plan.Front) message.Message {
	if !f.Named() {
		return message.New("%v", f.Number)
	}
	return message.New("%v  %v", f.Number, f.Name)
}

// ownName is the name of a front that has one of its own.
func ownName(f *plan.Front) message.Message {
	if !f.Named() {
		return message.Message{}
	}
	return message.New("%v", f.Name)
}

// addGrips lays something to take hold of over each division and partition.
func addGrips(d *drawing.Drawing, p *plan.Plan, i int) {
	c := &p.Cabinets[i]
	for j := range c.Bays {
		b := &c.Bays[j]
		for k := b.First; k+1 < b.First+b.Count; k++ {
			lower, upper := &p.Fronts[k], &p.Fronts[k+1]
			gap := plane.R(lower.Face.Min.X, lower.Face.Max.Y, lower.Face.Max.X, upper.Face.Min.Y)
			d.Add(rect(drawing.Grip, of(drawing.DivisionThing, lower.Place), gap))
		}
	}
	for j, r := range c.Partitions {
		at := model.Place{Cabinet: i, Bay: j, Front: -1}
		d.Add(rect(drawing.Grip, of(drawing.PartitionThing, at), r))
	}
}

// addCabinetNames writes the names of cabinets below the run, on the line of the
// first level of dimensions; false where none has one.
func addCabinetNames(d *drawing.Drawing, cabinets []plan.Cabinet, low length.Length) (any bool) {
	const below = length.Metre // more than any line of letters takes, at any scale
	for i := range cabinets {
		c := &cabinets[i]
		if c.Name == "" {
			continue
		}
		any = true
		d.Add(&drawing.Text{
			Tag: drawing.Tag{Meaning: drawing.Note, Of: of(drawing.CabinetThing, c.Place)},
			At:  plane.Point{X: c.Outline.Centre().X, Y: low}, Anchor: drawing.Anchor{X: 0.5, Y: 0.5}, Size: smallLetters, Level: -1,
			Say: message.New("%v", c.Name), Within: plane.R(c.Outline.Min.X, low-below, c.Outline.Max.X, low+below),
		})
	}
	return any
}

// addRunDimensions adds the widths below the run and the heights at its sides:
// chains first, then overall.
func addRunDimensions(d *drawing.Drawing, p *plan.Plan, o ElevationOptions) {
	from, to := o.cabinets(p)
	if from == to {
		return
	}
	cabinets, extent := p.Cabinets[from:to], extentOf(p, from, to)
	low := extent.Min.Y
	level := -1
	if addCabinetNames(d, cabinets, low) {
		level--
	}
	if hasBays(cabinets) {
		for i := range cabinets {
			for j := range cabinets[i].Bays {
				b := &cabinets[i].Bays[j]
				d.Add(across(of(drawing.BayWidth, b.Place), b.Opening.Min.X, b.Opening.Max.X, low, level))
			}
		}
		level--
	}
	for i := range cabinets {
		c := &cabinets[i]
		d.Add(across(of(drawing.CabinetWidth, c.Place), c.Outline.Min.X, c.Outline.Max.X, low, level))
	}
	first, last := &cabinets[0], &cabinets[len(cabinets)-1]
	if extent.Width() != first.Outline.Width() {
		d.Add(across(drawing.Subject{}, extent.Min.X, extent.Max.X, low, level-1))
	}
	atLeft, atRight := 0, 0
	if o.Chains {
		atLeft, atRight = addChains(d, p, cabinets, extent)
	}
	left, right := extent.Min.X, extent.Max.X
	d.Add(upright(of(drawing.CabinetHeight, first.Place), first.Outline.Min.Y, first.Outline.Max.Y, left, -1-atLeft))
	if up := first.Outline.Min.Y; up > 0 {
		d.Add(upright(drawing.Subject{}, 0, up, left, -1-atLeft))
		d.Add(upright(drawing.Subject{}, 0, extent.Max.Y, left, -2-atLeft))
	}
	if last != first && (last.Outline.Min.Y != first.Outline.Min.Y || last.Outline.Max.Y != first.Outline.Max.Y) {
		d.Add(upright(of(drawing.CabinetHeight, last.Place), last.Outline.Min.Y, last.Outline.Max.Y, right, 1+atRight))
	}
}

func hasBays(cabinets []plan.Cabinet) bool {
	for i := range cabinets {
		if len(cabinets[i].Bays) > 1 {
			return true
		}
	}
	return false
}

func across(s drawing.Subject, x1, x2, y length.Length, level int) *drawing.Dimension {
	return &drawing.Dimension{
		Tag:  drawing.Tag{Meaning: drawing.DimensionLine, Of: s},
		From: plane.Point{X: x1, Y: y}, To: plane.Point{X: x2, Y: y},
		Line: y, Level: level, Value: x2 - x1,
	}
}

func upright(s drawing.Subject, y1, y2, x length.Length, level int) *drawing.Dimension {
	return &drawing.Dimension{
		Tag:  drawing.Tag{Meaning: drawing.DimensionLine, Of: s},
		From: plane.Point{X: x, Y: y1}, To: plane.Point{X: x, Y: y2},
		Vertical: true, Line: x, Level: level, Value: y2 - y1,
	}
}

// addBehind draws what a front hides: the edges of the carcass that it lies on,
// drawer, runners, holes, and the cover of the drawer bottom as bands below it, with
// its figure, and beside it. A shortfall is marked by the finding
// that tells of it.
func addBehind(d *drawing.Drawing, f *plan.Front) {
	for _, h := range f.HandleHoles {
		addHole(d, drawing.Subject{}, h.At.Add(f.Face.Min), h.Diameter)
	}
	for _, r := range overCarcass(f) {
		d.Add(filled(drawing.OverlayBand, drawing.Subject{}, r))
	}
	for g := range f.Drawers() {
		addDrawer(d, g)
	}
	for i, h := range f.Holes {
		addHole(d, drawing.Subject{Kind: drawing.HoleThing, Place: f.Place, Index: i}, h.At.Add(f.Face.Min), h.Diameter)
	}
}

// addDrawer draws a drawer with its runners and the packing beside them; what its front
// covers, where it has one.
func addDrawer(d *drawing.Drawing, f *plan.Front) {
	s := of(drawing.DrawerThing, f.Place)
	body := rect(drawing.DrawerPart, s, plane.R(f.Drawer.Body.Min.X, f.Drawer.Body.Min.Y, f.Drawer.Body.Max.X, f.Drawer.Side))
	body.Dashed = true
	d.Add(body)
	if f.Drawer.Rail > f.Drawer.Side {
		y := f.Drawer.Rail
		d.Add(&drawing.Line{Tag: body.Tag, Dashed: true, From: plane.Point{X: body.Rect.Min.X, Y: y}, To: plane.Point{X: body.Rect.Max.X, Y: y}})
	}
	if f.Nth == 0 {
		d.Add(coverBand(f)...)
		for _, r := range beside(f) {
			d.Add(filled(drawing.CoverBand, s, r))
		}
	}
	bottom := rect(drawing.DrawerBottom, s, f.Drawer.Bottom)
	bottom.Filled = true
	d.Add(bottom)
	for _, r := range f.RunnerEnds() {
		d.Add(rect(drawing.RunnerPart, of(drawing.RunnerThing, f.Place), r))
	}
	for _, r := range f.PackingStrips() {
		strip := rect(drawing.Hidden, drawing.Subject{}, r)
		strip.Dashed = true
		d.Add(strip)
	}
}

// overCarcass are the parts of a front that lie on the edges of the carcass around
// its opening.
func overCarcass(f *plan.Front) []plane.Rect {
	if f.Kind == model.OpenNiche {
		return nil
	}
	in := f.Face.Intersect(f.Opening)
	return notEmpty(
		plane.R(f.Face.Min.X, f.Face.Min.Y, in.Min.X, f.Face.Max.Y), plane.R(in.Max.X, f.Face.Min.Y, f.Face.Max.X, f.Face.Max.Y),
		plane.R(in.Min.X, f.Face.Min.Y, in.Max.X, in.Min.Y), plane.R(in.Min.X, in.Max.Y, in.Max.X, f.Face.Max.Y),
	)
}

func notEmpty(list ...plane.Rect) []plane.Rect {
	return slices.DeleteFunc(list, plane.Rect.Empty)
}

// below is the part of a front below the underside of the drawer bottom.
func below(f *plan.Front) plane.Rect {
	return plane.R(f.Drawer.Bottom.Min.X, f.Face.Min.Y, f.Drawer.Bottom.Max.X, f.Drawer.Bottom.Min.Y)
}

// beside are the parts of a front at the sides of the drawer bottom, up to where it
// lies on the carcass.
func beside(f *plan.Front) []plane.Rect {
	b, in := f.Drawer.Bottom, f.Face.Intersect(f.Opening)
	low := max(in.Min.Y, b.Min.Y)
	return notEmpty(plane.R(in.Min.X, low, b.Min.X, b.Max.Y), plane.R(b.Max.X, low, in.Max.X, b.Max.Y))
}

// coverBand is the strip of the front below the drawer bottom's underside.
func coverBand(f *plan.Front) []drawing.Mark {
	c := f.Drawer.Cover.Bottom
	if c <= 0 {
		return nil
	}
	s := of(drawing.DrawerThing, f.Place)
	return []drawing.Mark{filled(drawing.CoverBand, s, below(f)), &drawing.Text{
		Tag:    drawing.Tag{Meaning: drawing.CoverBand, Of: s},
		At:     plane.Point{X: f.Face.Centre().X, Y: f.Drawer.Bottom.Max.Y},
		Anchor: drawing.Anchor{X: 0.5}, Size: smallLetters,
		Say: message.New("cover %v", c), Short: message.New("%v", c), Within: f.Face,
	}}
}

// addHole draws a hole: its true circle and a cross that reaches past it.
func addHole(d *drawing.Drawing, s drawing.Subject, at plane.Point, diameter length.Length) {
	d.Add(&drawing.Circle{Tag: drawing.Tag{Meaning: drawing.HoleEdge, Of: s}, Centre: at, Radius: diameter / 2})
	arm := diameter/2 + diameter/4
	cross := drawing.Tag{Meaning: drawing.HoleCross, Of: s}
	d.Add(&drawing.Line{Tag: cross, From: plane.Point{X: at.X - arm, Y: at.Y}, To: plane.Point{X: at.X + arm, Y: at.Y}})
	d.Add(&drawing.Line{Tag: cross, From: plane.Point{X: at.X, Y: at.Y - arm}, To: plane.Point{X: at.X, Y: at.Y + arm}})
}
