package list

import (
	"strings"
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// rowsNaming are the rows of a table, cells joined by bars, with a text in them.
func rowsNaming(t Table, text string) (rows []string) {
	for _, r := range t.Rows {
		if s := strings.Join(r.Cells, "|"); strings.Contains(s, text) {
			rows = append(rows, s)
		}
	}
	return rows
}

// cramped is the worked cabinet whose hardware has no runner short enough.
func cramped() *plan.Plan {
	p := worked().Project.Clone()
	sheet := p.Hardware[0].Sheet.Clone()
	sheet.Runner.Lengths[0].Length = length.MM(800)
	p.Hardware[0].Sheet = sheet
	return plan.Make(p)
}

func TestADrawerWithoutARunnerIsSaidInEveryList(t *testing.T) {
	p := cramped()
	hardware := HardwareList(p, StockPlans(p), Speaker{}, 0)
	for _, want := range []string{
		"□|runners: no runner fits, see Findings (front 1)|pairs|1|1",
		"□|runners: no runner fits, see Findings (front 2)|pairs|1|1",
		"□|drawers, height “low”, for runners: no runner fits, see Findings (front 2)|sets|1|1",
	} {
		if len(rowsNaming(hardware, want)) != 1 {
			t.Errorf("the hardware list lacks %q: %v", want, hardware.Rows)
		}
	}
	if rows := rowsNaming(hardware, " 0 mm"); len(rows) > 0 {
		t.Errorf("hardware 0 mm long: %q", rows)
	}
}

// Fronts that are screwed on need screws and no connectors: the worked cabinet's two
// drawers have four holes each.
func TestScrewedOnFrontsOrderNoConnectors(t *testing.T) {
	p := worked().Project.Clone()
	if rows := rowsNaming(HardwareList(plan.Make(p), StockPlans(plan.Make(p)), Speaker{}, 0), "front connectors"); len(rows) != 1 {
		t.Fatalf("hung fronts order %q", rows)
	}
	sheet := p.Hardware[0].Sheet.Clone()
	sheet.Connector.Kind = model.Screws
	p.Hardware[0].Sheet = sheet
	list := HardwareList(plan.Make(p), StockPlans(plan.Make(p)), Speaker{}, 0)
	if rows := append(rowsNaming(list, "connectors"), rowsNaming(list, "fixings in fronts")...); len(rows) > 0 {
		t.Errorf("screwed-on fronts order %q", rows)
	}
	if rows := rowsNaming(list, "screws for fronts"); len(rows) != 1 || !strings.HasSuffix(rows[0], "|pieces|8|8") {
		t.Errorf("screws for fronts: %q, want 8", rows)
	}
}

func TestMakersFiguresInBothSystems(t *testing.T) {
	inchProject, metric := Speaker{Unit: length.UnitInch}, length.UnitMM
	for name, c := range map[string]struct {
		say  Speaker
		unit length.Unit
		l    length.Length
		want string
	}{
		"metric sheet, inches":       {inchProject, metric, length.MM(10), "10 mm (≈ 25/64 in)"},
		"metric sheet, decimal inch": {Speaker{Unit: length.UnitInchDecimal}, metric, length.MM(10), "10 mm (≈ 0.3937 in)"},
		"metric sheet, millimetres":  {Speaker{}, metric, length.MM(10), "10 mm"},
		"centimetres, millimetres":   {Speaker{}, length.UnitCM, length.MM(10), "10 mm"},
		"inch sheet, millimetres":    {Speaker{}, length.UnitInch, length.Inch / 2, "1/2 in (12.7 mm)"},
		"inch sheet, comma":          {Speaker{Comma: true}, length.UnitInch, length.Inch / 2, "1/2 in (12,7 mm)"},
	} {
		t.Run(name, func(t *testing.T) {
			if got := (MakersLength{c.l, &model.HardwareSheet{Unit: c.unit}}).Say(c.say); got != c.want {
				t.Errorf("written %q; want %q", got, c.want)
			}
		})
	}
}

// The drill is bought in millimetres though the project is in inches.
func TestListsOfAnInchProjectNameTheDrill(t *testing.T) {
	p, say := worked(), Speaker{Unit: length.UnitInch}
	drill, hardware := DrillList(p, nil, say), HardwareList(p, StockPlans(p), say, 0)
	for _, c := range []struct {
		table Table
		want  string
	}{
		{drill, "|10 mm (≈ 25/64 in)|12 mm (≈ 15/32 in)"},
		{hardware, "runners 450 mm (≈ 17 23/32 in) long"},
		{hardware, "hole Ø 10 mm (≈ 25/64 in), 12 mm (≈ 15/32 in) deep"},
	} {
		if len(rowsNaming(c.table, c.want)) == 0 {
			t.Errorf("%s has no %q: %v", c.table.Name, c.want, c.table.Rows)
		}
		if n := strings.Count(strings.Join(c.table.Notes, " "), "≈ figures are rounded; the template is exact."); n != 1 {
			t.Errorf("%s tells %d times what ≈ stands for", c.table.Name, n)
		}
	}
	if notes := DrillList(p, nil, Speaker{}).Notes; len(notes) > 0 {
		t.Errorf("notes without need: %q", notes)
	}
	if files := All(p, nil, ForFiles(say), 0); len(rowsNaming(files[1], "mm (")) > 0 {
		t.Errorf("a figure of the file is no number: %v", files[1].Rows)
	}
	if got := UnitWord(length.UnitInch).String(); got != "inches" {
		t.Errorf("sizes in %s", got)
	}
}

// A spare below zero is none, not a negative one.
func TestNoSpare(t *testing.T) {
	table := HardwareList(worked(), StockPlans(worked()), Speaker{}, -1)
	if !strings.Contains(table.Intro[0], "with 0 % spare") {
		t.Errorf("%q", table.Intro[0])
	}
	if rows := rowsNaming(table, "screws for runners"); len(rows) != 1 || !strings.HasSuffix(rows[0], "|8|8") {
		t.Errorf("%q; want 8 needed, 8 to order", rows)
	}
}

// Screws of handles go through the front, and through a box's inner front where that is behind
// it: it rises from 2 to 98 above the front's lower edge here, and the hole at 150 is above.
func TestHandleScrewsTellWhatTheyGoThrough(t *testing.T) {
	f := plan.Front{Thickness: mm(20), Face: plane.R(0, mm(100), mm(600), mm(300))}
	f.Drawer.Box = &plan.Box{Parts: []plan.BoxPart{{Kind: plan.BoxFront, Rect: plane.R(mm(20), mm(102), mm(580), mm(198)), Thickness: mm(18)}}}
	for y, want := range map[int64]string{
		60:  "handle screws, through 38 mm: a front of 20 mm and an inner front of 18 mm",
		150: "handle screws, through a front of 20 mm",
	} {
		if got := handleScrew(&f, &plan.Hole{At: plane.Point{X: mm(300), Y: mm(y)}, Diameter: mm(5)}).String(); got != want {
			t.Errorf("at %d: %q, want %q", y, got, want)
		}
	}
}
