package pdfout

import (
	"fmt"
	"math"
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/length"
)

// tolerance is how far a hole may be off on paper: 0.005 mm.
const tolerance = 0.005

// lopsided is a front whose two sides have nothing in common.
func lopsided() *plan.Plan {
	f := plan.Front{
		Number: 1, Name: "Glazes", Face: plane.R(0, 0, length.MM(597), length.MM(283)),
		EdgeDistance: plan.Edges{Left: length.MM(36), Right: length.MM(27)}, Drop: length.MM(16),
	}
	add := func(side plan.Side, x, y, d length.Length) {
		f.Holes = append(f.Holes, plan.Hole{At: plane.Point{X: x, Y: y}, Side: side, Diameter: d, Depth: length.MM(12)})
	}
	add(plan.Left, length.MM(36), length.MM(64), length.MM(10))
	add(plan.Left, length.MM(36), length.MM(96), length.MM(10))
	add(plan.Left, length.MM(36), length.MM(272), length.MM(10))
	add(plan.Right, length.MM(570), length.FromMM(51.3), length.MM(8))
	add(plan.Right, length.MM(570), length.FromMM(83.3), length.MM(8))
	return &plan.Plan{Project: &model.Project{Title: "Glaze bench"}, Fronts: []plan.Front{f}}
}

var papers = []sheet.Paper{
	{Name: "A4", Width: length.MM(210), Height: length.MM(297)},
	{Name: "A3", Width: length.MM(297), Height: length.MM(420)},
	{Name: "Letter", Width: length.Inch * 17 / 2, Height: length.Inch * 11},
	{Name: "custom", Width: length.MM(200), Height: length.MM(333)},
	{Name: "A2", Width: length.MM(420), Height: length.MM(594)},
	{Name: "A1", Width: length.MM(594), Height: length.MM(841)},
	{Name: "Legal", Width: length.Inch * 17 / 2, Height: length.Inch * 14},
	{Name: "A0", Width: length.MM(841), Height: length.MM(1189)},
	{Name: "Tabloid", Width: length.Inch * 11, Height: length.Inch * 17},
	{Name: "roll", Width: length.MM(610)},
}

// MuPDF reads our PDF: the outline of the front and the circles that follow it
// on each page must be those of the plan, lying face down.
func TestHolesMeasuredByMuPDF(t *testing.T) {
	p := lopsided()
	f := &p.Fronts[0]
	for _, paper := range papers {
		for _, part := range []sheet.Part{sheet.CornerTemplates, sheet.WholeTemplates} {
			t.Run(fmt.Sprint(paper.Name, " ", part), func(t *testing.T) {
				d := sheet.Make(p, nil, sheet.Options{Paper: paper, Parts: []sheet.Part{part}})
				whole := make([]bool, len(f.Holes))
				for i, paths := range traced(t, written(t, d)) {
					found := measurePage(t, f, paths)
					for hole := range found {
						whole[hole] = true
					}
					checkBars(t, i+1, paths)
				}
				for i, ok := range whole {
					if !ok {
						t.Errorf("hole %d is whole on no page", i)
					}
				}
			})
		}
	}
}

// measurePage compares each circle of a page that stands in a front's outline
// with the plan, and gives the holes that are whole in their clip.
func measurePage(t *testing.T, f *plan.Front, paths []tracedPath) map[int]bool {
	t.Helper()
	whole := map[int]bool{}
	w, h := f.Face.Width().MM(), f.Face.Height().MM()
	var corner *point // lower left of the outline, as it lies on the page
	var clip box
	for _, path := range paths {
		e := path.extent()
		switch {
		case path.kind == "clip_path":
			clip, corner = e, nil
		case path.kind == "stroke_path" && len(path.points) == 4 && path.closed &&
			near(e.hi.x-e.lo.x, w) && near(e.hi.y-e.lo.y, h):
			corner = &point{e.lo.x, e.hi.y}
		}
		c, diameter, ok := path.circle()
		if !ok || corner == nil || !near(path.width, 0.25) {
			continue
		}
		i := nearestHole(f, c.x-corner.x, corner.y-c.y)
		want := f.Holes[i]
		x, y := c.x-corner.x, corner.y-c.y
		if !near(x, w-want.At.X.MM()) || !near(y, want.At.Y.MM()) {
			t.Errorf("hole %d is at %.4f, %.4f on paper; want %.4f, %.4f", i, x, y, w-want.At.X.MM(), want.At.Y.MM())
		}
		if math.Abs(diameter-want.Diameter.MM()) > 0.01 {
			t.Errorf("hole %d is %.4f wide; want %v", i, diameter, want.Diameter)
		}
		b := path.extent()
		if b.lo.x >= clip.lo.x && b.hi.x <= clip.hi.x && b.lo.y >= clip.lo.y && b.hi.y <= clip.hi.y {
			whole[i] = true
		}
	}
	return whole
}

func near(a, b float64) bool { return math.Abs(a-b) <= tolerance }

// nearestHole is the plan's hole nearest to a place on the front that lies face
// down.
func nearestHole(f *plan.Front, x, y float64) int {
	best, least := 0, math.Inf(1)
	for i, h := range f.Holes {
		if d := math.Hypot(f.Face.Width().MM()-h.At.X.MM()-x, h.At.Y.MM()-y); d < least {
			best, least = i, d
		}
	}
	return best
}

// checkBars looks for the two bars, of 100 mm both or of 4 in.
func checkBars(t *testing.T, page int, paths []tracedPath) {
	t.Helper()
	for _, long := range []float64{100, 4 * 25.4} {
		across, upright := false, false
		for _, p := range paths {
			if p.kind != "stroke_path" || len(p.points) != 2 {
				continue
			}
			e := p.extent()
			dx, dy := e.hi.x-e.lo.x, e.hi.y-e.lo.y
			across = across || math.Abs(dx-long) < 0.005 && dy < 0.001
			upright = upright || math.Abs(dy-long) < 0.005 && dx < 0.001
		}
		if across && upright {
			return
		}
	}
	t.Errorf("page %d has not two bars of 100 mm or 4 in, one across and one upright", page)
}
