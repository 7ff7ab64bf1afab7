package propose

import (
	"fmt"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/projecttest"
	"frontlay/model"
	"frontlay/model/length"
)

// randomBay draws a project of two or three bays side by side, with hardware, gaps,
// rows and rounding of any kind, and a question about one of them with a coarse grid.
func randomBay(t *rapid.T, from *model.Project) (*model.Project, Question) {
	mm := func(what string, low, high int) length.Length {
		return length.MM(int64(rapid.IntRange(low, high).Draw(t, what)))
	}
	p := from.Clone()
	p.Cabinets = p.Cabinets[:1]
	p.Checks.Accepted = nil
	p.Rounding.Rest = model.RestTo(rapid.IntRange(0, 1).Draw(t, "rest"))
	p.HoleRows.Mode = model.RowMode(rapid.IntRange(0, 1).Draw(t, "rows"))
	p.HoleRows.Pitch = mm("pitch", 20, 64)
	p.HoleRows.Datum = mm("datum", 0, 40)
	p.Reveals.Gap, p.Reveals.Top, p.Reveals.Bottom = mm("gap", 2, 8), mm("top", 0, 4), mm("bottom", 0, 12)
	c := &p.Cabinets[0]
	c.Height, c.Width = mm("height", 280, 500), length.MM(1200)
	c.Mount = model.Mount(rapid.IntRange(0, 1).Draw(t, "mount"))
	c.Rail = model.Rail{Height: mm("rail", 0, 1) * 20, Depth: length.MM(60)}
	bay := model.Bay{Hardware: rapid.SampledFrom([]string{"main", "boxes"}).Draw(t, "sheet"), Fronts: []model.Front{{Name: "Jars"}, {Name: "Brushes"}}}
	beside := bay.Clone()
	beside.Fronts[0].Height = mm("line", 80, 240)
	c.Bays = []model.Bay{beside, bay}
	if rapid.Bool().Draw(t, "both sides") {
		other := beside.Clone()
		other.Fronts[0].Height = mm("other line", 80, 240)
		c.Bays = append(c.Bays, other)
	}
	if rapid.Bool().Draw(t, "cover") {
		c.Bays[1].Fronts[1].Cover = mm("cover asked", 0, 24)
	}
	q := Question{
		At: model.Place{Bay: 1, Front: -1}, Fewest: rapid.IntRange(1, 3).Draw(t, "fewest"), Most: 3, Best: 3,
		Style: Style(rapid.SampledFrom([]int{0, 0, 0, 1, 2, 3}).Draw(t, "style")), Grid: mm("grid", 45, 90),
	}
	for i := range rapid.IntRange(0, 2).Draw(t, "things") {
		q.Things = append(q.Things, Thing{[]string{"Jars", "Sieves"}[i], mm("thing", 1, 14) * 10})
	}
	if rapid.Bool().Draw(t, "any sheet") {
		q.Sheets = []string{"main", "boxes"}
	}
	for i := range q.Weights {
		q.Weights[i], _ = WeightOf(float64(rapid.SampledFrom([]int{0, 1, 1, 5, 20, 200}).Draw(t, "weight")))
	}
	if rapid.IntRange(0, 9).Draw(t, "asked") > 0 { // else all are tried, which takes its time
		q.By, q.Factor = mm("by", 1, 40), 1+float64(rapid.IntRange(1, 40).Draw(t, "factor"))/40
	}
	return p, q
}

// tried is one division that was tried by brute force, and what it comes to.
type tried struct {
	kind  string // as many fronts, with the same hardware and drops
	at    []length.Length
	score cost
}

func kindOf(p *Proposal) string {
	drop := "level with the runners"
	if len(p.Edit.Fronts) > 1 && p.Edit.Fronts[1].Drop != nil {
		drop = "drops of the lowest"
	}
	return fmt.Sprint(len(p.Edit.Fronts), p.Sheet, drop)
}

// bottoms are the bottom edges of the fronts of a bay.
func bottoms(r layout.Result, at model.Place) (all []length.Length) {
	b := r.Plan.BayAt(at)
	for _, f := range r.Plan.Fronts[b.First : b.First+b.Count] {
		all = append(all, f.Face.Min.Y)
	}
	return all
}

// force makes every division of a question one after the other, solves it, and keeps
// those without an error: no bound, no order, nothing left out.
func force(p *model.Project, q Question) (all []tried) {
	s := &search{p: p, q: q.filled(p), before: layout.Solve(p)}
	q = s.q
	for n := max(q.Fewest, len(q.Things)); n <= q.Most; n++ {
		for _, sheet := range q.Sheets {
			for _, level := range []bool{false, true} {
				if level && (p.HoleRows.Mode != model.RowsFree || n == 1) {
					continue
				}
				u := s.measured(n, sheet) // only for the drop of the lowest and for the room
				if u == nil || level && !slices.ContainsFunc(u.fronts, func(f front) bool { return f.drop != u.fronts[0].drop }) {
					continue
				}
				u.level = level
				add := func(heights []length.Length, by model.Division, things []int) {
					e := s.redivided(u, heights, by, things)
					project, err := e.Apply(p)
					if err != nil {
						return
					}
					r := layout.Solve(project)
					if len(openErrors(r.Findings, q.At)) > 0 || layout.Worse(s.before.Findings, r.Findings) {
						return
					}
					needs := make([]length.Length, n)
					for k, t := range things {
						if t >= 0 {
							needs[k] = q.Things[t].Height
						}
					}
					_, score := judge(r.Plan, q.At, needs, &q.Weights)
					one := Proposal{Edit: e, Sheet: sheet}
					all = append(all, tried{kindOf(&one), bottoms(r, q.At), score})
				}
				deal(n, len(q.Things), func(things []int) {
					switch q.Style {
					case Free:
						eachHeights(p, u, q.Grid, func(heights []length.Length) { add(heights, model.Division{}, things) })
					case Equal:
						add(nil, model.Division{Rule: model.DivideEqual}, things)
					case ByStep:
						for _, by := range steps(q.By) {
							add(nil, model.Division{Rule: model.DivideStep, Step: by}, things)
						}
					default:
						for _, by := range factors(q.Factor) {
							add(nil, model.Division{Rule: model.DivideRatio, Ratio: by}, things)
						}
					}
				})
			}
		}
	}
	return all
}

// deal calls do for every way to put each of some things into one of n drawers.
func deal(n, things int, do func([]int)) {
	at := slices.Repeat([]int{-1}, n)
	var next func(t int)
	next = func(t int) {
		if t == things {
			do(slices.Clone(at))
			return
		}
		for k := range at {
			if at[k] < 0 {
				at[k] = t
				next(t + 1)
				at[k] = -1
			}
		}
	}
	next(0)
}

// eachHeights calls do for all heights on a grid that a stack can have; the front that
// takes the odd rest has what is left.
func eachHeights(p *model.Project, u *setup, grid length.Length, do func([]length.Length)) {
	room := u.high - u.low
	for _, g := range u.gaps[:u.n-1] {
		room -= g
	}
	rest := 0
	if p.Rounding.Rest == model.RestTop {
		rest = u.n - 1
	}
	heights := make([]length.Length, u.n)
	var next func(k int, left length.Length)
	next = func(k int, left length.Length) {
		switch {
		case k == u.n:
			if left > 0 {
				heights[rest] = left
				do(slices.Clone(heights))
			}
		case k == rest:
			next(k+1, left)
		default:
			for h := grid; h < left; h += grid {
				heights[k] = h
				next(k+1, left-h)
			}
		}
	}
	next(0, room)
}

// Each proposal is as good as the best of all divisions that brute force finds, those
// like a better proposal left out; where there is no further proposal there is no
// further division.
func TestFindEqualsBruteForce(t *testing.T) {
	demo := projecttest.Demo(t)
	proposals, stopped := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		p, q := randomBay(t, demo)
		a := Find(p, q)
		if a.Stopped { // as where the check refuses whatever it is shown
			stopped++
			return
		}
		all := force(p, q)
		for i := range q.Best {
			var best *tried
			for k := range all {
				if best == nil || all[k].score.less(best.score) {
					best = &all[k]
				}
			}
			if i >= len(a.Proposals) {
				if best != nil {
					t.Fatalf("%d proposals, but there is one more: %+v (%v)", len(a.Proposals), *best, a.Why)
				}
				break
			}
			got := &a.Proposals[i]
			if best == nil {
				t.Fatalf("proposal %d, %v of %v, is not found by force", i+1, got.Heights(), got.score)
			}
			if got.score != best.score {
				t.Fatalf("proposal %d is %v of %v; by force it is %+v", i+1, got.Heights(), got.score, *best)
			}
			proposals++
			kind, at := kindOf(got), bottoms(got.Result, q.At)
			all = slices.DeleteFunc(all, func(o tried) bool {
				if o.kind != kind {
					return false
				}
				for k := range at {
					if (o.at[k] - at[k]).Abs() > Apart {
						return false
					}
				}
				return true
			})
		}
	})
	if proposals < 20 || stopped > proposals/10 {
		t.Errorf("only %d proposals, and %d small questions were not answered to their end", proposals, stopped)
	}
}

// No proposal has an error, in its bay or elsewhere, that was not there before; its
// heights add up, and its terms to its points.
func TestProposalsHaveNoError(t *testing.T) {
	demo := projecttest.Demo(t)
	rapid.Check(t, func(t *rapid.T) {
		p, q := randomBay(t, demo)
		p.HoleRows.Mode = model.RowMode(rapid.IntRange(0, 2).Draw(t, "any mode of rows"))
		q.Rows = rapid.Bool().Draw(t, "on rows")
		q.Grid = 0
		before := layout.Solve(p)
		a := Find(p, q)
		if len(a.Proposals) == 0 && a.Why.Empty() {
			t.Fatal("no proposal and no reason")
		}
		for _, x := range a.Proposals {
			project, err := x.Edit.Apply(p)
			if err != nil {
				t.Fatal(err)
			}
			r := layout.Solve(project)
			for i := range r.Findings {
				f := &r.Findings[i]
				if f.Severity == check.Error && f.Place.Bay == q.At.Bay {
					t.Fatalf("%v has an error: %v", x.Heights(), f.What)
				}
			}
			if layout.Worse(before.Findings, r.Findings) {
				t.Fatalf("%v makes an error elsewhere", x.Heights())
			}
			sum := 0.0
			for _, term := range x.Terms {
				sum += term.Points()
			}
			if d := sum - x.Points(); d > 1e-6 || d < -1e-6 {
				t.Fatalf("terms come to %v, points to %v", sum, x.Points())
			}
			if q.Rows && q.Style == Free {
				rows, b := p.HoleRows.Filled(), r.Plan.BayAt(q.At)
				for _, f := range r.Plan.Fronts[b.First+1 : b.First+b.Count] {
					if up := f.Runner.Screws[0].Y - p.Cabinets[0].Plinth - rows.Datum; up%rows.Pitch != 0 {
						t.Fatalf("%v: a runner's screw is %v above the first row, %v apart", x.Heights(), up, rows.Pitch)
					}
				}
			}
		}
	})
}

// Raising the weight of a term never makes the best proposal worse in it, and a weight
// of 0 leaves it out.
func TestWeightsAct(t *testing.T) {
	demo := projecttest.Demo(t)
	rapid.Check(t, func(t *rapid.T) {
		p, q := randomBay(t, demo)
		q.Best = 1
		a := Find(p, q)
		if len(a.Proposals) == 0 {
			return
		}
		m := rapid.SampledFrom(Measures()).Draw(t, "term")
		before := a.Proposals[0].Terms[m]
		if q.Weights[m] == 0 && before.Points() != 0 {
			t.Fatalf("%v weighs nothing and comes to %v", m.Key(), before.Points())
		}
		q.Weights[m] += Weight(rapid.Int64Range(1, 200_000).Draw(t, "more"))
		after := Find(p, q).Proposals[0].Terms[m]
		if after.Count > before.Count || after.Height > before.Height {
			t.Fatalf("%v weighs more, and the best is worse in it: %+v, then %+v", m.Key(), before, after)
		}
	})
}

// On hole rows, asked for or kept by the project, the best of two fronts is the best of
// all that brute force finds to the millimetre with the upper runner on a row.
func TestRowsEqualBruteForce(t *testing.T) {
	for _, mode := range []model.RowMode{model.RowsFree, model.RowsMoveFronts} {
		p := projecttest.Demo(t)
		p.Cabinets[0].Height, p.HoleRows.Mode, p.HoleRows.Datum = mm(480), mode, mm(9)
		q := Question{At: model.Place{Front: -1}, Fewest: 2, Most: 2, Best: 1, Rows: true, Grid: length.Millimetre, Weights: UsualWeights(), Things: []Thing{{"Jars", mm(110)}}}
		a := Find(p, q)
		if len(a.Proposals) == 0 {
			t.Fatal(a.Why)
		}
		rows, best, tries := p.HoleRows.Filled(), (*tried)(nil), force(p, q) // moved to rows where the project says so
		screw := a.Proposals[0].Result.Plan.Fronts[1].Runner
		up := screw.Screws[0].Y - screw.Lower
		for i := range tries {
			k := &tries[i]
			if k.kind == kindOf(&a.Proposals[0]) && (k.at[1]+up-p.Cabinets[0].Plinth-rows.Datum)%rows.Pitch == 0 && (best == nil || k.score.less(best.score)) {
				best = k
			}
		}
		if got := bottoms(a.Proposals[0].Result, q.At); best == nil || a.Proposals[0].score.points != best.score.points {
			t.Errorf("mode %v: the best is %v, by force %+v", mode, got, best)
		}
	}
}
