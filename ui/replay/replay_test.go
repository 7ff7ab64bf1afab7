package replay_test

import (
	"fmt"
	"slices"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout"
	"frontlay/layout/projecttest"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/replay"
	"frontlay/ui/screen"
	"frontlay/ui/session"
)

// listener writes down what it hears.
type listener struct {
	widget.Label
	heard []string
}

func (l *listener) hear(what string, at fyne.Position) {
	l.heard = append(l.heard, fmt.Sprintf("%s %v,%v", what, at.X, at.Y))
}

func (l *listener) MouseIn(e *desktop.MouseEvent)    { l.hear("in", e.Position) }
func (l *listener) MouseMoved(e *desktop.MouseEvent) { l.hear("moved", e.Position) }
func (l *listener) MouseOut()                        { l.heard = append(l.heard, "out") }
func (l *listener) MouseDown(e *desktop.MouseEvent)  { l.hear("down", e.Position) }
func (l *listener) MouseUp(e *desktop.MouseEvent)    { l.hear("up", e.Position) }
func (l *listener) DragEnd()                         { l.heard = append(l.heard, "drag ended") }
func (l *listener) Dragged(e *fyne.DragEvent) {
	l.heard = append(l.heard, fmt.Sprintf("dragged %v,%v by %v,%v", e.Position.X, e.Position.Y, e.Dragged.DX, e.Dragged.DY))
}

// The order is that of Fyne 2.7.4's desktop driver (its internal/driver/glfw,
// processMouseMoved and processMouseClicked): a press that moves less than two
// units is no drag, and while one is dragged nothing hovers.
func TestPointer(t *testing.T) {
	cases := map[string]struct {
		do   func(*replay.Pointer)
		want []string
	}{
		"a click": {
			func(p *replay.Pointer) { p.Click(fyne.NewPos(5, 6)) },
			[]string{"in 5,6", "down 5,6", "up 5,6"},
		},
		"moved": {
			func(p *replay.Pointer) { p.Move(fyne.NewPos(1, 1)); p.Move(fyne.NewPos(2, 3)) },
			[]string{"in 1,1", "moved 2,3"},
		},
		"a drag": {
			func(p *replay.Pointer) { p.Drag(fyne.NewPos(0, 0), fyne.NewPos(10, 20), 2) },
			[]string{"in 0,0", "down 0,0", "dragged 5,10 by 5,10", "dragged 10,20 by 5,10", "up 10,20", "drag ended"},
		},
		"a press that trembles": {
			func(p *replay.Pointer) { p.Drag(fyne.NewPos(0, 0), fyne.NewPos(1, 1), 1) },
			[]string{"in 0,0", "down 0,0", "up 1,1"},
		},
		"let go over a button": {
			func(p *replay.Pointer) {
				p.Move(fyne.NewPos(0, 0))
				p.Press(desktop.MouseButtonPrimary)
				p.Move(fyne.NewPos(8, 0))
				p.ReleaseElsewhere()
				p.Move(fyne.NewPos(9, 0))
			},
			[]string{"in 0,0", "down 0,0", "dragged 8,0 by 8,0", "drag ended", "moved 9,0"},
		},
		"the other button drags nothing": {
			func(p *replay.Pointer) {
				p.Move(fyne.NewPos(0, 0))
				p.Press(desktop.MouseButtonSecondary)
				p.Move(fyne.NewPos(8, 0))
				p.Release()
			},
			[]string{"in 0,0", "down 0,0", "moved 8,0", "up 8,0"},
		},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			l := &listener{}
			c.do(&replay.Pointer{To: l})
			if !slices.Equal(l.heard, c.want) {
				t.Errorf("heard %q, want %q", l.heard, c.want)
			}
		})
	}
}

// Places are inside the drawing, fronts one over the other, and a division lies
// between the two that it divides.
func TestPlaces(t *testing.T) {
	test.NewTempApp(t)
	s := screen.New(session.New(projecttest.Demo(t), layout.Solve), func() message.Language { return message.Language{} })
	test.NewTempWindow(t, s).Resize(fyne.NewSize(1000, 640))
	all := replay.Places(s)
	for _, name := range []string{"front 1", "front 2", "division above 1", "height of 1", "cabinet 1", "width of cabinet 1"} {
		p, ok := all[name]
		if !ok || p.Width <= 0 || p.Height < 0 || p.X < 0 || p.Y < 0 || p.X+p.Width > 1000 || p.Y+p.Height > 640 {
			t.Errorf("%s: %+v, %v", name, p, ok)
		}
	}
	lower, line, upper := all["front 1"].Centre().Y, all["division above 1"].Centre().Y, all["front 2"].Centre().Y
	if !(upper < line && line < lower) {
		t.Errorf("front 2 at %v, the division at %v, front 1 at %v; the first is to be the highest", upper, line, lower)
	}
	if _, ok := all["division above 400"]; ok {
		t.Error("a division that is not there has a place")
	}
}

// Named finds what carries a text, in the order of the window, and nothing that
// is hidden.
func TestNamed(t *testing.T) {
	test.NewTempApp(t)
	entry := widget.NewEntry()
	entry.SetPlaceHolder("a reason")
	hidden := widget.NewButton("Hidden", nil)
	hidden.Hide()
	top := container.NewVBox(
		container.NewHSplit(widget.NewButton("Left", nil), container.NewVScroll(field.NewButton("Right", nil))),
		entry, hidden, widget.NewLabel("only a text"),
	)
	var names []string
	replay.Named(top, "over ", func(name string, _ fyne.CanvasObject) { names = append(names, name) })
	if want := []string{"over Left", "over Right", "over entry a reason"}; !slices.Equal(names, want) {
		t.Errorf("found %q, want %q", names, want)
	}
}
