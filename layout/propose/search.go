package propose

import (
	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// search answers one question.
type search struct {
	p      *model.Project
	q      Question
	before layout.Result
	grid   length.Length

	found   []Proposal
	setups  []*setup
	sets    [][]length.Length // of drops, by their number
	steps   int
	solved  int
	stopped bool
	why     message.Message
	error   *check.Finding // the first that stood in the way of a division
}

// run finds the best divisions of each setup one after the other, always that of the
// setup whose next is the best of all.
func (s *search) run() {
	s.grid = s.gridOf()
	var next []*ahead
	for n := max(s.q.Fewest, len(s.q.Things)); n <= s.q.Most; n++ {
		for _, sheet := range s.q.Sheets {
			u := s.measured(n, sheet)
			if u == nil {
				continue
			}
			for _, v := range []*setup{u, s.levelled(u)} {
				if v != nil {
					s.setups = append(s.setups, v)
				}
			}
		}
	}
	for _, u := range s.setups {
		a := &ahead{of: s.finder(u), none: true}
		for i := range a.of.pools {
			if c, ok := s.ahead(a.of, &a.of.pools[i], 0, 0, 0); ok && (a.none || c.less(a.least)) {
				a.least, a.none = c, false
			}
		}
		a.least = a.least.plus(s.given(u))
		next = append(next, a)
	}
	for len(s.found) < s.q.Best {
		var best *ahead
		for _, a := range next {
			if !a.none && (best == nil || a.score().less(best.score())) {
				best = a
			}
		}
		switch {
		case best == nil:
			return
		case best.proposal == nil:
			best.proposal = s.following(best.of)
			best.none = best.proposal == nil
		default:
			s.found = append(s.found, *best.proposal)
			best.proposal = nil
		}
	}
}

// ahead is the next proposal of a setup, nil where it was not looked for yet.
type ahead struct {
	of       *finder
	least    cost // of all its divisions
	proposal *Proposal
	none     bool // there is no further one
}

// score is that of the proposal, or the least that it can be.
func (a *ahead) score() cost {
	if a.proposal != nil {
		return a.proposal.score
	}
	return a.least
}

// gridOf is the step of free heights: the one asked for, or the project's, in a tall
// bay a multiple of it, so that there are not more places than a search can try.
func (s *search) gridOf() length.Length {
	if s.q.Grid > 0 {
		return s.q.Grid
	}
	step := s.p.RoundingStep()
	b := s.before.Plan.BayAt(s.q.At)
	for _, n := range []length.Length{1, 2, 5, 10, 20} {
		if b.Room/(n*step) <= 1200 {
			return n * step
		}
	}
	return 50 * step
}

// finder finds the divisions of a setup, the best first. pools are the divisions that
// it chooses from: all on the grid, or one for each step or factor. past are those that
// are not to be found again: proposals, with what is like them, and what the check
// refuses.
type finder struct {
	*setup
	pools   []pool
	past    []past
	banned  map[ban]bool
	steps   int
	ended   bool // by its limits
	refused int  // by the check, one after the other
}

// pool are divisions: the places that each front's bottom edge can have, of which the
// last are those of the stack's top, and the rule by which they come about. ahead are
// what the rest of a stack costs at least.
type pool struct {
	by     model.Division
	places [][]length.Length
	rest   []map[int][]rest // by the place of the front and the things that are placed; by the index of its place
}

// rest is what the fronts from one upwards cost at least; known where it was looked
// for, none where they don't fit.
type rest struct {
	cost        cost
	known, none bool
}

// past is a division that was found before; none within off of all its divisions is to
// be found again.
type past struct {
	at  []length.Length
	off length.Length
}

// ban is a front that the check refuses: where it is and what it holds. An error of a
// front follows from its own edges and from the runner above it, which follows from the
// upper one of them.
type ban struct {
	k       int
	y, next length.Length
	need    length.Length
}

// finder begins with a setup.
func (s *search) finder(u *setup) *finder {
	f := &finder{setup: u, banned: map[ban]bool{}}
	switch s.q.Style {
	case Free:
		pl := pool{places: make([][]length.Length, u.n+1)}
		for k := range pl.places {
			pl.places[k] = s.places(u, k)
		}
		f.pools = append(f.pools, pl)
	case Equal:
		f.addRule(s, model.Division{Rule: model.DivideEqual})
	case ByStep:
		for _, by := range steps(s.q.By) {
			f.addRule(s, model.Division{Rule: model.DivideStep, Step: by})
		}
	case ByFactor:
		for _, by := range factors(s.q.Factor) {
			f.addRule(s, model.Division{Rule: model.DivideRatio, Ratio: by})
		}
	}
	return f
}

// steps are the steps by which fronts can be taller downwards: the one asked for, or
// those that a person would try.
func steps(by length.Length) (all []length.Length) {
	if by > 0 {
		return []length.Length{by}
	}
	for n := length.Length(5); n <= 100; n += 5 {
		all = append(all, n*length.Millimetre)
	}
	return all
}

// factors are the factors, likewise.
func factors(by float64) (all []float64) {
	if by > 0 {
		return []float64{by}
	}
	for n := 105; n <= 200; n += 5 {
		all = append(all, float64(n)/100)
	}
	return all
}

// addRule adds the one division that a rule gives, as the layout makes it.
func (f *finder) addRule(s *search, by model.Division) {
	p, err := s.redivided(f.setup, nil, by, nil).Apply(s.p)
	if err != nil {
		return
	}
	pl := layout.Solve(p).Plan
	b := pl.BayAt(s.q.At)
	added := pool{by: by, places: make([][]length.Length, f.n+1)}
	for k := range f.n {
		added.places[k] = []length.Length{pl.Fronts[b.First+k].Face.Min.Y}
	}
	added.places[f.n] = []length.Length{f.high}
	f.pools = append(f.pools, added)
}

// following is the next best division of a setup that the check lets pass; nil where
// there is none, or where the search has come to its limits.
func (s *search) following(f *finder) *Proposal {
	for !f.ended {
		var best *division
		for i := range f.pools {
			if d := s.best(f, &f.pools[i]); d != nil && (best == nil || d.cost.less(best.cost)) {
				best = d
			}
		}
		if best == nil || f.ended {
			return nil
		}
		if len(f.past) == mostPast || f.refused == mostRefused*len(f.pools) || s.solved == mostSolved {
			f.ended, s.stopped = true, true
			return nil
		}
		p, ok := s.passed(f, best)
		if ok {
			f.past, f.refused = append(f.past, past{best.at, Apart}), 0
			return p
		}
		f.refused++
	}
	return nil
}

// passed solves the project with a division made; false where the check refuses it,
// which then is not found again.
func (s *search) passed(f *finder, d *division) (*Proposal, bool) {
	s.solved++
	e := s.redivided(f.setup, f.heights(d), d.by, d.things)
	project, err := e.Apply(s.p)
	if err != nil {
		f.past = append(f.past, past{at: d.at})
		return nil, false
	}
	r := layout.Solve(project)
	bad, whole := openErrors(r.Findings, s.q.At), layout.Worse(s.before.Findings, r.Findings) || !f.placed(r, s.q.At, d)
	for _, b := range bad {
		if s.error == nil {
			s.error = b
		}
		// What a drawer weighs goes with its name, and that with what others hold.
		if k := b.Place.Front; k >= 0 && b.FoundKg == 0 {
			f.ban(s, d, k)
		} else {
			whole = true
		}
	}
	if whole {
		f.past = append(f.past, past{at: d.at})
	}
	if whole || len(bad) > 0 {
		return nil, false
	}
	p := &Proposal{Edit: e, Project: project, Result: r, Sheet: f.sheet}
	p.Terms, p.score = judge(r.Plan, s.q.At, d.needs(s.q.Things), &s.q.Weights)
	return p, true
}

// ban keeps a front that the check refuses out of what is found from now on.
func (f *finder) ban(s *search, d *division, k int) {
	next := f.high
	if k+1 < f.n {
		next = d.at[k+1]
	}
	f.banned[ban{k, d.at[k], next, d.needs(s.q.Things)[k]}] = true
}

// placed tells that the layout has put the fronts where they were to be: on hole rows
// it may move them.
func (f *finder) placed(r layout.Result, at model.Place, d *division) bool {
	b := r.Plan.BayAt(at)
	for k := range f.n {
		if r.Plan.Fronts[b.First+k].Face.Min.Y != d.at[k] {
			return false
		}
	}
	return r.Plan.Fronts[b.First+f.n-1].Face.Max.Y == f.high
}

// heights are those of the fronts of a division, nil where its rule gives them.
func (f *finder) heights(d *division) []length.Length {
	if d.by.Rule != model.DivideShares {
		return nil
	}
	all := make([]length.Length, f.n)
	for k := range all {
		next := f.high
		if k+1 < f.n {
			next = d.at[k+1]
		}
		all[k] = f.height(k, d.at[k], next)
	}
	return all
}
