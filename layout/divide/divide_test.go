package divide

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"frontlay/model"
	"frontlay/model/length"
)

const mm = length.Millimetre

func shares(s ...float64) []Part {
	p := make([]Part, len(s))
	for i := range s {
		p[i].Share = s[i]
	}
	return p
}

// The progressions of a 700 mm opening with four fronts, outer reveals and gaps
// of 3 mm: 685 mm to share, given top to bottom. Source: "Front progressions
// (computed; opening 700, four fronts, outer reveals and gaps 3 mm: 685 mm to
// share, top to bottom)".
func TestProgressions(t *testing.T) {
	fine := model.Rounding{Step: 100 * length.Nanometre}
	cases := []struct {
		name  string
		parts []Part
		by    model.Division
		want  [4]float64
	}{
		{"equal", shares(0, 0, 0, 0), model.Division{Rule: model.DivideEqual}, [4]float64{171.25, 171.25, 171.25, 171.25}},
		{"arithmetic, step 20", shares(0, 0, 0, 0), model.Division{Rule: model.DivideStep, Step: 20 * mm}, [4]float64{141.25, 161.25, 181.25, 201.25}},
		{"geometric, ratio 1.25", shares(0, 0, 0, 0), model.Division{Rule: model.DivideRatio, Ratio: 1.25}, [4]float64{118.8076, 148.5095, 185.6369, 232.0461}},
		{"Fibonacci 2:3:5:8", shares(8, 5, 3, 2), model.Division{}, [4]float64{76.1111, 114.1667, 190.2778, 304.4444}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := Stack(685*mm, c.parts, c.by, fine)
			if got.Over != 0 {
				t.Errorf("over by %v", got.Over)
			}
			for i, want := range c.want {
				if h := got.Heights[3-i].MM(); math.Abs(h-want) > 0.00011 {
					t.Errorf("front %d from the top is %.4f mm, want %.4f", i+1, h, want)
				}
			}
		})
	}
}

// Source: "Rounding: three equal fronts in 720 with outer reveals 2 and gaps 3
// share 710: rounding each to 1 mm gives 711; the heights must still add up
// exactly."
func TestRoundingKeepsTheSum(t *testing.T) {
	cases := []struct {
		name string
		room length.Length
		rnd  model.Rounding
		want [3]length.Length
	}{
		{"bottom", 710 * mm, model.Rounding{Step: mm}, [3]length.Length{237 * mm, 237 * mm, 236 * mm}},
		{"top", 710 * mm, model.Rounding{Step: mm, Rest: model.RestTop}, [3]length.Length{236 * mm, 237 * mm, 237 * mm}},
		{"half millimetres", 710 * mm, model.Rounding{Step: mm / 2}, [3]length.Length{237 * mm, 236*mm + mm/2, 236*mm + mm/2}},
		// 710.3 / 3 = 236.77: one is whole millimetres and 0.3, 236.3; the others
		// have 474 between them.
		{"odd tenths to the bottom", 710*mm + 3*mm/10, model.Rounding{Step: mm}, [3]length.Length{236*mm + 3*mm/10, 237 * mm, 237 * mm}},
		// 710.9 / 3 = 236.97: 236.9, which leaves 474 for two.
		{"many odd tenths to the bottom", 710*mm + 9*mm/10, model.Rounding{Step: mm}, [3]length.Length{236*mm + 9*mm/10, 237 * mm, 237 * mm}},
		{"and to the top", 710*mm + 9*mm/10, model.Rounding{Step: mm, Rest: model.RestTop}, [3]length.Length{237 * mm, 237 * mm, 236*mm + 9*mm/10}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			got := Stack(c.room, shares(1, 1, 1), model.Division{}, c.rnd)
			for i, w := range c.want {
				if got.Heights[i] != w {
					t.Errorf("heights %v, want %v", got.Heights, c.want)
					break
				}
			}
		})
	}
}

func TestBoundsGiveTheRestToOthers(t *testing.T) {
	parts := []Part{{Share: 1, Greatest: 100 * mm}, {Share: 1}, {Share: 1, Least: 300 * mm}}
	got := Stack(600*mm, parts, model.Division{}, model.Rounding{})
	want := []length.Length{100 * mm, 200 * mm, 300 * mm}
	for i := range want {
		if got.Heights[i] != want[i] {
			t.Fatalf("heights %v, want %v", got.Heights, want)
		}
	}
}

func TestWhatCanNotBeDone(t *testing.T) {
	t.Run("too little room", func(t *testing.T) {
		got := Stack(300*mm, []Part{{Fixed: 200 * mm}, {Share: 1, Least: 150 * mm}}, model.Division{}, model.Rounding{})
		if got.Over != 50*mm || len(got.Short) != 1 || got.Short[0] != 1 {
			t.Errorf("got %+v, want 50 mm over with part 1 in the way", got)
		}
	})
	t.Run("too much room", func(t *testing.T) {
		got := Stack(500*mm, []Part{{Fixed: 200 * mm}, {Share: 1, Greatest: 150 * mm}}, model.Division{}, model.Rounding{})
		if got.Over != -150*mm || len(got.Tall) != 1 || got.Tall[0] != 1 {
			t.Errorf("got %+v, want 150 mm under with part 1 in the way", got)
		}
	})
	t.Run("all fixed", func(t *testing.T) {
		if got := Stack(500*mm, []Part{{Fixed: 200 * mm}, {Fixed: 290 * mm}}, model.Division{}, model.Rounding{}); got.Over != -10*mm {
			t.Errorf("over %v, want -10 mm", got.Over)
		}
	})
}

// genParts draws stacks of every rule with fixed, shared and bounded parts.
func genParts(t *rapid.T) ([]Part, model.Division) {
	n := rapid.IntRange(1, 14).Draw(t, "fronts")
	parts := make([]Part, n)
	for i := range parts {
		if rapid.IntRange(0, 3).Draw(t, "fixed?") == 0 && i > 0 {
			parts[i].Fixed = length.Length(rapid.Int64Range(1, 400e6).Draw(t, "fixed"))
		} else {
			parts[i].Share = rapid.Float64Range(0.01, 50).Draw(t, "share")
		}
	}
	by := model.Division{Rule: model.DivisionRule(rapid.IntRange(0, 3).Draw(t, "rule"))}
	by.Step = length.Length(rapid.Int64Range(0, 40e6).Draw(t, "step"))
	by.Ratio = rapid.Float64Range(0.5, 2).Draw(t, "ratio")
	return parts, by
}

func TestSumsAreExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		parts, by := genParts(t)
		fixed, open := length.Length(0), 0
		for _, p := range parts {
			fixed += p.Fixed
			if p.Fixed == 0 {
				open++
			}
		}
		step := rapid.SampledFrom([]length.Length{mm, mm / 2, length.Inch64th}).Draw(t, "rounding")
		room := fixed + length.Length(open)*mm + length.Length(rapid.Int64Range(0, 3000e6).Draw(t, "room"))
		rest := model.RestTo(rapid.IntRange(0, 1).Draw(t, "rest"))
		got := Stack(room, parts, by, model.Rounding{Step: step, Rest: rest})
		sum, odd := length.Length(0), 0
		for i, h := range got.Heights {
			sum += h
			if h <= 0 {
				t.Fatalf("front %d is %v high", i, h)
			}
			if parts[i].Fixed == 0 && h%step != 0 {
				odd++
			}
		}
		if sum != room || got.Over != 0 {
			t.Fatalf("heights %v add up to %v, not %v", got.Heights, sum, room)
		}
		if odd > 1 {
			t.Fatalf("%d fronts of %v are off the rounding step", odd, got.Heights)
		}
	})
}

// Heights are checked by a second computation written from the formula alone,
// height = room · share / Σ shares: none is more than a step off it, and equal
// shares differ by a step at most, whoever takes the odd rest.
func TestSharesAreWithinAStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 12).Draw(t, "fronts")
		parts, total := make([]Part, n), 0.0
		for i := range parts {
			parts[i].Share = rapid.SampledFrom([]float64{0.5, 1, 1, 1, 2, 10}).Draw(t, "share")
			total += parts[i].Share
		}
		step := rapid.SampledFrom([]length.Length{mm / 10, mm / 2, mm, 5 * mm, length.Inch64th}).Draw(t, "rounding")
		rest := model.RestTo(rapid.IntRange(0, 1).Draw(t, "rest"))
		room := length.Length(rapid.Int64Range(1500e6, 3000e6).Draw(t, "room"))
		got := Stack(room, parts, model.Division{}, model.Rounding{Step: step, Rest: rest})
		least, most := map[float64]length.Length{}, map[float64]length.Length{}
		for i, h := range got.Heights {
			share := parts[i].Share
			if want := room.MM() * share / total; math.Abs(h.MM()-want) > step.MM() {
				t.Fatalf("front %d of %v is %.3f mm, its share is %.3f mm", i, got.Heights, h.MM(), want)
			}
			if least[share] == 0 {
				least[share] = h
			}
			least[share], most[share] = min(least[share], h), max(most[share], h)
			if most[share]-least[share] > step {
				t.Fatalf("equal shares are %v and %v high", least[share], most[share])
			}
		}
	})
}

// Bounds that are no whole steps keep the sum and leave every part within a step
// of its share, too.
func TestBoundedHeightsAreWithinAStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 8).Draw(t, "parts")
		parts := make([]length.Portion, n)
		total, step := length.Length(0), mm
		for i := range parts {
			p := &parts[i]
			p.Want = length.Length(rapid.Int64Range(2e6, 500e6).Draw(t, "want"))
			total += p.Want
			if rapid.Bool().Draw(t, "least?") {
				p.Least = p.Want - length.Length(rapid.Int64Range(0, 2e6).Draw(t, "below"))
			}
			if rapid.Bool().Draw(t, "greatest?") {
				p.Greatest = p.Want + length.Length(rapid.Int64Range(0, 2e6).Draw(t, "above"))
			}
		}
		sum := length.Length(0)
		got := length.Apportion(total, step, parts, rapid.Bool().Draw(t, "last"))
		for i, h := range got {
			p := &parts[i]
			sum += h
			if (h-p.Want).Abs() > step || h < p.Least || p.Greatest > 0 && h > p.Greatest {
				t.Fatalf("part %d is %v, wanted %v between %v and %v", i, h, p.Want, p.Least, p.Greatest)
			}
		}
		if sum != total {
			t.Fatalf("%v add up to %v, not %v", got, sum, total)
		}
	})
}
