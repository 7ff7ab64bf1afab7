package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

var frontBuild = Rule{
	Name:     "front-build",
	Title:    message.New("Fronts can be built"),
	Wrong:    message.New("Front can't be built"),
	Severity: Error,
	Forbids:  Drilling,
	Doc: message.New("The figures of a front's board leave nothing to build: stiles or rails that take all " +
		"of the width or height, a panel that stands out of its frame, a groove or tenon " +
		"deeper than the wood it is cut into, a grip as high as the front or as thick as its " +
		"board. Found is the figure, needed (at most) what there is. Change the board's " +
		"figures, or choose another board."),
	find: findFrontBuild,
}

func findFrontBuild(s *search) {
	for i := range s.plan.Fronts {
		f := &s.plan.Fronts[i]
		if len(f.Zones) == 0 {
			continue
		}
		if found, ok := unbuilt(f); ok {
			found.Spots = []mark.Spot{onBoard(f, mark.Outline, onFace, f.Face)}
			s.front(f, found)
		}
	}
}

// unbuilt is what keeps a front from being built as its board says, the worst first;
// false where nothing does.
func unbuilt(f *plan.Front) (Finding, bool) {
	b, t, w, h := f.Made.Filled(), f.Thickness, f.Face.Width(), f.Face.Height()
	beyond := func(found, needed length.Length, what, change message.Message) (Finding, bool) {
		return Finding{Found: found, Needed: needed, What: what, Change: change, Flag: message.New("Can't be built")}, true
	}
	wood := min(b.Stile, b.TopRail, b.BottomRail)
	switch frame := f.Made.Build.Kind == model.Frame; {
	case frame && 2*b.Stile >= w:
		return beyond(2*b.Stile, w, message.New("two stiles of %v leave no panel in a front %v wide", b.Stile, w),
			message.New("make the stiles narrower, or choose another board"))
	case frame && b.TopRail+b.BottomRail >= h:
		return beyond(b.TopRail+b.BottomRail, h, message.New("rails of %v and %v leave no panel in a front %v high", b.TopRail, b.BottomRail, h),
			message.New("make the rails narrower or the front higher, or choose another board"))
	case frame && b.Panel.Thickness+b.Panel.Recess > t:
		return beyond(b.Panel.Thickness+b.Panel.Recess, t, message.New("a panel of %v, set in by %v, stands out of a frame %v thick", b.Panel.Thickness, b.Panel.Recess, t),
			message.New("make the panel thinner, or set it in by less"))
	case frame && b.Panel.Groove >= wood:
		return beyond(b.Panel.Groove, wood, message.New("a groove %v deep cuts through a stile or rail of %v", b.Panel.Groove, wood),
			message.New("make the groove less deep, or the stiles and rails wider"))
	case frame && b.Tenon > b.Stile:
		return beyond(b.Tenon, b.Stile, message.New("tenons of %v come through stiles of %v", b.Tenon, b.Stile),
			message.New("make the tenons shorter, or the stiles wider"))
	case !frame && b.Height >= h:
		return beyond(b.Height, h, message.New("a grip %v high takes all of a front %v high", b.Height, h),
			message.New("make the grip lower or the front higher, or choose another board"))
	case !frame && b.Left >= t:
		return beyond(b.Left, t, message.New("a grip that leaves %v takes nothing off a board %v thick", b.Left, t),
			message.New("leave less of the board in the grip"))
	}
	return Finding{}, false
}
