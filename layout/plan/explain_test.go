package plan_test

import (
	"testing"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// TestSumsInWords says sums as a person reads them.
func TestSumsInWords(t *testing.T) {
	p := plan.Make(tradeProject())
	bottom, upper := &p.Fronts[0], &p.Fronts[1]
	say := message.Language{}
	cases := []struct{ name, got, want string }{
		{"edge distance", say.Say(p.EdgeDistanceOf(bottom, plan.Left).Say()),
			"edge distance, left 36 mm = connector inset 20 mm + side overlay 16 mm (= side thickness 19 mm − reveal 3 mm)"},
		{"drop of the bottom drawer", say.Say(p.DropOf(bottom).Say()),
			"drop 16 mm = bottom overlay 16 mm + least height of the runner above the carcass bottom 0 mm"},
		{"drop of an upper drawer", say.Say(p.DropOf(upper).Say()),
			"drop 0 mm = level with the runner's lower edge 0 mm"},
		{"hole height", say.Say(p.HoleHeightOf(bottom, &bottom.Holes[0]).Say()),
			"hole height 64 mm = height above the runner's lower edge 48 mm + drop 16 mm (= bottom overlay 16 mm + least height of the runner above the carcass bottom 0 mm)"},
		{"in inches", message.Language{Unit: length.UnitInch}.Say(p.CoverOf(upper).Say()),
			"cover ≈ 5/64 in = drop 0 in (= level with the runner's lower edge 0 in) + drawer bottom's underside above the runner's lower edge ≈ 5/64 in"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			if c.got != c.want {
				t.Errorf("got  %s\nwant %s", c.got, c.want)
			}
		})
	}
}

// TestHeightsInWords says how heights and widths came about that are shared,
// stepped, lined up or moved, with figures worked by hand.
func TestHeightsInWords(t *testing.T) {
	say := message.Language{}
	height := func(change func(*model.Project), front int) string {
		p := tradeProject()
		change(p)
		pl := plan.Make(p)
		f := &pl.Fronts[front]
		all := say.Say(pl.HeightOf(f).Say())
		if s, ok := pl.RoomToShareOf(f); ok {
			all += "; " + say.Say(s.Say())
		}
		return all
	}
	width := func(change func(*model.Project), front int) string {
		p := tradeProject()
		change(p)
		pl := plan.Make(p)
		f := &pl.Fronts[front]
		all := say.Say(pl.InsideWidthOf(f).Say())
		if s, ok := pl.WidthToShareOf(f); ok {
			all += "; " + say.Say(s.Say())
		}
		return all + "; " + say.Say(pl.WidthOf(f).Say())
	}
	cases := []struct{ name, got, want string }{
		// 722.9 less 2 reveals of 3 are 716.9, less 2 gaps of 3 are 710.9.
		{"an equal share", height(func(p *model.Project) { p.Cabinets[0].Height = 722*mm + 9*mm/10 }, 1),
			"front height 237 mm = share (1 in 3 of 710.9 mm) 236.966667 mm + rounded to whole steps of 1 mm 0.033333 mm; " +
				"height to share 710.9 mm = height of the stack 716.9 mm − gaps 6 mm"},
		{"the one with the odd rest", height(func(p *model.Project) { p.Cabinets[0].Height = 722*mm + 9*mm/10 }, 0),
			"front height 236.9 mm = share (1 in 3 of 710.9 mm) 236.966667 mm − rounded to whole steps of 1 mm 0.966667 mm + odd rest 0.9 mm; " +
				"height to share 710.9 mm = height of the stack 716.9 mm − gaps 6 mm"},
		// 708 less steps of 20 and 40 are 648, 216 each.
		{"steps", height(func(p *model.Project) {
			p.Cabinets[0].Bays[0].Division = model.Division{Rule: model.DivideStep, Step: 20 * mm}
		}, 0),
			"front height 256 mm = share (1 in 3 of 648 mm) 216 mm + steps of 20 mm to those above 40 mm; " +
				"height to share 648 mm = height of the stack 714 mm − gaps 6 mm − what bounds and steps take first 60 mm"},
		// A ratio of 2: 4 + 2 + 1 are 7 parts of 708, 101.142857 each.
		{"ratio", height(func(p *model.Project) {
			p.Cabinets[0].Bays[0].Division = model.Division{Rule: model.DivideRatio, Ratio: 2}
		}, 0),
			"front height 405 mm = share (4 in 7 of 708 mm) 404.571429 mm + rounded to whole steps of 1 mm 0.428571 mm; " +
				"height to share 708 mm = height of the stack 714 mm − gaps 6 mm"},
		{"the only one", height(func(p *model.Project) {
			p.Cabinets[0].Bays[0].Fronts[1].Height, p.Cabinets[0].Bays[0].Fronts[2].Height = 200*mm, 300*mm
		}, 0),
			"front height 208 mm = height of the stack 714 mm − fronts with a height of their own 500 mm − gaps 6 mm"},
		{"a bound", height(func(p *model.Project) { p.Cabinets[0].Bays[0].Fronts[0].Greatest = 100 * mm }, 0),
			"front height 100 mm = least or greatest size asked for 100 mm"},
		// Up to the line at 250 + 3, from 3.
		{"a line", height(func(p *model.Project) {
			p.Cabinets = append(p.Cabinets, p.Clone().Cabinets[0])
			p.Cabinets[1].Name = "B"
			p.Cabinets[1].Bays[0].Fronts[0] = model.Front{Name: "Low", Height: 250 * mm}
			p.Cabinets[0].Bays[0].Fronts[0].LineUp = &model.LineUp{Cabinet: "B", Bay: 1, Front: "Low"}
		}, 0),
			"front height 250 mm = height up to the line of front “Low” 250 mm"},
		// Above the line 714 − 250 − 3 are 461, less a gap 458 for two.
		{"above a line", height(func(p *model.Project) {
			p.Cabinets = append(p.Cabinets, p.Clone().Cabinets[0])
			p.Cabinets[1].Name = "B"
			p.Cabinets[1].Bays[0].Fronts[0] = model.Front{Name: "Low", Height: 250 * mm}
			p.Cabinets[0].Bays[0].Fronts[0].LineUp = &model.LineUp{Cabinet: "B", Bay: 1, Front: "Low"}
		}, 1),
			"front height 229 mm = share (1 in 2 of 458 mm) 229 mm; height to share 458 mm = height above the line 461 mm − gaps 3 mm"},
		// 125 and 93 are heights of the grid, 32·m − 3: 3 + 125 + 3 = 131 = 19 − 16 + 4·32.
		{"hole rows", height(func(p *model.Project) {
			p.HoleRows = model.HoleRows{Mode: model.RowsMoveFronts, Datum: 19 * mm}
			p.Cabinets[0].Bays[0].Fronts = []model.Front{{Height: 120 * mm}, {Share: 1}}
		}, 0),
			"front height 125 mm = height asked for 120 mm + moved to the hole rows 5 mm"},
		// 900 − 2·19 − 2·19 are 824, 274.666667 for each of three.
		{"a bay's width", width(func(p *model.Project) {
			c := &p.Cabinets[0]
			c.Width, c.Bays = 900*mm, []model.Bay{c.Bays[0], c.Bays[0], c.Bays[0]}
		}, 0),
			"inside width 274.6 mm = share (1 in 3 of 824 mm) 274.666667 mm − rounded to whole steps of 0.1 mm 0.066667 mm; " +
				"width to share 824 mm = width of the carcass 900 mm − both sides 38 mm − partitions 38 mm; " +
				"front width 298.6 mm = inside width 274.6 mm + side overlay, left 16 mm + side overlay, right 8 mm"},
		{"an inset front", width(func(p *model.Project) { p.Cabinets[0].Mount = model.Inset }, 0),
			"inside width 562 mm = width of the carcass 600 mm − both sides 38 mm; " +
				"front width 556 mm = inside width 562 mm − reveal, left 3 mm − reveal, right 3 mm"},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			if c.got != c.want {
				t.Errorf("got  %s\nwant %s", c.got, c.want)
			}
		})
	}
}

// TestDrawerPartsInWords: a back is 562 less the deduction wide and stands on the
// bottom, 100 − 2 − 16 = 82 high; a front covers its drawer's side by its overlay and
// the side clearance, 16 + 12 = 28.
func TestDrawerPartsInWords(t *testing.T) {
	p := plan.Make(tradeProject())
	f := &p.Fronts[0]
	say := message.Language{}
	for _, c := range []struct {
		sum  plan.Sum
		want string
	}{
		{p.BottomLengthOf(f), "length of the drawer bottom 490 mm = runner 500 mm − deduction of the hardware sheet 10 mm"},
		{p.BackWidthOf(f), "width of the drawer back 562 mm = inside width 562 mm − deduction of the hardware sheet 0 mm"},
		{p.BackHeightOf(f), "height of the drawer back 82 mm = top of the back above the runner's lower edge 100 mm − drawer bottom's underside above the runner's lower edge 2 mm − thickness of the drawer bottom 16 mm"},
		{p.SideCoverOf(f, plan.Right), "side cover, right 28 mm = side overlay 16 mm + side clearance 12 mm"},
	} {
		if got := say.Say(c.sum.Say()); got != c.want || c.sum.Total() != c.sum.Value {
			t.Errorf("got  %s\nwant %s", got, c.want)
		}
	}
}
