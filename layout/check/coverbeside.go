package check

import (
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/model/message"
)

var coverBeside = Rule{
	Name:     "cover-beside",
	Title:    message.New("Front hides the drawer's sides"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: "The drawer is wider than its front on one side, so its side shows past the " +
		"front. Found is how far the front reaches past the drawer's outside, needed 0. " +
		"Make the front wider on that side: a smaller reveal.",
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
		Change: message.New("make the reveal on the %v smaller by %v", side, -found),
		Area:   area,
		Mark:   message.New("short by %v", -found),
		Fixes:  s.widen(f, right, -found),
	})
}
