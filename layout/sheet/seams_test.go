package sheet

import (
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"

	"pgregory.net/rapid"
)

// tileOnPage is what a whole-front sheet shows of its panel and its registration
// crosses, both in the panel's frame.
type tileOnPage struct {
	page    int
	title   string
	shown   plane.Rect
	crosses []plane.Point
}

func tilesOf(d Document) []tileOnPage {
	var all []tileOnPage
	for i, p := range d.Pages {
		panel, own := p.Placed[0], p.Placed[len(p.Placed)-1].Drawing
		back := panel.Origin.Sub(panel.At)
		t := tileOnPage{page: i + 1, title: p.Title.String(), shown: panel.Clip.Move(back)}
		for _, m := range own.Marks {
			l, ok := m.(*drawing.Line)
			if ok && l.Meaning == drawing.Register && l.From.Y == l.To.Y {
				t.crosses = append(t.crosses, plane.Point{X: (l.From.X + l.To.X) / 2, Y: l.From.Y}.Add(back))
			}
		}
		all = append(all, t)
	}
	return all
}

// Sheets that lie side by side, or one above the other, carry the same two
// registration crosses or more, at the same places of the front.
func TestSheetsSideBySideShareCrosses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := Options{Paper: randomPaper(t), Parts: []Part{WholeTemplates}}
		tiles := tilesOf(Make(planOf(randomFront(t, 1), randomFront(t, 2)), nil, o))
		for i, a := range tiles {
			for _, b := range tiles[:i] {
				seam := a.shown.Intersect(b.shown)
				// Tiles that touch at a corner only share no seam.
				beside := seam.Height() > mm(50) || seam.Width() > mm(50)
				if a.title != b.title || seam.Empty() || !beside {
					continue
				}
				if n := shared(a.crosses, b.crosses, seam); n < 2 {
					t.Fatalf("pages %d and %d overlap in %v and share %d crosses", b.page, a.page, seam, n)
				}
			}
		}
	})
}

func shared(a, b []plane.Point, within plane.Rect) int {
	n := 0
	for _, p := range a {
		for _, q := range b {
			if p == q && within.Grow(length.Nanometre).Contains(p) {
				n++
			}
		}
	}
	return n
}

// No seam lies within 6 mm of a hole's centre where holes leave room for it, as those
// of a 32 mm row do (common practice, no source).
func TestSeamsKeepClearOfHoles(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		region := plane.R(0, 0, mm(rapid.Int64Range(100, 1500).Draw(t, "width")), mm(rapid.Int64Range(100, 2500).Draw(t, "height")))
		most := plane.Point{X: tenths(t, mm(150), mm(500), "most across"), Y: tenths(t, mm(150), mm(500), "most up")}
		var bores []bore
		from, diameter := tenths(t, 0, mm(32), "first hole"), mm(rapid.Int64Range(2, 15).Draw(t, "diameter"))
		for y := from; y < region.Max.Y; y += mm(32) {
			for x := from; x < region.Max.X; x += mm(32) {
				bores = append(bores, bore{at: plane.Point{X: x, Y: y}, diameter: diameter})
			}
		}
		til := newTiling(region, most, mm(10), bores)
		for _, b := range bores {
			for _, x := range til.x {
				if (b.at.X - x).Abs() < mm(6) {
					t.Fatalf("the seam at %v lies %v from a hole", x, (b.at.X - x).Abs())
				}
			}
			for _, y := range til.y {
				if (b.at.Y - y).Abs() < mm(6) {
					t.Fatalf("the seam at %v lies %v from a hole", y, (b.at.Y - y).Abs())
				}
			}
		}
	})
}
