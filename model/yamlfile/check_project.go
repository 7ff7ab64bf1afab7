package yamlfile

import (
	"frontlay/model"
	"frontlay/model/message"
)

// checkProject finds what no key alone can show: missing parts and names that
// nothing bears. What can't be built is the layout's to find, not the file's.
func (r *reader) checkProject(p *model.Project) {
	if len(r.problems) > 0 {
		return // what follows from a problem is not told again
	}
	if len(p.Cabinets) == 0 {
		r.fail(r.nodes[p], message.New("the project has no cabinets"), message.New("add one under cabinets"))
	}
	if len(p.Hardware) == 0 && hasDrawers(p) {
		r.fail(r.nodes[p], message.New("the project has drawers but no hardware sheet"), message.New("name one, such as hardware: {main: sample-a}"))
		return
	}
	for i := range p.Cabinets {
		c := &p.Cabinets[i]
		r.enter("cabinets")
		r.enterAt(i)
		if len(c.Bays) == 0 {
			r.fail(r.nodes[c], message.New("the cabinet %v has no bays", shown(c.Name)), message.New("add one under bays"))
		}
		for j := range c.Bays {
			r.enter("bays")
			r.enterAt(j)
			r.checkBay(p, c, &c.Bays[j])
			r.leave()
			r.leave()
		}
		r.leave()
		r.leave()
	}
}

func (r *reader) checkBay(p *model.Project, c *model.Cabinet, b *model.Bay) {
	if len(b.Fronts) == 0 {
		r.fail(r.nodes[b], message.New("a bay of the cabinet %v has no fronts", shown(c.Name)), message.New("add one under fronts; an open niche is {kind: open}"))
	}
	sheet := p.SheetFor(b)
	if b.Hardware != "" && sheet == nil {
		r.fail(r.nodes[&b.Hardware], message.New("the project has no hardware sheet named %v", shown(b.Hardware)), meant(b.Hardware, hardwareNames(p)))
		return
	}
	for i := range b.Fronts {
		f := &b.Fronts[i]
		r.enter("fronts")
		r.enterAt(i)
		r.checkFront(p, f, sheet)
		r.leave()
		r.leave()
	}
}

// checkFront checks one front; sheet is its bay's.
func (r *reader) checkFront(p *model.Project, f *model.Front, sheet *model.HardwareSheet) {
	if f.Height > 0 && f.Share > 0 {
		r.fail(r.nodes[&f.Share], message.New("the front %v has both a height and a share", shown(f.Name)), message.New("keep the height to fix it, or the share to let it grow"))
	}
	if f.Clear && (f.Kind != model.OpenNiche || f.Height <= 0) {
		r.fail(r.nodes[&f.Clear], message.New("the front %v has a clear height, but is no open niche with a height", shown(f.Name)), message.New("remove the key, or give a niche its height"))
	}
	if f.Least > 0 && f.Greatest > 0 && f.Least > f.Greatest {
		r.fail(r.nodes[&f.Least], message.New("the front %v has a least height of %v above its greatest of %v", shown(f.Name), f.Least, f.Greatest), message.New("change one of the two"))
	}
	if f.Hardware != "" {
		if sheet = p.Sheet(f.Hardware); sheet == nil {
			r.fail(r.nodes[&f.Hardware], message.New("the project has no hardware sheet named %v", shown(f.Hardware)), meant(f.Hardware, hardwareNames(p)))
			return
		}
	}
	if f.Kind != model.DrawerFront {
		return
	}
	if sheet == nil {
		return
	}
	if f.Drawer != "" && f.Drawer != model.DrawerAuto && sheet.Drawer(f.Drawer) == nil {
		names := []string{model.DrawerAuto}
		for i := range sheet.Drawers {
			names = append(names, sheet.Drawers[i].Name)
		}
		r.fail(r.nodes[&f.Drawer], message.New("the hardware sheet %v has no drawer height named %v", shown(sheet.Name), shown(f.Drawer)), meant(f.Drawer, names))
	}
}

func hardwareNames(p *model.Project) []string {
	names := make([]string, len(p.Hardware))
	for i := range p.Hardware {
		names[i] = p.Hardware[i].Name
	}
	return names
}

func hasDrawers(p *model.Project) bool {
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			for _, f := range p.Cabinets[i].Bays[j].Fronts {
				if f.Kind == model.DrawerFront {
					return true
				}
			}
		}
	}
	return false
}
