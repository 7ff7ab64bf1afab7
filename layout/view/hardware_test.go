package view_test

import (
	"os"
	"path/filepath"
	"testing"

	"frontlay/assets"
	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/layout/view"
	"frontlay/model"
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
func sizes(d *drawing.Drawing, f view.Figure) []length.Length {
	var all []length.Length
	for _, m := range d.Marks {
		if v, ok := m.(*drawing.Dimension); ok && v.Of == (drawing.Subject{Kind: drawing.SheetFigure, Index: int(f)}) {
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
		f    view.Figure
		want length.Length
	}{
		"side clearance":        {view.SideClearance, s.SideClearance},
		"least height":          {view.RunnerLeastHeight, s.Runner.LeastHeight},
		"clearance behind":      {view.RunnerClearanceBehind, s.Runner.ClearanceBehind},
		"clearance above":       {view.RunnerClearanceAbove, s.Runner.ClearanceAbove},
		"setback":               {view.RunnerSetback, s.Runner.Setback},
		"screw reach":           {view.RunnerScrewReach, s.Runner.ScrewReach},
		"runner length":         {view.RunnerLength, s.Runner.Lengths[1].Length},
		"screw back":            {view.ScrewBack, screw.Back},
		"screw up":              {view.ScrewUp, screw.Up},
		"screw diameter":        {view.ScrewDiameter, screw.Diameter},
		"inset":                 {view.ConnectorInset, s.Connector.Inset},
		"diameter":              {view.ConnectorDiameter, s.Connector.Diameter},
		"depth":                 {view.ConnectorDepth, s.Connector.Depth},
		"adjust up":             {view.ConnectorAdjustUp, s.Connector.AdjustUp},
		"adjust side":           {view.ConnectorAdjustSide, s.Connector.AdjustSide},
		"side top":              {view.DrawerSideTop, tall.SideTop},
		"back top":              {view.DrawerBackTop, tall.BackTop},
		"rail top":              {view.DrawerRailTop, tall.RailTop},
		"hole":                  {view.DrawerHoles, tall.Holes[0]},
		"rail hole":             {view.DrawerRailHoles, tall.RailHoles[0]},
		"further hole":          {view.DrawerMoreHoles, tall.More[0].Up},
		"stabiliser":            {view.StabiliserHoles, 16 * mm},
		"underside":             {view.BottomUnderside, s.Bottom.Underside},
		"bottom thickness":      {view.BottomThickness, s.Bottom.Thickness},
		"bottom's width less":   {view.BottomDeductWidth, s.Bottom.DeductWidth},
		"bottom's length less":  {view.BottomDeductLength, s.Bottom.DeductLength},
		"back's width less":     {view.BackDeductWidth, s.Back.DeductWidth},
		"thickness of the back": {view.BackThickness, s.Back.Thickness},
	}
	for name, c := range cases {
		t.Run(name, func(t *testing.T) {
			o := view.HardwareOptions{Drawer: 2, Runner: 1, Screw: 1, Focus: c.f}
			here, there := view.HardwareFront(s, o), view.HardwareSide(s, o)
			if c.f.OnSide() {
				here, there = there, here
			}
			got := sizes(here, c.f)
			if len(got) == 0 || got[0] != c.want {
				t.Errorf("%v is written, want %v", got, c.want)
			}
			if other := sizes(there, c.f); len(other) != 0 {
				t.Errorf("it stands on the other sketch too: %v", other)
			}
		})
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
	circles := func(d *drawing.Drawing, f view.Figure) []plane.Point {
		var all []plane.Point
		for _, m := range d.Marks {
			if c, ok := m.(*drawing.Circle); ok && view.Figure(c.Of.Index) == f {
				all = append(all, c.Centre)
			}
		}
		return all
	}
	if c := circles(front, view.DrawerHoles); len(c) != 4 || c[0] != (plane.Point{X: 20 * mm, Y: 48 * mm}) {
		t.Errorf("the connector's holes are at %v", c)
	}
	if c := circles(front, view.DrawerMoreHoles); len(c) != 1 || c[0] != (plane.Point{X: 33 * mm, Y: 208 * mm}) {
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
			for f := view.NoFigure; f <= view.BackThickness; f++ {
				for _, at := range []int{-1, 0, 99} {
					o := view.HardwareOptions{Drawer: at, Runner: at, Screw: at, Focus: f}
					for _, d := range []*drawing.Drawing{view.HardwareFront(s, o), view.HardwareSide(s, o)} {
						if r := d.Bounds(); r.Empty() {
							t.Fatalf("nothing is drawn of figure %d", f)
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
