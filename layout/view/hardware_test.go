package view_test

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"frontlay/assets"
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/yamlfile"
)

const mm = length.Millimetre

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

// full is a sheet in which no figure is 0, so that a sketch must show them all.
func full(t *testing.T) *model.HardwareSheet {
	s := sampleSheet(t, "sample-a").Clone()
	s.Runner.LeastHeight, s.Runner.ScrewReach = 5*mm, 11*mm
	s.Drawers[2].More = []model.HolePattern{{Up: 208 * mm, Sides: model.LeftOnly, Inset: 33 * mm}}
	s.Stabiliser = model.Stabiliser{FromWidth: 900 * mm, Holes: []model.StabiliserHole{{Across: -16 * mm, Up: 20 * mm}, {Across: 16 * mm, Up: 20 * mm}}}
	return s
}

// sizes are the values of the dimensions of a figure.
func sizes(d *drawing.Drawing, path string) []length.Length {
	var all []length.Length
	for _, m := range d.Marks {
		if v, ok := m.(*drawing.Dimension); ok && view.ShowsFigure(v, path) {
			all = append(all, v.Value)
		}
	}
	return all
}

// Every figure is dimensioned with its own value while it has the focus, on the
// sketch that it says it is on.
func TestHardwareShowsEveryFigure(t *testing.T) {
	s := full(t)
	tall := s.Drawers[2]
	screw := s.Runner.Lengths[1].Screws[1]
	cases := map[string]struct {
		path string
		want length.Length
	}{
		"side clearance":        {"side_clearance", s.SideClearance},
		"least height":          {"runner.least_height", s.Runner.LeastHeight},
		"clearance behind":      {"runner.clearance_behind", s.Runner.ClearanceBehind},
		"clearance above":       {"runner.clearance_above", s.Runner.ClearanceAbove},
		"setback":               {"runner.setback", s.Runner.Setback},
		"screw reach":           {"runner.screw_reach", s.Runner.ScrewReach},
		"runner length":         {"runner.lengths[].length", s.Runner.Lengths[1].Length},
		"screw back":            {"runner.lengths[].screws[].back", screw.Back},
		"screw up":              {"runner.lengths[].screws[].up", screw.Up},
		"screw diameter":        {"runner.lengths[].screws[].diameter", screw.Diameter},
		"inset":                 {"connector.inset", s.Connector.Inset},
		"diameter":              {"connector.diameter", s.Connector.Diameter},
		"depth":                 {"connector.depth", s.Connector.Depth},
		"adjust up":             {"connector.adjust_up", s.Connector.AdjustUp},
		"adjust down":           {"connector.adjust_down", s.Connector.AdjustDown},
		"adjust side":           {"connector.adjust_side", s.Connector.AdjustSide},
		"tilt":                  {"connector.adjust_tilt", s.Connector.AdjustTilt},
		"side top":              {"drawers[].side_top", tall.SideTop},
		"back top":              {"drawers[].back_top", tall.BackTop},
		"rail top":              {"drawers[].rail_top", tall.RailTop},
		"hole":                  {"drawers[].holes", tall.Holes[0]},
		"rail hole":             {"drawers[].rail_holes", tall.RailHoles[0]},
		"further hole":          {"drawers[].more_holes[]", tall.More[0].Up},
		"stabiliser":            {"stabiliser.holes[]", 16 * mm},
		"underside":             {"bottom.underside", s.Bottom.Underside},
		"bottom thickness":      {"bottom.thickness", s.Bottom.Thickness},
		"bottom's width less":   {"bottom.deduct_width", s.Bottom.DeductWidth},
		"bottom's length less":  {"bottom.deduct_length", s.Bottom.DeductLength},
		"back's width less":     {"back.deduct_width", s.Back.DeductWidth},
		"thickness of the back": {"back.thickness", s.Back.Thickness},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			o := view.HardwareOptions{Drawer: 2, Runner: 1, Screw: 1, Focus: c.path}
			here, there := view.HardwareFront(s, o), view.HardwareSide(s, o)
			if side, _ := view.OnSide(s, o); side {
				here, there = there, here
			}
			got := sizes(here, c.path)
			if len(got) == 0 || got[0] != c.want {
				t.Errorf("%v is written, want %v", got, c.want)
			}
			if other := sizes(there, c.path); len(other) != 0 {
				t.Errorf("it stands on the other sketch too: %v", other)
			}
		})
	}
}

// A wooden box is drawn and dimensioned by its own figures: of sample B the bottom reaches
// 6 into grooves of sides 12 thick behind a side clearance of 13, and begins 18 − 6 behind
// the box's front, which is 2 behind the carcass's edge.
func TestHardwareShowsAWoodenBox(t *testing.T) {
	s := sampleSheet(t, "sample-b").Clone()
	s.Box.Shorter = 10 * mm
	for path, want := range map[string]length.Length{
		"box.sides": 12 * mm, "box.front": 18 * mm, "box.groove_depth": 6 * mm, "box.groove_height": 10 * mm, "box.shorter": 10 * mm,
		"connector.adjust_down": s.Connector.AdjustUp, // as far as up, where it is left out
	} {
		o := view.HardwareOptions{Drawer: 1, Runner: 1, Focus: path}
		got := append(sizes(view.HardwareFront(s, o), path), sizes(view.HardwareSide(s, o), path)...)
		if len(got) != 1 || got[0] != want {
			t.Errorf("%s: %v is written, want %v", path, got, want)
		}
	}
	for _, m := range view.HardwareSide(s, view.HardwareOptions{Drawer: 1, Runner: 1}).Marks {
		if b, ok := m.(*drawing.Rectangle); ok && b.Meaning == drawing.DrawerBottom && (b.Rect.Min.X != 14*mm || b.Rect.Max.X != 442*mm) {
			t.Errorf("from the side the bottom is %v; want it from 2 + 12 to 2 + 450 − 10, the box's end", b.Rect)
		}
	}
	for _, m := range view.HardwareFront(s, view.HardwareOptions{Drawer: 1, Runner: 1}).Marks {
		if b, ok := m.(*drawing.Rectangle); ok && b.Meaning == drawing.DrawerBottom && b.Rect.Min.X != 19*mm {
			t.Errorf("from the front the bottom is %v; want it from 13 + 12 − 6", b.Rect)
		}
	}
}

// The parts are where the figures say.
func TestHardwarePlaces(t *testing.T) {
	s := full(t)
	o := view.HardwareOptions{Drawer: 2, Runner: 1}
	front, side := view.HardwareFront(s, o), view.HardwareSide(s, o)
	bottoms := func(d *drawing.Drawing) (r plane.Rect) {
		for _, m := range d.Marks {
			if b, ok := m.(*drawing.Rectangle); ok && b.Meaning == drawing.DrawerBottom {
				r = b.Rect
			}
		}
		return r
	}
	b := bottoms(front)
	if b.Min.X != 31*mm || b.Min.Y != 14*mm || b.Height() != 16*mm {
		t.Errorf("the drawer bottom lies at %v", b)
	}
	if b = bottoms(side); b.Min.X != 3*mm || b.Width() != 382*mm {
		t.Errorf("from the side the drawer bottom lies at %v", b)
	}
	circles := func(d *drawing.Drawing, path string) []plane.Point {
		var all []plane.Point
		for _, m := range d.Marks {
			if c, ok := m.(*drawing.Circle); ok && c.Of.Figure == path {
				all = append(all, c.Centre)
			}
		}
		return all
	}
	if c := circles(front, "drawers[].holes"); len(c) != 4 || c[0] != (plane.Point{X: 20 * mm, Y: 48 * mm}) {
		t.Errorf("the connector's holes are at %v", c)
	}
	if c := circles(front, "drawers[].more_holes[]"); len(c) != 1 || c[0] != (plane.Point{X: 33 * mm, Y: 208 * mm}) {
		t.Errorf("the further hole, only at the left, is at %v", c)
	}
}

// A sheet that is being typed can be out of reason; it must still be drawn.
func TestHardwareDrawsAnything(t *testing.T) {
	wild := full(t)
	wild.SideClearance, wild.Runner.Setback = -50*mm, 900*length.Metre
	wild.Bottom.DeductWidth, wild.Bottom.Underside = -length.Metre, -length.Metre
	wild.Drawers[0] = model.DrawerHeight{SideTop: -10 * mm, Holes: []length.Length{-500 * length.Metre}}
	wild.Runner.Lengths[0].Length = 0
	for name, s := range map[string]*model.HardwareSheet{"empty": {}, "wild": wild} {
		t.Run(name, func(t *testing.T) {
			for _, path := range append(figurePaths(), "") {
				for _, at := range []int{-1, 0, 99} {
					o := view.HardwareOptions{Drawer: at, Runner: at, Screw: at, Focus: path}
					for _, d := range []*drawing.Drawing{view.HardwareFront(s, o), view.HardwareSide(s, o)} {
						if r := d.Bounds(); r.Empty() {
							t.Fatalf("nothing is drawn of figure %s", path)
						}
					}
				}
			}
		})
	}
}

// The sketches of a sample, as text, are those looked at and kept.
func TestHardwareGoldens(t *testing.T) {
	s := sampleSheet(t, "sample-a")
	o := view.HardwareOptions{Drawer: 2, Runner: 1, Screw: 1}
	for name, d := range map[string]*drawing.Drawing{
		"hardware-front": view.HardwareFront(s, o), "hardware-side": view.HardwareSide(s, o),
	} {
		t.Run(name, func(t *testing.T) {
			file := filepath.Join("testdata", name+".txt")
			got := d.Dump()
			if *update {
				if err := os.WriteFile(file, []byte(got), 0o666); err != nil {
					t.Fatal(err)
				}
			}
			want, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if got != string(want) {
				t.Errorf("%s differs from its golden; look at it and run with -update:\n%s", name, got)
			}
		})
	}
}

// figurePaths are those of all rows of a sheet, without indexes, and of the items
// of its lists.
func figurePaths() []string {
	var all []string
	var walk func(prefix string, rows []figure.Row)
	walk = func(prefix string, rows []figure.Row) {
		for _, row := range rows {
			path := prefix + row.Key
			all = append(all, path)
			switch v := row.Value.(type) {
			case *figure.Group:
				walk(path+".", v.Rows())
			case *figure.List:
				all = append(all, path+"[]")
				walk(path+"[].", v.Empty())
			}
		}
	}
	walk("", figure.Sheet(new(model.HardwareSheet)))
	return all
}

// What a mark says that it shows is a row of the sheet.
func TestHardwareShowsRows(t *testing.T) {
	s, paths := full(t), figurePaths()
	for _, focus := range paths {
		o := view.HardwareOptions{Drawer: 2, Runner: 1, Screw: 1, Focus: focus}
		for _, d := range []*drawing.Drawing{view.HardwareFront(s, o), view.HardwareSide(s, o)} {
			for _, m := range d.Marks {
				if of := drawing.TagOf(m).Of; of.Figure != "" && !slices.Contains(paths, of.Figure) {
					t.Fatalf("a mark shows %q, which is no row", of.Figure)
				}
			}
		}
	}
}
