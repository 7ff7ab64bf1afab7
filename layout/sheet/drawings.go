package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// sectionPages draws a section through each bay that holds fronts.
func sectionPages(p *plan.Plan, job message.Message, o Options) []Page {
	var pages []Page
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			if b := &p.Cabinets[i].Bays[j]; b.Count > 0 {
				pages = append(pages, drawingPage(Sections, view.Section(p, b.Place), job, o, sectionNote()))
			}
		}
	}
	return pages
}

func sectionNote() message.Message {
	return message.New("At the left, from the carcass outwards: drop (the front’s bottom edge below the runner’s lower edge; none where it is 0), cover (below the drawer bottom’s underside), height of the front. In the carcass: room above the drawer, clear height of a niche.")
}

const scheduleWidth = 58 * length.Millimetre

// schedule writes the holes as columns: from left and bottom as the front lies,
// diameter, depth. The figures of the drill are from a hardware sheet.
func (d *draft) schedule(holes []list.DrilledHole, of *model.HardwareSheet, r plane.Rect) {
	columns := []length.Length{mm(14), mm(32), mm(44), scheduleWidth} // right ends
	row := func(y length.Length, bold bool, cells ...string) {
		for i, c := range cells {
			size := lettering.Tiny
			c = lettering.Shorten(c, size, bold, mm(16))
			d.text(plane.Point{X: r.Min.X + columns[i], Y: y}, drawing.TopRight, size, bold, c)
		}
	}
	y := r.Max.Y
	row(y, true, d.say.Say(message.New("from left")), d.say.Say(message.New("from bottom")), "Ø", d.say.Say(message.New("depth")))
	y -= lettering.Pitch(lettering.Tiny)
	d.line(drawing.Frame, r.Min.X, y+mm(1)/2, r.Max.X, y+mm(1)/2)
	y -= mm(1)
	for i, h := range holes {
		// Drills are named as they are sold; the tables have both units.
		diameter, depth := list.MakersLength{Length: h.Diameter, Sheet: of}.Own(d.say), list.MakersLength{Length: h.Depth, Sheet: of}.Own(d.say)
		if y-3*lettering.Pitch(lettering.Tiny) < r.Min.Y && i+1 < len(holes) {
			d.text(plane.Point{X: r.Max.X, Y: y}, drawing.TopRight, lettering.Tiny, false,
				d.say.Say(message.New("%v more: see the drill list", len(holes)-i)))
			return
		}
		if h.Kind == plan.HandleHole && (i == 0 || holes[i-1].Kind != plan.HandleHole) {
			d.text(plane.Point{X: r.Max.X, Y: y}, drawing.TopRight, lettering.Tiny, true, d.say.Say(list.HoleName(h.Kind)))
			y -= lettering.Pitch(lettering.Tiny)
		}
		if h.Kind == plan.HandleHole {
			diameter, depth = d.say.Figure(h.Diameter), d.say.Say(message.New("through"))
		}
		left := h.FromLeft
		if h.Kind == plan.HandleHole {
			left = h.FromRight // measured on the rear face here, like all others
		}
		row(y, false, d.say.Figure(left), d.say.Figure(h.FromBottom), diameter, depth)
		y -= lettering.Pitch(lettering.Tiny)
	}
}
