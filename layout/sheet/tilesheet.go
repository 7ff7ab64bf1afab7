package sheet

import (
	"frontlay/layout/drawing"
	"frontlay/layout/letter"
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
	letters  *letter.Picture // of what the sheet shows, in millimetres on the page
	marks    []plane.Point   // registration crosses that are drawn, in the panel's frame
	counted  int             // holes that have a number
}

// newTileSheet begins what is written on a sheet that shows a part of the panel,
// whose lines and holes letters keep clear of.
func newTileSheet(s spread, d *draft, t tiling, col, row int, shown plane.Rect, at plane.Point) *tileSheet {
	by := at.Sub(shown.Min)
	on := inMM(shown.Move(by))
	l := letter.New(lettering.OnPaper{}, letter.Style{Figure: lettering.Tiny}, d.say, on)
	l.Add(s.panel, letter.Placing{At: func(q plane.Point) letter.Point {
		return letter.Point{X: (q.X + by.X).MM(), Y: (q.Y + by.Y).MM()}
	}, Clip: &on})
	return &tileSheet{spread: s, d: d, t: t, col: col, row: row, shown: shown, by: by, letters: l}
}

func inMM(r plane.Rect) letter.Box {
	return letter.Box{Lo: letter.Point{X: r.Min.X.MM(), Y: r.Min.Y.MM()}, Hi: letter.Point{X: r.Max.X.MM(), Y: r.Max.Y.MM()}}
}

// air is what letters keep from lines and holes, in millimetres.
const air = 1.0

// first gives the first of some areas of the page in which a text can stand, in an
// area and on the sheet; -1 where there is none.
func (s *tileSheet) first(in plane.Rect, areas []plane.Rect) int {
	boxes := make([]letter.Box, len(areas))
	for i, a := range areas {
		boxes[i] = inMM(a)
	}
	return s.letters.First(inMM(in.Intersect(s.shown.Move(s.by))), air, boxes)
}

// letter draws and writes what a part of a strip or a small template has, and gives the
// holes whose figures have no room beside them.
func (s *tileSheet) letter(page func(col, row int) int, mark length.Length) []counted {
	s.seams(page)
	s.mark(mark)
	untold := s.labels()
	s.edgeNames()
	s.crossTexts()
	return untold
}

// keep keeps letters off an area of the page.
func (s *tileSheet) keep(r plane.Rect) { s.letters.Keep(inMM(r.Grow(mm(1)))) }

// cut draws a line to cut the sheet along, which letters keep off.
func (s *tileSheet) cut(x1, y1, x2, y2 length.Length) {
	s.d.dashed(drawing.Cut, x1, y1, x2, y2)
	s.keep(plane.R(x1, y1, x2, y2))
}

// seams draws the registration crosses, and the lines to cut along, at the left and
// below only, so that this sheet lies on its neighbours.
func (s *tileSheet) seams(page func(col, row int) int) {
	in := s.t.inner(s.col, s.row).Move(s.by)
	if page(s.col-1, s.row) > 0 {
		s.cut(in.Min.X, s.shown.Min.Y+s.by.Y, in.Min.X, s.shown.Max.Y+s.by.Y)
	}
	if page(s.col, s.row-1) > 0 {
		s.cut(s.shown.Min.X+s.by.X, in.Min.Y, s.shown.Max.X+s.by.X, in.Min.Y)
	}
	for _, cross := range s.t.crosses(s.col, s.row) {
		if page(cross.col, cross.row) == 0 {
			continue
		}
		p := cross.at.Add(s.by)
		s.d.line(drawing.Register, p.X-crossArm, p.Y, p.X+crossArm, p.Y)
		s.d.line(drawing.Register, p.X, p.Y-crossArm, p.X, p.Y+crossArm)
		s.keep(plane.R(p.X-crossArm, p.Y, p.X+crossArm, p.Y))
		s.keep(plane.R(p.X, p.Y-crossArm, p.X, p.Y+crossArm))
		s.marks = append(s.marks, cross.at)
	}
}

// crossTexts writes the distances of registration crosses beside them, from the edge
// or line that the holes are measured from, where the sheet has room.
func (s *tileSheet) crossTexts() {
	for _, c := range s.marks {
		text := arrows(s.d.say, true, c.X-s.blind.Min.X, c.Y-s.blind.Min.Y)
		switch {
		case s.onLine:
			text = arrows(s.d.say, s.datum < 0, c.X, c.Y)
		case s.line != 0:
			text = arrows(s.d.say, c.X >= s.line, c.X-s.line, c.Y-s.blind.Min.Y)
		case s.datum > 0:
			text = arrows(s.d.say, false, s.blind.Max.X-c.X, c.Y-s.blind.Min.Y)
		}
		s.crossText(c.Add(s.by), text)
	}
}

// mark draws the upright line that an end of a strip is laid on, and says where it is.
func (s *tileSheet) mark(x length.Length) {
	if x == 0 {
		return
	}
	shown := s.shown.Move(s.by)
	on := x + s.by.X
	s.d.line(drawing.Register, on, shown.Min.Y, on, shown.Max.Y)
	s.keep(plane.R(on, shown.Min.Y, on, shown.Max.Y))
	at := upright(on+mm(2), places(shown.Max.Y-mm(2), -mm(4), 8))
	s.name(at, drawing.Anchor{Y: 1}, message.New("← mark, %v from the front edge", x.Abs()), shown)
}

// crossText writes the distances of a registration cross beside it.
func (s *tileSheet) crossText(p plane.Point, text string) {
	var anchors []drawing.Anchor
	var at []plane.Point
	var areas []plane.Rect
	for _, out := range []int64{2, 6} {
		for _, a := range []drawing.Anchor{{}, {X: 1}, {Y: 1}, {X: 1, Y: 1}} {
			q := plane.Point{X: p.X + mm(2*int64(1-2*a.X)), Y: p.Y + mm(out*int64(1-2*a.Y))}
			anchors, at, areas = append(anchors, a), append(at, q), append(areas, drawing.TextArea(q, a, lettering.Small, false, text))
		}
	}
	if i := s.first(s.shown.Move(s.by), areas); i >= 0 {
		s.d.text(at[i], anchors[i], lettering.Small, false, text)
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
	text := lettering.Shorten(s.d.say.Say(m), lettering.Small, true, room.Width())
	var areas []plane.Rect
	for _, p := range at {
		areas = append(areas, drawing.TextArea(p, a, lettering.Small, true, text))
	}
	room.Min.X, room.Max.X = room.Min.X-mm(1), room.Max.X+mm(1)
	room.Min.Y, room.Max.Y = s.shown.Min.Y+s.by.Y, s.shown.Max.Y+s.by.Y
	if i := s.first(room, areas); i >= 0 {
		s.d.text(at[i], a, lettering.Small, true, text)
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
