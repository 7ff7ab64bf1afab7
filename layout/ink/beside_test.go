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

// lines is a canvas that keeps lines, too.
type lines struct {
	letters
	all [][2]Point
}

func (l *lines) Line(_ Pen, a, b Point) { l.all = append(l.all, [2]Point{a, b}) }

// A figure that has no room between its arrows stands outside, where it could be
// taken for the distance of what lies there: the dimension line goes on to it.
func TestTheLineGoesOnToAFigureOutside(t *testing.T) {
	for name, vertical := range map[string]bool{"across": false, "upright": true} {
		t.Run(name, func(t *testing.T) {
			at := func(along int64) plane.Point {
				if vertical {
					return plane.Point{Y: length.MM(along)}
				}
				return plane.Point{X: length.MM(along)}
			}
			d := &drawing.Drawing{}
			// As on the rear face of a front 497 mm wide at 1:10, the next row of
			// holes at 42.6 mm: 76.5 does not stand between 0 and 7.65 mm.
			d.Add(&drawing.Dimension{From: at(0), To: at(5), Vertical: vertical, Line: -5 * length.Millimetre, Value: 76500 * length.Micrometre})
			c := &lines{}
			w := &writer{Canvas: c, say: message.Language{}, room: box{Point{-100, -100}, Point{100, 100}}}
			w.placed(&sheet.Placed{Drawing: d, ScaleNum: 1, ScaleDen: 1})
			w.letters()
			figure := w.taken.all[0]
			near := figure.lo.X
			if vertical {
				near = figure.lo.Y
			}
			longest := 0.0
			for _, l := range c.all {
				end, across := max(l[0].X, l[1].X), l[0].Y
				if vertical {
					end, across = max(l[0].Y, l[1].Y), l[0].X
				}
				if across == -5 {
					longest = max(longest, end)
				}
			}
			if gap := near - longest; gap > 1 || gap < -20 {
				t.Errorf("the line ends at %.1f mm, %.1f mm before its figure at %v", longest, gap, figure)
			}
		})
	}
}
