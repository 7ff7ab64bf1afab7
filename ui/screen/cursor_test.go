package screen_test

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/layout/projecttest"
	"frontlay/ui/replay"
	"frontlay/ui/tool"
)

// The pointer's shape tells what a press would do where it is.
func TestThePointersShape(t *testing.T) {
	d := newDesk(t, projecttest.Demo(t))
	box := func(name string) fyne.Position { return d.centre(t, name) }
	cab := replay.Places(d.Screen)["cabinet 3"]
	p5, p8 := replay.Places(d.Screen)["front 5"], replay.Places(d.Screen)["front 8"]
	cases := []struct {
		name string
		hand tool.Tool
		at   fyne.Position
		want desktop.Cursor
	}{
		{"a front", tool.Idle{}, box("front 1"), desktop.DefaultCursor},
		{"a division", tool.Idle{}, box("division above 1"), desktop.VResizeCursor},
		{"a partition", tool.Idle{}, fyne.NewPos((p5.X+p5.Width+p8.X)/2, p5.Y+20), desktop.HResizeCursor},
		{"a cabinet's right edge", tool.Idle{}, fyne.NewPos(cab.X+cab.Width+2, cab.Y+40), desktop.HResizeCursor},
		{"a cabinet's top edge", tool.Idle{}, fyne.NewPos(cab.X+cab.Width/2, cab.Y-2), desktop.VResizeCursor},
		{"a height", tool.Idle{}, box("height of 2"), desktop.TextCursor},
		{"drawing", tool.DrawDivision{}, box("front 1"), desktop.CrosshairCursor},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			d.Take(c.hand)
			d.pointer.Move(c.at)
			if got := d.Cursor(); got != c.want {
				t.Errorf("the shape is %v, want %v", got, c.want)
			}
		})
	}
}
