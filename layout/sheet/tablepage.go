package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Sizes of a table on paper.
const (
	cellPad    = 1200 * length.Micrometre // from a cell's edge to its text
	tableText  = lettering.Small
	pageNumber = 5 * length.Millimetre // kept free below, for “page n of m”
)

// tableLayout puts a table on as many pages as it needs, its heading repeated.
// Rows are measured now and drawn when somebody asks for their page.
type tableLayout struct {
	kind    Part
	picture *drawing.Drawing // above the rows of the first page; nil: none
	share   length.Length    // of the first page, that it takes at most
	table   *list.Table
	o       Options
	widths  []length.Length
	pages   []*tablePart
	y       length.Length
	columns length.Length // width of all columns
	ended   bool          // only notes are left, which need no heading
}

// tablePart is what one page shows of a table: some of its rows, the heading
// first where the page has one, from top down.
type tablePart struct {
	*draft
	rows   []list.Row
	head   list.Row // empty: no heading
	top    length.Length
	before int // how many of the page's own marks come before the rows
}

func tablePages(kind Part, t list.Table, o Options) []Page { return drawnTable(kind, nil, t, o) }

// drawnTable is tablePages with a drawing over the table.
func drawnTable(kind Part, v *drawing.Drawing, t list.Table, o Options) []Page {
	k := layTable(kind, v, &t, o, studyShares[0])
	for _, less := range studyShares[1:] {
		if v == nil || len(k.pages) == 1 {
			break
		}
		if smaller := layTable(kind, v, &t, o, less); len(smaller.pages) < len(k.pages) {
			k = smaller
		}
	}
	var pages []Page
	for _, p := range k.pages {
		page := p.finish()
		page.before, page.rows = p.before, func() []drawing.Mark { return k.draw(p) }
		pages = append(pages, page)
	}
	return pages
}

// layTable puts a table on its pages, with the drawing at most a share of the first.
func layTable(kind Part, v *drawing.Drawing, t *list.Table, o Options, share length.Length) *tableLayout {
	k := &tableLayout{kind: kind, picture: v, share: share, table: t, o: o}
	k.newPage()
	for i, row := range t.Rows {
		need := k.rowHeight(row, row.Group)
		if row.Group {
			need = k.together(t.Rows[i:])
		}
		k.room(need)
		p := k.page()
		p.rows = t.Rows[i-len(p.rows) : i+1]
		k.y -= k.rowHeight(row, row.Group)
	}
	k.notes()
	return k
}

// draw gives the marks of a page's rows.
func (k *tableLayout) draw(p *tablePart) []drawing.Mark {
	d := &draft{own: &drawing.Drawing{}, area: p.area, say: p.say}
	y := p.top
	under := func(m drawing.Meaning) { d.line(m, d.area.Min.X, y, d.area.Min.X+k.columns, y) }
	if len(p.head.Cells) > 0 {
		y = k.cells(d, p.head, true, y)
		under(drawing.Carcass)
	}
	for _, r := range p.rows {
		if r.Group {
			y = d.paragraph(d.area.Min.X+cellPad, y-mm(2)-cellPad, k.columns-2*cellPad, tableText, true, said(r.Cells[0]))
		} else {
			y = k.cells(d, r, false, y)
		}
		under(drawing.Frame)
	}
	return d.own.Marks
}

// together is the height that a group keeps on one page: all of it where that is
// less than a third of the page, else its heading and first row.
func (k *tableLayout) together(rows []list.Row) length.Length {
	least, all := k.rowHeight(rows[0], true), k.rowHeight(rows[0], true)
	for i, r := range rows[1:] {
		if r.Group {
			break
		}
		all += k.rowHeight(r, false)
		if i == 0 {
			least = all
		}
	}
	if all < k.page().area.Height()/3 {
		return all
	}
	return least
}

func (k *tableLayout) page() *tablePart { return k.pages[len(k.pages)-1] }

func (k *tableLayout) newPage() {
	w, h := k.o.Paper.Width, k.o.Paper.Height
	if k.o.Paper.Roll() {
		h = w * 14142 / 10000 // the proportion of the ISO sheets
	}
	d := newDraft(k.kind, k.kind.Title(), w, h, k.o)
	p := &tablePart{draft: d}
	k.pages = append(k.pages, p)
	if k.widths == nil {
		k.columnWidths(d.area.Width()) // the same on all pages
	}
	y := d.area.Max.Y
	title := k.table.Title
	if len(k.pages) > 1 {
		title = k.o.Say.Say(message.New("%v (continued)", title))
	}
	y = d.paragraph(d.area.Min.X, y, d.area.Width(), lettering.Large, true, said(title)) - mm(1)
	y = d.paragraph(d.area.Min.X, y, d.area.Width(), lettering.Small, false, said(k.o.stamp.job)) - mm(2)
	if len(k.pages) == 1 {
		for _, s := range k.table.Intro {
			y = d.paragraph(d.area.Min.X, y, d.area.Width(), tableText, false, said(s)) - mm(2)
		}
	}
	if len(k.pages) == 1 && k.picture != nil {
		y = d.picture(k.picture, k.share, y, k.o)
	}
	for _, s := range k.table.Repeat {
		y = d.paragraph(d.area.Min.X, y, d.area.Width(), tableText, true, said(s)) - mm(2)
	}
	p.top, p.before = y, len(d.own.Marks)
	if len(k.table.Rows) > 0 && !k.ended {
		if p.head = k.heading(); len(p.head.Cells) > 0 {
			y -= k.rowHeight(p.head, true)
		}
	}
	k.y = y
}

// columnWidths shares the width by the columns' weights, but gives no column
// less than its longest word takes where the others can spare it.
func (k *tableLayout) columnWidths(width length.Length) {
	total, n := 0.0, len(k.table.Columns)
	for _, c := range k.table.Columns {
		total += c.Weight
	}
	k.columns = width
	k.widths = make([]length.Length, n)
	need := make([]length.Length, n)
	missing, spare := length.Length(0), length.Length(0)
	for i, c := range k.table.Columns {
		k.widths[i] = length.FromMM(width.MM() * c.Weight / total)
		need[i] = k.longestWord(i)
		missing += max(need[i]-k.widths[i], 0)
		spare += max(k.widths[i]-need[i], 0)
	}
	if missing == 0 || spare < missing {
		return // nothing to do, or nothing that helps all
	}
	for i := range k.widths {
		if k.widths[i] < need[i] {
			k.widths[i] = need[i]
			continue
		}
		toSpare := k.widths[i] - need[i]
		k.widths[i] -= length.FromMM(toSpare.MM() * missing.MM() / spare.MM())
	}
}

// longestWord is the width of a column that breaks none of its words.
func (k *tableLayout) longestWord(column int) length.Length {
	widest := lettering.LongestWord(k.table.Columns[column].Head, tableText, true)
	for _, r := range k.table.Rows {
		if !r.Group && column < len(r.Cells) {
			widest = max(widest, lettering.LongestWord(r.Cells[column], tableText, false))
		}
	}
	return widest + 2*cellPad + 1
}

// heading is the row of the columns' heads; without cells where none has one.
func (k *tableLayout) heading() list.Row {
	head, empty := list.Row{}, true
	for _, c := range k.table.Columns {
		head.Cells = append(head.Cells, c.Head)
		empty = empty && c.Head == ""
	}
	if empty {
		return list.Row{}
	}
	return head
}

// room starts a new page where the height is not left on this one.
func (k *tableLayout) room(height length.Length) {
	if k.y-height < k.page().area.Min.Y+pageNumber {
		k.newPage()
	}
}

func (k *tableLayout) rowHeight(r list.Row, bold bool) length.Length {
	most := 1
	for i, c := range r.Cells {
		width := k.columns
		if !r.Group {
			width = k.widths[i]
		}
		most = max(most, len(lettering.Wrap(c, tableText, bold, width-2*cellPad)))
	}
	h := length.Length(most)*lettering.Pitch(tableText) + cellPad
	if r.Group {
		h += mm(2)
	}
	return h
}

// cells writes a row from y down and gives the y below it.
func (k *tableLayout) cells(d *draft, r list.Row, bold bool, y length.Length) length.Length {
	left, low := d.area.Min.X, y
	for i, c := range r.Cells {
		if i >= len(k.widths) {
			break
		}
		x, anchor := left+cellPad, drawing.Anchor{Y: 1}
		if k.table.Columns[i].Right {
			x, anchor = left+k.widths[i]-cellPad, drawing.Anchor{X: 1, Y: 1}
		}
		line := y - cellPad
		for _, s := range lettering.Wrap(c, tableText, bold, k.widths[i]-2*cellPad) {
			d.text(plane.Point{X: x, Y: line}, anchor, tableText, bold, s)
			line -= lettering.Pitch(tableText)
		}
		low = min(low, line)
		left += k.widths[i]
	}
	return low
}

func (k *tableLayout) notes() {
	k.ended = true
	for _, s := range k.table.Notes {
		d := k.page()
		need := d.heightOf(d.area.Width(), tableText, false, said(s)) + mm(2)
		k.room(need)
		d = k.page()
		k.y = d.paragraph(d.area.Min.X, k.y-mm(2), d.area.Width(), tableText, false, said(s))
	}
}
