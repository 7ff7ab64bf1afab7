package sheet

import (
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// coverPage shows what the job is: its title, a picture of the elevation, what
// it consists of, and room for the contents, which fillContents writes.
func coverPage(p *plan.Plan, findings []check.Finding, o Options) Page {
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	d := newDraft(Cover, Cover.Title(), w, h, o)
	width := d.area.Width()
	size := lettering.Huge
	if d.heightOf(width, size, true, said(title(p))) > 2*lettering.Pitch(size) {
		size = lettering.Large
	}
	y := d.paragraph(d.area.Min.X, d.area.Max.Y, width, size, true, said(title(p))) - mm(2)
	for _, m := range facts(p) {
		y = d.paragraph(d.area.Min.X, y, width, lettering.Small, false, m)
	}
	for _, l := range openFindings(findings) {
		if l.bold {
			y -= mm(2)
		}
		y = d.paragraph(d.area.Min.X, y, width, l.size, l.bold, l.say)
	}
	if o.Date != "" {
		y = d.paragraph(d.area.Min.X, y, width, lettering.Small, false, said(o.Date))
	}
	_, lines := contentsLines(d.area, len(o.Parts))
	if one := int(d.area.Height() / 2 / contentsLine); one < len(o.Parts) {
		lines = max(lines, one) // parts without pages are not listed, and what is left may stand in one column
	}
	contents := contentsFoot + contentsHead + length.Length(lines)*contentsLine
	y = d.coverNotes(p, y-mm(2), contents)
	picture := plane.R(d.area.Min.X, d.area.Min.Y+contents, d.area.Max.X, y-mm(4))
	if picture.Height() >= leastPicture {
		d.place(asLarge(facesOnly(p), picture))
	}
	return d.finish()
}

// leastPicture is the height below which the cover has no picture.
const leastPicture = 20 * length.Millimetre

// contentsLines tells in how many columns and lines so many entries stand at the foot
// of the cover: in two columns where one would take more than half of the page.
func contentsLines(area plane.Rect, entries int) (columns, lines int) {
	if length.Length(entries)*contentsLine <= area.Height()/2 {
		return 1, entries
	}
	return 2, (entries + 1) / 2
}

// What stands below the lines of the contents, above them, and between two columns.
const (
	contentsFoot    = 8 * length.Millimetre
	contentsHead    = 14 * length.Millimetre
	contentsBetween = 10 * length.Millimetre
)

// coverNotes writes the hardware sheets with their notes, which tell where
// figures are invented, and the user's notes, as far as there is room; it gives
// the y below them.
func (d *draft) coverNotes(p *plan.Plan, y, contents length.Length) length.Length {
	low := d.area.Min.Y + contents + mm(50) // room for the picture
	write := func(m message.Message) {
		for _, s := range lettering.Wrap(d.say.Say(m), lettering.Small, false, d.area.Width()) {
			if y-lettering.Pitch(lettering.Small) > low {
				y = d.lines(d.area.Min.X, y, lettering.Small, false, []string{s})
			}
		}
	}
	if p.Project == nil {
		return y
	}
	for _, u := range p.Project.Hardware {
		if used(p, u.Sheet) {
			write(message.New("Hardware: %v. %v", u.Sheet.Name, u.Sheet.Note))
		}
	}
	y -= mm(2)
	if p.Project.Notes != "" {
		write(said(p.Project.Notes))
	}
	return y
}

// facesOnly is the elevation without figures: a picture, not to scale.
func facesOnly(p *plan.Plan) *drawing.Drawing {
	v := &drawing.Drawing{Title: message.New("Front elevation")}
	for _, m := range view.Elevation(p, view.ElevationOptions{Handles: true}).Marks {
		switch m := m.(type) {
		case *drawing.Dimension:
			continue
		case *drawing.Text:
			if m.Of.Kind == drawing.FrontThing { // the clear height of a niche
				continue
			}
		case *drawing.Caption:
			m.Height = 0
		}
		v.Add(m)
	}
	return v
}

// asLarge places a picture in an area as large as it fits, at any scale.
func asLarge(v *drawing.Drawing, area plane.Rect) drawing.Placed {
	r := v.Bounds()
	if r.Empty() {
		return drawing.Placed{Drawing: v, ScaleNum: 1, ScaleDen: 1}
	}
	// In thousandths of full size, rounded down.
	num := min(int64(area.Width())*1000/int64(r.Width()), int64(area.Height())*1000/int64(r.Height()))
	num = max(min(num, 1000), 1)
	c := r.Centre()
	at := area.Centre().Sub(plane.Point{X: c.X / 1000 * length.Length(num), Y: c.Y / 1000 * length.Length(num)})
	return drawing.Placed{Drawing: v, At: at, ScaleNum: num, ScaleDen: 1000}
}

// facts are sentences that tell the size of the job.
func facts(p *plan.Plan) []message.Message {
	drawers, drilled := 0, 0
	for i := range p.Fronts {
		if p.Fronts[i].Kind == model.DrawerFront {
			drawers++
		}
		if len(p.Fronts[i].Holes) > 0 {
			drilled++
		}
	}
	return []message.Message{
		message.New("Cabinets: %v. Fronts and niches: %v, with a drawer: %v. Fronts to drill: %v.", len(p.Cabinets), len(p.Fronts), drawers, drilled),
		message.New("The run is %v wide and %v high.", p.Extent.Width(), p.Extent.Height()),
	}
}

// openFindings counts what the check found, what the user accepts apart. Open
// errors stand out, so that nobody cuts from pages that are wrong.
func openFindings(findings []check.Finding) []headLine {
	var open [3]int
	accepted := 0
	for _, f := range findings {
		if f.Accepted != "" {
			accepted++
			continue
		}
		open[min(int(f.Severity), 2)]++
	}
	small := func(m message.Message) headLine { return headLine{m, lettering.Small, false} }
	switch {
	case len(findings) == 0:
		return []headLine{small(message.New("The check found nothing to mend."))}
	case open == [3]int{}:
		return []headLine{small(message.New("Open findings: none; accepted: %v", accepted))}
	case open[0] == 0:
		return []headLine{small(message.New("Open findings: warnings %v, advice %v; accepted: %v", open[1], open[2], accepted))}
	}
	return []headLine{
		{message.New("Open findings: errors %v", open[0]), lettering.Large, true},
		small(message.New("Other findings: warnings %v, advice %v; accepted: %v", open[1], open[2], accepted)),
	}
}

// used tells that a front's drawer is of a hardware sheet.
func used(p *plan.Plan, s *model.HardwareSheet) bool {
	for f := range p.Drawers() {
		if f.Sheet == s {
			return true
		}
	}
	return false
}

// contentsLine is the pitch of the lines of the contents.
const contentsLine = 5 * length.Millimetre

// fillContents writes the contents at the foot of the cover: each part and the
// page it begins on.
func (m *maker) fillContents() {
	cover := &m.d.Pages[0]
	own := cover.Placed[len(cover.Placed)-1].Drawing
	d := &draft{own: own, say: m.o.Say, area: cover.Inside}
	var entries []Bookmark
	for _, b := range m.d.Bookmarks {
		if b.Level == 0 && b.Page > 0 {
			entries = append(entries, b)
		}
	}
	if len(entries) == 0 {
		return
	}
	columns, lines := contentsLines(d.area, len(entries))
	wide := (d.area.Width() - length.Length(columns-1)*contentsBetween) / length.Length(columns)
	y := d.area.Min.Y + contentsFoot + length.Length(lines)*contentsLine
	d.text(plane.Point{X: d.area.Min.X, Y: y + mm(3)}, drawing.Anchor{}, lettering.Medium, true, m.o.Say.Say(message.New("Contents")))
	for i, b := range entries {
		top, left := y-length.Length(i%lines)*contentsLine, d.area.Min.X+length.Length(i/lines)*(wide+contentsBetween)
		line := plane.R(left, top-contentsLine, left+wide, top)
		d.contentsEntry(line, m.o.Say.Say(b.Title), m.o.Say.Say(message.New("%v", b.Page+1)))
		cover.Links = append(cover.Links, Link{Area: line, Page: b.Page})
	}
}

func (d *draft) contentsEntry(r plane.Rect, name, page string) {
	const size = lettering.Small
	base := r.Max.Y - mm(4)
	name = lettering.Shorten(name, size, false, r.Width()-mm(10))
	d.text(plane.Point{X: r.Min.X, Y: base}, drawing.Anchor{}, size, false, name)
	d.text(plane.Point{X: r.Max.X - mm(1), Y: base}, drawing.Anchor{X: 1}, size, false, page)
	from := r.Min.X + lettering.Width(name, size, false) + mm(2)
	to := r.Max.X - mm(3) - lettering.Width(page, size, false)
	if from < to {
		d.dashed(drawing.Grid, from, base, to, base)
	}
}
