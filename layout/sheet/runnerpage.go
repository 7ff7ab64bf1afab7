package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet/lettering"
	"frontlay/model/length"
	"frontlay/model/message"
)

// runnerPages makes the templates of runner screws. Each row of screws that
// recurs is one strip, laid on a pencil line, so that a whole run of cabinets
// needs only a few sheets; strips stand on a sheet one below the other.
func runnerPages(p *plan.Plan, o Options, first int) []Page {
	all := strips(p, o)
	if len(all) == 0 {
		return nil
	}
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		best := stackStrips(p, all, w, greatestEdge, o)
		best.cut()
		return best.draw(first)
	}
	best := stackStrips(p, all, w, h, o)
	if other := stackStrips(p, all, h, w, o); other.better(best) {
		best = other
	}
	return best.draw(first)
}

// stripStack says on which page each part of each strip stands.
type stripStack struct {
	o     Options
	w, h  length.Length
	head  []headLine
	parts []stripPart
	count int // of pages
}

// stripPart is what one sheet shows of a strip: its place below the body's top.
type stripPart struct {
	strip  strip
	spread spread
	t      tiling
	col    int
	page   int // from 0
	top    length.Length
	height length.Length
}

func stackStrips(p *plan.Plan, all []strip, w, h length.Length, o Options) *stripStack {
	s := &stripStack{o: o, w: w, h: h, head: warned(o, []headLine{
		{message.New("%v: runner templates 1:1, INSIDE FACE of carcass sides", title(p)), lettering.Medium, true},
		{message.New("The inside face lies up, the bottom edge towards you."), lettering.Tiny, false},
		{careful(), lettering.Tiny, false},
	})}
	body := s.body(s.blank())
	used := body.Height()
	s.count = 0
	for _, st := range all {
		sp := st.spread(o)
		t := newTiling(sp.region, plane.Point{X: body.Width(), Y: sp.region.Height()}, o.Overlap, sp.bores)
		for col := range t.cols {
			part := stripPart{strip: st, spread: sp, t: t, col: col}
			part.height = s.textHeight(part, body.Width()) + t.at(col, 0).Height()
			if used+cellGap+part.height > body.Height() {
				s.count++
				used = -cellGap
			}
			part.page, part.top = s.count-1, used+cellGap
			used += cellGap + part.height
			s.parts = append(s.parts, part)
		}
	}
	return s
}

// better tells that a stack needs fewer sheets than another, or as many with
// fewer seams.
func (s *stripStack) better(than *stripStack) bool {
	if s.count != than.count {
		return s.count < than.count
	}
	return len(s.parts) < len(than.parts)
}

// cut shortens the pages of a roll to what the strips need.
func (s *stripStack) cut() {
	d := s.blank()
	used := barLength + mm(4)
	for _, p := range s.parts {
		used = max(used, p.top+p.height)
	}
	s.h = pageHeight(d.area.Height()-s.body(d).Height()+used, s.o)
}

func (s *stripStack) blank() *draft {
	return newDraft(RunnerTemplates, RunnerTemplates.Title(), s.w, s.h, s.o)
}

func (s *stripStack) body(d *draft) plane.Rect {
	r := d.body(s.head)
	r.Max.X -= barStrip
	return r
}

// text is what stands above a part of a strip; other is the page of another part
// of it, 0 where there is none.
func (s *stripStack) text(p stripPart, other int) []headLine {
	side := message.New("front edge at the LEFT")
	if !p.strip.frontLeft {
		side = message.New("front edge at the RIGHT")
	}
	name := message.New("Runner %v long, %v", list.MakersLength{Length: p.strip.length, Sheet: p.strip.holes[0].Front.Sheet}, side)
	if p.t.cols > 1 {
		name = message.New("%v. Part %v of %v from the left, joins page %v: cut along the dashed line, lay cross on cross; at the crosses the distance to the front edge", name, p.col+1, p.t.cols, other)
	}
	return []headLine{{name, lettering.Tiny, true}, {p.spread.job, lettering.Tiny, false}}
}

func (s *stripStack) textHeight(p stripPart, width length.Length) length.Length {
	d := s.blank()
	high := mm(1)
	for _, l := range s.text(p, 888) {
		high += d.heightOf(width, l.size, l.bold, l.say)
	}
	return high
}

func (s *stripStack) draw(first int) []Page {
	var pages []Page
	for page := range s.count {
		d := s.blank()
		body := s.body(d)
		d.head(s.head, d.area.Width())
		d.foot()
		d.uprightBar(d.area.Max.X-barStrip+barTick, body.Min.Y+(body.Height()-barLength)/2)
		for i := range s.parts {
			if p := &s.parts[i]; p.page == page {
				s.drawPart(d, body, i, first)
			}
		}
		pages = append(pages, d.finish())
	}
	return pages
}

// drawPart draws one part of a strip with its words.
func (s *stripStack) drawPart(d *draft, body plane.Rect, i, first int) {
	p := &s.parts[i]
	top := body.Max.Y - p.top
	if p.top > 0 {
		d.dashed(drawing.Cut, body.Min.X, top+cellGap/2, body.Max.X, top+cellGap/2)
	}
	pageOf := func(col, row int) int {
		if j := i + col - p.col; row == 0 && col >= 0 && col < p.t.cols {
			return first + s.parts[j].page
		}
		return 0
	}
	other := max(pageOf(p.col-1, 0), pageOf(p.col+1, 0))
	y := top
	for _, l := range s.text(*p, other) {
		y = d.paragraph(body.Min.X, y, body.Width(), l.size, l.bold, l.say)
	}
	shown := p.t.at(p.col, 0)
	at := plane.Point{X: body.Min.X, Y: top - p.height}
	d.place(Placed{
		Drawing: p.spread.panel, Origin: shown.Min, At: at, ScaleNum: 1, ScaleDen: 1,
		Clip: plane.Rect{Min: at, Max: at.Add(shown.Max.Sub(shown.Min))},
	})
	sheet := tileSheet{spread: p.spread, d: d, t: p.t, col: p.col, shown: shown, by: at.Sub(shown.Min)}
	sheet.reserve()
	sheet.seams(pageOf)
	sheet.edgeNames()
	sheet.labels()
}
