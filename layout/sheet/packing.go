package sheet

import (
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// packing says which corner templates stand where on pages of one size, before
// any is drawn: several packings are compared by their count of sheets.
type packing struct {
	k        *packer
	w, h     length.Length // of a page; h is 0 on a roll, where each row is a piece
	body     plane.Rect    // between head and foot; on a roll only its width counts
	headFoot length.Length // what head, foot and their gaps take of a page's inside
	pages    []*packedPage
	tiled    []corner
}

// packedPage is a page with rows of templates; used is how much of the body's
// height they take. On a page with its words beside it stands one template that is too
// high to have them above it.
type packedPage struct {
	rows   []packedRow
	used   length.Length
	beside bool
}

// packedRow is a row of templates side by side; top is below the body's top.
type packedRow struct {
	cells       []measured
	top, height length.Length
}

// packer packs corner templates of one job. Measuring is the costly part, so it
// is done once for each template and width.
type packer struct {
	p      *plan.Plan
	o      Options
	head   []headLine
	memory map[measureKey]measured
	tiled  map[int]int // sheets that a template needs alone, by its id
}

type measureKey struct {
	id      int
	width   length.Length
	compact bool
}

func newPacker(p *plan.Plan, o Options) *packer {
	return &packer{p: p, o: o, memory: map[measureKey]measured{}, tiled: map[int]int{}, head: warned(o, o.templateHead(message.New("%v: drilling templates 1:1, REAR FACE", title(p)),
		message.New("%v At each hole: → or ← from the side edge, ↑ from the bottom edge.", faceDown())))}
}

func (k *packer) measure(c corner, width length.Length, compact bool) measured {
	key := measureKey{c.id, width, compact}
	m, ok := k.memory[key]
	if !ok {
		m = measure(c, width, k.o.Say, compact)
		k.memory[key] = m
	}
	return m
}

// tiles is how many sheets a template needs that is spread over several.
func (k *packer) tiles(c corner) int {
	if _, ok := k.tiled[c.id]; !ok {
		k.tiled[c.id] = cornerSpread(c, k.o).sheets(k.o)
	}
	return k.tiled[c.id]
}

func (k *packer) blank(w, h length.Length) *draft {
	return newDraft(CornerTemplates, message.New("Corner templates"), w, h, k.o)
}

// pack fills pages of a size with templates.
func (k *packer) pack(all []corner, w, h length.Length) *packing {
	q := &packing{k: k, w: w, h: h}
	d := k.blank(w, h)
	q.body = d.body(k.head)
	q.headFoot = d.area.Height() - q.body.Height()
	for len(all) > 0 {
		n := q.across(all)
		row := q.row(all[:n])
		for row == nil && n > 1 {
			n--
			row = q.row(all[:n])
		}
		if row == nil {
			if m, ok := q.tall(all[0]); ok {
				q.pages = append(q.pages, &packedPage{rows: []packedRow{{[]measured{m}, 0, m.height()}}, used: q.body.Height(), beside: true})
			} else {
				q.tiled = append(q.tiled, all[0])
			}
		} else {
			q.put(row)
		}
		all = all[n:]
	}
	return q
}

// across tells how many of the next templates stand in one row; the two of one
// front are not parted where the paper is wide enough for both.
func (q *packing) across(all []corner) int {
	n, widest := 0, length.Length(0)
	for n < len(all) {
		widest = max(widest, all[n].leastWidth())
		if length.Length(n+1)*widest+length.Length(n)*cellGap > q.body.Width() {
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
func (q *packing) row(cells []corner) []measured {
	n := length.Length(len(cells))
	width := (q.body.Width() - (n-1)*cellGap) / n
	if n == 1 {
		width -= barStrip // the upright bar stands beside it
	}
	most := mm(120) // wider than that, its two halves only drift apart
	for _, c := range cells {
		most = max(most, c.leastWidth())
	}
	width = min(width, most)
	tooHigh := func(m measured) bool { return q.h > 0 && m.height() > q.body.Height() }
	var row []measured
	for _, c := range cells {
		m := q.k.measure(c, width, false)
		if tooHigh(m) {
			m = q.k.measure(c, width, true)
		}
		if c.leastWidth() > width || tooHigh(m) {
			return nil
		}
		row = append(row, m)
	}
	return row
}

// leastWords is the least width of what is told beside a high template.
const leastWords = 70 * length.Millimetre

// tall measures a template that has what stands at the top of the page beside it, so
// that it may be as high as the page; false where that does not fit either.
func (q *packing) tall(c corner) (measured, bool) {
	if q.h == 0 {
		return measured{}, false
	}
	d := q.k.blank(q.w, q.h)
	width := min(mm(120), d.area.Width()-cellGap-leastWords)
	if c.leastWidth() > width {
		return measured{}, false
	}
	room := d.area.Height() - footHeight
	words := d.headHeight(q.k.head, d.area.Width()-width-cellGap)
	m := q.k.measure(c, width, false)
	if m.height() > room {
		m = q.k.measure(c, width, true)
	}
	return m, m.height() <= room && words+mm(8)+q.k.o.rule().bar <= room
}

// put finds the first page that has room for a row, or begins a new one.
func (q *packing) put(row []measured) {
	height := length.Length(0)
	for _, m := range row {
		height = max(height, m.height())
	}
	if q.h > 0 {
		for _, p := range q.pages {
			if p.used+cellGap+height <= q.body.Height() {
				p.rows = append(p.rows, packedRow{row, p.used + cellGap, height})
				p.used += cellGap + height
				return
			}
		}
	}
	height = max(height, q.k.o.rule().bar+mm(1)+barFoot) // the upright bar stands beside the first row
	q.pages = append(q.pages, &packedPage{rows: []packedRow{{row, 0, height}}, used: height})
}

// sheets is how many pages the packing has, tiled templates included.
func (q *packing) sheets() int {
	n := len(q.pages)
	for _, c := range q.tiled {
		n += q.k.tiles(c)
	}
	return n
}
