package figure_test

import (
	"strings"
	"testing"

	"frontlay/assets"
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

func sampleSheet(t *testing.T, name string) *model.HardwareSheet {
	t.Helper()
	data, ok := assets.Sheet(name)
	if !ok {
		t.Fatalf("no sample %s", name)
	}
	s, err := yamlfile.ReadSheet(name, data)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// Figures of a wooden box that can't be built, or that are said twice.
func TestFaultsOfAWoodenBox(t *testing.T) {
	const mm = length.Millimetre
	for name, c := range map[string]struct {
		change     func(*model.HardwareSheet)
		path, says string
	}{
		"no inner front":     {func(s *model.HardwareSheet) { s.Box.Front = 0 }, "box.front", "missing"},
		"no back":            {func(s *model.HardwareSheet) { s.Back.Thickness = 0 }, "back.thickness", "missing"},
		"bottom said twice":  {func(s *model.HardwareSheet) { s.Bottom.DeductWidth = 38 * mm }, "bottom.deduct_width", "follows"},
		"joint too deep":     {func(s *model.HardwareSheet) { s.Box.Joint = 13 * mm }, "box.joint", "comes through"},
		"groove too deep":    {func(s *model.HardwareSheet) { s.Box.GrooveDepth = 12 * mm }, "box.groove_depth", "comes through"},
		"laid on in grooves": {func(s *model.HardwareSheet) { s.Box.Bottom = model.BottomLaidOn }, "box.groove_depth", "no groove"},
		"no sides":           {func(s *model.HardwareSheet) { s.Box.Sides, s.Bottom.DeductWidth, s.Back.DeductWidth = 0, 38*mm, 50*mm }, "box.sides", "no thickness"},
		"screw below":        {func(s *model.HardwareSheet) { s.Box.GrooveHeight, s.Drawers[0].Holes[0] = 0, 5*mm }, "drawers[0].holes", "below the inner front"},
	} {
		t.Run(name, func(t *testing.T) {
			s := sampleSheet(t, "sample-b").Clone()
			c.change(s)
			found := figure.SheetFaults(s)
			if len(found) == 0 || found[0].Path != c.path || !strings.Contains(found[0].Named().String(), c.says) {
				t.Errorf("found %v; want it at %s, saying %q", found, c.path, c.says)
			}
		})
	}
}

// SheetFaults must lead to the very figure that is wrong.
func TestSheetFaults(t *testing.T) {
	cases := map[string]struct {
		change     func(*model.HardwareSheet)
		path, says string
	}{
		"side below the bottom": {func(s *model.HardwareSheet) { s.Drawers[1].SideTop = 20 * length.Millimetre }, "drawers[1].side_top", "below the drawer bottom"},
		"hole above the side":   {func(s *model.HardwareSheet) { s.Drawers[0].Holes[1] = 400 * length.Millimetre }, "drawers[0].holes", "above the top"},
		"screw behind":          {func(s *model.HardwareSheet) { s.Runner.Lengths[0].Screws[2].Back = length.Metre }, "runner.lengths[0].screws[2].back", "behind the runner"},
		"bottom too wide":       {func(s *model.HardwareSheet) { s.Bottom.DeductWidth = 10 * length.Millimetre }, "bottom.deduct_width", "does not fit"},
		"two of a name":         {func(s *model.HardwareSheet) { s.Drawers[1].Name = s.Drawers[0].Name }, "drawers[1].name", "two drawer heights"},
		"out of range":          {func(s *model.HardwareSheet) { s.Runner.Setback = -1 }, "runner.setback", ""},
		"no lengths":            {func(s *model.HardwareSheet) { s.Runner.Lengths = nil }, "runner.lengths", "nothing is given"},
		"no name":               {func(s *model.HardwareSheet) { s.Name = "" }, "name", "nothing is given"},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			s := sampleSheet(t, "sample-a").Clone()
			c.change(s)
			found := figure.SheetFaults(s)
			if len(found) == 0 {
				t.Fatal("nothing is found")
			}
			p := found[0]
			if p.Path != c.path || !strings.Contains(p.Named().String(), c.says) {
				t.Errorf("%s: %s; want it at %s, saying %q", p.Path, p.Named().String(), c.path, c.says)
			}
		})
	}
	for _, name := range assets.SheetNames() {
		if found := figure.SheetFaults(sampleSheet(t, name)); found != nil {
			t.Errorf("%s: %v", name, found)
		}
	}
}

// A copy shares nothing with what it was copied from.
func TestCloneSheet(t *testing.T) {
	s := sampleSheet(t, "sample-a")
	c := s.Clone()
	c.Drawers[0].Holes[0]++
	c.Drawers[2].RailHoles[0]++
	c.Runner.Lengths[0].Screws[0].Back++
	if again := sampleSheet(t, "sample-a"); again.Drawers[0].Holes[0] != s.Drawers[0].Holes[0] ||
		again.Drawers[2].RailHoles[0] != s.Drawers[2].RailHoles[0] ||
		again.Runner.Lengths[0].Screws[0] != s.Runner.Lengths[0].Screws[0] {
		t.Error("the sheet changed with its copy")
	}
}

func TestSheetDocs(t *testing.T) {
	rows := figure.Sheet(new(model.HardwareSheet))
	for _, path := range []string{"name", "runner.setback", "runner.lengths[].screws[].back", "drawers[].more_holes[].from_width", "bottom.deduct_length"} {
		if r, found := figure.Find(rows, path); !found || r.Doc.Empty() {
			t.Errorf("nothing is said about %s", path)
		}
	}
}
