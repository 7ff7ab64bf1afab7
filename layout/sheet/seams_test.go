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
