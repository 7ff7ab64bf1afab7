package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// RenameCabinet gives a cabinet a name.
type RenameCabinet struct {
	At   model.Place
	Name string
}

// Label names the change.
func (e RenameCabinet) Label() message.Message {
	return message.New("Name the cabinet “%v”", e.Name)
}

// Apply makes the change.
func (e RenameCabinet) Apply(p *model.Project) (*model.Project, error) {
	c, cab, err := cabinet(p, e.At)
	if err != nil {
		return nil, err
	}
	s, err := name(e.Name)
	if err != nil {
		return nil, err
	}
	if s == "" {
		return nil, message.New("A cabinet needs a name, so that its parts can be told apart on paper.")
	}
	for i := range c.Cabinets {
		if i != e.At.Cabinet && c.Cabinets[i].Name == s {
			return nil, message.New("Another cabinet has the name “%v” already.", s)
		}
	}
	cab.Name = s
	return c, nil
}
