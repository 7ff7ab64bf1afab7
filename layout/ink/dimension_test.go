package ink

import (
	"fmt"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/layout/lettering"
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

// Each figure has its line: it stands over it, or over the end of a leader from it,
// not over that of another. Here 3 stands between two others in a chain, with no room
// over it, as the gaps between fronts do.
func TestEachFigureHasItsLine(t *testing.T) {
	at := func(x float64) plane.Point { return plane.Point{X: length.FromMM(x)} }
	d := &drawing.Drawing{}
	line := -5 * length.Millimetre
	for _, s := range [][2]float64{{0, 7.2}, {7.2, 7.35}, {7.35, 14.55}, {14.55, 14.7}, {14.7, 22}} {
		d.Add(&drawing.Dimension{From: at(s[0]), To: at(s[1]), Line: line, Value: length.FromMM(20 * (s[1] - s[0]))})
	}
	p := placedOnPage([]drawing.Placed{{Drawing: d, ScaleNum: 1, ScaleDen: 1}}, plane.R(-length.MM(100), -length.MM(100), length.MM(100), length.MM(100)), message.Language{})
	if len(p.Missing) > 0 {
		t.Errorf("left out: %v", p.Missing)
	}
	for _, fault := range figuresWithoutLines(p) {
		t.Error(fault)
	}
}

// placedOnPage says where everything is written of a page.
func placedOnPage(placed []drawing.Placed, in plane.Rect, say message.Language) *letter.Written {
	w := &writer{&letters{}, letter.New(lettering.OnPaper{}, style(), say, letter.Box{Lo: onPage(in.Min), Hi: onPage(in.Max)}), say}
	for i := range placed {
		w.placed(&placed[i])
	}
	return w.letters.Write()
}

// figuresWithoutLines tells of figures with no line of their own dimension along them,
// and of those that stand nearer to the line of another one.
func figuresWithoutLines(p *letter.Written) (faults []string) {
	// beside is how far the nearest of some lines along a figure is from its letters;
	// far away where none runs along a good part of them. Lines in line count as one.
	beside := func(t *letter.Text, all []letter.Stroke) float64 {
		from, to, low, high := t.Box.Lo.X, t.Box.Hi.X, t.Box.Lo.Y, t.Box.Hi.Y
		if t.Turned {
			from, to, low, high = low, high, from, to
		}
		along := map[float64]float64{}
		for _, s := range all {
			a, b, at, level := s.From.X, s.To.X, s.From.Y, s.From.Y == s.To.Y
			if t.Turned {
				a, b, at, level = s.From.Y, s.To.Y, s.From.X, s.From.X == s.To.X
			}
			if level {
				along[at] += max(min(to, max(a, b))-max(from, min(a, b)), 0)
			}
		}
		near := 1e9
		for at, long := range along {
			if long >= 0.4*(to-from) {
				near = min(near, max(low-at, at-high, 0))
			}
		}
		return near
	}
	for i := range p.Dimensions {
		d := &p.Dimensions[i]
		if d.Text < 0 {
			continue
		}
		t := &p.Texts[d.Text]
		own := beside(t, d.Strokes)
		if own > 3 {
			faults = append(faults, fmt.Sprintf("%q at %v has no line", t.Lines[0].Text, t.Box))
			continue
		}
		for j := range p.Dimensions {
			if j != i && beside(t, p.Dimensions[j].Strokes) < own-0.05 {
				faults = append(faults, fmt.Sprintf("%q at %v stands over the line of another dimension, %v", t.Lines[0].Text, t.Box, p.Dimensions[j].Heads))
			}
		}
	}
	return faults
}
