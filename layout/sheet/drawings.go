package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model/length"
	"frontlay/model/message"
)

// sectionPages draws a section through each bay that holds fronts.
func sectionPages(p *plan.Plan, o Options) []Page {
	var pages []Page
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			if b := &p.Cabinets[i].Bays[j]; b.Count > 0 {
				pages = append(pages, drawingPage(Sections, view.Section(p, b.Place), o, sectionNote()))
			}
		}
	}
	return pages
}

func sectionNote() message.Message {
	return message.New("At the left, from the carcass outwards: drop (the front’s bottom edge below the runner’s lower edge; none where it is 0), cover (below the drawer bottom’s underside), the cover asked for where one is, height of the front. In the carcass: room above the drawer, clear height of a niche.")
}

// drawingPage puts a drawing on a page of its own, upright or lengthwise by the
// larger scale, as the drawing lies where both are equal, with notes under it.
func drawingPage(kind Part, v *drawing.Drawing, o Options, notes ...message.Message) Page {
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	page, den := layDrawing(kind, v, w, h, o, notes)
	turned, d := layDrawing(kind, v, h, w, o, notes)
	if wide := v.Bounds().Width() > v.Bounds().Height(); d < den || d == den && wide {
		return turned
	}
	return page
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
	d.titleBlock(v.Title, scaleText(den), o)
	d.box(drawing.Frame, d.area)
	return d.finish(), den
}

// scales are the full size and the reductions of ISO 5455 (series from memory),
// the largest first.
var scales = [...]int64{1, 2, 5, 10, 20, 50, 100, 200}

// fit places a drawing in the middle of an area at the largest scale at which
// it fits, and gives the scale's denominator.
func fit(d *drawing.Drawing, area plane.Rect, say message.Language) (drawing.Placed, int64) {
	den := scales[len(scales)-1]
	var r plane.Rect
	for _, s := range scales {
		r = d.OnPaper(s, say)
		if r.Width() <= area.Width() && r.Height() <= area.Height() {
			den = s
			break
		}
	}
	at := area.Centre().Sub(r.Centre())
	return drawing.Placed{Drawing: d, At: at, ScaleNum: 1, ScaleDen: den}, den
}

func scaleText(den int64) message.Message { return message.New("SCALE 1:%v", den) }
