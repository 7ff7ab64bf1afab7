package sheet

import (
	"strconv"
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// What the drawings of a shop sheet have around them, and how wide a strip of a
// section is drawn.
const (
	shopAbove = 17 * length.Millimetre // widths and gaps
	shopBelow = 10 * length.Millimetre // the width of the carcass, names of strips
	shopRight = 8 * length.Millimetre  // half a gap
	stripWide = 14 * length.Millimetre
	stripFrom = 16 * length.Millimetre // from what is above a row of strips
)

// cut is a strip of a section, and the bays that look like that.
type cut struct{ bays []*plan.Bay }

// strips are the sections of a cabinet; bays that are the same have one.
func (s *shop) strips() []cut {
	var all []cut
	for _, equal := range gathered(s.equal[0].Bays, func(b *plan.Bay) string {
		return sameBay(s.p, b, plane.Point{X: -b.Opening.Min.X})
	}) {
		all = append(all, cut{equal})
	}
	return all
}

// name tells which bays a strip is cut through; one of several are told apart.
func (c cut) name(of *plan.Cabinet) message.Message {
	var all []string
	for _, b := range c.bays {
		all = append(all, strconv.Itoa(b.Place.Bay+1))
	}
	switch {
	case len(of.Bays) == 1:
		return message.New("section")
	case len(all) == 1:
		return message.New("bay %v", all[0])
	}
	return message.New("bays %v", strings.Join(all, ", "))
}

// shopLevel is what is told at the lower edge of a front, or at the upper of the topmost:
// above the edge and below it.
type shopLevel struct {
	y            length.Length // run frame
	above, below string
}

// levels are those of a bay from the bottom up: gaps between fronts and to the
// carcass, drops.
func (s *shop) levels(b *plan.Bay) []shopLevel {
	c := s.equal[0]
	figure := func(m string, v length.Length) string { return s.o.Say.Say(message.New(m, s.o.Say.Figure(v))) }
	around := c.Outline
	if c.Mount == model.Inset {
		around = b.Opening
	}
	var all []shopLevel
	var under *plan.Front
	for _, k := range b.Column {
		f := &s.p.Fronts[k]
		l := shopLevel{y: f.Face.Min.Y}
		if f.Fitted {
			l.above = figure("drop %v", f.Drop)
		}
		if under == nil {
			l.below = figure("bottom %v", f.Face.Min.Y-around.Min.Y)
		} else if rail := s.p.RailOver(under); !rail.Empty() {
			l.below = figure("gap %v", f.Face.Min.Y-rail.Max.Y) + ", " + figure("rail %v", rail.Height())
		} else {
			l.below = figure("gap %v", f.Face.Min.Y-under.Face.Max.Y)
		}
		all, under = append(all, l), f
	}
	return append(all, shopLevel{y: under.Face.Max.Y, above: figure("top %v", around.Max.Y-under.Face.Max.Y)})
}

// drawings draws the elevation with the sizes of fronts and gaps, and a strip of a
// section for each bay that is not like another, all in one scale: beside it or below
// it, whichever is larger.
func (s *shop) drawings(d *draft, area plane.Rect) {
	run := s.own.Extent
	if run.Empty() || area.Height() < shopAbove+shopBelow {
		return
	}
	strips := s.strips()
	each := length.Length(0)
	for _, c := range strips {
		for _, l := range s.levels(c.bays[0]) {
			each = max(each, lettering.Width(l.above, lettering.Small, false), lettering.Width(l.below, lettering.Small, false))
		}
		each = max(each, lettering.Width(s.o.Say.Say(c.name(s.equal[0])), lettering.Small, true)-stripWide)
	}
	each += stripWide + mm(6)
	n := length.Length(len(strips))
	left := area.Min.X + 2*drawing.DimensionStep // of the carcass's height
	beside := plane.R(left, area.Min.Y+shopBelow, area.Max.X-n*each-shopRight, area.Max.Y-shopAbove)
	inRow := max(int(area.Width()/each), 1)
	rows := length.Length((len(strips) + inRow - 1) / inRow)
	share := (area.Height() - shopAbove - shopBelow - rows*stripFrom) / (1 + rows)
	upper := plane.R(left, area.Max.Y-shopAbove-share, area.Max.X-shopRight, area.Max.Y-shopAbove)
	room, below := beside, false
	if perMille(run, upper) > perMille(run, beside) {
		room, below = upper, true
	}
	num := perMille(run, room)
	if num < 1 {
		return
	}
	scaled := func(l length.Length) length.Length { return l / 1000 * length.Length(num) }
	at := room.Centre().Sub(plane.Point{X: scaled(run.Width()) / 2, Y: scaled(run.Height()) / 2})
	spare := (room.Width() - scaled(run.Width())) / 3 // at the left, between, at the right
	if !below {
		at.X = room.Min.X + spare
	}
	e := elevated{d, s, plane.Point{X: at.X, Y: at.Y}, run.Min, num}
	e.draw()
	for i, c := range strips {
		x, y := area.Max.X-spare-(n-length.Length(i))*each+mm(2), at.Y
		if below {
			y = at.Y - length.Length(i/inRow+1)*(scaled(run.Height())+stripFrom)
			x = area.Min.X + length.Length(i%inRow)*each
		}
		e.strip(c, plane.Point{X: x, Y: y}, each-mm(3))
	}
}

// perMille is the scale at which a run fits into an area, in thousandths of full size,
// rounded down.
func perMille(run, area plane.Rect) int64 {
	if area.Empty() {
		return 0
	}
	return min(int64(area.Width())/max(int64(run.Width())/1000, 1), int64(area.Height())/max(int64(run.Height())/1000, 1), 1000)
}

// elevated is an elevation on a page: the run's point from lies at the page's point
// at.
type elevated struct {
	*draft
	s        *shop
	at, from plane.Point
	num      int64
}

func (e *elevated) on(p plane.Point) plane.Point {
	p = p.Sub(e.from)
	return e.at.Add(plane.Point{X: e.scaled(p.X), Y: e.scaled(p.Y)})
}

func (e *elevated) scaled(l length.Length) length.Length { return l / 1000 * length.Length(e.num) }

// handles tells that handles take no room from what is written in the middle of fronts:
// else none is drawn, rather than some.
func (e *elevated) handles() bool {
	const half = 5 * length.Millimetre // of a caption
	c := e.s.equal[0]
	for i := range e.s.p.Fronts {
		f := &e.s.p.Fronts[i]
		for _, h := range f.HandleHoles {
			if f.Place.Cabinet == c.Place.Cabinet && e.scaled((h.At.Y-f.Face.Height()/2).Abs()) < half {
				return false
			}
		}
	}
	return true
}

// draw draws the elevation: the widths of the topmost fronts and the gaps beside them
// above, carcass and plinth at the left and below.
func (e *elevated) draw() {
	own, c := e.s.own, e.s.equal[0]
	v := bare(view.Elevation(e.s.p, view.ElevationOptions{From: c.Place.Cabinet, To: c.Place.Cabinet + 1, Handles: e.handles()}))
	for i, m := range v.Marks {
		if c, ok := m.(*drawing.Caption); ok {
			own := *c
			own.Least = lettering.Small // sizes are listed beside it
			v.Marks[i] = &own
		}
	}
	e.place(drawing.Placed{Drawing: v, Origin: e.from, At: e.at, ScaleNum: e.num, ScaleDen: 1000})
	high := e.on(own.Extent.Max).Y
	var tops []*plan.Front
	for i := range c.Bays {
		if col := c.Bays[i].Column; len(col) > 0 {
			if f := &e.s.p.Fronts[col[len(col)-1]]; len(tops) == 0 || tops[len(tops)-1] != f {
				tops = append(tops, f)
			}
		}
	}
	var ends [2]length.Length // of the last figure on each of two lines
	gap := func(from, to, y length.Length) {
		figure := e.say.Figure(to - from)
		at := e.on(plane.Point{X: from + (to-from)/2, Y: y})
		half := lettering.Width(figure, lettering.Small, false)/2 + mm(1)/2
		for i := range ends {
			if at.X-half >= ends[i] {
				ends[i] = at.X + half
				up := high + mm(9) + length.Length(i)*mm(4)
				e.line(drawing.DimensionLine, at.X, at.Y, at.X, up-mm(1)/2)
				e.text(plane.Point{X: at.X, Y: up}, drawing.Anchor{X: 0.5}, lettering.Small, false, figure)
				return
			}
		}
	}
	for i, f := range tops {
		a, b := e.on(plane.Point{X: f.Face.Min.X, Y: f.Face.Max.Y}), e.on(f.Face.Max)
		e.dimension(a, b, false, high+mm(5), f.Face.Width())
		left, right := c.Outline.Min.X, c.Outline.Max.X
		if c.Mount == model.Inset {
			left, right = f.Opening.Min.X, f.Opening.Max.X
			if f.Opening.Empty() {
				left, right = c.Bays[f.Place.Bay].Opening.Min.X, c.Bays[f.Place.Bay].Opening.Max.X
			}
		} else {
			if i > 0 {
				left = tops[i-1].Face.Max.X
			}
			if i+1 < len(tops) {
				right = f.Face.Max.X // told with the next
			}
		}
		if left < f.Face.Min.X {
			gap(left, f.Face.Min.X, f.Face.Max.Y)
		}
		if f.Face.Max.X < right {
			gap(f.Face.Max.X, right, f.Face.Max.Y)
		}
	}
	low, left := e.on(own.Extent.Min).Y-mm(5), e.on(own.Extent.Min).X-drawing.DimensionStep
	o := c.Outline
	e.dimension(e.on(o.Min), e.on(plane.Point{X: o.Max.X, Y: o.Min.Y}), false, low, o.Width())
	e.dimension(e.on(o.Min), e.on(plane.Point{X: o.Min.X, Y: o.Max.Y}), true, left, o.Height())
	if up := o.Min.Y; up > 0 && own.Extent.Min.Y <= 0 { // what hangs on the wall is drawn without the floor
		e.dimension(e.on(plane.Point{X: o.Min.X}), e.on(o.Min), true, left, up)
	}
}

// bare is a drawing without its dimensions and texts; captions stay.
func bare(v *drawing.Drawing) *drawing.Drawing {
	all := &drawing.Drawing{Title: v.Title}
	for _, m := range v.Marks {
		switch m.(type) {
		case *drawing.Dimension, *drawing.Text:
		default:
			all.Add(m)
		}
	}
	return all
}

// strip draws the front part of a section with its lower left corner at a point: the
// drop of each front over the line of its lower edge, the gap to what is below it
// under that line.
func (e *elevated) strip(c cut, at plane.Point, width length.Length) {
	b := c.bays[0]
	near := length.Length(0)
	for _, k := range b.Column {
		n, _ := e.s.p.Fronts[k].Board()
		near = min(near, n)
	}
	v := bare(view.Section(e.s.p, b.Place))
	y := func(v length.Length) length.Length { return at.Y + e.scaled(v-e.from.Y) }
	high := y(e.s.own.Extent.Max.Y)
	e.place(drawing.Placed{
		Drawing: v, Origin: plane.Point{X: near, Y: e.from.Y}, At: at, ScaleNum: e.num, ScaleDen: 1000,
		Clip: plane.R(at.X-mm(1), at.Y-mm(1), at.X+stripWide, high+mm(1)),
	})
	e.dashed(drawing.Frame, at.X+stripWide, at.Y, at.X+stripWide, high)
	levels := e.s.levels(b)
	x := at.X + stripWide + mm(1)
	const line = 38 * length.Millimetre / 10 // what a text takes with its distance from the edge
	for i, l := range levels {
		here := y(l.y)
		e.line(drawing.DimensionLine, x-mm(1), here, at.X+width, here)
		over, under := 3*line, 3*line
		if i+1 < len(levels) {
			over = y(levels[i+1].y) - here
		}
		if i > 0 {
			under = here - y(levels[i-1].y)
		}
		if over >= 2*line || i+1 == len(levels) {
			e.text(plane.Point{X: x, Y: here + mm(1)}, drawing.Anchor{}, lettering.Small, false, l.above)
		}
		if under >= line+mm(1) {
			e.text(plane.Point{X: x, Y: here - mm(6)/10}, drawing.Anchor{Y: 1}, lettering.Small, false, l.below)
		}
	}
	e.text(plane.Point{X: at.X, Y: at.Y - mm(6)}, drawing.Anchor{Y: 0.5}, lettering.Small, true, e.say.Say(c.name(e.s.equal[0])))
}

// grainArrow draws an arrow with two heads along the grain of a front around a point;
// nothing where it has none.
func (d *draft) grainArrow(at plane.Point, grain string) {
	const half, head = 22 * length.Millimetre / 10, 8 * length.Millimetre / 10
	line := func(x1, y1, x2, y2 length.Length) {
		if grain == "vertical" {
			x1, y1, x2, y2 = y1, x1, y2, x2
		}
		d.line(drawing.Face, at.X+x1, at.Y+y1, at.X+x2, at.Y+y2)
	}
	if grain == "" {
		return
	}
	line(-half, 0, half, 0)
	for _, end := range []length.Length{-1, 1} {
		line(end*half, 0, end*(half-head), head)
		line(end*half, 0, end*(half-head), -head)
	}
}
