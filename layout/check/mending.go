package check

import (
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// mender finds the changes that may mend what a search finds; layout.Offered tells
// which of them do.
type mender struct{ plan *plan.Plan }

// farthest is how many fronts away in its stack one is looked for that could
// give height to another: few, so that high stacks are checked quickly.
const farthest = 6

// higher are the changes that make a front higher by at least more: by the
// division to the higher one of its neighbours, by the other one, by what the
// fronts without a height of their own share, or by the highest front near. The
// height is a whole multiple of the rounding step.
func (m mender) higher(f *plan.Front, more length.Length) []edit.Edit {
	to := m.height(f, more)
	by := to - f.Face.Height()
	above, below := m.inStack(f, 1), m.inStack(f, -1)
	var fixes []edit.Edit
	if above != nil {
		fixes = append(fixes, moved(f, above, by, f))
	}
	if below != nil {
		fixes = append(fixes, moved(below, f, -by, f))
	}
	if above != nil && below != nil && below.Face.Height() > above.Face.Height() {
		fixes[0], fixes[1] = fixes[1], fixes[0]
	}
	fixes = append(fixes, edit.SetHeight{At: f.Place, Height: to})
	var giver *plan.Front
	for k := -farthest; k <= farthest; k++ {
		if g := m.inStack(f, k); g != nil && (k < -1 || k > 1) && (giver == nil || g.Face.Height() > giver.Face.Height()) {
			giver = g
		}
	}
	if giver != nil {
		less := giver.Face.Height() - by
		fixes = append(fixes, edit.Several{Name: twoHeights(f, to, giver, less), Edits: []edit.Edit{
			edit.SetHeight{At: f.Place, Height: to},
			edit.SetHeight{At: giver.Place, Height: less},
		}})
	}
	return fixes
}

// height is the least height of a front that is higher by at least more: a whole
// multiple of the rounding step.
func (m mender) height(f *plan.Front, more length.Length) length.Length {
	return (f.Face.Height() + more).CeilTo(m.plan.Project.RoundingStep())
}

// moved is the change that moves the division between two fronts up, or down for
// a negative length, named by what comes of it, one of them first.
func moved(lower, upper *plan.Front, up length.Length, first *plan.Front) edit.Edit {
	e := edit.MoveDivision{Below: lower.Place, Lower: lower.Face.Height() + up, Upper: upper.Face.Height() - up}
	name := twoHeights(lower, e.Lower, upper, e.Upper)
	if first == upper {
		name = twoHeights(upper, e.Upper, lower, e.Lower)
	}
	return edit.Several{Name: name, Edits: []edit.Edit{e}}
}

func twoHeights(f *plan.Front, high length.Length, g *plan.Front, other length.Length) message.Message {
	return message.New("%v %v high, %v %v high", f.Name, high, g.Name, other)
}

// inStack is the front so many places above another one in its stack, below it
// for a negative number; nil where there is none.
func (m mender) inStack(f *plan.Front, up int) *plan.Front {
	at := f.Place
	at.Front += up
	if m.plan.Project.FrontAt(at) == nil {
		return nil
	}
	return m.plan.FrontAt(at)
}

// ownDrops are the changes that let the layout work out drops which were set by
// hand: of a front and of the one above it.
func (m mender) ownDrops(f *plan.Front) []edit.Edit {
	var fixes []edit.Edit
	for _, at := range []model.Place{f.Place, {Cabinet: f.Place.Cabinet, Bay: f.Place.Bay, Front: f.Place.Front + 1}} {
		if src := m.plan.Project.FrontAt(at); src != nil && src.Drop != nil {
			fixes = append(fixes, edit.Set{At: at, Key: "drop"})
		}
	}
	return fixes
}

// moveHandle are the changes that move the handle that a hole is of by a step in the
// front's face frame; none where it would lie past the front's edge. The front gets a
// handle of its own that way, placed by its edges. Of two, the other one moves alike.
func (m mender) moveHandle(f *plan.Front, h *plan.Hole, by plane.Point) []edit.Edit {
	handle, second := f.HandleWith(h)
	if handle == nil {
		return nil
	}
	var edits []edit.Edit
	past := false
	set := func(key string, v length.Length) {
		past = past || v <= 0
		edits = append(edits, edit.Set{At: f.Place, Key: "handle." + key, Value: v})
	}
	to := handle.At.Add(by)
	if by.X != 0 && second {
		set("from_right", f.Face.Width()-to.X)
	} else if by.X != 0 {
		set("from_left", to.X)
	}
	if by.Y != 0 {
		set("from_top", f.Face.Height()-to.Y)
	}
	if past {
		return nil
	}
	say := message.New("Move the handle up by %v", by.Y)
	switch {
	case by.Y < 0:
		say = message.New("Move the handle down by %v", -by.Y)
	case by.X < 0:
		say = message.New("Move the handle to the left by %v", -by.X)
	case by.X > 0:
		say = message.New("Move the handle to the right by %v", by.X)
	}
	return []edit.Edit{edit.Several{Name: say, Edits: edits}}
}

// oneReveal names a reveal in words and by its key.
type oneReveal struct {
	where message.Message
	key   string
}

func gapReveal() oneReveal    { return oneReveal{message.New("between fronts"), "reveals.gap"} }
func topReveal() oneReveal    { return oneReveal{message.New("at the top"), "reveals.top"} }
func bottomReveal() oneReveal { return oneReveal{message.New("at the bottom"), "reveals.bottom"} }
func leftReveal() oneReveal   { return oneReveal{message.New("at the left"), "reveals.left"} }
func rightReveal() oneReveal  { return oneReveal{message.New("at the right"), "reveals.right"} }

// otherReveal are the changes that give a reveal of a cabinet another size:
// where it follows the project, first that of the project, then of the cabinet
// alone. None where the size would be less than nothing.
func (m mender) otherReveal(c *plan.Cabinet, which oneReveal, to length.Length) []edit.Edit {
	if to < 0 {
		return nil
	}
	return m.revealTo(c, which, to)
}

// revealTo are the changes that give a reveal of a cabinet a size, also one below zero.
func (m mender) revealTo(c *plan.Cabinet, which oneReveal, to length.Length) []edit.Edit {
	var fixes []edit.Edit
	if m.plan.Project.Cabinets[c.Place.Cabinet].Reveals == nil {
		fixes = append(fixes, m.projectReveal(which, to))
	}
	if len(fixes) > 0 && len(m.plan.Cabinets) == 1 {
		return fixes // the project is this cabinet
	}
	return append(fixes, edit.Several{
		Name:  message.New("Set the gap %v to %v", which.where, to),
		Edits: []edit.Edit{edit.SetCabinet(c.Place, which.key, to)},
	})
}

func (m mender) projectReveal(which oneReveal, to length.Length) edit.Edit {
	return edit.Several{
		Name:  message.New("Set the gap %v to %v in the whole project", which.where, to),
		Edits: []edit.Edit{edit.Set{At: model.Whole, Key: which.key, Value: to}},
	}
}

// widen are the changes that let a front reach further by at its left or right
// edge.
func (m mender) widen(f *plan.Front, right bool, by length.Length) []edit.Edit {
	which, less, to := m.less(f, right, by)
	fixes := m.otherReveal(&m.plan.Cabinets[f.Place.Cabinet], which, to)
	if less == by { // at the cabinet's side
		fixes = append(fixes, m.lessBetween(by)...)
	}
	return fixes
}

// narrower says what widen does.
func (m mender) narrower(f *plan.Front, right bool, by length.Length) message.Message {
	return smaller(m.less(f, right, by))
}

func smaller(which oneReveal, by, to length.Length) message.Message {
	if to < 0 {
		return message.New("make the gap %v smaller by %v", which.where, by)
	}
	return message.New("make the gap %v smaller by %v, to %v", which.where, by, to)
}

// less is which gap must be smaller, by how much and how wide it is then, so that a
// front reaches further at its left or right edge: that at the cabinet's side, half
// of one elsewhere.
func (m mender) less(f *plan.Front, right bool, by length.Length) (which oneReveal, less, to length.Length) {
	c := &m.plan.Cabinets[f.Place.Cabinet]
	r := c.Reveals
	if right {
		if f.Inset || f.Place.Bay+max(f.Bays, 1) >= len(c.Bays) {
			return rightReveal(), by, r.Right - by
		}
	} else if f.Inset || f.Place.Bay == 0 {
		return leftReveal(), by, r.Left - by
	}
	return gapReveal(), 2 * by, r.Gap - 2*by
}

// widenBoth makes the fronts of a bay wider at both edges alike, where these are
// its cabinet's sides.
func (m mender) widenBoth(f *plan.Front, by length.Length) []edit.Edit {
	c := &m.plan.Cabinets[f.Place.Cabinet]
	r := c.Reveals
	if !f.Inset && max(f.Bays, 1) < len(c.Bays) || r.Left < by || r.Right < by {
		return nil
	}
	return []edit.Edit{edit.Several{
		Name:  message.New("Set the gaps at the left and right to %v and %v", r.Left-by, r.Right-by),
		Edits: []edit.Edit{edit.SetCabinet(c.Place, leftReveal().key, r.Left-by), edit.SetCabinet(c.Place, rightReveal().key, r.Right-by)},
	}}
}

// lessBetween makes the one gap between cabinets smaller by twice an amount, where
// fronts of neighbouring cabinets share it.
func (m mender) lessBetween(by length.Length) []edit.Edit {
	to := m.plan.Project.Reveals.Gap - 2*by
	if !m.plan.Project.SharedGaps || to < 0 {
		return nil
	}
	return []edit.Edit{m.projectReveal(gapReveal(), to)}
}
