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

// drag is what tools have in common that change the project while the button is
// held: the first move begins a step, letting go ends it, Esc gives it up.
type drag struct {
	moved bool
}

// begin begins the step at the first move.
func (g *drag) begin(s *session.Session) {
	if !g.moved {
		s.Begin()
		g.moved = true
	}
}

// Release makes what was dragged one step.
func (g drag) Release(d Desk, _ Pointer) Tool {
	if g.moved {
		d.Session().Commit()
		d.Display(Feedback{})
	}
	return Idle{}
}

// Escape gives back what was.
func (g drag) Escape(d Desk) Tool {
	d.Session().Cancel()
	d.Display(Feedback{})
	return Idle{}
}

// DragDivision moves the division between two fronts of a stack. The line is
// the upper edge of the lower front; it stands where the pointer is, rounded to
// the step or drawn to a neighbour's line.
type DragDivision struct {
	drag
	place        model.Place
	lower, upper plane.Rect    // the faces when it began
	grip         length.Length // pointer above the line when it began
}

// holdDivision takes hold of the division under the pointer, nil where there is
// none.
func holdDivision(d Desk, p Pointer) Tool {
	pl := d.Session().Result().Plan
	above := p.Thing.Place
	above.Front++
	lo, up := pl.FrontAt(p.Thing.Place), pl.FrontAt(above)
	if lo == nil || up == nil {
		return nil
	}
	d.Session().Select(p.Thing)
	return DragDivision{place: p.Thing.Place, lower: lo.Face, upper: up.Face, grip: p.At.Y - lo.Face.Max.Y}
}

// Press keeps hold.
func (t DragDivision) Press(Desk, Pointer) Tool { return t }

// Move previews the division at the pointer.
func (t DragDivision) Move(d Desk, p Pointer) Tool {
	s := d.Session()
	t.begin(s)
	pl := s.CommittedResult().Plan
	want := p.At.Y - t.grip
	step := Step(s.Project().Unit, p.Free)
	line := t.lower.Min.Y + (want - t.lower.Min.Y).RoundTo(step)
	var show Feedback
	if !p.Free {
		gap := t.upper.Min.Y - t.lower.Max.Y
		near := levels(pl, t.place)
		if l, ok := nearest(want, d.Reach(), near); ok {
			line = l.From.Y
			show.Lines = append(show.Lines, joined(l, t.lower.Min.X, t.lower.Max.X))
		} else if l, ok := nearest(want+gap, d.Reach(), near); ok {
			line = l.From.Y - gap
			show.Lines = append(show.Lines, joined(l, t.lower.Min.X, t.lower.Max.X))
		} else if l, ok := nearest(want+gap, d.Reach(), t.rows(pl)); ok {
			line = l.From.Y - gap
			show.Lines = append(show.Lines, l)
		}
	}
	if err := t.preview(s, line); err != nil {
		show.Labels = append(show.Labels, Label{At: p.At, Say: Said(err), Warn: true})
		d.Display(show)
		return t
	}
	show.Labels = append(show.Labels, t.figures(s)...)
	d.Display(show)
	return t
}

// rows are the heights that bring the upper front's runner onto a hole row.
func (t DragDivision) rows(pl *plan.Plan) []GuideLine {
	above := t.place
	above.Front++
	if f := pl.FrontAt(above); f != nil {
		return rowLevels(pl, f)
	}
	return nil
}

// preview moves the line to a height of the run. Where other fronts of the
// stack are computed, their rounding can shift the pair; the second pass takes
// that back, so that the line is where the pointer is.
func (t DragDivision) preview(s *session.Session, line length.Length) error {
	sum := t.lower.Height() + t.upper.Height()
	line = t.lower.Min.Y + dragged(line-t.lower.Min.Y, sum, min(leastDraggedFront, t.lower.Height(), t.upper.Height()))
	lower := line - t.lower.Min.Y
	for range 2 {
		if err := s.Preview(edit.MoveDivision{Below: t.place, Lower: lower, Upper: sum - lower}); err != nil {
			return err
		}
		f := s.Result().Plan.FrontAt(t.place)
		if f == nil || f.Face.Max.Y == line {
			return nil
		}
		lower += line - f.Face.Max.Y
	}
	return nil
}

// figures writes both heights into the fronts.
func (t DragDivision) figures(s *session.Session) []Label {
	var labels []Label
	above := t.place
	above.Front++
	for _, at := range []model.Place{t.place, above} {
		if f := s.Result().Plan.FrontAt(at); f != nil {
			labels = append(labels, Label{At: f.Face.Centre(), Say: message.New("%v", f.Face.Height()), Centred: true, Within: f.Face})
		}
	}
	return labels
}

// Cursor is that of a move up and down.
func (t DragDivision) Cursor(Desk, Pointer) Cursor { return UpDown }

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
	l, r := pl.BayAt(p.Thing.Place), pl.BayAt(next)
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
	width = dragged(width, sum, min(leastDraggedBay, t.left.Width(), t.right.Width()))
	err := s.Preview(edit.MovePartition{Left: t.place, WidthLeft: width, WidthRight: sum - width})
	if err != nil {
		d.Display(Feedback{Labels: []Label{{At: p.At, Say: Said(err), Warn: true}}})
		return t
	}
	next := t.place
	next.Bay++
	var labels []Label
	for _, at := range []model.Place{t.place, next} {
		if b := s.Result().Plan.BayAt(at); b != nil {
			c := b.Opening.Centre()
			labels = append(labels, Label{At: plane.Point{X: c.X, Y: p.At.Y}, Say: message.New("%v", b.Opening.Width()), Centred: true, Within: b.Opening})
		}
	}
	d.Display(Feedback{Labels: labels})
	return t
}

// Cursor is that of a move left and right.
func (t DragPartition) Cursor(Desk, Pointer) Cursor { return LeftRight }
