package edit

import (
	"strings"

	"frontlay/model"
	"frontlay/model/message"
)

// ChooseHardware gives a bay the hardware sheet of a name in the project.
type ChooseHardware struct {
	At   model.Place
	Name string
}

// Label names the change.
func (e ChooseHardware) Label() message.Message { return message.New("Hardware “%v”", e.Name) }

// Apply makes the change. Fronts whose drawer the new sheet does not have take
// the tallest that fits.
func (e ChooseHardware) Apply(p *model.Project) (*model.Project, error) {
	c, b, err := bay(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Name != "" && c.Sheet(e.Name) == nil {
		return nil, message.New("The project has no hardware “%v”. It has: %v.", e.Name, hardwareNames(c))
	}
	b.Hardware = e.Name
	refit(c, b)
	return c, nil
}

func hardwareNames(p *model.Project) string {
	var names []string
	for _, h := range p.Hardware {
		names = append(names, h.Name)
	}
	return strings.Join(names, ", ")
}
