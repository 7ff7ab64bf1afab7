package list

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
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
	p := &plan.Plan{Project: &model.Project{}, Fronts: []plan.Front{
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
	p := &plan.Plan{Project: &model.Project{}, Fronts: []plan.Front{drilled(1, 36, 36, 16), drilled(2, 36, 36, 16)}}
	table := jigTable(p, nil, Speaker{})
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
	if got := table.Rows[1].Cells[3]; got != "64 · 96" {
		t.Errorf("holes above the bottom edge: %q; want 64 · 96 (common practice, no source)", got)
	}
	if got := table.Rows[0].Cells[0]; got != "Setting 1: edge distance 36 mm, drop 16 mm" {
		t.Errorf("heading %q", got)
	}
}

// The holes of a rail lie further in than those of the connector, and another
// diameter needs another drill: each is listed under its own distance, each
// diameter and depth in a row of its own, from the bottom up.
func TestAHoleIsListedUnderItsOwnEdgeDistance(t *testing.T) {
	f := drilled(1, 36, 36, 16)
	f.Holes = append(f.Holes,
		plan.Hole{At: plane.Point{X: length.MM(41), Y: length.MM(20)}, Side: plan.Left, Diameter: length.MM(10)},
		plan.Hole{At: plane.Point{X: length.MM(600 - 36), Y: length.MM(30)}, Side: plan.Right, Diameter: length.MM(10)},
		plan.Hole{At: plane.Point{X: length.MM(600 - 36), Y: length.MM(10)}, Side: plan.Right, Diameter: length.MM(5), Depth: length.MM(9)},
	)
	var got []string
	for _, r := range jigTable(&plan.Plan{Project: &model.Project{}, Fronts: []plan.Front{f}}, nil, Speaker{}).Rows {
		got = append(got, strings.Join(r.Cells, "|"))
	}
	want := []string{
		"Setting 1: edge distance 36 mm, drop 16 mm",
		"1|Glaze|right|10|5|9|",
		"Setting 2: edge distance 36 mm, drop 16 mm",
		"1|Glaze|left|64 · 96|10|0|",
		"1|Glaze|right|30 · 64 · 96|10|0|",
		"Setting 3: edge distance 41 mm, drop 16 mm",
		"1|Glaze|left|20|10|0|",
	}
	if !slices.Equal(got, want) {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

func TestAStabiliserIsInNoSetting(t *testing.T) {
	f := drilled(1, 36, 36, 0)
	f.Stabilised = true
	f.Holes = append(f.Holes, plan.Hole{At: plane.Point{X: length.MM(280), Y: length.MM(20)}, Kind: plan.StabiliserHole, Diameter: length.MM(10)})
	table := jigTable(&plan.Plan{Project: &model.Project{}, Fronts: []plan.Front{f}}, nil, Speaker{})
	if n := len(table.Rows); n != 3 {
		t.Errorf("%d rows; want one setting and both sides", n)
	}
}

// Left and right swap on the bench: every page says so, not only the first.
func TestTheMirrorIsSaidOnEveryPage(t *testing.T) {
	p := &plan.Plan{Project: &model.Project{}, Fronts: []plan.Front{drilled(1, 36, 36, 0)}}
	for _, table := range []Table{DrillList(p, nil, Speaker{})} {
		if len(table.Repeat) != 1 || !strings.Contains(table.Repeat[0], "RIGHT") {
			t.Errorf("%s repeats %q; want the sentence on the mirror", table.Name, table.Repeat)
		}
		if strings.Contains(strings.Join(table.Intro, " "), "RIGHT") {
			t.Errorf("%s says it twice on its first page", table.Name)
		}
	}
}

// From the hardware sheet to the jig: a further hole with an inset of 30 where
// the connector's is 20 lies 30 + 16 = 46 from the side edge (side overlay 16, see
// TestDrillListMirrorsSides), on the left side only.
func TestAFurtherHoleOfTheSheetHasItsOwnSetting(t *testing.T) {
	p := worked().Project.Clone()
	sheet := p.Hardware[0].Sheet.Clone()
	sheet.Drawers[0].More = []model.HolePattern{{Up: length.MM(20), Sides: model.LeftOnly, Inset: length.MM(30), Diameter: length.MM(5), Depth: length.MM(8)}}
	p.Hardware[0].Sheet = sheet
	var got []string
	for _, r := range Resets(plan.Make(p)) {
		if r.Setting.EdgeDistance == length.MM(36) {
			continue
		}
		for _, w := range r.Work {
			got = append(got, fmt.Sprint(r.Setting.EdgeDistance, " ", w.Front.Name, " ", SideName(w.Side), " ", len(w.Holes), " ", w.Holes[0].At.Y))
		}
	}
	slices.Sort(got)
	want := []string{"46 mm Brushes left 1 20 mm", "46 mm Jars left 1 43 mm"} // drops 0 and 23
	if !slices.Equal(got, want) {
		t.Errorf("got %q; want %q", got, want)
	}
}
