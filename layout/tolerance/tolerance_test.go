package tolerance_test

import (
	"math"
	"math/rand/v2"
	"testing"
	"time"

	"pgregory.net/rapid"

	"frontlay/layout/plan"
	"frontlay/layout/projecttest"
	"frontlay/layout/tolerance"
	"frontlay/model"
	"frontlay/model/length"
)

// Stack-up (computed): worst case Σ|t|, root sum of squares √Σt². 5 × 0.5 → 2.5 and
// 1.11803; {0.5, 0.3, 0.2, 0.1} → 1.1 and 0.62450; 10 × 0.1 → 1.0 and 0.31623.
// ISO 2768-1 Table 1, linear, ± mm (a standard for metal: a check of arithmetic, not a
// default for wood): class m of 20, 100, 300 and 700 mm is 0.2, 0.3, 0.5 and 0.8, together
// (computed) 1.8 and 1.00995.
func TestStackUp(t *testing.T) {
	same := func(n int, t float64) (all []float64) {
		for range n {
			all = append(all, t)
		}
		return all
	}
	for _, c := range []struct {
		parts         []float64
		worst, likely float64
	}{
		{same(5, 0.5), 2.5, 1.11803}, {[]float64{0.5, 0.3, 0.2, 0.1}, 1.1, 0.62450}, {same(10, 0.1), 1.0, 0.31623},
		{[]float64{0.2, 0.3, 0.5, 0.8}, 1.8, 1.00995},
	} {
		if w, l := tolerance.Worst(c.parts...), tolerance.Likely(c.parts...); math.Abs(w-c.worst) > 5e-6 || math.Abs(l-c.likely) > 5e-6 {
			t.Errorf("%v: %v and %v, want %v and %v", c.parts, w, l, c.worst, c.likely)
		}
	}
}

// only is a process with one figure and all others 0.
func only(key string, v length.Length) *model.Process {
	p := new(model.Process)
	for _, f := range model.ProcessFigures() {
		zero := length.Length(0)
		if f.Key == key {
			zero = v
		}
		*f.At(p) = &zero
	}
	return p
}

func chest(t testing.TB) *model.Project {
	return projecttest.Read(t, "../../testdata/projects/one-cabinet.yaml")
}

// A gap's wedge from two connectors of standard deviation σ: √2 · σ · w/(w − 2 · edge
// distance); its mean: σ/√2 (computed).
func TestWedgeOfTwoConnectors(t *testing.T) {
	p := chest(t)
	p.Process = only("jig", length.Millimetre)
	b := tolerance.Of(plan.Make(p))
	g := &b.Gaps[0]
	if g.Edge != plan.BottomEdge || g.Other != nil || g.Front.EdgeDistance.Left != g.Front.EdgeDistance.Right {
		t.Fatal("the first gap is not that under the lowest front")
	}
	w := g.Front.Face.Width().MM()
	s := b.Spread(g)
	near := func(what string, got length.Length, want float64) {
		if math.Abs(got.MM()-want) > 1e-6 {
			t.Errorf("%s: %v, want %v", what, got, want)
		}
	}
	far := w / (w - 2*g.Front.EdgeDistance.Left.MM())
	near("wedge", s.Wedge, math.Sqrt2*far)
	near("middle", s.Likely, 1/math.Sqrt2)
	near("end", s.End, math.Sqrt(0.5+far*far/2))
	near("worst", s.Worst, far) // one connector up, the other down: (far + 1)/2 + (far − 1)/2
}

// With all figures 0 nothing spreads, every cabinet is as wanted, and the plan is the same
// as without any.
func TestWithoutErrorsNothingSpreads(t *testing.T) {
	for name, p := range projecttest.All(t, "../..") {
		before := plan.Make(p)
		q := p.Clone()
		q.Process = only("", 0)
		after := plan.Make(q)
		after.Project = before.Project
		if len(before.Fronts) != len(after.Fronts) {
			t.Fatalf("%s: another plan", name)
		}
		for i := range before.Fronts {
			if before.Fronts[i].Face != after.Fronts[i].Face {
				t.Errorf("%s: front %d lies at %v, then %v", name, i, before.Fronts[i].Face, after.Fronts[i].Face)
			}
		}
		b := tolerance.Of(plan.Make(q))
		for i := range b.Gaps {
			if s := b.Spread(&b.Gaps[i]); s != (tolerance.Spread{}) || b.Before(&b.Gaps[i]) != 1 {
				t.Errorf("%s: gap %d spreads by %+v", name, i, s)
			}
		}
		if _, ok := b.Largest(); ok {
			t.Errorf("%s: something is the largest of nothing", name)
		}
		for _, share := range b.Try(10).CabinetsAfter {
			if share != 1 {
				t.Errorf("%s: %v of the cabinets", name, share)
			}
		}
	}
}

// The share of simulated runs lies within its own standard error of the closed form for
// normal parts: within four of them for each of some hundred gaps.
func TestTryingAgreesWithTheClosedForm(t *testing.T) {
	const n = 20_000
	gaps, far := 0, 0
	for name, p := range projecttest.All(t, "../..") {
		p = p.Clone()
		p.Process = &model.Process{Drilling: model.ByTemplate}
		b := tolerance.Of(plan.Make(p))
		tried := b.Try(n)
		for i := range b.Gaps {
			want := b.Before(&b.Gaps[i])
			off := math.Abs(tried.GapsBefore[i]-want) / math.Sqrt(want*(1-want)/n)
			gaps++
			if off > 1.96 {
				far++
			}
			if off > 4 {
				t.Errorf("%s, gap %d: %v of the runs, want %v: %v standard errors", name, i, tried.GapsBefore[i], want, off)
			}
		}
	}
	if gaps < 60 || far > gaps/8 { // one in twenty is expected
		t.Errorf("%d of %d gaps are off by more than two standard errors", far, gaps)
	}
}

// Where one source of error is all there is, the share is Φ of the band: Φ(1)=0.841345,
// Φ(1.95996)=0.975, Φ(2)=0.977250, Φ(3)=0.998650. A carcass's height alone moves the top
// gap's ends alike.
func TestShareOfOneErrorIsThatOfTheNormalDistribution(t *testing.T) {
	for _, c := range []struct{ sigmas, phi float64 }{{1, 0.841345}, {1.95996, 0.975}, {2, 0.977250}, {3, 0.998650}} {
		p := chest(t)
		p.Process = only("runner", length.FromMM(1.95996))
		within := length.FromMM(c.sigmas / math.Sqrt2)
		p.Process.Within = &within
		b := tolerance.Of(plan.Make(p))
		// The mean of two connectors of σ = 1 deviates by 1/√2; with its wedge the share is
		// less than that of the mean alone.
		g := &b.Gaps[0]
		if got, most := b.Before(g), 2*c.phi-1; got > most || got < most*most/2 {
			t.Errorf("%v σ: %v, at most %v", c.sigmas, got, most)
		}
		p.Process = only("cutting", length.FromMM(1.95996))
		within = length.FromMM(c.sigmas * math.Sqrt2)
		p.Process.Within = &within
		b = tolerance.Of(plan.Make(p))
		for i := range b.Gaps {
			// The height of the front below is all that comes to the gap between two; of the
			// highest one and of the carcass to that at the top.
			g := &b.Gaps[i]
			k := c.sigmas
			switch {
			case g.Edge == plan.TopEdge:
			case g.Edge == plan.BottomEdge && g.Other != nil:
				k *= math.Sqrt2
			default:
				continue
			}
			want := math.Erf(k / math.Sqrt2)
			if k == c.sigmas {
				want = 2*c.phi - 1
			}
			if got := b.Before(g); math.Abs(got-want) > 3e-6 {
				t.Errorf("%v σ at the %v edge: %v, want %v", c.sigmas, g.Edge, got, want)
			}
		}
	}
}

// Wider figures never raise the share of cabinets that are as wanted: exactly for each gap
// before adjusting, whichever figure grows; and for whole cabinets, before and after, where
// all grow in the same ratio and the same random numbers come again.
func TestWiderIsNeverBetter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
		p.Process = projecttest.Process(t).Filled()
		pl := plan.Make(p)
		b := tolerance.Of(pl)
		wide := p.Clone()
		figures := model.ProcessFigures()[1:]
		row := figures[rapid.IntRange(0, len(figures)-1).Draw(t, "which")]
		*(*row.At(wide.Process)) += length.Length(rapid.Int64Range(1, 10).Draw(t, "more")) * length.Millimetre / 10
		wider := tolerance.Of(plan.Make(wide))
		for i := range b.Gaps {
			narrowS, wideS := b.Spread(&b.Gaps[i]), wider.Spread(&wider.Gaps[i])
			if wideS.Worst < narrowS.Worst || wideS.Likely < narrowS.Likely || wideS.Wedge < narrowS.Wedge || wideS.End < narrowS.End {
				t.Fatalf("gap %d: %+v, then %+v", i, narrowS, wideS)
			}
			if x, y := b.Before(&b.Gaps[i]), wider.Before(&wider.Gaps[i]); y > x+1e-7 || x > 1 || y < 0 {
				t.Fatalf("gap %d: %v, with wider %s %v", i, x, row.Key, y)
			}
		}
		times := p.Clone()
		factor := length.Length(rapid.Int64Range(2, 4).Draw(t, "factor"))
		for _, row := range figures {
			*(*row.At(times.Process)) *= factor
		}
		a, c := b.Try(60), tolerance.Of(plan.Make(times)).Try(60)
		notMore(t, "wider", c, a)
	})
}

// notMore tells that no share of one outcome is above that of another one.
func notMore(t *rapid.T, what string, a, b tolerance.Tried) {
	for _, pair := range [][2][]float64{{a.GapsBefore, b.GapsBefore}, {a.GapsAfter, b.GapsAfter}, {a.CabinetsBefore, b.CabinetsBefore}, {a.CabinetsAfter, b.CabinetsAfter}} {
		for i := range pair[0] {
			if pair[0][i] > pair[1][i] {
				t.Fatalf("%s: %v, then %v", what, pair[1], pair[0])
			}
		}
	}
}

// More adjustment never lowers the share of cabinets, and adjusting never does.
func TestMoreAdjustmentIsNeverWorse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := projecttest.Random(t)
		p.Process = projecttest.Process(t).Filled()
		a := tolerance.Of(plan.Make(p)).Try(60)
		for i := range a.GapsAfter {
			if a.GapsAfter[i] < a.GapsBefore[i] {
				t.Fatalf("gap %d: %v before, %v after", i, a.GapsBefore[i], a.GapsAfter[i])
			}
		}
		for i := range a.CabinetsAfter {
			if a.CabinetsAfter[i] < a.CabinetsBefore[i] {
				t.Fatalf("cabinet %d: %v before, %v after", i, a.CabinetsBefore[i], a.CabinetsAfter[i])
			}
		}
		more := p.Clone()
		for i := range more.Hardware {
			s := more.Hardware[i].Sheet.Clone()
			c := &s.Connector
			c.AdjustDown = c.Down() + length.Length(rapid.Int64Range(0, 20).Draw(t, "down"))*length.Millimetre/10
			c.AdjustUp += length.Length(rapid.Int64Range(0, 20).Draw(t, "up")) * length.Millimetre / 10
			c.AdjustSide += length.Length(rapid.Int64Range(0, 20).Draw(t, "side")) * length.Millimetre / 10
			more.Hardware[i].Sheet = s
		}
		b := tolerance.Of(plan.Make(more)).Try(60)
		notMore(t, "less adjustment", a, b)
		if less, enough := tolerance.Of(plan.Make(p)), tolerance.Of(plan.Make(more)); len(less.Gaps) == len(enough.Gaps) {
			for i := range less.Gaps {
				if enough.Short(&enough.Gaps[i]) > less.Short(&less.Gaps[i]) {
					t.Fatalf("gap %d lacks more", i)
				}
			}
		}
	})
}

// testdata/projects/spread.yaml against testdata/spread.py, which builds 400,000 of its
// chests as figures of the plane and measures their gaps: ± of the middle, of the wedge and
// of the worse end, and the share within 1 mm.
func TestSpreadIsThatOfChestsBuiltInPython(t *testing.T) {
	b := tolerance.Of(plan.Make(projecttest.Read(t, "../../testdata/projects/spread.yaml")))
	edges := [4]string{"left of", "right of", "under", "over"}
	want := map[string][4]float64{
		"under Deep": {0.661, 1.227, 0.909, 0.9418}, "under Flat": {0.838, 1.737, 1.220, 0.8022}, "over Flat": {0.845, 1.227, 1.052, 0.8854},
		"under Wide deep": {0.661, 1.172, 0.888, 0.9475}, "under Wide flat": {0.838, 1.658, 1.186, 0.8170}, "over Wide flat": {0.843, 1.173, 1.032, 0.8938},
		"left of Deep": {0.486, 0.953, 0.750, 0.9898}, "left of Wide deep": {0.684, 1.171, 0.981, 0.9393}, "right of Wide deep": {0.479, 0.681, 0.629, 0.9978},
		"left of Flat": {0.515, 1.048, 0.865, 0.9761}, "left of Wide flat": {0.714, 1.289, 1.114, 0.9107}, "right of Wide flat": {0.495, 0.750, 0.702, 0.9944},
	}
	if len(b.Gaps) != len(want) {
		t.Fatalf("%d gaps", len(b.Gaps))
	}
	for i := range b.Gaps {
		g := &b.Gaps[i]
		name := edges[g.Edge] + " " + g.Front.Name
		s, w := b.Spread(g), want[name]
		for k, got := range []float64{s.Likely.MM(), s.Wedge.MM(), s.End.MM(), b.Before(g)} {
			if math.Abs(got-w[k]) > 0.004 {
				t.Errorf("%s, figure %d: %.4f, want %v", name, k, got, w[k])
			}
		}
	}
}

// 10,000 cabinets of 100 fronts, against a plain loop over as many random numbers as they
// take: the ratio is what trying them costs beyond those.
func BenchmarkTry(b *testing.B) {
	p := projecttest.Read(b, "../../testdata/projects/one-cabinet.yaml")
	p.Process = &model.Process{Drilling: model.ByTemplate}
	bay := p.Cabinets[0].Bays[0]
	p.Cabinets[0].Width, p.Cabinets[0].Height = 12*length.Metre, 3*length.Metre
	bay.Fronts = nil
	for range 5 {
		bay.Fronts = append(bay.Fronts, model.Front{Drawer: "low"})
	}
	p.Cabinets[0].Bays = nil
	for range 20 {
		p.Cabinets[0].Bays = append(p.Cabinets[0].Bays, bay.Clone())
	}
	budget := tolerance.Of(plan.Make(p))
	const cabinets = 10_000
	var numbers int
	var plain, tried time.Duration
	for b.Loop() {
		start := time.Now()
		sum := 0.0
		numbers = budget.Errors() * cabinets
		random := rand.New(rand.NewPCG(1, 2))
		for range numbers {
			sum += random.NormFloat64()
		}
		plain += time.Since(start)
		start = time.Now()
		if got := budget.Try(cabinets); len(got.GapsAfter) < 200 || math.IsNaN(sum) {
			b.Fatalf("%d gaps", len(got.GapsAfter))
		}
		tried += time.Since(start)
	}
	b.ReportMetric(float64(tried)/float64(plain), "times-the-numbers")
	b.ReportMetric(tried.Seconds()/float64(b.N), "s/10000-cabinets")
	b.ReportMetric(float64(numbers), "numbers")
}
