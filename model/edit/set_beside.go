package edit

import (
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// SetBeside says what stands at one side of a cabinet.
type SetBeside struct {
	At     model.Place
	Right  bool
	Beside model.Beside
}

// Label names the change.
func (e SetBeside) Label() message.Message {
	if e.Right {
		return message.New("What stands at the right")
	}
	return message.New("What stands at the left")
}

// Apply makes the change.
func (e SetBeside) Apply(p *model.Project) (*model.Project, error) {
	c, cab, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	if err := within(e.Beside.EndPanel, 0, greatestBoard); err != nil {
		return nil, err
	}
	for _, v := range []length.Length{e.Beside.Filler, e.Beside.Projection} {
		if err := within(v, 0, greatestFitting); err != nil {
			return nil, err
		}
	}
	if e.Right {
		cab.Right = e.Beside
	} else {
		cab.Left = e.Beside
	}
	return c, nil
}
