package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
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
	if o.Paper.Roll() {
		return packCorners(p, all, o.Paper.Width, 0, o, first)
	}
	return fewest(o.Paper, func(width, height length.Length) []Page {
		return packCorners(p, all, width, height, o, first)
	})
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
	p       *plan.Plan
	o       Options
	w, h    length.Length
	pages   []*draft
	body    plane.Rect    // between head and foot of the page being filled
	y       length.Length // where the next row's top is
	started bool
}

func packCorners(p *plan.Plan, all []corner, w, h length.Length, o Options, first int) []Page {
	k := &packer{p: p, o: o, w: w, h: h}
	var tiled []corner
	for len(all) > 0 {
		n := k.across(all)
		row := k.row(all[:n])
		if row == nil {
			tiled = append(tiled, all[:n]...)
		} else {
			k.put(row)
		}
		all = all[n:]
	}
	var pages []Page
	for _, d := range k.pages {
		pages = append(pages, d.finish())
	}
	for _, c := range tiled {
		pages = append(pages, tileCorner(c, w, h, o, first+len(pages))...)
	}
	return pages
}

// across tells how many of the next templates stand in one row; the two of one
// front are not parted where the paper is wide enough for both.
func (k *packer) across(all []corner) int {
	width := k.w - 2*k.o.Margins.Side
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
	width := (k.w - 2*k.o.Margins.Side - (n-1)*cellGap) / n
	width = min(width, mm(130))
	blank := k.blank()
	body := blank.body(k.what())
	var row []measured
	for _, c := range cells {
		m := measure(c, width, k.o.Say)
		if c.leastWidth() > width || m.height() > body.Height() && k.h > 0 {
			return nil
		}
		row = append(row, m)
	}
	return row
}

func (k *packer) what() []headLine {
	return templateHead(message.New("Drilling template 1:1, REAR FACE"), said(title(k.p)))
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

// put draws a row on the page being filled, or on a new one.
func (k *packer) put(row []measured) {
	height := barLength + mm(4) // the upright bar stands between the templates
	for _, m := range row {
		height = max(height, m.height())
	}
	if len(k.pages) == 0 || k.y-height < k.body.Min.Y {
		d := k.blank()
		if k.h == 0 { // a roll is cut to what the row needs
			d = newDraft(CornerTemplates, d.page.Title, k.w, height-d.body(k.what()).Height(), k.o)
		}
		k.body = d.body(k.what())
		d.head(k.what(), d.area.Width())
		d.foot()
		k.pages = append(k.pages, d)
		k.y, k.started = k.body.Max.Y, false
	}
	d := k.pages[len(k.pages)-1]
	if k.started {
		d.dashed(drawing.Cut, k.body.Min.X, k.y+cellGap/2, k.body.Max.X, k.y+cellGap/2)
	}
	x := k.body.Min.X
	for i, m := range row {
		m.draw(d, x, k.y-m.height())
		x += m.width
		if i+1 < len(row) {
			d.dashed(drawing.Cut, x+cellGap/2, k.y, x+cellGap/2, k.y-height)
		}
		x += cellGap
	}
	if !k.started {
		k.bar(d, x-cellGap, height, len(row))
	}
	k.y -= height + cellGap
	k.started = true
}

// bar draws the upright check bar beside the cut between the first two
// templates, or at the right of a single one.
func (k *packer) bar(d *draft, right, height length.Length, n int) {
	x := right + mm(3)
	if n > 1 {
		first := (right - k.body.Min.X - length.Length(n-1)*cellGap) / length.Length(n)
		x = k.body.Min.X + first + mm(1)
	}
	x = min(x, k.body.Max.X-mm(1)/2)
	d.uprightBar(x, k.y-(height+barLength)/2)
}
