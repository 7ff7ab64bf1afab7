package edit

import (
	"strings"

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

// SetSheet puts other figures in the place of a hardware sheet of the project,
// which carries its own copy of it from then on.
type SetSheet struct {
	Name  string // in the project
	Sheet *model.HardwareSheet
}

// Label names the change.
func (e SetSheet) Label() message.Message { return message.New("Figures of “%v”", e.Name) }

// Apply makes the change. Fronts follow a drawer height that has got another
// name; those whose drawer is gone take the tallest that fits.
func (e SetSheet) Apply(p *model.Project) (*model.Project, error) {
	if e.Sheet == nil {
		return nil, message.New("The hardware sheet “%v” could not be read, so it can't be used.", e.Name)
	}
	old := p.Sheet(e.Name)
	if old == nil {
		return nil, message.New("The project has no hardware “%v”. It has: %v.", e.Name, hardwareNames(p))
	}
	c := p.Clone()
	names := renamed(old, e.Sheet)
	everyBay(c, func(b *model.Bay) {
		for i := range b.Fronts {
			if f := &b.Fronts[i]; sheetOf(c, b, f) == old {
				if to, ok := names[f.Drawer]; ok {
					f.Drawer = to
				}
			}
		}
	})
	for i := range c.Hardware {
		if c.Hardware[i].Name == e.Name {
			c.Hardware[i] = model.HardwareUse{Name: e.Name, Sheet: e.Sheet}
		}
	}
	everyBay(c, func(b *model.Bay) { refit(c, b) })
	return c, nil
}

// renamed tells new names of drawer heights by the old ones: where a sheet has as
// many as before, those in the same place whose old name is gone.
func renamed(old, next *model.HardwareSheet) map[string]string {
	names := map[string]string{}
	if len(old.Drawers) != len(next.Drawers) {
		return names
	}
	for i := range old.Drawers {
		was, is := old.Drawers[i].Name, next.Drawers[i].Name
		if was != is && next.Drawer(was) == nil && old.Drawer(is) == nil {
			names[was] = is
		}
	}
	return names
}

func everyBay(p *model.Project, do func(*model.Bay)) {
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			do(&p.Cabinets[i].Bays[j])
		}
	}
}

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
				if f := &b.Fronts[k]; f.HasDrawer() && nameOfSheet(p, b, f) == sheet {
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
	cabinet := p.CabinetName(at)
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
