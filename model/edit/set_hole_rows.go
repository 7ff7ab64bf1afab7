package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetHoleRows says where the rows of holes in the carcass sides are and whether
// runners must fall on them.
type SetHoleRows struct {
	Rows model.HoleRows
}

// Label names the change.
func (e SetHoleRows) Label() message.Message { return message.New("Hole rows") }

// Apply makes the change. A pitch is from 5 mm to 1 m (0: 32 mm), the other two
// from 0 to 1 m.
func (e SetHoleRows) Apply(p *model.Project) (*model.Project, error) {
	if e.Rows.Pitch != 0 {
		if err := within(e.Rows.Pitch, 5*length.Millimetre, length.Metre); err != nil {
			return nil, err
		}
	}
	for _, v := range []length.Length{e.Rows.Datum, e.Rows.Setback} {
		if err := within(v, 0, length.Metre); err != nil {
			return nil, err
		}
	}
	c := p.Clone()
	c.HoleRows = e.Rows
	return c, nil
}
