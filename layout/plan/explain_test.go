package plan_test

import (
	"testing"

	"frontlay/layout/plan"
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
