package tool

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// DrawCabinet draws a new cabinet at the right end of the run: the pointer is
// its upper right corner.
type DrawCabinet struct{ pencil }

// cabinet works out the cabinet that the pointer would draw. Its height is that
// of its neighbour where the pointer is near.
func (DrawCabinet) cabinet(d Desk, p Pointer) (edit.AddCabinet, Feedback, bool) {
	s := d.Session()
	pl := s.CommittedResult().Plan
	n := len(pl.Cabinets)
	if n == 0 {
		return edit.AddCabinet{}, Feedback{}, false
	}
	last := &pl.Cabinets[n-1]
	left, floor := pl.Extent.Max.X, last.Outline.Min.Y
	if p.At.X <= left || p.At.Y <= floor {
		return edit.AddCabinet{}, Feedback{}, false
	}
	step := 10 * Step(s.Project().Unit, false)
	if p.Free {
		step = Step(s.Project().Unit, false)
	}
	width, height := (p.At.X - left).RoundTo(step), (p.At.Y - floor).RoundTo(step)
	var show Feedback
	if top := last.Outline.Max.Y; (p.At.Y-top).Abs() <= 2*d.Reach() && !p.Free {
		height = top - floor
		show.Lines = append(show.Lines, GuideLine{
			From: plane.Point{X: last.Outline.Min.X, Y: top}, To: plane.Point{X: left + width, Y: top}, Snapped: true,
		})
	}
	from := s.Committed().Cabinets[n-1]
	cab := model.Cabinet{
		Name: from.Name, Width: width, Height: height, Depth: from.Depth, Plinth: from.Plinth,
		Mount: from.Mount, Worktop: from.Worktop, Channel: from.Channel, Reveals: from.Reveals,
		Bays: []model.Bay{{Hardware: from.Bays[len(from.Bays)-1].Hardware, Fronts: stack(height)}},
	}
	show.Outline = plane.R(left, floor, left+width, floor+height)
	show.Labels = []Label{{At: p.At, Say: message.New("%v wide, %v high", width, height)}}
	return edit.AddCabinet{At: model.Place{Cabinet: n, Bay: -1, Front: -1}, Cabinet: cab}, show, true
}

// stack is one front for about each 250 mm of height, from one to five, all
// equal, to begin with.
func stack(height length.Length) []model.Front {
	n := min(max(int(height/(250*length.Millimetre)), 1), 5)
	fronts := make([]model.Front, n)
	for i := range fronts {
		fronts[i] = model.Front{Share: 1, Drawer: model.DrawerAuto}
	}
	return fronts
}

// Press shows the cabinet that would be drawn.
func (t DrawCabinet) Press(d Desk, p Pointer) Tool {
	if t.figure(d, p) {
		return held{press: p, then: t}
	}
	return t.Move(d, p)
}

// Move shows the cabinet's outline with its sizes.
func (t DrawCabinet) Move(d Desk, p Pointer) Tool {
	if t.figure(d, p) {
		return t
	}
	_, show, _ := t.cabinet(d, p)
	d.Display(show)
	return t
}

// Release draws the cabinet.
func (t DrawCabinet) Release(d Desk, p Pointer) Tool {
	e, _, ok := t.cabinet(d, p)
	d.Display(Feedback{})
	if !ok {
		d.Tell(message.New("Point to the right of the run, where the new cabinet's upper right corner is to be. Esc ends drawing."))
		return t
	}
	if err := d.Session().Do(edit.Several{Name: e.Label(), Edits: []edit.Edit{
		e, edit.SetCabinet(e.At, "width", e.Cabinet.Width),
		edit.SetCabinet(e.At, "height", e.Cabinet.Height),
	}}); err != nil {
		d.Tell(Said(err))
		return t
	}
	d.Session().Select(session.Cabinet(e.At))
	return Idle{}
}
