package ink

import (
	"strings"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/model/length"
	"frontlay/model/message"
)

// lettered is a text that waits for its turn.
type lettered struct {
	text   *drawing.Text
	at     placing
	placed int // which of the drawings on the page it belongs to
}

// letters writes the texts and dimensions of the page: first the texts that have
// their place, then dimensions, then names, then the texts that can be shortened.
func (w *writer) letters() {
	for _, t := range w.texts {
		if t.text.Within.Empty() && t.visible() {
			w.fixed(t)
		}
	}
	for _, d := range w.dimensions {
		w.dimension(d)
	}
	for i := range w.drawings {
		w.names(i)
	}
	for _, t := range w.texts {
		if !t.text.Within.Empty() && !t.names() && t.visible() {
			w.fitted(t)
		}
	}
}

// names tells that a text is the name of a thing.
func (t lettered) names() bool { return !t.text.Within.Empty() && !t.text.Least.Empty() }

func (t lettered) visible() bool {
	return t.at.clip == nil || t.at.clip.holds(t.at.at(t.text.At))
}

func (w *writer) fixed(t lettered) {
	s := w.say.Say(t.text.Say)
	b := textBox(t.at.at(t.text.At), t.text.Anchor, t.text.Size, t.text.Bold, s)
	w.taken.add(b)
	w.Text(b.lo, t.text.Size, t.text.Bold, inkFor(t.text.Meaning), s)
}

// fitted writes a text smaller or shorter where it does not fit its area or
// meets another, and leaves it out where not even that helps. What a text says to
// write where it does not fit is not cut, for half a figure is another figure,
// unless it is a name, behind a front's number and a wide space.
func (w *writer) fitted(t lettered) {
	s := w.say.Say(t.text.Say)
	if t.text.Short.Empty() {
		w.fittedAs(t, s, true)
	} else if !w.fittedAs(t, s, false) {
		short := w.say.Say(t.text.Short)
		w.fittedAs(t, short, strings.Contains(short, "  "))
	}
}

// fittedAs writes a text in the largest size in which it stands, cut in the
// smallest where it may be; false where it has no room.
func (w *writer) fittedAs(t lettered, s string, cut bool) bool {
	for _, size := range []length.Length{t.text.Size, lettering.Small, lettering.Tiny} {
		if size > t.text.Size {
			continue
		}
		if _, _, ok := t.upright(s, size); !ok {
			continue
		}
		room := t.room()
		for room > size.MM() {
			short := lettering.Shorten(s, size, t.text.Bold, length.FromMM(room))
			if short == "" || (short != s && (size > lettering.Tiny || !cut)) {
				break
			}
			b, ok := w.stand(t, short, size)
			if ok {
				w.take(t, b, short, size)
				return true
			}
			room = (b.hi.X - b.lo.X) * 0.85
		}
	}
	return false
}

// sideGap is what stays free at the left and right of a text in its area, in
// millimetres.
const sideGap = 1.0

// overAndUnder is what stays free above and below the letters of a text in its
// area, in millimetres; half the width of a pen is not free of the lines there.
const overAndUnder = 0.5

// upright is where a text of a height can stand in its area, from below to above;
// false where the area is too low for its letters.
func (t lettered) upright(s string, size length.Length) (lo, hi float64, ok bool) {
	above, below := lettering.Reach(s, size)
	lo = t.at.at(t.text.Within.Min).Y + overAndUnder + below.MM()
	hi = t.at.at(t.text.Within.Max).Y - overAndUnder - above.MM()
	return lo, hi, hi-lo >= size.MM()
}

// stand gives the area where a text can stand, near its point; false where it
// has no room there. The area is then where it would have stood.
func (w *writer) stand(t lettered, s string, size length.Length) (box, bool) {
	b := textBox(t.at.at(t.text.At), t.text.Anchor, size, t.text.Bold, s)
	low, high, ok := t.upright(s, size)
	if !ok || b.hi.X-b.lo.X > t.room() {
		return b, false
	}
	lo := Point{t.at.at(t.text.Within.Min).X + sideGap, low}
	hi := Point{t.at.at(t.text.Within.Max).X - sideGap, high}
	return w.beside(b.inside(lo, hi), lo, hi)
}

// room is how wide a text may be in its area.
func (t lettered) room() float64 {
	return t.at.at(t.text.Within.Max).X - t.at.at(t.text.Within.Min).X - 2*sideGap
}

// take writes a text where it stands.
func (w *writer) take(t lettered, b box, s string, size length.Length) {
	w.taken.add(b)
	w.Text(b.lo, size, t.text.Bold, inkFor(t.text.Meaning), s)
}

func (w *writer) covers(b box) bool { return w.taken.first(b, nil) >= 0 }

// beside moves a box to the left or right of what it meets, where it stays
// between lo and hi.
func (w *writer) beside(b box, lo, hi Point) (box, bool) {
	const slack = sideGap / 2
	met := w.taken.first(b.pad(sideGap), nil)
	if met < 0 {
		return b, true
	}
	t := w.taken.all[met]
	for _, dx := range []float64{t.lo.X - sideGap - b.hi.X, t.hi.X + sideGap - b.lo.X} {
		moved := box{Point{b.lo.X + dx, b.lo.Y}, Point{b.hi.X + dx, b.hi.Y}}
		if moved.lo.X >= lo.X-slack && moved.hi.X <= hi.X+slack && !w.covers(moved) {
			return moved, true
		}
	}
	return b, false
}

func (b box) pad(d float64) box {
	return box{Point{b.lo.X - d, b.lo.Y - d}, Point{b.hi.X + d, b.hi.Y + d}}
}

// inside moves a box by what it needs to lie between lo and hi.
func (b box) inside(lo, hi Point) box {
	dx := max(lo.X-b.lo.X, 0) - max(b.hi.X-hi.X, 0)
	dy := max(lo.Y-b.lo.Y, 0) - max(b.hi.Y-hi.Y, 0)
	return box{Point{b.lo.X + dx, b.lo.Y + dy}, Point{b.hi.X + dx, b.hi.Y + dy}}
}

// textBox is the area from a text's base line to the top of its capitals.
func textBox(at Point, a drawing.Anchor, size length.Length, bold bool, s string) box {
	wide, high := lettering.Width(s, size, bold).MM(), size.MM()
	at.X, at.Y = at.X-a.X*wide, at.Y-a.Y*high
	return box{at, Point{at.X + wide, at.Y + high}}
}

// names writes the names of one drawing, all in one size: the largest in which
// as many of them have room as in the smallest. A name without room gives way to
// its number, and that to nothing where even small figures would meet a line.
func (w *writer) names(placed int) {
	var all []lettered
	for _, t := range w.texts {
		if t.placed == placed && t.names() && t.visible() {
			all = append(all, t)
		}
	}
	if len(all) == 0 {
		return
	}
	size := w.sizeFor(all)
	for _, t := range all {
		if w.name(t, size, t.text.Say, t.text.Short) || w.name(t, size, t.text.Least) {
			continue
		}
		w.name(t, lettering.Tiny, t.text.Least)
	}
}

// sizeFor is the one size of names. Writing them for good comes later: what
// they take here is given back.
func (w *writer) sizeFor(all []lettered) length.Length {
	kept, best, most := w.Canvas, length.Length(lettering.Tiny), -1
	w.Canvas = nowhere{}
	for _, size := range []length.Length{lettering.Tiny, lettering.Small, lettering.Medium} {
		taken, n := len(w.taken.all), 0
		for _, t := range all {
			if size <= max(t.text.Size, lettering.Tiny) && w.name(t, size, t.text.Say, t.text.Short) {
				n++
			}
		}
		w.taken.cut(taken)
		if n >= most {
			best, most = size, n
		}
	}
	w.Canvas = kept
	return best
}

// name writes the first of some texts that has room; false where none has.
func (w *writer) name(t lettered, size length.Length, says ...message.Message) bool {
	for _, m := range says {
		if m.Empty() {
			continue
		}
		s := w.say.Say(m)
		if b, ok := w.stand(t, s, size); ok {
			w.take(t, b, s, size)
			return true
		}
	}
	return false
}

// nowhere is a canvas on which nothing is seen.
type nowhere struct{}

func (nowhere) Line(Pen, Point, Point)                          {}
func (nowhere) Rect(*Pen, *Colour, Point, Point)                {}
func (nowhere) Circle(Pen, Point, float64)                      {}
func (nowhere) Triangle(Colour, Point, Point, Point)            {}
func (nowhere) Clip(Point, Point)                               {}
func (nowhere) Unclip()                                         {}
func (nowhere) Text(Point, length.Length, bool, Colour, string) {}
