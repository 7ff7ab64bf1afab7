package tool

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// DragEdge makes a cabinet wider by its right edge or higher by its top edge.
type DragEdge struct {
	drag
	place   model.Place
	size    string // width or height, as the cabinet's row
	outline plane.Rect
	grip    length.Length
}

// edgeAt finds the cabinet edge that is near the pointer, where no front lies
// under it.
func edgeAt(d Desk, p Pointer) (DragEdge, bool) {
	switch p.Thing.Kind {
	case drawing.Nothing, drawing.CabinetThing, drawing.BayThing:
	default:
		return DragEdge{}, false
	}
	pl, reach := d.Session().Result().Plan, d.Reach()
	for i := range pl.Cabinets {
		c := &pl.Cabinets[i]
		o := c.Outline
		at := model.Place{Cabinet: i, Bay: -1, Front: -1}
		if (p.At.X-o.Max.X).Abs() <= reach && p.At.Y >= o.Min.Y && p.At.Y <= o.Max.Y {
			return DragEdge{place: at, size: "width", outline: o, grip: p.At.X - o.Max.X}, true
		}
		if (p.At.Y-o.Max.Y).Abs() <= reach && p.At.X >= o.Min.X && p.At.X <= o.Max.X {
			return DragEdge{place: at, size: "height", outline: o, grip: p.At.Y - o.Max.Y}, true
		}
	}
	return DragEdge{}, false
}

// line is the edge.
func (t DragEdge) line() GuideLine {
	l := GuideLine{From: t.outline.Min, To: t.outline.Max, Grip: true}
	if t.size == "height" {
		l.From.Y = l.To.Y
	} else {
		l.From.X = l.To.X
	}
	return l
}

// Press keeps hold.
func (t DragEdge) Press(Desk, Pointer) Tool { return t }

// Move previews the cabinet's size at the pointer.
func (t DragEdge) Move(d Desk, p Pointer) Tool {
	s := d.Session()
	t.begin(s)
	step := Step(s.Project().Unit, p.Free)
	size := (p.At.X - t.grip - t.outline.Min.X).RoundTo(step)
	if t.size == "height" {
		size = (p.At.Y - t.grip - t.outline.Min.Y).RoundTo(step)
	}
	if err := s.Preview(edit.SetCabinet(t.place, t.size, size)); err != nil {
		d.Display(Feedback{Labels: []Label{{At: p.At, Say: Said(err), Warn: true}}})
		return t
	}
	d.Display(Feedback{Labels: []Label{{At: p.At, Say: message.New("%v", size)}}})
	return t
}

// Release makes the change one step; a click without a move selects the
// cabinet.
func (t DragEdge) Release(d Desk, p Pointer) Tool {
	if !t.moved {
		d.Session().Select(drawing.Subject{Kind: drawing.CabinetThing, Place: t.place})
	}
	return t.drag.Release(d, p)
}

// Cursor is that of the way the edge can move.
func (t DragEdge) Cursor(Desk, Pointer) Cursor {
	if t.size == "height" {
		return UpDown
	}
	return LeftRight
}
