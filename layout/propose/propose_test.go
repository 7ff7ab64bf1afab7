package propose

import (
	"reflect"
	"slices"
	"strings"
	"testing"

	"frontlay/layout"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
)

func mm(v int64) length.Length { return length.MM(v) }

// jars is a question about the first bay of the demo: 758 mm of fronts and gaps of 3 mm.
func jars() Question {
	return Question{At: model.Place{Front: -1}, Fewest: 3, Most: 5, Weights: UsualWeights(), Best: 4,
		Things: []Thing{{"Brushes", mm(60)}, {"Jars", mm(210)}}}
}

// Worked by hand. The carcass is 760 mm high, its top reveal 2 mm, its boards 18 mm. The
// invented hardware: a bottom of 16 mm whose underside is 14 mm above the runner, 8 mm
// of clearance above; the lowest runner lies on the carcass bottom, 18 mm above the edge
// of its front. So a front h high leaves h + 3 - 8 - 30 = h - 35 mm inside, the lowest
// 18 mm less, and the highest, which ends 16 mm above the inside of the carcass top and
// has no gap above it, h - 54. Jars of 210 mm want a front of 245 mm, brushes of 60 mm
// at the top one of 114 mm; the lowest drawer that the sheet has is 92 mm high, 62 mm of
// them above the bottom, and wants 116 mm there. What is left is 758 - 6 - 245 - 116 =
// 391 mm, 338 mm of them inside, for nothing in particular. Lost are 758 - 210 - 60 -
// 338 = 150 mm: 2 mm above the brushes, the others to gaps, bottoms and runners. Of the
// two lines of the bay at the right (320 mm, 538 mm) none is met, nor of its own: 4.
func TestTheBestDivisionByHand(t *testing.T) {
	a := Find(projecttest.Demo(t), jars())
	best := &a.Proposals[0]
	if got, want := best.Heights(), []length.Length{mm(391), mm(245), mm(116)}; !slices.Equal(got, want) {
		t.Fatalf("heights %v, want %v", got, want)
	}
	for m, want := range map[Measure]Term{
		Lost:     {Measure: Lost, Height: mm(150), Needless: mm(2), Taken: mm(148)},
		Settings: {Measure: Settings, Count: 2},
		Drops:    {Measure: Drops},
		Lines:    {Measure: Lines, Count: 4, Sides: [2]int{0, 4}, There: [2]bool{false, true}},
		Order:    {Measure: Order},
		Uneven:   {Measure: Uneven},
	} {
		got := best.Terms[m]
		got.points = 0
		if got != want {
			t.Errorf("%v is %+v, want %+v", m.Key(), got, want)
		}
	}
	if best.Points() != 150+2*20+4*15 {
		t.Errorf("it comes to %v", best.Points())
	}
	var names []string
	for _, f := range best.Project.BayAt(best.Edit.At).Fronts {
		names = append(names, f.Name)
	}
	if want := []string{"Buckets", "Jars", "Brushes"}; !slices.Equal(names, want) {
		t.Errorf("the fronts are called %v, want %v", names, want)
	}
}

// The same question has the same answer, and nothing of the project is changed by it.
func TestFindIsDeterministic(t *testing.T) {
	p := projecttest.Demo(t)
	q := jars()
	q.Sheets = []string{"boxes", "main"}
	before := p.Clone()
	a, b := Find(p, q), Find(p, q)
	if len(a.Proposals) != 4 || !reflect.DeepEqual(a, b) {
		t.Error("asked again, the answer is another one")
	}
	if !reflect.DeepEqual(before, p) {
		t.Error("the project is changed")
	}
	if q.Things[0].Name != "Brushes" {
		t.Error("the question is changed")
	}
}

// With a weight on lines so heavy that nothing else counts, the demo's first bay lines
// up with the bay beside it, and says so.
func TestLinesUpWithTheBayBeside(t *testing.T) {
	q := jars()
	q.Weights[Lines] = 100 * whole
	best := Find(projecttest.Demo(t), q).Proposals[0]
	if got := best.Terms[Lines]; got.Count != 0 || got.Say().String() != "lines up with the bay at its right" {
		t.Errorf("%v: %+v", best.Heights(), got)
	}
}

// What stands in the way is said, with what to change.
func TestWhatIsImpossible(t *testing.T) {
	for _, c := range []struct {
		name string
		of   func(*model.Project, *Question)
		want string
	}{
		{"no bay", func(_ *model.Project, q *Question) { q.At.Bay = 7 }, "no bay at this place"},
		{"more things than fronts", func(_ *model.Project, q *Question) { q.Fewest, q.Most = 1, 1 }, "2 things want a drawer each"},
		{"no number of fronts", func(_ *model.Project, q *Question) { q.Fewest = 6 }, "3 or 3..5"},
		{"too many things", func(_ *model.Project, q *Question) { q.Things, q.Most = make([]Thing, 9), 10 }, "At most 8"},
		{"too high", func(_ *model.Project, q *Question) { q.Things[0].Height = mm(700) }, "too low for what is to go in"},
		{"too high for equal fronts", func(_ *model.Project, q *Question) { q.Style, q.Things[0].Height = Equal, mm(300) }, "Choose free heights"},
		{"locked", func(p *model.Project, _ *Question) { p.Cabinets[0].Bays[0].Fronts[0].Locked = true }, "locked"},
		{"spanning", func(p *model.Project, q *Question) {
			q.At = model.Place{Cabinet: 1, Front: -1}
			p.Cabinets[1].Bays[0].Fronts[0].Span = 2
		}, "spans several bays"},
		{"lined up with", func(p *model.Project, _ *Question) {
			p.Cabinets[1].Bays[0].Fronts[0].LineUp = &model.LineUp{Cabinet: "Glazes", Front: "Jars"}
		}, "A front of Test tiles, bay 1, lines up with one of this bay"},
		{"an error in any case", func(p *model.Project, q *Question) { p.Cabinets[0].Depth, q.Style = mm(200), Equal }, "The check finds an error in every division"},
		{"no hardware", func(p *model.Project, _ *Question) { p.Cabinets[0].Bays[0].Hardware = "none" }, "no hardware sheet"},
	} {
		t.Run(c.name, func(t *testing.T) {
			p, q := projecttest.Demo(t), jars()
			c.of(p, &q)
			a := Find(p, q)
			if len(a.Proposals) > 0 || !strings.Contains(a.Why.String(), c.want) {
				t.Errorf("%d proposals: %q", len(a.Proposals), a.Why)
			}
		})
	}
}

// Every bay of every project gets proposals without an error, or a reason.
func TestEveryBay(t *testing.T) {
	proposed := 0
	for name, p := range projecttest.All(t, "../..") {
		for i := range p.Cabinets {
			for j := range p.Cabinets[i].Bays {
				at := model.Place{Cabinet: i, Bay: j, Front: -1}
				a := Find(p, Question{At: at, Fewest: 2, Most: 4, Weights: UsualWeights(), Best: 2, Style: Equal})
				if len(a.Proposals) == 0 && a.Why.Empty() {
					t.Errorf("%s, %v: no proposal and no reason", name, at)
				}
				for _, x := range a.Proposals {
					proposed++
					if bad := openErrors(layout.Solve(x.Project).Findings, at); len(bad) > 0 {
						t.Errorf("%s, %v: %v", name, at, bad[0].What)
					}
				}
			}
		}
	}
	if proposed < 10 {
		t.Errorf("only %d proposals", proposed)
	}
}

// A search that would take too long ends, and says so.
func TestASearchEnds(t *testing.T) {
	p := projecttest.Demo(t)
	p.Cabinets[0].Height, p.Rounding.Step = mm(2400), length.Millimetre/2
	q := jars()
	q.Most, q.Best, q.Grid = MostFronts, MostAsked, length.Millimetre/2
	for i := range 6 {
		q.Things = append(q.Things, Thing{"", mm(40 + 7*int64(i))})
	}
	s := &search{p: p, q: q.filled(p), before: layout.Solve(p), steps: mostSteps - 1_000_000}
	s.run()
	if !s.stopped {
		t.Error("it came to an end by itself: ask for more")
	}
}

// A handle on one line through the run keeps a front's edges away from the line: the
// check refuses such fronts, and they are not found again.
func TestRefusedFrontsAreLeftOut(t *testing.T) {
	p := projecttest.Demo(t)
	p.Handle = &model.Handle{Spacing: mm(160), Diameter: mm(5), OnLine: mm(600)}
	q := jars()
	q.Grid, q.Fewest, q.Most = mm(40), 3, 3
	a := Find(p, q)
	if len(a.Proposals) == 0 {
		t.Fatal(a.Why)
	}
	all := force(p, q)
	best := slices.MinFunc(all, func(a, b tried) int {
		if a.score.less(b.score) {
			return -1
		}
		return 1
	})
	if got := a.Proposals[0].score; got != best.score {
		t.Errorf("the best comes to %v, by force to %v", got, best)
	}
}

// What a proposal takes away is listed: what is no drawer, and what is behind one.
func TestWhatMakesWay(t *testing.T) {
	p := projecttest.Demo(t)
	at := model.Place{Cabinet: 1, Bay: 1}
	p.Cabinets[1].Bays[1].Fronts[0].Inner = make([]model.InnerDrawer, 1)
	others, inner := MakesWay(p, at)
	if !slices.Equal(others, []string{"Notebooks"}) || !slices.Equal(inner, []string{"Kiln shelves"}) {
		t.Errorf("%q and %q", others, inner)
	}
	q := jars()
	q.At = at
	best := Find(p, q).Proposals[0]
	for _, f := range best.Project.BayAt(at).Fronts {
		if f.Kind != model.DrawerFront || len(f.Inner) > 0 {
			t.Errorf("%+v", f)
		}
	}
}

// BenchmarkFind asks for the best divisions of a bay, and of all that brute force would
// have to solve for them solves one: ns/op of the two tell how many times as long the
// search takes.
func BenchmarkFind(b *testing.B) {
	p := projecttest.Demo(b)
	b.Run("search", func(b *testing.B) {
		for b.Loop() {
			Find(p, jars())
		}
	})
	b.Run("one division solved", func(b *testing.B) {
		for b.Loop() {
			layout.Solve(p)
		}
	})
}
