package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var coverBelow = Rule{
	Name:     "cover-below",
	Title:    message.New("Front hides the drawer bottom"),
	Wrong:    message.New("Drawer bottom not covered"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("The front does not reach as far below the drawer bottom's underside as asked, so " +
		"the edge of the drawer bottom shows under the front. Found is the cover, needed " +
		"the cover asked for (0 where none is asked for). Raise the runner, or lower the " +
		"front's bottom edge."),
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
		flag := message.New("Cover short by %v", short)
		if found < 0 {
			flag = message.New("Drawer bottom shows, %v", -found)
			what = message.New("the drawer bottom shows %v below the front; needed is a cover of %v", -found, needed)
		}
		s.front(f, Finding{
			Found: found, Needed: needed, What: what,
			Change: message.New("raise the runner by %v (drop %v), or lower the front's bottom edge by as much", short, f.Drop+short),
			Spots:  []mark.Spot{strip(f, f.Drawer.Bottom.Min.Y, f.Face.Min.Y+needed)},
			Flag:   flag,
			Fixes:  []edit.Edit{setDrop(f, f.Drop+short)},
		})
	})
}

var coverBeside = Rule{
	Name:     "cover-beside",
	Title:    message.New("Front hides the drawer's sides"),
	Wrong:    message.New("Drawer side shows"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("The drawer is wider than its front on one side, so its side shows past the " +
		"front. Found is how far the front reaches past the drawer's outside, needed 0. " +
		"Make the front wider on that side: a smaller reveal."),
	find: findCoverBeside,
}

func findCoverBeside(s *search) {
	s.drawers(func(f *plan.Front) {
		d := &f.Drawer
		s.oneSide(f, message.New("left"), false, d.Cover.Left, plane.R(d.Body.Min.X, f.Face.Min.Y, f.Face.Min.X, f.Face.Max.Y))
		s.oneSide(f, message.New("right"), true, d.Cover.Right, plane.R(f.Face.Max.X, f.Face.Min.Y, d.Body.Max.X, f.Face.Max.Y))
	})
}

func (s *search) oneSide(f *plan.Front, side message.Message, right bool, found length.Length, area plane.Rect) {
	if found >= 0 {
		return
	}
	s.front(f, Finding{
		Found:  found,
		What:   message.New("the drawer stands out %v past the front on the %v", -found, side),
		Change: s.narrower(f, right, -found),
		Spots:  []mark.Spot{onBoard(f, mark.Band, onFace|mark.Plan, area)},
		Flag:   message.New("Drawer side shows, %v", -found),
		Fixes:  s.widen(f, right, -found),
	})
}
