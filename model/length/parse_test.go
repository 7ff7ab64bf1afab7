package length_test

import (
	"strings"
	"testing"

	"frontlay/model/length"
)

const mm = length.Millimetre

func TestParse(t *testing.T) {
	cases := map[string]struct {
		unit length.Unit
		text string
		want length.Length
	}{
		"whole":                       {length.UnitMM, "12", 12 * mm},
		"point":                       {length.UnitMM, "12.5", 12*mm + mm/2},
		"comma":                       {length.UnitMM, "12,5", 12*mm + mm/2},
		"leading point":               {length.UnitMM, ".5", mm / 2},
		"trailing point":              {length.UnitMM, "12.", 12 * mm},
		"with unit":                   {length.UnitInch, "12 mm", 12 * mm},
		"with unit, tight":            {length.UnitInch, "12mm", 12 * mm},
		"centimetres":                 {length.UnitMM, "1.2 cm", 12 * mm},
		"metres":                      {length.UnitMM, "2.4 m", 2400 * mm},
		"inch fraction":               {length.UnitMM, `3/4"`, 48 * length.Inch64th},
		"inch fraction, prime":        {length.UnitMM, "3/4″", 48 * length.Inch64th},
		"inch fraction, two primes":   {length.UnitMM, "3/4''", 48 * length.Inch64th},
		"mixed inches":                {length.UnitMM, "1 3/4 in", 112 * length.Inch64th},
		"inch":                        {length.UnitMM, "1 inch", length.Inch},
		"inches":                      {length.UnitMM, "2 inches", 2 * length.Inch},
		"mixed in the project's unit": {length.UnitInch, "35 7/16", (35*64 + 28) * length.Inch64th},
		"fraction of a millimetre":    {length.UnitMM, "1/2", mm / 2},
		"difference of a product":     {length.UnitMM, "900-2*18", 864 * mm},
		"bracket":                     {length.UnitMM, "(720-6)/3", 238 * mm},
		"bracket with unit":           {length.UnitMM, "(1+1/2) in", length.Inch * 3 / 2},
		"spaces everywhere":           {length.UnitMM, "  900 - 2 * 18 ", 864 * mm},
		"no-break space":              {length.UnitMM, "12\u00a0mm", 12 * mm},
		"units mixed":                 {length.UnitMM, "1 in + 1", length.Inch + mm},
		"bare number by the unit":     {length.UnitInch, "1 + 1 mm", length.Inch + mm},
		"factor before":               {length.UnitMM, "2 * 3/4 in", length.Inch * 3 / 2},
		"typographic signs":           {length.UnitMM, "900−2×18", 864 * mm},
		"negative":                    {length.UnitMM, "-3", -3 * mm},
		"negative, typographic":       {length.UnitMM, "−3", -3 * mm},
		"positive sign":               {length.UnitMM, "+3", 3 * mm},
		"as it was shown":             {length.UnitInch, "≈ 23 5/8", (23*64 + 40) * length.Inch64th},
		"nanometre":                   {length.UnitMM, "0.000001", 1},
		"half a nanometre, away":      {length.UnitMM, "0.0000005", 1},
		"half a nanometre, below 0":   {length.UnitMM, "-0.0000005", -1},
		"third":                       {length.UnitMM, "100/3", 33333333},
		"decimal inches":              {length.UnitInchDecimal, "0.75", 48 * length.Inch64th},
		"centimetres by the project":  {length.UnitCM, "60", 600 * mm},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			got, err := length.Parse(c.text, c.unit)
			if err != nil || got != c.want {
				t.Errorf("Parse(%q, %v) = %d nm, %v; want %d nm", c.text, c.unit, got, err, c.want)
			}
		})
	}
}

func TestParseRefuses(t *testing.T) {
	cases := map[string]struct{ text, says string }{
		"nothing":             {"  ", "no size"},
		"a word":              {"wide", "not a number"},
		"another unit":        {"12 px", `"px" is not a unit`},
		"feet":                {"3 ft", `"ft" is not a unit`},
		"two numbers":         {"12 13", "side by side"},
		"thousands":           {"1.200,5", "more than one decimal sign"},
		"open bracket":        {"(12+3", "not closed"},
		"closing bracket":     {"12)", "not understood"},
		"nothing behind":      {"12+", "missing at the end"},
		"nothing behind /":    {"12/", "missing at the end"},
		"division by zero":    {"12/0", "divided by zero"},
		"division by zero in": {"12 in/(1-1)", "divided by zero"},
		"by a length":         {"12/(3 mm)", "divided by a length"},
		"area":                {"12 mm * 3 mm", "can't be multiplied"},
		"unit twice":          {"(3 mm) mm", "stands twice"},
		"exponent":            {"1e3", "not a unit"},
		"infinite":            {"inf", "not a number"},
		"hexadecimal":         {"0x10", "not a unit"},
		"too large":           {"1001 m", "larger than any cabinet"},
		"too small":           {"-1001 m", "larger than any cabinet"},
		"too long":            {strings.Repeat("1+", 100) + "1", "too long"},
		"too many brackets":   {strings.Repeat("(", 50) + "1" + strings.Repeat(")", 50), "too many brackets"},
		"digits of elsewhere": {"١٢", "not a number"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			got, err := length.Parse(c.text, length.UnitMM)
			if err == nil || !strings.Contains(err.Error(), c.says) {
				t.Errorf("Parse(%q) = %v, %v; it should say %q", c.text, got, err, c.says)
			}
		})
	}
}

func FuzzParse(f *testing.F) {
	for _, s := range []string{"12,5", "900-2*18", "1 3/4 in", "(720-6)/3", "≈ 35 7/16", "1/0", "((((", "-−+", "9e9", "12''", "1 1 1/1/1"} {
		f.Add(s, uint8(0))
	}
	f.Fuzz(func(t *testing.T, s string, unit uint8) {
		u := length.Unit(unit % 4)
		l, err := length.Parse(s, u)
		if err != nil {
			if err.Error() == "" || l != 0 {
				t.Fatalf("Parse(%q) = %d, %q", s, l, err)
			}
			return
		}
		if l > length.MaxTyped || l < -length.MaxTyped {
			t.Fatalf("Parse(%q) = %d", s, l)
		}
		again, err := length.Parse(length.UnitMM.WithSymbol(l), u)
		if err != nil || again != l {
			t.Fatalf("%q is %d nm, written %q, which reads as %d nm, %v", s, l, length.UnitMM.WithSymbol(l), again, err)
		}
	})
}
