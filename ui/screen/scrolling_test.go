package screen

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/ui/tool"
)

// While something is dragged at the edge the picture moves on under the pointer,
// and what is dragged with it; not where the pointer is elsewhere, and not after
// it was let go.
func TestTheEdgeScrolls(t *testing.T) {
	s := newStage(t)
	s.show(scenes(t)[0], manners(t)[0])
	c := s.screen
	c.Held = func() fyne.KeyModifier { return 0 }
	c.Hold(tool.DrawCabinet{})
	event := func(x, y float32) *desktop.MouseEvent {
		return &desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(x, y)}, Button: desktop.MouseButtonPrimary}
	}
	drag := func(x, y float32) {
		c.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(x, y)}})
	}
	size := c.Size()
	c.MouseDown(event(size.Width-100, size.Height/4))
	drag(size.Width-60, size.Height/4)
	if c.scroll.clock != nil {
		t.Fatal("it scrolls away from the edge")
	}
	drag(size.Width-4, size.Height/4)
	if c.scroll.clock == nil {
		t.Fatal("it does not scroll at the edge")
	}
	before, wide := c.view.X, c.feedback.Outline.Width()
	for range 10 {
		c.scrollOn()
	}
	if moved := c.view.X - before; moved != -10*scrollStep {
		t.Errorf("the picture has moved by %v", moved)
	}
	if c.feedback.Outline.Width() <= wide {
		t.Errorf("the cabinet was %v wide and is %v", wide, c.feedback.Outline.Width())
	}
	c.MouseUp(event(size.Width-4, size.Height/4))
	before = c.view.X
	c.scrollOn()
	if c.scroll.clock != nil || c.view.X != before {
		t.Error("it scrolls on after the button was let go")
	}
}
