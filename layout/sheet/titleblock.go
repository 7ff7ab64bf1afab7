package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// fieldsHeight is how high the fields of a title block are.
const fieldsHeight = 16 * length.Millimetre

// correctionHeight is how high the line below them is, on which a correction
// stands.
const correctionHeight = 5 * length.Millimetre

// blockHeight is how high a title block is.
func blockHeight(o Options) length.Length {
	if o.Correction.None() {
		return fieldsHeight
	}
	return fieldsHeight + correctionHeight
}

// titleBlock draws the title block along the lower edge, with the fields of
// ISO 7200 that a workshop drawing needs (from memory): project, title, scale,
// unit, date, sheet. The sheet's number is written when all pages are known. A
// correction has a line of its own below. It gives the area above the block.
func (d *draft) titleBlock(job, title, scale message.Message, date string) plane.Rect {
	r := d.area
	above := d.area
	if c := d.page.Correction; !c.None() {
		r.Min.Y += correctionHeight
		d.box(drawing.Frame, plane.R(r.Min.X, d.area.Min.Y, r.Max.X, r.Min.Y))
		at := plane.Point{X: r.Min.X + mm(1), Y: d.area.Min.Y + (correctionHeight-lettering.Tiny)/2}
		d.text(at, drawing.BottomLeft, lettering.Tiny, false, c.within(d.say, r.Width()-mm(2)))
	}
	r.Max.Y = r.Min.Y + fieldsHeight
	d.box(drawing.Frame, r)
	unit := message.New("all sizes in %v", list.UnitWord(d.say.Unit))
	fields := []struct {
		head   message.Message
		text   message.Message
		weight int64
	}{
		{message.New("Project"), job, 32},
		{message.New("Title"), title, 32},
		{message.New("Scale"), scale, 20},
		{message.New("Date"), said(date), 16},
		{message.New("Sheet"), message.Message{}, 14},
	}
	total := int64(0)
	for _, f := range fields {
		total += f.weight
	}
	x, sum := r.Min.X, int64(0)
	for i, f := range fields {
		sum += f.weight
		end := r.Min.X + r.Width()*length.Length(sum)/length.Length(total)
		if i > 0 {
			d.line(drawing.Frame, x, r.Min.Y, x, r.Max.Y)
		}
		d.text(plane.Point{X: x + mm(1), Y: r.Max.Y - mm(1)}, drawing.TopLeft, lettering.Tiny, false, d.say.Say(f.head))
		room := plane.R(x+mm(1), r.Min.Y, end-mm(1), r.Max.Y-mm(4))
		if i+1 == len(fields) {
			d.page.number = room
			break
		}
		d.field(room, d.say.Say(f.text))
		if i == 2 {
			d.text(plane.Point{X: x + mm(1), Y: r.Min.Y + mm(1)}, drawing.BottomLeft, lettering.Tiny, false, d.say.Say(unit))
		}
		x = end
	}
	above.Min.Y = r.Max.Y + mm(2)
	return above
}

// field writes a text into a box: in two lines, or smaller in three, shortened
// where even that is not enough.
func (d *draft) field(box plane.Rect, s string) {
	size, most := lettering.Small, 2
	lines := lettering.Wrap(s, size, true, box.Width())
	if len(lines) > most {
		size, most = lettering.Tiny, 3
		lines = lettering.Wrap(s, size, true, box.Width())
	}
	if len(lines) > most {
		last := lettering.Shorten(lines[most-1]+" "+lines[most], size, true, box.Width())
		lines = append(lines[:most-1], last)
	}
	d.lines(box.Min.X, box.Max.Y, size, true, lines)
}

// drawingPage puts a drawing on a page of its own, upright or lengthwise by the
// larger scale, as the drawing lies where both are equal, with notes under it.
func drawingPage(kind Part, v *drawing.Drawing, job message.Message, o Options, notes ...message.Message) Page {
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	page, den := layDrawing(kind, v, job, w, h, o, notes)
	turned, d := layDrawing(kind, v, job, h, w, o, notes)
	if wide := v.Bounds().Width() > v.Bounds().Height(); d < den || d == den && wide {
		return turned
	}
	return page
}

func layDrawing(kind Part, v *drawing.Drawing, job message.Message, w, h length.Length, o Options, notes []message.Message) (Page, int64) {
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
	d.titleBlock(job, v.Title, scaleText(den), o.Date)
	d.box(drawing.Frame, d.area)
	return d.finish(), den
}
