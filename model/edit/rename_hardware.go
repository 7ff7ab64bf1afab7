package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// RenameHardware gives a hardware sheet another name in the project. Bays and
// fronts that name it follow.
type RenameHardware struct {
	Name, To string
}

// Label names the change.
func (e RenameHardware) Label() message.Message {
	return message.New("Hardware sheet “%v” named “%v”", e.Name, e.To)
}

// Apply makes the change. Two sheets of a project can't have one name.
func (e RenameHardware) Apply(p *model.Project) (*model.Project, error) {
	to, err := name(e.To)
	if err != nil {
		return nil, err
	}
	switch {
	case to == "":
		return nil, message.New("A hardware sheet needs a name in the project, such as “main”.")
	case indexOfHardware(p, e.Name) < 0:
		return nil, message.New("The project has no hardware “%v”. It has: %v.", e.Name, hardwareNames(p))
	case to != e.Name && indexOfHardware(p, to) >= 0:
		return nil, message.New("The project has a hardware sheet “%v” already.", to)
	}
	c := p.Clone()
	c.Hardware[indexOfHardware(c, e.Name)].Name = to
	everyBay(c, func(b *model.Bay) {
		if b.Hardware == e.Name {
			b.Hardware = to
		}
		for i := range b.Fronts {
			if b.Fronts[i].Hardware == e.Name {
				b.Fronts[i].Hardware = to
			}
		}
	})
	return c, nil
}

func indexOfHardware(p *model.Project, name string) int {
	for i := range p.Hardware {
		if p.Hardware[i].Name == name {
			return i
		}
	}
	return -1
}
