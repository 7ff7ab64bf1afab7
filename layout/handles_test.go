package layout_test

import (
	"path/filepath"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/list"
	"frontlay/layout/plane"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
)

// By hand (common practice, no source): fronts are 600 - 2 × 1.5 = 597 wide, their middle
// at 298.5; the stack is 720 - 2 = 718 high and begins at the plinth's 100.
//
//	Buckets, 400 high: the line at 780 passes over it (it ends at 500), so in its middle,
//	at 200; screws 160 apart at 298.5 ∓ 80.
//	Cups, from 503 to 818: the line is 780 - 503 = 277 above its lower edge.
//	Sieves, 300 high: two knobs at 298.5 ∓ 150, 300 - 45 = 255 up.
//	Brushes, 200 high: 60 from the right edge is 537 from the left; 100 - 10 = 90 up,
//	screws 96 apart at 90 ∓ 48. Papers: none.
func TestHandlesByHand(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "handles.yaml"))
	r := layout.Solve(p)
	at := func(x, y length.Length) plane.Point { return plane.Point{X: x, Y: y} }
	half := mm / 2
	for i, want := range [][]plane.Point{
		{at(218*mm+half, 200*mm), at(378*mm+half, 200*mm)},
		{at(218*mm+half, 277*mm), at(378*mm+half, 277*mm)},
		{at(148*mm+half, 255*mm), at(448*mm+half, 255*mm)},
		{at(537*mm, 42*mm), at(537*mm, 138*mm)},
		nil,
	} {
		f := &r.Plan.Fronts[i]
		var got []plane.Point
		for _, h := range f.HandleHoles {
			got = append(got, h.At)
			if h.Diameter != 5*mm || h.Depth != 19*mm {
				t.Errorf("%s: a hole of %v, %v deep", f.Name, h.Diameter, h.Depth)
			}
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s: holes at %v; want %v", f.Name, got, want)
		}
	}
	for _, f := range r.Findings {
		t.Errorf("found: %s: %s", f.Where, f.What)
	}
	var ordered []string
	for _, m := range list.Order(r.Plan) {
		ordered = append(ordered, m.String())
	}
	for _, want := range []string{"2 × handles, screws 160 mm apart (pieces)", "2 × handles or knobs with one screw (pieces)", "1 × handles, screws 96 mm apart (pieces)"} {
		if !slices.Contains(ordered, want) {
			t.Errorf("%q is not ordered: %q", want, ordered)
		}
	}
}

// What is said of a front, its cabinet and the project holds in that order, and a figure
// that is set for a front begins with what held before.
func TestHandlesOfWhatIsAround(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "handles.yaml"))
	do := func(e edit.Edit) {
		t.Helper()
		next, err := e.Apply(p)
		if err != nil {
			t.Fatal(err)
		}
		p = next
	}
	cups := model.Place{Front: 1}
	do(edit.Set{At: cups, Key: "handle.from_top", Value: 30 * mm})
	if h := p.FrontAt(cups).Handle; h.Spacing != 160*mm || h.FromTop != 30*mm || h.OnLine != 0 {
		t.Errorf("a handle of its own begins as %+v", h)
	}
	do(edit.Set{At: cups, Key: "handle.on_line", Value: 400 * mm})
	if got := layout.Solve(p).Plan.Fronts[1].HandleHoles[0].At.Y; got != -103*mm {
		t.Errorf("a line of its own that passes below is %v above the lower edge; want -103 mm, for the check to see", got)
	}
	do(edit.Set{At: cups, Key: "handle"})
	tools := model.Place{Cabinet: 1, Bay: -1, Front: -1}
	do(edit.Set{At: tools, Key: "handle"})
	if n := len(layout.Solve(p).Plan.Fronts[2].HandleHoles); n != 2 {
		t.Errorf("without the cabinet's knobs there are %d holes; want the project's 2", n)
	}
	do(edit.Set{At: model.Whole, Key: "handle"})
	for _, f := range layout.Solve(p).Plan.Fronts {
		if want := f.Name == "Brushes"; want != (len(f.HandleHoles) > 0) {
			t.Errorf("%s has %d handle holes", f.Name, len(f.HandleHoles))
		}
	}
	sieves := model.Place{Cabinet: 1}
	p.FrontAt(sieves).Kind = model.FixedPanel
	p.Handle = &model.Handle{}
	if n := len(layout.Solve(p).Plan.Fronts[2].HandleHoles); n != 0 {
		t.Errorf("a fixed panel gets %d holes of the project's", n)
	}
}

// Screws of a handle are as far apart as is asked for and around its middle; two handles
// stand alike from both side edges.
func TestHandlesAreSymmetric(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
		p.Handle = projecttest.Handle(t)
		fronts := layout.Solve(p).Plan.Fronts
		for i := range fronts {
			f := &fronts[i]
			src, _ := p.HandleOf(f.Place)
			if src == nil {
				if len(f.Handles)+len(f.HandleHoles) > 0 {
					t.Fatalf("front %d has a handle that nobody asked for", f.Number)
				}
				continue
			}
			if len(f.Handles) != max(src.Count, 1) {
				t.Fatalf("front %d has %d handles; want %d", f.Number, len(f.Handles), src.Count)
			}
			for k := range f.Handles {
				h := &f.Handles[k]
				if h.Spacing() != src.Spacing {
					t.Fatalf("screws %v apart; want %v", h.Spacing(), src.Spacing)
				}
				a, b := h.Holes[0].At, h.Holes[len(h.Holes)-1].At
				if off := a.Add(b).Sub(h.At.Add(h.At)); off.X.Abs() > 1 || off.Y.Abs() > 1 {
					t.Fatalf("screws at %v and %v around %v", a, b, h.At)
				}
			}
			if len(f.Handles) == 2 && f.Handles[0].At.X != f.Face.Width()-f.Handles[1].At.X {
				t.Fatalf("handles at %v and %v of %v", f.Handles[0].At, f.Handles[1].At, f.Face.Width())
			}
		}
	})
}
