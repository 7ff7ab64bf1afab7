package list

import (
	"strings"
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

// cells finds the row of a piece, by column.
func cells(t *testing.T, table Table, piece string) map[string]string {
	t.Helper()
	for _, r := range table.Rows {
		if r.Group || r.Total || r.Cells[2] != piece {
			continue
		}
		if len(r.Cells) != len(table.Columns) {
			t.Fatalf("%d cells for %d columns", len(r.Cells), len(table.Columns))
		}
		row := map[string]string{}
		for i, c := range table.Columns {
			row[c.Head] = r.Cells[i]
		}
		return row
	}
	return nil
}

// The grain of sides runs up, that of what lies along its width: common practice,
// no source.
func TestGrainAndLippingOfEachPiece(t *testing.T) {
	for _, grain := range []string{"", "vertical", "horizontal"} {
		p := worked().Project.Clone()
		p.Boards.Carcass.Grain, p.Boards.Carcass.Lipping = grain, length.MM(1)
		p.Cabinets[0].Right.Filler = length.MM(40)
		table := CutList(plan.Make(p), Speaker{})
		side := "along height"
		if grain == "horizontal" {
			side = "along width"
		}
		for piece, want := range map[string][2]string{
			"front":        {"along width", "all four edges"},
			"side":         {side, "front edge"},
			"bottom, top":  {"along width", "front edge"},
			"plinth board": {"along width", "none"},
			"filler":       {"along width", "none"},
			"back":         {"", ""}, // a board without grain and lipping
		} {
			if row := cells(t, table, piece); row == nil || row["Grain"] != want[0] || row["Lipped"] != want[1] {
				t.Errorf("carcass grain %q: %s has %q; want %q", grain, piece, row, want)
			}
		}
	}
}

func TestNoColumnOfLippingWhereNothingIsLipped(t *testing.T) {
	p := worked().Project.Clone()
	p.Boards.Front.Lipping = 0
	if row := cells(t, CutList(plan.Make(p), Speaker{}), "side"); row["m²"] != "0.766" {
		t.Errorf("got %q", row)
	} else if _, there := row["Lipped"]; there {
		t.Error("a column for nothing")
	}
}

func TestACarcassWithoutABackHasNone(t *testing.T) {
	p := worked().Project.Clone()
	p.Boards.Back.Thickness = 0
	if row := cells(t, CutList(plan.Make(p), Speaker{}), "back"); row != nil {
		t.Errorf("a back 0 mm thick is listed: %q", row)
	}
}

func TestTheCutListNamesDrawersWithoutARunner(t *testing.T) {
	table := CutList(cramped(), Speaker{})
	rows := rowsNaming(table, "drawer bottom, drawer back|")
	if len(rows) != 2 || len(rowsNaming(table, "no runner fits, see Findings")) != 1 || !strings.Contains(rows[1], "|2 Brushes|") {
		t.Errorf("got %q", rows)
	}
}

// Equal pieces tell what they are for all by name, or all by number.
func TestForHasOneStyle(t *testing.T) {
	for n, want := range map[int]string{2: "1 Glaze jars, 2 Glaze jars", 8: "fronts 1, 2, 3, 4, 5, 6, 7, 8"} {
		p := worked().Project.Clone()
		p.Cabinets[0].Height = length.MM(2 + 90*int64(n) + 3*int64(n-1))
		p.Cabinets[0].Bays[0].Fronts = nil
		for range n {
			p.Cabinets[0].Bays[0].Fronts = append(p.Cabinets[0].Bays[0].Fronts, model.Front{Name: "Glaze jars", Height: length.MM(90)})
		}
		if row := cells(t, CutList(plan.Make(p), Speaker{}), "front"); row["For"] != want {
			t.Errorf("%d equal fronts are for %q; want %q", n, row["For"], want)
		}
	}
}

// An end panel ends level with the faces of overlay fronts, so it is deeper than the
// carcass by their thickness: 560 + 19 = 579; beside inset fronts it is as deep as
// the carcass with its back.
func TestAnEndPanelStandsBesideTheFronts(t *testing.T) {
	for mount, want := range map[model.Mount]length.Length{model.Overlay: length.MM(579), model.Inset: length.MM(560)} {
		p := worked().Project.Clone()
		c := &p.Cabinets[0]
		c.Depth, c.Mount, c.Right.EndPanel = length.MM(560), mount, length.MM(25)
		p.Boards.Front = model.Board{Thickness: length.MM(19)}
		if row := cells(t, CutList(plan.Make(p), Speaker{}), "end panel"); row["Width"] != (Speaker{}).Figure(want) {
			t.Errorf("mount %v: %v wide, want %v", mount, row["Width"], want)
		}
	}
}

// A drawer over both bays ends the partition, at the top or at the bottom; the shelf
// that carries the partition's end is listed: as wide as both bays and the partition.
func TestTheShelfOfAnEndedPartitionIsListed(t *testing.T) {
	for name, c := range map[string]struct {
		wide func(model.Bay, model.Front) model.Bay
		want string
	}{
		"above": {func(b model.Bay, f model.Front) model.Bay { b.Fronts = append(b.Fronts, f); return b }, "shelf under Wide"},
		"below": {func(b model.Bay, f model.Front) model.Bay { b.Fronts = append([]model.Front{f}, b.Fronts...); return b }, "shelf over Wide"},
	} {
		t.Run(name, func(t *testing.T) {
			p := worked().Project.Clone()
			narrow := model.Bay{Fronts: []model.Front{{Name: "Jars", Height: 0}}}
			wide := c.wide(model.Bay{Fronts: []model.Front{{Name: "Jars"}}}, model.Front{Name: "Wide", Span: 2, Height: length.MM(200)})
			p.Cabinets[0].Bays = []model.Bay{wide, narrow}
			pl := plan.Make(p)
			row := cells(t, CutList(pl, Speaker{}), c.want)
			inside := p.Cabinets[0].Width - 2*p.Boards.Carcass.Thickness
			if row["Count"] != "1" || row["Width"] != (Speaker{}).Figure(inside) || row["Height"] != (Speaker{}).Figure(pl.Cabinets[0].Depth) {
				t.Errorf("row %v", row)
			}
		})
	}
}

func TestInchesAreNamedInFull(t *testing.T) {
	for unit, want := range map[length.Unit]string{length.UnitInch: "Sizes in inches.", length.UnitInchDecimal: "Sizes in inches.", length.UnitMM: "Sizes in mm."} {
		for _, table := range []Table{CutList(worked(), Speaker{Unit: unit}), DrillList(worked(), nil, Speaker{Unit: unit})} {
			if !strings.HasPrefix(table.Intro[0], want) {
				t.Errorf("%s begins %q; want %q", table.Name, table.Intro[0], want)
			}
		}
	}
}
