package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// MoveDivision moves the division above the front at Below. Lower and Upper are
// the heights that the two fronts at the division are to have; the caller works
// them out from the plan, so that their sum is what it was. Where another front
// of the stack takes a share of what is left, both become fixed; otherwise one
// of the two goes on taking the rest, so that the stack still follows the
// cabinet when that is made higher.
type MoveDivision struct {
	Below        model.Place
	Lower, Upper length.Length
}

// Label names the change.
func (e MoveDivision) Label() message.Message {
	return message.New("Move division: %v below, %v above", e.Lower, e.Upper)
}

// Apply makes the change.
func (e MoveDivision) Apply(p *model.Project) (*model.Project, error) {
	c, lower, err := front(p, e.Below)
	if err != nil {
		return nil, err
	}
	above := e.Below
	above.Front++
	upper := c.FrontAt(above)
	if upper == nil {
		return nil, message.New("There is no front above this one, so there is no division to move.")
	}
	if e.Lower < leastFront || e.Upper < leastFront {
		return nil, message.New("A front can't be lower than %v: the one below the division can be from %v to %v high.",
			leastFront, leastFront, e.Lower+e.Upper-leastFront)
	}
	for _, f := range []*model.Front{lower, upper} {
		if err := unlocked(f); err != nil {
			return nil, err
		}
	}
	lowerShares, upperShares := lower.Height <= 0, upper.Height <= 0
	other := false
	for i, f := range c.BayAt(e.Below).Fronts {
		if i != e.Below.Front && i != above.Front && f.Height <= 0 {
			other = true
		}
	}
	lined := lower.LineUp != nil // its top edge is the division, which now is where it was put
	if upper.LineUp == nil && (other || lined || !upperShares) {
		fix(upper, e.Upper)
	}
	if other || lined || upperShares || !lowerShares {
		fix(lower, e.Lower)
	}
	return c, nil
}
