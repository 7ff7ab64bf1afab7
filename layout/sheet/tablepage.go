package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/list"
	"frontlay/layout/plane"
	"frontlay/layout/sheet/lettering"
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
type tableLayout struct {
	kind    Part
	table   *list.Table
	o       Options
	job     message.Message
	widths  []length.Length
	pages   []*draft
	y       length.Length
	columns length.Length // width of all columns
	ended   bool          // only notes are left, which need no heading
}

func tablePages(kind Part, t list.Table, job message.Message, o Options) []Page {
	k := &tableLayout{kind: kind, table: &t, o: o, job: job}
	k.newPage()
	for i, row := range t.Rows {
		need := k.rowHeight(row)
		if row.Group {
			need = k.together(t.Rows[i:])
		}
		k.room(need)
		k.row(row)
	}
	k.notes()
	var pages []Page
	for _, d := range k.pages {
		pages = append(pages, d.finish())
	}
	return pages
}

// together is the height that a group keeps on one page: all of it where that is
// less than a third of the page, else its heading and first row.
func (k *tableLayout) together(rows []list.Row) length.Length {
	least, all := k.rowHeight(rows[0]), k.rowHeight(rows[0])
	for i, r := range rows[1:] {
		if r.Group {
			break
		}
		all += k.rowHeight(r)
		if i == 0 {
			least = all
		}
	}
	if all < k.page().area.Height()/3 {
		return all
	}
	return least
}

func (k *tableLayout) page() *draft { return k.pages[len(k.pages)-1] }

func (k *tableLayout) newPage() {
	w, h := k.o.Paper.Width, k.o.Paper.Height
	if k.o.Paper.Roll() {
		h = w * 14142 / 10000 // the proportion of the ISO sheets
	}
	d := newDraft(k.kind, k.kind.Title(), w, h, k.o)
	k.pages = append(k.pages, d)
	if k.widths == nil {
		k.columnWidths(d.area.Width()) // the same on all pages
	}
	y := d.area.Max.Y
	title := k.table.Title
	if len(k.pages) > 1 {
		title = k.o.Say.Say(message.New("%v (continued)", title))
	}
	y = d.paragraph(d.area.Min.X, y, d.area.Width(), lettering.Large, true, said(title)) - mm(1)
	y = d.paragraph(d.area.Min.X, y, d.area.Width(), lettering.Small, false, k.job) - mm(2)
	if len(k.pages) == 1 {
		for _, s := range k.table.Intro {
			y = d.paragraph(d.area.Min.X, y, d.area.Width(), tableText, false, said(s)) - mm(2)
		}
	}
	for _, s := range k.table.Repeat {
		y = d.paragraph(d.area.Min.X, y, d.area.Width(), tableText, true, said(s)) - mm(2)
	}
	k.y = y
	if len(k.table.Rows) > 0 && !k.ended {
		k.heading()
	}
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
		over := k.widths[i] - need[i]
		k.widths[i] -= length.FromMM(over.MM() * missing.MM() / spare.MM())
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

func (k *tableLayout) heading() {
	head, empty := list.Row{}, true
	for _, c := range k.table.Columns {
		head.Cells = append(head.Cells, c.Head)
		empty = empty && c.Head == ""
	}
	if empty {
		return
	}
	k.cells(head, true)
	d := k.page()
	d.line(drawing.Carcass, d.area.Min.X, k.y, d.area.Min.X+k.columns, k.y)
}

// room starts a new page where the height is not left on this one.
func (k *tableLayout) room(height length.Length) {
	if k.y-height < k.page().area.Min.Y+pageNumber {
		k.newPage()
	}
}

func (k *tableLayout) rowHeight(r list.Row) length.Length {
	most := 1
	for i, c := range r.Cells {
		width := k.columns
		if !r.Group {
			width = k.widths[i]
		}
		most = max(most, len(lettering.Wrap(c, tableText, r.Group, width-2*cellPad)))
	}
	h := length.Length(most)*lettering.Pitch(tableText) + cellPad
	if r.Group {
		h += mm(2)
	}
	return h
}

func (k *tableLayout) row(r list.Row) {
	d := k.page()
	if r.Group {
		k.y -= mm(2)
		left := d.area.Min.X
		k.y = d.paragraph(left+cellPad, k.y-cellPad, k.columns-2*cellPad, tableText, true, said(r.Cells[0]))
	} else {
		k.cells(r, false)
	}
	d.line(drawing.Frame, d.area.Min.X, k.y, d.area.Min.X+k.columns, k.y)
}

func (k *tableLayout) cells(r list.Row, bold bool) {
	d := k.page()
	left, low := d.area.Min.X, k.y
	for i, c := range r.Cells {
		if i >= len(k.widths) {
			break
		}
		lines := lettering.Wrap(c, tableText, bold, k.widths[i]-2*cellPad)
		x, anchor := left+cellPad, drawing.TopLeft
		if k.table.Columns[i].Right {
			x, anchor = left+k.widths[i]-cellPad, drawing.TopRight
		}
		y := k.y - cellPad
		for _, s := range lines {
			d.text(plane.Point{X: x, Y: y}, anchor, tableText, bold, s)
			y -= lettering.Pitch(tableText)
		}
		low = min(low, y)
		left += k.widths[i]
	}
	k.y = low
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
