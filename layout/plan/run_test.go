package plan_test

import (
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// same compares named lengths with what they should be.
func same(t *testing.T, what string, got, want length.Length) {
	t.Helper()
	if got != want {
		t.Errorf("%s is %v, want %v", what, got, want)
	}
}

func TestNeighboursShareAGap(t *testing.T) {
	p := tradeProject()
	p.Cabinets = append(p.Cabinets, p.Clone().Cabinets[0])
	own := plan.Make(p)
	same(t, "gap of two edge reveals", own.Fronts[3].Face.Min.X-own.Fronts[0].Face.Max.X, 6*mm)
	p.SharedGaps = true
	shared := plan.Make(p)
	same(t, "shared gap", shared.Fronts[3].Face.Min.X-shared.Fronts[0].Face.Max.X, 3*mm)
	same(t, "overlay at the neighbour", shared.Fronts[0].Overlay.Right, 19*mm-mm*3/2)
	same(t, "overlay at the outside", shared.Fronts[0].Overlay.Left, 16*mm)
}

func TestWhatStandsBeside(t *testing.T) {
	p := tradeProject()
	p.Cabinets[0].Left = model.Beside{Filler: 30 * mm, EndPanel: 18 * mm, Wall: true}
	p.Cabinets[0].Worktop = 38 * mm
	p.Cabinets[0].Plinth = 100 * mm
	got := plan.Make(p)
	same(t, "carcass's left edge", got.Cabinets[0].Outline.Min.X, 48*mm)
	same(t, "first front's left edge", got.Fronts[0].Face.Min.X, 51*mm)
	same(t, "first front's bottom edge", got.Fronts[0].Face.Min.Y, 103*mm)
	same(t, "top of the worktop", got.Extent.Max.Y, 858*mm)
	same(t, "edge distance, as without", got.Fronts[0].EdgeDistance.Left, 36*mm)
}

// Two equal bays are equal: 600 less two sides of 19 and a partition of 23.2 are
// 538.8, so 269.4 each. Three in a cabinet of 900 with partitions of 19 have
// 900 − 4·19 = 824, so 274.67 each: 274.6 and two tenths more, which go to two of
// them from the right.
func TestEqualBaysAreEqual(t *testing.T) {
	for _, rounding := range []length.Length{0, mm / 2, 5 * mm} {
		p := tradeProject()
		p.Rounding.Step = rounding
		c := &p.Cabinets[0]
		c.Bays = []model.Bay{c.Bays[0], c.Bays[0]}
		c.Bays[0].Partition = 23*mm + 2*mm/10
		got := plan.Make(p).Cabinets[0].Bays
		same(t, "left bay of two", got[0].Opening.Width(), 269*mm+4*mm/10)
		same(t, "right bay of two", got[1].Opening.Width(), 269*mm+4*mm/10)
		c.Width, c.Bays = 900*mm, []model.Bay{c.Bays[1], c.Bays[1], c.Bays[1]}
		got = plan.Make(p).Cabinets[0].Bays
		same(t, "left bay of three", got[0].Opening.Width(), 274*mm+6*mm/10)
		same(t, "middle bay of three", got[1].Opening.Width(), 274*mm+7*mm/10)
		same(t, "right bay of three", got[2].Opening.Width(), 274*mm+7*mm/10)
	}
}

func TestFingerPullChannel(t *testing.T) {
	p := tradeProject()
	p.Cabinets[0].Channel.Height = 40 * mm
	got := plan.Make(p)
	same(t, "top edge of the highest front", got.Fronts[2].Face.Max.Y, 720*mm-3*mm-40*mm)
}

// spanProject is a cabinet of two bays with a wide front on top of both.
func spanProject() *model.Project {
	p := tradeProject()
	c := &p.Cabinets[0]
	c.Width = 1219 * mm
	c.Bays = []model.Bay{
		{Fronts: []model.Front{{Share: 1}, {Height: 180 * mm, Span: 2, Drawer: "low"}}},
		{Fronts: []model.Front{{Share: 1}, {Share: 1}}},
	}
	return p
}

func TestSpanningFront(t *testing.T) {
	got := plan.Make(spanProject())
	wide, beside := &got.Fronts[1], &got.Fronts[3]
	same(t, "width of the wide front", wide.Face.Width(), 1213*mm)
	same(t, "its opening", wide.Opening.Width(), 1181*mm)
	same(t, "its edge distance left", wide.EdgeDistance.Left, 36*mm)
	same(t, "its edge distance right", wide.EdgeDistance.Right, 36*mm)
	same(t, "gap under it in the next bay", wide.Face.Min.Y-beside.Face.Max.Y, 3*mm)
	// The wide front's bottom edge is at 720 − 3 − 180 = 537, less the gap of 3: the
	// partition ends at 534 under a shelf of 19, on which the wide drawer stands.
	same(t, "end of the partition", got.Cabinets[0].Partitions[0].Max.Y, 534*mm)
	same(t, "room above the drawer below it", beside.Drawer.Limit, 534*mm)
	same(t, "drop of the wide drawer: 19 − 3", wide.Drop, 16*mm)
	shelves := got.Cabinets[0].Bays[0].Shelves
	if len(shelves) != 1 || shelves[0].Rect != plane.R(19*mm, 534*mm, 1200*mm, 553*mm) || shelves[0].Over {
		t.Errorf("shelves %+v, want one under the wide front across both bays", shelves)
	}
	if beside.Topmost || !wide.Topmost {
		t.Error("the wide front is the topmost, the one below it is not")
	}
	if len(got.Problems) != 0 {
		t.Errorf("problems: %+v", got.Problems)
	}
}

// Below, the wide front of 180 on a reveal of 3 ends at 183, its shelf's upper face
// is level with the fronts above it, 186, and the partition stands on that. The wide
// drawer has room up to 186 − 19 = 167.
func TestSpanningFrontBelow(t *testing.T) {
	p := spanProject()
	p.Cabinets[0].Bays[0].Fronts = []model.Front{{Height: 180 * mm, Span: 2, Drawer: "low"}, {Share: 1}, {Share: 1}}
	sheet := *p.Hardware[0].Sheet
	sheet.Runner.LeastHeight = 2 * mm
	p.Hardware[0].Sheet = &sheet
	got := plan.Make(p)
	same(t, "end of the partition", got.Cabinets[0].Partitions[0].Min.Y, 186*mm)
	same(t, "room above the wide drawer", got.Fronts[0].Drawer.Limit, 167*mm)
	shelves := got.Cabinets[0].Bays[0].Shelves
	if len(shelves) != 1 || shelves[0].Rect != plane.R(19*mm, 167*mm, 1200*mm, 186*mm) || !shelves[0].Over {
		t.Errorf("shelves %+v, want one over the wide front across both bays", shelves)
	}
	for _, k := range []int{1, 3} { // each bay's lowest
		same(t, "drop of a drawer on the shelf: the runner's least height", got.Fronts[k].Drop, 2*mm)
	}
	same(t, "drop of a drawer above that", got.Fronts[2].Drop, 0)
	p.HoleRows = model.HoleRows{Mode: model.RowsMoveFronts, Datum: 19 * mm}
	for _, f := range plan.Make(p).Fronts {
		if off := f.Runner.OffRow; f.Place.Front > 0 && (off != 0 || f.Number == 2 && f.Drop != 2*mm) {
			t.Errorf("front %d on hole rows: off by %v, drop %v", f.Number, off, f.Drop)
		}
	}
}

// A niche over both bays has its own shelf, at which the partition ends.
func TestSpanningNicheCarriesThePartition(t *testing.T) {
	p := spanProject()
	p.Cabinets[0].Bays[0].Fronts[1].Kind = model.OpenNiche
	got := plan.Make(p)
	niche, shelves := &got.Fronts[1], got.Cabinets[0].Bays[0].Shelves
	if len(shelves) != 1 || shelves[0].Rect.Max.Y != niche.Face.Min.Y {
		t.Errorf("shelves %+v, want one under the niche", shelves)
	}
	same(t, "end of the partition", got.Cabinets[0].Partitions[0].Max.Y, niche.Face.Min.Y-19*mm)
}

// A niche below a wide front ends at the wide front's shelf and needs none of its own.
func TestANicheUnderAWideFrontHasOneShelf(t *testing.T) {
	p := spanProject()
	p.Cabinets[0].Bays[1].Fronts[1].Kind = model.OpenNiche
	c := plan.Make(p).Cabinets[0]
	if len(c.Bays[0].Shelves) != 1 || len(c.Bays[1].Shelves) != 1 || c.Bays[1].Shelves[0].Over {
		t.Errorf("shelves %+v and %+v, want the wide front's and one under the niche", c.Bays[0].Shelves, c.Bays[1].Shelves)
	}
}

func TestSpanInTheMiddleIsTold(t *testing.T) {
	p := spanProject()
	p.Cabinets[0].Bays[0].Fronts = append(p.Cabinets[0].Bays[0].Fronts, model.Front{Share: 1})
	got := plan.Make(p)
	if len(got.Problems) != 1 || got.Problems[0].Kind != plan.SpanNoPlace {
		t.Errorf("problems: %+v, want one of a span without a place", got.Problems)
	}
}

func TestLineUp(t *testing.T) {
	two := func(up *model.LineUp) *model.Project {
		p := tradeProject()
		p.Cabinets = append(p.Cabinets, p.Clone().Cabinets[0])
		p.Cabinets[1].Name = "B"
		p.Cabinets[1].Plinth = 50 * mm
		p.Cabinets[0].Bays[0].Fronts[0].Name = "Low"
		p.Cabinets[1].Bays[0].Fronts[0].LineUp = up
		return p
	}
	t.Run("top to top", func(t *testing.T) {
		got := plan.Make(two(&model.LineUp{Cabinet: "A", Bay: 1, Front: "Low"}))
		same(t, "its top edge", got.Fronts[3].Face.Max.Y, got.Fronts[0].Face.Max.Y)
	})
	t.Run("top to bottom, by number", func(t *testing.T) {
		got := plan.Make(two(&model.LineUp{Cabinet: "A", Bay: 1, Front: "2", Bottom: true}))
		same(t, "its top edge", got.Fronts[3].Face.Max.Y, got.Fronts[1].Face.Min.Y)
	})
	t.Run("in a circle", func(t *testing.T) {
		p := two(&model.LineUp{Cabinet: "A", Bay: 1, Front: "Low"})
		p.Cabinets[0].Bays[0].Fronts[1].LineUp = &model.LineUp{Cabinet: "B", Bay: 1, Front: "1"}
		got := plan.Make(p)
		if len(got.Problems) != 1 || got.Problems[0].Kind != plan.LineUpCircle {
			t.Errorf("problems: %+v, want one circle", got.Problems)
		}
	})
	t.Run("where there is no room", func(t *testing.T) {
		p := two(&model.LineUp{Cabinet: "A", Bay: 1, Front: "3"})
		p.Cabinets[1].Height = 400 * mm
		got := plan.Make(p)
		if len(got.Problems) != 1 || got.Problems[0].Kind != plan.LineUpNoRoom || got.Problems[0].Amount <= 0 {
			t.Errorf("problems: %+v, want one line too high", got.Problems)
		}
	})
}

func TestBaysByWidthAndShare(t *testing.T) {
	p := tradeProject()
	c := &p.Cabinets[0]
	c.Width = 1000 * mm // inside 962, less 19 and 25 for partitions: 918
	front := []model.Front{{}}
	c.Bays = []model.Bay{{Width: 318 * mm, Fronts: front}, {Share: 1, Partition: 25 * mm, Fronts: front}, {Share: 2, Fronts: front}}
	got := plan.Make(p)
	for j, want := range []int64{318, 200, 400} {
		same(t, "a bay's width", got.Cabinets[0].Bays[j].Opening.Width(), length.MM(want))
	}
	if len(got.Problems) != 0 {
		t.Errorf("problems: %+v", got.Problems)
	}
	c.Bays[1].Width, c.Bays[2].Width = 200*mm, 410*mm
	got = plan.Make(p)
	if len(got.Problems) != 1 || got.Problems[0].Kind != plan.BaySum || got.Problems[0].Amount != 10*mm {
		t.Errorf("problems: %+v, want bays 10 mm over", got.Problems)
	}
}
