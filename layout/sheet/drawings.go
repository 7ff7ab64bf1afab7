package sheet

import (
	"fmt"

	"frontlay/layout/drawing"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet/lettering"
	"frontlay/layout/view"
	"frontlay/model/length"
	"frontlay/model/message"
)

// sectionPages draws a section through each bay that holds fronts.
func sectionPages(p *plan.Plan, job message.Message, o Options) []Page {
	var pages []Page
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			if b := &p.Cabinets[i].Bays[j]; b.Count > 0 {
				pages = append(pages, drawingPage(Sections, view.Section(p, b.Place), job, o))
			}
		}
	}
	return pages
}

// drawerPages draws each kind of drawer from above once.
func drawerPages(p *plan.Plan, job message.Message, o Options) []Page {
	var pages []Page
	for _, g := range groups(p, o, drawerKey) {
		d := view.DrawerPlan(p, g.first())
		d.Title = message.New("Plan of drawer. %v", g.names())
		pages = append(pages, drawingPage(DrawerPlans, d, job, o))
	}
	return pages
}

// drawerKey tells drawers apart by what their plan shows.
func drawerKey(f *plan.Front) string {
	if !f.Fitted || f.Runner.Length <= 0 {
		return ""
	}
	return fmt.Sprintln(f.Sheet.Name, int64(f.Opening.Width()), int64(f.Runner.Length), int64(f.Face.Width()), int64(f.Overlay.Left), f.Inset,
		int64(f.Drawer.BackCut.Length), f.Place.Cabinet)
}

// rearPages draws the rear faces with their holes, three to an upright sheet;
// fronts with equal faces share one drawing.
func rearPages(p *plan.Plan, job message.Message, o Options) []Page {
	const each = 3
	all := groups(p, o, sameWhole)
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	var pages []Page
	for len(all) > 0 {
		n := min(each, len(all))
		title := message.New("Rear faces, drilled")
		d := newDraft(RearFaces, title, w, h, o)
		above := d.titleBlock(job, title, message.New("as noted"), o.Date)
		d.box(drawing.Frame, d.area)
		high := above.Height() / each
		for i, g := range all[:n] {
			top := above.Max.Y - length.Length(i)*high
			d.rearBlock(g, plane.R(above.Min.X, top-high, above.Max.X, top))
		}
		pages = append(pages, d.finish())
		all = all[n:]
	}
	return pages
}

// rearBlock draws one rear face and writes its holes beside it.
func (d *draft) rearBlock(g group, r plane.Rect) {
	f := g.first()
	r = r.Grow(-mm(2))
	wide := r.Width()
	top := d.paragraph(r.Min.X, r.Max.Y, wide, lettering.Small, true, message.New("%v, %v × %v", g.names(), f.Face.Width(), f.Face.Height()))
	schedule := plane.R(r.Max.X-mm(52), r.Min.Y, r.Max.X, top-mm(1))
	picture := plane.R(r.Min.X, r.Min.Y, schedule.Min.X-mm(3), top-mm(1))
	placed, den := fit(view.Rear(f), picture, d.say)
	d.place(placed)
	d.text(plane.Point{X: picture.Min.X, Y: picture.Min.Y}, drawing.BottomLeft, lettering.Tiny, false, d.say.Say(scaleText(den)))
	d.schedule(list.Drilling(f), schedule)
	d.line(drawing.Frame, r.Min.X-mm(2), r.Min.Y-mm(2), r.Max.X+mm(2), r.Min.Y-mm(2))
}

// schedule writes the holes as columns: from left and bottom as the front lies,
// diameter, depth.
func (d *draft) schedule(holes []list.DrilledHole, r plane.Rect) {
	columns := []length.Length{mm(12), mm(25), mm(38), mm(52)} // right ends
	row := func(y length.Length, bold bool, cells ...string) {
		for i, c := range cells {
			size := lettering.Tiny
			c = lettering.Shorten(c, size, bold, mm(13))
			d.text(plane.Point{X: r.Min.X + columns[i], Y: y}, drawing.TopRight, size, bold, c)
		}
	}
	y := r.Max.Y
	row(y, true, d.say.Say(message.New("left")), d.say.Say(message.New("bottom")), "Ø", d.say.Say(message.New("depth")))
	y -= lettering.Pitch(lettering.Tiny)
	d.line(drawing.Frame, r.Min.X, y+mm(1)/2, r.Max.X, y+mm(1)/2)
	for i, h := range holes {
		if y-2*lettering.Pitch(lettering.Tiny) < r.Min.Y && i+1 < len(holes) {
			d.text(plane.Point{X: r.Max.X, Y: y}, drawing.TopRight, lettering.Tiny, false,
				d.say.Say(message.New("%v more: see the drill list", len(holes)-i)))
			return
		}
		depth := d.say.Figure(h.Depth)
		if h.Kind == plan.HandleHole {
			depth = d.say.Say(message.New("through"))
		}
		left := h.FromLeft
		if h.Kind == plan.HandleHole {
			left = h.FromRight // measured on the rear face here, like all others
		}
		row(y, false, d.say.Figure(left), d.say.Figure(h.FromBottom), d.say.Figure(h.Diameter), depth)
		y -= lettering.Pitch(lettering.Tiny)
	}
}
