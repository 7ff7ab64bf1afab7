package ink

import (
	"frontlay/layout/lettering"
	"frontlay/model/length"
	"frontlay/model/message"
)

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
