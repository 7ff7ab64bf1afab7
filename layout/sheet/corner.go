package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet/lettering"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Sizes of a corner template.
const (
	tab        = 8 * length.Millimetre  // paper past an edge, to fold over it
	labelWidth = 44 * length.Millimetre // least room for a hole's label
	cellGap    = 8 * length.Millimetre  // between two templates on one sheet
	labelGap   = 4 * length.Millimetre  // from a hole's circle to its label
	closeChain = 22 * length.Millimetre // edge distance from which dimensions fit beside the edge
)

// corner is the template of the holes near one side edge: the holes lowest
// first, in the rear frame.
type corner struct {
	of    group
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
				all = append(all, corner{g, side, of})
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

func (c corner) leastWidth() length.Length { return tab + c.edge() + labelGap + labelWidth }

func (c corner) lowest() length.Length  { return c.bores[0].whole().Min.Y }
func (c corner) highest() length.Length { return c.bores[len(c.bores)-1].whole().Max.Y }

// below is how far the template reaches below the bottom edge.
func (c corner) below() length.Length { return max(tab, mm(2)-c.lowest()) }

// title is what the template says of itself.
func (c corner) title(say message.Language, width length.Length) []titleLine {
	var lines []titleLine
	add := func(m message.Message, size length.Length, bold bool) {
		for _, s := range lettering.Wrap(say.Say(m), size, bold, width) {
			lines = append(lines, titleLine{s, size, bold})
		}
	}
	add(sideInRoom(c.side), lettering.Small, true)
	add(message.New("REAR FACE"), lettering.Small, true)
	add(c.of.names(), lettering.Small, false)
	return lines
}

type titleLine struct {
	text string
	size length.Length
	bold bool
}

const mapHeight = 13 * length.Millimetre

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
	labels   []holeLabel
	title    []titleLine
	titleTop length.Length
	dimLine  length.Length // of the edge distance
	top      length.Length
}

func (m measured) height() length.Length { return m.below() + m.top }

type holeLabel struct {
	top   length.Length
	lines []string
}

func (h holeLabel) bottom() length.Length {
	return h.top - length.Length(len(h.lines))*lettering.Pitch(lettering.Tiny)
}

// textWidth is the width of labels and title: what is left inwards of the
// holes.
func (m measured) textWidth() length.Length {
	w := m.width - tab - m.edge() - labelGap
	if m.edge() < closeChain {
		w -= mm(14) // the chain of heights stands at the inner end
	}
	return w
}

func measure(c corner, width length.Length, say message.Language) measured {
	m := measured{corner: c, width: width}
	f := c.of.first()
	floor := length.Length(0)
	for _, b := range c.bores {
		l := holeLabel{lines: lettering.Wrap(say.Say(b.drilling()), lettering.Tiny, true, m.textWidth())}
		place := message.New("%v from the side edge, %v from the bottom edge", fromSide(f, b), b.at.Y)
		l.lines = append(l.lines, lettering.Wrap(say.Say(place), lettering.Tiny, false, m.textWidth())...)
		half := length.Length(len(l.lines)) * lettering.Pitch(lettering.Tiny) / 2
		l.top = max(b.at.Y+half, floor+2*half)
		floor = l.top + mm(1)/2
		m.labels = append(m.labels, l)
	}
	m.dimLine = c.highest() + mm(5)
	m.top = max(m.dimLine+mm(8), m.labels[len(m.labels)-1].top)
	m.title = c.title(say, m.textWidth())
	m.titleTop = m.roomForTitle()
	m.top = max(m.top, m.titleTop+mm(2))
	return m
}

// roomForTitle looks for a gap between the labels, from the bottom edge up, and
// gives the height at which the title begins; above everything where there is
// none.
func (m measured) roomForTitle() length.Length {
	need := titleHeight(m.title) + mm(2)
	floor := length.Length(0)
	for _, l := range m.labels {
		if l.bottom()-floor >= need {
			return l.bottom() - mm(2)
		}
		floor = l.top
	}
	return max(m.top, floor) + need
}

// draw puts the template on the page, its lower left corner at the given place.
func (m measured) draw(d *draft, left, bottom length.Length) {
	f := m.of.first()
	edgeY := bottom + m.below()
	clip := plane.R(left, bottom, left+m.width, bottom+m.height())
	origin, at := plane.Point{}, plane.Point{X: left + tab, Y: edgeY}
	in := func(u length.Length) length.Length { return left + tab + u }
	if m.side == plan.Left {
		origin = plane.Point{X: f.Face.Width()}
		at.X = left + m.width - tab
		in = func(u length.Length) length.Length { return left + m.width - tab - u }
	}
	d.place(Placed{Drawing: rearPanel(f), Origin: origin, At: at, ScaleNum: 1, ScaleDen: 1, Clip: clip})
	m.edges(d, left, edgeY, in)
	m.dimensions(d, edgeY, in)
	textLeft := in(m.edge() + labelGap)
	if m.side == plan.Left {
		textLeft -= m.textWidth()
	}
	for _, l := range m.labels {
		d.lines(textLeft, edgeY+l.top, lettering.Tiny, true, l.lines[:1])
		d.lines(textLeft, edgeY+l.top-lettering.Pitch(lettering.Tiny), lettering.Tiny, false, l.lines[1:])
	}
	y := edgeY + m.titleTop
	for _, l := range m.title {
		y = d.lines(textLeft, y, l.size, l.bold, []string{l.text})
	}
	shown := plane.R(0, 0, min(m.width-tab, f.Face.Width()), min(m.top, f.Face.Height()))
	if m.side == plan.Left {
		shown = shown.Move(plane.Point{X: f.Face.Width() - shown.Width()})
	}
	d.smallMap(plane.R(textLeft, y-mapHeight, textLeft+m.textWidth(), y-mm(1)), f.Blind(), rearBores(f), shown, nil)
}

// edges says what the two lines to register on are.
func (m measured) edges(d *draft, left, edgeY length.Length, in func(length.Length) length.Length) {
	d.text(plane.Point{X: left + m.width/2, Y: edgeY - mm(2)}, drawing.TopCentre, lettering.Tiny, true,
		d.say.Say(message.New("▲ BOTTOM EDGE of the front ▲  fold along the line")))
	side, anchor := message.New("← side edge: fold along the line"), drawing.TopLeft
	if m.side == plan.Left {
		side, anchor = message.New("side edge: fold along the line →"), drawing.TopRight
	}
	d.text(plane.Point{X: in(mm(2)), Y: edgeY + m.top - mm(1)}, anchor, lettering.Tiny, true, d.say.Say(side))
}

// dimensions draws the edge distance and the chain of heights.
func (m measured) dimensions(d *draft, edgeY length.Length, in func(length.Length) length.Length) {
	f := m.of.first()
	top := m.bores[len(m.bores)-1]
	d.dimension(plane.Point{X: in(0), Y: edgeY}, plane.Point{X: in(fromSide(f, top)), Y: edgeY + top.at.Y},
		false, edgeY+m.dimLine, fromSide(f, top))
	chain := in(fromSide(f, top) / 2)
	if m.edge() < closeChain {
		chain = in(m.width - tab - mm(7))
	}
	last := plane.Point{X: chain, Y: edgeY}
	for _, b := range m.bores {
		hole := plane.Point{X: in(fromSide(f, b)), Y: edgeY + b.at.Y}
		d.dimension(last, hole, true, chain, hole.Y-last.Y)
		last = hole
	}
}
