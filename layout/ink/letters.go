package ink

import (
	"frontlay/layout/drawing"
	"frontlay/layout/sheet/lettering"
	"frontlay/model/length"
)

// lettered is a text that waits for its turn.
type lettered struct {
	text *drawing.Text
	at   placing
}

// letters writes the texts and dimensions of the page: first the texts that have
// their place, then dimensions, then the texts that can be shortened.
func (w *writer) letters() {
	for _, t := range w.texts {
		if t.text.Within.Empty() && t.visible() {
			w.fixed(t)
		}
	}
	for _, d := range w.dimensions {
		w.dimension(d)
	}
	for _, t := range w.texts {
		if !t.text.Within.Empty() && t.visible() {
			w.within(t)
		}
	}
}

func (t lettered) visible() bool {
	return t.at.clip == nil || t.at.clip.holds(t.at.at(t.text.At))
}

func (w *writer) fixed(t lettered) {
	s := w.say.Say(t.text.Say)
	b := textBox(t.at.at(t.text.At), t.text.Anchor, t.text.Size, t.text.Bold, s)
	w.taken = append(w.taken, b)
	w.Text(b.lo, t.text.Size, t.text.Bold, inkFor(t.text.Meaning), s)
}

// within writes a text smaller or shorter where it does not fit its area or
// meets another, and leaves it out where not even that helps.
func (w *writer) within(t lettered) {
	s := w.say.Say(t.text.Say)
	lo, hi := t.at.at(t.text.Within.Min), t.at.at(t.text.Within.Max)
	gap := 1.0
	for _, size := range []length.Length{t.text.Size, lettering.Small, lettering.Tiny} {
		if size > t.text.Size || size.MM()+gap/2 > hi.Y-lo.Y {
			continue
		}
		room := hi.X - lo.X - 2*gap
		for room > size.MM() {
			short := lettering.Shorten(s, size, t.text.Bold, length.FromMM(room))
			if short == "" || (short != s && size > lettering.Tiny) {
				break
			}
			b := textBox(t.at.at(t.text.At), t.text.Anchor, size, t.text.Bold, short).inside(lo, hi, gap)
			if b, ok := w.beside(b, lo, hi, gap); ok {
				w.taken = append(w.taken, b)
				w.Text(b.lo, size, t.text.Bold, inkFor(t.text.Meaning), short)
				return
			}
			room = (b.hi.X - b.lo.X) * 0.85
		}
	}
}

func (w *writer) covers(b box) bool {
	for _, t := range w.taken {
		if t.overlaps(b) {
			return true
		}
	}
	return false
}

// beside moves a box to the left or right of what it meets, where it stays
// between lo and hi.
func (w *writer) beside(b box, lo, hi Point, gap float64) (box, bool) {
	for _, t := range w.taken {
		if !t.overlaps(b.pad(gap)) {
			continue
		}
		for _, dx := range []float64{t.lo.X - gap - b.hi.X, t.hi.X + gap - b.lo.X} {
			moved := box{Point{b.lo.X + dx, b.lo.Y}, Point{b.hi.X + dx, b.hi.Y}}
			if moved.lo.X >= lo.X+gap/2 && moved.hi.X <= hi.X-gap/2 && !w.covers(moved) {
				return moved, true
			}
		}
		return b, false
	}
	return b, true
}

func (b box) pad(d float64) box {
	return box{Point{b.lo.X - d, b.lo.Y - d}, Point{b.hi.X + d, b.hi.Y + d}}
}

// inside moves a box by what it needs to lie between lo and hi.
func (b box) inside(lo, hi Point, gap float64) box {
	dx := max(lo.X+gap-b.lo.X, 0) - max(b.hi.X-(hi.X-gap), 0)
	dy := max(lo.Y+gap/2-b.lo.Y, 0) - max(b.hi.Y-(hi.Y-gap/2), 0)
	return box{Point{b.lo.X + dx, b.lo.Y + dy}, Point{b.hi.X + dx, b.hi.Y + dy}}
}

// textBox is the area from a text's base line to the top of its capitals.
func textBox(at Point, a drawing.Anchor, size length.Length, bold bool, s string) box {
	wide, high := lettering.Width(s, size, bold).MM(), size.MM()
	switch a {
	case drawing.MiddleCentre, drawing.BottomCentre, drawing.TopCentre:
		at.X -= wide / 2
	case drawing.MiddleRight, drawing.BottomRight, drawing.TopRight:
		at.X -= wide
	}
	switch a {
	case drawing.MiddleLeft, drawing.MiddleCentre, drawing.MiddleRight:
		at.Y -= high / 2
	case drawing.TopLeft, drawing.TopCentre, drawing.TopRight:
		at.Y -= high
	}
	return box{at, Point{at.X + wide, at.Y + high}}
}
