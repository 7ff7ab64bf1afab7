package sheet

import (
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Sizes of a corner template.
const (
	leastTab   = 8 * length.Millimetre     // paper past an edge, to fold over it
	labelWidth = 34 * length.Millimetre    // least room for a hole's label
	cellGap    = 12 * length.Millimetre    // between two templates on one sheet
	labelGap   = 4 * length.Millimetre     // from a hole's circle to its label
	edgeGap    = 5 * length.Millimetre / 2 // from the side edge or a hole's cross to the labels between them
)

// corner is the template of the holes near one side edge: the holes lowest
// first, in the rear frame.
type corner struct {
	id    int
	of    group
	stop  message.Message // that it must not be drilled; empty: it may be
	side  plan.Side
	bores []bore
}

// corners gives the templates that have holes, those of one front together,
// the one that stands at the left on paper first.
func corners(p *plan.Plan, o Options) []corner {
	var all []corner
	for _, g := range cornerGroups(p, o) {
		bores := rearBores(g.first())
		for _, side := range []plan.Side{plan.Right, plan.Left} {
			if of := sides(bores, side); len(of) > 0 {
				all = append(all, corner{id: len(all), of: g, stop: o.refusal(check.Drilling, g.fronts), side: side, bores: of})
			}
		}
	}
	return all
}

// edge is the greatest distance of a hole from the side edge.
func (c corner) edge() length.Length {
	far := length.Length(0)
	for _, b := range c.bores {
		far = max(far, fromSide(c.of.first(), b)+b.diameter/2)
	}
	return far
}

// near is how far from the side edge the nearest hole's cross begins.
func (c corner) near() length.Length {
	n := c.edge()
	for _, b := range c.bores {
		n = min(n, fromSide(c.of.first(), b)-b.whole().Width()/2)
	}
	return n
}

// between tells that labels have room between side edge and holes, so that the
// template ends where the holes do.
func (c corner) between() bool { return c.near()-2*edgeGap >= labelWidth }

func (c corner) leastWidth() length.Length {
	if c.between() {
		return c.tab() + c.edge() + crossReach + mm(1)
	}
	return c.tab() + c.edge() + labelGap + labelWidth
}

// tab is how far the template reaches past the side edge: more where a hole
// does.
func (c corner) tab() length.Length {
	w := leastTab
	for _, b := range c.bores {
		w = max(w, b.whole().Width()/2-fromSide(c.of.first(), b))
	}
	return w
}

// lowest and highest are how far the holes with their crosses reach.
func (c corner) lowest() length.Length {
	y := c.bores[0].whole().Min.Y
	for _, b := range c.bores {
		y = min(y, b.whole().Min.Y)
	}
	return y
}

func (c corner) highest() length.Length {
	y := c.bores[0].whole().Max.Y
	for _, b := range c.bores {
		y = max(y, b.whole().Max.Y)
	}
	return y
}

// below is how far the template reaches below the bottom edge.
func (c corner) below() length.Length { return max(mm(5), mm(2)-c.lowest()) }

// title is what the template says of itself.
func (c corner) title(say message.Language, width length.Length) []titleLine {
	var lines []titleLine
	add := func(m message.Message, size length.Length, bold bool) {
		for _, s := range lettering.Wrap(say.Say(m), size, bold, width) {
			lines = append(lines, titleLine{s, size, bold})
		}
	}
	if !c.stop.Empty() {
		add(c.stop, lettering.Medium, true)
	}
	add(message.New("REAR FACE, %v", sideInRoom(c.side)), lettering.Small, true)
	names := lettering.Wrap(say.Say(c.of.names()), lettering.Small, false, width)
	if len(names) > 3 { // long names: their beginning is enough beside the number
		names = append(names[:2], lettering.Shorten(names[2]+" "+names[3], lettering.Small, false, width))
	}
	for _, s := range names {
		lines = append(lines, titleLine{s, lettering.Small, false})
	}
	add(c.of.sizes(say), lettering.Small, false)
	return lines
}

type titleLine struct {
	text string
	size length.Length
	bold bool
}

const mapHeight = 10 * length.Millimetre

func titleHeight(lines []titleLine) length.Length {
	h := mapHeight + mm(3)
	for _, l := range lines {
		h += lettering.Pitch(l.size)
	}
	return h
}

// measured is a corner template of a known width: where its texts go, in
// heights above the bottom edge.
type measured struct {
	corner
	width    length.Length
	chain    chainAt
	compact  bool // the edge distance is written beside the holes only
	labels   []holeLabel
	title    []titleLine
	titleTop length.Length
	dimLine  length.Length // of the edge distance
	edgeTop  length.Length // of the side edge's name
	top      length.Length
}

// chainAt says where the chain of heights stands.
type chainAt uint8

const (
	atInnerEnd chainAt = iota
	besideEdge         // between side edge and holes
	noChain            // the labels alone say the heights
)

func (m measured) height() length.Length { return m.below() + m.top }

// holeLetters is how high the figures of holes are.
const holeLetters = lettering.Medium

type holeLabel struct {
	top   length.Length
	lines []string
	bold  int // how many of them say what is drilled
}

func (h holeLabel) bottom() length.Length {
	return h.top - length.Length(len(h.lines))*lettering.Pitch(holeLetters)
}

// chainRoom is what a chain of heights takes, its line in the middle.
const chainRoom = 10 * length.Millimetre

// textFrom is how far from the side edge labels and title begin.
func (m measured) textFrom() length.Length {
	if m.between() {
		return edgeGap
	}
	return m.edge() + labelGap
}

// textWidth is the width of labels and title: what is left inwards of the holes, or
// between them and the side edge.
func (m measured) textWidth() length.Length {
	if m.between() {
		return m.near() - 2*edgeGap
	}
	w := m.width - m.tab() - m.textFrom() - mm(2)
	if m.chain == atInnerEnd {
		w -= chainRoom
	}
	return w
}

// chainPlace finds room for the chain of heights.
func (m measured) chainPlace() chainAt {
	switch {
	case m.between() && m.width-m.tab()-m.edge()-crossReach < chainRoom:
		return noChain
	case !m.between() && m.edge() >= chainRoom+mm(5):
		return besideEdge
	}
	return atInnerEnd
}

func measure(c corner, width length.Length, say message.Language, compact bool) measured {
	m := measured{corner: c, width: width, compact: compact}
	m.chain = m.chainPlace()
	f := c.of.first()
	floor := length.Length(0)
	for _, b := range c.bores {
		l := holeLabel{lines: lettering.Wrap(say.Say(b.drilling()), holeLetters, true, m.textWidth())}
		if only := c.of.only(b); !only.Empty() {
			l.lines = append(lettering.Wrap(say.Say(only), holeLetters, true, m.textWidth()), l.lines...)
		}
		l.bold = len(l.lines)
		l.lines = append(l.lines, lettering.Wrap(arrows(say, c.side == plan.Right, fromSide(f, b), b.at.Y), holeLetters, false, m.textWidth())...)
		high := length.Length(len(l.lines)) * lettering.Pitch(holeLetters)
		l.top = max(b.at.Y+high/2, floor+high)
		if line := m.topEdge(); line > 0 && l.top > line-topName && l.top-high < line+mm(1) {
			if under := line - topName; b.at.Y < line && under-high >= floor {
				l.top = under
			} else {
				l.top = line + mm(1) + high
			}
		}
		floor = l.top + mm(1)/2
		m.labels = append(m.labels, l)
	}
	labelsTop := m.labels[len(m.labels)-1].top
	m.dimLine = c.highest() + mm(5)
	if c.between() {
		m.dimLine = max(m.dimLine, labelsTop+mm(3))
	}
	m.edgeTop = m.dimLine + mm(7)
	if compact {
		m.edgeTop = c.highest()
		if lettering.Width(m.edgeName(say, m.edgeRoom()), lettering.Small, true) > m.edgeRoom() { // over the hole rather than on it
			m.edgeTop += lettering.Pitch(lettering.Small)
		}
	}
	if m.nameOverLabels(say) {
		m.edgeTop = max(m.edgeTop, labelsTop+lettering.Pitch(lettering.Small))
	}
	if line := m.topEdge(); line > m.edgeTop-mm(4) && line < m.edgeTop+mm(5) {
		m.edgeTop = line + mm(4)
	}
	m.top = max(m.edgeTop+mm(1), labelsTop)
	m.title = c.title(say, m.textWidth())
	m.titleTop = m.roomForTitle(say)
	m.top = max(m.top, m.titleTop+mm(2))
	return m
}

// nameOverLabels tells that the side edge's name reaches over the labels.
func (m measured) nameOverLabels(say message.Language) bool {
	return m.between() || lettering.Width(m.edgeName(say, m.edgeRoom()), lettering.Small, true)+mm(3) > m.edge()
}

// topName is the room that the top edge's name takes below its line.
const topName = 5 * length.Millimetre

// topEdge is the height of the front's top edge where its line may cross what is
// written on the template, which keeps clear of it; else 0, as where the template
// serves fronts of several heights and shows none.
func (c corner) topEdge() length.Length {
	if h := c.of.first().Face.Height(); c.of.sameHeight() && h < c.highest()+mm(80) {
		return h
	}
	return 0
}

// panel is the rear face of the first front; without its top edge where the others
// have theirs elsewhere.
func (c corner) panel() *drawing.Drawing {
	d := rearPanel(c.of.first())
	if r, ok := d.Marks[0].(*drawing.Rectangle); ok && !c.of.sameHeight() {
		r.Rect.Max.Y += farAbove
	}
	return d
}

// shares tells that a line between the parts of a front is at the same place from the
// corner in all fronts of the template.
func (c corner) shares(l *drawing.Line) bool {
	first := c.of.first()
	if !c.of.alike() {
		return false
	}
	if l.From.Y == l.To.Y {
		return c.of.sameHeight() || l.From.Y < first.Face.Height()/2 && first.Made.Build.Kind == model.Frame
	}
	return (c.side == plan.Left) == (l.From.X > first.Face.Width()/2) // the nearer stile's
}

// farAbove is more than any template is high.
const farAbove = 10_000 * length.Millimetre

// roomForTitle looks for a gap between the labels, from the bottom edge up, and
// gives the height at which the title begins; above everything where there is
// none.
func (m measured) roomForTitle(say message.Language) length.Length {
	need := titleHeight(m.title) + mm(3)
	floor := length.Length(0)
	line := m.topEdge()
	for _, l := range m.labels {
		ceiling := l.bottom()
		if line > floor && line-topName < ceiling { // the title crosses no edge, nor its name
			ceiling = line - topName
		}
		if ceiling-floor >= need {
			return ceiling - mm(3)
		}
		floor = l.top
	}
	if m.nameOverLabels(say) {
		floor = max(m.top, floor) // the edge's name reaches over the labels
	}
	if line > 0 && line-topName-floor < need {
		floor = max(floor, line)
	}
	return floor + need
}

// edgeRoom is how far the side edge's name may reach inwards: where it stands beside
// the highest hole, as far as that.
func (m measured) edgeRoom() length.Length {
	room := m.width - m.tab() - mm(3)
	if m.compact {
		for _, b := range m.bores {
			room = min(room, fromSide(m.of.first(), b)-b.whole().Width()/2-mm(3))
		}
	}
	return room
}

// edgeName names the side edge on the template, where it has a room.
func (c corner) edgeName(say message.Language, room length.Length) string {
	if c.side == plan.Left {
		return fitting(say, room, message.New("side edge: fold here →"), message.New("side edge →"))
	}
	return fitting(say, room, message.New("← side edge: fold here"), message.New("← side edge"))
}

// fitting says the first of two texts that has room, else the second.
func fitting(say message.Language, room length.Length, long, short message.Message) string {
	if s := say.Say(long); lettering.Width(s, lettering.Small, true) <= room {
		return s
	}
	return say.Say(short)
}

// draw puts the template on the page, its lower left corner at the given place.
func (m measured) draw(d *draft, left, bottom length.Length) {
	f := m.of.first()
	edgeY := bottom + m.below()
	clip := plane.R(left, bottom, left+m.width, bottom+m.height())
	origin, at := plane.Point{}, plane.Point{X: left + m.tab(), Y: edgeY}
	in := func(u length.Length) length.Length { return left + m.tab() + u }
	if m.side == plan.Left {
		origin = plane.Point{X: f.Face.Width()}
		at.X = left + m.width - m.tab()
		in = func(u length.Length) length.Length { return left + m.width - m.tab() - u }
	}
	d.place(drawing.Placed{Drawing: m.panel(), Origin: origin, At: at, ScaleNum: 1, ScaleDen: 1, Clip: clip})
	m.edges(d, left, edgeY, in)
	m.dimensions(d, edgeY, in)
	textLeft := in(m.textFrom())
	if m.side == plan.Left {
		textLeft -= m.textWidth()
	}
	for _, l := range m.labels {
		y := d.lines(textLeft, edgeY+l.top, holeLetters, true, l.lines[:l.bold])
		d.lines(textLeft, y, holeLetters, false, l.lines[l.bold:])
	}
	y := edgeY + m.titleTop
	for _, l := range m.title {
		y = d.lines(textLeft, y, l.size, l.bold, []string{l.text})
	}
	shown := plane.R(0, 0, min(m.width-m.tab(), f.Face.Width()), min(m.top, f.Face.Height()))
	if m.side == plan.Left {
		shown = shown.Move(plane.Point{X: f.Face.Width() - shown.Width()})
	}
	small := plane.R(textLeft, y-mapHeight, textLeft+m.textWidth(), y-mm(1))
	d.smallMap(small, f.Blind(), rearBores(f), shown, nil)
	d.joints(f, at.Sub(origin), clip, m.shares, small)
}

// edges says what the two lines to register on are.
func (m measured) edges(d *draft, left, edgeY length.Length, in func(length.Length) length.Length) {
	bottom := fitting(d.say, m.width, message.New("▲ BOTTOM EDGE of the front: fold here ▲"), message.New("▲ BOTTOM EDGE ▲"))
	d.text(plane.Point{X: left + m.width/2, Y: edgeY - mm(2)}, drawing.Anchor{X: 0.5, Y: 1}, lettering.Small, true, bottom)
	anchor := drawing.Anchor{Y: 1}
	if m.side == plan.Left {
		anchor = drawing.Anchor{X: 1, Y: 1}
	}
	if line := m.topEdge(); line > 0 && line <= m.top {
		d.text(plane.Point{X: in(m.textFrom()), Y: edgeY + line - mm(1)}, anchor, lettering.Small, true,
			fitting(d.say, m.textWidth(), message.New("TOP EDGE of the front"), message.New("TOP EDGE")))
	}
	d.text(plane.Point{X: in(mm(2)), Y: edgeY + m.edgeTop}, anchor, lettering.Small, true, m.edgeName(d.say, m.edgeRoom()))
}

// dimensions draws the edge distance and the chain of heights. Extension lines
// begin where a hole's cross ends.
func (m measured) dimensions(d *draft, edgeY length.Length, in func(length.Length) length.Length) {
	f := m.of.first()
	top := m.bores[len(m.bores)-1]
	if !m.compact {
		d.dimension(plane.Point{X: in(0), Y: edgeY}, plane.Point{X: in(fromSide(f, top)), Y: edgeY + top.whole().Max.Y},
			false, edgeY+m.dimLine, fromSide(f, top))
	}
	if m.chain == noChain {
		return
	}
	chain := in(fromSide(f, top) / 2)
	if m.chain == atInnerEnd {
		chain = in(m.width - m.tab() - chainRoom/2)
	}
	last := plane.Point{X: chain, Y: edgeY}
	for _, b := range m.bores {
		arm := b.whole().Width() / 2
		if m.chain == besideEdge {
			arm = -arm
		}
		hole := plane.Point{X: in(fromSide(f, b) + arm), Y: edgeY + b.at.Y}
		d.dimension(last, hole, true, chain, hole.Y-last.Y)
		last = hole
	}
}
