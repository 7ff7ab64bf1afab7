package sheet

import (
	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Sizes of a corner template.
const (
	leastTab   = 8 * length.Millimetre  // paper past an edge, to fold over it
	labelWidth = 34 * length.Millimetre // least room for a hole's label
	cellGap    = 12 * length.Millimetre // between two templates on one sheet
	labelGap   = 4 * length.Millimetre  // from a hole's circle to its label
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
	for _, g := range groups(p, o, sameCorners) {
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

func (c corner) leastWidth() length.Length { return c.tab() + c.edge() + labelGap + labelWidth }

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
	beside   bool // the chain of heights has room between edge and holes
	compact  bool // the edge distance is written beside the holes only
	labels   []holeLabel
	title    []titleLine
	titleTop length.Length
	dimLine  length.Length // of the edge distance
	edgeTop  length.Length // of the side edge's name
	top      length.Length
}

func (m measured) height() length.Length { return m.below() + m.top }

// holeLetters is how high the figures of holes are.
const holeLetters = lettering.Medium

// from says how far a hole lies from the side edge and from the bottom edge, by
// arrows that point away from the edges.
func (c corner) from(side, bottom length.Length, say message.Language) string {
	arrow := "→"
	if c.side == plan.Left {
		arrow = "←"
	}
	return arrow + "\u00a0" + say.Figure(side) + "  ↑\u00a0" + say.Figure(bottom)
}

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

// textWidth is the width of labels and title: what is left inwards of the
// holes.
func (m measured) textWidth() length.Length {
	w := m.width - m.tab() - m.edge() - labelGap - mm(2)
	if !m.beside {
		w -= chainRoom // the chain of heights stands at the inner end
	}
	return w
}

func measure(c corner, width length.Length, say message.Language, compact bool) measured {
	m := measured{corner: c, width: width, compact: compact}
	m.beside = c.edge() >= chainRoom+mm(5)
	f := c.of.first()
	floor := length.Length(0)
	for _, b := range c.bores {
		l := holeLabel{lines: lettering.Wrap(say.Say(b.drilling()), holeLetters, true, m.textWidth())}
		l.bold = len(l.lines)
		l.lines = append(l.lines, lettering.Wrap(c.from(fromSide(f, b), b.at.Y, say), holeLetters, false, m.textWidth())...)
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
	m.dimLine = c.highest() + mm(5)
	m.edgeTop = m.dimLine + mm(7)
	if compact {
		m.edgeTop = c.highest()
		if lettering.Width(m.edgeName(say, m.edgeRoom()), lettering.Small, true) > m.edgeRoom() { // over the hole rather than on it
			m.edgeTop += lettering.Pitch(lettering.Small)
		}
	}
	if lettering.Width(m.edgeName(say, m.edgeRoom()), lettering.Small, true)+mm(3) > m.edge() { // it reaches over the labels
		m.edgeTop = max(m.edgeTop, m.labels[len(m.labels)-1].top+lettering.Pitch(lettering.Small))
	}
	if line := m.topEdge(); line > m.edgeTop-mm(4) && line < m.edgeTop+mm(5) {
		m.edgeTop = line + mm(4)
	}
	m.top = max(m.edgeTop+mm(1), m.labels[len(m.labels)-1].top)
	m.title = c.title(say, m.textWidth())
	m.titleTop = m.roomForTitle(say)
	m.top = max(m.top, m.titleTop+mm(2))
	return m
}

// topName is the room that the top edge's name takes below its line.
const topName = 5 * length.Millimetre

// topEdge is the height of the front's top edge where its line may cross what is
// written on the template, which keeps clear of it; else 0.
func (c corner) topEdge() length.Length {
	if h := c.of.first().Face.Height(); h < c.highest()+mm(80) {
		return h
	}
	return 0
}

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
	if lettering.Width(m.edgeName(say, m.edgeRoom()), lettering.Small, true)+mm(3) > m.edge() {
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
	d.place(drawing.Placed{Drawing: rearPanel(f), Origin: origin, At: at, ScaleNum: 1, ScaleDen: 1, Clip: clip})
	m.edges(d, left, edgeY, in)
	m.dimensions(d, edgeY, in)
	textLeft := in(m.edge() + labelGap)
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
	d.smallMap(plane.R(textLeft, y-mapHeight, textLeft+m.textWidth(), y-mm(1)), f.Blind(), rearBores(f), shown, nil)
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
		d.text(plane.Point{X: in(m.edge() + labelGap), Y: edgeY + line - mm(1)}, anchor, lettering.Small, true,
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
	chain := in(fromSide(f, top) / 2)
	if !m.beside {
		chain = in(m.width - m.tab() - chainRoom/2)
	}
	last := plane.Point{X: chain, Y: edgeY}
	for _, b := range m.bores {
		arm := b.whole().Width() / 2
		if m.beside {
			arm = -arm
		}
		hole := plane.Point{X: in(fromSide(f, b) + arm), Y: edgeY + b.at.Y}
		d.dimension(last, hole, true, chain, hole.Y-last.Y)
		last = hole
	}
}
