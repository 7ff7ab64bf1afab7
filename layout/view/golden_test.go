package view_test

import (
	"flag"
	"os"
	"path/filepath"
	"testing"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/projecttest"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
)

var update = flag.Bool("update", false, "write the goldens anew")

func solve(t *testing.T, path string) layout.Result {
	t.Helper()
	if path == "" {
		return layout.Solve(projecttest.Demo(t))
	}
	return layout.Solve(projecttest.Read(t, path))
}

func rule(name string) string {
	return filepath.Join("..", "..", "testdata", "rules", name, "flagged.yaml")
}

// TestGoldens compares drawings, as text, with those looked at and kept.
func TestGoldens(t *testing.T) {
	demo := solve(t, "")
	short := solve(t, rule("cover-below"))
	wide := solve(t, rule("wide-front"))
	locked := solve(t, "")
	locked.Plan.Project.Cabinets[0].Bays[0].Fronts[1].Locked = true
	spanning := solve(t, filepath.Join("..", "..", "testdata", "rules", "span", "clean.yaml"))
	cases := []struct {
		name string
		d    *drawing.Drawing
	}{
		{"demo-elevation", view.Elevation(demo.Plan, view.ElevationOptions{})},
		{"demo-see-through", view.Elevation(demo.Plan, view.ElevationOptions{SeeThrough: true})},
		{"cover-short", view.Elevation(short.Plan, view.ElevationOptions{SeeThrough: true, Found: view.Found{All: short.Findings, Chosen: 1}})},
		{"warning-wide", view.Elevation(wide.Plan, view.ElevationOptions{Found: view.Found{All: wide.Findings}})},
		{"locked", view.Elevation(locked.Plan, view.ElevationOptions{Locks: true})},
		{"drawer-plan", view.DrawerPlan(demo.Plan, &demo.Plan.Fronts[0])},
		{"spanning", view.Elevation(spanning.Plan, view.ElevationOptions{SeeThrough: true})},
		{"demo-section", view.Section(demo.Plan, model.Place{Cabinet: 0, Bay: 0, Front: -1})},
		{"demo-rear", view.Rear(&demo.Plan.Fronts[3])},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			file := filepath.Join("testdata", c.name+".txt")
			got := c.d.Dump()
			if *update {
				if err := os.MkdirAll("testdata", 0o777); err != nil {
					t.Fatal(err)
				}
				if err := os.WriteFile(file, []byte(got), 0o666); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if got != string(want) {
				t.Errorf("%s differs from its golden; look at it and run with -update:\n%s", c.name, got)
			}
		})
	}
}

// TestRearIsMirrored proves the mirror with an unsymmetrical pattern: what is at
// the left in the room is at the right as drilled, at the same height.
func TestRearIsMirrored(t *testing.T) {
	r := solve(t, "")
	f := &r.Plan.Fronts[3] // over a partition: its two sides differ
	if f.EdgeDistance.Left == f.EdgeDistance.Right {
		t.Fatal("the front is symmetrical and proves nothing")
	}
	circles := map[plane.Point]bool{}
	for _, m := range view.Rear(f).Marks {
		if c, ok := m.(*drawing.Circle); ok {
			circles[c.Centre] = true
		}
	}
	for _, h := range f.Holes {
		at := plane.Point{X: f.Face.Width() - f.EdgeDistance.Left, Y: h.AboveRunner + f.Drop}
		if h.Side == plan.Right {
			at.X = f.EdgeDistance.Right
		}
		if !circles[at] {
			t.Errorf("no hole at %v, %v of the rear face", at.X, at.Y)
		}
	}
	if len(circles) != len(f.Holes) {
		t.Errorf("%d circles for %d holes", len(circles), len(f.Holes))
	}
}

// TestHit points at things of the elevation.
func TestHit(t *testing.T) {
	r := solve(t, "")
	d := view.Elevation(r.Plan, view.ElevationOptions{}).Plain()
	mm := length.Millimetre
	reach := drawing.Reach{Near: 4 * mm, Level: 60 * mm, FigureX: 30 * mm, FigureY: 12 * mm}
	first, second := &r.Plan.Fronts[0], &r.Plan.Fronts[1]
	figure := plane.Point{X: first.Face.Max.X - first.Face.Width()/8, Y: first.Face.Centre().Y}
	cases := []struct {
		name string
		at   plane.Point
		want drawing.SubjectKind
		of   model.Place
	}{
		{"a front", first.Face.Centre(), drawing.FrontThing, first.Place},
		{"a division, just inside the upper front", plane.Point{X: first.Face.Centre().X, Y: second.Face.Min.Y + 3*mm}, drawing.DivisionThing, first.Place},
		{"a partition, where a niche and a front meet", plane.Point{X: r.Plan.Cabinets[1].Partitions[0].Centre().X, Y: r.Plan.Fronts[7].Face.Centre().Y}, drawing.PartitionThing, model.Place{Cabinet: 1, Bay: 0, Front: -1}},
		{"a figure before its front", figure, drawing.FrontHeight, first.Place},
		{"the plinth", plane.Point{X: first.Face.Centre().X, Y: 40 * mm}, drawing.CabinetThing, model.Place{Cabinet: 0, Bay: -1, Front: -1}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got, ok := d.Hit(c.at, reach)
			if !ok || got.Kind != c.want || got.Place != c.of {
				t.Errorf("got %+v (%v), want kind %d at %+v", got, ok, c.want, c.of)
			}
		})
	}
	if s, ok := d.Hit(plane.Point{X: -500 * mm, Y: 300 * mm}, reach); ok {
		t.Errorf("there is nothing beside the run, but %+v is hit", s)
	}
}

// TestHitOfFindings points at a front where the mark of the finding of the front
// below lies over it.
func TestHitOfFindings(t *testing.T) {
	r := solve(t, filepath.Join("..", "..", "testdata", "projects", "with-findings.yaml"))
	proved := false
	for k, f := range r.Findings {
		d := view.Elevation(r.Plan, view.ElevationOptions{Found: view.Found{All: r.Findings[k : k+1]}})
		for i := range r.Plan.Fronts {
			front := &r.Plan.Fronts[i]
			over := plane.Rect{}
			if len(f.Spots) > 0 {
				over = front.Face.Intersect(f.Spots[0].Box)
			}
			if f.Front == 0 || f.Front == front.Number || over.Height() < 8*length.Millimetre {
				continue
			}
			proved = true
			at := over.Centre()
			at.X = front.Face.Min.X + front.Face.Width()/3
			if got, _ := d.Hit(at, drawing.Reach{}); got.Kind != drawing.FrontThing || got.Place != front.Place {
				t.Errorf("in front %d the finding of front %d is hit: %+v", front.Number, f.Front, got)
			}
		}
	}
	if !proved {
		t.Fatal("no finding's mark lies over another front")
	}
}

// In the plain elevation a sign tells of a cover that is enough, and only of that
// one: of the three fronts the middle one is asked for 14.1 mm and has 14. Seen
// through, a front shows where it lies on the carcass: 18 mm less the reveal of 1.5.
func TestCoversAreTold(t *testing.T) {
	p := solve(t, rule("cover-below")).Plan
	told := map[int]bool{}
	for _, m := range view.Elevation(p, view.ElevationOptions{Covers: true}).Marks {
		if r, ok := m.(*drawing.Rectangle); ok && r.Meaning == drawing.Covered {
			told[r.Of.Place.Front] = true
		}
	}
	if len(told) != 2 || !told[0] || !told[2] {
		t.Errorf("a sign at %v", told)
	}
	sides := 0
	for _, m := range view.Elevation(p, view.ElevationOptions{SeeThrough: true}).Marks {
		r, ok := m.(*drawing.Rectangle)
		if !ok || r.Meaning != drawing.OverlayBand || r.Rect.Width() > r.Rect.Height() {
			continue
		}
		sides++
		if w := r.Rect.Width(); w != 16500*length.Micrometre {
			t.Errorf("at %v the front lies %v on the carcass", r.Rect, w)
		}
	}
	if sides != 6 {
		t.Errorf("%d sides of three fronts lie on the carcass", sides)
	}
}
