package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetCover sets the least cover of the drawer bottom that is asked of a front,
// from 0 to 500 mm.
type SetCover struct {
	At    model.Place
	Cover length.Length
}

// Label names the change.
func (e SetCover) Label() message.Message { return message.New("Least cover %v", e.Cover) }

// Apply makes the change.
func (e SetCover) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := within(e.Cover, 0, 500*length.Millimetre); err != nil {
		return nil, err
	}
	f.Cover = e.Cover
	return c, nil
}
