package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetCheckLimit sets a figure that the check compares with, from 0 to 2 m (the
// width from which a front is wide: to 20 m); nil for what is usual.
type SetCheckLimit struct {
	Which model.Limit
	Value *length.Length
}

// Label names the change.
func (e SetCheckLimit) Label() message.Message { return message.New("Limits of the check") }

// Apply makes the change. The least reveal must not be above the greatest where
// both are given.
func (e SetCheckLimit) Apply(p *model.Project) (*model.Project, error) {
	if !e.Which.Known() {
		return nil, message.New("The check has no such limit.")
	}
	c := p.Clone()
	if e.Value == nil {
		*c.Checks.Limits.Of(e.Which) = nil
		return c, nil
	}
	most := greatestFitting
	if e.Which == model.WideFront {
		most = greatestBox
	}
	v := *e.Value
	if err := within(v, 0, most); err != nil {
		return nil, err
	}
	*c.Checks.Limits.Of(e.Which) = &v
	l := c.Checks.Limits
	if l.LeastReveal != nil && l.GreatestReveal != nil && *l.LeastReveal > *l.GreatestReveal {
		return nil, message.New("The least reveal of %v is above the greatest of %v. Change one of the two.", *l.LeastReveal, *l.GreatestReveal)
	}
	return c, nil
}
