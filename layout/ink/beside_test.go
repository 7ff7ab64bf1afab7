package ink

import (
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Two short distances on one level, as on a narrow front: neither figure stands
// where the other's arrows are.
func TestFiguresOfNeighboursAreNotStruckThrough(t *testing.T) {
	at := func(x int64) plane.Point { return plane.Point{X: length.Length(x) * length.Millimetre} }
	line := -5 * length.Millimetre
	d := &drawing.Drawing{}
	d.Add(
		&drawing.Dimension{From: at(0), To: at(5), Line: line, Value: 49833 * length.Micrometre},
		&drawing.Dimension{From: at(15), To: at(20), Line: line, Value: 49833 * length.Micrometre},
	)
	w := &writer{Canvas: &letters{}, say: message.Language{}, room: box{Point{-100, -100}, Point{100, 100}}}
	w.placed(&sheet.Placed{Drawing: d, ScaleNum: 1, ScaleDen: 1})
	w.letters()
	if len(w.taken.all) != 2 {
		t.Fatalf("%d figures are written; want 2", len(w.taken.all))
	}
	for i, o := range w.dimensions {
		if figure := w.taken.all[1-i]; o.stroke().overlaps(figure) {
			t.Errorf("the figure at %v is struck through by the dimension at %v", figure, o.stroke())
		}
	}
}
