package tool

import (
	"slices"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// frame is a frame over the drawing that selects the fronts which lie wholly in
// it.
type frame struct {
	from plane.Point
	add  bool // to what is selected
	in   []drawing.Subject
}

// Press keeps hold.
func (t frame) Press(Desk, Pointer) Tool { return t }

// Move shows the frame and what it would select.
func (t frame) Move(d Desk, p Pointer) Tool {
	r := plane.R(min(t.from.X, p.At.X), min(t.from.Y, p.At.Y), max(t.from.X, p.At.X), max(t.from.Y, p.At.Y))
	t.in = nil
	pl := d.Session().Result().Plan
	for i := range pl.Fronts {
		f := &pl.Fronts[i]
		if r.Contains(f.Face.Min) && r.Contains(f.Face.Max) {
			t.in = append(t.in, session.Front(f.Place))
		}
	}
	show := Feedback{Outline: r, Under: t.in}
	if len(t.in) > 0 {
		show.Labels = []Label{{At: p.At, Say: message.New("Fronts: %v", len(t.in))}}
	}
	d.Display(show)
	return t
}

// Release selects what lies in the frame.
func (t frame) Release(d Desk, _ Pointer) Tool {
	all := t.in
	if t.add {
		kept := slices.DeleteFunc(slices.Clone(d.Session().Selection()), func(s drawing.Subject) bool {
			return s.Kind != drawing.FrontThing || slices.Contains(t.in, s)
		})
		all = append(kept, t.in...)
	}
	d.Display(Feedback{})
	d.Session().Select(all...)
	return Idle{}
}

// Escape lets go of the frame.
func (t frame) Escape(d Desk) Tool {
	d.Display(Feedback{})
	return Idle{}
}

// Cursor is that of the hand that points.
func (t frame) Cursor(Desk, Pointer) Cursor { return Arrow }
