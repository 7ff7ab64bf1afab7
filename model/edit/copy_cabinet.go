package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// CopyCabinet puts a copy of a cabinet at its right.
type CopyCabinet struct {
	At model.Place
}

// Label names the change.
func (e CopyCabinet) Label() message.Message { return message.New("Copy a cabinet") }

// Apply makes the change.
func (e CopyCabinet) Apply(p *model.Project) (*model.Project, error) {
	_, cab, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	return AddCabinet{model.Place{Cabinet: e.At.Cabinet + 1, Bay: -1, Front: -1}, *cab}.Apply(p)
}
