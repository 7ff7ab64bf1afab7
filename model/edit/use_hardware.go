package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// UseHardware brings a hardware sheet into the project under a name, or puts it
// in the place of the one that has the name.
type UseHardware struct {
	Use model.HardwareUse
}

// Label names the change.
func (e UseHardware) Label() message.Message {
	return message.New("Hardware sheet “%v”", e.Use.Name)
}

// Apply makes the change.
func (e UseHardware) Apply(p *model.Project) (*model.Project, error) {
	s, err := name(e.Use.Name)
	if err != nil {
		return nil, err
	}
	if s == "" {
		return nil, message.New("A hardware sheet needs a name in the project, such as “main”.")
	}
	if e.Use.Sheet == nil {
		return nil, message.New("The hardware sheet “%v” could not be read, so it can't be used.", s)
	}
	use := e.Use
	use.Name = s
	c := p.Clone()
	for i := range c.Hardware {
		if c.Hardware[i].Name == s {
			c.Hardware[i] = use
			for j := range c.Cabinets {
				for k := range c.Cabinets[j].Bays {
					refit(c, &c.Cabinets[j].Bays[k])
				}
			}
			return c, nil
		}
	}
	c.Hardware = append(c.Hardware, use)
	return c, nil
}
