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
		d.text(at, drawing.Anchor{}, lettering.Tiny, false, c.shortened(d.say, r.Width()-mm(2)))
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
		d.text(plane.Point{X: x + mm(1), Y: r.Max.Y - mm(1)}, drawing.Anchor{Y: 1}, lettering.Tiny, false, d.say.Say(f.head))
		room := plane.R(x+mm(1), r.Min.Y, end-mm(1), r.Max.Y-mm(4))
		if i+1 == len(fields) {
			d.page.number = room
			break
		}
		d.field(room, d.say.Say(f.text))
		if i == 2 {
			d.text(plane.Point{X: x + mm(1), Y: r.Min.Y + mm(1)}, drawing.Anchor{}, lettering.Tiny, false, d.say.Say(unit))
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

// number writes on every page which of how many it is: in its title block, or
// where it has none at the lower right corner inside its margins, and before that
// the correction that it is printed with, which title blocks have already.
func number(pages []Page, o Options) {
	for i := range pages {
		own := pages[i].Placed[len(pages[i].Placed)-1].Drawing
		d := &draft{own: own, say: o.Say, area: pages[i].Inside}
		if room := pages[i].number; !room.Empty() {
			d.field(room, o.Say.Say(message.New("%v of %v", i+1, len(pages))))
			continue
		}
		at := plane.Point{X: d.area.Max.X - mm(1), Y: d.area.Min.Y + mm(1)}
		foot := o.Say.Say(message.New("page %v of %v", i+1, len(pages)))
		if c := pages[i].Correction; !c.None() {
			room := d.area.Max.X - max(d.area.Min.X, pages[i].footFrom) - mm(3) - lettering.Width(foot, lettering.Tiny, false)
			foot = c.shortened(o.Say, room) + "  " + foot
		}
		d.text(at, drawing.Anchor{X: 1}, lettering.Tiny, false, foot)
	}
}
