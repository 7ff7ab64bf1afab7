package paint

import (
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

// A plinth ends where no other one goes on beside it, with or without a reveal
// between them.
func TestEndsOfPlinths(t *testing.T) {
	d := &drawing.Drawing{}
	for _, x := range [][2]length.Length{{0, 600}, {600, 1000}, {1003, 1500}, {2500, 3000}} {
		d.Add(&drawing.Rectangle{
			Tag: drawing.Tag{Meaning: drawing.Plinth}, Filled: true,
			Rect: plane.R(x[0]*length.Millimetre, 0, x[1]*length.Millimetre, 90*length.Millimetre),
		})
	}
	want := [][2]bool{{true, false}, {false, false}, {false, true}, {true, true}}
	e := findEdges(d)
	for i, p := range e.plinths {
		if left, right := e.ends(p); [2]bool{left, right} != want[i] {
			t.Errorf("plinth %d ends at the left %v, at the right %v", i, left, right)
		}
	}
	if len(e.plinths) != len(want) {
		t.Errorf("%d plinths", len(e.plinths))
	}
}
