package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// cornerPages puts the corner templates on as few sheets as it can: side by
// side and in rows, the two of one front together, upright or lengthwise. Those
// too large for the paper are tiled.
func cornerPages(p *plan.Plan, o Options, first int) []Page {
	all := corners(p, o)
	if len(all) == 0 {
		return nil
	}
	k := newPacker(p, o)
	upright := func(cells []corner) *packing { return k.pack(cells, o.Paper.Width, o.Paper.Height) }
	lengthwise := func(cells []corner) *packing { return k.pack(cells, o.Paper.Height, o.Paper.Width) }
	if o.Paper.Roll() {
		return upright(all).draw(first)
	}
	best := upright(all)
	if q := lengthwise(all); q.sheets() < best.sheets() {
		best = q
	}
	// Each front's pair on the kind of page that suits it alone.
	var tall, wide []corner
	for _, pair := range pairs(all) {
		if upright(pair).sheets() <= lengthwise(pair).sheets() {
			tall = append(tall, pair...)
		} else {
			wide = append(wide, pair...)
		}
	}
	u, l := upright(tall), lengthwise(wide)
	if u.sheets()+l.sheets() <= best.sheets() { // as few sheets, and each front's two together
		pages := u.draw(first)
		return append(pages, l.draw(first+len(pages))...)
	}
	return best.draw(first)
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

// draw makes the pages of a packing.
func (q *packing) draw(first int) []Page {
	var pages []Page
	for _, p := range q.pages {
		h := q.h
		if h == 0 { // a roll is cut to what the row needs
			h = q.k.o.alongRoll(p.used + q.headFoot)
		}
		f := &filling{d: q.k.blank(q.w, h)}
		if p.beside {
			f.alone(p.rows[0].cells[0], q.k.head)
			pages = append(pages, f.d.finish())
			continue
		}
		f.body = f.d.body(q.k.head)
		f.d.head(q.k.head, f.d.area.Width())
		f.d.foot()
		for i, r := range p.rows {
			top := f.body.Max.Y - r.top
			if i == 0 {
				f.bar(r.cells, top, r.height)
			} else {
				f.d.dashed(drawing.Cut, f.body.Min.X, top+cellGap/2, f.body.Max.X, top+cellGap/2)
			}
			f.row(r.cells, top, r.height)
		}
		pages = append(pages, f.d.finish())
	}
	for _, c := range q.tiled {
		pages = append(pages, tileCorner(c, q.k.o, first+len(pages))...)
	}
	return pages
}

// body is what head and foot leave of a 1:1 page.
func (d *draft) body(head []headLine) plane.Rect {
	r := d.area
	r.Max.Y -= d.headHeight(head, d.area.Width())
	r.Min.Y += footHeight
	return r
}

// filling is a page on which rows of templates are drawn.
type filling struct {
	d          *draft
	body       plane.Rect
	barX, barY length.Length // lower end of the upright check bar on the cut
}

// alone draws one template over the height of the page, at its right the words and
// below them the upright check bar.
func (f *filling) alone(m measured, head []headLine) {
	a := f.d.area
	m.draw(f.d, a.Min.X, a.Max.Y-m.height())
	left := a.Min.X + m.width + cellGap
	y := f.d.headFrom(left, head, a.Max.X-left)
	f.d.uprightBar(left+mm(2), y-mm(4)-f.d.rule.bar)
	f.d.foot()
}

func (f *filling) row(row []measured, top, height length.Length) {
	x := f.body.Min.X
	for i, m := range row {
		m.draw(f.d, x, top-m.height())
		x += m.width
		if i+1 < len(row) {
			f.cut(x+cellGap/2, top, top-height)
		}
		x += cellGap
	}
}

// cut draws where two templates are parted, but not over the check bar.
func (f *filling) cut(x, top, bottom length.Length) {
	if x != f.barX {
		f.d.dashed(drawing.Cut, x, top, x, bottom)
		return
	}
	if high := f.barY + f.d.rule.bar + mm(2); high < top {
		f.d.dashed(drawing.Cut, x, top, x, high)
	}
	if low := f.barY - barFoot; bottom < low {
		f.d.dashed(drawing.Cut, x, low, x, bottom)
	}
}

// bar draws the upright check bar on the cut between the first two templates,
// or at the right of a single one.
func (f *filling) bar(row []measured, top, height length.Length) {
	f.barX = f.body.Min.X + row[0].width + cellGap/2
	if len(row) == 1 {
		f.d.uprightBar(min(f.barX, f.body.Max.X-barSide), top-(height+f.d.rule.bar)/2)
		f.barX = 0 // nothing is cut there
		return
	}
	// Low, so that its name stands beside the bottom edges, not beside holes.
	f.barY = top - height + barFoot
	f.d.barBetween(f.barX, f.barY)
}
