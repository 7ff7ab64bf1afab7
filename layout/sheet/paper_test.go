package sheet

import (
	"strings"
	"testing"

	"frontlay/model/length"
	"frontlay/model/message"
)

// ISO 216 A series (mm): A0 841×1189, A1 594×841, A2 420×594, A3 297×420, A4
// 210×297. ASME Y14.1 (in): A 8.5×11, B 11×17, C 17×22, D 22×34, E 34×44; Legal
// 8.5×14.
func TestPapersByName(t *testing.T) {
	in := length.Inch
	for _, c := range []struct {
		name          string
		width, height length.Length
	}{
		{"A0", mm(841), mm(1189)}, {"A1", mm(594), mm(841)}, {"A2", mm(420), mm(594)},
		{"A3", mm(297), mm(420)}, {"A4", mm(210), mm(297)}, {"a4", mm(210), mm(297)},
		{"Letter", in * 17 / 2, in * 11}, {"Tabloid", in * 11, in * 17}, {"Legal", in * 17 / 2, in * 14},
		{"210x297", mm(210), mm(297)}, {" 210 × 297 mm", mm(210), mm(297)}, {"8.5x11 in", in * 17 / 2, in * 11},
		{"roll 610", mm(610), 0}, {"roll 24 in", in * 24, 0},
	} {
		p, err := ParsePaper(c.name, length.UnitMM)
		if err != nil || p.Width != c.width || p.Height != c.height {
			t.Errorf("%q: %v × %v, %v; want %v × %v", c.name, p.Width, p.Height, err, c.width, c.height)
		}
	}
}

func TestPapersThatAreNone(t *testing.T) {
	for _, c := range []struct{ name, want string }{
		{"", "is not a paper"}, {"B7", "is not a paper"}, {"210x", "height"}, {"x297", "width"},
		{"10x10", "can’t be used"}, {"roll", "is not a roll"}, {"roll 9000", "can’t be used"}, {"210x99999999", "can’t be"},
	} {
		if _, err := ParsePaper(c.name, length.UnitMM); err == nil || !strings.Contains(err.Error(), c.want) {
			t.Errorf("%q: %v; want an error with %q", c.name, err, c.want)
		}
	}
}

func FuzzParsePaper(f *testing.F) {
	for _, s := range []string{"A4", "210x297", "roll 610 mm", "8.5×11 in", "x", "roll"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, s string) {
		p, err := ParsePaper(s, length.UnitMM)
		if err == nil && (p.Width < leastEdge || p.Width > greatestEdge || p.Height != 0 && (p.Height < leastEdge || p.Height > greatestEdge)) {
			t.Errorf("%q gave %v × %v without an error", s, p.Width, p.Height)
		}
	})
}

func TestRollIsToldInWholeCentimetresOrInches(t *testing.T) {
	for name, c := range map[string]struct {
		unit length.Unit
		roll length.Length
		want string
	}{
		"rounded up":      {length.UnitMM, length.FromMM(960.1), "Corner templates: 1 piece, 97 cm of the roll"},
		"whole already":   {length.UnitCM, mm(960), "Corner templates: 1 piece, 96 cm of the roll"},
		"inches":          {length.UnitInch, 37*length.Inch + 1, "Corner templates: 1 piece, 38 in of the roll"},
		"decimal inches":  {length.UnitInchDecimal, 37 * length.Inch, "Corner templates: 1 piece, 37 in of the roll"},
		"long, no commas": {length.UnitMM, mm(12345), "Corner templates: 1 piece, 1235 cm of the roll"},
	} {
		t.Run(name, func(t *testing.T) {
			u := Use{Part: CornerTemplates, Sheets: 1, Roll: c.roll}
			if got := (message.Language{Unit: c.unit, Comma: true}).Say(u.Say()); got != c.want {
				t.Errorf("told %q; want %q", got, c.want)
			}
		})
	}
}
