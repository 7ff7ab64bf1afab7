package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var sampleSheet = Rule{
	Name:     "sample-sheet",
	Title:    message.New("Hardware figures are a maker's"),
	Wrong:    message.New("Invented hardware"),
	Severity: Warning,
	Forbids:  Nothing,
	Doc: message.New("A bay or a front uses a hardware sheet whose figures are invented: a sample that " +
		"ships, or a copy of one that still says so. No drawer that can be bought fits what is " +
		"cut and drilled from it. It is told once for each such sheet, where it is used first. " +
		"Choose a sheet with your maker's figures, or write them into this one and take out " +
		"that it is a sample."),
	find: findSampleSheet,
}

func findSampleSheet(s *search) {
	told := map[*model.HardwareSheet]bool{}
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		if !s.plan.Project.FrontAt(f.Place).HasDrawer() || f.Sheet == nil || !f.Sheet.Sample || told[f.Sheet] {
			continue
		}
		told[f.Sheet] = true
		s.add(Finding{
			Place:  s.sheetChosenAt(f),
			What:   message.New("the figures of the hardware sheet %v are invented; no drawer that can be bought fits them", f.Sheet.Name),
			Change: message.New("use a sheet with your maker's figures, or write them into this one and say that it is no sample"),
			Spots:  s.runnersOf(f),
			Flag:   message.New("Invented hardware"),
			Fixes:  s.ownSheets(s.sheetChosenAt(f)),
		})
	}
}

// sheetChosenAt is the place where a front's sheet is chosen: the front itself,
// or its bay.
func (s *search) sheetChosenAt(f *plan.Front) model.Place {
	if s.plan.Project.FrontAt(f.Place).Hardware != "" {
		return f.Place
	}
	return model.Place{Cabinet: f.Place.Cabinet, Bay: f.Place.Bay, Front: -1}
}

// runnersOf are the runners of a front and of the others of its bay that use the
// same sheet.
func (s *search) runnersOf(f *plan.Front) []mark.Spot {
	var spots []mark.Spot
	b := &s.plan.Cabinets[f.Place.Cabinet].Bays[f.Place.Bay]
	for k := b.First; k < b.First+b.Count; k++ {
		g := &s.plan.Fronts[k]
		if g.Kind == model.DrawerFront && g.Sheet == f.Sheet {
			spots = append(spots, runners(g)...)
		}
		for n := range g.Inner {
			if g.Inner[n].Sheet == f.Sheet {
				spots = append(spots, runners(&g.Inner[n])...)
			}
		}
	}
	return spots
}

// ownSheets are the changes to those of the project's sheets that are no samples.
func (s *search) ownSheets(at model.Place) []edit.Edit {
	var fixes []edit.Edit
	for _, h := range s.plan.Project.Hardware {
		if h.Sheet != nil && !h.Sheet.Sample {
			fixes = append(fixes, chooseSheet(at, h.Name))
		}
	}
	return fixes
}

// chooseSheet is the change to another sheet of a front or a bay.
func chooseSheet(at model.Place, name string) edit.Edit {
	if at.Front >= 0 {
		return edit.ChooseFrontHardware{At: at, Name: name}
	}
	return edit.ChooseHardware{At: at, Name: name}
}
