package pdfout

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"frontlay/layout/drawing"
	"frontlay/layout/sheet"
	"frontlay/model/length"
)

// Every hole of every kind of template on every paper is where the sheet says,
// measured by MuPDF on the page, with and without a correction for the printer.
// The printer's factors belong to the paper's sides: a page that lies turned has
// them the other way round.
func TestEveryPlacedHole(t *testing.T) {
	corrections := map[string]sheet.Correction{
		"true printer": {},
		"corrected":    {Printer: "shop", Paper: "any", Across: 1.0123, Up: 0.9917},
	}
	templates := slices.DeleteFunc(sheet.Parts(), func(p sheet.Part) bool { return !p.Template() || p == sheet.Labels })
	upright, turned := 0, 0
	for _, paper := range append(papers, sheet.Paper{Name: "lengthwise", Width: length.MM(333), Height: length.MM(200)}) {
		for name, c := range corrections {
			t.Run(fmt.Sprint(paper.Name, ", ", name), func(t *testing.T) {
				d := sheet.Make(bench(), nil, sheet.Options{Paper: paper, Parts: templates, Correction: c})
				kinds := map[string]int{}
				for i, paths := range traced(t, written(t, d)) {
					page := &d.Pages[i]
					across, up := c.Factors()
					if page.Width == paper.Width {
						upright++
					} else {
						across, up = up, across
						turned++
					}
					kinds[page.Kind] += comparePage(t, page, uncorrected(paths, page, across, up))
				}
				for _, part := range templates {
					if kinds[string(part)] == 0 {
						t.Errorf("no hole of the kind %s was measured", part)
					}
				}
			})
		}
	}
	if upright == 0 || turned == 0 {
		t.Errorf("%d pages upright and %d turned; want some of both", upright, turned)
	}
}

// uncorrected undoes a correction, about the middle of the page.
func uncorrected(paths []tracedPath, page *sheet.Page, across, up float64) []tracedPath {
	w, h := page.Width.MM()/2, page.Height.MM()/2
	for i := range paths {
		for j, p := range paths[i].points {
			paths[i].points[j] = point{w + (p.x-w)/across, h + (p.y-h)/up}
		}
	}
	return paths
}

// comparePage looks for each hole that a page shows, and for its check bars; it
// gives how many holes it found.
func comparePage(t *testing.T, page *sheet.Page, paths []tracedPath) int {
	t.Helper()
	type circle struct {
		at       point
		diameter float64
	}
	var circles []circle
	for _, p := range paths {
		if at, diameter, ok := p.circle(); ok {
			circles = append(circles, circle{at, diameter})
		}
	}
	n := 0
	for _, placed := range page.Drawings() {
		for _, m := range placed.Drawing.Marks {
			c, ok := m.(*drawing.Circle)
			if !ok || c.Meaning != drawing.HoleEdge || !placed.Clip.Contains(c.Centre.Add(placed.At).Sub(placed.Origin)) {
				continue
			}
			n++
			at := c.Centre.Add(placed.At).Sub(placed.Origin)
			want := point{at.X.MM(), page.Height.MM() - at.Y.MM()}
			found := false
			for _, f := range circles {
				if near(f.at.x, want.x) && near(f.at.y, want.y) && math.Abs(f.diameter-2*c.Radius.MM()) < 0.01 {
					found = true
				}
			}
			if !found {
				t.Errorf("%s: no circle of %v at %.3f, %.3f", page.Kind, 2*c.Radius, want.x, want.y)
			}
		}
	}
	compareEdges(t, page, paths)
	checkBars(t, 0, paths)
	return n
}

// compareEdges looks for the edges and lines on which a page is laid: outlines
// of panels, front edges and pencil lines, and the registration crosses.
func compareEdges(t *testing.T, page *sheet.Page, paths []tracedPath) {
	t.Helper()
	for _, placed := range page.Drawings() {
		for _, m := range placed.Drawing.Marks {
			if drawing.TagOf(m).Meaning != drawing.Register {
				continue
			}
			r := m.Bounds().Move(placed.At.Sub(placed.Origin))
			if !placed.Clip.Empty() && !placed.Clip.Grow(length.Millimetre).Overlaps(r.Grow(length.Nanometre)) {
				continue
			}
			want := box{point{r.Min.X.MM(), page.Height.MM() - r.Max.Y.MM()}, point{r.Max.X.MM(), page.Height.MM() - r.Min.Y.MM()}}
			found := false
			for _, p := range paths {
				e := p.extent()
				if p.kind == "stroke_path" && p.curves == 0 && near(e.lo.x, want.lo.x) && near(e.hi.x, want.hi.x) && near(e.lo.y, want.lo.y) && near(e.hi.y, want.hi.y) {
					found = true
				}
			}
			if !found {
				t.Errorf("%s: no edge or line at %.3f", page.Kind, want)
			}
		}
	}
}
