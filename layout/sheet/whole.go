package sheet

import (
	"slices"
	"strconv"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// beyond is how far a whole template reaches past the panel's edges, so that
// their lines and names are on it.
const beyond = 6 * length.Millimetre

// wholePages makes the templates of whole fronts, one after the other.
func wholePages(p *plan.Plan, o Options, first int) []Page {
	var pages []Page
	for _, g := range groups(p, o, sameWhole) {
		f := g.first()
		s := spread{
			kind:   WholeTemplates,
			title:  g.names(),
			stop:   o.refusal(check.Drilling, g.fronts),
			what:   message.New("Whole-front template 1:1, REAR FACE. %v", g.names()),
			job:    message.New("%v. The front is %v wide and %v high.", title(p), f.Face.Width(), f.Face.Height()),
			how:    fromEdges(),
			lies:   faceDown(),
			panel:  rearPanel(f),
			blind:  f.Blind(),
			region: f.Blind().Grow(beyond),
			bores:  rearBores(f),
			of:     f,
			takes:  func(*drawing.Line) bool { return g.alike() },
			place:  func(b bore) string { return arrows(o.Say, b.side == plan.Right, fromSide(f, b), b.at.Y) },
		}
		for _, b := range s.bores {
			s.region = s.region.Union(b.whole()) // a hole past the edge is a finding, and still shown
		}
		pages = append(pages, s.pages(o, first+len(pages))...)
	}
	return pages
}

// tileCorner spreads a corner template over several sheets.
func tileCorner(c corner, o Options, first int) []Page {
	return cornerSpread(c, o).pages(o, first)
}

func cornerSpread(c corner, o Options) spread {
	f := c.of.first()
	region := plane.R(-beyond, -beyond, c.edge()+labelGap+labelWidth, c.highest()+beyond)
	if c.side == plan.Left {
		region = plane.R(f.Face.Width()-region.Max.X, region.Min.Y, f.Face.Width()+beyond, region.Max.Y)
	}
	for _, b := range c.bores {
		region = region.Union(b.whole())
	}
	return spread{
		kind:   CornerTemplates,
		title:  c.of.names(),
		stop:   c.stop,
		what:   message.New("Drilling template 1:1, REAR FACE, %v. %v. %v", sideInRoom(c.side), c.of.names(), c.of.sizes(o.Say)),
		job:    message.New("The holes near one side edge of the front."),
		how:    fromEdges(),
		lies:   faceDown(),
		panel:  c.panel(),
		blind:  f.Blind(),
		region: region,
		bores:  c.bores,
		of:     f,
		takes:  c.shares,
		place: func(b bore) string {
			return joined(arrows(o.Say, b.side == plan.Right, fromSide(f, b), b.at.Y), o.Say.Say(c.of.only(b)))
		},
	}
}

// spread is a panel that is shown at 1:1 on as many sheets as it needs.
type spread struct {
	kind            Part
	title           message.Message
	what, job, lies message.Message
	how             message.Message // what the arrows at holes and crosses mean
	stop            message.Message // that it must not be drilled; empty: it may be
	panel           *drawing.Drawing
	blind           plane.Rect // the panel's edges in its drilling frame
	region          plane.Rect // what is shown
	bores           []bore
	place           func(bore) string // how a hole is measured from the edges
	of              *plan.Front       // whose parts have lines between them; nil: no front's
	takes           func(*drawing.Line) bool

	o         Options         // of the job; pages and sheets set it
	datum     int             // sheets join as far as the left edge (−1), the right (1) or the nearer (0)
	keepAll   bool            // print every tile
	line      length.Length   // x of a pencil line to lay the sheet on; 0: none
	twice     bool            // laid on that line, and on one as far from the other side edge
	onLine    bool            // laid on a front edge at x = 0 and a pencil line at y = 0, not on a panel
	leftName  message.Message // of the left and right edges; empty: side edge
	rightName message.Message
}

// pages lays the spread out on what needs fewer sheets.
func (s spread) pages(o Options, first int) []Page {
	s.o = o
	if o.Paper.Roll() {
		w, h := s.onRoll(o)
		return s.on(w, h, o, first)
	}
	w, h := s.best(o)
	return s.on(w, h, o, first)
}

// best gives the way to lay the paper that needs fewer sheets, upright where
// both are equal.
func (s spread) best(o Options) (w, h length.Length) {
	w, h = o.Paper.Width, o.Paper.Height
	if s.count(h, w, o) < s.count(w, h, o) {
		return h, w
	}
	return w, h
}

// count is how many sheets of a size the spread needs.
func (s spread) count(w, h length.Length, o Options) int {
	n := 0
	_, need := s.tiles(w, h, o)
	for _, is := range need {
		if is {
			n++
		}
	}
	return n
}

// sheets is how many sheets the spread needs at best.
func (s spread) sheets(o Options) int {
	s.o = o
	if o.Paper.Roll() {
		w, h := s.onRoll(o)
		return s.count(w, h, o)
	}
	w, h := s.best(o)
	return s.count(w, h, o)
}

// tiles cuts the region for sheets of a size and tells which are printed.
func (s spread) tiles(w, h length.Length, o Options) (tiling, []bool) {
	body := s.body(newDraft(s.kind, s.title, w, h, o))
	t := s.tiling(plane.Point{X: body.Width(), Y: max(body.Height(), mm(20))}, o)
	need := t.needed(s.bores, s.datum)
	for i := range need {
		need[i] = need[i] || s.keepAll
	}
	return t, need
}

// tiling cuts the region into tiles of at most a size.
func (s spread) tiling(most plane.Point, o Options) tiling {
	t := newTiling(s.region, most, o.Overlap, s.bores)
	if s.onLine {
		t.keep = append(t.keep, plane.R(s.region.Min.X, 0, s.region.Max.X, 0), plane.R(0, s.region.Min.Y, 0, s.region.Max.Y))
		return t
	}
	if s.line != 0 {
		t.keep = append(t.keep, plane.R(s.line, s.region.Min.Y, s.line, s.region.Max.Y))
	}
	b := s.blind
	t.keep = append(t.keep, plane.R(b.Min.X, b.Min.Y, b.Max.X, b.Min.Y), plane.R(b.Min.X, b.Max.Y, b.Max.X, b.Max.Y),
		plane.R(b.Min.X, b.Min.Y, b.Min.X, b.Max.Y), plane.R(b.Max.X, b.Min.Y, b.Max.X, b.Max.Y))
	return t
}

// onRoll gives the size of the piece of a roll that holds the whole region:
// across the roll where the region is narrow enough, else along it, else as
// wide as the roll is.
func (s spread) onRoll(o Options) (w, h length.Length) {
	roll := o.Paper.Width
	width := s.region.Width() + barStrip
	upright := min(o.alongRoll(s.inside(roll, mm(1000), o)), greatestEdge)
	if o.acrossRoll(width) <= roll {
		return roll, upright
	}
	long := min(o.alongRoll(width), greatestEdge)
	if o.acrossRoll(s.inside(long, roll, o)) <= roll {
		return long, roll
	}
	return roll, upright
}

// inside is the height that a page must have between its margins, which depends
// on its width, for the region's height.
func (s spread) inside(w, h length.Length, o Options) length.Length {
	d := newDraft(s.kind, s.title, w, h, o)
	return d.area.Height() - s.body(d).Height() + max(s.region.Height(), d.rule.bar+mm(4))
}

const mapWidth = 26 * length.Millimetre

func (s spread) headLines(where message.Message) []headLine {
	lines := s.o.templateHead(s.what, s.lies, headLine{s.job, lettering.Small, false})
	lines = append(lines, headLine{s.how, lettering.Small, false}, headLine{where, lettering.Small, true})
	if !s.stop.Empty() {
		lines = slices.Insert(lines, 1, headLine{s.stop, lettering.Medium, true})
	}
	return warned(s.o, lines)
}

// body is what the page leaves for the panel: under the head with the map,
// above the foot, beside the upright check bar.
func (s spread) body(d *draft) plane.Rect {
	r := d.area
	// The longest place a sheet can have, so that all sheets have the same body.
	r.Max.Y -= max(d.headHeight(s.headLines(s.where(tiling{cols: 88, rows: 88}, 44, 44, everywhere)), d.area.Width()-mapWidth-mm(3)), mm(18))
	r.Min.Y += footHeight
	r.Max.X -= barStrip
	return r
}

func everywhere(int, int) int { return 888 }

// where says which sheet of the spread this is and what it joins. page gives
// the page that shows a tile, 0 where it is not printed.
func (s spread) where(t tiling, col, row int, page func(col, row int) int) message.Message {
	if t.cols*t.rows == 1 {
		return message.New("The whole on one sheet.")
	}
	joins := 0
	at := message.New("Column %v of %v from the left, row %v of %v from the bottom.", col+1, t.cols, row+1, t.rows)
	if t.rows == 1 {
		at = message.New("Sheet %v of %v from the left.", col+1, t.cols)
	}
	for _, n := range []struct {
		col, row int
		say      string
	}{
		{col - 1, row, "%v Joins page %v at the left."}, {col + 1, row, "%v Joins page %v at the right."},
		{col, row - 1, "%v Joins page %v below."}, {col, row + 1, "%v Joins page %v above."},
	} {
		if p := page(n.col, n.row); p > 0 {
			at = message.New(n.say, at, p)
			joins++
		}
	}
	if joins == 0 {
		return message.New("%v It joins no other: the sheets beside it show no holes and are not printed.", at)
	}
	return message.New("%v Cut along the dashed line, lay cross on cross.", at)
}

// on makes the sheets of one size.
func (s spread) on(w, h length.Length, o Options, first int) []Page {
	t, need := s.tiles(w, h, o)
	number, n := make([]int, len(need)), 0
	for i, is := range need {
		if is {
			number[i] = first + n
			n++
		}
	}
	page := func(col, row int) int {
		if col < 0 || row < 0 || col >= t.cols || row >= t.rows {
			return 0
		}
		return number[row*t.cols+col]
	}
	var pages, more []Page
	for i := range need {
		if need[i] {
			page, untold := s.sheet(t, i%t.cols, i/t.cols, page, w, h, o)
			pages = append(pages, page)
			if len(untold) > 0 {
				more = append(more, s.untold(number[i], untold, o)...)
			}
		}
	}
	return append(pages, more...)
}

// untold is a table of holes that had no room on their sheet.
func (s spread) untold(page int, bores []counted, o Options) []Page {
	say := func(m message.Message) string { return o.Say.Say(m) }
	t := list.Table{Title: say(message.New("Holes of page %v", page)), Intro: []string{say(s.what), say(s.how)}, Columns: []list.Column{
		{Head: say(message.New("Hole")), Weight: 1, Right: true}, {Head: say(message.New("Drilled")), Weight: 4}, {Head: say(message.New("Place")), Weight: 4},
	}}
	for _, b := range bores {
		t.Rows = append(t.Rows, list.Row{Cells: []string{strconv.Itoa(b.number), say(b.drilling()), s.place(b.bore)}})
	}
	return tablePages(s.kind, t, o)
}

// sheet makes one sheet; untold are the holes that have no room on it for their
// figures.
func (s spread) sheet(t tiling, col, row int, page func(col, row int) int, w, h length.Length, o Options) (p Page, untold []counted) {
	d := newDraft(s.kind, s.title, w, h, o)
	body := s.body(d)
	shown := t.at(col, row)
	at := body.Min
	clip := plane.Rect{Min: at, Max: at.Add(shown.Max.Sub(shown.Min))}
	d.place(drawing.Placed{Drawing: s.panel, Origin: shown.Min, At: at, ScaleNum: 1, ScaleDen: 1, Clip: clip})

	d.head(s.headLines(s.where(t, col, row, page)), d.area.Width()-mapWidth-mm(3))
	box := plane.R(d.area.Max.X-mapWidth, body.Max.Y+mm(2), d.area.Max.X, d.area.Max.Y)
	d.smallMap(box, s.mapped(), s.bores, shown, s.missing(t, page))
	d.foot()
	d.uprightBar(d.area.Max.X-barSide, body.Min.Y+(body.Height()-d.rule.bar)/2)

	sheet := newTileSheet(s, d, t, col, row, shown, at)
	sheet.seams(page)
	untold = sheet.labels()
	if sheet.table(untold) {
		untold = nil
	}
	sheet.edgeNames()
	sheet.crossTexts()
	if s.of != nil {
		d.joints(s.of, at.Sub(shown.Min), clip, s.takes)
	}
	return d.finish(), untold
}

// missing are the tiles that are not printed.
func (s spread) missing(t tiling, page func(col, row int) int) []plane.Rect {
	var all []plane.Rect
	for row := range t.rows {
		for col := range t.cols {
			if page(col, row) == 0 {
				all = append(all, t.inner(col, row))
			}
		}
	}
	return all
}

// mapped is what the small map shows: the panel, or the region where there is
// none.
func (s spread) mapped() plane.Rect {
	if s.blind.Empty() {
		return s.region
	}
	return s.blind
}
