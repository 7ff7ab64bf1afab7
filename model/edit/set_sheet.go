package edit

import (
	"frontlay/model"
	"frontlay/model/message"
)

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
