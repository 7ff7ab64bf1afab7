package check

import (
	"frontlay/layout/plan"
	"frontlay/model/edit"
	"frontlay/model/message"
)

var coverBelow = Rule{
	Name:     "cover-below",
	Title:    message.New("Front hides the drawer bottom"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: "The front does not reach as far below the drawer bottom's underside as asked, so " +
		"the edge of the drawer bottom shows under the front. Found is the cover, needed " +
		"the cover asked for (0 where none is asked for). Raise the runner, or lower the " +
		"front's bottom edge.",
	find: findCoverBelow,
}

func findCoverBelow(s *search) {
	s.drawers(func(f *plan.Front) {
		needed := s.plan.Project.FrontAt(f.Place).Cover
		found := f.Drawer.Cover.Bottom
		if found >= needed {
			return
		}
		short := needed - found
		what := message.New("the front covers the drawer bottom by %v; needed is %v", found, needed)
		if found < 0 {
			what = message.New("the drawer bottom shows %v below the front; needed is a cover of %v", -found, needed)
		}
		s.front(f, Finding{
			Found: found, Needed: needed, What: what,
			Change: message.New("raise the runner by %v, or lower the front's bottom edge by it", short),
			Area:   strip(f, f.Drawer.Bottom.Min.Y, f.Face.Min.Y+needed),
			Mark:   message.New("cover short by %v", short),
			Fixes:  []edit.Edit{setDrop(f, f.Drop+short)},
		})
	})
}
