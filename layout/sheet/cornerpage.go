package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet/lettering"
	"frontlay/model/length"
	"frontlay/model/message"
)

// cornerPages puts the corner templates on as few sheets as it can: side by
// side and in rows, the two of one front together, upright or lengthwise. Those
// too large for the paper are tiled.
func cornerPages(p *plan.Plan, o Options, first int) []Page {
	all := corners(p, o)
	if len(all) == 0 {
		return nil
	}
	upright := func(cells []corner, first int) []Page {
		return packCorners(p, cells, o.Paper.Width, o.Paper.Height, o, first)
	}
	if o.Paper.Roll() {
		return upright(all, first)
	}
	lengthwise := func(cells []corner, first int) []Page {
		return packCorners(p, cells, o.Paper.Height, o.Paper.Width, o, first)
	}
	best := upright(all, first)
	if pages := lengthwise(all, first); len(pages) < len(best) {
		best = pages
	}
	// Each front's pair on the kind of page that suits it alone.
	var tall, wide []corner
	for _, pair := range pairs(all) {
		if len(upright(pair, 1)) <= len(lengthwise(pair, 1)) {
			tall = append(tall, pair...)
		} else {
			wide = append(wide, pair...)
		}
	}
	mixed := upright(tall, first)
	mixed = append(mixed, lengthwise(wide, first+len(mixed))...)
	if len(mixed) <= len(best) { // as few sheets, and each front's two together
		best = mixed
	}
	return best
}

// pairs gives the templates of each front together.
func pairs(all []corner) [][]corner {
	var of [][]corner
	for i, c := range all {
		if i > 0 && all[i-1].of.first() == c.of.first() {
			of[len(of)-1] = append(of[len(of)-1], c)
		} else {
			of = append(of, []corner{c})
		}
	}
	return of
}

// fewest lays pages out on the paper upright and lengthwise and takes what
// needs fewer, upright where both are equal.
func fewest(paper Paper, lay func(width, height length.Length) []Page) []Page {
	upright := lay(paper.Width, paper.Height)
	if paper.Width == paper.Height {
		return upright
	}
	if lengthwise := lay(paper.Height, paper.Width); len(lengthwise) < len(upright) {
		return lengthwise
	}
	return upright
}

// packer fills pages with rows of templates.
type packer struct {
	p     *plan.Plan
	o     Options
	w, h  length.Length // h is 0 on a roll
	pages []*filling
}

func packCorners(p *plan.Plan, all []corner, w, h length.Length, o Options, first int) []Page {
	k := &packer{p: p, o: o, w: w, h: h}
	var tiled []corner
	for len(all) > 0 {
		n := k.across(all)
		row := k.row(all[:n])
		for row == nil && n > 1 {
			n--
			row = k.row(all[:n])
		}
		if row == nil {
			tiled = append(tiled, all[:n]...)
		} else {
			k.put(row)
		}
		all = all[n:]
	}
	var pages []Page
	for _, f := range k.pages {
		pages = append(pages, f.d.finish())
	}
	for _, c := range tiled {
		pages = append(pages, tileCorner(c, o, first+len(pages))...)
	}
	return pages
}

// across tells how many of the next templates stand in one row; the two of one
// front are not parted where the paper is wide enough for both.
func (k *packer) across(all []corner) int {
	width := k.width()
	n, widest := 0, length.Length(0)
	for n < len(all) {
		widest = max(widest, all[n].leastWidth())
		if length.Length(n+1)*widest+length.Length(n)*cellGap > width {
			break
		}
		n++
	}
	if n > 1 && n < len(all) && all[n-1].of.first() == all[n].of.first() {
		n-- // the two templates of one front stay together
	}
	return max(n, 1)
}

// row measures templates that share the width of the page; nil where one of
// them doesn't fit on a page of its own.
func (k *packer) row(cells []corner) []measured {
	n := length.Length(len(cells))
	width := (k.width() - (n-1)*cellGap) / n
	most := mm(120) // wider than that, its two halves only drift apart
	for _, c := range cells {
		most = max(most, c.leastWidth())
	}
	width = min(width, most)
	blank := k.blank()
	body := blank.body(k.what())
	var row []measured
	for _, c := range cells {
		m := measure(c, width, k.o.Say, false)
		if m.height() > body.Height() && k.h > 0 {
			m = measure(c, width, k.o.Say, true)
		}
		if c.leastWidth() > width || m.height() > body.Height() && k.h > 0 {
			return nil
		}
		row = append(row, m)
	}
	return row
}

// width is what the page's margins leave.
func (k *packer) width() length.Length { return printable(k.w, mm(500), k.o).Width() }

func (k *packer) what() []headLine {
	return []headLine{
		{message.New("%v: drilling templates 1:1, REAR FACE", title(k.p)), lettering.Medium, true},
		{faceDown(), lettering.Tiny, false},
		{careful(), lettering.Tiny, false},
	}
}

func (k *packer) blank() *draft {
	return newDraft(CornerTemplates, message.New("Corner templates"), k.w, k.h, k.o)
}

// body is what head and foot leave of a 1:1 page.
func (d *draft) body(head []headLine) plane.Rect {
	r := d.area
	r.Max.Y -= d.headHeight(head, d.area.Width())
	r.Min.Y += footHeight
	return r
}

// put draws a row on the first page that has room for it, or on a new one.
func (k *packer) put(row []measured) {
	height := length.Length(0)
	for _, m := range row {
		height = max(height, m.height())
	}
	for _, f := range k.pages {
		if f.y-cellGap-height >= f.body.Min.Y {
			f.y -= cellGap
			f.d.dashed(drawing.Cut, f.body.Min.X, f.y+cellGap/2, f.body.Max.X, f.y+cellGap/2)
			f.row(row, height)
			return
		}
	}
	height = max(height, barLength+mm(4)) // the upright bar stands beside the first row
	d := k.blank()
	if k.h == 0 { // a roll is cut to what the row needs
		need := height + d.area.Height() - d.body(k.what()).Height()
		d = newDraft(CornerTemplates, d.page.Title, k.w, pageHeight(need, k.o), k.o)
	}
	f := &filling{d: d, body: d.body(k.what())}
	f.y = f.body.Max.Y
	d.head(k.what(), d.area.Width())
	d.foot()
	f.bar(row, height)
	f.row(row, height)
	k.pages = append(k.pages, f)
}

// filling is a page that still takes rows: below y, between head and foot.
type filling struct {
	d          *draft
	body       plane.Rect
	y          length.Length
	barX, barY length.Length // lower end of the upright check bar on the cut
}

func (f *filling) row(row []measured, height length.Length) {
	x := f.body.Min.X
	for i, m := range row {
		m.draw(f.d, x, f.y-m.height())
		x += m.width
		if i+1 < len(row) {
			f.cut(x+cellGap/2, f.y, f.y-height)
		}
		x += cellGap
	}
	f.y -= height
}

// cut draws where two templates are parted, but not over the check bar.
func (f *filling) cut(x, top, bottom length.Length) {
	if x != f.barX {
		f.d.dashed(drawing.Cut, x, top, x, bottom)
		return
	}
	if high := f.barY + barLength + mm(2); high < top {
		f.d.dashed(drawing.Cut, x, top, x, high)
	}
	if low := f.barY - mm(2); bottom < low {
		f.d.dashed(drawing.Cut, x, low, x, bottom)
	}
}

// bar draws the upright check bar on the cut between the first two templates,
// or at the right of a single one.
func (f *filling) bar(row []measured, height length.Length) {
	f.barX = f.body.Min.X + row[0].width + cellGap/2
	if len(row) == 1 {
		f.barX = min(f.barX, f.body.Max.X-mm(6))
	}
	f.barY = f.y - (height+barLength)/2
	f.d.uprightBar(f.barX, f.barY)
	if len(row) == 1 {
		f.barX = 0 // nothing is cut there
	}
}
