package length_test

import (
	"math"
	"math/big"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"frontlay/model/length"
)

func TestFormat(t *testing.T) {
	cases := map[string]struct {
		unit length.Unit
		size length.Length
		want string
	}{
		"zero":                       {length.UnitMM, 0, "0"},
		"whole":                      {length.UnitMM, 320 * mm, "320"},
		"tenth":                      {length.UnitMM, 171250000, "171.25"},
		"below one":                  {length.UnitMM, 500_000, "0.5"},
		"nanometre":                  {length.UnitMM, -1, "-0.000001"},
		"centimetres":                {length.UnitCM, 864 * mm, "86.4"},
		"fraction":                   {length.UnitInch, 48 * length.Inch64th, "3/4"},
		"mixed":                      {length.UnitInch, (35*64 + 28) * length.Inch64th, "35 7/16"},
		"whole inches":               {length.UnitInch, 24 * length.Inch, "24"},
		"negative fraction":          {length.UnitInch, -length.Inch64th, "-1/64"},
		"not exact":                  {length.UnitInch, 600 * mm, "≈ 23 5/8"},
		"not exact, less than 1/128": {length.UnitInch, 1, "≈ 0"},
		"decimal inches":             {length.UnitInchDecimal, 48 * length.Inch64th, "0.75"},
		"decimal inches, not exact":  {length.UnitInchDecimal, 600 * mm, "≈ 23.622"},
		"least of all":               {length.UnitMM, math.MinInt64, "-9223372036854.775808"},
		"greatest of all":            {length.UnitMM, math.MaxInt64, "9223372036854.775807"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			if got := c.unit.Format(c.size); got != c.want {
				t.Errorf("%d nm in %v is written %q, want %q", c.size, c.unit, got, c.want)
			}
		})
	}
}

// 1 in = 25.4 mm exactly; 1/64 in = 0.396875 mm exactly (NIST SP 811, Appendix
// B). 1/2 in = 12.7, 3/4 in = 19.05, 23/32 in = 18.25625 mm (computed).
func TestInchesAgreeWithNIST(t *testing.T) {
	for text, want := range map[string]string{"1 in": "25.4", "1/64 in": "0.396875", "1/2 in": "12.7", "3/4 in": "19.05", "23/32 in": "18.25625"} {
		l, err := length.Parse(text, length.UnitMM)
		if got := length.UnitMM.Format(l); err != nil || got != want {
			t.Errorf("%s is %s mm, %v; want %s", text, got, err, want)
		}
	}
}

// "Largest error of rounding to 1/16, 1/32, 1/64 in: 0.79375, 0.396875,
// 0.1984375 mm" (computed): half a step; the last is the most that a figure with
// ≈ before it can be off.
func TestRoundingToFractionsIsOffByHalfAStepAtMost(t *testing.T) {
	for part, want := range map[length.Length]string{16: "0.79375", 32: "0.396875"} {
		step := length.Inch / part
		off := (step / 2).RoundTo(step) - step/2
		if got := length.UnitMM.Format(off); got != want {
			t.Errorf("1/%d in is off by %s mm, want %s", part, got, want)
		}
	}
	most := big.NewRat(1984375, 10_000_000) // mm
	rapid.Check(t, func(t *rapid.T) {
		l := length.Length(rapid.Int64Range(-30e9, 30e9).Draw(t, "nm"))
		shown, err := length.Parse(length.UnitInch.Format(l), length.UnitInch)
		if err != nil {
			t.Fatal(err)
		}
		if off := big.NewRat(int64((shown - l).Abs()), 1e6); off.Cmp(most) > 0 {
			t.Fatalf("%v is shown as %s, %v mm off", l, length.UnitInch.Format(l), off.FloatString(7))
		}
	})
}

// The figures are also worked out with math/big, which shares nothing with the
// package.
func TestFormatIsTheShortestExactDecimal(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := rapid.Int64Range(-int64(length.MaxTyped), int64(length.MaxTyped)).Draw(t, "nm")
		got := length.UnitMM.Format(length.Length(l))
		r, ok := new(big.Rat).SetString(got)
		if !ok || r.Cmp(big.NewRat(l, 1e6)) != 0 {
			t.Fatalf("%d nm is written %q", l, got)
		}
		if strings.Contains(got, ".") && strings.HasSuffix(got, "0") || strings.HasSuffix(got, ".") {
			t.Fatalf("%q could be shorter", got)
		}
	})
}

func TestWhatIsFormattedExactlyReadsBackTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		u := length.Unit(rapid.IntRange(0, 3).Draw(t, "unit"))
		l := length.Length(rapid.Int64Range(-1e12, 1e12).Draw(t, "nm"))
		if rapid.Bool().Draw(t, "fraction") {
			l = length.Length(rapid.Int64Range(-1e6, 1e6).Draw(t, "n")) * length.Inch64th
		}
		for _, s := range []string{u.Format(l), u.WithSymbol(l)} {
			got, err := length.Parse(s, u)
			if exact := !strings.HasPrefix(s, "≈"); err != nil || exact && got != l {
				t.Fatalf("%d nm in %v is written %q, which reads as %d nm, %v", l, u, s, got, err)
			}
		}
		if u == length.UnitInch && l%length.Inch64th == 0 && strings.HasPrefix(u.Format(l), "≈") {
			t.Fatalf("%d nm is a whole count of 1/64 in and is written %q", l, u.Format(l))
		}
	})
}
