package sheet

import (
	"slices"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// fieldsHeight is how high the two rows of a title block are, lowerFields how high the
// lower one is: for one line.
const (
	fieldsHeight = lowerFields + 14*length.Millimetre
	lowerFields  = 9 * length.Millimetre
)

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

// blockField is one field of a title block: its head and what it says.
type blockField struct {
	head   message.Message
	text   message.Message
	weight int64 // of its width among those of its row
}

// titleBlock draws the title block along the lower edge, with the fields of ISO 7200
// that a workshop drawing needs (from memory): what it is of, title, scale and sheet;
// below them for whom and from whom, number, revision, date, and the stamp of the plan.
// What the project does not say stays empty, for a pen. The sheet's number is written
// when all pages are known. A correction has a line of its own below. It gives the area
// above the block.
func (d *draft) titleBlock(title, scale message.Message, o Options) plane.Rect {
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
	s, low := o.stamp, r
	low.Max.Y = r.Min.Y + lowerFields
	sizes := message.New("%v, all sizes in %v", scale, list.UnitWord(d.say.Unit))
	d.page.number = d.blockRow(plane.R(r.Min.X, low.Max.Y, r.Max.X, r.Max.Y), []blockField{
		{message.New("Project"), said(s.project), 32},
		{message.New("Title"), title, 38},
		{message.New("Scale"), sizes, 30},
		{message.New("Sheet"), message.Message{}, 14},
	})
	d.blockRow(low, []blockField{
		{message.New("Client"), said(s.client), 26},
		{message.New("Drawn by"), said(s.author), 22},
		{message.New("Number"), said(s.number), 16},
		{message.New("Revision"), said(s.change), 12},
		{message.New("Date"), said(o.Date), 24},
		{message.New("Stamp"), said(s.print), 14},
	})
	d.line(drawing.Frame, low.Min.X, low.Max.Y, low.Max.X, low.Max.Y)
	above.Min.Y = r.Max.Y + mm(2)
	return above
}

// blockRow writes a row of fields, and gives the room of the last one's text.
func (d *draft) blockRow(r plane.Rect, fields []blockField) (room plane.Rect) {
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
		head := lettering.Shorten(d.say.Say(f.head), lettering.Tiny, false, end-x-mm(2))
		d.text(plane.Point{X: x + mm(1), Y: r.Max.Y - mm(1)}, drawing.Anchor{Y: 1}, lettering.Tiny, false, head)
		room = plane.R(x+mm(1), r.Min.Y, end-mm(1), r.Max.Y-mm(4))
		if text := d.say.Say(f.text); text != "" {
			d.field(room, text)
		}
		x = end
	}
	return room
}

// field writes a text into a box: in as many lines as there is room for, smaller where
// that is not enough, and shortened where even then it is not.
func (d *draft) field(box plane.Rect, s string) {
	most := func(size length.Length) int { return max(int((box.Height()+mm(1)/2)/lettering.Pitch(size)), 1) }
	size := lettering.Small
	lines := lettering.Wrap(s, size, true, box.Width())
	if len(lines) > most(size) {
		size = lettering.Tiny
		lines = lettering.Wrap(s, size, true, box.Width())
	}
	if n := most(size); len(lines) > n {
		last := lettering.Shorten(strings.Join(lines[n-1:], " "), size, true, box.Width())
		lines = append(lines[:n-1], last)
	}
	d.lines(box.Min.X, box.Max.Y, size, true, lines)
}

// number writes on every page which of how many it is, and what tells it from the
// pages of another job, or of this one as it was: in its title block, or where it
// has none at the lower right corner inside its margins, in two lines where one has
// no room, and with them the correction that it is printed with, which title blocks
// have already.
func number(pages []Page, o Options) {
	s := o.stamp
	printed := joined(o.Date, s.plan)
	for i := range pages {
		if pages[i].Kind == string(Labels) {
			continue // a sticker has it, on as many as there are
		}
		own := pages[i].Placed[len(pages[i].Placed)-1].Drawing
		d := &draft{own: own, say: o.Say, area: pages[i].Inside}
		if room := pages[i].number; !room.Empty() {
			d.field(room, o.Say.Say(message.New("%v of %v", i+1, len(pages))))
			continue
		}
		size := lettering.Tiny
		if Part(pages[i].Kind).Template() {
			size = lettering.Small // read at the bench
		}
		room := d.area.Max.X - max(d.area.Min.X, pages[i].footFrom) - mm(3)
		page := o.Say.Say(message.New("page %v of %v", i+1, len(pages)))
		foot := []string{joined(s.job, s.revision, printed, page)}
		if lettering.Width(foot[0], size, false) > room {
			least := joined(s.revision, page)
			job := lettering.Shorten(s.job, size, false, room-lettering.Width(between+least, size, false))
			foot = []string{joined(job, least), printed}
		}
		if c := pages[i].Correction; !c.None() {
			last := &foot[len(foot)-1]
			*last = joined(c.shortened(o.Say, (room-lettering.Width(*last+between, size, false))*lettering.Tiny/size), *last)
		}
		for k, line := range foot {
			at := plane.Point{X: d.area.Max.X - mm(1), Y: d.area.Min.Y + mm(1) + length.Length(k)*lettering.Pitch(size)}
			d.text(at, drawing.Anchor{X: 1}, size, false, line)
		}
	}
}

// stamp is what tells papers apart: the job with its number, its revision, who it is
// for and from, and the plan they were printed from; as it is written.
// For title blocks, which head them, project, number, change (of the revision) and print
// (of the plan) are without words.
type stamp struct {
	job, revision, client, author, plan string
	project, number, change, print      string
}

func stampOf(p *plan.Plan, paper plan.Paper, say message.Language) stamp {
	s := stamp{job: title(p), project: title(p), print: paper.Plan.String(), plan: say.Say(message.New("stamp %v", paper.Plan))}
	if p.Project == nil {
		return s
	}
	s.number, s.client, s.author = clipped(p.Project.Number, 40), clipped(p.Project.Client, 60), clipped(p.Project.DrawnBy, 60)
	s.job = joined(s.job, s.number)
	if s.change = clipped(p.Project.Revision, 20); s.change != "" {
		s.revision = say.Say(message.New("revision %v", s.change))
	}
	return s
}

const between = "  ·  "

// joined puts what is said of a page beside each other.
func joined(all ...string) string {
	return strings.Join(slices.DeleteFunc(all, func(s string) bool { return s == "" }), between)
}
