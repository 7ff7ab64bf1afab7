package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// CopyStack gives the bays at To the stack of fronts of the bay at From, and the
// rule by which they share the height. Heights are those of the fronts of that
// bay in the plan, bottom to top: where fronts of it line up with others, the
// copies get heights of their own instead, all but the topmost of those that
// had none. Drawers that the hardware of a bay does not have are the tallest
// that fit there.
type CopyStack struct {
	From    model.Place
	To      []model.Place
	Heights []length.Length
}

// Label names the change.
func (e CopyStack) Label() message.Message {
	if len(e.To) == 1 {
		return message.New("Copy the stack to 1 bay")
	}
	return message.New("Copy the stack to %v bays", len(e.To))
}

// Apply makes the change.
func (e CopyStack) Apply(p *model.Project) (*model.Project, error) {
	c, from, err := bay(p, e.From)
	if err != nil {
		return nil, err
	}
	if len(e.To) == 0 {
		return nil, message.New("Select the bays that are to get this stack too.")
	}
	stack := from.Clone()
	if err := standAlone(stack.Fronts, e.Heights); err != nil {
		return nil, err
	}
	for _, at := range e.To {
		b := c.BayAt(at)
		if b == nil {
			return nil, message.New("There is no bay at this place any more. Select one in the drawing.")
		}
		b.Fronts, b.Division = stack.Clone().Fronts, stack.Division
		refit(c, b)
		if linesUpWith(c, e.From, at) { // what it lined up with is gone
			from.Fronts = stack.Clone().Fronts
		}
	}
	return c, nil
}

// standAlone gives the fronts of a stack of which some line up with others the
// heights that they have in the plan. The topmost of those without a height of
// their own goes on taking what is left.
func standAlone(fronts []model.Front, heights []length.Length) error {
	lined, rest := false, -1
	for i := range fronts {
		lined = lined || fronts[i].LineUp != nil
		if fronts[i].Height <= 0 {
			rest = i
		}
	}
	if !lined {
		return nil
	}
	if len(heights) != len(fronts) {
		return message.New("The stack has changed meanwhile. Select its fronts again.")
	}
	for i := range fronts {
		f := &fronts[i]
		f.LineUp = nil
		if f.Height <= 0 && i != rest {
			fix(f, heights[i])
		}
	}
	return nil
}

// linesUpWith tells whether a front of the bay at one place lines up with one of
// the bay at another.
func linesUpWith(p *model.Project, from, with model.Place) bool {
	for _, f := range p.BayAt(from).Fronts {
		if up := f.LineUp; up != nil && max(up.Bay, 1) == with.Bay+1 &&
			(up.Cabinet == p.CabinetAt(with).Name || up.Cabinet == "" && from.Cabinet == with.Cabinet) {
			return true
		}
	}
	return false
}
