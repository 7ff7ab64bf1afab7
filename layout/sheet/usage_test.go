package sheet

import (
	"testing"

	"frontlay/model/length"
	"frontlay/model/message"
)

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
