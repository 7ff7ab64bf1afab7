package edit

import (
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/message"
)

// SetShare lets a front take a share of what the fixed ones leave. Share is
// from 0.001 to 1000.
type SetShare struct {
	At    model.Place
	Share float64
}

// Label names the change.
func (e SetShare) Label() message.Message { return message.New("Front takes a share of %v", e.Share) }

// Apply makes the change.
func (e SetShare) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := refused(figure.Front(f), "share", e.Share); err != nil {
		return nil, err
	}
	if err := unlocked(f); err != nil {
		return nil, err
	}
	f.Height, f.Clear, f.Share, f.LineUp = 0, false, e.Share, nil
	return c, nil
}
