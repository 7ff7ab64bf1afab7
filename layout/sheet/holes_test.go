package sheet

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"

	"pgregory.net/rapid"
)

// shownHole is a hole as a sheet shows it.
type shownHole struct {
	page, placed int
	place        model.Place
	index        int
	on           plane.Point // the page
	from         plane.Point // Placed.At less Placed.Origin: from panel to page
	whole        bool        // circle and cross inside the clip
}

func shownHoles(d Document) []shownHole {
	var all []shownHole
	for i, p := range d.Pages {
		for j, placed := range p.Drawings() {
			for _, m := range placed.Drawing.Marks {
				c, ok := m.(*drawing.Circle)
				if !ok || c.Of.Kind != drawing.HoleThing || placed.ScaleDen != 1 {
					continue
				}
				by := placed.At.Sub(placed.Origin)
				area := c.Bounds().Grow(crossReach).Move(by)
				clip := placed.Clip
				if clip.Empty() {
					clip = plane.R(0, 0, p.Width, p.Height)
				}
				if !clip.Overlaps(area) {
					continue
				}
				all = append(all, shownHole{i, j, c.Of.Place, c.Of.Index, c.Centre.Add(by), by, area.Intersect(clip) == area})
			}
		}
	}
	return all
}

func TestEveryHoleIsWholeOnASheet(t *testing.T) {
	for _, part := range []Part{CornerTemplates, WholeTemplates} {
		t.Run(string(part), func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				p := planOf(randomFront(t, 1), randomFront(t, 2))
				d := Make(p, nil, Options{Paper: randomPaper(t), Parts: []Part{part}})
				whole := map[model.Place]map[int]bool{}
				for _, h := range shownHoles(d) {
					if h.whole {
						if whole[h.place] == nil {
							whole[h.place] = map[int]bool{}
						}
						whole[h.place][h.index] = true
					}
				}
				all := groups(p, Options{}, sameWhole)
				if part == CornerTemplates {
					all = cornerGroups(p, Options{})
				}
				for _, g := range all {
					for _, f := range g.fronts { // what serves them all has the holes of each
						for _, key := range cornerHoles(f) {
							if !slices.Contains(cornerHoles(g.first()), key) {
								t.Fatalf("front %d shares a template that has not all of its holes", f.Number)
							}
						}
					}
					f := g.first()
					for i := range f.Holes {
						if !whole[f.Place][i] {
							t.Fatalf("hole %d of front %d is whole on no sheet", i, f.Number)
						}
					}
				}
			})
		})
	}
}

func TestTemplatesAreMirrored(t *testing.T) {
	f := lopsided()
	for _, part := range []Part{CornerTemplates, WholeTemplates} {
		d := Make(planOf(f), nil, Options{Parts: []Part{part}})
		for _, h := range shownHoles(d) {
			// From the panel's lower left corner, as it lies face down.
			x := h.on.X - h.from.X
			hole := f.Holes[h.index]
			if want := f.Face.Width() - hole.At.X; x != want {
				t.Errorf("%s: hole %d lies %v from the left on paper; want %v: what is left in the room is right on paper", part, h.index, x, want)
			}
			if y := h.on.Y - h.from.Y; y != hole.At.Y {
				t.Errorf("%s: hole %d lies %v up; want %v", part, h.index, y, hole.At.Y)
			}
		}
	}
}

func TestNothingInTheMargins(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := planOf(randomFront(t, 1), randomFront(t, 2), randomFront(t, 3))
		o := Options{Paper: randomPaper(t), Parts: []Part{JigSettings, Findings, CornerTemplates, WholeTemplates}}
		o.Margins = Margins{tenths(t, 0, mm(60), "side margin"), tenths(t, 0, mm(60), "end margin")}
		o = o.with()
		for i, page := range Make(p, nil, o).Pages {
			area := printable(page.Width, page.Height, o).Grow(length.Micrometre)
			for _, placed := range page.Drawings() {
				for _, m := range placed.Drawing.Marks {
					r := onPage(m, placed, o)
					if r.Intersect(area) != r && !r.Empty() {
						t.Fatalf("page %d (%v × %v, %s): %T %+v reaches into the margin: %v", i+1, page.Width, page.Height, page.Kind, m, m, r)
					}
				}
			}
		}
	})
}

// onPage is the area that a mark takes on the page, cut by the clip.
func onPage(m drawing.Mark, placed drawing.Placed, o Options) plane.Rect {
	r := (&drawing.Drawing{Marks: []drawing.Mark{m}}).OnPaper(placed.ScaleDen, o.Say).Move(placed.At.Sub(placed.Origin))
	if t, ok := m.(*drawing.Text); ok {
		// What letters such as g reach below the line may lie in the margin: it
		// is safe to lose.
		r = drawing.TextArea(t.At, t.Anchor, t.Size, t.Bold, o.Say.Say(t.Say))
		r.Min.Y = min(r.Max.Y, r.Min.Y+t.Size)
	}
	if !placed.Clip.Empty() {
		r = r.Intersect(placed.Clip)
	}
	return r
}

func TestNeighboursShareCrosses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		region := plane.R(0, 0, mm(rapid.Int64Range(100, 3000).Draw(t, "width")), mm(rapid.Int64Range(100, 3000).Draw(t, "height")))
		most := plane.Point{X: mm(rapid.Int64Range(110, 800).Draw(t, "tile width")), Y: mm(rapid.Int64Range(110, 800).Draw(t, "tile height"))}
		til := newTiling(region, most, mm(rapid.Int64Range(5, 30).Draw(t, "overlap")), nil)
		for row := range til.rows {
			for col := range til.cols {
				if col+1 < til.cols {
					common(t, til, col, row, col+1, row)
				}
				if row+1 < til.rows {
					common(t, til, col, row, col, row+1)
				}
				for _, c := range til.crosses(col, row) {
					if !til.at(col, row).Contains(c.at) {
						t.Fatalf("cross %v is not on its tile %v", c, til.at(col, row))
					}
				}
			}
		}
	})
}

func common(t *rapid.T, til tiling, c1, r1, c2, r2 int) {
	seam := til.at(c1, r1).Intersect(til.at(c2, r2))
	n := 0
	for _, a := range til.crosses(c1, r1) {
		for _, b := range til.crosses(c2, r2) {
			if a.at == b.at && seam.Contains(a.at) {
				n++
			}
		}
	}
	if n < 2 {
		t.Fatalf("tiles %d,%d and %d,%d share %d crosses in their seam %v; want 2 or more", c1, r1, c2, r2, n, seam)
	}
}

// While the check has errors, every template says so; what the user accepts is
// no error.
func TestTemplatesWarnOfErrors(t *testing.T) {
	findings := []check.Finding{
		{Severity: check.Warning, Front: 2}, {Severity: check.Error, Front: 3, Accepted: "as agreed"},
		{Severity: check.Error, Front: 1}, {Severity: check.Error, Front: 1},
	}
	for _, c := range []struct {
		findings []check.Finding
		want     bool
	}{{findings, true}, {findings[:2], false}} {
		for _, page := range Make(planOf(lopsided()), c.findings, Options{Parts: []Part{CornerTemplates, WholeTemplates}}).Pages {
			said := false
			for _, m := range page.Placed[len(page.Placed)-1].Drawing.Marks {
				if text, ok := m.(*drawing.Text); ok && strings.HasPrefix(text.Say.String(), "STOP: the check found errors at front 1.") {
					said = true
				}
			}
			if said != c.want {
				t.Errorf("%s: the warning stands there: %v; want %v", page.Kind, said, c.want)
			}
		}
	}
}

// No word of a corner template stands on a hole or its cross, wherever the holes are.
func TestNoWordsOnHoles(t *testing.T) {
	for _, paper := range []Paper{{"A4", mm(210), mm(297)}, {"low", mm(210), mm(200)}, {"A3", mm(297), mm(420)}} {
		for _, edge := range []int64{22, 27, 30, 36, 45, 60, 76} {
			for _, high := range []int64{90, 160, 210, 250} {
				f := lopsided()
				f.Holes = nil
				for _, y := range []int64{high, high - 32, 48} {
					f.Holes = append(f.Holes, bored(f, edge, y))
				}
				for i, p := range Make(planOf(f), nil, Options{Paper: paper, Parts: []Part{CornerTemplates}}).Pages {
					noWordsOnHoles(t, fmt.Sprintf("%s, holes %d mm from the edge up to %d, page %d", paper.Name, edge, high, i+1), p)
				}
			}
		}
	}
}

func bored(f plan.Front, fromRight, y int64) plan.Hole {
	return plan.Hole{At: plane.Point{X: f.Face.Width() - mm(fromRight), Y: mm(y)}, Side: plan.Right, Diameter: mm(10), Depth: mm(12)}
}

func noWordsOnHoles(t *testing.T, name string, p Page) {
	t.Helper()
	var holes []plane.Rect
	for _, placed := range p.Drawings() {
		for _, m := range placed.Drawing.Marks {
			if c, ok := m.(*drawing.Circle); ok && c.Meaning == drawing.HoleEdge && placed.ScaleNum == placed.ScaleDen {
				at := placed.At.Add(c.Centre.Sub(placed.Origin))
				if placed.Clip.Empty() || placed.Clip.Contains(at) {
					holes = append(holes, plane.Rect{Min: at, Max: at}.Grow(c.Radius))
				}
			}
		}
	}
	for _, text := range ownTexts(p) {
		area := drawing.TextArea(text.At, text.Anchor, text.Size, text.Bold, text.Say.String())
		for _, h := range holes {
			if area.Overlaps(h) {
				t.Errorf("%s: %q stands on a hole", name, text.Say.String())
			}
		}
	}
}
