package check

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

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
func (s *search) otherReveal(c *plan.Cabinet, which oneReveal, to length.Length) []edit.Edit {
	if to < 0 {
		return nil
	}
	var fixes []edit.Edit
	if s.plan.Project.Cabinets[c.Place.Cabinet].Reveals == nil {
		fixes = append(fixes, s.projectReveal(which, to))
	}
	if len(fixes) > 0 && len(s.plan.Cabinets) == 1 {
		return fixes // the project is this cabinet
	}
	return append(fixes, edit.Several{
		Name:  message.New("Set the gap %v to %v", which.where, to),
		Edits: []edit.Edit{edit.SetCabinet(c.Place, which.key, to)},
	})
}

func (s *search) projectReveal(which oneReveal, to length.Length) edit.Edit {
	return edit.Several{
		Name:  message.New("Set the gap %v to %v in the whole project", which.where, to),
		Edits: []edit.Edit{edit.Set{At: model.Whole, Key: which.key, Value: to}},
	}
}

// widen are the changes that let a front reach further by at its left or right
// edge: a smaller reveal at the cabinet's side, half of a smaller gap elsewhere.
func (s *search) widen(f *plan.Front, right bool, by length.Length) []edit.Edit {
	c := &s.plan.Cabinets[f.Place.Cabinet]
	r := c.Reveals
	if right {
		if f.Inset || f.Place.Bay+max(f.Bays, 1) >= len(c.Bays) {
			return append(s.otherReveal(c, rightReveal(), r.Right-by), s.closer(by)...)
		}
	} else if f.Inset || f.Place.Bay == 0 {
		return append(s.otherReveal(c, leftReveal(), r.Left-by), s.closer(by)...)
	}
	return s.otherReveal(c, gapReveal(), r.Gap-2*by)
}

// widenBoth makes the fronts of a bay wider at both edges alike, where these are
// its cabinet's sides.
func (s *search) widenBoth(f *plan.Front, by length.Length) []edit.Edit {
	c := &s.plan.Cabinets[f.Place.Cabinet]
	r := c.Reveals
	if !f.Inset && max(f.Bays, 1) < len(c.Bays) || r.Left < by || r.Right < by {
		return nil
	}
	return []edit.Edit{edit.Several{
		Name:  message.New("Set the gaps at the left and right to %v and %v", r.Left-by, r.Right-by),
		Edits: []edit.Edit{edit.SetCabinet(c.Place, leftReveal().key, r.Left-by), edit.SetCabinet(c.Place, rightReveal().key, r.Right-by)},
	}}
}

// closer makes the one gap between cabinets smaller by twice an amount, where
// fronts of neighbouring cabinets share it.
func (s *search) closer(by length.Length) []edit.Edit {
	to := s.plan.Project.Reveals.Gap - 2*by
	if !s.plan.Project.SharedGaps || to < 0 {
		return nil
	}
	return []edit.Edit{s.projectReveal(gapReveal(), to)}
}
