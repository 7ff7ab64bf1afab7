package tool

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// Reorder drags a front to another place of its stack.
type Reorder struct {
	place model.Place
	face  plane.Rect
	grip  length.Length
	to    int
}

func holdFront(d Desk, p Pointer) Tool {
	f := d.Session().Result().Plan.FrontAt(p.Thing.Place)
	if f == nil {
		return nil
	}
	d.Session().Begin()
	return Reorder{place: p.Thing.Place, face: f.Face, grip: p.At.Y - f.Face.Centre().Y, to: p.Thing.Place.Front}
}

// Press keeps hold.
func (t Reorder) Press(Desk, Pointer) Tool { return t }

// Move previews the stack with the front at the place nearest to the pointer.
func (t Reorder) Move(d Desk, p Pointer) Tool {
	s := d.Session()
	pl := s.CommittedResult().Plan
	bay := pl.BayAt(t.place)
	if bay == nil {
		return t
	}
	centre := p.At.Y - t.grip
	t.to = 0
	for i := range bay.Count {
		at := t.place
		at.Front = i
		f := pl.FrontAt(at)
		if f == nil || i == t.place.Front {
			continue
		}
		middle := f.Face.Centre().Y
		if centre > middle {
			t.to++
		}
	}
	outline := t.face.Move(plane.Point{Y: centre - t.face.Centre().Y})
	show := Feedback{Outline: outline, Labels: []Label{{At: p.At, Say: message.New("Place %v of %v from below", t.to+1, bay.Count)}}}
	if t.to == t.place.Front {
		s.Cancel()
		s.Begin()
	} else if err := s.Preview(edit.ReorderFront{At: t.place, To: t.to}); err != nil {
		show.Labels = []Label{{At: p.At, Say: Said(err), Warn: true}}
	}
	at := t.place
	at.Front = t.to
	if !s.IsSelected(session.Front(at)) {
		s.Select(session.Front(at))
	}
	d.Display(show)
	return t
}

// Release makes the move one step.
func (t Reorder) Release(d Desk, p Pointer) Tool {
	s := d.Session()
	s.Commit()
	d.Display(Feedback{})
	return Idle{}
}

// Escape puts the front back.
func (t Reorder) Escape(d Desk) Tool {
	d.Session().Cancel()
	d.Session().Select(session.Front(t.place))
	d.Display(Feedback{})
	return Idle{}
}

// Cursor is a grabbing hand.
func (t Reorder) Cursor(Desk, Pointer) Cursor { return Grab }
