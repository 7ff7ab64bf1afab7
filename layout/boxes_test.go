package layout_test

import (
	"math"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"frontlay/layout"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
)

// Worked by hand from testdata/projects/wooden-boxes.yaml; how a box is put together is
// common practice, no source. The bay is 600 wide, runners take 13 on each side: boxes
// are 600 − 2·13 = 574 wide.
//
// Pushed in: inner front and back between the sides, 574 − 2·12 = 550; the bottom in
// grooves 6 deep of sides and inner front, 550 + 2·6 = 562 wide, and pushed in below the
// back, 500 − 18 + 6 = 488 long; the back on it, 100 − 10 − 6 = 84 high.
//
// Dovetailed: 500 − 10 = 490 long, sides and fronts in full; its lower edge 10 − 8 = 2
// above the runner's, 98 high; the bottom in grooves 5 deep all round, 574 − 2·14 + 2·5 =
// 556 by 490 − 2·14 + 2·5 = 472.
//
// Laid on: the bottom below all, 574 by 500; sides on it, 100 − 6 = 94 high; inner front
// and back between them 574 − 2·16 = 542; the back 90 − 6 = 84 high.
func TestWoodenBoxesByHand(t *testing.T) {
	r := layout.Solve(projecttest.Read(t, filepath.Join("..", "testdata", "projects", "wooden-boxes.yaml")))
	want := []struct {
		outside                   [3]int64 // width, height, length
		side, front, back, bottom [2]int64
		kg                        float64
		order                     string
	}{
		{[3]int64{574, 100, 500}, [2]int64{500, 100}, [2]int64{550, 100}, [2]int64{550, 84}, [2]int64{562, 488},
			// sides, inner front, back of 700 kg/m³ less their grooves 6·6, bottom of 650
			700*(2*(0.5*0.1*0.012-0.5*0.006*0.006)+0.55*0.1*0.018-0.562*0.006*0.006+0.55*0.084*0.012) + 650*0.562*0.488*0.006,
			"screws for fronts, 30 mm long: through the inner front of 18 mm, 12 mm into the front, hole Ø 2.5 mm"},
		{[3]int64{574, 98, 490}, [2]int64{490, 98}, [2]int64{574, 98}, [2]int64{574, 98}, [2]int64{556, 472}, 0, // the bottom's density is not known
			"screws for fronts, 26 mm long: through the inner front of 14 mm, 12 mm into the front, hole Ø 2.5 mm"},
		{[3]int64{574, 100, 500}, [2]int64{500, 94}, [2]int64{542, 94}, [2]int64{542, 84}, [2]int64{574, 500}, 3, // the sheet's own
			"front connectors"},
	}
	mm := func(v int64) length.Length { return length.MM(v) }
	order := list.HardwareList(r.Plan, list.StockPlans(r.Plan), list.Speaker{}, 0)
	ordered := func(text string) bool {
		return slices.ContainsFunc(order.Rows, func(r list.Row) bool { return len(r.Cells) > 1 && strings.Contains(r.Cells[1], text) })
	}
	for i, w := range want {
		f := &r.Plan.Fronts[i]
		b := f.Drawer.Box
		if b == nil || b.Width != mm(w.outside[0]) || b.Height != mm(w.outside[1]) || b.Length != mm(w.outside[2]) {
			t.Fatalf("%s: outside %+v, want %v", f.Name, b, w.outside)
		}
		for kind, size := range map[plan.BoxPartKind][2]int64{plan.BoxLeftSide: w.side, plan.BoxRightSide: w.side, plan.BoxFront: w.front, plan.BoxBack: w.back, plan.BoxBottom: w.bottom} {
			p := b.Part(kind)
			if p == nil || p.Size() != (plan.Size{Width: mm(size[0]), Length: mm(size[1])}) {
				t.Errorf("%s: part %d is %+v, want %v", f.Name, kind, p, size)
			}
		}
		boxAddsUp(t, r.Plan, f)
		if got := f.DrawerKg(); math.Abs(got-w.kg) > 1e-9 {
			t.Errorf("%s weighs %v kg, want %v", f.Name, got, w.kg)
		}
		for _, text := range []string{w.order, "outside " + mm(w.outside[0]).String() + " wide × " + mm(w.outside[1]).String() + " high × " + mm(w.outside[2]).String() + " long"} {
			if !ordered(text) {
				t.Errorf("%s: nothing orders %q: %v", f.Name, text, order.Rows)
			}
		}
	}
	cut := 0.0
	for _, p := range list.Pieces(r.Plan) {
		if p.Front == 1 && p.What.Text != "front" {
			cut += p.WeightKg()
		}
	}
	if math.Abs(cut-want[0].kg) > 1e-9 {
		t.Errorf("the parts in the cut list weigh %v kg, the box %v", cut, want[0].kg)
	}
}

// boxAddsUp asks of a box that what its parts take together, less what lies in joints
// and grooves, is its outside size, and that none stands out of it.
func boxAddsUp(t *testing.T, in *plan.Plan, f *plan.Front) {
	t.Helper()
	b, s := f.Drawer.Box, f.Sheet
	joints := 2 * s.Box.Joint
	side, front, back := b.Part(plan.BoxLeftSide), b.Part(plan.BoxFront), b.Part(plan.BoxBack)
	across, along := 2*side.Thickness+front.Size().Width-joints, side.Size().Width
	if s.Box.Corners == model.FrontsThrough {
		across, along = front.Size().Width, side.Size().Width+front.Thickness+back.Thickness-joints
	}
	if across != b.Width || along != b.Length {
		t.Errorf("%s: the parts add up to %v by %v, the box is %v by %v", f.Name, across, along, b.Width, b.Length)
	}
	near, far := side.Near, side.Far
	lower, upper := side.Rect.Min, side.Rect.Max
	for i := range b.Parts {
		p := &b.Parts[i]
		near, far = min(near, p.Near), max(far, p.Far)
		lower.X, lower.Y = min(lower.X, p.Rect.Min.X), min(lower.Y, p.Rect.Min.Y)
		upper.X, upper.Y = max(upper.X, p.Rect.Max.X), max(upper.Y, p.Rect.Max.Y)
	}
	if far-near != b.Length || upper.X-lower.X != b.Width || upper.Y-lower.Y != b.Height {
		t.Errorf("%s: the parts take %v × %v × %v, the box is %v × %v × %v", f.Name, upper.X-lower.X, upper.Y-lower.Y, far-near, b.Width, b.Height, b.Length)
	}
	for _, sum := range []plan.Sum{in.BottomWidthOf(f), in.BottomLengthOf(f), in.BackWidthOf(f), in.BackHeightOf(f)} {
		if sum.Total() != sum.Value {
			t.Errorf("%s: %v adds up to %v", f.Name, sum.Say(), sum.Total())
		}
	}
}

// Worked by hand: the stacked fronts of the rule's clean project are 3 apart. The lower one moved up
// by its connector's 2 and the upper one down by d come nearer by 2 + d; where d is not
// given it is the 2 of the way up, and 4 are told. A front that is fixed does not move.
func TestNeighboursMayBothBeMoved(t *testing.T) {
	for _, c := range []struct {
		name   string
		down   length.Length
		fixed  bool
		needed length.Length // 0: nothing is told
	}{
		{"as far down as up", 0, false, 4 * mm},
		{"just too far", 11 * mm / 10, false, 31 * mm / 10},
		{"as far as there is room", 1 * mm, false, 0},
		{"towards a fixed panel", 0, true, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := projecttest.Read(t, filepath.Join("..", "testdata", "rules", "adjustment", "clean.yaml"))
			sheet := p.Hardware[0].Sheet.Clone()
			sheet.Connector.AdjustUp, sheet.Connector.AdjustDown = 2*mm, c.down
			p.Hardware[0].Sheet = sheet
			if c.fixed {
				fronts := p.Cabinets[0].Bays[0].Fronts[:2]
				fronts[1].Kind, fronts[1].Drawer, fronts[1].Cover = model.FixedPanel, "", 0
				p.Cabinets[0].Bays[0].Fronts = fronts
			}
			told := length.Length(0)
			r := layout.Solve(p)
			for _, f := range r.Findings {
				if f.Rule == "adjustment" {
					if told > 0 {
						t.Errorf("told again: %v", f.What)
					}
					told = f.Needed
					if f.Found != 3*mm || len(layout.Offered(p, r, f)) == 0 {
						t.Errorf("%v: found %v, nothing offered", f.What, f.Found)
					}
				}
			}
			if told != c.needed {
				t.Errorf("needed is %v, want %v", told, c.needed)
			}
		})
	}
}

// Of the box that is pushed in, both sides (500 × 100) and the back (550 × 84) are 12 thick and
// of birch plywood: where the project has such a board they lie on its stock sheets, with the
// grain along their length; the inner front of 18 and the bottom of 6 are of no board of the
// project. A board of another density is another one; what the sheet does not say, it does.
func TestBoardsOfBoxesLieOnStockSheets(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "wooden-boxes.yaml"))
	board := model.FrontBoard{Name: "boxes", Board: model.Board{Thickness: length.MM(12), Material: "birch plywood", Stock: model.Stock{Length: length.MM(1200), Width: length.MM(800)}}}
	p.Boards.Fronts = []model.FrontBoard{board}
	stock := list.StockPlans(layout.Solve(p).Plan)
	if len(stock) != 1 || len(stock[0].Laying.Sheets) != 1 || len(stock[0].Parts) != 3 {
		t.Fatalf("%+v", stock)
	}
	sizes := map[[2]length.Length]int{}
	for _, q := range stock[0].Laying.Sheets[0].Parts(stock[0].Parts) {
		sizes[[2]length.Length{q.Area.Width(), q.Area.Height()}]++
	}
	if sizes[[2]length.Length{length.MM(500), length.MM(100)}] != 2 || sizes[[2]length.Length{length.MM(550), length.MM(84)}] != 1 {
		t.Errorf("laid are %v", sizes)
	}
	p.Boards.Fronts[0].Density = 650
	if stock := list.StockPlans(layout.Solve(p).Plan); len(stock) != 0 {
		t.Errorf("a board of 650 kg/m³ is taken for one of 700: %+v", stock)
	}
	everySheet(p, func(s *model.HardwareSheet) { s.Box.Density = 0 })
	if b := layout.Solve(p).Plan.Fronts[0].Drawer.Box.Part(plan.BoxFront).Board; b.Density != 0 {
		t.Errorf("the inner front of 18 weighs %v", b.Density)
	}
	if b := layout.Solve(p).Plan.Fronts[0].Drawer.Box.Part(plan.BoxBack).Board; b.Density != 650 {
		t.Errorf("the back of 12 weighs %v", b.Density)
	}
}
