package pdfout

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

// letters writes the figures and texts of the page: first the texts that have
// their place, then figures, then the texts that can be shortened.
func (w *writer) letters() {
	for _, t := range w.texts {
		if t.text.Within.Empty() && t.visible() {
			w.fixed(t)
		}
	}
	for _, f := range w.figures {
		w.figure(f)
	}
	for _, t := range w.texts {
		if !t.text.Within.Empty() && t.visible() {
			w.within(t)
		}
	}
	w.flush()
}

func (t lettered) visible() bool {
	return t.at.clip == nil || t.at.clip.holds(t.at.at(t.text.At))
}

func (w *writer) fixed(t lettered) {
	s := w.say.Say(t.text.Say)
	b := textBox(t.at.at(t.text.At), t.text.Anchor, t.text.Size, t.text.Bold, s)
	w.taken = append(w.taken, b)
	w.text(b.lo, t.text.Size, t.text.Bold, s, inkFor(t.text.Meaning))
}

// within writes a text smaller or shorter where it does not fit its area or
// meets another, and leaves it out where not even that helps.
func (w *writer) within(t lettered) {
	s := w.say.Say(t.text.Say)
	lo, hi := t.at.at(t.text.Within.Min), t.at.at(t.text.Within.Max)
	gap := pt(um(1000))
	for _, size := range []length.Length{t.text.Size, lettering.Small, lettering.Tiny} {
		if size > t.text.Size || pt(size)+gap/2 > hi.y-lo.y {
			continue
		}
		room := hi.x - lo.x - 2*gap
		for room > pt(size) {
			short := lettering.Shorten(s, size, t.text.Bold, fromPT(room))
			if short == "" || (short != s && size > lettering.Tiny) {
				break
			}
			b := textBox(t.at.at(t.text.At), t.text.Anchor, size, t.text.Bold, short).inside(lo, hi, gap)
			if b, ok := w.beside(b, lo, hi, gap); ok {
				w.taken = append(w.taken, b)
				w.text(b.lo, size, t.text.Bold, short, inkFor(t.text.Meaning))
				return
			}
			room = (b.hi.x - b.lo.x) * 0.85
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
func (w *writer) beside(b box, lo, hi point, gap float64) (box, bool) {
	for _, t := range w.taken {
		if !t.overlaps(b.pad(gap)) {
			continue
		}
		for _, dx := range []float64{t.lo.x - gap - b.hi.x, t.hi.x + gap - b.lo.x} {
			moved := box{point{b.lo.x + dx, b.lo.y}, point{b.hi.x + dx, b.hi.y}}
			if moved.lo.x >= lo.x+gap/2 && moved.hi.x <= hi.x-gap/2 && !w.covers(moved) {
				return moved, true
			}
		}
		return b, false
	}
	return b, true
}

func (b box) pad(d float64) box {
	return box{point{b.lo.x - d, b.lo.y - d}, point{b.hi.x + d, b.hi.y + d}}
}

func fromPT(v float64) length.Length { return length.FromMM(v * 25.4 / 72) }

// inside moves a box by what it needs to lie between lo and hi.
func (b box) inside(lo, hi point, gap float64) box {
	dx := max(lo.x+gap-b.lo.x, 0) - max(b.hi.x-(hi.x-gap), 0)
	dy := max(lo.y+gap/2-b.lo.y, 0) - max(b.hi.y-(hi.y-gap/2), 0)
	return box{point{b.lo.x + dx, b.lo.y + dy}, point{b.hi.x + dx, b.hi.y + dy}}
}

// textBox is the area from a text's base line to the top of its capitals.
func textBox(at point, a drawing.Anchor, size length.Length, bold bool, s string) box {
	wide, high := pt(lettering.Width(s, size, bold)), pt(size)
	switch a {
	case drawing.MiddleCentre, drawing.BottomCentre, drawing.TopCentre:
		at.x -= wide / 2
	case drawing.MiddleRight, drawing.BottomRight, drawing.TopRight:
		at.x -= wide
	}
	switch a {
	case drawing.MiddleLeft, drawing.MiddleCentre, drawing.MiddleRight:
		at.y -= high / 2
	case drawing.TopLeft, drawing.TopCentre, drawing.TopRight:
		at.y -= high
	}
	return box{at, point{at.x + wide, at.y + high}}
}
