package sheet

import (
	"slices"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// block is a template that is laid on a pencil line and shares its sheet with
// others, beside and below each other. Where it is wider than the paper its two ends
// stand beside each other, or its parts follow each other.
type block struct {
	spread spread
	name   message.Message // what it is for
	lines  pencilLines     // where it is laid
	sketch plane.Rect      // the panel for the small map; empty: none
}

// stack says on which page each part of each block stands.
type stack struct {
	kind  Part
	o     Options
	w, h  length.Length
	head  []headLine
	parts []stackPart
	count int // of pages
}

// stackPart is what one sheet shows of a block: its place in the body, from the left
// and below the top.
type stackPart struct {
	block  block
	t      tiling
	col    int
	pieces []piece
	untold []counted // holes whose figures have no room beside them
	page   int       // from 0
	left   length.Length
	top    length.Length
	width  length.Length
	height length.Length
}

// partWidth is the least width of a part that shares a row with others, for the words
// above it.
const partWidth = 84 * length.Millimetre

// least is the width that a part needs.
func (p *stackPart) least() length.Length {
	return max(partWidth, p.wide())
}

// wide is how far a part's pieces reach.
func (p *stackPart) wide() length.Length {
	w := -endGap
	for _, q := range p.pieces {
		w += endGap + q.shown.Width()
	}
	return w
}

// ends tells that a part is the two ends of a block.
func (p *stackPart) ends() bool { return len(p.pieces) > 1 }

// parts are those of a block on paper of a width: higher where that gives the figures
// of its holes room beside them.
func (b block) parts(width length.Length, o Options) []stackPart {
	parts := b.partsOf(width, o)
	if !b.spread.onLine || !slices.ContainsFunc(parts, func(p stackPart) bool { return len(p.untold) > 0 }) {
		return parts
	}
	b.spread.region.Max.Y += lettering.Pitch(holeLetters)
	higher := b.partsOf(width, o)
	if slices.ContainsFunc(higher, func(p stackPart) bool { return len(p.untold) > 0 }) {
		return parts
	}
	return higher
}

func (b block) partsOf(width length.Length, o Options) []stackPart {
	t := b.spread.tiling(plane.Point{X: b.spread.region.Width(), Y: b.spread.region.Height()}, o)
	if b.spread.region.Width() > width {
		if ends := b.spread.ends(width, o); ends != nil {
			return []stackPart{stackPart{block: b, t: t, pieces: ends}.trying(o)}
		}
		t = b.spread.tiling(plane.Point{X: width, Y: b.spread.region.Height()}, o)
	}
	var parts []stackPart
	for col := range t.cols {
		parts = append(parts, stackPart{block: b, t: t, col: col, pieces: []piece{{shown: t.at(col, 0)}}}.trying(o))
	}
	return parts
}

// trying gives the part with those of its holes whose figures find no room beside them,
// found by lettering it once on a sheet that is thrown away.
func (p stackPart) trying(o Options) stackPart {
	d := newDraft(p.block.spread.kind, p.block.spread.title, greatestEdge, greatestEdge, o)
	p.untold = p.letter(d, d.area.Min, func(col, row int) int {
		if row == 0 && col >= 0 && col < p.t.cols {
			return 1
		}
		return 0
	})
	return p
}

// letter draws the pieces of a part side by side, from their lower left corner, and
// gives the holes whose figures have no room beside them.
func (p *stackPart) letter(d *draft, at plane.Point, page func(col, row int) int) (untold []counted) {
	for k, q := range p.pieces {
		if k > 0 {
			d.dashed(drawing.Cut, at.X-endGap/2, at.Y, at.X-endGap/2, at.Y+q.shown.Height())
		}
		d.place(drawing.Placed{
			Drawing: p.block.spread.panel, Origin: q.shown.Min, At: at, ScaleNum: 1, ScaleDen: 1,
			Clip: plane.Rect{Min: at, Max: at.Add(q.shown.Max.Sub(q.shown.Min))},
		})
		sheet := newTileSheet(p.block.spread, d, p.t, p.col, 0, q.shown, at)
		sheet.counted = len(untold)
		untold = append(untold, sheet.letter(page, q.mark)...)
		at.X += q.shown.Width() + endGap
	}
	return untold
}

// stackPages puts blocks on as few sheets as it can, upright or lengthwise. A
// block that is too high for a sheet of its own is spread over several.
func stackPages(kind Part, head []headLine, all []block, o Options, first int) []Page {
	if len(all) == 0 {
		return nil
	}
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		best, tall := stackBlocks(kind, head, all, w, greatestEdge, o)
		best.cut()
		return best.drawWith(tall, first)
	}
	best, tall := stackBlocks(kind, head, all, w, h, o)
	if other, t := stackBlocks(kind, head, all, h, w, o); len(t) < len(tall) || len(t) == len(tall) && other.better(best) {
		best, tall = other, t
	}
	return best.drawWith(tall, first)
}

// stackBlocks stacks blocks on pages of one size and gives those that are too
// high for it.
func stackBlocks(kind Part, head []headLine, all []block, w, h length.Length, o Options) (s *stack, tall []block) {
	s = &stack{kind: kind, o: o, w: w, h: h, head: warned(o, head)}
	body := s.body(s.blank())
	used := body.Height()
	var row []stackPart
	end := func() {
		if len(row) == 0 {
			return
		}
		height := s.row(row, body.Width())
		if used+cellGap+height > body.Height() {
			s.count++
			used = -cellGap
		}
		for i := range row {
			row[i].page, row[i].top = s.count-1, used+cellGap
		}
		used += cellGap + height
		s.parts = append(s.parts, row...)
		row = nil
	}
	for _, b := range all {
		parts := b.parts(body.Width(), o)
		if alone := parts[:1:1]; s.row(alone, body.Width()) > body.Height() {
			tall = append(tall, b)
			continue
		}
		for _, p := range parts {
			if !s.joins(row, p, body) {
				end()
			}
			row = append(row, p)
			if len(parts) > 1 { // taped parts stand one below the other
				end()
			}
		}
	}
	end()
	return s, tall
}

// joins tells that a part has room beside those of a row.
func (s *stack) joins(row []stackPart, p stackPart, body plane.Rect) bool {
	all := append(row[:len(row):len(row)], p)
	need := -cellGap
	for i := range all {
		need += cellGap + all[i].least()
	}
	return need <= body.Width() && s.row(slices.Clone(all), body.Width()) <= body.Height()
}

// row places parts side by side, what is left shared between them, and gives their
// height.
func (s *stack) row(row []stackPart, width length.Length) (height length.Length) {
	spare := width + cellGap
	for i := range row {
		spare -= cellGap + row[i].least()
	}
	left := length.Length(0)
	for i := range row {
		p := &row[i]
		p.left, p.width = left, p.least()+max(spare, 0)/length.Length(len(row))
		p.height = s.textHeight(*p, p.width) + p.pieces[0].shown.Height()
		left += p.width + cellGap
		height = max(height, p.height)
	}
	return height
}

// better tells that a stack needs fewer sheets than another, or as many with
// fewer seams.
func (s *stack) better(than *stack) bool {
	if s.count != than.count {
		return s.count < than.count
	}
	return len(s.parts) < len(than.parts)
}

// cut shortens the pages of a roll to what the blocks need.
func (s *stack) cut() {
	d := s.blank()
	used := d.rule.bar + mm(4)
	for _, p := range s.parts {
		used = max(used, p.top+p.height)
	}
	s.h = s.o.alongRoll(d.area.Height() - s.body(d).Height() + used)
}

func (s *stack) blank() *draft { return newDraft(s.kind, s.kind.Title(), s.w, s.h, s.o) }

func (s *stack) body(d *draft) plane.Rect {
	r := d.body(s.head)
	r.Max.X -= barStrip
	return r
}

// drawWith draws the pages, and after them the blocks that are too high.
func (s *stack) drawWith(tall []block, first int) []Page {
	var pages []Page
	for page := range s.count {
		d := s.blank()
		body := s.body(d)
		d.head(s.head, d.area.Width())
		d.foot()
		d.uprightBar(d.area.Max.X-barSide, body.Min.Y+(body.Height()-d.rule.bar)/2)
		for i := range s.parts {
			if s.parts[i].page == page {
				s.drawPart(d, body, i, first)
			}
		}
		pages = append(pages, d.finish())
	}
	for _, b := range tall {
		pages = append(pages, b.spread.pages(s.o, first+len(pages))...)
	}
	return pages
}

// drawPart draws one part of a block with its words.
func (s *stack) drawPart(d *draft, body plane.Rect, i, first int) {
	p := &s.parts[i]
	top, left := body.Max.Y-p.top, body.Min.X+p.left
	if p.left > 0 {
		d.dashed(drawing.Cut, left-cellGap/2, top, left-cellGap/2, top-s.rowHeight(i))
	} else if p.top > 0 {
		d.dashed(drawing.Cut, body.Min.X, top+cellGap/2, body.Max.X, top+cellGap/2)
	}
	pageOf := func(col, row int) int {
		if j := i + col - p.col; row == 0 && col >= 0 && col < p.t.cols {
			return first + s.parts[j].page
		}
		return 0
	}
	s.write(d, plane.R(left, top-p.height, left+p.width, top), p, func(col int) message.Message {
		if q := s.parts[i+col-p.col]; q.page != p.page {
			return message.New("part %v on page %v", col+1, first+q.page)
		}
		if col > p.col {
			return message.New("part %v below", col+1)
		}
		return message.New("part %v above", col+1)
	})
	p.letter(d, plane.Point{X: left, Y: top - p.height}, pageOf)
}

// rowHeight is the height of the row in which a part stands.
func (s *stack) rowHeight(i int) (height length.Length) {
	for _, p := range s.parts {
		if p.page == s.parts[i].page && p.top == s.parts[i].top {
			height = max(height, p.height)
		}
	}
	return height
}

// pencilLines tells above a template where it is laid: a sentence, or a small
// table with a row a board or front. It is read at the bench, so it is lettered
// larger than labels.
type pencilLines struct {
	only  message.Message // the sentence; empty: the table
	heads []message.Message
	rows  [][]string
}

const columnGap = 4 * length.Millimetre

// texts are the lines above a part of a block; of names another part. Only the
// first part has the table.
func (p *stackPart) texts(say message.Language, of func(col int) message.Message) []headLine {
	name := p.block.name
	if p.t.cols > 1 {
		name = message.New("%v. Part %v of %v from the left", name, p.col+1, p.t.cols)
	}
	var lines []headLine
	if !p.block.spread.stop.Empty() {
		lines = append(lines, headLine{p.block.spread.stop, lettering.Medium, true})
	}
	lines = append(lines, headLine{name, lettering.Small, true})
	if p.col > 0 && p.block.spread.onLine { // the table stands above the first part
		var boards []string
		for _, r := range p.block.lines.rows {
			boards = append(boards, r[0])
		}
		lines = append(lines, headLine{said(strings.Join(boards, "; ")), lettering.Small, false})
	}
	for _, b := range p.untold {
		lines = append(lines, headLine{said(p.block.spread.told(b, say)), holeLetters, false})
	}
	if p.ends() {
		at := p.pieces[0].mark + p.pieces[1].mark // one of them is none
		return append(lines, headLine{message.New("Draw a mark across each pencil line %v from the front edge. Lay the end with the front edge on that edge, the other end on the mark, both on the pencil line.", at.Abs()), lettering.Small, false})
	}
	if p.t.cols == 1 {
		return lines
	}
	var joins message.Message
	if p.col > 0 {
		joins = message.New("Cut along the dashed line and lay it over %v, cross on cross.", of(p.col-1))
	}
	if p.col+1 < p.t.cols {
		under := message.New("Its right end lies under %v, cross on cross.", of(p.col+1))
		if joins = message.New("%v %v", joins, under); p.col == 0 {
			joins = under
		}
	}
	return append(lines, headLine{joins, lettering.Small, false})
}

// textWidth is what the small map leaves.
func (p *stackPart) textWidth(width length.Length) length.Length {
	if p.block.sketch.Empty() || p.col > 0 {
		return width
	}
	return width - mapWidth - mm(3)
}

func (s *stack) textHeight(p stackPart, width length.Length) length.Length {
	d := s.blank()
	high := mm(1)
	width = p.textWidth(width)
	for _, l := range p.texts(s.o.Say, func(int) message.Message { return message.New("part %v on page %v", 88, 888) }) {
		high += d.heightOf(width, l.size, l.bold, l.say)
	}
	if p.col == 0 {
		high += p.block.lines.write(d, plane.R(0, 0, width, 0), false)
	}
	if !p.block.sketch.Empty() && p.col == 0 {
		high = max(high, mapHeight+mm(2))
	}
	return high
}

// write writes what stands above a part at the top of its area.
func (s *stack) write(d *draft, area plane.Rect, p *stackPart, of func(col int) message.Message) {
	y, width := area.Max.Y, p.textWidth(area.Width())
	for _, l := range p.texts(s.o.Say, of) {
		y = d.paragraph(area.Min.X, y, width, l.size, l.bold, l.say)
	}
	if p.col > 0 {
		return
	}
	p.block.lines.write(d, plane.R(area.Min.X, 0, area.Min.X+width, y), true)
	if width < area.Width() {
		box := plane.R(area.Max.X-mapWidth, area.Max.Y-mapHeight, area.Max.X, area.Max.Y)
		d.smallMap(box, p.block.sketch, p.block.spread.bores, p.block.spread.region, nil)
	}
}

// write writes the table, or only measures it, its top at the top of the area,
// and gives its height. The last column takes what the others leave.
func (l pencilLines) write(d *draft, area plane.Rect, draw bool) length.Length {
	y := area.Max.Y
	if !l.only.Empty() {
		if draw {
			d.paragraph(area.Min.X, y, area.Width(), lettering.Small, false, l.only)
		}
		return d.heightOf(area.Width(), lettering.Small, false, l.only)
	}
	y -= mm(1)
	widths := l.widths(d, area.Width())
	row := func(cells []string, bold bool) {
		left, low := area.Min.X, y
		for i, c := range cells {
			lines := d.wraps.wrap(c, lettering.Small, bold, widths[i]-columnGap)
			if draw {
				d.lines(left, y, lettering.Small, bold, lines)
			}
			low = min(low, y-length.Length(len(lines))*lettering.Pitch(lettering.Small))
			left += widths[i]
		}
		y = low
	}
	var heads []string
	for _, h := range l.heads {
		heads = append(heads, d.say.Say(h))
	}
	row(heads, true)
	if draw {
		d.line(drawing.Frame, area.Min.X, y+mm(1)/2, area.Max.X, y+mm(1)/2)
	}
	y -= mm(1)
	for _, r := range l.rows {
		row(r, false)
	}
	return area.Max.Y - y
}

// widths gives each column but the last what its longest cell takes, at most
// half of what is left.
func (l pencilLines) widths(d *draft, width length.Length) []length.Length {
	widths := make([]length.Length, len(l.heads))
	for i := range l.heads {
		if i+1 == len(l.heads) {
			widths[i] = width
			break
		}
		widest := lettering.Width(d.say.Say(l.heads[i]), lettering.Small, true)
		for _, r := range l.rows {
			widest = max(widest, lettering.Width(r[i], lettering.Small, false))
		}
		widths[i] = min(widest+columnGap+1, width/2)
		width -= widths[i]
	}
	return widths
}
