package tool

import (
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/session"
)

// DragPartition moves the partition between two bays.
type DragPartition struct {
	drag
	place       model.Place
	left, right plane.Rect // the openings when it began
	grip        length.Length
}

func holdPartition(d Desk, p Pointer) Tool {
	pl := d.Session().Result().Plan
	next := p.Thing.Place
	next.Bay++
	l, r := session.BayOf(pl, p.Thing.Place), session.BayOf(pl, next)
	if l == nil || r == nil {
		return nil
	}
	d.Session().Select(p.Thing)
	return DragPartition{place: p.Thing.Place, left: l.Opening, right: r.Opening, grip: p.At.X - l.Opening.Max.X}
}

// Press keeps hold.
func (t DragPartition) Press(Desk, Pointer) Tool { return t }

// Move previews the partition at the pointer.
func (t DragPartition) Move(d Desk, p Pointer) Tool {
	s := d.Session()
	t.begin(s)
	width := (p.At.X - t.grip - t.left.Min.X).RoundTo(Step(s.Project().Unit, p.Free))
	sum := t.left.Width() + t.right.Width()
	err := s.Preview(edit.MovePartition{Left: t.place, WidthLeft: width, WidthRight: sum - width})
	if err != nil {
		d.Display(Feedback{Labels: []Label{{At: p.At, Say: Said(err), Warn: true}}})
		return t
	}
	next := t.place
	next.Bay++
	var labels []Label
	for _, at := range []model.Place{t.place, next} {
		if b := session.BayOf(s.Result().Plan, at); b != nil {
			c := b.Opening.Centre()
			labels = append(labels, Label{At: plane.Point{X: c.X, Y: p.At.Y}, Say: message.New("%v", b.Opening.Width()), Centred: true, Within: b.Opening})
		}
	}
	d.Display(Feedback{Labels: labels})
	return t
}

// Cursor is that of a move left and right.
func (t DragPartition) Cursor(Desk, Pointer) Cursor { return LeftRight }
