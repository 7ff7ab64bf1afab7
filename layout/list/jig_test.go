package list

import (
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/length"
)

func drilled(number int, left, right, drop int64) plan.Front {
	f := plan.Front{
		Number: number, Name: "Glaze", Face: plane.R(0, 0, length.MM(600), length.MM(200)),
		EdgeDistance: plan.Edges{Left: length.MM(left), Right: length.MM(right)}, Drop: length.MM(drop),
	}
	for _, y := range []int64{48, 80} {
		f.Holes = append(f.Holes,
			plan.Hole{At: plane.Point{X: length.MM(left), Y: length.MM(y + drop)}, Side: plan.Left, Diameter: length.MM(10)},
			plan.Hole{At: plane.Point{X: length.MM(600 - right), Y: length.MM(y + drop)}, Side: plan.Right, Diameter: length.MM(10)})
	}
	return f
}

// Edge distance 36, drop 16 and 0: common practice, no source (side 19, reveal
// 3, inset 20).
func TestEachSettingIsNeededOnce(t *testing.T) {
	p := &plan.Plan{Fronts: []plan.Front{
		drilled(1, 36, 27, 16), drilled(2, 36, 27, 0), drilled(3, 27, 36, 16), drilled(4, 27, 36, 0),
		{Number: 5}, // a panel without holes
	}}
	resets := Resets(p)
	if len(resets) != 4 {
		t.Fatalf("%d settings; want the 4 that differ", len(resets))
	}
	done := map[[2]int]int{}
	for i, r := range resets {
		for _, w := range r.Work {
			done[[2]int{w.Front.Number, int(w.Side)}]++
			want := Setting{w.Front.EdgeDistance.Left, w.Front.Drop}
			if w.Side == plan.Right {
				want.EdgeDistance = w.Front.EdgeDistance.Right
			}
			if r.Setting != want {
				t.Errorf("front %d is drilled with %v; want %v", w.Front.Number, r.Setting, want)
			}
		}
		if i > 0 {
			a, b := resets[i-1].Setting, r.Setting
			if a.EdgeDistance != b.EdgeDistance && a.Drop != b.Drop {
				t.Errorf("from setting %d to %d both stops move: %v to %v", i, i+1, a, b)
			}
		}
	}
	if len(done) != 8 {
		t.Errorf("%d sides are drilled; want both of 4 fronts", len(done))
	}
	for side, n := range done {
		if n != 1 {
			t.Errorf("front %d side %d is drilled %d times", side[0], side[1], n)
		}
	}
}

func TestJigTableHasARowForEachSide(t *testing.T) {
	p := &plan.Plan{Fronts: []plan.Front{drilled(1, 36, 36, 16), drilled(2, 36, 36, 16)}}
	table := JigSettings(p, Speaker{})
	var groups, rows int
	for _, r := range table.Rows {
		if r.Group {
			groups++
			continue
		}
		rows++
		if len(r.Cells) != len(table.Columns) {
			t.Errorf("a row has %d cells for %d columns", len(r.Cells), len(table.Columns))
		}
	}
	if groups != 1 || rows != 4 {
		t.Errorf("%d settings with %d rows; want 1 with 4", groups, rows)
	}
	if got := table.Rows[1].Cells[4]; got != "64 · 96" {
		t.Errorf("holes above the bottom edge: %q; want 64 · 96 (common practice, no source)", got)
	}
	if got := table.Rows[0].Cells[0]; got != "Setting 1: edge distance 36 mm, drop 16 mm" {
		t.Errorf("heading %q", got)
	}
}

func TestNoDrilledFrontIsSaid(t *testing.T) {
	if table := JigSettings(&plan.Plan{}, Speaker{}); len(table.Notes) != 1 || len(table.Rows) != 0 {
		t.Errorf("got %+v; want one note and no rows", table)
	}
}
