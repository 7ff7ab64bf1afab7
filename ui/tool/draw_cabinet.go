package tool

import (
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// DrawCabinet draws a new cabinet at an end of the run: the pointer is its upper
// corner away from the run. By keys it is at the right end.
type DrawCabinet struct {
	pencil
	first         bool // at the left end
	width, height length.Length
	level         bool // its height was drawn to that of its neighbour
}

// neighbour is the cabinet at the end of the run where the new one would be, and
// its place in the run; nil: the run is empty.
func (t DrawCabinet) neighbour(d Desk) (*plan.Cabinet, int) {
	pl := d.Session().CommittedResult().Plan
	n := len(pl.Cabinets)
	switch {
	case n == 0:
		return nil, 0
	case t.first:
		return &pl.Cabinets[0], 0
	}
	return &pl.Cabinets[n-1], n
}

// aim proposes the cabinet whose corner the pointer is at. Its height is that of
// its neighbour where the pointer is near that or beside its upper half: a run is
// mostly of one height, and who clicks beside it has no other in mind.
func (t DrawCabinet) aim(d Desk, p Pointer) DrawCabinet {
	s := d.Session()
	run := s.CommittedResult().Plan.Extent
	t.on, t.first = false, p.At.X < run.Min.X
	beside, _ := t.neighbour(d)
	if beside == nil {
		return t
	}
	width, height := p.At.X-run.Max.X, p.At.Y-beside.Outline.Min.Y
	if t.first {
		width = run.Min.X - p.At.X
	}
	if width <= 0 || height <= 0 {
		return t
	}
	step := 10 * Step(s.Project().Unit, false)
	if p.Free {
		step = Step(s.Project().Unit, false)
	}
	t.on, t.width, t.height, t.level = true, width.RoundTo(step), height.RoundTo(step), false
	if above := p.At.Y - beside.Outline.Max.Y; above <= 2*d.Reach() && above >= -max(2*d.Reach(), beside.Outline.Height()/2) && !p.Free {
		t.height, t.level = beside.Outline.Height(), true
	}
	return t
}

// outline is where the cabinet would be.
func (t DrawCabinet) outline(d Desk, beside *plan.Cabinet) plane.Rect {
	run, floor := d.Session().CommittedResult().Plan.Extent, beside.Outline.Min.Y
	if t.first {
		return plane.R(run.Min.X-t.width, floor, run.Min.X, floor+t.height)
	}
	return plane.R(run.Max.X, floor, run.Max.X+t.width, floor+t.height)
}

// show shows the cabinet's outline with its sizes.
func (t DrawCabinet) show(d Desk) Tool {
	var show Feedback
	if beside, _ := t.neighbour(d); t.on && beside != nil {
		show.Outline = t.outline(d, beside)
		corner := show.Outline.Max
		if t.first {
			corner.X = show.Outline.Min.X
		}
		if o := beside.Outline; t.level {
			show.Lines = []GuideLine{{
				From: plane.Point{X: min(o.Min.X, corner.X), Y: o.Max.Y}, To: plane.Point{X: max(o.Max.X, corner.X), Y: o.Max.Y}, Snapped: true,
			}}
		}
		show.Labels = []Label{{At: corner, Say: message.New("%v wide, %v high", t.width, t.height)}}
	}
	d.Display(show)
	return t
}

// edit is the cabinet that is proposed, on the pattern of its neighbour.
func (t DrawCabinet) edit(d Desk) edit.Edit {
	_, at := t.neighbour(d)
	cabs := d.Session().Committed().Cabinets
	from := cabs[max(at-1, 0)]
	e := edit.AddCabinet{At: session.PlaceOfCabinet(at), Cabinet: model.Cabinet{
		Name: from.Name, Width: t.width, Height: t.height, Depth: from.Depth, Plinth: from.Plinth,
		Mount: from.Mount, Worktop: from.Worktop, Channel: from.Channel, Reveals: from.Reveals,
		Bays: []model.Bay{{Hardware: from.Bays[len(from.Bays)-1].Hardware, Fronts: stack(t.height)}},
	}}
	return edit.Several{Name: e.Label(), Edits: []edit.Edit{
		e, edit.SetCabinet(e.At, "width", t.width), edit.SetCabinet(e.At, "height", t.height),
	}}
}

// stack is one front for about each 250 mm of height, from one to five, all
// equal, to begin with.
func stack(height length.Length) []model.Front {
	const each = 250 * length.Millimetre
	n := min(max(int((height+each/2)/each), 1), 5)
	fronts := make([]model.Front, n)
	for i := range fronts {
		fronts[i] = model.Front{Share: 1, Drawer: model.DrawerAuto}
	}
	return fronts
}

// draw draws the cabinet, selects it, and ends drawing.
func (t DrawCabinet) draw(d Desk) Tool {
	_, at := t.neighbour(d)
	d.Display(Feedback{})
	if !do(d, t.edit(d)) {
		return t
	}
	d.Session().Select(session.Cabinet(session.PlaceOfCabinet(at)))
	return Idle{}
}

// Press shows the cabinet that would be drawn.
func (t DrawCabinet) Press(d Desk, p Pointer) Tool { return t.pressed(d, p, t) }

// Move shows the cabinet at the pointer.
func (t DrawCabinet) Move(d Desk, p Pointer) Tool {
	if t.figure(d, p) {
		t.on = false
		return t
	}
	return t.aim(d, p).show(d)
}

// Release draws the cabinet.
func (t DrawCabinet) Release(d Desk, p Pointer) Tool {
	t = t.aim(d, p)
	if !t.on {
		d.Display(Feedback{})
		d.Tell(message.New("Point beside the run, where the new cabinet's upper corner is to be. Esc ends drawing."))
		return t
	}
	return t.draw(d)
}

// Fresh is the tool with nothing proposed.
func (DrawCabinet) Fresh() Tool { return DrawCabinet{} }

// Propose shows a cabinet like the last one at the right end of the run.
func (t DrawCabinet) Propose(d Desk) Tool {
	beside, _ := DrawCabinet{}.neighbour(d)
	if beside == nil {
		return t
	}
	return DrawCabinet{pencil: pencil{on: true}, width: beside.Outline.Width(), height: beside.Outline.Height(), level: true}.show(d)
}

// Key makes the cabinet wider or higher by ten steps (with Shift by one), and
// draws it.
func (t DrawCabinet) Key(d Desk, k Stroke) Tool {
	dx, dy := k.way()
	switch {
	case !t.on:
		return t.Propose(d)
	case k.Key == Enter:
		return t.draw(d)
	}
	step := Step(d.Session().Project().Unit, false)
	if !k.Shift {
		step *= 10
	}
	to := t
	to.width += length.Length(dx) * step
	to.height += length.Length(dy) * step
	to.level = to.level && dy == 0
	if to.width <= 0 || to.height <= 0 {
		return t
	}
	return to.show(d)
}

// Field is the cabinet's width; Tab leads to its height.
func (t DrawCabinet) Field(d Desk) (Field, bool) {
	if !t.on {
		t, _ = t.Propose(d).(DrawCabinet)
	}
	if !t.on {
		return Field{}, false
	}
	field := t.field(d, t.width, func(v length.Length) DrawCabinet {
		to := t
		to.width = v
		return to
	})
	field.Next = func(now Tool) (Field, bool) {
		t, ok := now.(DrawCabinet)
		return t.field(d, t.height, func(v length.Length) DrawCabinet {
			to := t
			to.height, to.level = v, false
			return to
		}), ok && t.on
	}
	return field, true
}

// field is the field for one of the cabinet's sizes.
func (t DrawCabinet) field(d Desk, size length.Length, with func(length.Length) DrawCabinet) Field {
	beside, at := t.neighbour(d)
	field := proposal(d, size,
		func(v length.Length) edit.Edit { return with(v).edit(d) },
		func(v length.Length) { d.Hold(with(v).show(d)) },
		func() {
			d.Hold(Idle{})
			d.Display(Feedback{})
			d.Session().Select(session.Cabinet(session.PlaceOfCabinet(at)))
		})
	if beside != nil {
		field.At = t.outline(d, beside).Centre()
	}
	return field
}

// Room is what the tool wants beside the run, left and right: as much as the
// cabinets there take.
func (DrawCabinet) Room(s *session.Session) (left, right length.Length) {
	pl := s.Result().Plan
	if n := len(pl.Cabinets); n > 0 {
		return pl.Cabinets[0].Outline.Width(), pl.Cabinets[n-1].Outline.Width()
	}
	return 0, 0
}
