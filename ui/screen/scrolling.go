package screen

import (
	"time"

	"fyne.io/fyne/v2"

	"frontlay/ui/tool"
)

// scrolling moves the picture on while something is dragged at its edge.
type scrolling struct {
	clock *fyne.Animation // nil: the pointer is not at the edge
}

// Sizes of scrolling, in screen units: how near the edge the pointer is, and how
// far the picture goes in a frame.
const (
	atEdge     = 14
	scrollStep = 5
)

// follow begins or ends scrolling by where the pointer is.
func (s *scrolling) follow(c *Screen) {
	switch {
	case !c.atEdge():
		s.end()
	case s.clock == nil:
		s.clock = &fyne.Animation{Duration: time.Second, RepeatCount: fyne.AnimationRepeatForever, Tick: func(float32) { c.scrollOn() }}
		s.clock.Start()
	}
}

// end ends it.
func (s *scrolling) end() {
	if s.clock != nil {
		s.clock.Stop()
		s.clock = nil
	}
}

// atEdge tells that something is dragged at the edge of the picture.
func (g *gestures) atEdge() bool {
	if _, pans := g.hand.(tool.Pan); pans || !g.pressed {
		return false
	}
	dx, dy := push(g.pointer, g.on.Size())
	return dx != 0 || dy != 0
}

// push is how far the picture goes for a pointer at its edge.
func push(at fyne.Position, size fyne.Size) (dx, dy float32) {
	one := func(at, size float32) float32 {
		switch {
		case at < atEdge:
			return scrollStep
		case at > size-atEdge:
			return -scrollStep
		}
		return 0
	}
	return one(at.X, size.Width), one(at.Y, size.Height)
}

// scrollOn moves the picture by a frame's worth; what is dragged goes on with the
// pointer.
func (g *gestures) scrollOn() {
	if !g.atEdge() {
		g.scroll.end()
		return
	}
	g.on.Pan(push(g.pointer, g.on.Size()))
	g.Hold(g.hand.Move(g.on, g.point(g.pointer, g.held())))
}
