package screen

import (
	"fmt"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/ui/paint"
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
		report(t, name, c.labelsInTheWay())
	}
	for _, sc := range scenes(t) {
		switch sc.name {
		case "demo", "low fronts", "narrow cabinets", "projects-everything", "rules-wide-front-flagged", "rules-drawer-size-flagged":
		default:
			continue
		}
		for i, through := range []bool{false, true, true} {
			m := manners(t)[0]
			if i == 2 {
				m = manners(t)[1] // large
			}
			t.Run(fmt.Sprintf("%s %s, see-through %v", sc.name, m.name, through), func(t *testing.T) {
				st.t = t
				st.show(sc, m)
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
			from, to := p.At(l.From), p.At(l.To)
			level := from.Y == to.Y && from.X < a.x2 && a.x1 < to.X
			if level && !l.Snapped && a.y1-free < from.Y && from.Y < a.y2+free {
				list = append(list, fmt.Sprintf("%s stands at the line %v", say(t), from.Y))
			}
		}
	}
	return list
}

// labelsInTheWay lists labels of the hand that lie over one another or over that
// of a finding which is not hidden.
func (c *Screen) labelsInTheWay() []string {
	var list []string
	var labels []box
	for _, o := range c.overlay.Objects {
		if r, ok := o.(*fynecanvas.Rectangle); ok && r.StrokeWidth > 0 && r.CornerRadius > 0 {
			labels = append(labels, paint.BoxAt(r.Position(), r.Size()))
		}
	}
	for _, l := range c.feedback.Labels {
		if s := c.say().Say(l.Say); strings.HasPrefix(s, "-") {
			list = append(list, "a part would be "+s)
		}
	}
	for i, a := range labels {
		for _, b := range labels[:i] {
			if a.Grown(2, 2).Overlaps(b) {
				list = append(list, fmt.Sprintf("the labels at %v and %v touch", a, b))
			}
		}
		for _, b := range c.tags {
			if a.Overlaps(b) {
				list = append(list, fmt.Sprintf("the label at %v lies over the finding's at %v", a, b))
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
	from := c.view.At(r.Centre())
	if of.Kind == drawing.FrontThing {
		from.X = c.view.PX(r.Min.X + r.Width()/3) // beside its height and holes
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
