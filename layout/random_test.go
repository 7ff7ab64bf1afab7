package layout_test

import (
	"fmt"

	"pgregory.net/rapid"

	"frontlay/model"
	"frontlay/model/length"
)

const mm = length.Millimetre

// tenths draws a length from a to b mm in steps of 0.2 mm, so that halves are
// exact too.
func tenths(t *rapid.T, a, b int64, label string) length.Length {
	return length.Length(rapid.Int64Range(a*5, b*5).Draw(t, label)) * mm / 5
}

func genSheet(t *rapid.T, name string) *model.HardwareSheet {
	s := &model.HardwareSheet{
		Name:          name,
		SideClearance: tenths(t, 1, 20, "side clearance"),
		Runner: model.RunnerFigures{
			LeastHeight:     tenths(t, 0, 12, "least height"),
			ClearanceBehind: tenths(t, 0, 10, "behind"),
			ClearanceAbove:  tenths(t, 2, 20, "above"),
			Setback:         tenths(t, 0, 4, "setback"),
			ScrewReach:      tenths(t, 8, 14, "reach"),
		},
		Connector: model.ConnectorFigures{
			Inset:    tenths(t, 10, 40, "inset"),
			Diameter: tenths(t, 2, 10, "diameter"),
			Depth:    tenths(t, 8, 17, "depth"),
		},
		Bottom: model.BottomFigures{
			Underside: tenths(t, 0, 14, "underside"), Thickness: 16 * mm,
			DeductWidth: tenths(t, 30, 80, "deduct"), DeductLength: 10 * mm,
		},
	}
	up := tenths(t, 10, 40, "screw up")
	for l := int64(250); l <= 550; l += 100 {
		s.Runner.Lengths = append(s.Runner.Lengths, model.RunnerLength{
			Length: length.MM(l), Load: float64(l) / 15,
			Screws: []model.ScrewHole{{Back: 37 * mm, Up: up, Diameter: 4 * mm, Depth: 12 * mm}, {Back: length.MM(l - 60), Up: up, Diameter: 4 * mm, Depth: 12 * mm}},
		})
	}
	first := tenths(t, 20, 60, "first hole")
	for i, n := range []string{"low", "mid", "tall"} {
		d := model.DrawerHeight{Name: n, SideTop: length.MM(70 + 50*int64(i)), Holes: []length.Length{first, first + 32*mm}, Weight: 3}
		if i == 2 {
			d.RailTop = 190 * mm
			d.RailHoles = []length.Length{160 * mm}
			d.More = []model.HolePattern{{Up: 120 * mm, Sides: model.HoleSides(rapid.IntRange(0, 2).Draw(t, "sides")), FromHeight: 220 * mm}}
		}
		s.Drawers = append(s.Drawers, d)
	}
	if rapid.Bool().Draw(t, "stabiliser") {
		s.Stabiliser = model.Stabiliser{FromWidth: 600 * mm, Holes: []model.StabiliserHole{{Across: -16 * mm, Up: 20 * mm}, {Across: 48 * mm, Up: 20 * mm}}}
	}
	return s
}

// genProject draws a project as a person might make one: most of it sound, some
// of it not. Widths of bays are fixed but for one.
func genProject(t *rapid.T) *model.Project {
	p := &model.Project{
		Hardware: []model.HardwareUse{{Name: "main", Sheet: genSheet(t, "main")}, {Name: "other", Sheet: genSheet(t, "other")}},
		Boards: model.Boards{
			Carcass: model.Board{Thickness: tenths(t, 15, 25, "carcass")},
			Front:   model.Board{Thickness: tenths(t, 15, 25, "front"), Density: 700, Lipping: tenths(t, 0, 3, "lipping")},
			Back:    model.Board{Thickness: 8 * mm},
			Fronts: []model.FrontBoard{
				{Name: "frames", Board: model.Board{Thickness: tenths(t, 18, 24, "frames"), Density: 720, Lipping: tenths(t, 0, 2, "frames' lipping")}, Build: model.Build{
					Kind: model.Frame, Stile: tenths(t, 40, 70, "stile"), Tenon: tenths(t, 0, 20, "tenon"),
					Panel: model.Panel{Board: model.Board{Thickness: tenths(t, 4, 12, "panel"), Density: 600}, Recess: tenths(t, 0, 8, "recess")},
				}},
				{Name: "grips", Board: model.Board{Thickness: 20 * mm, Density: 700}, Build: model.Build{Kind: model.GripEdged, Edge: model.GripEdge(rapid.IntRange(0, 1).Draw(t, "edge"))}},
			},
		},
		Board: rapid.SampledFrom([]string{"", "", "frames"}).Draw(t, "board"),
		Reveals: model.Reveals{
			Left: tenths(t, rapid.SampledFrom([]int64{0, 0, 0, -25}).Draw(t, "least reveal"), 4, "left"), Right: tenths(t, 0, 4, "right"), Top: tenths(t, 0, 5, "top"),
			Bottom: tenths(t, 0, 4, "bottom"), Gap: tenths(t, 0, 7, "gap"),
		},
		SharedGaps: rapid.Bool().Draw(t, "shared"),
		HoleRows:   model.HoleRows{Mode: model.RowMode(rapid.IntRange(0, 2).Draw(t, "rows")), Datum: tenths(t, 10, 60, "datum")},
	}
	if rapid.IntRange(0, 7).Draw(t, "far apart") == 0 {
		limit(p, "hole_gap", 28*mm) // more than two holes 32 mm apart leave
	}
	if rapid.IntRange(0, 7).Draw(t, "much overlay") == 0 {
		limit(p, "least_overlay", 7*mm) // more than half of a thin partition less half of a wide gap
	}
	for i, n := 0, rapid.IntRange(1, 3).Draw(t, "cabinets"); i < n; i++ {
		p.Cabinets = append(p.Cabinets, genCabinet(t, p, i))
	}
	return p
}

func genCabinet(t *rapid.T, p *model.Project, i int) model.Cabinet {
	c := model.Cabinet{
		Name:   fmt.Sprintf("C%d", i+1),
		Height: tenths(t, 500, 900, "height"),
		Depth:  tenths(t, 300, 620, "depth"),
		Plinth: tenths(t, 0, 100, "plinth"),
		Mount:  model.Mount(rapid.IntRange(0, 1).Draw(t, "mount")),
	}
	if rapid.IntRange(0, 3).Draw(t, "beside?") == 0 {
		c.Left = model.Beside{EndPanel: 18 * mm, Filler: tenths(t, 0, 30, "filler"), Wall: true, Projection: tenths(t, 0, 50, "projection")}
		c.Worktop = 38 * mm
	}
	width := 2 * p.Boards.Carcass.Thickness
	n := rapid.IntRange(1, 3).Draw(t, "bays")
	for j := 0; j < n; j++ {
		w := tenths(t, 300, 900, "bay")
		width += w
		b := model.Bay{Hardware: "main", Width: w}
		if j == 0 {
			b.Width = 0
		}
		if j < n-1 {
			b.Partition = tenths(t, 16, 26, "partition")
			width += b.Partition
		}
		b.Division = model.Division{Rule: model.DivisionRule(rapid.IntRange(0, 3).Draw(t, "rule")), Step: 15 * mm, Ratio: 1.2}
		for k, m := 0, rapid.IntRange(1, 5).Draw(t, "fronts"); k < m; k++ {
			b.Fronts = append(b.Fronts, genFront(t, k))
		}
		c.Bays = append(c.Bays, b)
	}
	c.Width = width
	return c
}

func genFront(t *rapid.T, k int) model.Front {
	f := model.Front{Name: fmt.Sprintf("F%d", k+1), Share: rapid.Float64Range(0.5, 3).Draw(t, "share")}
	switch rapid.IntRange(0, 5).Draw(t, "sort") {
	case 0:
		f.Height = tenths(t, 90, 260, "fixed")
		f.Locked = rapid.Bool().Draw(t, "locked")
	case 1:
		f.Kind = model.Kind(rapid.IntRange(1, 2).Draw(t, "kind"))
	case 2:
		d := tenths(t, -20, 30, "drop")
		f.Drop = &d
	case 3:
		f.Cover = tenths(t, 0, 12, "cover")
		f.Contents = model.Contents{Height: tenths(t, 0, 200, "contents"), Weight: rapid.Float64Range(0, 40).Draw(t, "weight")}
	}
	switch rapid.IntRange(0, 9).Draw(t, "line") {
	case 0:
		gap := tenths(t, 0, 30, "gap above")
		f.GapAbove = &gap
	case 1:
		f.Channel = model.Channel{Height: tenths(t, 15, 40, "channel"), Depth: tenths(t, 0, 40, "channel's depth")}
	}
	f.Board = rapid.SampledFrom([]string{"", "", "", "", model.PlainBoard, "frames", "grips"}).Draw(t, "board")
	f.Drawer = rapid.SampledFrom([]string{"", "low", "mid", "tall"}).Draw(t, "drawer")
	if rapid.IntRange(0, 4).Draw(t, "other") == 0 {
		f.Hardware = "other"
	}
	if rapid.IntRange(0, 4).Draw(t, "runner") == 0 {
		f.Runner = length.MM(rapid.SampledFrom([]int64{250, 350, 450, 550}).Draw(t, "length"))
	}
	if rapid.IntRange(0, 4).Draw(t, "handle") == 0 {
		f.Handle = genHandle(t)
	}
	return f
}

func genHandle(t *rapid.T) *model.Handle {
	h := &model.Handle{
		None: rapid.IntRange(0, 9).Draw(t, "no handle") == 0, Count: rapid.IntRange(0, 2).Draw(t, "handles"),
		Spacing: rapid.SampledFrom([]length.Length{0, 96 * mm, 128 * mm}).Draw(t, "spacing"), Upright: rapid.Bool().Draw(t, "upright"),
	}
	*[]*length.Length{&h.FromTop, &h.FromBottom, &h.AboveMiddle, &h.OnLine}[rapid.IntRange(0, 3).Draw(t, "height by")] = tenths(t, 0, 90, "handle's height")
	*[]*length.Length{&h.FromLeft, &h.FromRight, &h.BesideMiddle}[rapid.IntRange(0, 2).Draw(t, "across by")] = tenths(t, 0, 90, "handle's place")
	return h
}
