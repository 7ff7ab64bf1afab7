package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/view"
	"frontlay/model/length"
	"frontlay/model/message"
)

// elevationPages draws the run with its chains of heights and widths. One that would be
// too small for them is drawn whole without, and then in as many parts as it takes.
func elevationPages(p *plan.Plan, o Options) []Page {
	detail := func(from, to int) (Page, int64) {
		return drawingPage(Elevation, view.Elevation(p, view.ElevationOptions{Chains: true, From: from, To: to}), o)
	}
	n, least := len(p.Cabinets), leastDetailed(o.Say.Unit)
	whole, den := detail(0, n)
	if den <= least || n < 2 {
		return []Page{whole}
	}
	all := view.Elevation(p, view.ElevationOptions{})
	for _, m := range all.Marks {
		if c, ok := m.(*drawing.Caption); ok {
			c.Height, c.Name = 0, message.Message{}
		}
	}
	whole, _ = drawingPage(Elevation, all, o)
	pages := []Page{whole}
	for from := 0; from < n; {
		to := from + 1
		page, _ := detail(from, to)
		for ; to < n; to++ {
			more, den := detail(from, to+1)
			if den > least {
				break
			}
			page = more
		}
		pages, from = append(pages, page), to
	}
	return pages
}

// sectionPages draws a section through each bay that holds fronts.
func sectionPages(p *plan.Plan, o Options) []Page {
	var pages []Page
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			if b := &p.Cabinets[i].Bays[j]; b.Count > 0 {
				page, _ := drawingPage(Sections, view.Section(p, b.Place), o, sectionNote())
				pages = append(pages, page)
			}
		}
	}
	return pages
}

func sectionNote() message.Message {
	return message.New("Drop: how far the front’s bottom edge lies below the runner’s lower edge; none where it is 0. Cover: how far it lies below the drawer bottom’s underside. Both are told where they differ from those of the front below. In the carcass: clear height above a drawer and of a niche.")
}

// drawingPage puts a drawing on a page of its own, upright or lengthwise by the
// larger scale, as the drawing lies where both are equal, with notes under it.
// The scale's denominator comes with it.
func drawingPage(kind Part, v *drawing.Drawing, o Options, notes ...message.Message) (Page, int64) {
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	page, den := layDrawing(kind, v, w, h, o, notes)
	turned, d := layDrawing(kind, v, h, w, o, notes)
	if wide := v.Bounds().Width() > v.Bounds().Height(); d < den || d == den && wide {
		return turned, d
	}
	return page, den
}

func layDrawing(kind Part, v *drawing.Drawing, w, h length.Length, o Options, notes []message.Message) (Page, int64) {
	d := newDraft(kind, v.Title, w, h, o)
	above := d.area
	above.Min.Y += blockHeight(o) + mm(2)
	for i := len(notes) - 1; i >= 0; i-- {
		width := above.Width() - mm(4)
		above.Min.Y += d.heightOf(width, lettering.Tiny, false, notes[i])
		d.paragraph(above.Min.X+mm(2), above.Min.Y, width, lettering.Tiny, false, notes[i])
	}
	placed, den := fit(v, above.Grow(-mm(2)), o.Say)
	d.place(placed)
	d.titleBlock(v.Title, scaleText(den, o.Say.Unit), o)
	d.box(drawing.Frame, d.area)
	return d.finish(), den
}
