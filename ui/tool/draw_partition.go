package tool

import (
	"frontlay/layout/plane"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// DrawPartition draws partitions into bays where the pointer is, until Escape.
type DrawPartition struct{}

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
func (t DrawPartition) Press(d Desk, p Pointer) Tool { return t.Move(d, p) }

// Move shows the partition with both clear widths.
func (t DrawPartition) Move(d Desk, p Pointer) Tool {
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
		tell(d, err)
		return t
	}
	at := e.At
	at.Bay++
	at.Front = 0
	d.Session().Select(session.Front(at))
	return t
}

// Escape ends drawing.
func (t DrawPartition) Escape(d Desk) Tool {
	d.Display(Feedback{})
	return Idle{}
}

// Cursor is that of drawing.
func (t DrawPartition) Cursor(Desk, Pointer) Cursor { return Draw }
