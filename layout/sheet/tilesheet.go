package sheet

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

// tileSheet writes on one sheet of a spread what is not the panel itself. by is
// the way from the panel's frame to the page.
type tileSheet struct {
	spread
	d        *draft
	t        tiling
	col, row int
	shown    plane.Rect
	by       plane.Point
	taken    []plane.Rect // page areas that already hold something
}

// reserve keeps the holes, the edges and the pencil line free of letters.
func (s *tileSheet) reserve() {
	shown := s.shown.Move(s.by)
	for _, b := range s.bores {
		s.taken = append(s.taken, b.whole().Move(s.by))
	}
	keep := func(r plane.Rect) { s.taken = append(s.taken, r.Grow(mm(1))) }
	if s.onLine {
		keep(plane.R(shown.Min.X, s.by.Y, shown.Max.X, s.by.Y))
		keep(plane.R(s.by.X, shown.Min.Y, s.by.X, shown.Max.Y))
	} else if e := s.blind.Move(s.by); !e.Empty() {
		keep(plane.R(e.Min.X, e.Min.Y, e.Max.X, e.Min.Y))
		keep(plane.R(e.Min.X, e.Max.Y, e.Max.X, e.Max.Y))
		keep(plane.R(e.Min.X, e.Min.Y, e.Min.X, e.Max.Y))
		keep(plane.R(e.Max.X, e.Min.Y, e.Max.X, e.Max.Y))
	}
	if s.line != 0 {
		x := s.line + s.by.X
		keep(plane.R(x, shown.Min.Y, x, shown.Max.Y))
	}
}

// seams draws the registration crosses with their distances to the datum edges,
// and the lines to cut along, at the left and below only, so that this sheet
// lies on its neighbours.
func (s *tileSheet) seams(page func(col, row int) int) {
	in := s.t.inner(s.col, s.row).Move(s.by)
	if page(s.col-1, s.row) > 0 {
		s.d.dashed(drawing.Cut, in.Min.X, s.shown.Min.Y+s.by.Y, in.Min.X, s.shown.Max.Y+s.by.Y)
	}
	if page(s.col, s.row-1) > 0 {
		s.d.dashed(drawing.Cut, s.shown.Min.X+s.by.X, in.Min.Y, s.shown.Max.X+s.by.X, in.Min.Y)
	}
	for _, cross := range s.t.crosses(s.col, s.row) {
		if page(cross.col, cross.row) == 0 {
			continue
		}
		c := cross.at
		p := c.Add(s.by)
		arm := mm(4)
		s.d.line(drawing.Register, p.X-arm, p.Y, p.X+arm, p.Y)
		s.d.line(drawing.Register, p.X, p.Y-arm, p.X, p.Y+arm)
		text := s.d.say.Say(message.New("← %v ↓ %v", c.X-s.blind.Min.X, c.Y-s.blind.Min.Y))
		switch {
		case s.onLine:
			text = s.d.say.Say(message.New("%v", c.X.Abs()))
		case s.line != 0:
			text = s.d.say.Say(message.New("%v", (c.X - s.line).Abs()))
		}
		s.taken = append(s.taken, plane.R(p.X-arm, p.Y, p.X+arm, p.Y), plane.R(p.X, p.Y-arm, p.X, p.Y+arm))
		s.crossText(p, text)
	}
}

// crossText writes the distances of a registration cross beside it, where the
// sheet has room.
func (s *tileSheet) crossText(p plane.Point, text string) {
	shown := s.shown.Move(s.by)
	for _, c := range []struct {
		at     plane.Point
		anchor drawing.Anchor
	}{
		{plane.Point{X: p.X + mm(1), Y: p.Y + mm(1)}, drawing.Anchor{}},
		{plane.Point{X: p.X - mm(1), Y: p.Y + mm(1)}, drawing.Anchor{X: 1}},
		{plane.Point{X: p.X + mm(1), Y: p.Y - mm(1)}, drawing.Anchor{Y: 1}},
		{plane.Point{X: p.X - mm(1), Y: p.Y - mm(1)}, drawing.Anchor{X: 1, Y: 1}},
	} {
		area := drawing.TextArea(c.at, c.anchor, lettering.Tiny, false, text)
		if area.Intersect(shown) != area || s.covers(area) {
			continue
		}
		s.d.text(c.at, c.anchor, lettering.Tiny, false, text)
		s.taken = append(s.taken, area)
		return
	}
}

// edgeNames writes which edge is which where the sheet shows it.
func (s *tileSheet) edgeNames() {
	shown := s.shown.Move(s.by)
	if s.onLine {
		s.lineNames(shown)
		return
	}
	panel := s.blind.Move(s.by)
	inside := shown.Intersect(panel)
	if inside.Empty() {
		return
	}
	across := places(inside.Min.X+inside.Width()/2, inside.Width()/8, 3)
	if s.line != 0 { // names keep clear of the pencil line
		across = places((inside.Min.X+s.line+s.by.X)/2, inside.Width()/8, 1)
	}
	down := places(inside.Max.Y-mm(3), -mm(4), 20)
	if shown.Min.Y < panel.Min.Y {
		s.name(level(across, panel.Min.Y-mm(2)), drawing.Anchor{X: 0.5, Y: 1}, message.New("▲ BOTTOM EDGE: fold here ▲"), inside)
	}
	if shown.Max.Y > panel.Max.Y {
		s.name(level(across, panel.Max.Y+mm(2)), drawing.Anchor{X: 0.5}, message.New("▼ top edge: fold here ▼"), inside)
	}
	if shown.Min.X < panel.Min.X {
		s.name(upright(panel.Min.X+mm(2), down), drawing.Anchor{Y: 1}, or(s.leftName, message.New("← side edge: fold here")), inside)
	}
	if shown.Max.X > panel.Max.X {
		s.name(upright(panel.Max.X-mm(2), down), drawing.Anchor{X: 1, Y: 1}, or(s.rightName, message.New("side edge: fold here →")), inside)
	}
	if s.line != 0 && s.shown.Min.X <= s.line && s.line <= s.shown.Max.X {
		s.name(upright(s.line+s.by.X+mm(2), places(inside.Min.Y+mm(4), mm(4), 20)), drawing.Anchor{}, message.New("← pencil line"), inside)
	}
}

// lineNames names the front edge and the pencil line of a sheet that is laid on
// those.
func (s *tileSheet) lineNames(shown plane.Rect) {
	down := places(shown.Max.Y-mm(2), -mm(4), 8)
	switch {
	case s.datum < 0 && s.shown.Min.X < 0:
		s.name(upright(s.by.X+mm(2), down), drawing.Anchor{Y: 1}, s.leftName, shown)
	case s.datum > 0 && s.shown.Max.X > 0:
		s.name(upright(s.by.X-mm(2), down), drawing.Anchor{X: 1, Y: 1}, s.leftName, shown)
	}
	s.name(level(places(shown.Centre().X, shown.Width()/10, 4), s.by.Y-mm(1)), drawing.Anchor{X: 0.5, Y: 1}, message.New("pencil line"), shown)
}

// name writes a name at the first of the places where it lies over nothing; not
// at all where there is none.
func (s *tileSheet) name(at []plane.Point, a drawing.Anchor, m message.Message, room plane.Rect) {
	text := lettering.Shorten(s.d.say.Say(m), lettering.Tiny, true, room.Width())
	shown := s.shown.Move(s.by)
	for _, p := range at {
		area := drawing.TextArea(p, a, lettering.Tiny, true, text)
		onSheet := area.Intersect(shown) == area && area.Min.X >= room.Min.X-mm(1) && area.Max.X <= room.Max.X+mm(1)
		if !onSheet || s.covers(area) {
			continue
		}
		s.d.text(p, a, lettering.Tiny, true, text)
		s.taken = append(s.taken, area)
		return
	}
}

// places are a first place and n others each way of it, in steps, those along
// the step first.
func places(first, step length.Length, n int) []length.Length {
	all := []length.Length{first}
	for i := 1; i <= n; i++ {
		all = append(all, first+length.Length(i)*step)
	}
	for i := 1; i <= n; i++ {
		all = append(all, first-length.Length(i)*step)
	}
	return all
}

func level(xs []length.Length, y length.Length) []plane.Point {
	var all []plane.Point
	for _, x := range xs {
		all = append(all, plane.Point{X: x, Y: y})
	}
	return all
}

func upright(x length.Length, ys []length.Length) []plane.Point {
	var all []plane.Point
	for _, y := range ys {
		all = append(all, plane.Point{X: x, Y: y})
	}
	return all
}

func or(a, b message.Message) message.Message {
	if a.Empty() {
		return b
	}
	return a
}

// labels writes beside each hole that is whole on the sheet what it is and how
// far from the edges, where there is room.
func (s *tileSheet) labels() {
	shown := s.shown.Move(s.by)
	for _, b := range s.bores {
		if w := b.whole(); w.Intersect(s.shown) != w {
			continue
		}
		s.label(b, shown)
	}
}

func (s *tileSheet) label(b bore, shown plane.Rect) {
	at := b.at.Add(s.by)
	room := []length.Length{mm(48), mm(34), mm(24)}
	for _, width := range room {
		lines := s.d.wraps.wrap(s.d.say.Say(b.drilling()), lettering.Tiny, true, width)
		bold := len(lines)
		lines = slices.Concat(lines, s.d.wraps.wrap(s.d.say.Say(s.place(b)), lettering.Tiny, false, width))
		wide := length.Length(0)
		for i, l := range lines {
			wide = max(wide, lettering.Width(l, lettering.Tiny, i < bold))
		}
		high := length.Length(len(lines)) * lettering.Pitch(lettering.Tiny)
		off := b.diameter/2 + labelGap
		for _, at := range []plane.Point{
			{X: at.X + off, Y: at.Y + high/2}, {X: at.X - off - wide, Y: at.Y + high/2},
			{X: at.X - wide/2, Y: at.Y + off + high}, {X: at.X - wide/2, Y: at.Y - off},
			{X: at.X + mm(1), Y: at.Y + off + high}, {X: at.X - mm(1) - wide, Y: at.Y + off + high},
			{X: at.X + mm(1), Y: at.Y - off}, {X: at.X - mm(1) - wide, Y: at.Y - off},
		} {
			area := plane.R(at.X, at.Y-high, at.X+wide, at.Y)
			if area.Intersect(shown) != area || s.covers(area) {
				continue
			}
			s.taken = append(s.taken, area)
			y := s.d.lines(at.X, at.Y, lettering.Tiny, true, lines[:bold])
			s.d.lines(at.X, y, lettering.Tiny, false, lines[bold:])
			return
		}
	}
}

func (s *tileSheet) covers(area plane.Rect) bool {
	for _, t := range s.taken {
		if t.Overlaps(area) {
			return true
		}
	}
	return false
}
