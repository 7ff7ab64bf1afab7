package check

import (
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// moveHandle are the changes that move a handle by a step in the front's face
// frame; none where the front has no handle or would have it past its edge. A
// handle in the middle of the front gets a place of its own that way only where
// it moves.
func (s *search) moveHandle(f *plan.Front, by plane.Point) []edit.Edit {
	src := s.plan.Project.FrontAt(f.Place).Handle
	if src == nil {
		return nil
	}
	h := *src
	var edits []edit.Edit
	set := func(key string, v length.Length) {
		edits = append(edits, edit.Set{At: f.Place, Key: "handle." + key, Value: v})
	}
	if by.X != 0 {
		if h.FromLeft == 0 {
			h.FromLeft = f.Face.Width() / 2
		}
		h.FromLeft += by.X
		set("from_left", h.FromLeft)
	}
	if by.Y != 0 {
		if h.FromTop == 0 {
			h.FromTop = f.Face.Height() / 2
		}
		h.FromTop -= by.Y
		set("from_top", h.FromTop)
	}
	if h.FromLeft < 0 || h.FromTop < 0 {
		return nil
	}
	say := message.New("Move the handle up by %v", by.Y)
	switch {
	case by.Y < 0:
		say = message.New("Move the handle down by %v", -by.Y)
	case by.X < 0:
		say = message.New("Move the handle to the left by %v", -by.X)
	case by.X > 0:
		say = message.New("Move the handle to the right by %v", by.X)
	}
	return []edit.Edit{edit.Several{Name: say, Edits: edits}}
}
