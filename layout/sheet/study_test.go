package sheet_test

import (
	"strings"
	"testing"

	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/layout/sheet"
	"frontlay/model"
	"frontlay/model/message"
)

// The pages of what wood does and of how exact gaps come out are there where a project gives
// their figures, and nowhere else.
func TestStudiesArePrintedOfWhatIsGiven(t *testing.T) {
	has := func(p *model.Project, part sheet.Part) bool {
		o := sheet.Options{Parts: []sheet.Part{part}}
		return len(sheet.Drawings.Document(plan.Make(p), nil, o).Pages) > 0
	}
	for name, p := range projecttest.All(t, "../..") {
		for part, want := range map[sheet.Part]bool{
			sheet.Season: name == "solid-wood" || name == "everything" || name == "packing-room",
			sheet.Spread: name == "spread" || name == "everything" || name == "packing-room",
		} {
			if got := has(p, part); got != want {
				t.Errorf("%s: the part %s is printed: %v", name, part, got)
			}
		}
	}
}

// Fixings that are alike are told once, with the numbers of their fronts; shares are never
// more than there are.
func TestStudyTables(t *testing.T) {
	say := message.Language{}
	season := list.Season(plan.Make(projecttest.Read(t, "../../testdata/projects/solid-wood.yaml")), say)
	var runners []string
	for _, r := range season.Rows {
		if strings.Contains(r.Cells[0], "screws of the runner") {
			runners = append(runners, r.Cells[0])
		}
	}
	if len(runners) != 1 || !strings.HasPrefix(runners[0], "Front 1, 2, 3:") {
		t.Errorf("the runners are told as %q", runners)
	}
	spread := list.Spread(plan.Make(projecttest.Read(t, "../../testdata/projects/spread.yaml")), say)
	for _, r := range spread.Rows[:12] {
		if len(r.Cells) != len(spread.Columns) {
			t.Fatalf("%q has %d cells", r.Cells[0], len(r.Cells))
		}
	}
	// 400,000 chests in Python leave 94.18 of 100 under the front Deep, 99.78 right of Wide deep.
	if got := spread.Rows[0].Cells[6] + " " + spread.Rows[7].Cells[6]; got != "94 99" {
		t.Errorf("the shares are %s", got)
	}
}
