package tool

import (
	"frontlay/layout/drawing"
	"frontlay/ui/session"
)

// Idle is the hand with nothing in it: it points, selects, and takes hold of
// things.
type Idle struct{}

// Press takes hold of what lies under the pointer.
func (Idle) Press(d Desk, p Pointer) Tool {
	if e, ok := edgeAt(d, p); ok {
		return e
	}
	switch p.Thing.Kind {
	case drawing.DivisionThing:
		if t := holdDivision(d, p); t != nil {
			return t
		}
	case drawing.PartitionThing:
		if t := holdPartition(d, p); t != nil {
			return t
		}
	}
	return held{press: p}
}

// Move does nothing; the pointer's shape tells what a press would do.
func (i Idle) Move(Desk, Pointer) Tool { return i }

// Release does nothing.
func (i Idle) Release(Desk, Pointer) Tool { return i }

// Escape clears the selection.
func (i Idle) Escape(d Desk) Tool {
	d.Session().Select()
	return i
}

// Cursor tells what lies under the pointer.
func (Idle) Cursor(d Desk, p Pointer) Cursor {
	if e, ok := edgeAt(d, p); ok {
		return e.Cursor(d, p)
	}
	switch p.Thing.Kind {
	case drawing.DivisionThing:
		return UpDown
	case drawing.PartitionThing:
		return LeftRight
	}
	if typed(p.Thing.Kind) {
		return Typing
	}
	return Arrow
}

// typed tells that a size can be typed in place of a figure.
func typed(k drawing.SubjectKind) bool {
	switch k {
	case drawing.FrontHeight, drawing.CabinetWidth, drawing.CabinetHeight, drawing.BayWidth:
		return true
	}
	return false
}

// held is a pressed button of which it is not known yet whether it becomes a
// click or a drag.
type held struct {
	press Pointer
}

// slack is how far the pointer can move in a click, in screen units.
const slack = 4

// Press starts again.
func (h held) Press(d Desk, p Pointer) Tool { return Idle{}.Press(d, p) }

// Move turns a press into a drag once it has gone far enough: of a front in its
// stack where it is one, of the picture otherwise.
func (h held) Move(d Desk, p Pointer) Tool {
	dx, dy := p.X-h.press.X, p.Y-h.press.Y
	if dx*dx+dy*dy < slack*slack {
		return h
	}
	if t := Selectable(h.press.Thing); t.Kind == drawing.FrontThing && d.Session().IsSelected(t) {
		if r := holdFront(d, h.press); r != nil {
			return r.Move(d, p)
		}
	}
	return Pan{x: h.press.X, y: h.press.Y}.Move(d, p)
}

// Release is a click: it selects, or opens a figure for typing.
func (h held) Release(d Desk, p Pointer) Tool {
	t := h.press.Thing
	s := d.Session()
	switch {
	case typed(t.Kind):
		d.TypeSize(t)
	case t.Kind == drawing.Nothing:
		s.Select()
	default:
		t = Selectable(t)
		if p.Add {
			s.Toggle(t)
		} else {
			s.Select(t)
		}
	}
	return Idle{}
}

// Escape lets go.
func (h held) Escape(Desk) Tool { return Idle{} }

// Cursor is that of the hand that points.
func (h held) Cursor(d Desk, p Pointer) Cursor { return Idle{}.Cursor(d, p) }

// Selectable is the thing that a click on a part selects: holes, runners and
// drawers belong to their front.
func Selectable(t drawing.Subject) drawing.Subject {
	switch t.Kind {
	case drawing.HoleThing, drawing.RunnerThing, drawing.DrawerThing:
		return session.Front(t.Place)
	}
	return t
}

// Pan moves the picture under the pointer.
type Pan struct {
	x, y float32
}

// Press goes on from the new place.
func (t Pan) Press(_ Desk, p Pointer) Tool { return Pan{p.X, p.Y} }

// Move moves the picture by what the pointer has moved.
func (t Pan) Move(d Desk, p Pointer) Tool {
	d.Pan(p.X-t.x, p.Y-t.y)
	return Pan{p.X, p.Y}
}

// Release lets go of the picture.
func (t Pan) Release(Desk, Pointer) Tool { return Idle{} }

// Escape lets go of the picture.
func (t Pan) Escape(Desk) Tool { return Idle{} }

// Cursor is a grabbing hand.
func (t Pan) Cursor(Desk, Pointer) Cursor { return Grab }

// NewPan takes hold of the picture at a place on the screen.
func NewPan(x, y float32) Pan { return Pan{x, y} }
