package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetLimits sets the least and the greatest height of a front that is computed;
// 0 for none.
type SetLimits struct {
	At              model.Place
	Least, Greatest length.Length
}

// Label names the change.
func (e SetLimits) Label() message.Message { return message.New("Limits of the height") }

// Apply makes the change. The least height must not be above the greatest.
func (e SetLimits) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	for _, v := range []length.Length{e.Least, e.Greatest} {
		if v != 0 {
			if err := within(v, leastFront, greatestBox); err != nil {
				return nil, err
			}
		}
	}
	if e.Greatest != 0 && e.Least > e.Greatest {
		return nil, message.New("The least height of %v is above the greatest of %v. Change one of the two.", e.Least, e.Greatest)
	}
	f.Least, f.Greatest = e.Least, e.Greatest
	return c, nil
}
