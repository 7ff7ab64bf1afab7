package sheet

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/lettering"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// withHandle is a front with a handle of two holes, its middle in the middle.
func withHandle(number int, w, h, fromTop length.Length) plan.Front {
	f := front(number, w, h)
	for _, x := range []length.Length{w/2 - mm(64), w/2 + mm(64)} {
		f.HandleHoles = append(f.HandleHoles, plan.Hole{At: plane.Point{X: x, Y: h - fromTop}, Kind: plan.HandleHole, Diameter: mm(5)})
	}
	return f
}

// Equal handles need one template, however wide their fronts are; each front
// keeps its own pencil line.
func TestEqualHandlesShareATemplate(t *testing.T) {
	p := planOf(withHandle(1, mm(600), mm(200), mm(40)), withHandle(2, mm(900), mm(300), mm(40)), withHandle(3, mm(600), mm(200), mm(60)))
	d := Make(p, nil, Options{Parts: []Part{HandleTemplates}})
	if len(d.Pages) != 1 {
		t.Fatalf("%d sheets; want all on one", len(d.Pages))
	}
	holes := len(shownHoles(d))
	if holes != 4 {
		t.Errorf("%d holes; want 4 of two templates", holes)
	}
	for _, want := range []string{"For fronts 1 Glaze 1, 2 Glaze 2", "300 mm", "450 mm", "Front 3: Glaze 3"} {
		if !says(d.Pages[0], want) {
			t.Errorf("the sheet does not say %q", want)
		}
	}
}

// A template that is too high for a sheet is spread over several, and those too
// tell every front's own line.
func TestTallTemplatesTellEveryLine(t *testing.T) {
	p := planOf(withHandle(1, mm(600), mm(1300), mm(640)), withHandle(2, mm(900), mm(1400), mm(640)))
	d := Make(p, nil, Options{Parts: []Part{HandleTemplates}})
	if len(d.Pages) < 2 {
		t.Fatalf("%d sheets; want several", len(d.Pages))
	}
	for i, page := range d.Pages {
		s := strings.ReplaceAll(words(page), "\u00a0", " ")
		for _, want := range []string{"front 1: 300 mm from", "front 2: 450 mm from", "→ right and ← left of the pencil line"} {
			if !strings.Contains(s, want) {
				t.Errorf("sheet %d does not say %q: %s", i+1, want, s)
			}
		}
	}
}

// Parts of a strip name each other by where they lie: “page 1” on page 1 sends
// nobody anywhere. Only a part with a dashed line says to cut along it.
func TestPartsOfAStripSayWhereTheOthersLie(t *testing.T) {
	plan := pedestal()
	screwed(plan, mm(37), mm(140), mm(255)) // the widest room between them is no wider than a sheet's lack
	d := Make(plan, nil, Options{Parts: []Part{RunnerTemplates}, Paper: Paper{"least", leastEdge, leastEdge}})
	joined := 0
	for i, p := range d.Pages {
		cuts, says := 0, 0
		for _, m := range p.Placed[len(p.Placed)-1].Drawing.Marks {
			if l, ok := m.(*drawing.Line); ok && l.Meaning == drawing.Cut && l.From.X == l.To.X {
				cuts++
			}
		}
		for _, text := range ownTexts(p) {
			s := plain(text)
			if strings.Contains(s, fmt.Sprintf("on page %d", i+1)) {
				t.Errorf("page %d sends to itself: %q", i+1, s)
			}
			if strings.Contains(s, "Cut along the dashed line") {
				says++
			}
			if strings.Contains(s, "part 2 below") {
				joined++
			}
		}
		if cuts != says {
			t.Errorf("page %d has %d lines to cut along and speaks of %d", i+1, cuts, says)
		}
	}
	if joined != 2 {
		t.Errorf("%d parts say that the next lies below; want 2", joined)
	}
}

// Nine points is the least that is read at arm's length at the bench (common
// practice, no source): an em of 9/72 inch.
func TestHeightsOfPencilLinesAreLargeEnough(t *testing.T) {
	seen := 0
	for _, text := range ownTexts(Make(pedestal(), nil, Options{Parts: []Part{RunnerTemplates}}).Pages[0]) {
		if !strings.Contains(plain(text), "130 mm") {
			continue
		}
		seen++
		if lettering.Em(text.Size) < length.FromMM(9*25.4/72) {
			t.Errorf("%q is lettered %v high", text.Say, text.Size)
		}
	}
	if seen != 2 {
		t.Errorf("the height stands there %d times; want it at both strips", seen)
	}
}

// What a hole is stands clear of the edge that the strip is laid on.
func TestLabelsCrossNoEdge(t *testing.T) {
	p := pedestal()
	p.Fronts[0].Runner.Screws[0].Back = mm(9)
	p.Fronts[0].Place = model.Place{}
	for _, page := range Make(p, nil, Options{Parts: []Part{RunnerTemplates}}).Pages {
		for _, placed := range page.Drawings() {
			for _, m := range placed.Drawing.Marks {
				edge, ok := m.(*drawing.Line)
				if !ok || edge.Meaning != drawing.Register || edge.From.X != edge.To.X || placed.Clip.Empty() {
					continue
				}
				by := placed.At.Sub(placed.Origin)
				line := plane.R(edge.From.X, edge.From.Y, edge.To.X, edge.To.Y).Move(by).Grow(mm(1) / 4)
				for _, text := range ownTexts(page) {
					if drawing.TextArea(text.At, text.Anchor, text.Size, text.Bold, text.Say.String()).Overlaps(line.Intersect(placed.Clip)) {
						t.Errorf("%q lies over the front edge", text.Say)
					}
				}
			}
		}
	}
}

// screwed gives all runners screws at distances from the front edge.
func screwed(p *plan.Plan, back ...length.Length) {
	for i := range p.Fronts {
		r := &p.Fronts[i].Runner
		one := r.Screws[0]
		r.Screws = nil
		for _, b := range back {
			one.Back = b
			r.Screws = append(r.Screws, one)
		}
	}
}

// A strip longer than the sheet is not taped where its two ends stand beside each
// other on it: every hole lies at its distance from the front edge, or from the mark
// that its end says it is laid on.
func TestStripsByTheirTwoEnds(t *testing.T) {
	p := pedestal()
	back := []length.Length{mm(37), mm(261), mm(453)}
	screwed(p, back...)
	d := Make(p, nil, Options{Parts: []Part{RunnerTemplates}})
	if len(d.Pages) != 1 {
		t.Fatalf("%d sheets; want both hands on one", len(d.Pages))
	}
	page := d.Pages[0]
	seen := map[length.Length]int{}
	for _, placed := range page.Placed[:len(page.Placed)-1] {
		by := placed.At.Sub(placed.Origin)
		lines := 0
		var upright, told length.Length
		for _, m := range append(placed.Drawing.Marks, page.Placed[len(page.Placed)-1].Drawing.Marks...) {
			l, ok := m.(*drawing.Line)
			if !ok || l.Meaning != drawing.Register || l.From.X != l.To.X {
				continue
			}
			at := plane.Point{X: l.From.X, Y: (l.From.Y + l.To.Y) / 2}
			if slices.Contains(placed.Drawing.Marks, m) {
				at = at.Add(by)
			}
			if placed.Clip.Contains(at) && l.Bounds().Height() > mm(20) {
				lines, upright = lines+1, at.X
			}
		}
		for _, text := range ownTexts(page) {
			s := strings.ReplaceAll(plain(text), "\u00a0", " ")
			var v int64
			if n, _ := fmt.Sscanf(s, "← mark, %d mm", &v); n == 1 && placed.Clip.Contains(text.At) {
				told = mm(v)
			}
		}
		if lines != 1 {
			t.Fatalf("an end has %d lines to lay it on; want one", lines)
		}
		for _, m := range placed.Drawing.Marks {
			c, ok := m.(*drawing.Circle)
			if !ok || !placed.Clip.Contains(c.Centre.Add(by)) {
				continue
			}
			at := (c.Centre.X + by.X - upright).Abs()
			if told > 0 { // the mark lies between the holes
				seen[told+at]++
				seen[told-at]++
				continue
			}
			seen[at]++
		}
	}
	for _, b := range back {
		if seen[b] != 2 {
			t.Errorf("the hole at %v is seen %d times; want it at both hands", b, seen[b])
		}
	}
}

// Where holes stand too close for their figures, each has a number, and the table above
// the strip says what it is and where: none is left out.
func TestCrowdedHolesAreTold(t *testing.T) {
	p := pedestal()
	var back []length.Length
	for x := int64(37); x < 160; x += 16 {
		back = append(back, mm(x))
	}
	screwed(p, back...)
	for i, page := range Make(p, nil, Options{Parts: []Part{RunnerTemplates}}).Pages {
		s := strings.ReplaceAll(words(page), "\u00a0", " ")
		for _, b := range back {
			if !strings.Contains(s, fmt.Sprintf(" %d  ↑ 0", b/length.Millimetre)) && !strings.Contains(s, fmt.Sprintf(" %d ↑ 0", b/length.Millimetre)) {
				t.Errorf("page %d does not say where the hole at %v is: %s", i+1, b, s)
			}
		}
		if !strings.Contains(s, "1:  Ø") {
			t.Errorf("page %d has no table: %s", i+1, s)
		}
	}
}
