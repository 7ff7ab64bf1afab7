package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

var drawerSize = Rule{
	Name:     "drawer-size",
	Title:    message.New("Drawer keeps a usable size"),
	Wrong:    message.New("Drawer too small"),
	Severity: Error,
	Forbids:  Drilling,
	Doc: message.New("The bay is so narrow, or the runner so short, that nothing is left of the " +
		"drawer, its bottom or its back once the hardware sheet's figures are deducted, or that " +
		"the bottom is narrower than the sheet's least width, 100 mm where it gives none. Found " +
		"is the size that is left of the part that is worst off, needed the least size, or more " +
		"than 0. Make the bay wider or packing beside the runners thinner, or use other hardware."),
	find: findDrawerSize,
}

func findDrawerSize(s *search) {
	s.everyDrawer(func(f *plan.Front) {
		d := &f.Drawer
		parts := []struct {
			what message.Message
			size length.Length
			any  bool
			need length.Length
		}{
			{message.New("the drawer's width"), d.Body.Width(), true, 0},
			{message.New("the width of the drawer bottom"), d.BottomCut.Width, true, f.Sheet.Bottom.Least()},
			{message.New("the length of the drawer bottom"), d.BottomCut.Length, f.Runner.Length > 0, 0},
			{message.New("the width of the drawer back"), d.BackCut.Width, true, 0},
		}
		worst := -1
		for i, p := range parts {
			if p.any && (p.size <= 0 || p.size < p.need) && (worst < 0 || p.size-p.need < parts[worst].size-parts[worst].need) {
				worst = i
			}
		}
		if worst < 0 {
			return
		}
		p := parts[worst]
		wide := f.Between().Width()
		what := message.New("%v comes to %v in a bay %v wide", p.what, p.size, wide)
		change := message.New("make the bay or the runner larger by more than %v, or use other hardware", -p.size)
		flag := message.New("No drawer left")
		if p.need > 0 {
			flag = message.New("Drawer bottom too narrow by %v", p.need-p.size)
			what = message.New("%v comes to %v in a bay %v wide; needed is %v", p.what, p.size, wide, p.need)
			change = message.New("make the bay wider by %v, or use other hardware", p.need-p.size)
		}
		if f.HasPacking() {
			what = message.New("%v comes to %v between packing, %v apart; needed is %v", p.what, p.size, wide, p.need)
			change = message.New("make the packing thinner by %v together, the bay wider, or use other hardware", p.need-p.size)
		}
		s.front(f, Finding{
			Found: p.size, Needed: p.need, What: what, Change: change,
			Spots: []mark.Spot{s.drawer(f, mark.Cross)},
			Flag:  flag,
		})
	})
}
