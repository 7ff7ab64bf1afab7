package layout_test

import (
	"math"
	"path/filepath"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/drawing"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/layout/projecttest"
	"frontlay/layout/view"
	"frontlay/model"
	"frontlay/model/length"
)

func ofMM(left, bottom, right, top int64) plane.Rect {
	return plane.R(length.MM(left), length.MM(bottom), length.MM(right), length.MM(top))
}

// Worked by hand from testdata/projects/frame-fronts.yaml: fronts are 600 − 2·3 = 594
// wide. Front 1 is 280 high: stiles of 60 leave 594 − 2·60 = 474 between them, rails of
// 70 and 60 leave 280 − 130 = 150. The rails are cut with tenons of 10 (474 + 20), the
// panel to the bottom of a groove of 10, the usual one. The grip of front 3 takes 30,
// the usual height, off its top edge. Handle: 30 below the top edge is in the top rail,
// 20 thick; the middle of front 2 is in its panel, 8 thick.
func TestBuildsOfAWorkedProject(t *testing.T) {
	r := layout.Solve(projecttest.Read(t, filepath.Join("..", "testdata", "projects", "frame-fronts.yaml")))
	for _, f := range r.Findings {
		if f.Rule != "sample-sheet" && f.Rule != "faces-not-flush" && f.Rule != "contents" && f.Rule != "nearly-level" {
			t.Errorf("%s: %v: %v", f.Rule, f.Where, f.What)
		}
	}
	frame, knob, grip, plain := &r.Plan.Fronts[0], &r.Plan.Fronts[1], &r.Plan.Fronts[2], &r.Plan.Fronts[3]
	mm := length.MM
	wantZones(t, frame, []plan.Zone{
		{Part: plan.LeftStile, Rect: ofMM(0, 0, 60, 280), Whole: ofMM(0, 0, 60, 280), Thickness: mm(20)},
		{Part: plan.RightStile, Rect: ofMM(534, 0, 594, 280), Whole: ofMM(534, 0, 594, 280), Thickness: mm(20)},
		{Part: plan.BottomRail, Rect: ofMM(60, 0, 534, 70), Whole: ofMM(50, 0, 544, 70), Thickness: mm(20)},
		{Part: plan.TopRail, Rect: ofMM(60, 220, 534, 280), Whole: ofMM(50, 220, 544, 280), Thickness: mm(20)},
		{Part: plan.PanelPart, Rect: ofMM(60, 70, 534, 220), Whole: ofMM(50, 60, 544, 230), Thickness: mm(8), Recess: mm(6)},
	})
	wantZones(t, grip, []plan.Zone{
		{Part: plan.BoardPart, Rect: ofMM(0, 0, 594, 170), Whole: ofMM(0, 0, 594, 170), Thickness: mm(22)},
		{Part: plan.GripPart, Rect: ofMM(0, 170, 594, 200), Whole: ofMM(0, 170, 594, 200), Thickness: mm(10), Recess: mm(12)},
	})
	wantZones(t, plain, nil)
	if frame.HandleHoles[0].Depth != mm(20) || knob.HandleHoles[0].Depth != mm(8) || plain.Thickness != mm(19) {
		t.Errorf("handles %v and %v deep, a plain front %v thick; want 20, 8 and 19 mm", frame.HandleHoles[0].Depth, knob.HandleHoles[0].Depth, plain.Thickness)
	}

	// Frame: (594·280 − 474·150)·20 less the groove (494·170 − 474·150)·8 is 1 904 400 −
	// 103 040 mm³ at 720 kg/m³, the panel 494·170·8 = 671 840 mm³ at 650 kg/m³. Grip:
	// 594·200·22 − 594·30·12 = 2 399 760 mm³ at 700 kg/m³.
	for _, c := range []struct {
		f    *plan.Front
		want float64
	}{{frame, 1.2969792 + 0.436696}, {grip, 1.679832}} {
		if got := c.f.WeightKg(); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("front %d weighs %v kg, want %v", c.f.Number, got, c.want)
		}
	}

	type part struct {
		what                 string
		width, height, thick int64
		grain                string
	}
	want := []part{
		{"stile", 60, 280, 20, "vertical"}, {"stile", 60, 280, 20, "vertical"},
		{"bottom rail", 494, 70, 20, "horizontal"}, {"top rail", 494, 60, 20, "horizontal"},
		{"panel", 494, 170, 8, "horizontal"},
	}
	for i, q := range list.Pieces(r.Plan)[:len(want)] {
		if got := (part{q.What.String(), int64(q.CutWidth.MM()), int64(q.CutHeight.MM()), int64(q.Board.Thickness.MM()), q.Grain}); got != want[i] {
			t.Errorf("piece %d is %+v, want %+v", i, got, want[i])
		}
	}
}

func wantZones(t *testing.T, f *plan.Front, want []plan.Zone) {
	t.Helper()
	if len(f.Zones) != len(want) {
		t.Fatalf("front %d has %d zones, want %d", f.Number, len(f.Zones), len(want))
	}
	for i := range want {
		if f.Zones[i] != want[i] {
			t.Errorf("zone %d of front %d is %v, want %v", i, f.Number, f.Zones[i], want[i])
		}
	}
}

// The holes of a front choose its drawer: where the tallest would put one into the
// grip, a lower one is taken.
func TestADrawerIsChosenWhoseHolesMissTheGrip(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "frame-fronts.yaml"))
	f := &layout.Solve(p).Plan.Fronts[2]
	if thin, apart := f.Thin(&f.Holes[len(f.Holes)-1]); thin == nil || apart < f.Holes[0].Diameter {
		t.Errorf("the highest hole is %v from the grip", apart)
	}
	chosen := f.Height.Top()
	p.Boards.Fronts[1].Build.Kind = model.Slab
	if g := &layout.Solve(p).Plan.Fronts[2]; g.Height.Top() < chosen {
		t.Errorf("without a grip the drawer is lower: %v, with one %v", g.Height.Top(), chosen)
	}
	p.Boards.Fronts[1].Build = model.Build{Kind: model.GripEdged, Height: length.MM(90)}
	if g := &layout.Solve(p).Plan.Fronts[2]; g.Height.Top() >= chosen {
		t.Errorf("with a grip of 90 mm the drawer is as high: %v", g.Height.Top())
	}
}

// TestPartsOfAFrontAddUp: whatever its build, the parts of a front add up to its width
// and height, cover it once, and weigh as much as it does.
func TestPartsOfAFrontAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pl := layout.Solve(projecttest.Random(t)).Plan
		byFront := map[int][]list.Piece{}
		for _, q := range list.Pieces(pl) {
			if q.Drilled || q.Framed { // of a front, not of its drawer
				byFront[q.Front] = append(byFront[q.Front], q)
			}
		}
		for i := range pl.Fronts {
			f := &pl.Fronts[i]
			if f.Kind == model.OpenNiche {
				continue
			}
			kg := 0.0
			for _, q := range byFront[f.Number] {
				kg += q.WeightKg()
			}
			if math.Abs(kg-f.WeightKg()) > 1e-9 {
				t.Fatalf("front %d weighs %v kg, its parts %v", f.Number, f.WeightKg(), kg)
			}
			area := 0.0
			for k := range f.Zones {
				z := &f.Zones[k]
				area += length.AreaM2(z.Rect.Width(), z.Rect.Height())
				for j := range f.Zones[:k] {
					if z.Rect.Overlaps(f.Zones[j].Rect) {
						t.Fatalf("front %d: %v overlaps %v", f.Number, z, f.Zones[j])
					}
				}
			}
			if all := length.AreaM2(f.Face.Width(), f.Face.Height()); len(f.Zones) > 0 && math.Abs(area-all) > 1e-9 {
				t.Fatalf("front %d is %v m², its zones %v", f.Number, all, area)
			}
			if f.Made.Build.Kind == model.Frame {
				addsUp(t, f, byFront[f.Number])
			}
		}
	})
}

// addsUp adds the cut sizes of a frame's parts, less tenons and grooves, and lippings on.
func addsUp(t *rapid.T, f *plan.Front, parts []list.Piece) {
	b := f.Made.Filled()
	left, right, low, high := f.Made.LippingOf()
	size := map[string]list.Piece{}
	for _, q := range parts {
		size[q.What.String()] = q
	}
	stile, bottom, top, panel := size["stile"], size["bottom rail"], size["top rail"], size["panel"]
	across := 2*stile.CutWidth + left + right + top.CutWidth - 2*b.Tenon
	field := f.Zones[len(f.Zones)-1]
	up := bottom.CutHeight + low + top.CutHeight + high + panel.CutHeight - (field.Whole.Height() - field.Rect.Height())
	groove := min(b.Panel.Groove, f.Zones[0].Rect.Width(), bottom.Height, top.Height)
	if reaches := field.Rect.Min.Y - field.Whole.Min.Y; reaches != max(groove-b.Panel.Room, 0) {
		t.Fatalf("front %d: a panel reaches %v into a groove of %v", f.Number, reaches, groove)
	}
	if across != f.Face.Width() || up != f.Face.Height() || stile.CutHeight+low+high != f.Face.Height() || bottom.CutWidth != top.CutWidth {
		t.Fatalf("front %d of %v by %v: its parts add up to %v by %v", f.Number, f.Face.Width(), f.Face.Height(), across, up)
	}
}

// Worked by hand from testdata/projects/channels.yaml: of 760 mm, 3 are the reveal below,
// 30 the channel's gap, 6 the gap asked for, 40 the channel at the top, and 450 the two
// fixed fronts: 231 are left. In the run frame, above a plinth of 100: fronts from 103
// to 353, 383 to 583 and 589 to 820; the carcass ends at 860, its inside at 842. The
// lowest drawer stays below its channel, at 353, which no drawer had to without one.
func TestChannelsOfAWorkedProject(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "channels.yaml"))
	r := layout.Solve(p)
	for _, f := range r.Findings {
		if f.Rule != "sample-sheet" && f.Rule != "contents" {
			t.Errorf("%s: %v: %v", f.Rule, f.Where, f.What)
		}
	}
	mm := length.MM
	for i, want := range [][2]int64{{103, 353}, {383, 583}, {589, 820}} {
		if f := r.Plan.Fronts[i].Face; f.Min.Y != mm(want[0]) || f.Max.Y != mm(want[1]) {
			t.Errorf("front %d stands from %v to %v, want %v", i+1, f.Min.Y, f.Max.Y, want)
		}
	}
	want := []plan.Channel{
		{Rect: ofMM(18, 353, 582, 383), Near: mm(25), Far: mm(43)},
		{Rect: ofMM(18, 820, 582, 842), Near: mm(25), Far: mm(43)},
	}
	if got := r.Plan.Cabinets[0].Bays[0].Channels; len(got) != 2 || got[0] != want[0] || got[1] != want[1] {
		t.Errorf("channels %v, want %v", got, want)
	}
	for i, at := range []int64{353, 583, 820} {
		d := r.Plan.Fronts[i].Drawer
		if i != 1 && (d.Above != plan.ChannelAbove || d.Limit != mm(at)) {
			t.Errorf("drawer %d stays below %v at %v, want the channel at %d", i+1, d.Above.Say(), d.Limit, at)
		}
	}
	var cut []string
	for _, q := range list.Pieces(r.Plan) {
		if q.What.String() == "channel board" {
			cut = append(cut, q.CutWidth.String()+" × "+q.CutHeight.String())
		}
	}
	if len(cut) != 2 || cut[0] != "564 mm × 30 mm" || cut[1] != "564 mm × 22 mm" {
		t.Errorf("channel boards %v", cut)
	}
}

// A gap that a front has of its own is told where it is too narrow or too wide; before a
// channel it may be wide. Taken back, the cabinet's holds.
func TestOwnGapsAreChecked(t *testing.T) {
	for _, c := range []struct {
		name    string
		gap     length.Length
		channel length.Length
		told    int
	}{{"narrow", 9 * mm / 10, 0, 1}, {"as narrow as it may be", mm, 0, 0}, {"wide", 61 * mm / 10, 0, 1}, {"as wide as it may be", 6 * mm, 0, 0}, {"wide before a channel", 30 * mm, 60 * mm, 0}, {"narrow before a channel", 9 * mm / 10, 60 * mm, 1}} {
		t.Run(c.name, func(t *testing.T) {
			p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "channels.yaml"))
			f := &p.Cabinets[0].Bays[0].Fronts[1]
			f.GapAbove, f.Channel.Height = &c.gap, c.channel
			r := layout.Solve(p)
			told := 0
			for _, g := range r.Findings {
				if g.Rule == "reveal" {
					told++
					if g.Front != 2 || len(layout.Offered(p, r, g)) == 0 {
						t.Errorf("%v: %v, with %d ways to mend it", g.Where, g.What, len(layout.Offered(p, r, g)))
					}
				}
			}
			if told != c.told {
				t.Errorf("told %d times, want %d", told, c.told)
			}
		})
	}
}

// Worked by hand from testdata/projects/hanging-fronts.yaml: an end panel of 19 stands
// before a carcass of 600, whose sides are 18. The fronts reach 16 past the carcass at the
// left, from 19 − 16 = 3, and end 2 before its right edge, at 617; they hang 20 below it,
// from 100 − 20 = 80. So the left overlay is 18 + 16 = 34 and the edge distance, with
// the sample's inset of 20, 54; the lowest drop is 18 + 20 = 38. The end panel ends
// with the carcass, 560 deep, and not with the fronts.
func TestFrontsThatReachPastTheCarcass(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "hanging-fronts.yaml"))
	r := layout.Solve(p)
	for _, f := range r.Findings {
		if f.Rule != "sample-sheet" && f.Rule != "contents" {
			t.Errorf("%s: %v: %v", f.Rule, f.Where, f.What)
		}
	}
	mm := length.MM
	f := &r.Plan.Fronts[0]
	if f.Face.Min != (plane.Point{X: mm(3), Y: mm(80)}) || f.Face.Max.X != mm(617) || f.EdgeDistance.Left != mm(54) || f.EdgeDistance.Right != mm(36) || f.Drop != mm(38) {
		t.Errorf("the front at %v has edge distances %v and drop %v", f.Face, f.EdgeDistance, f.Drop)
	}
	for _, q := range list.Pieces(r.Plan) {
		if q.What.String() == "end panel" && q.CutWidth != mm(560) {
			t.Errorf("the end panel is %v deep, want 560 mm", q.CutWidth)
		}
	}
	var across []length.Length // in the chain over the run: 3 of the end panel, the fronts, 2 of the carcass
	for _, m := range view.Elevation(r.Plan, view.ElevationOptions{Chains: true}).Marks {
		if d, ok := m.(*drawing.Dimension); ok && !d.Vertical && d.Level > 0 {
			across = append(across, d.Value)
		}
	}
	if !slices.Equal(across, []length.Length{mm(3), mm(614), mm(2)}) {
		t.Errorf("the chain of widths is %v", across)
	}
	for _, s := range r.Plan.Explanations(f) {
		if len(s.Terms) > 0 && s.Total() != s.Value {
			t.Errorf("%v does not add up", s.Say())
		}
	}
}

// Where a front may not reach, it collides, by as much as it reaches too far; what is
// offered mends it.
func TestFrontsCollideWithWhatIsAround(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(c *model.Cabinet, r *model.Reveals)
		found  length.Length
		says   string
	}{
		{"past the end panel's width", func(_ *model.Cabinet, r *model.Reveals) { r.Left = -25 * mm }, 0, ""},
		{"into the filler", func(c *model.Cabinet, r *model.Reveals) { c.Left.Filler, r.Left = 30*mm, -25*mm }, 6 * mm, "it reaches 6 mm into the filler"},
		{"into the wall", func(c *model.Cabinet, r *model.Reveals) { c.Left.Wall, r.Left = true, -25*mm }, 6 * mm, "it reaches 6 mm into the wall"},
		{"into the wall at the right", func(c *model.Cabinet, r *model.Reveals) { c.Right.Wall, r.Right = true, -mm }, mm, "it reaches 1 mm into the wall"},
		{"above the carcass", func(_ *model.Cabinet, r *model.Reveals) { r.Top = -10 * mm }, 0, ""},
		{"into the worktop", func(c *model.Cabinet, r *model.Reveals) { c.Worktop, r.Top = 38*mm, -10*mm }, 10 * mm, "it reaches 10 mm into the worktop"},
		{"down to the floor", func(_ *model.Cabinet, r *model.Reveals) { r.Bottom = -100 * mm }, 0, ""},
		{"below the floor", func(_ *model.Cabinet, r *model.Reveals) { r.Bottom = -101 * mm }, mm, "it reaches 1 mm below the floor"},
		{"inset, into the side", func(c *model.Cabinet, r *model.Reveals) {
			c.Mount, r.Left, r.Right, r.Bottom = model.Inset, -4*mm, 2*mm, 2*mm
		}, 4 * mm, "it reaches 4 mm into the carcass side"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "hanging-fronts.yaml"))
			c.change(&p.Cabinets[0], &p.Reveals)
			r := layout.Solve(p)
			told := false
			for _, g := range r.Findings {
				if g.Rule != "collision" {
					continue
				}
				told = true
				if g.Found != c.found || g.What.String() != c.says || len(layout.Offered(p, r, g)) == 0 {
					t.Errorf("found %v: %v, offered %d", g.Found, g.What, len(layout.Offered(p, r, g)))
				}
			}
			if told != (c.says != "") {
				t.Errorf("told: %v", told)
			}
		})
	}
}

// The sample's connectors move a front up by 2 mm, down by 1 and to each side by 1.5: a
// front and the one above it come nearer by 2 + 1 = 3, two beside each other by 2 · 1.5 =
// 3. A gap of a front's own that is less is told, and that between two cabinets once for
// both.
func TestAdjustingIsComparedWithEveryGap(t *testing.T) {
	for _, c := range []struct {
		name       string
		gap, edges length.Length
		told       int
	}{
		{"enough", 3 * mm, 3 * mm / 2, 0},
		{"less above a front", 29 * mm / 10, 3 * mm / 2, 2}, // of both cabinets
		{"less between the cabinets", 3 * mm, 7 * mm / 5, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "channels.yaml"))
			p.Reveals.Left, p.Reveals.Right = c.edges, c.edges
			p.Cabinets[0].Worktop = 0
			p.Cabinets[0].Bays[0].Fronts[1].GapAbove = &c.gap
			p.Cabinets = append(p.Cabinets, p.Clone().Cabinets[0])
			r := layout.Solve(p)
			told := 0
			for _, g := range r.Findings {
				if g.Rule == "adjustment" {
					told++
					if len(layout.Offered(p, r, g)) == 0 {
						t.Errorf("nothing mends %v", g.What)
					}
				}
			}
			if told != c.told {
				t.Errorf("told %d times, want %d", told, c.told)
			}
		})
	}
}
