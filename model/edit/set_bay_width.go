package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetBayWidth fixes the clear inside width of a bay; 0 lets it take a share of
// what the fixed ones leave.
type SetBayWidth struct {
	At    model.Place
	Width length.Length
}

// Label names the change.
func (e SetBayWidth) Label() message.Message {
	if e.Width == 0 {
		return message.New("Bay takes what is left")
	}
	return message.New("Bay width %v", e.Width)
}

// Apply makes the change.
func (e SetBayWidth) Apply(p *model.Project) (*model.Project, error) {
	c, b, err := bay(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Width != 0 {
		if err := within(e.Width, leastBox, greatestBox); err != nil {
			return nil, err
		}
	}
	b.Width = e.Width
	return c, nil
}
