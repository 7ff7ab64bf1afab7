package tool

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// DrawDivision draws divisions across fronts, until Escape: where the pointer is,
// or with Enter where the keys have moved the line.
type DrawDivision struct {
	pencil
	at    model.Place   // the front that is divided
	lower length.Length // how much of it is below the division
	snap  GuideLine     // what the line was drawn to, where it was
}

// aim proposes the division at the pointer.
func (t DrawDivision) aim(d Desk, p Pointer) DrawDivision {
	s := d.Session()
	t.on, t.snap = false, GuideLine{}
	if Selectable(p.Thing).Kind != drawing.FrontThing {
		return t
	}
	pl := s.Result().Plan
	f, c := pl.FrontAt(p.Thing.Place), pl.CabinetAt(p.Thing.Place)
	if f == nil || c == nil {
		return t
	}
	gap, step := c.Reveals.Gap, Step(s.Project().Unit, p.Free)
	both := f.Face.Height() - gap
	if both < 2*step {
		return t // no room for a gap
	}
	t.at, t.on = p.Thing.Place, true
	want := p.At.Y - gap/2
	t.lower = dragged((want - f.Face.Min.Y).RoundTo(step), both, leastDraggedFront) // inside the front, however near its edge the pointer is
	if l, ok := nearest(want, d.Reach(), levels(pl, t.at)); ok && !p.Free {
		if at := l.From.Y - f.Face.Min.Y; at == dragged(at, both, leastDraggedFront) {
			t.lower, t.snap = at, joined(l, f.Face.Min.X, f.Face.Max.X)
		}
	}
	return t
}

// edit is the division that is proposed.
func (t DrawDivision) edit(d Desk) edit.SplitFront {
	pl := d.Session().Result().Plan
	e := edit.SplitFront{At: t.at, Lower: t.lower}
	if f, c := pl.FrontAt(t.at), pl.CabinetAt(t.at); f != nil && c != nil {
		e.Upper = f.Face.Height() - c.Reveals.Gap - t.lower
	}
	return e
}

// show shows the line with both heights.
func (t DrawDivision) show(d Desk) Tool {
	var show Feedback
	f := d.Session().Result().Plan.FrontAt(t.at)
	if t.on && f != nil {
		e := t.edit(d)
		lower, upper := f.Face, f.Face
		lower.Max.Y, upper.Min.Y = f.Face.Min.Y+e.Lower, f.Face.Max.Y-e.Upper
		if t.snap.Snapped {
			show.Lines = append(show.Lines, t.snap)
		}
		for _, y := range []length.Length{lower.Max.Y, upper.Min.Y} {
			show.Lines = append(show.Lines, GuideLine{From: plane.Point{X: f.Face.Min.X, Y: y}, To: plane.Point{X: f.Face.Max.X, Y: y}})
		}
		show.Labels = []Label{
			{At: lower.Centre(), Say: message.New("%v", e.Lower), Centred: true, Within: lower},
			{At: upper.Centre(), Say: message.New("%v", e.Upper), Centred: true, Within: upper},
		}
	}
	d.Display(show)
	return t
}

// draw draws the division and selects the new front above it.
func (t DrawDivision) draw(d Desk) Tool {
	if do(d, t.edit(d)) {
		t.drawn(d)
		t.on = false
	}
	return t
}

func (t DrawDivision) drawn(d Desk) {
	above := t.at
	above.Front++
	d.Session().Select(session.Front(above))
}

// Press does nothing yet: the division is drawn where the button is let go.
func (t DrawDivision) Press(d Desk, p Pointer) Tool { return t.pressed(d, p, t) }

// Move shows the line at the pointer.
func (t DrawDivision) Move(d Desk, p Pointer) Tool {
	if t.figure(d, p) {
		t.on = false
		return t
	}
	return t.aim(d, p).show(d)
}

// Release draws the division.
func (t DrawDivision) Release(d Desk, p Pointer) Tool {
	t = t.aim(d, p)
	d.Display(Feedback{})
	if !t.on {
		d.Tell(message.New("Point at a front to draw a division across it. Esc ends drawing."))
		return t
	}
	return t.draw(d)
}

// Fresh is the tool with nothing proposed.
func (DrawDivision) Fresh() Tool { return DrawDivision{} }

// Propose shows a division in the middle of the selected front.
func (t DrawDivision) Propose(d Desk) Tool {
	at := d.Session().Here()
	return t.across(d, model.Place{Cabinet: max(at.Cabinet, 0), Bay: max(at.Bay, 0), Front: max(at.Front, 0)})
}

// across proposes a division in the middle of a front.
func (t DrawDivision) across(d Desk, at model.Place) Tool {
	pl := d.Session().Result().Plan
	f, c := pl.FrontAt(at), pl.CabinetAt(at)
	if f == nil || c == nil {
		return t
	}
	t = DrawDivision{pencil{on: true}, at, ((f.Face.Height() - c.Reveals.Gap) / 2).RoundTo(Step(d.Session().Project().Unit, false)), GuideLine{}}
	d.Session().Select(session.Front(at))
	return t.show(d)
}

// Key moves the line by a step (with Shift a fine one), or to another front, and
// draws the division.
func (t DrawDivision) Key(d Desk, k Stroke) Tool {
	dx, dy := k.way()
	switch {
	case !t.on:
		return t.Propose(d)
	case k.Key == Enter:
		return drawnByKeys(d, t.draw(d))
	case k.Key == PageUp || k.Key == PageDown:
		at := t.at
		at.Front += dy
		return t.across(d, at)
	case dx != 0:
		if at, ok := besides(d.Session(), t.at, dx); ok {
			return t.across(d, at)
		}
		return t
	}
	to := t
	to.lower += length.Length(dy) * Step(d.Session().Project().Unit, k.Shift)
	if e := to.edit(d); e.Lower <= 0 || e.Upper <= 0 {
		return t
	}
	to.snap = GuideLine{}
	return to.show(d)
}

// drawnByKeys is the tool after something was drawn by keys: it proposes the next,
// so that a stack can be typed from below upwards.
func drawnByKeys(d Desk, t Tool) Tool {
	if p, ok := t.(Proposing); ok {
		return p.Propose(d)
	}
	return t
}

// Field is the height below the line.
func (t DrawDivision) Field(d Desk) (Field, bool) {
	if !t.on {
		t, _ = t.Propose(d).(DrawDivision)
	}
	f := d.Session().Result().Plan.FrontAt(t.at)
	if !t.on || f == nil {
		return Field{}, false
	}
	with := func(v length.Length) DrawDivision {
		to := t
		to.lower, to.snap = v, GuideLine{}
		return to
	}
	field := proposal(d, t.lower,
		func(v length.Length) edit.Edit { return with(v).edit(d) },
		func(v length.Length) { d.Hold(with(v).show(d)) },
		func() {
			t.drawn(d)
			d.Hold(DrawDivision{}.Propose(d))
		})
	below := f.Face
	below.Max.Y = below.Min.Y + t.lower
	field.At = below.Centre()
	return field, true
}
