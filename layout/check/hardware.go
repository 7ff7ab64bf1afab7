package check

import (
	"fmt"

	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var hardware = Rule{
	Name:     "hardware",
	Title:    message.New("Hardware is known"),
	Wrong:    message.New("Hardware not known"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("A bay or a front names a hardware sheet, a drawer height or a runner length that " +
		"there is not. Nothing can be drilled for it. Choose one that the project has."),
	find: findHardware,
}

func findHardware(s *search) {
	for i := range s.plan.Problems {
		p := &s.plan.Problems[i]
		f := Finding{Place: p.Place}
		switch p.Kind {
		case plan.SheetMissing:
			f.What = message.New("there is no hardware sheet named %v in the project", name(p.Name))
			f.Flag = message.New("No hardware")
			f.Change = message.New("choose one of the project's hardware sheets")
			f.Fixes = s.otherSheets(p.Place)
		case plan.DrawerUnknown:
			f.What = message.New("the hardware sheet has no drawer height named %v", p.Name)
			f.Flag = message.New("No such drawer")
			f.Change = message.New("choose one of the sheet's drawer heights")
			f.Fixes = []edit.Edit{edit.SetDrawer{At: p.Place, Drawer: model.DrawerAuto}}
		case plan.RunnerUnknown:
			f.Found = p.Amount
			f.What = message.New("the hardware sheet has no runner of %v", p.Amount)
			f.Flag = message.New("No runner of %v", p.Amount)
			f.Change = message.New("choose one of the sheet's runners")
			f.Fixes = []edit.Edit{edit.SetRunner{At: p.Place}}
		default:
			continue
		}
		if p.Inner > 0 {
			f.Inner = p.Inner
			key, value := "drawer", any(model.DrawerAuto)
			if p.Kind == plan.RunnerUnknown {
				key, value = "runner", nil
			}
			f.Fixes = []edit.Edit{edit.Set{At: p.Place, Key: fmt.Sprintf("inner[%d].%s", p.Inner-1, key), Value: value}}
		}
		if p.Place.Front >= 0 {
			f.Front = s.plan.FrontAt(p.Place).Number
		}
		b := &s.plan.Cabinets[p.Place.Cabinet].Bays[p.Place.Bay]
		for k := b.First; k < b.First+b.Count; k++ {
			g := &s.plan.Fronts[k]
			if f.Front != 0 && f.Front != g.Number {
				continue
			}
			if g.Kind == model.DrawerFront && p.Inner == 0 {
				f.Spots = append(f.Spots, s.drawer(g, mark.Cross))
			}
			for n := range g.Inner {
				if p.Inner == 0 && g.Kind != model.DrawerFront || p.Inner == n+1 {
					f.Spots = append(f.Spots, s.drawer(&g.Inner[n], mark.Cross))
				}
			}
		}
		s.add(f)
	}
}

// otherSheets are the changes that give a bay, or a front, a hardware sheet that
// the project has: the first few.
func (s *search) otherSheets(at model.Place) []edit.Edit {
	const few = 4
	var fixes []edit.Edit
	if at.Front >= 0 {
		fixes = append(fixes, edit.ChooseFrontHardware{At: at})
	}
	for i, h := range s.plan.Project.Hardware {
		if i == few {
			break
		}
		fixes = append(fixes, chooseSheet(at, h.Name))
	}
	return fixes
}

func name(s string) any {
	if s == "" {
		return message.New("(none given)")
	}
	return s
}
