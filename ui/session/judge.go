package session

import (
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Judge tells whether an edit can be made and leaves the stacks possible; the
// error says what would be possible. Nothing changes.
func (s *Session) Judge(e edit.Edit) error {
	next, err := e.Apply(s.Committed())
	if err != nil {
		return err
	}
	h, ok := e.(edit.SetHeight)
	if !ok {
		return nil
	}
	before, after := BayOf(s.result.Plan, h.At), BayOf(s.solve(next).Plan, h.At)
	if before == nil || after == nil || after.Over <= 0 || after.Over <= before.Over {
		return nil
	}
	if most := room(next, h.At, before.Stack.Height()); most > 0 {
		return message.New("%v is too high for this stack: at most %v is possible beside the other fronts.", h.Height, most)
	}
	return message.New("%v is too high for this stack, which has no room left. Lower another front first.", h.Height)
}

// least is what a computed front should keep when another grows.
const least = 10 * length.Millimetre

// room is the greatest height that a front can have in a stack beside the fixed
// ones, their gaps, and what the computed ones need at least.
func room(p *model.Project, at model.Place, stack length.Length) length.Length {
	gap := p.RevealsOf(p.CabinetAt(at)).Gap
	for i, f := range p.BayAt(at).Fronts {
		switch {
		case i == at.Front:
			continue
		case f.Height > 0:
			stack -= f.Height
		default:
			stack -= max(f.Least, least)
		}
		stack -= gap
	}
	return stack
}
