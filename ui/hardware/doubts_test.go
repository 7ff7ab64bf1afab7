package hardware

import (
	"testing"

	"frontlay/assets"
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/message"
	"frontlay/model/yamlfile"
)

// A likely slip is doubted at its figure, and can be used all the same.
func TestDoubts(t *testing.T) {
	cases := map[string]struct {
		change func(*model.HardwareSheet)
		path   string
	}{
		"both sides together":   {func(s *model.HardwareSheet) { s.SideClearance, s.Connector.Inset = 25*mm, 26*mm }, "side_clearance"},
		"to the first screw":    {func(s *model.HardwareSheet) { s.Runner.Setback = 37 * mm }, "runner.setback"},
		"holes outside":         {func(s *model.HardwareSheet) { s.Connector.Inset = 9 * mm }, "connector.inset"},
		"through the face":      {func(s *model.HardwareSheet) { s.Connector.Depth = 18 * mm }, "connector.depth"},
		"through the carcass":   {func(s *model.HardwareSheet) { s.Runner.Lengths[2].Screws[1].Depth = 16 * mm }, "runner.lengths[2].screws[1].depth"},
		"nothing is the matter": {func(*model.HardwareSheet) {}, ""},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			s := sample(t).Clone()
			c.change(s)
			all := doubts(s)
			switch {
			case c.path == "" && len(all) > 0, c.path != "" && (len(all) != 1 || all[0].path != c.path):
				t.Fatalf("doubted: %v", all)
			case len(figure.SheetFaults(s)) > 0:
				t.Error("the figures contradict one another too, which proves nothing")
			}
			p, w, _ := open(t, s)
			for _, d := range all {
				p.goToPath(d.path)
				if r := p.field(t, d.path); w.Canvas().Focused() != r.entry {
					t.Errorf("it does not lead to the field of %s", d.path)
				}
			}
		})
	}
	for _, name := range assets.SheetNames() {
		data, _ := assets.Sheet(name)
		s, err := yamlfile.ReadSheet(name, data)
		if err != nil {
			t.Fatal(err)
		}
		if all := doubts(s); len(all) > 0 {
			t.Errorf("%s is doubted: %v", name, all)
		}
	}
	if all := doubts(Blank(message.Language{})); len(all) > 0 {
		t.Errorf("a new sheet is doubted: %v", all)
	}
}
