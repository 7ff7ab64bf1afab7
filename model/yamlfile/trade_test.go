package yamlfile_test

import (
	"testing"

	"frontlay/assets"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

// Facts of the trade (common practice, no source): "edge distance of the
// connector holes: connector inset + side overlay: 20 + 16 = 36 mm (inset 20 mm
// for a runner that takes 12 mm a side)"; "two fixing holes of a front
// connector: 80 mm above the runner's lower edge, and 32 mm below that (48
// mm)"; "further fixing holes (rails, high sides): 96, 128, 160 or 192 mm
// above, all on one vertical line, always multiples of 32 mm"; "bottom drawer:
// drop = its bottom overlay", which needs a least height of 0.
func TestSampleAHasTheFiguresOfTheTrade(t *testing.T) {
	data, _ := assets.Sheet("sample-a")
	s, err := yamlfile.ReadSheet("sample-a.yaml", data)
	if err != nil {
		t.Fatal(err)
	}
	mm := length.MM
	if s.Connector.Inset != mm(20) || s.SideClearance != mm(12) || s.Runner.LeastHeight != 0 {
		t.Errorf("inset %v, side clearance %v, least height %v", s.Connector.Inset, s.SideClearance, s.Runner.LeastHeight)
	}
	rails := 0
	for _, d := range s.Drawers {
		if len(d.Holes) < 2 || d.Holes[0] != mm(48) || d.Holes[1] != mm(80) {
			t.Errorf("%s: holes at %v", d.Name, d.Holes)
		}
		for _, h := range append(d.Holes[2:], d.RailHoles...) {
			if h%mm(32) != 0 || h < mm(96) || h > mm(192) {
				t.Errorf("%s: a further hole at %v", d.Name, h)
			}
		}
		rails += len(d.RailHoles)
	}
	if len(s.Drawers) < 3 || rails == 0 {
		t.Errorf("%d drawer heights, %d rail holes", len(s.Drawers), rails)
	}
}
