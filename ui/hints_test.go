package ui

import (
	"slices"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/ui/replay"
)

// Three hints stand on the drawing; each is gone for good when its thing was done,
// and the menu brings all of them back.
func TestHintsAreGoneWhenDone(t *testing.T) {
	const drag, typing, look = "Drag this line", "Click the figure, type: 900-2*18", "Look here for what would go wrong"
	w, _, _ := newWindow(t, "")
	layOut(w)
	left := func(want ...string) {
		t.Helper()
		w.desk.Screen.Refresh()
		if got := w.desk.Hints(); !slices.Equal(got, want) {
			t.Errorf("left are %q, want %q", got, want)
		}
	}
	left()
	w.do("hints")
	left(drag, typing, look)
	w.do("section")
	left()
	w.do("elevation")
	left(drag, typing, look)

	b := replay.Places(w.desk.Screen)["division above 1"]
	(&replay.Pointer{To: w.desk.Screen}).Drag(b.Centre(), b.Centre().AddXY(0, 24), 3)
	left(typing, look)
	w.desk.Screen.TypeSize(drawing.Subject{Kind: drawing.FrontHeight, Place: w.face(2).Place})
	for _, r := range "300" {
		w.win.Canvas().Focused().TypedRune(r)
	}
	press(w, "Return")
	left(look)
	w.do("findings")
	left()
	w.do("findings")
	left()
	w.do("hints")
	left(drag, typing, look)
	w.do("hints")
	left()
}
