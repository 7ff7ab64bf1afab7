package edit

import (
	"strings"

	"frontlay/model"
	"frontlay/model/message"
)

// SetDrawer chooses the height of the drawer behind a front by its name in the
// hardware sheet; model.DrawerAuto (or "") asks for the tallest that fits.
type SetDrawer struct {
	At     model.Place
	Drawer string
}

// Label names the change.
func (e SetDrawer) Label() message.Message {
	if e.Drawer == "" || e.Drawer == model.DrawerAuto {
		return message.New("Drawer: tallest that fits")
	}
	return message.New("Drawer “%v”", e.Drawer)
}

// Apply makes the change. An unknown name is refused with the names there are.
func (e SetDrawer) Apply(p *model.Project) (*model.Project, error) {
	c, f, err := front(p, e.At)
	if err != nil {
		return nil, err
	}
	if e.Drawer != "" && e.Drawer != model.DrawerAuto {
		s := sheetOf(c, c.BayAt(e.At), f)
		if s == nil {
			return nil, message.New("This bay has no hardware sheet yet. Choose one for it first.")
		}
		if s.Drawer(e.Drawer) == nil {
			return nil, message.New("The hardware sheet has no drawer “%v”. It has: %v.", e.Drawer, drawerNames(s))
		}
	}
	f.Drawer = e.Drawer
	return c, nil
}

func drawerNames(s *model.HardwareSheet) string {
	names := make([]string, len(s.Drawers))
	for i := range s.Drawers {
		names[i] = s.Drawers[i].Name
	}
	return strings.Join(names, ", ")
}
