package season_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/layout/season"
	"frontlay/model"
	"frontlay/model/length"
)

// Equilibrium moisture content (Wood Handbook Ch. 4, equation from memory). Computed at
// 21.1 °C: 30 % 6.17, 50 % 9.24, 65 % 11.96, 80 % 15.99; the Handbook's table rounds to
// 6.2, 9.2, 12.0, 16.0 (from memory).
func TestEquilibriumIsThatOfTheHandbook(t *testing.T) {
	for _, c := range []struct{ humidity, computed, printed float64 }{{30, 6.17, 6.2}, {50, 9.24, 9.2}, {65, 11.96, 12.0}, {80, 15.99, 16.0}} {
		got := season.Equilibrium(c.humidity, 21.1)
		if math.Abs(got-c.computed) > 0.005 || math.Abs(got-c.printed) > 0.05 {
			t.Errorf("%v %%: %v, want %v", c.humidity, got, c.computed)
		}
	}
}

// Eq. 13-2: ΔD = D·C·(M_final − M_initial). Table 13-5 for 200 mm, 6→12 %, tangential /
// radial (computed): white oak 4.380/2.160; beech 5.172/2.280; sugar maple 4.236/1.980;
// cherry 2.976/1.512. Fixings across the grain (computed): 144 mm of flat-sawn red oak
// from 6 to 12 % moves 144 · 0.00369 · 6 = 3.19 mm. Printed worked example: a 232 mm board
// moves +1.7 mm, ending at 11 % (start 8 % and C 0.00245 from memory).
func TestMovementIsThatOfTheHandbook(t *testing.T) {
	p := &model.Project{Species: []model.Species{{Name: "of the worked example", Tangential: 0.00245}}}
	for _, c := range []struct {
		species string
		cut     model.Sawn
		size    int64
		by, mm  float64
	}{
		{"white oak", model.FlatSawn, 200, 6, 4.380}, {"white oak", model.QuarterSawn, 200, 6, 2.160},
		{"American beech", model.FlatSawn, 200, 6, 5.172}, {"American beech", model.QuarterSawn, 200, 6, 2.280},
		{"sugar maple", model.FlatSawn, 200, 6, 4.236}, {"sugar maple", model.QuarterSawn, 200, 6, 1.980},
		{"black cherry", model.FlatSawn, 200, 6, 2.976}, {"black cherry", model.QuarterSawn, 200, 6, 1.512},
		{"red oak", model.FlatSawn, 144, 6, 3.188160},
		{"of the worked example", model.FlatSawn, 232, 3, 1.7052},
	} {
		s, ok := p.SpeciesOf(&model.Board{Species: c.species})
		got := season.Term{Size: length.MM(c.size), Species: s, Sawn: c.cut}.Change(c.by)
		if !ok || got != length.FromMM(c.mm) {
			t.Errorf("%d mm of %s: %v, want %v mm", c.size, c.species, got, c.mm)
		}
	}
}

// testdata/projects/solid-wood.yaml, worked by hand from Eq. 13-2: wood at 8 % that goes
// from 6 to 12 %, so that from today it rises by 4 and falls by 2. Such as the gap under
// Loops: the 240 mm of Ribs above its lowest hole grow by 240 · 0.00369 · 4 = 3.542, the
// 48 mm of Loops below its own by 48 · 0.00158 · 4 = 0.303: 3 − 3.846 = −0.846.
func TestSolidWoodWorkedByHand(t *testing.T) {
	s := study(t, projecttest.Read(t, "../../testdata/projects/solid-wood.yaml"))
	var got strings.Builder
	for _, f := range s.Fronts {
		fmt.Fprintf(&got, "%s: width %.3f height %.3f\n", f.Name, f.Width.Change(s.Year.Change()).MM(), f.Height.Change(s.Year.Change()).MM())
	}
	for _, g := range s.Gaps {
		from, to, ok := g.Today(s.Year, length.MM(1), length.MM(6))
		fmt.Fprintf(&got, "gap %v of %s: %.3f to %.3f, today %.3f to %.3f %v\n", g.Edge, g.Front.Name, g.Least(s.Year).MM(), g.Greatest(s.Year).MM(), from.MM(), to.MM(), ok)
	}
	for _, x := range s.Fixings {
		swell, shrink := x.Room(s.Year)
		fmt.Fprintf(&got, "fixing %v of %s: %v moves %.3f, has %v, room %.3f and %.3f\n", x.Kind, x.Front.Name, x.Term.Size, x.Needed(s.Year).MM(), x.Play, swell.MM(), shrink.MM())
	}
	for _, v := range s.Panels {
		fmt.Fprintf(&got, "panel of %s: %v, room %v of %.3f, reach %.3f\n", v.Front.Name, v.Term.Size, v.Room, v.NeededRoom(s.Year).MM(), v.ReachDry(s.Year).MM())
	}
	const want = `Irons: width 2.657 height 1.439
Ribs: width 0.000 height 6.376
Loops: width 0.000 height 2.844
gap 2 of Irons: 2.483 to 3.258, today 1.517 to 5.742 true
gap 0 of Irons: 2.114 to 3.443, today 1.886 to 5.557 true
gap 1 of Irons: 2.114 to 3.443, today 1.886 to 5.557 true
gap 2 of Ribs: 1.849 to 3.576, today 2.151 to 5.424 true
gap 2 of Loops: -0.846 to 4.923, today 4.846 to 4.077 false
gap 3 of Loops: 1.407 to 3.796, today 2.593 to 5.204 true
fixing 3 of Irons: 416 mm moves 9.210, has 0 mm, room 6.140 and 3.070
fixing 0 of Ribs: 144 mm moves 3.188, has 0 mm, room 2.125 and 1.063
fixing 2 of Ribs: 128 mm moves 2.834, has 2 mm, room 1.889 and 0.945
fixing 3 of Ribs: 416 mm moves 9.210, has 0 mm, room 6.140 and 3.070
fixing 0 of Loops: 144 mm moves 1.365, has 0 mm, room 0.910 and 0.455
fixing 3 of Loops: 416 mm moves 9.210, has 0 mm, room 6.140 and 3.070
panel of Irons: 186 mm, room 2 mm of 1.373, reach 7.314
`
	if got.String() != want {
		t.Errorf("got\n%s", got.String())
	}
}

func study(t interface {
	Helper()
	Fatal(...any)
}, p *model.Project) *season.Study {
	t.Helper()
	s, ok := season.Of(plan.Make(p))
	if !ok {
		t.Fatal("nothing to study")
	}
	return s
}

// What fronts grow by, gaps close by: in each season a stack and its gaps fill the same
// height, and a single row the same width.
func TestFrontsAndGapsFillTheSameRoom(t *testing.T) {
	base := projecttest.Read(t, "../../testdata/projects/solid-wood.yaml")
	rapid.Check(t, func(t *rapid.T) {
		p := base.Clone()
		p.Boards.Carcass.Grain = rapid.SampledFrom([]string{"", "vertical", "horizontal"}).Draw(t, "carcass grain")
		names := append(p.SpeciesNames(), "")
		boards := []*model.Board{&p.Boards.Carcass, &p.Boards.Front, &p.Boards.Fronts[0].Board, &p.Boards.Fronts[1].Board}
		for _, b := range boards {
			b.Species = rapid.SampledFrom(names).Draw(t, "species")
			b.Sawn = model.Sawn(rapid.IntRange(0, 1).Draw(t, "sawn"))
		}
		p.Boards.Front.Grain = rapid.SampledFrom([]string{"", "vertical", "horizontal"}).Draw(t, "grain")
		for i := range p.Cabinets[0].Bays[0].Fronts {
			p.Cabinets[0].Bays[0].Fronts[i].Board = rapid.SampledFrom([]string{"", "quarter", "oak frames"}).Draw(t, "board")
		}
		s, ok := season.Of(plan.Make(p))
		if !ok {
			return
		}
		up, across := 0.0, map[int]float64{}
		for _, g := range s.Gaps {
			if g.Vertical {
				across[g.Front.Number] += g.Rate
			} else {
				up += g.Rate
			}
		}
		for _, f := range s.Fronts {
			up += f.Height.Rate()
			across[f.Number] += f.Width.Rate()
		}
		carcass := 0.0
		if wood, ok := p.SpeciesOf(&p.Boards.Carcass); ok && p.Boards.Carcass.Grain == "horizontal" {
			carcass = 900 * wood.Across(p.Boards.Carcass.Sawn)
		}
		if math.Abs(up-carcass) > 1e-9 {
			t.Fatalf("a stack grows by %v mm for 1 %%, its carcass by %v", up, carcass)
		}
		for number, sum := range across {
			if math.Abs(sum) > 1e-9 {
				t.Fatalf("front %d and the gaps beside it grow by %v mm for 1 %%", number, sum)
			}
		}
	})
}

// A drier or damper year never makes a gap's least size larger, a fixing's need smaller,
// or the room for building it larger; and a year without change changes nothing.
func TestAHarderYearIsNeverEasier(t *testing.T) {
	base := projecttest.Read(t, "../../testdata/projects/solid-wood.yaml")
	rapid.Check(t, func(t *rapid.T) {
		year := func(dry, damp float64) *season.Study {
			p := base.Clone()
			p.Climate = model.Climate{Driest: model.Air{Moisture: dry}, Dampest: model.Air{Moisture: damp}, Today: model.Air{Moisture: 9}}
			return study(t, p)
		}
		a, b := rapid.Float64Range(5, 9).Draw(t, "driest"), rapid.Float64Range(9, 15).Draw(t, "dampest")
		mild, hard, none := year(a, b), year(a-rapid.Float64Range(0, 3).Draw(t, "drier"), b+rapid.Float64Range(0, 3).Draw(t, "damper")), year(9, 9)
		for i, g := range mild.Gaps {
			h := hard.Gaps[i]
			if h.Least(hard.Year) > g.Least(mild.Year) || h.Greatest(hard.Year) < g.Greatest(mild.Year) || none.Gaps[i].Least(none.Year) != g.Size || none.Gaps[i].Greatest(none.Year) != g.Size {
				t.Fatalf("gap %d: %v to %v, then %v to %v", i, g.Least(mild.Year), g.Greatest(mild.Year), h.Least(hard.Year), h.Greatest(hard.Year))
			}
			from, to, ok := g.Today(mild.Year, length.MM(1), length.MM(6))
			at := g
			if at.Size = from; ok && (at.Least(mild.Year)-length.MM(1)).Abs() > 2 {
				t.Fatalf("built %v, the gap comes to %v", from, at.Least(mild.Year))
			}
			if at.Size = to; ok && (at.Greatest(mild.Year)-length.MM(6)).Abs() > 2 {
				t.Fatalf("built %v, the gap opens to %v", to, at.Greatest(mild.Year))
			}
		}
		for i, x := range mild.Fixings {
			if hard.Fixings[i].Needed(hard.Year) < x.Needed(mild.Year) || none.Fixings[i].Needed(none.Year) != 0 {
				t.Fatalf("fixing %d needs %v, then %v", i, x.Needed(mild.Year), hard.Fixings[i].Needed(hard.Year))
			}
		}
	})
}

func TestWithoutClimateOrSolidWoodThereIsNothingToStudy(t *testing.T) {
	p := projecttest.Read(t, "../../testdata/projects/solid-wood.yaml")
	dry := p.Clone()
	dry.Climate.Dampest = model.Air{}
	sheet := p.Clone()
	sheet.Boards.Carcass.Species, sheet.Boards.Front.Species, sheet.Boards.Fronts = "", "", nil
	for _, q := range []*model.Project{dry, sheet} {
		if _, ok := season.Of(plan.Make(q)); ok {
			t.Error("something is studied")
		}
	}
}

// The middle of the year stands in for what is not known of today, and the temperature of
// a room for what is not given.
func TestYear(t *testing.T) {
	y, ok := season.YearOf(model.Climate{Driest: model.Air{Humidity: 65}, Dampest: model.Air{Moisture: 6}})
	if !ok || y.Driest != 6 || y.Dampest != season.Equilibrium(65, model.UsualTemperature) || !y.Middle || y.Today != (y.Driest+y.Dampest)/2 || y.Outside() {
		t.Errorf("%+v %v", y, ok)
	}
	if y.Driest = 5.9; !y.Outside() {
		t.Error("5.9 % is outside of what the equation holds for")
	}
}
