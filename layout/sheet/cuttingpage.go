package sheet

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"frontlay/layout/cutting"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model/length"
	"frontlay/model/message"
)

// cuttingPages are the sheets to buy as a table, then a page for each stock sheet:
// its parts, its cuts in their order, and what is left over. Sheets that are cut alike
// are drawn once. Then come the blanks of matched fronts. There are no pages where no board
// has the size of its stock sheets and no fronts are matched.
func cuttingPages(p *plan.Plan, plans []list.StockPlan, o Options) []Page {
	var pages []Page
	if len(plans) > 0 {
		pages = tablePages(CuttingPlan, list.StockList(plans, o.Say), o)
	}
	for _, s := range plans {
		first, alike := []int{}, map[string][]int{}
		for i, sheet := range s.Laying.Sheets {
			key := cutAlike(&s, sheet)
			if alike[key] == nil {
				first = append(first, i)
			}
			alike[key] = append(alike[key], i+1)
		}
		for _, i := range first {
			pages = append(pages, cuttingSheet(&s, alike[cutAlike(&s, s.Laying.Sheets[i])], o)...)
		}
	}
	return append(pages, blankPages(list.Blanks(p), o)...)
}

// blanksEach is how many blanks are drawn on a page, one above the other.
const blanksEach = 3

// blankPages draw the blanks of matched fronts.
func blankPages(all []list.Blank, o Options) []Page {
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	title := message.New("Blanks of matched fronts")
	var pages []Page
	for len(all) > 0 {
		d := newDraft(CuttingPlan, title, w, h, o)
		above := d.titleBlock(title, message.New("as noted"), o)
		d.box(drawing.Frame, d.area)
		above.Max.Y = d.paragraph(above.Min.X+mm(2), above.Max.Y-mm(2), above.Width()-mm(4), lettering.Small, false,
			message.New("As they hang, seen from the room. Number the fronts on their rear faces before you cut them apart. Between two lies what their gap hides, or the kerf where it is more; all around lies what is trimmed off."))
		high := above.Height() / blanksEach
		n := min(blanksEach, len(all))
		for i := range all[:n] {
			b := &all[i]
			r := plane.R(above.Min.X, above.Max.Y-length.Length(i+1)*high, above.Max.X, above.Max.Y-length.Length(i)*high).Grow(-mm(2))
			v := view.Blank(b.Size, b.Places, b.Numbers())
			top := d.heightOf(r.Width(), lettering.Medium, true, b.Name()) + mm(1)
			placed, den := fit(v, plane.R(r.Min.X, r.Min.Y, r.Max.X, r.Max.Y-top), o.Say)
			d.place(placed)
			d.paragraph(r.Min.X, r.Max.Y, r.Width(), lettering.Medium, true, message.New("Blank %v: %v × %v, %v. %v", b.Number, b.Size.X, b.Size.Y, list.BoardName(b.Board), scaleText(den, o.Say.Unit)))
		}
		pages = append(pages, d.finish())
		all = all[n:]
	}
	return pages
}

// cutAlike is the same for sheets whose pieces have the same places and rows.
func cutAlike(s *list.StockPlan, sheet *cutting.Piece) string {
	var b strings.Builder
	sheet.Walk(func(p *cutting.Piece) {
		row := -1
		if p.Part >= 0 {
			row = s.Of[p.Part]
		}
		fmt.Fprintln(&b, p.Area, row)
	})
	return b.String()
}

// Sizes of what is written below a stock sheet.
const (
	cuttingColumns = 3
	cuttingGap     = 4 * length.Millimetre
)

// cuttingSheet draws a stock sheet and writes its parts and its cuts below, on more
// pages where they have no room.
func cuttingSheet(s *list.StockPlan, alike []int, o Options) []Page {
	sheet := s.Laying.Sheets[alike[0]-1]
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	title := message.New("%v: sheet %v of %v", s.Name(), alike[0], len(s.Laying.Sheets))
	if len(alike) > 1 {
		title = message.New("%v: sheets %v of %v, cut alike", s.Name(), list.Numbers(alike), len(s.Laying.Sheets))
	}
	lines := slices.Concat(partLines(s, sheet, o.Say), cutLines(sheet, o.Say), leftLines(sheet, o.Say))
	picture := view.CuttingSheet(s.Laying.Stock, sheet, func(q *cutting.Piece) (whole, short message.Message) {
		row := s.Of[q.Part] + 1
		return message.New("%v: %v × %v", row, o.Say.Figure(q.Area.Width()), o.Say.Figure(q.Area.Height())), message.New("%v", row)
	})
	pitch := lettering.Pitch(lettering.Small)
	var pages []Page
	for len(lines) > 0 {
		d := newDraft(CuttingPlan, title, w, h, o)
		r := d.area.Grow(-mm(2))
		r.Min.Y = d.area.Min.Y + blockHeight(o) + mm(2)
		r.Max.Y = d.paragraph(r.Min.X, r.Max.Y, r.Width(), lettering.Medium, true, title) - mm(2)
		scale := message.Message{}
		if len(pages) == 0 {
			r.Max.Y = d.paragraph(r.Min.X, r.Max.Y, r.Width(), lettering.Small, false, cuttingNote(s)) - mm(3)
			placed, den := fit(picture, plane.R(r.Min.X, r.Centre().Y, r.Max.X, r.Max.Y), o.Say)
			high := picture.OnPaper(den, o.Say)
			placed.At.Y = r.Max.Y - high.Max.Y // at the top of its room
			d.place(placed)
			scale = scaleText(den, o.Say.Unit)
			r.Max.Y -= high.Height() + mm(5)
		}
		rows := max(int(r.Height()/pitch), 1)
		wide := (r.Width() + cuttingGap) / cuttingColumns
		for k := 0; k < cuttingColumns && len(lines) > 0; k++ {
			x, y := r.Min.X+length.Length(k)*wide, r.Max.Y
			n := min(rows, len(lines))
			if cut := slices.IndexFunc(lines[1:n], func(l columnLine) bool { return l.bold }); cut >= 0 {
				n = cut + 1 // each list begins a column of its own
			}
			for _, l := range lines[:n] {
				y = d.lines(x, y, lettering.Small, l.bold, []string{lettering.Shorten(l.text, lettering.Small, l.bold, wide-cuttingGap)})
			}
			lines = lines[n:]
		}
		d.titleBlock(message.New("Cutting plan"), scale, o)
		d.box(drawing.Frame, d.area)
		pages = append(pages, d.finish())
	}
	return pages
}

// cuttingNote says how to read the drawing of a stock sheet.
func cuttingNote(s *list.StockPlan) message.Message {
	m := message.New("The grain runs along the sheet, from left to right. Cut in the order of the numbers, each cut from edge to edge of the piece that is left; the figure is the size kept at the left or below. Kerf %v, trim %v off each edge first. Cut with a guard and push sticks, and let a large sheet be held by two.", s.Laying.Stock.Kerf, s.Laying.Stock.Trim)
	if s.Board.Stock.Plain {
		return message.New("%v The board has no grain: parts may lie either way.", m)
	}
	return m
}

// columnLine is what is written on one line of a column.
type columnLine struct {
	text string
	bold bool
}

// partLines name the parts of a stock sheet, by their row of the cut list.
func partLines(s *list.StockPlan, sheet *cutting.Piece, say message.Language) []columnLine {
	count := make([]int, s.Rows())
	for _, q := range sheet.Parts(s.Parts) {
		count[s.Of[q.Part]]++
	}
	lines := []columnLine{{say.Say(message.New("Parts")), true}}
	for row, n := range count {
		if n > 0 {
			lines = append(lines, columnLine{say.Say(message.New("%v: %v × %v", row+1, n, s.SayRow(row, say))), false})
		}
	}
	return lines
}

// leastOffcut is the shorter side of what is worth keeping.
const leastOffcut = 100 * length.Millimetre

// leftLines tell what is left over of a stock sheet and worth keeping, the largest
// first.
func leftLines(sheet *cutting.Piece, say message.Language) []columnLine {
	var left []plane.Rect
	for _, r := range sheet.Offcuts() {
		if min(r.Width(), r.Height()) >= leastOffcut {
			left = append(left, r)
		}
	}
	slices.SortStableFunc(left, func(a, b plane.Rect) int {
		return cmp.Compare(length.AreaM2(b.Width(), b.Height()), length.AreaM2(a.Width(), a.Height()))
	})
	if len(left) == 0 {
		return nil
	}
	lines := []columnLine{{say.Say(message.New("Left over")), true}}
	for _, r := range left {
		lines = append(lines, columnLine{say.Say(message.New("%v × %v", r.Width(), r.Height())), false})
	}
	return lines
}

// cutLines tell the cuts of a stock sheet in their order.
func cutLines(sheet *cutting.Piece, say message.Language) []columnLine {
	lines := []columnLine{{say.Say(message.New("Cuts")), true}}
	for _, p := range sheet.Cuts() {
		m := message.New("(%v) rip to %v", p.Cut.Number, p.Cut.Near.Area.Height())
		if p.Cut.Upright {
			m = message.New("(%v) crosscut to %v", p.Cut.Number, p.Cut.Near.Area.Width())
		}
		lines = append(lines, columnLine{say.Say(m), false})
	}
	return lines
}
