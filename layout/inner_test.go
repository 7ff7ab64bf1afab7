package layout_test

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/list"
	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/layout/sheet"
	"frontlay/layout/tipping"
	"frontlay/model"
	"frontlay/model/length"
)

// Worked by hand from testdata/projects/inner-drawers.yaml; how inner drawers stand and
// what packing is for is common practice, no source. Heights are above the floor: the
// cabinet stands on it, and its bottom is 19 thick.
//
// Bay 1 is 500 wide. Jars stands from 3 to 378; runners count from the bottom at 19: its
// own at 19, inner ones at 19 + 150 = 169 and 19 + 256 = 275, each drawer 92 high: up to
// 111, 261 and 367. Room: 169 − 111 = 58, 275 − 261 = 14, and up to Tools at 381: 14.
// Tools stands on no board: its inner drawer counts from its lower edge, 381 + 200 = 581,
// and ends at 673, 741 − 673 = 68 below the top. Bottoms are 500 − 62 = 438 wide, and 18
// shorter than their runners; of these the longest that fit are 500 (552 − 3 − 12 = 537).
//
// Bay 2 is 1219 − 2·19 − 500 − 19 = 662 wide, 662 − 30 − 20 = 612 between the packing, and
// boxes there are 612 − 2·13 = 586 wide; behind Notes, which has none, 662 − 26 = 636.
// Oxides stands over the bottom: runners at 19 + 6 = 25 and 19 + 206 = 225, boxes 130
// high: room 225 − 155 = 70. Packing is as long as the runner, 500, and twice as high as
// the screws are, 46.
func TestInnerDrawersByHand(t *testing.T) {
	r := layout.Solve(projecttest.Read(t, filepath.Join("..", "testdata", "projects", "inner-drawers.yaml")))
	type drawer struct{ front, nth, lower, top, room, wide, runner int64 }
	want := []drawer{
		{1, 0, 19, 111, 58, 438, 500}, {1, 1, 169, 261, 14, 438, 500}, {1, 2, 275, 367, 14, 438, 400},
		{2, 0, 381, 529, 52, 438, 500}, {2, 1, 581, 673, 68, 438, 500},
		{3, 1, 25, 155, 70, 586 - 12, 500}, {3, 2, 225, 355, 251, 586 - 12, 500}, // bottoms in grooves: 586 − 2·12 + 2·6
		{4, 0, 606, 686, 55, 636 - 12, 500},
	}
	var got []drawer
	whole := func(l length.Length) int64 { return int64(l / mm) }
	for f := range r.Plan.Drawers() {
		d := &f.Drawer
		got = append(got, drawer{int64(f.Number), int64(f.Nth), whole(f.Runner.Lower), whole(d.Body.Max.Y), whole(d.RoomAbove), whole(d.BottomCut.Width), whole(f.Runner.Length)})
		if f.Nth > 0 && (len(f.Holes) > 0 || len(f.HandleHoles) > 0) {
			t.Errorf("inner drawer %d of front %d has holes in the front", f.Nth, f.Number)
		}
	}
	if !slices.Equal(got, want) {
		t.Errorf("drawers (front, nth, runner, top, room, bottom, length) are\n%v, want\n%v", got, want)
	}
	door := &r.Plan.Fronts[2]
	if in := door.Between(); in.Min.X != 568*mm || in.Max.X != 1180*mm {
		t.Errorf("between the packing it is %v to %v", in.Min.X, in.Max.X)
	}
	if b := door.Inner[0].Drawer.Box; b.Width != 586*mm || b.Length != 500*mm {
		t.Errorf("the box is %v wide and %v long", b.Width, b.Length)
	}
	orders := list.HardwareList(r.Plan, list.StockPlans(r.Plan), list.Speaker{}, 0)
	for what, n := range map[string]string{
		"runners 500 mm long, for 60 kg": "4",
		"runners 400 mm long, for 40 kg": "1",
		"front connectors":               "2",
		"front pieces of inner drawers, height “low”, for an inside width of 500 mm":     "3",
		"wooden boxes, height “medium”, outside 586 mm wide × 130 mm high × 500 mm long": "2",
		"screws for fronts, 30 mm long":   "4",
		"screws for runners, hole Ø 5 mm": "30", // of sample A: 5 pairs of 3
	} {
		if !slices.ContainsFunc(orders.Rows, func(r list.Row) bool {
			return len(r.Cells) > 3 && strings.Contains(r.Cells[1], what) && r.Cells[3] == n
		}) {
			t.Errorf("nothing orders %s of %q: %v", n, what, orders.Rows)
		}
	}
	packing := map[length.Length]int{}
	for _, p := range list.Pieces(r.Plan) {
		if p.What.Text == "packing" {
			packing[p.Board.Thickness] += p.Count
			if p.Width != 500*mm || p.Height != 46*mm {
				t.Errorf("packing %v by %v, want 500 by 46", p.Width, p.Height)
			}
		}
	}
	if len(packing) != 2 || packing[30*mm] != 2 || packing[20*mm] != 2 {
		t.Errorf("packing by thickness is %v, want two of 30 and two of 20", packing)
	}
	screwsOf(t, r.Plan)
	pulled := 0.0
	for _, p := range tipping.Of(r.Plan, 0).Parts {
		if strings.HasPrefix(p.Name.String(), "contents of drawer") {
			pulled += p.Kg
		}
	}
	if pulled != 57 { // 12 + 5 + 5 + 8 + 4 + 10 + 10 + 3: inner drawers pull the cabinet over too
		t.Errorf("%v kg of contents are pulled out", pulled)
	}
}

// screwsOf asks that every screw is drilled once, in the board or in the packing on it.
func screwsOf(t *testing.T, p *plan.Plan) {
	t.Helper()
	var heights []int64
	for _, face := range sheet.CarcassFaces(p) {
		for _, h := range face.Holes {
			heights = append(heights, int64((h.Up-h.Front.Runner.Screws[0].Y+h.Front.Runner.Lower)/mm))
			if packed := h.Front.Number == 3; packed != (face.Packing > 0) {
				t.Errorf("a screw of front %d, inner drawer %d is in %v", h.Front.Number, h.Front.Nth, face.Name)
			}
		}
	}
	slices.Sort(heights)
	// The partition begins at 19, so that heights above its lower edge are 19 less.
	want := map[int64]int{19: 3, 169: 3, 275: 3, 381: 3, 581: 3, 0: 3, 150: 3, 256: 3, 362: 3, 562: 3, 25: 3, 225: 3, 6: 3, 206: 3, 606: 3, 587: 3}
	got := map[int64]int{}
	for _, h := range heights {
		got[h]++
	}
	for h, n := range want {
		if got[h] != n {
			t.Errorf("%d screws of runners at %d, want %d: %v", got[h], h, n, got)
		}
	}
}

// A front with holes beside packing: these move in with it. Notes overlays the partition
// by 19/2 − 3/2 = 8 and the side by 16; its screws are 60 + 8 + 30 = 98 and 60 + 16 + 20 =
// 96 from its edges. Packing of 281 and 281 leaves 662 − 562 = 100 for a drawer bottom of
// 100 − 26 − 12 = 62, less than 100.
func TestPackingMovesHolesIn(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "inner-drawers.yaml"))
	b := &p.Cabinets[0].Bays[1]
	b.Fronts[1].Packing = nil
	f := &layout.Solve(p).Plan.Fronts[3]
	if f.EdgeDistance.Left != 98*mm || f.EdgeDistance.Right != 96*mm || f.Holes[0].At.X != 98*mm || f.Face.Width()-f.Holes[1].At.X != 96*mm {
		t.Errorf("edge distances %+v, holes %+v", f.EdgeDistance, f.Holes)
	}
	b.Packing = model.Packing{Left: 281 * mm, Right: 281 * mm}
	for _, g := range layout.Solve(p).Findings {
		if g.Rule == "drawer-size" && g.Found == 62*mm && g.Needed == 100*mm && strings.Contains(g.Change.String(), "packing thinner by 38 mm") {
			return
		}
	}
	t.Error("nobody tells that the packing leaves no drawer")
}

// The screws of an inner drawer meet those of the next bay in the partition as those of
// any other do: 8 and 8 deep in 16.
func TestScrewsOfInnerDrawersMeet(t *testing.T) {
	p := projecttest.Read(t, filepath.Join("..", "testdata", "projects", "inner-drawers.yaml"))
	c := &p.Cabinets[0]
	c.Bays[0].Partition = 16 * mm
	c.Bays[1] = model.Bay{Hardware: "main", Fronts: []model.Front{{Kind: model.Door, Inner: []model.InnerDrawer{{Up: 150 * mm, Drawer: "low"}}}}}
	var met []string
	for _, g := range layout.Solve(p).Findings {
		if g.Rule == "partition-screws" {
			met = append(met, g.Where.String())
		}
	}
	if len(met) != 1 || !strings.Contains(met[0], "Jars") || !strings.HasSuffix(met[0], "inner drawer 1") {
		t.Errorf("screws meet at %q", met)
	}
	c.Bays[1].Packing.Left = 8 * mm // as deep as they go
	for _, g := range layout.Solve(p).Findings {
		if g.Rule == "partition-screws" {
			t.Errorf("beside packing: %v", g.What)
		}
	}
}

// Packing makes a bay's drawers narrower by what it is thick, and moves the holes of
// fronts in by it; nothing else but what follows changes.
func TestPackingNarrowsDrawers(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
		q := p.Clone()
		left, right := projecttest.Tenths(t, 1, 30, "more left"), projecttest.Tenths(t, 1, 30, "more right")
		b := &q.Cabinets[0].Bays[0]
		b.Packing.Left, b.Packing.Right = b.Packing.Left+left, b.Packing.Right+right
		for k := range b.Fronts {
			if f := &b.Fronts[k]; f.Packing != nil {
				f.Packing.Left, f.Packing.Right = f.Packing.Left+left, f.Packing.Right+right
			}
			if f := &b.Fronts[k]; f.Drawer == "" || f.Drawer == model.DrawerAuto { // chosen by what its holes meet
				f.Drawer, p.Cabinets[0].Bays[0].Fronts[k].Drawer = "low", "low"
			}
		}
		a, c := layout.Solve(p).Plan, layout.Solve(q).Plan
		for i := range a.Fronts {
			f, g := &a.Fronts[i], &c.Fronts[i]
			if f.Place.Bay > 0 || f.Place.Cabinet > 0 || f.Bays > 1 || !f.Fitted {
				continue
			}
			if f.Drawer.Body.Width()-g.Drawer.Body.Width() != left+right || f.Face != g.Face || f.Drop != g.Drop {
				t.Fatalf("front %d: %v became %v", f.Number, f.Drawer.Body, g.Drawer.Body)
			}
			for k := range f.Holes {
				h, n := &f.Holes[k], &g.Holes[k]
				by := left
				switch {
				case h.Kind == plan.StabiliserHole:
					by = (left - right) / 2
				case h.Side == plan.Right:
					by = -right
				}
				if d := n.At.X - h.At.X - by; d.Abs() > 1 || n.At.Y != h.At.Y {
					t.Fatalf("front %d: hole %v became %v", f.Number, h.At, n.At)
				}
			}
		}
	})
}

// What no rule flags does not collide: behind each front, drawers that have their room
// lie one over the other, between the packing, and behind the front.
func TestInnerDrawersThatHaveRoomDoNotCollide(t *testing.T) {
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		r := layout.Solve(projecttest.Random(t))
		bad := map[int]bool{}
		for _, f := range r.Findings {
			bad[f.Front] = bad[f.Front] || slices.Contains([]string{"room-above", "inner-hidden", "runner-low", "drawer-size", "sums"}, f.Rule)
		}
		for i := range r.Plan.Fronts {
			front := &r.Plan.Fronts[i]
			if bad[front.Number] || bad[0] || len(front.Inner) == 0 {
				continue
			}
			all := slices.Collect(front.Drawers())
			for k, f := range all {
				seen++
				if in := front.Between(); f.Drawer.Body.Min.X < in.Min.X || f.Drawer.Body.Max.X > in.Max.X {
					t.Fatalf("drawer %d of front %d at %v lies out of %v", f.Nth, f.Number, f.Drawer.Body, in)
				}
				if f.Nth > 0 && f.Drawer.Body.Max.Y > front.Face.Max.Y {
					t.Fatalf("inner drawer %d of front %d stands out", f.Nth, f.Number)
				}
				for _, g := range all[k+1:] {
					if f.Drawer.Body.Overlaps(g.Drawer.Body) {
						t.Fatalf("drawers %d and %d of front %d collide", f.Nth, g.Nth, f.Number)
					}
				}
			}
		}
	})
	if seen == 0 {
		t.Error("no random project had an inner drawer with room")
	}
}
