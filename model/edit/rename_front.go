package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// RenameFront gives a front a name; an empty one lets the plan number it.
type RenameFront struct {
	At   model.Place
	Name string
}

// Label names the change.
func (e RenameFront) Label() message.Message { return message.New("Name the front “%v”", e.Name) }

// Apply makes the change.
func (e RenameFront) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if f.Name, err = name(e.Name); err != nil {
		return nil, err
	}
	return c, nil
}
