package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetCheckLimit sets a limit of the check, within its bounds; nil for what is
// usual.
type SetCheckLimit struct {
	Limit model.Limit
	Value *length.Length
}

// Label names the change.
func (e SetCheckLimit) Label() message.Message { return message.New("Limits of the check") }

// Apply makes the change. A limit must not pass the one that it is the other end
// of, where the project sets that.
func (e SetCheckLimit) Apply(p *model.Project) (*model.Project, error) {
	c := p.Clone()
	if e.Value == nil {
		delete(c.Checks.Limits, e.Limit.Key)
		if len(c.Checks.Limits) == 0 {
			c.Checks.Limits = nil
		}
		return c, nil
	}
	v := *e.Value
	if err := within(v, e.Limit.Least, e.Limit.Greatest); err != nil {
		return nil, err
	}
	if end, set := c.Checks.Limits[e.Limit.NotAbove]; set && v > end {
		return nil, message.New("The least of %v would be above the greatest of %v. Change one of the two.", v, end)
	}
	if end, set := c.Checks.Limits[e.Limit.NotBelow]; set && v < end {
		return nil, message.New("The greatest of %v would be below the least of %v. Change one of the two.", v, end)
	}
	if c.Checks.Limits == nil {
		c.Checks.Limits = map[string]length.Length{}
	}
	c.Checks.Limits[e.Limit.Key] = v
	return c, nil
}
