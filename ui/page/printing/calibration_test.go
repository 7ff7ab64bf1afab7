package printing

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"

	"frontlay/layout/sheet"
	"frontlay/model/length"
	"frontlay/ui/field"
	"frontlay/ui/page/pagetest"
	"frontlay/ui/replay"
)

func TestMarginsOfAPrinter(t *testing.T) {
	usual := sheet.DefaultMargins.Side
	if m, err := margin("", usual, length.UnitMM); err != nil || m != usual {
		t.Errorf("nothing typed: %v, %v", m, err)
	}
	if m, err := margin(" 15 ", usual, length.UnitMM); err != nil || m != length.MM(15) {
		t.Errorf("%v, %v", m, err)
	}
	for _, bad := range []string{"1", "26", "60", "x"} {
		if _, err := margin(bad, usual, length.UnitMM); err == nil {
			t.Errorf("a margin of %q was taken", bad)
		}
	}
}

// What is typed of a printer is judged at once: what is wrong stands under its
// field, a fault of scale is told by what the bar should be, and Keep comes on
// only with what can be kept.
func TestMeasuringAPrinterTellsWhatIsWrong(t *testing.T) {
	for _, c := range []struct {
		name                    string
		printer, across, margin string
		say                     string
		keep                    bool
	}{
		{"no figure", "Office", "abc", "", "\"abc\" is not a number", false},
		{"nothing", "Office", "0", "", "above zero", false},
		{"far too short", "Office", "100", "", "100 mm instead of 170 mm, 41 % too short", false},
		{"no name", "", "170", "", "write the printer’s name", false},
		{"a margin beyond paper", "Office", "170", "40", "A margin of 40 mm is not possible", false},
		{"not all typed", "Office", "", "", "type what it says", false},
		{"true", "Office", "170", "", "true to a thousandth", true},
		{"half a hundredth short", "Office", "169.15", "12", "169.15 mm instead of 170 mm, 0.5 % too short", true},
	} {
		t.Run(c.name, func(t *testing.T) {
			h, system := pagetest.New(t), System{}
			p := New(h, system)
			_, up := sheet.CalibrationBars(p.options)
			p.Measure(func(sheet.KnownPrinter) {})
			top := h.Win.Canvas().Overlays().Top()
			var fields []*field.Text
			var keep *field.Button
			replay.Named(top, "", func(name string, o fyne.CanvasObject) {
				switch v := o.(type) {
				case *field.Text:
					fields = append(fields, v)
				case *field.Button:
					if v.Text == h.Ask().Text("Keep this correction") {
						keep = v
					}
				}
			})
			if len(fields) != 5 || keep == nil {
				t.Fatalf("the dialog has %d fields", len(fields))
			}
			fields[0].SetText(c.printer)
			fields[2].SetText(h.Say().Length(up))
			fields[3].SetText(c.margin)
			fields[1].SetText(c.across)
			if said := strings.Join(strings.Fields(pagetest.Texts(top)), " "); !strings.Contains(said, c.say) {
				t.Errorf("the dialog says %q, not %q", said, c.say)
			}
			if keep.Disabled() == c.keep {
				t.Errorf("Keep is on: %v", !keep.Disabled())
			}
		})
	}
}
