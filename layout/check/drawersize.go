package check

import (
	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

var drawerSize = Rule{
	Name:     "drawer-size",
	Title:    message.New("Drawer keeps a usable size"),
	Severity: Error,
	Forbids:  Drilling,
	Doc: "The bay is so narrow, or the runner so short, that nothing is left of the " +
		"drawer, its bottom or its back once the hardware sheet's figures are deducted. " +
		"Found is the size that is left of the part that is worst off, needed more than " +
		"0. Make the bay wider, or use other hardware.",
	find: findDrawerSize,
}

func findDrawerSize(s *search) {
	s.drawers(func(f *plan.Front) {
		d := &f.Drawer
		parts := []struct {
			what message.Message
			size length.Length
			any  bool
		}{
			{message.New("the drawer's width"), d.Body.Width(), true},
			{message.New("the width of the drawer bottom"), d.BottomCut.Width, true},
			{message.New("the length of the drawer bottom"), d.BottomCut.Length, f.Runner.Length > 0},
			{message.New("the width of the drawer back"), d.BackCut.Width, true},
		}
		worst := -1
		for i, p := range parts {
			if p.any && p.size <= 0 && (worst < 0 || p.size < parts[worst].size) {
				worst = i
			}
		}
		if worst < 0 {
			return
		}
		p := parts[worst]
		s.front(f, Finding{
			Found:  p.size,
			What:   message.New("%v comes to %v in a bay %v wide", p.what, p.size, f.Opening.Width()),
			Change: message.New("make the bay or the runner larger by more than %v, or use other hardware", -p.size),
			Area:   f.Face,
			Mark:   message.New("no drawer left"),
		})
	})
}
