package tool

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// DrawPartition draws partitions into bays where the pointer is, until Escape; or
// one with Enter where the keys have moved the board.
type DrawPartition struct {
	pencil
	at   model.Place   // the bay
	left length.Length // how much of its clear width is at the left of the board
	y    length.Length // where the figures stand, run frame
}

// aim proposes the partition at the pointer.
func (t DrawPartition) aim(d Desk, p Pointer) DrawPartition {
	s := d.Session()
	t.on = false
	pl := s.Result().Plan
	for i := range pl.Cabinets {
		for j := range pl.Cabinets[i].Bays {
			b := &pl.Cabinets[i].Bays[j]
			thick, step := s.Project().Boards.Carcass.Thickness, Step(s.Project().Unit, p.Free)
			both := b.Opening.Width() - thick
			if !b.Opening.Contains(p.At) || both < 2*step { // no room for a board
				continue
			}
			t.at, t.on, t.y = b.Place, true, p.At.Y
			left := (p.At.X - thick/2 - b.Opening.Min.X).RoundTo(step)
			t.left = dragged(left, both, leastDraggedBay) // inside the bay, however near its side the pointer is
			return t
		}
	}
	return t
}

// edit is the partition that is proposed.
func (t DrawPartition) edit(d Desk) edit.AddBay {
	e := edit.AddBay{At: t.at, Left: t.left}
	if b := d.Session().Result().Plan.BayAt(t.at); b != nil {
		e.Right = b.Opening.Width() - d.Session().Project().Boards.Carcass.Thickness - t.left
	}
	return e
}

// show shows the board with both clear widths.
func (t DrawPartition) show(d Desk) Tool {
	var show Feedback
	if b := d.Session().Result().Plan.BayAt(t.at); t.on && b != nil {
		e, o := t.edit(d), b.Opening
		show.Outline = plane.R(o.Min.X+e.Left, o.Min.Y, o.Max.X-e.Right, o.Max.Y)
		for _, side := range []plane.Rect{
			plane.R(o.Min.X, o.Min.Y, o.Min.X+e.Left, o.Max.Y),
			plane.R(o.Max.X-e.Right, o.Min.Y, o.Max.X, o.Max.Y),
		} {
			show.Labels = append(show.Labels, Label{
				At: plane.Point{X: side.Centre().X, Y: t.y}, Say: message.New("%v", side.Width()), Centred: true, Within: side,
			})
		}
	}
	d.Display(show)
	return t
}

// draw draws the partition and selects the lowest front at its right.
func (t DrawPartition) draw(d Desk) Tool {
	if do(d, t.edit(d)) {
		t.drawn(d)
		t.on = false
	}
	return t
}

func (t DrawPartition) drawn(d Desk) {
	at := t.at
	at.Bay++
	at.Front = 0
	d.Session().Select(session.Front(at))
}

// Press shows where the partition would be.
func (t DrawPartition) Press(d Desk, p Pointer) Tool { return t.pressed(d, p, t) }

// Move shows the partition at the pointer.
func (t DrawPartition) Move(d Desk, p Pointer) Tool {
	if t.figure(d, p) {
		t.on = false
		return t
	}
	return t.aim(d, p).show(d)
}

// Release draws the partition.
func (t DrawPartition) Release(d Desk, p Pointer) Tool {
	t = t.aim(d, p)
	d.Display(Feedback{})
	if !t.on {
		d.Tell(message.New("Point into a bay to draw a partition. Esc ends drawing."))
		return t
	}
	return t.draw(d)
}

// Fresh is the tool with nothing proposed.
func (DrawPartition) Fresh() Tool { return DrawPartition{} }

// Propose shows a partition in the middle of the bay of what is selected.
func (t DrawPartition) Propose(d Desk) Tool {
	at := d.Session().Here()
	return t.into(d, model.Place{Cabinet: max(at.Cabinet, 0), Bay: max(at.Bay, 0), Front: -1})
}

// into proposes a partition in the middle of a bay.
func (t DrawPartition) into(d Desk, at model.Place) Tool {
	s := d.Session()
	b := s.Result().Plan.BayAt(at)
	if b == nil {
		return t
	}
	left := ((b.Opening.Width() - s.Project().Boards.Carcass.Thickness) / 2).RoundTo(Step(s.Project().Unit, false))
	return DrawPartition{pencil{on: true}, b.Place, left, b.Opening.Centre().Y}.show(d)
}

// Key moves the board by a step (with Shift a fine one), or to another bay, and
// draws the partition.
func (t DrawPartition) Key(d Desk, k Stroke) Tool {
	dx, dy := k.way()
	switch {
	case !t.on:
		return t.Propose(d)
	case k.Key == Enter:
		if t = t.draw(d).(DrawPartition); t.on {
			return t // it can't be drawn
		}
		d.Display(Feedback{})
		return Idle{}
	case dy != 0:
		return t.next(d, dy)
	}
	to := t
	to.left += length.Length(dx) * Step(d.Session().Project().Unit, k.Shift)
	if e := to.edit(d); e.Left <= 0 || e.Right <= 0 {
		return t
	}
	return to.show(d)
}

// next goes to the next bay of the run, or the one before.
func (t DrawPartition) next(d Desk, by int) Tool {
	at := t.at
	at.Bay += by
	if cab := d.Session().Project().CabinetAt(model.Place{Cabinet: at.Cabinet + by}); d.Session().Project().BayAt(at) == nil && cab != nil {
		at.Cabinet += by
		at.Bay = 0
		if by < 0 {
			at.Bay = len(cab.Bays) - 1
		}
	}
	return t.into(d, at)
}

// Field is the clear width at the left of the board.
func (t DrawPartition) Field(d Desk) (Field, bool) {
	if !t.on {
		t, _ = t.Propose(d).(DrawPartition)
	}
	b := d.Session().Result().Plan.BayAt(t.at)
	if !t.on || b == nil {
		return Field{}, false
	}
	with := func(v length.Length) DrawPartition {
		to := t
		to.left = v
		return to
	}
	field := proposal(d, t.left,
		func(v length.Length) edit.Edit { return with(v).edit(d) },
		func(v length.Length) { d.Hold(with(v).show(d)) },
		func() {
			t.drawn(d)
			d.Hold(Idle{})
			d.Display(Feedback{})
		})
	field.At = plane.Point{X: b.Opening.Min.X + t.left/2, Y: t.y}
	return field, true
}
