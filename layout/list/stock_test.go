package list

import (
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

// Worked by hand: a cabinet 600 × 700 × 500 of 20 mm board has two sides 500 × 700
// whose grain runs up, and two boards 560 × 500 whose grain runs across. On sheets of
// 1500 × 1060 with 5 mm kerf and no trim the sides lie 700 along and 500 across, two
// of them in 1405, so that one row of the two others (560 each, 1125) has room above:
// 500 + 5 + 500 = 1005 of 1060. One sheet of 1.59 m² at 20 is 31.80; 1.26 m² of it,
// 79 %, become parts.
func TestACarcassOnOneSheet(t *testing.T) {
	p := stockPlan(model.Stock{Length: mm(1500), Width: mm(1060)})
	all := StockPlans(p)
	if len(all) != 1 || len(all[0].Laying.Sheets) != 1 || len(all[0].Parts) != 4 {
		t.Fatalf("%+v", all)
	}
	for _, q := range all[0].Laying.Sheets[0].Parts(all[0].Parts) {
		if w, h := q.Area.Width(), q.Area.Height(); h != mm(500) || w != mm(700) && w != mm(560) || q.Turned {
			t.Errorf("a part lies as %v × %v", w, h)
		}
	}
	table := StockList(StockPlans(p), Speaker{})
	if got := table.Rows[0].Cells; got[2] != "1" || got[3] != "4" || got[4] != "1.59" || got[5] != "79 %" || got[6] != "31.80" {
		t.Errorf("%q", got)
	}
}

// What is larger than a trimmed sheet is told with what it is; a plain board lets it
// turn.
func TestAPartLargerThanItsSheet(t *testing.T) {
	narrow := model.Stock{Length: mm(690), Width: mm(2000)}
	rows := StockList(StockPlans(stockPlan(narrow)), Speaker{}).Rows
	if want := "side, 500 mm × 700 mm for Plain: larger than a trimmed sheet, it lies on none"; len(rows) != 3 || rows[1].Cells[1] != want {
		t.Errorf("%+v", rows)
	}
	narrow.Plain = true
	if rows := StockList(StockPlans(stockPlan(narrow)), Speaker{}).Rows; len(rows) != 1 || rows[0].Cells[3] != "4" {
		t.Errorf("%+v", rows)
	}
	if rows := StockList(StockPlans(stockPlan(model.Stock{})), Speaker{}).Rows; rows != nil {
		t.Errorf("%+v", rows)
	}
}

var mm = length.MM

func stockPlan(s model.Stock) *plan.Plan {
	return plan.Make(&model.Project{
		Boards:   model.Boards{Carcass: model.Board{Thickness: mm(20), Stock: s, Price: 20}, Front: model.Board{Thickness: mm(20), Material: "other"}},
		Saw:      model.Saw{Kerf: mm(5)},
		Cabinets: []model.Cabinet{{Name: "Plain", Width: mm(600), Height: mm(700), Depth: mm(500), Bays: []model.Bay{{}}}},
	})
}
