package ink

import (
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
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
	c := &lines{}
	Draw(c, []drawing.Placed{{Drawing: d, At: at(20), ScaleNum: 1, ScaleDen: 1}}, plane.R(0, -length.MM(50), length.MM(100), length.MM(50)), message.Language{})
	if len(c.texts) != 2 {
		t.Fatalf("%d figures are written; want 2", len(c.texts))
	}
	for _, f := range c.texts {
		for _, l := range c.all {
			b := box{Point{min(l[0].X, l[1].X), min(l[0].Y, l[1].Y)}, Point{max(l[0].X, l[1].X) + 1e-6, max(l[0].Y, l[1].Y) + 1e-6}}
			if b.overlaps(f.box) && b.lo.Y == b.hi.Y-1e-6 {
				t.Errorf("the figure at %v is struck through by the dimension line %v", f.box, l)
			}
		}
	}
}

// lines is a canvas that keeps lines, too.
type lines struct {
	letters
	all [][2]Point
}

func (l *lines) Line(_ Pen, a, b Point) { l.all = append(l.all, [2]Point{a, b}) }

// A figure that has no room between its arrows stands outside, where it could be
// taken for the distance of what lies there: the dimension line goes on to it.
func TestTheLineGoesOnToAFigureOutside(t *testing.T) {
	// As on the rear face of a front at 1:10: the arrows have room between 0 and
	// 7.65 mm, 76.5 beside them has not.
	d := &drawing.Drawing{}
	d.Add(&drawing.Dimension{To: plane.Point{X: 7650 * length.Micrometre}, Line: -5 * length.Millimetre, Value: 76500 * length.Micrometre})
	c := &lines{}
	Draw(c, []drawing.Placed{{Drawing: d, ScaleNum: 1, ScaleDen: 1}}, plane.R(-length.MM(100), -length.MM(100), length.MM(100), length.MM(100)), message.Language{})
	figure, end := c.texts[0].box, 0.0
	for _, l := range c.all {
		if l[0].Y == -5 && l[1].Y == -5 {
			end = max(end, l[0].X, l[1].X)
		}
	}
	if gap := figure.lo.X - end; gap > 1 || gap < 0 {
		t.Errorf("the line ends at %.1f mm, its figure begins at %.1f mm", end, figure.lo.X)
	}
}
