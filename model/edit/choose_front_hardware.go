package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// ChooseFrontHardware gives one front a hardware sheet of its own; an empty name
// gives it the bay's.
type ChooseFrontHardware struct {
	At   model.Place
	Name string
}

// Label names the change.
func (e ChooseFrontHardware) Label() message.Message {
	if e.Name == "" {
		return message.New("Hardware of the bay")
	}
	return message.New("Hardware “%v” for this front", e.Name)
}

// Apply makes the change.
func (e ChooseFrontHardware) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Name != "" && c.Sheet(e.Name) == nil {
		return nil, message.New("The project has no hardware “%v”. It has: %v.", e.Name, hardwareNames(c))
	}
	f.Hardware = e.Name
	refit(c, c.BayAt(e.At))
	return c, nil
}
