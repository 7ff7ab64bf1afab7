package plan_test

import (
	"testing"

	"frontlay/layout/plan"
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
	p.Cabinets[0].Channel = 40 * mm
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
	same(t, "end of the partition", got.Cabinets[0].Partitions[0].Max.Y, wide.Face.Min.Y-3*mm)
	same(t, "room above the drawer below it", beside.Drawer.Limit, wide.Runner.Lower)
	if beside.Topmost || !wide.Topmost {
		t.Error("the wide front is the topmost, the one below it is not")
	}
	if len(got.Problems) != 0 {
		t.Errorf("problems: %+v", got.Problems)
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
