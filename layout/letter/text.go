package letter

import (
	"strings"

	"frontlay/layout/drawing"
	"frontlay/model/length"
	"frontlay/model/message"
)

// text is a text with its place, and the area in which it should stay.
type text struct {
	*drawing.Text
	at      Point
	within  Box
	lead    Point // where its line leads to, if it has one
	flag    bool
	drawing int
}

// fixed tells that a text stands where it stands.
func (t *text) fixed() bool { return t.Within.Empty() && !t.flag }

// writeFixed writes a text where it stands: one that leads to what it names only
// where nothing else is.
func (p *Picture) writeFixed(t *text) {
	s, size := p.say.Say(t.Say), p.metrics.Sizes(t.Size)[0]
	if s == "" {
		return
	}
	at := t.begin(t.at, p.metrics.Width(s, size, t.Bold), size)
	if t.Turned { // past the arrows of what it names
		at.Y += (2*p.style.Head + p.style.Gap) * (1 - 2*t.Anchor.X)
	}
	if t.Lead != nil {
		at.X += p.style.Gap * (1 - 2*t.Anchor.X)
		if b := p.ink(at, s, size, t.Bold, t.Turned); p.taken.covers(b) || p.strokes.through(b, 0) {
			p.miss(t.Tag, s, NoRoom)
			return
		}
		p.out.Leaders = append(p.out.Leaders, Stroke{t.at, t.lead})
	}
	if t.Yields && p.taken.covers(p.ink(at, s, size, t.Bold, t.Turned)) {
		p.miss(t.Tag, s, NoRoom)
		return
	}
	p.put(t.written(size, Whole), at, s)
}

func (t *text) written(size float64, v Variant) Text {
	return Text{Of: t.Tag, Mark: t.Text, Size: size, Bold: t.Bold, Turned: t.Turned, Variant: v}
}

// begin is where the base line of a text begins whose anchor is at a place.
func (t *text) begin(at Point, width, size float64) Point {
	if t.Turned {
		return Point{at.X + t.Anchor.Y*size, at.Y - t.Anchor.X*width}
	}
	return Point{at.X - t.Anchor.X*width, at.Y - t.Anchor.Y*size}
}

// attempt is one way to write a text.
type attempt struct {
	lines   []string
	variant Variant
	size    float64
}

// writeFitted writes a text in its area: near its point, beside what stands there,
// smaller, in its short form, in two lines where it is a size. What has no figure
// is cut where nothing else helps, but for the name of a part: its beginning says
// nothing.
func (p *Picture) writeFitted(t *text) {
	area := t.within
	if p.style.Edge > 0 { // what is seen of it
		area.Lo.X, area.Hi.X = max(area.Lo.X, p.area.Lo.X), min(area.Hi.X, p.area.Hi.X)
	}
	area = area.grown(-p.style.Gap, 0)
	whole := p.say.Say(t.Say)
	if whole == "" {
		return
	}
	if area.empty() || !area.overlaps(p.area) {
		p.miss(t.Tag, whole, OutOfView)
		return
	}
	tries := p.attempts(t, whole)
	avoided := []weight{faint, extending} // short rather than over a line
	if t.Level != 0 {
		avoided = []weight{firm} // the line of a level: extension lines are broken for it
	}
	for _, avoid := range avoided {
		if on, ok := p.rows[rowOf{t.drawing, t.Of.Place}]; ok && area.Lo.Y < on.y { // and rather beside a name than above it
			under := Box{area.Lo, Point{area.Hi.X, min(area.Hi.Y, on.y+on.high/2)}}
			for _, a := range tries {
				if p.stand(t, a, under, avoid) {
					return
				}
			}
		}
		for _, a := range tries {
			if p.stand(t, a, area, avoid) {
				return
			}
		}
	}
	for _, least := range []weight{hole, none} {
		for _, a := range tries {
			if p.stand(t, a, area, least) {
				return
			}
		}
		if last := tries[len(tries)-1]; !hasFigure(t.last()) && t.Meaning != drawing.Label && p.cut(t, last, area, least) {
			return
		}
	}
	p.miss(t.Tag, whole, p.reason(t, tries, area))
}

// last is the shortest form of a text.
func (t *text) last() message.Message {
	if t.Short.Empty() {
		return t.Say
	}
	return t.Short
}

// hasFigure tells that a message says a length.
func hasFigure(m message.Message) bool {
	for _, a := range m.Args {
		switch v := a.(type) {
		case length.Length:
			return true
		case message.Message:
			if hasFigure(v) {
				return true
			}
		}
	}
	return false
}

// times stands between the two figures of a size.
const times = " × "

func (p *Picture) attempts(t *text, whole string) []attempt {
	sizes := p.metrics.Sizes(t.Size)
	var all []attempt
	add := func(v Variant, lines ...string) {
		for _, s := range sizes {
			all = append(all, attempt{lines, v, s})
		}
	}
	add(Whole, whole)
	if !t.Short.Empty() {
		add(Short, p.say.Say(t.Short))
	}
	if one := p.say.Say(t.last()); hasFigure(t.last()) {
		if first, second, ok := strings.Cut(one, times); ok {
			add(Short, first+strings.TrimRight(times, " "), second)
		}
	}
	return all
}

// block measures the lines of an attempt: how wide they are, and how far their
// letters reach above the first base line and below the last.
func (p *Picture) block(t *text, a attempt) (width, above, below, pitch float64) {
	pitch = 1.6 * a.size
	for i, s := range a.lines {
		width = max(width, p.metrics.Width(s, a.size, t.Bold))
		up, down := p.metrics.Reach(s, a.size)
		if i == 0 {
			above = a.size + up
		}
		if i == len(a.lines)-1 {
			below = down
		}
	}
	return width, above, below, pitch
}

// rowsAway is how many rows a text may go up or down, in steps of stepAway heights
// of capitals.
const (
	rowsAway = 12
	stepAway = 0.6
)

// stand writes a text in its area where no other is and no line of a weight or more
// runs through it. It is false where there is no such place.
func (p *Picture) stand(t *text, a attempt, area Box, avoid weight) bool {
	width, above, below, pitch := p.block(t, a)
	if width > area.width() {
		return false
	}
	depth := pitch * float64(len(a.lines)-1)
	edge := p.style.Gap / 2
	low, high := area.Lo.Y+edge+below, area.Hi.Y-edge-above // of the last and the first base line
	if high-depth < low {
		return false
	}
	want := t.begin(t.at, width, a.size)
	want.Y = min(max(want.Y+depth*(1-t.Anchor.Y), low+depth), high)
	row, onRow := p.rows[rowOf{t.drawing, t.Of.Place}]
	ys := []float64{want.Y}
	if onRow {
		ys = append(ys, row.y-a.size/2)
	}
	for k := 1; k <= rowsAway; k++ {
		off := float64(k) * stepAway * a.size
		ys = append(ys, want.Y+off, want.Y-off)
	}
	for _, y := range ys {
		if y > high+1e-9 || y-depth < low-1e-9 {
			continue
		}
		if onRow && y != row.y-a.size/2 && y+above > row.y-row.high/2-edge && y-depth-below < row.y+row.high/2+edge {
			continue // beside a name, but not on its line
		}
		from, to := area.Lo.X, area.Hi.X
		if onRow && y == row.y-a.size/2 && row.free.from < row.free.to {
			from, to = max(from, row.free.from), min(to, row.free.to)
		}
		free := p.gaps(Box{Point{from, y - depth - below}, Point{to, y + above}}, avoid)
		if x, ok := nearest(free, want.X, width); ok {
			p.writeBlock(t, a, Point{x, y}, width, pitch)
			return true
		}
	}
	return false
}

// writeBlock writes the lines of a text, below one another with their middles in
// line.
func (p *Picture) writeBlock(t *text, a attempt, at Point, width, pitch float64) {
	w := t.written(a.size, a.variant)
	for i, s := range a.lines {
		from := Point{at.X + (width-p.metrics.Width(s, a.size, t.Bold))/2, at.Y - float64(i)*pitch}
		w.Lines = append(w.Lines, Line{from, s})
		ink := p.ink(from, s, a.size, t.Bold, false)
		if i == 0 {
			w.Box = ink
		}
		w.Box.Lo.X, w.Box.Hi.X, w.Box.Lo.Y = min(w.Box.Lo.X, ink.Lo.X), max(w.Box.Hi.X, ink.Hi.X), ink.Lo.Y
	}
	p.keep(w)
}

// cut writes the beginning of a text in the widest gap at its height.
func (p *Picture) cut(t *text, a attempt, area Box, avoid weight) bool {
	s := a.lines[0]
	_, above, below, _ := p.block(t, a)
	edge := p.style.Gap / 2
	low, high := area.Lo.Y+edge+below, area.Hi.Y-edge-above
	if high < low {
		return false
	}
	y := min(max(t.begin(t.at, 0, a.size).Y, low), high)
	g := widest(p.gaps(Box{Point{area.Lo.X, y - below}, Point{area.Hi.X, y + above}}, avoid))
	if s = p.shortened(s, a.size, t.Bold, g.to-g.from); s == "" {
		return false
	}
	width := p.metrics.Width(s, a.size, t.Bold)
	p.put(t.written(a.size, Cut), Point{g.from + (g.to-g.from-width)*t.Anchor.X, y}, s)
	return true
}

func (p *Picture) reason(t *text, tries []attempt, area Box) Reason {
	least := tries[len(tries)-1]
	width, above, below, pitch := p.block(t, least)
	switch {
	case above+below+pitch*float64(len(least.lines)-1) > area.height():
		return TooLow
	case width > area.width():
		return TooNarrow
	}
	return NoRoom
}
