package sheet

import (
	"slices"
	"strconv"
	"strings"

	"frontlay/layout/asbuilt"
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// A box for a gap holds its target and room to write what is measured.
const (
	gapHeight = 5 * length.Millimetre
	gapBlank  = 12 * length.Millimetre // to write in
	gapPad    = 1 * length.Millimetre
)

// hangingPages are for the last step of the job: every gap with its target and a box
// for what is measured, how far each front can be moved, and the order of work. The
// run is on one page where its fronts are large enough to write on, else each cabinet
// has its own, and what is too small even there is in a table behind.
func hangingPages(p *plan.Plan, o Options) []Page {
	if len(p.Cabinets) == 0 || len(p.Gaps()) == 0 {
		return nil
	}
	built := asbuilt.Of(p)
	whole := hang(p, 0, len(p.Cabinets)-1, built, o)
	var pages []Page
	if whole.fits() || len(p.Cabinets) == 1 {
		pages = whole.pages()
	} else {
		for i := range p.Cabinets {
			if h := hang(p, i, i, built, o); len(h.gaps) > 0 {
				pages = append(pages, h.pages()...)
			}
		}
	}
	if built != nil {
		pages = append(pages, tablePages(Hanging, list.Adjusting(built, o.Say), o)...)
		pages = append(pages, tablePages(Hanging, list.AsBuiltGaps(built, o.Say), o)...)
	}
	return pages
}

// leastHanging is the height that the drawing has at least beside the order of work;
// else that is on a page behind.
const leastHanging = 55 * length.Millimetre

// hanging is one page with cabinets from one to another.
type hanging struct {
	*draft
	p      *plan.Plan
	o      Options
	placed drawing.Placed
	fronts []*plan.Front
	gaps   []plan.Gap
	built  *asbuilt.Result // what was measured, and what to do; nil: nothing
	// stepsBehind tells that the order of work has no room under the drawing.
	stepsBehind bool
}

// hang lays out the page upright or lengthwise, by the larger drawing.
func hang(p *plan.Plan, first, last int, built *asbuilt.Result, o Options) *hanging {
	w, h := o.Paper.Width, o.Paper.Height
	if o.Paper.Roll() {
		h = w * 14142 / 10000
	}
	upright, turned := layHanging(p, first, last, w, h, built, o), layHanging(p, first, last, h, w, built, o)
	if turned.placed.ScaleNum > upright.placed.ScaleNum {
		return turned
	}
	return upright
}

func layHanging(p *plan.Plan, first, last int, w, h length.Length, built *asbuilt.Result, o Options) *hanging {
	v := view.Hanging(p, first, last)
	g := &hanging{draft: newDraft(Hanging, v.Title, w, h, o), p: p, o: o, built: built}
	for i := range p.Fronts {
		if f := &p.Fronts[i]; f.Place.Cabinet >= first && f.Place.Cabinet <= last && f.Kind != model.OpenNiche {
			g.fronts = append(g.fronts, f)
		}
	}
	for _, gap := range p.Gaps() {
		if at := gap.Front.Place.Cabinet; at >= first && at <= last {
			g.gaps = append(g.gaps, gap)
		}
	}
	width := g.area.Width()
	title := message.New("%v: hanging and adjusting the fronts", o.stamp.job)
	if first == last && p.Cabinets[first].Name != "" {
		title = message.New("%v: %v", title, p.Cabinets[first].Name)
	}
	y := g.paragraph(g.area.Min.X, g.area.Max.Y, width, lettering.Medium, true, title) - mm(1)
	if !o.warn.Empty() {
		y = g.paragraph(g.area.Min.X, y, width, lettering.Small, true, o.warn) - mm(1)
	}
	y = g.paragraph(g.area.Min.X, y, width, lettering.Small, false, hangingLegend())
	if built != nil {
		y = g.paragraph(g.area.Min.X, y, width, lettering.Small, true, message.New("Measured are both ends of a gap, left | right or lower | upper. Beside such gaps the arrows tell what to move now: the left connector | the right one, then the whole front. %v", said(g.say.Sentence(built.Told()))))
	}
	if list.InInches(o.Say) {
		y = g.paragraph(g.area.Min.X, y, width, lettering.Small, false, list.Rounded())
	}
	side := g.chipWidth() / 2
	picture := plane.R(g.area.Min.X+side, g.area.Min.Y+pageNumber+gapHeight, g.area.Max.X-side, y-gapHeight)
	if steps := g.steps(0, true) + mm(4); picture.Height()-steps >= leastHanging {
		picture.Min.Y += steps
		g.steps(picture.Min.Y-gapHeight-mm(2), false)
	} else {
		g.stepsBehind = true
	}
	g.placed = asLarge(v, picture)
	return g
}

func hangingLegend() message.Message {
	return message.New("Boxes on the gaps: at the left what the gap is to be, at the right what you measure. Arrows: how far the front can be moved each way from the middle, tilt: its upper edge in and out, by its hardware sheet; “?” where the sheet does not say.")
}

// hangingSteps is the order of work (common practice, no source).
func hangingSteps() []message.Message {
	return []message.Message{
		message.New("Fix the cabinets to the wall before the first front is hung: a tall or free-standing one tips as soon as drawers are open. Look for cables and pipes first."),
		message.New("Level the carcasses and measure both diagonals of each opening: no front can be set true in one that is out of square."),
		message.New("Set every connector to the middle of its way. The maker’s instructions say how each front is hung, moved and locked; they and local codes come first."),
		message.New("Work from the bottom up: the lowest front of each bay first, by its lower edge and its sides, then the next one by the gap below it. Fronts are numbered in this order. Lift large ones with two people and lay strips as thick as the gap between them."),
		message.New("Open one drawer at a time. Measure each gap at both of its ends and write it into its box. If it is off by more than the front can be moved, look at runner and carcass before you force it."),
		message.New("Tighten what holds the fronts, load the drawers, and measure again."),
	}
}

// steps writes the order of work from its upper edge down, or only tells how high it
// is.
func (g *hanging) steps(y length.Length, measure bool) length.Length {
	const box = 35 * length.Millimetre / 10
	const indent = 11 * length.Millimetre
	width := g.area.Width() - indent
	high := length.Length(0)
	for _, m := range hangingSteps() {
		high += g.heightOf(width, lettering.Small, false, m) + mm(1)
	}
	if measure {
		return high
	}
	for i, m := range hangingSteps() {
		g.box(drawing.Carcass, plane.R(g.area.Min.X, y-box, g.area.Min.X+box, y))
		g.text(plane.Point{X: g.area.Min.X + box + mm(2), Y: y - (box-lettering.Small)/2}, drawing.Anchor{Y: 1}, lettering.Small, true, strconv.Itoa(i+1))
		y = g.paragraph(g.area.Min.X+indent, y-(box-lettering.Small)/2, width, lettering.Small, false, m) - mm(1)
	}
	return high
}

// at is where a point of the run lies on the page.
func (g *hanging) at(q plane.Point) plane.Point {
	k := func(v length.Length) length.Length {
		return length.Length(int64(v) / g.placed.ScaleDen * g.placed.ScaleNum)
	}
	return plane.Point{X: g.placed.At.X + k(q.X), Y: g.placed.At.Y + k(q.Y)}
}

// chipWidth is that of the widest box for a gap.
func (g *hanging) chipWidth() length.Length {
	widest := length.Length(0)
	for _, gap := range g.gaps {
		widest = max(widest, g.wide(gap))
	}
	return widest
}

func (g *hanging) wide(gap plan.Gap) length.Length {
	return lettering.Width(g.say.Figure(gap.Size), lettering.Small, true) + 2*gapPad + g.blank(gap)
}

// measured are the ends of a gap that were measured, as they are written into its box.
func (g *hanging) measured(gap plan.Gap) string {
	var ends []string
	for _, e := range g.built.EndsOf(gap) {
		ends = append(ends, g.say.Figure(e.Measured))
	}
	return strings.Join(ends, " | ")
}

// blank is the part of a gap's box for what is measured.
func (g *hanging) blank(gap plan.Gap) length.Length {
	return max(gapBlank, lettering.Width(g.measured(gap), lettering.Small, false)+2*gapPad)
}

// room is what the boxes around a front leave of it on the page, for its texts.
func (g *hanging) room(f *plan.Front) plane.Rect {
	lo, hi := g.at(f.Face.Min), g.at(f.Face.Max)
	return plane.R(lo.X+g.chipWidth()/2+mm(1), lo.Y+gapHeight/2+mm(1), hi.X-g.chipWidth()/2-mm(1), hi.Y-gapHeight/2-mm(1))
}

// writable tells that a front is large enough on the page to be written on.
func (g *hanging) writable(f *plan.Front) bool {
	r := g.room(f)
	return r.Height() >= max(lettering.Small, gapHeight-mm(1)) && r.Width() >= lettering.Width(g.moves(f), lettering.Small, false)
}

func (g *hanging) fits() bool {
	for _, f := range g.fronts {
		if !g.writable(f) {
			return false
		}
	}
	return true
}

// moves says how far a front can be moved up and down and to the sides.
func (g *hanging) moves(f *plan.Front) string {
	if m := g.built.At(f); m != nil {
		return g.toMove(m)
	}
	switch f.Kind {
	case model.Door:
		return g.say.Say(message.New("door"))
	case model.DrawerFront:
	default:
		return g.say.Say(message.New("fixed"))
	}
	bare := func(v length.Length) string { return list.MakersLength{Length: v, Sheet: f.Sheet}.Own(g.say) }
	say := func(v length.Length) string {
		if v <= 0 {
			return "?"
		}
		return "±" + bare(v)
	}
	var c model.ConnectorFigures
	if f.Fitted {
		c = f.Sheet.Connector
	}
	upright := "↕ " + say(c.AdjustUp)
	if c.Down() != c.AdjustUp {
		upright = "↑ " + bare(c.AdjustUp) + "  ↓ " + bare(c.AdjustDown)
	}
	tilt := ""
	if c.AdjustTilt > 0 {
		tilt = "  " + g.say.Say(message.New("tilt")) + " " + say(c.AdjustTilt)
	}
	return upright + "  ←→ " + say(c.AdjustSide) + tilt
}

// toMove says how a front is to be moved, in arrows: its left and its right connector, then
// the whole front.
func (g *hanging) toMove(m *asbuilt.Move) string {
	arrow := func(v length.Length, on, back string) string {
		if v < 0 {
			return back + " " + g.say.Figure(asbuilt.Shown(-v))
		}
		return on + " " + g.say.Figure(asbuilt.Shown(v))
	}
	var all []string
	if m.Left != 0 || m.Right != 0 {
		all = append(all, arrow(m.Left, "↑", "↓")+" | "+arrow(m.Right, "↑", "↓"))
	}
	if m.Aside != 0 {
		all = append(all, arrow(m.Aside, "→", "←"))
	}
	return strings.Join(all, "  ")
}

// pages draws what is written on the drawing, and behind it the table of what has no
// room there.
func (g *hanging) pages() []Page {
	g.place(g.placed)
	var small []*plan.Front
	var taken []plane.Rect
	for _, f := range g.fronts {
		// Those of a stack that does not add up lie over others; the box of a front that
		// reaches far past an edge lies on the front.
		boxes, room := g.boxes(f), g.room(f)
		own := append(boxes, room)
		if !g.writable(f) || slices.ContainsFunc(boxes, room.Overlaps) || slices.ContainsFunc(own, func(r plane.Rect) bool { return slices.ContainsFunc(taken, r.Overlaps) }) {
			small = append(small, f)
			continue
		}
		taken = append(taken, own...)
		g.front(f)
	}
	for _, gap := range g.gaps {
		if !slices.Contains(small, gap.Front) {
			g.gap(gap)
		}
	}
	for _, f := range small {
		g.number(f, taken)
	}
	pages := []Page{g.finish()}
	if g.stepsBehind {
		t := list.Table{Title: g.say.Say(message.New("Order of work")), Columns: []list.Column{{Weight: 0.5}, {Weight: 14}}}
		for _, m := range hangingSteps() {
			t.Rows = append(t.Rows, list.Row{Cells: []string{"□", g.say.Say(m)}})
		}
		pages = append(pages, tablePages(Hanging, t, g.o)...)
	}
	if len(small) > 0 {
		pages = append(pages, tablePages(Hanging, g.table(small), g.o)...)
	}
	return pages
}

// number writes the number of a front that is too small for more where nothing of
// another lies; its gaps are in the table.
func (g *hanging) number(f *plan.Front, taken []plane.Rect) {
	face := plane.Rect{Min: g.at(f.Face.Min), Max: g.at(f.Face.Max)}
	s := strconv.Itoa(f.Number)
	for _, part := range []length.Length{2, 1, 3} { // in quarters of its width
		at := plane.Point{X: face.Min.X + face.Width()*part/4, Y: face.Centre().Y}
		area := drawing.TextArea(at, drawing.Anchor{X: 0.5, Y: 0.5}, lettering.Small, true, s)
		if area.Intersect(face) == area && !slices.ContainsFunc(taken, area.Overlaps) {
			g.text(at, drawing.Anchor{X: 0.5, Y: 0.5}, lettering.Small, true, s)
			return
		}
	}
}

// front writes a front's number and name, how far it can be moved, and its weight,
// as far as there is room.
func (g *hanging) front(f *plan.Front) {
	r := g.room(f)
	number := strconv.Itoa(f.Number)
	name := number
	if f.Named() {
		name = lettering.Shorten(number+"  "+f.Name, lettering.Small, true, r.Width())
	}
	if g.o.refused[forbidden{check.Drilling, f.Number}] {
		name = lettering.Shorten(number+"  "+g.say.Say(message.New("see Findings")), lettering.Small, true, r.Width())
	}
	type line struct {
		text string
		bold bool
	}
	moves := g.moves(f)
	lines := []line{{name, true}, {moves, false}}
	if kg := f.WeightKg(); kg > 0 {
		lines = append(lines, line{message.Kilograms(kg).Rounded(g.say), false})
	}
	high := func() length.Length {
		return length.Length(len(lines)-1)*lettering.Pitch(lettering.Small) + lettering.Small
	}
	for len(lines) > 1 && high() > r.Height() {
		lines = lines[:len(lines)-1]
	}
	if len(lines) == 1 { // what is acted upon counts for more than a name
		lines[0] = line{moves, false}
		if both := number + "   " + moves; lettering.Width(both, lettering.Small, true) <= r.Width() {
			lines[0] = line{both, true}
		}
	}
	y := r.Centre().Y + high()/2
	for _, l := range lines {
		g.text(plane.Point{X: r.Centre().X, Y: y}, drawing.Anchor{X: 0.5, Y: 1}, lettering.Small, l.bold, l.text)
		y -= lettering.Pitch(lettering.Small)
	}
}

// boxes are where the gaps of a front are written.
func (g *hanging) boxes(f *plan.Front) []plane.Rect {
	var all []plane.Rect
	for _, gap := range g.gaps {
		if gap.Front == f {
			all = append(all, g.boxOf(gap))
		}
	}
	return all
}

// boxOf is where a gap is written.
func (g *hanging) boxOf(gap plan.Gap) plane.Rect {
	at, wide := g.at(gap.At), g.wide(gap)
	// A gap to the neighbour on another page can lie a little outside of the drawing.
	at.X = min(max(at.X, g.area.Min.X+wide/2), g.area.Max.X-wide/2)
	return plane.R(at.X-wide/2, at.Y-gapHeight/2, at.X+wide/2, at.Y+gapHeight/2)
}

// gap draws the box of a gap over it.
func (g *hanging) gap(gap plan.Gap) {
	r := g.boxOf(gap)
	g.own.Add(&drawing.Rectangle{Tag: drawing.Tag{Meaning: drawing.Register}, Rect: r, Filled: true})
	x := r.Max.X - g.blank(gap)
	g.line(drawing.Register, x, r.Min.Y, x, r.Max.Y)
	g.text(plane.Point{X: (r.Min.X + x) / 2, Y: r.Centre().Y}, drawing.Anchor{X: 0.5, Y: 0.5}, lettering.Small, true, g.say.Figure(gap.Size))
	if ends := g.measured(gap); ends != "" {
		g.text(plane.Point{X: (x + r.Max.X) / 2, Y: r.Centre().Y}, drawing.Anchor{X: 0.5, Y: 0.5}, lettering.Small, false, ends)
	}
}

// table is of the fronts that are too small to be written on, or whose gaps are too near to others.
func (g *hanging) table(fronts []*plan.Front) list.Table {
	head := func(m string) string { return g.say.Say(message.New(m)) }
	t := list.Table{
		Name: "hanging", Title: head("Gaps of the fronts that are too small to be written on"),
		Intro: []string{g.say.Say(message.New("Sizes in %v.", list.UnitWord(g.say.Unit)))},
		Columns: []list.Column{
			{Head: head("Front"), Weight: 3}, {Head: head("Adjusts"), Weight: 3}, {Head: head("Gap"), Weight: 2}, {Head: head("Target"), Weight: 1, Right: true}, {Head: head("Measured"), Weight: 2},
		},
	}
	for _, f := range fronts {
		first := true
		for _, gap := range g.gaps {
			if gap.Front != f {
				continue
			}
			cells := []string{"", "", g.say.Say(whichGap(f, gap)), g.say.Figure(gap.Size), "__________"}
			if first {
				cells[0], cells[1] = strconv.Itoa(f.Number)+"  "+f.Name, g.moves(f)
				first = false
			}
			t.Rows = append(t.Rows, list.Row{Cells: cells})
		}
	}
	return t
}

func whichGap(f *plan.Front, gap plan.Gap) message.Message {
	c := f.Face.Centre()
	switch {
	case gap.Vertical && gap.At.X < c.X:
		return message.New("left")
	case gap.Vertical:
		return message.New("right")
	case gap.At.Y < c.Y:
		return message.New("below")
	}
	return message.New("above")
}
