package list

import (
	"bytes"
	"encoding/csv"
	"strconv"
	"strings"
	"testing"

	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

// warnedRows are the fronts whose rows warn, and whether all of a front's do.
func warnedRows(t *testing.T, table Table) (warned map[string]bool) {
	t.Helper()
	warned = map[string]bool{}
	last := len(table.Columns) - 1
	if table.Columns[last].Head != "Check" {
		return warned
	}
	for _, r := range table.Rows {
		if r.Group {
			continue
		}
		if len(r.Cells) != last+1 {
			t.Fatalf("%s: a row has %d cells for %d columns", table.Name, len(r.Cells), last+1)
		}
		front, wrong := r.Cells[1], r.Cells[last] == "ERROR, see Findings"
		if before, known := warned[front]; known && before != wrong {
			t.Errorf("%s: only some rows of front %s warn", table.Name, front)
		}
		warned[front] = wrong
	}
	return warned
}

func TestRowsOfFrontsWithOpenErrorsWarn(t *testing.T) {
	at := func(bay, front int) model.Place { return model.Place{Bay: bay, Front: front} }
	fronts := []plan.Front{drilled(1, 36, 36, 0), drilled(2, 36, 36, 0), drilled(3, 36, 36, 0)}
	for i, place := range []model.Place{at(0, 0), at(0, 1), at(1, 0)} {
		fronts[i].Place = place
	}
	p := &plan.Plan{Project: &model.Project{}, Fronts: fronts}
	for name, c := range map[string]struct {
		finding check.Finding
		want    [3]bool
	}{
		"an error":            {check.Finding{Front: 2, Place: at(0, 1)}, [3]bool{false, true, false}},
		"accepted":            {check.Finding{Front: 2, Place: at(0, 1), Accepted: "seen"}, [3]bool{}},
		"a warning":           {check.Finding{Front: 2, Place: at(0, 1), Severity: check.Warning}, [3]bool{}},
		"an error of a bay":   {check.Finding{Place: at(0, -1)}, [3]bool{true, true, false}},
		"an error of the run": {check.Finding{Place: model.Whole}, [3]bool{true, true, true}},
	} {
		t.Run(name, func(t *testing.T) {
			found := []check.Finding{c.finding}
			for _, table := range []Table{DrillList(p, found, Speaker{})} {
				got := warnedRows(t, table)
				for i, n := range []string{"1", "2", "3"} {
					if got[n] != c.want[i] {
						t.Errorf("%s: front %s warns: %v", table.Name, n, got[n])
					}
				}
			}
		})
	}
}

// Another program finds the same columns whether there are errors or not.
func TestFilesAlwaysHaveTheColumnOfWarnings(t *testing.T) {
	p := &plan.Plan{Project: &model.Project{}, Fronts: []plan.Front{drilled(1, 36, 36, 0)}}
	heads := map[string]int{}
	for _, found := range [][]check.Finding{nil, {{Front: 1}}} {
		for _, table := range All(p, found, Speaker{}, 0)[:2] {
			var b bytes.Buffer
			if err := table.CSV(&b, Speaker{}); err != nil {
				t.Fatal(err)
			}
			rows, err := csv.NewReader(&b).ReadAll()
			if err != nil {
				t.Fatal(err)
			}
			head, last := rows[0], rows[1][len(rows[1])-1]
			if head[len(head)-1] != "Check" || (last != "") != (found != nil) {
				t.Errorf("%s: head %q, first row %q", table.Name, head, rows[1])
			}
			if heads[table.Name] > 0 && heads[table.Name] != len(head) {
				t.Errorf("%s has %d columns, or %d", table.Name, len(head), heads[table.Name])
			}
			heads[table.Name] = len(head)
		}
	}
}

func TestDrillFileNamesTheFace(t *testing.T) {
	f := drilled(1, 36, 36, 0)
	f.HandleHoles = []plan.Hole{{At: f.Holes[0].At, Kind: plan.HandleHole, Diameter: length.MM(5)}}
	table := All(&plan.Plan{Project: &model.Project{}, Fronts: []plan.Front{f}}, nil, Speaker{}, 0)[1]
	if table.Columns[3].Head != "Face" || table.Columns[5].Head != "From left, as it lies" {
		t.Fatalf("columns %+v", table.Columns)
	}
	if got := table.Rows[1].Cells[3]; got != "REAR FACE up" {
		t.Errorf("a connector’s hole: %q", got)
	}
	handle := table.Rows[len(table.Rows)-1].Cells
	if handle[2] != "handle: drill from the FACE" || handle[3] != "FACE up" {
		t.Errorf("a handle’s hole: %q", handle)
	}
}

// Programs read numbers: no sign before them, whatever the unit.
func TestLengthsInFilesAreNumbers(t *testing.T) {
	say := ForFiles(Speaker{Unit: length.UnitInch, Comma: true})
	for _, table := range All(worked(), nil, say, 0)[:3] {
		var b bytes.Buffer
		if err := table.CSV(&b, say); err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(&b).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		columns := 0
		for i, head := range rows[0] {
			if !strings.HasSuffix(head, " (in)") {
				continue
			}
			columns++
			for _, r := range rows[1:] {
				for _, figure := range strings.Split(r[i], " · ") {
					if _, err := strconv.ParseFloat(figure, 64); err != nil && figure != "through" {
						t.Errorf("%s: %q is %q", table.Name, head, r[i])
					}
				}
			}
		}
		if columns < 2 {
			t.Errorf("%s has %d columns of lengths: %q", table.Name, columns, rows[0])
		}
	}
}
