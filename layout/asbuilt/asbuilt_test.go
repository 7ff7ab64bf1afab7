package asbuilt

import (
	"math"
	"math/rand/v2"
	"testing"

	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
)

func mm(v float64) *length.Length { l := length.FromMM(v); return &l }

// hung is the plan of one cabinet with three drawers, whose sheet has been given other figures.
func hung(t testing.TB, path string, change func(*model.ConnectorFigures)) *model.Project {
	t.Helper()
	p := projecttest.Read(t, "../../testdata/projects/"+path)
	for i := range p.Hardware {
		s := p.Hardware[i].Sheet.Clone()
		change(&s.Connector)
		p.Hardware[i].Sheet = s
	}
	return p
}

func figures(up, side, turn float64) func(*model.ConnectorFigures) {
	return func(c *model.ConnectorFigures) {
		c.AdjustUp, c.AdjustDown, c.AdjustSide, c.PerTurn, c.PerTurnSide = *mm(up), 0, *mm(side), *mm(turn), *mm(turn)
	}
}

// measure types gaps of a plan that are off by what is drawn for each of their ends.
func measure(p *model.Project, draw func() (float64, bool)) {
	for _, g := range plan.Make(p).Gaps() {
		f := p.FrontAt(g.Front.Place)
		if f.AsBuilt == nil {
			f.AsBuilt = new(model.AsBuilt)
		}
		ends := [...]*model.GapEnds{plan.LeftEdge: &f.AsBuilt.Left, plan.RightEdge: &f.AsBuilt.Right, plan.BottomEdge: &f.AsBuilt.Below, plan.TopEdge: &f.AsBuilt.Above}[g.Edge]
		for _, at := range []**length.Length{&ends.First, &ends.Second} {
			if off, ok := draw(); ok {
				v := (g.Size + *mm(off)).RoundTo(length.Millimetre / 10)
				*at = &v
			}
		}
	}
}

// A front of testdata/projects/one-cabinet.yaml, 594 wide, with its connectors 36 from each side,
// 522 apart: the gap under it is 1 too small at the left end and right at the right one. By hand:
// a tilt of u at the left connector and v at the right one moves the left end by u − (v − u)·36/522
// and the right end by v + (v − u)·36/522: u = 1 − 36/594 = 0.9394, v = 36/594 = 0.0606.
func TestAWedgeUnderAFront(t *testing.T) {
	p := hung(t, "one-cabinet.yaml", figures(2, 1.5, 0.01*QuartersInATurn))
	f := p.FrontAt(model.Place{})
	f.AsBuilt = &model.AsBuilt{Below: model.GapEnds{First: mm(2), Second: mm(3)}}
	r := Of(plan.Make(p))
	if len(r.Moves) != 1 || r.Before != *mm(1) || r.After > *mm(0.006) || r.Least > *mm(1e-6) {
		t.Fatalf("%+v", r)
	}
	m := r.Moves[0]
	if m.LeftQuarters != 94 || m.RightQuarters != 6 || m.SidewayQuarters != 0 || m.Left != *mm(0.94) || m.Right != *mm(0.06) {
		t.Errorf("%+v", m)
	}
	if m.Front.EdgeDistance.Left != *mm(36) || m.Front.Face.Width() != *mm(594) {
		t.Errorf("the project is not what was worked out by hand: %v, %v", m.Front.EdgeDistance, m.Front.Face.Width())
	}
}

// What stands 4 too far left where the connectors move 1.5 stays 2.5 too far: no more can be done, and at
// the other side as much.
func TestNoFurtherThanTheConnectorsGo(t *testing.T) {
	p := hung(t, "one-cabinet.yaml", figures(2, 1.5, 0))
	f := p.FrontAt(model.Place{})
	f.AsBuilt = &model.AsBuilt{Left: model.GapEnds{First: mm(-1), Second: mm(-1)}, Right: model.GapEnds{First: mm(7), Second: mm(7)}}
	r := Of(plan.Make(p))
	if len(r.Moves) != 1 || r.Moves[0].Aside != *mm(1.5) || r.After != *mm(2.5) || r.Before != *mm(4) {
		t.Errorf("%+v", r)
	}
	if Of(plan.Make(hung(t, "one-cabinet.yaml", figures(2, 1.5, 0)))) != nil {
		t.Error("there is something to do where nothing was measured")
	}
	none := hung(t, "one-cabinet.yaml", figures(0, 0, 0))
	none.FrontAt(model.Place{}).AsBuilt = f.AsBuilt
	if r := Of(plan.Make(none)); len(r.Moves) != 0 || len(r.Stuck) != 1 || r.After != r.Before {
		t.Errorf("%+v", r)
	}
}

// The largest deviation is never made greater, also in steps of 0.1 mm and quarter turns, and never less
// than the linear program says; no connector goes further than its sheet says.
func TestTheLargestDeviationIsNeverMadeGreater(t *testing.T) {
	r := rand.New(rand.NewPCG(4, 14))
	for n := range 120 {
		path := []string{"one-cabinet.yaml", "rails.yaml", "measured.yaml"}[n%3]
		up, side := 3*r.Float64(), 2*r.Float64()
		p := hung(t, path, figures(up, side, []float64{0, 0.7, 1.5}[r.IntN(3)]))
		measure(p, func() (float64, bool) { return 4*r.Float64() - 2, r.IntN(4) > 0 })
		got := Of(plan.Make(p))
		if got == nil {
			continue
		}
		if got.After > got.Before || got.After < got.Least-1 {
			t.Fatalf("case %d: %v becomes %v, at least %v", n, got.Before, got.After, got.Least)
		}
		for _, m := range got.Moves {
			if m.Left.Abs() > *mm(up) || m.Right.Abs() > *mm(up) || m.Aside.Abs() > *mm(side) {
				t.Fatalf("case %d: %+v goes further than %v and %v", n, m, up, side)
			}
		}
	}
}

// Every choice of steps of a single front, and of two fronts one above the other, has been tried: none
// makes the worst end better; and the linear program's is as good as the finest grid's.
func TestNoChoiceOfStepsIsBetter(t *testing.T) {
	r := rand.New(rand.NewPCG(5, 14))
	worse := 0
	for n := range 60 {
		s := &solver{}
		fronts := 1 + n%2
		for range fronts {
			for which := range ways {
				s.ways = append(s.ways, way{which: which, step: 0.5, low: -2, high: 2})
			}
		}
		var off []float64
		for range 4 + r.IntN(6) {
			row := make([]float64, len(s.ways))
			for j := range row {
				if r.IntN(3) > 0 {
					row[j] = 2.4*r.Float64() - 1.2
				}
			}
			s.grows, off = append(s.grows, row), append(off, 5*r.Float64()-2.5)
		}
		steps, least := s.steps(off)
		got := worst(s.after(off, steps))
		best := math.Inf(1)
		var all func(j int, steps []int)
		all = func(j int, steps []int) {
			if j == len(steps) {
				best = min(best, worst(s.after(off, steps)))
				return
			}
			for steps[j] = -2; steps[j] <= 2; steps[j]++ {
				all(j+1, steps)
			}
			steps[j] = 0
		}
		all(0, make([]int, len(s.ways)))
		if got > best+1e-9 {
			worse++
			t.Logf("case %d: %v, best %v, least %v", n, got, best, least)
		}
		if least > best+1e-9 {
			t.Fatalf("case %d: the program's least is %v, a grid has %v", n, least, best)
		}
	}
	if worse > 0 {
		t.Errorf("%d of 60 could be better", worse)
	}
}

// A run that is measured all over.
func BenchmarkWholeRun(b *testing.B) {
	r := rand.New(rand.NewPCG(6, 14))
	p := projecttest.Demo(b)
	measure(p, func() (float64, bool) { return 4*r.Float64() - 2, true })
	pl := plan.Make(p)
	for b.Loop() {
		if r := Of(pl); r.After > r.Before {
			b.Fatal("worse")
		}
	}
	b.ReportMetric(float64(len(pl.Fronts)), "fronts")
}
