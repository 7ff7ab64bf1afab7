package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet/lettering"
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
		if s.onLine {
			text = s.d.say.Say(message.New("%v", c.X.Abs()))
		}
		at, anchor := plane.Point{X: p.X + mm(1), Y: p.Y + mm(1)}, drawing.BottomLeft
		if c.X > s.shown.Centre().X {
			at, anchor = plane.Point{X: p.X - mm(1), Y: p.Y + mm(1)}, drawing.BottomRight
		}
		s.d.text(at, anchor, lettering.Tiny, false, text)
		s.taken = append(s.taken, textArea(at, anchor, lettering.Tiny, false, text),
			plane.Rect{Min: p, Max: p}.Grow(arm))
	}
}

// edgeNames writes which edge is which where the sheet shows it.
func (s *tileSheet) edgeNames() {
	if s.onLine {
		s.lineNames()
		return
	}
	panel := s.blind.Move(s.by)
	shown := s.shown.Move(s.by)
	inside := shown.Intersect(panel)
	if inside.Empty() {
		return
	}
	centre := inside.Centre()
	if s.line != 0 { // its name keeps clear of the pencil line
		centre.X = (inside.Min.X + s.line + s.by.X) / 2
	}
	name := func(at plane.Point, a drawing.Anchor, m message.Message) {
		text := lettering.Shorten(s.d.say.Say(m), lettering.Tiny, true, inside.Width())
		s.d.text(at, a, lettering.Tiny, true, text)
		s.taken = append(s.taken, textArea(at, a, lettering.Tiny, true, text))
	}
	if shown.Min.Y < panel.Min.Y {
		name(plane.Point{X: centre.X, Y: panel.Min.Y - mm(2)}, drawing.TopCentre, message.New("▲ BOTTOM EDGE: fold here ▲"))
	}
	if shown.Max.Y > panel.Max.Y {
		name(plane.Point{X: centre.X, Y: panel.Max.Y + mm(2)}, drawing.BottomCentre, message.New("▼ top edge: fold here ▼"))
	}
	upper := inside.Max.Y - mm(3)
	if shown.Min.X < panel.Min.X {
		name(plane.Point{X: panel.Min.X + mm(2), Y: upper}, drawing.TopLeft, or(s.leftName, message.New("← side edge: fold here")))
	}
	if shown.Max.X > panel.Max.X {
		name(plane.Point{X: panel.Max.X - mm(2), Y: upper}, drawing.TopRight, or(s.rightName, message.New("side edge: fold here →")))
	}
	if s.line != 0 && s.shown.Min.X <= s.line && s.line <= s.shown.Max.X {
		name(plane.Point{X: s.line + s.by.X + mm(2), Y: inside.Min.Y + mm(4)}, drawing.BottomLeft, message.New("← pencil line"))
	}
}

// lineNames names the front edge and the pencil line of a sheet that is laid on
// those.
func (s *tileSheet) lineNames() {
	shown := s.shown.Move(s.by)
	name := func(at plane.Point, a drawing.Anchor, m message.Message) {
		text := s.d.say.Say(m)
		s.d.text(at, a, lettering.Tiny, true, text)
		s.taken = append(s.taken, textArea(at, a, lettering.Tiny, true, text))
	}
	y := shown.Max.Y - mm(2)
	switch {
	case s.datum < 0 && s.shown.Min.X < 0:
		name(plane.Point{X: s.by.X + mm(2), Y: y}, drawing.TopLeft, s.leftName)
	case s.datum > 0 && s.shown.Max.X > 0:
		name(plane.Point{X: s.by.X - mm(2), Y: y}, drawing.TopRight, s.leftName)
	}
	name(plane.Point{X: shown.Centre().X, Y: s.by.Y - mm(1)}, drawing.TopCentre, message.New("pencil line"))
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
		s.taken = append(s.taken, b.whole().Move(s.by))
	}
	if s.onLine {
		s.taken = append(s.taken, plane.R(shown.Min.X, s.by.Y, shown.Max.X, s.by.Y).Grow(mm(1)/2))
	}
	if s.line != 0 {
		x := s.line + s.by.X
		s.taken = append(s.taken, plane.R(x, shown.Min.Y, x, shown.Max.Y).Grow(mm(1)/2))
	}
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
		lines := lettering.Wrap(s.d.say.Say(b.drilling()), lettering.Tiny, true, width)
		bold := len(lines)
		lines = append(lines, lettering.Wrap(s.d.say.Say(s.place(b)), lettering.Tiny, false, width)...)
		wide := length.Length(0)
		for i, l := range lines {
			wide = max(wide, lettering.Width(l, lettering.Tiny, i < bold))
		}
		high := length.Length(len(lines)) * lettering.Pitch(lettering.Tiny)
		off := b.diameter/2 + labelGap
		for _, at := range []plane.Point{
			{X: at.X + off, Y: at.Y + high/2}, {X: at.X - off - wide, Y: at.Y + high/2},
			{X: at.X - wide/2, Y: at.Y + off + high}, {X: at.X - wide/2, Y: at.Y - off},
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

// textArea is the area that a text takes on the page.
func textArea(at plane.Point, a drawing.Anchor, size length.Length, bold bool, s string) plane.Rect {
	w := lettering.Width(s, size, bold)
	r := plane.R(at.X, at.Y, at.X+w, at.Y+size)
	switch a {
	case drawing.MiddleCentre, drawing.BottomCentre, drawing.TopCentre:
		r = r.Move(plane.Point{X: -w / 2})
	case drawing.MiddleRight, drawing.BottomRight, drawing.TopRight:
		r = r.Move(plane.Point{X: -w})
	}
	switch a {
	case drawing.MiddleLeft, drawing.MiddleCentre, drawing.MiddleRight:
		r = r.Move(plane.Point{Y: -size / 2})
	case drawing.TopLeft, drawing.TopCentre, drawing.TopRight:
		r = r.Move(plane.Point{Y: -size})
	}
	r.Min.Y -= lettering.Descent(size)
	return r
}
