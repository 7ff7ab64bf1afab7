package screen

import (
	"fmt"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/ui/tool"
)

// TestToolsRunThroughNoLettering moves each tool over the picture and looks at
// every text while it works: lines and labels of the hand either leave a text
// whole or hide the whole of it.
func TestToolsRunThroughNoLettering(t *testing.T) {
	st := newStage(t)
	c := st.screen
	c.Held = func() fyne.KeyModifier { return 0 }
	look := func(t *testing.T, name string) {
		st.keep(t.Name() + " " + name)
		report(t, name, faults(c.Objects(), c.Size(), true))
		report(t, name, c.crowdedByLines())
	}
	for _, sc := range scenes(t) {
		switch sc.name {
		case "demo", "low fronts", "narrow cabinets", "projects-everything":
		default:
			continue
		}
		for _, through := range []bool{false, true} {
			t.Run(fmt.Sprintf("%s, see-through %v", sc.name, through), func(t *testing.T) {
				st.t = t
				st.show(sc, manners(t)[0])
				c.SetSeeThrough(through)
				for name, hand := range map[string]tool.Tool{"division": tool.DrawDivision{}, "partition": tool.DrawPartition{}, "cabinet": tool.DrawCabinet{}} {
					c.Take(hand)
					for k := range 12 {
						at := fyne.NewPos(c.Size().Width*(0.1+0.08*float32(k)), c.Size().Height*(0.2+0.05*float32(k)))
						c.move(at)
						look(t, fmt.Sprintf("drawing a %s at %v", name, at))
					}
					c.Take(tool.Idle{})
				}
				st.drag(drawing.Subject{Kind: drawing.DivisionThing}, func(k int) { look(t, fmt.Sprintf("dragging a division, %d", k)) })
				front := drawing.Subject{Kind: drawing.FrontThing, Place: model.Place{Front: 1}}
				c.session.Select(front)
				st.drag(front, func(k int) { look(t, fmt.Sprintf("reordering, %d", k)) })
			})
		}
	}
}

// crowdedByLines lists texts of the picture nearer than half a line of letters to
// a line that a tool would draw across a front.
func (c *Screen) crowdedByLines() []string {
	var list []string
	p, all := c.painter(), c.Objects()
	for i, o := range c.picture.Objects {
		t, ok := o.(*fynecanvas.Text)
		if !ok || covered(lettersOf(t), all[i+2:]) { // the paper is the first of all
			continue
		}
		a, free := lettersOf(t), 0.45*p.text
		for _, l := range c.feedback.Lines {
			from, to := p.view.at(l.From), p.view.at(l.To)
			level := from.Y == to.Y && from.X < a.x2 && a.x1 < to.X
			if level && !l.Snapped && a.y1-free < from.Y && from.Y < a.y2+free {
				list = append(list, fmt.Sprintf("%s stands at the line %v", say(t), from.Y))
			}
		}
	}
	return list
}

// drag takes hold of a thing, moves it up and down, and gives it back.
func (s *stage) drag(of drawing.Subject, see func(int)) {
	s.t.Helper()
	c := s.screen
	r, ok := c.rectOf(of)
	if !ok {
		s.t.Fatalf("there is no %v", of)
	}
	from := c.view.at(r.Centre())
	if of.Kind == drawing.FrontThing {
		from.X = c.view.px(r.Min.X + r.Width()/3) // beside its height and holes
	}
	event := func(at fyne.Position) *desktop.MouseEvent {
		return &desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: desktop.MouseButtonPrimary}
	}
	c.MouseMoved(event(from))
	c.MouseDown(event(from))
	for k := range 14 {
		c.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: from.AddXY(0, float32(7-k)*11)}})
		see(k)
	}
	if _, idle := c.hand.(tool.Idle); idle {
		s.t.Errorf("%v was not taken hold of", of)
	}
	c.Take(tool.Idle{})
	c.MouseUp(event(from))
}
