package session

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Judge tells whether an edit can be made and leaves the stacks possible; the
// error says what would be possible. Nothing changes.
func (s *Session) Judge(e edit.Edit) error {
	h, ok := e.(edit.SetHeight)
	next, err := e.Apply(s.Committed())
	if err != nil {
		if ok {
			return s.judgeHeight(h, err)
		}
		return err
	}
	if !ok {
		return nil
	}
	before, after := s.result.Plan.BayAt(h.At), s.solve(next).Plan.BayAt(h.At)
	if before == nil || after == nil || after.Over <= 0 || after.Over <= before.Over {
		return nil
	}
	if most := room(next, h.At, before.Stack.Height()); most > 0 {
		return tooHigh(h.Height, most)
	}
	return message.New("%v is too high for this stack, which has no room left. Lower another front first.", h.Height)
}

// judgeHeight says what the stack leaves for a height that is refused as greater
// than any front can have; another refusal stays what it is.
func (s *Session) judgeHeight(h edit.SetHeight, refused error) error {
	if _, err := (edit.SetHeight{At: h.At, Height: figure.Positive}).Apply(s.Committed()); err != nil || h.Height <= 0 {
		return refused
	}
	b := s.result.Plan.BayAt(h.At)
	if b == nil {
		return refused
	}
	if most := room(s.Committed(), h.At, b.Stack.Height()); most > 0 {
		return tooHigh(h.Height, most)
	}
	return refused
}

// tooHigh says the greatest height that is possible.
func tooHigh(height, most length.Length) error {
	return message.New("%v is too high for this stack: at most %v is possible beside the other fronts.", height, most)
}

// room is the greatest height that a front can have in a stack beside the fixed
// ones, their gaps, and what the computed ones need: their least height, or the
// step that heights are rounded to.
func room(p *model.Project, at model.Place, stack length.Length) length.Length {
	for i, f := range p.BayAt(at).Fronts {
		if i > 0 {
			stack -= p.GapAbove(model.Place{Cabinet: at.Cabinet, Bay: at.Bay, Front: i - 1})
		}
		switch {
		case i == at.Front:
			continue
		case f.Height > 0:
			stack -= f.Height
		default:
			stack -= max(f.Least, p.RoundingStep())
		}
	}
	return stack
}
