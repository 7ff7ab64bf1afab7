package tool

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// pencil is what the tools that draw have in common.
type pencil struct{}

// Escape ends drawing.
func (pencil) Escape(d Desk) Tool {
	d.Display(Feedback{})
	return Idle{}
}

// Cursor is that of drawing, or of typing over a figure.
func (pencil) Cursor(_ Desk, p Pointer) Cursor {
	if typed(p.Thing.Kind) {
		return Typing
	}
	return Draw
}

// figure tells that the pointer is over a figure that can be typed, with every
// tool, and shows that.
func (pencil) figure(d Desk, p Pointer) bool {
	if !typed(p.Thing.Kind) {
		return false
	}
	d.Display(Feedback{Under: []drawing.Subject{p.Thing}})
	return true
}

// DrawDivision draws divisions across fronts where the pointer is, until Escape.
type DrawDivision struct{ pencil }

// split works out the division that a press would draw.
func (DrawDivision) split(d Desk, p Pointer) (edit.SplitFront, Feedback, bool) {
	s := d.Session()
	at := p.Thing.Place
	if Selectable(p.Thing).Kind != drawing.FrontThing {
		return edit.SplitFront{}, Feedback{}, false
	}
	pl := s.Result().Plan
	f, c := session.FrontOf(pl, at), session.CabinetOf(pl, at)
	if f == nil || c == nil {
		return edit.SplitFront{}, Feedback{}, false
	}
	gap, step := c.Reveals.Gap, Step(s.Project().Unit, p.Free)
	most := f.Face.Height() - gap - step
	if most < step {
		return edit.SplitFront{}, Feedback{}, false // no room for a gap
	}
	line := f.Face.Min.Y + (p.At.Y - gap/2 - f.Face.Min.Y).RoundTo(step)
	var show Feedback
	if !p.Free {
		near := levels(pl, at)
		if l, ok := nearest(p.At.Y-gap/2, d.Reach(), near); ok && l.From.Y >= f.Face.Min.Y+step && l.From.Y <= f.Face.Min.Y+most {
			line = l.From.Y
			show.Lines = append(show.Lines, joined(l, f.Face.Min.X, f.Face.Max.X))
		}
	}
	line = min(max(line, f.Face.Min.Y+step), f.Face.Min.Y+most) // inside the front, however near its edge the pointer is
	e := edit.SplitFront{At: at, Lower: line - f.Face.Min.Y, Upper: f.Face.Max.Y - line - gap}
	for _, y := range []length.Length{line, line + gap} {
		show.Lines = append(show.Lines, GuideLine{From: plane.Point{X: f.Face.Min.X, Y: y}, To: plane.Point{X: f.Face.Max.X, Y: y}})
	}
	lower, upper := f.Face, f.Face
	lower.Max.Y, upper.Min.Y = line, line+gap
	show.Labels = append(show.Labels,
		Label{At: lower.Centre(), Say: message.New("%v", e.Lower), Centred: true, Within: lower},
		Label{At: upper.Centre(), Say: message.New("%v", e.Upper), Centred: true, Within: upper})
	return e, show, true
}

// Press does nothing yet: the division is drawn where the button is let go.
func (t DrawDivision) Press(d Desk, p Pointer) Tool {
	if t.figure(d, p) {
		return held{press: p, then: t}
	}
	return t.Move(d, p)
}

// Move shows the line with both heights.
func (t DrawDivision) Move(d Desk, p Pointer) Tool {
	if t.figure(d, p) {
		return t
	}
	_, show, _ := t.split(d, p)
	d.Display(show)
	return t
}

// Release draws the division.
func (t DrawDivision) Release(d Desk, p Pointer) Tool {
	e, _, ok := t.split(d, p)
	d.Display(Feedback{})
	if !ok {
		d.Tell(message.New("Point at a front to draw a division across it. Esc ends drawing."))
		return t
	}
	if err := d.Session().Do(e); err != nil {
		d.Tell(Said(err))
	}
	return t
}

// DrawPartition draws partitions into bays where the pointer is, until Escape.
type DrawPartition struct{ pencil }

func (DrawPartition) split(d Desk, p Pointer) (edit.AddBay, Feedback, bool) {
	s := d.Session()
	pl := s.Result().Plan
	for i := range pl.Cabinets {
		for j := range pl.Cabinets[i].Bays {
			b := &pl.Cabinets[i].Bays[j]
			if !b.Opening.Contains(p.At) {
				continue
			}
			thick := s.Project().Boards.Carcass.Thickness
			step := Step(s.Project().Unit, p.Free)
			most := b.Opening.Width() - thick - step
			if most < step {
				continue // no room for a board
			}
			left := (p.At.X - thick/2 - b.Opening.Min.X).RoundTo(step)
			left = min(max(left, step), most) // inside the bay, however near its side the pointer is
			right := b.Opening.Width() - left - thick
			x := b.Opening.Min.X + left
			board := plane.R(x, b.Opening.Min.Y, x+thick, b.Opening.Max.Y)
			show := Feedback{Outline: board}
			for _, side := range []plane.Rect{
				plane.R(b.Opening.Min.X, b.Opening.Min.Y, x, b.Opening.Max.Y),
				plane.R(x+thick, b.Opening.Min.Y, b.Opening.Max.X, b.Opening.Max.Y),
			} {
				at := plane.Point{X: side.Centre().X, Y: p.At.Y}
				show.Labels = append(show.Labels, Label{At: at, Say: message.New("%v", side.Width()), Centred: true, Within: side})
			}
			return edit.AddBay{At: b.Place, Left: left, Right: right}, show, true
		}
	}
	return edit.AddBay{}, Feedback{}, false
}

// Press shows where the partition would be.
func (t DrawPartition) Press(d Desk, p Pointer) Tool {
	if t.figure(d, p) {
		return held{press: p, then: t}
	}
	return t.Move(d, p)
}

// Move shows the partition with both clear widths.
func (t DrawPartition) Move(d Desk, p Pointer) Tool {
	if t.figure(d, p) {
		return t
	}
	_, show, _ := t.split(d, p)
	d.Display(show)
	return t
}

// Release draws the partition.
func (t DrawPartition) Release(d Desk, p Pointer) Tool {
	e, _, ok := t.split(d, p)
	d.Display(Feedback{})
	if !ok {
		d.Tell(message.New("Point into a bay to draw a partition. Esc ends drawing."))
		return t
	}
	if err := d.Session().Do(e); err != nil {
		d.Tell(Said(err))
		return t
	}
	at := e.At
	at.Bay++
	at.Front = 0
	d.Session().Select(session.Front(at))
	return t
}
