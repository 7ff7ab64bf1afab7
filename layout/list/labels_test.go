package list

import (
	"bytes"
	"encoding/csv"
	"slices"
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

// The rows of labels for another program: one for each piece, not for each kind of
// piece, with plain figures, and what a sticker says by arrows in words.
func TestLabelsAsRows(t *testing.T) {
	mm := length.MM
	p := plan.Make(&model.Project{
		Boards: model.Boards{
			Carcass: model.Board{Thickness: mm(18)}, Back: model.Board{Thickness: mm(8)},
			Front: model.Board{Thickness: mm(19), Lipping: mm(1), Grain: "horizontal"},
		},
		Cabinets: []model.Cabinet{{Width: mm(600), Height: mm(400), Depth: mm(560), Bays: []model.Bay{{
			Fronts: []model.Front{{Name: "Slips", Kind: model.FixedPanel}},
		}}}},
	})
	table := labelTable(p, Speaker{})
	var b bytes.Buffer
	if err := table.CSV(&b, Speaker{}); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&b).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range [][]string{
		{"Number", "Piece", "Name", "Width (mm)", "Height (mm)", "Thickness (mm)", "Cut width (mm)", "Cut height (mm)", "Cabinet", "Away from you", "At your left hand", "At your right hand", "Grain"},
		{"1", "fixed panel", "Slips", "600", "400", "19", "598", "398", "cabinet 1", "up", "RIGHT in the room", "LEFT in the room", "along width"},
		{"", "left side", "", "552", "400", "18", "552", "400", "cabinet 1", "up", "front edge", "back edge", "along height"},
		{"", "right side", "", "552", "400", "18", "552", "400", "cabinet 1", "up", "back edge", "front edge", "along height"},
		{"", "bottom", "", "564", "552", "18", "564", "552", "cabinet 1", "back edge", "", "", "along width"},
		{"", "top", "", "564", "552", "18", "564", "552", "cabinet 1", "back edge", "", "", "along width"},
		{"", "back", "", "600", "400", "8", "600", "400", "cabinet 1", "up", "", "", ""},
	} {
		if i >= len(rows) || !slices.Equal(rows[i], want) {
			t.Fatalf("row %d of\n%q\nis not\n%q", i, rows, want)
		}
	}
	if len(rows) != 7 {
		t.Errorf("%d rows", len(rows))
	}
}
