package tool

import (
	"frontlay/layout/drawing"
	"frontlay/ui/session"
)

// Idle is the hand with nothing in it: it points, selects, and takes hold of
// things.
type Idle struct{}

// Press takes hold of what lies under the pointer.
func (i Idle) Press(d Desk, p Pointer) Tool {
	if !p.Add { // it may be a click that adds to the selection
		if t := grip(d, p); t != nil {
			return t
		}
	}
	return held{press: p, then: i}
}

// grip takes hold of the edge, division or partition under the pointer; nil
// where there is none.
func grip(d Desk, p Pointer) Tool {
	if e, ok := edgeAt(d, p); ok {
		return e
	}
	switch p.Thing.Kind {
	case drawing.DivisionThing:
		return holdDivision(d, p)
	case drawing.PartitionThing:
		return holdPartition(d, p)
	}
	return nil
}

// Move shows what a press would be about.
func (i Idle) Move(d Desk, p Pointer) Tool {
	var show Feedback
	if e, ok := edgeAt(d, p); ok {
		show.Lines = []GuideLine{e.line()}
	} else if p.Thing.Kind != drawing.Nothing {
		show.Under = []drawing.Subject{Selectable(p.Thing)}
	}
	d.Display(show)
	return i
}

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

// held is a pressed button of which it is not known yet whether it becomes a
// click or a drag.
type held struct {
	press Pointer
	then  Tool // in the hand after a click
}

// How far the pointer can move in a click, in screen units: less where a drag
// takes hold of something, because small drags are those for fine work.
const (
	slack     = 4
	gripSlack = 2
)

// Press starts again.
func (h held) Press(d Desk, p Pointer) Tool { return h.then.Press(d, p) }

// Move turns a press into a drag once it has gone far enough: of what was pressed,
// of a selected front in its stack, or of a frame that selects.
func (h held) Move(d Desk, p Pointer) Tool {
	if _, idle := h.then.(Idle); !idle {
		return h
	}
	if h.far(p, gripSlack) {
		if t := grip(d, h.press); t != nil {
			return t.Move(d, p)
		}
	}
	if !h.far(p, slack) {
		return h
	}
	if t := Selectable(h.press.Thing); t.Kind == drawing.FrontThing && d.Session().IsSelected(t) {
		if r := holdFront(d, h.press); r != nil {
			return r.Move(d, p)
		}
	}
	return frame{from: h.press.At, add: h.press.Add}.Move(d, p)
}

// far tells that the pointer is at least so far from where the button was pressed.
func (h held) far(p Pointer, slack float32) bool {
	dx, dy := p.X-h.press.X, p.Y-h.press.Y
	return dx*dx+dy*dy >= slack*slack
}

// Release is a click: it selects, or opens a figure for typing; the second one on
// a name opens that.
func (h held) Release(d Desk, p Pointer) Tool {
	t := h.press.Thing
	s := d.Session()
	switch {
	case h.far(p, slack): // thought better of
	case typed(t.Kind), t.Kind == drawing.FrontName && h.press.Twice:
		typeAt(d, t)
	case t.Kind == drawing.Nothing && !h.press.Add:
		s.Select()
	case t.Kind == drawing.Nothing:
	default:
		t = Selectable(t)
		if h.press.Add {
			s.Toggle(t)
		} else {
			s.Select(t)
		}
	}
	return h.then
}

// Escape lets go.
func (h held) Escape(Desk) Tool { return h.then }

// Cursor is that of what was in the hand.
func (h held) Cursor(d Desk, p Pointer) Cursor { return h.then.Cursor(d, p) }

// Selectable is the thing that a click on a part selects: holes, runners, drawers
// and names belong to their front.
func Selectable(t drawing.Subject) drawing.Subject {
	switch t.Kind {
	case drawing.HoleThing, drawing.RunnerThing, drawing.DrawerThing, drawing.FrontName:
		return session.Front(t.Place)
	}
	return t
}

// Pan moves the picture under the pointer.
type Pan struct {
	x, y float32
	then Tool // in the hand afterwards
}

// Press goes on from the new place.
func (t Pan) Press(_ Desk, p Pointer) Tool { return Pan{p.X, p.Y, t.then} }

// Move moves the picture by what the pointer has moved.
func (t Pan) Move(d Desk, p Pointer) Tool {
	d.Pan(p.X-t.x, p.Y-t.y)
	return Pan{p.X, p.Y, t.then}
}

// Release lets go of the picture.
func (t Pan) Release(Desk, Pointer) Tool { return t.then }

// Escape lets go of the picture.
func (t Pan) Escape(Desk) Tool { return t.then }

// Cursor is a grabbing hand.
func (t Pan) Cursor(Desk, Pointer) Cursor { return Grab }

// NewPan takes hold of the picture at a place on the screen; then is the tool that
// is in the hand afterwards.
func NewPan(x, y float32, then Tool) Pan { return Pan{x, y, then} }
