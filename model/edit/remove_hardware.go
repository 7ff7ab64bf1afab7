package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

// RemoveHardware takes a hardware sheet out of the project.
type RemoveHardware struct {
	Name string
}

// Label names the change.
func (e RemoveHardware) Label() message.Message {
	return message.New("Remove hardware sheet “%v”", e.Name)
}

// Apply makes the change. A sheet that drawers use stays; the error names them.
// Bays that name the sheet and have no drawer on it take the project's first.
func (e RemoveHardware) Apply(p *model.Project) (*model.Project, error) {
	at := indexOfHardware(p, e.Name)
	if at < 0 {
		return nil, message.New("The project has no hardware “%v”. It has: %v.", e.Name, hardwareNames(p))
	}
	if users := usersOf(p, p.Hardware[at].Name); len(users) > 0 {
		return nil, message.New("These drawers use the hardware sheet “%v”: %v. Choose another one for them first.", e.Name, listed(users))
	}
	c := p.Clone()
	c.Hardware = append(c.Hardware[:at], c.Hardware[at+1:]...)
	everyBay(c, func(b *model.Bay) {
		if b.Hardware == e.Name {
			b.Hardware = ""
		}
		for i := range b.Fronts {
			if b.Fronts[i].Hardware == e.Name { // a panel or niche, which uses none
				b.Fronts[i].Hardware = ""
			}
		}
	})
	return c, nil
}

// usersOf names the drawers that use the sheet of a name.
func usersOf(p *model.Project, sheet string) []message.Message {
	var all []message.Message
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			b := &p.Cabinets[i].Bays[j]
			for k := range b.Fronts {
				if f := &b.Fronts[k]; f.Kind == model.DrawerFront && nameOfSheet(p, b, f) == sheet {
					all = append(all, whereIs(p, model.Place{Cabinet: i, Bay: j, Front: k}))
				}
			}
		}
	}
	return all
}

// nameOfSheet is the name of the sheet that a front of a bay uses.
func nameOfSheet(p *model.Project, b *model.Bay, f *model.Front) string {
	switch {
	case f.Hardware != "":
		return f.Hardware
	case b.Hardware != "":
		return b.Hardware
	case len(p.Hardware) > 0:
		return p.Hardware[0].Name
	}
	return ""
}

// whereIs names a front by its cabinet, bay and name, or its place in the stack.
func whereIs(p *model.Project, at model.Place) message.Message {
	c := &p.Cabinets[at.Cabinet]
	cabinet := message.New("%v", c.Name)
	if c.Name == "" {
		cabinet = message.New("cabinet %v", at.Cabinet+1)
	}
	if name := c.Bays[at.Bay].Fronts[at.Front].Name; name != "" {
		return message.New("%v, bay %v, “%v”", cabinet, at.Bay+1, name)
	}
	return message.New("%v, bay %v, front %v from below", cabinet, at.Bay+1, at.Front+1)
}

// listed joins some messages, and counts those that are too many to read.
func listed(all []message.Message) message.Message {
	const most = 8
	m := all[0]
	for _, next := range all[1:min(len(all), most)] {
		m = message.New("%v; %v", m, next)
	}
	if more := len(all) - most; more > 0 {
		m = message.New("%v; and %v more", m, more)
	}
	return m
}
