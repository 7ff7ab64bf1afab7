package layout_test

import (
	"bytes"
	"encoding/json"
	"fmt"
	"path/filepath"
	"slices"
	"testing"

	"frontlay/layout"
	"frontlay/layout/list"
	"frontlay/layout/projecttest"
)

// What a program reads of boards, by keys written out here and figures worked by hand beside
// TestCarcassesOfAWorkedProject and TestWoodenBoxesByHand: in the first cabinet, 600 wide, the
// back begins 9 before the inside, 25 − 9 = 16, and lies from 532 to 540 in a groove; the
// one plinth is under the two first, 1400. The box that is pushed in begins 13 from the
// inside at 18 + 13 = 31, with sides 12 and its bottom 6 in their grooves: 31 + 12 − 6 = 37;
// it begins with its runner, 2 behind the front edge, the bottom behind 18 − 6 of the
// inner front, 14, and ends with the runner, 502.
func TestBoardsInPlanJSON(t *testing.T) {
	type board struct {
		Kind                                   string
		Left, Bottom, Width, Height, Near, Far float64
		Groove                                 *struct{ Depth, Near, Far float64 }
	}
	var file struct {
		Cabinets []struct {
			Stands string `json:"stands_on"`
			Boards []board
		}
		Fronts []struct {
			Drawer struct{ Box struct{ Boards []board } }
		}
	}
	read := func(project string) {
		var out bytes.Buffer
		if err := list.PlanJSON(&out, layout.Solve(projecttest.Read(t, filepath.Join("..", "testdata", "projects", project))).Plan); err != nil {
			t.Fatal(err)
		}
		if err := json.Unmarshal(out.Bytes(), &file); err != nil {
			t.Fatal(err)
		}
	}
	find := func(all []board, kind string) board {
		i := slices.IndexFunc(all, func(b board) bool { return b.Kind == kind })
		if i < 0 {
			t.Fatalf("no %s in %+v", kind, all)
		}
		return all[i]
	}
	read("carcasses.yaml")
	for i, want := range []string{"plinth", "plinth", "wall"} {
		if got := file.Cabinets[i].Stands; got != want {
			t.Errorf("cabinet %d stands on %q, want %q", i+1, got, want)
		}
	}
	first := file.Cabinets[0].Boards
	if got, want := find(first, "back"), (board{"back", 16, 109, 575, 742, 532, 540, nil}); got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	if got := find(first, "left side"); got.Width != 25 || got.Groove == nil || fmt.Sprint(*got.Groove) != "{9 532 540}" {
		t.Errorf("%+v %+v", got, got.Groove)
	}
	if got := find(first, "plinth"); got.Width != 1400 || got.Height != 100 {
		t.Errorf("%+v", got)
	}
	read("wooden-boxes.yaml")
	if got := find(file.Fronts[0].Drawer.Box.Boards, "bottom"); got.Left != 37 || got.Width != 562 || got.Near != 14 || got.Far != 502 || got.Height != 6 {
		t.Errorf("%+v", got)
	}
}
