package length_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"frontlay/model/length"
)

func TestRounding(t *testing.T) {
	cases := map[string]struct{ size, step, round, floor, ceil length.Length }{
		"on a step":       {10, 5, 10, 10, 10},
		"above":           {11, 5, 10, 10, 15},
		"half, away":      {15, 10, 20, 10, 20},
		"half, negative":  {-15, 10, -20, -20, -10},
		"negative":        {-11, 5, -10, -15, -10},
		"no step":         {11, 0, 11, 11, 11},
		"a negative step": {11, -5, 11, 11, 11},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			if r, f, u := c.size.RoundTo(c.step), c.size.FloorTo(c.step), c.size.CeilTo(c.step); r != c.round || f != c.floor || u != c.ceil {
				t.Errorf("round %d, floor %d, ceil %d", r, f, u)
			}
		})
	}
}

func TestFloorAndCeilEncloseEverySize(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := length.Length(rapid.Int64Range(-1e15, 1e15).Draw(t, "size"))
		step := length.Length(rapid.Int64Range(1, 1e12).Draw(t, "step"))
		f, c, r := l.FloorTo(step), l.CeilTo(step), l.RoundTo(step)
		if f > l || c < l || f%step != 0 || c%step != 0 || c-f > step || (r != f && r != c) || (r-l).Abs()*2 > step {
			t.Fatalf("%d by %d: floor %d, round %d, ceil %d", l, step, f, r, c)
		}
	})
}

func TestFromMM(t *testing.T) {
	cases := map[string]struct {
		mm   float64
		want length.Length
	}{
		"whole":            {12, 12 * mm},
		"broken":           {0.1, mm / 10},
		"half a nanometre": {0.0000005, 1},
		"negative":         {-0.1, -mm / 10},
		"not a number":     {math.NaN(), 0},
		"infinite":         {math.Inf(1), 0},
		"minus infinite":   {math.Inf(-1), 0},
		"far too large":    {1e300, 0},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			if got := length.FromMM(c.mm); got != c.want {
				t.Errorf("FromMM(%v) = %d nm, want %d", c.mm, got, c.want)
			}
		})
	}
}

func TestUnits(t *testing.T) {
	for _, name := range length.UnitNames() {
		u, err := length.ParseUnit(name)
		if err != nil || u.String() != name {
			t.Errorf("%q is read as %v, %v", name, u, err)
		}
		one, err := length.Parse("1 "+u.Symbol(), length.UnitMM)
		if err != nil || one != u.Size() {
			t.Errorf("1 %s is %d nm, %v; its size is %d nm", u.Symbol(), one, err, u.Size())
		}
	}
	if _, err := length.ParseUnit("ell"); err == nil {
		t.Error("the ell is taken for a unit")
	}
	if got := length.AreaM2(600*mm, 200*mm); got != 0.12 {
		t.Errorf("600 × 200 mm is %v m²", got)
	}
}
