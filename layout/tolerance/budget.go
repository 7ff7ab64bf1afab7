package tolerance

import (
	"maps"
	"slices"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

// Budget tells what comes of a process for the gaps of a plan.
type Budget struct {
	Process *model.Process // with the usual figures where it gives none
	Gaps    []Gap          // in the order of plan.Gaps
	sizes   sizes
	sources *sources
}

// Gap is a gap with the errors that come to it.
type Gap struct {
	plan.Gap
	terms        []term
	front, other int // indexes in the plan; -1: it is set against a board
}

// term is how much of an error comes to a gap at its two ends: left and right, or bottom
// and top. Above zero it grows.
type term struct {
	source int
	p, q   float64
}

// Of makes the budget of a plan; what its project says nothing of is as usual.
func Of(p *plan.Plan) *Budget {
	process := p.Project.Process.Filled()
	b := &Budget{Process: process, sizes: sizesOf(process), sources: sourcesOf(p)}
	index := make(map[*plan.Front]int, len(p.Fronts))
	for i := range p.Fronts {
		index[&p.Fronts[i]] = i
	}
	for _, g := range p.Gaps() {
		v := Gap{Gap: g, front: index[g.Front], other: -1}
		if g.Other != nil {
			v.other = index[g.Other]
		}
		from, to := g.Span()
		v.terms = terms(b.sources.gap(&v, from.MM()), b.sources.gap(&v, to.MM()))
		b.Gaps = append(b.Gaps, v)
	}
	return b
}

// Errors is how many errors of their own a run has.
func (b *Budget) Errors() int { return len(b.sources.all) }

// gap is by how much a gap is too wide at an x or a y of the run.
func (s *sources) gap(g *Gap, at float64) form {
	sign := g.Edge.Sign()
	return form{}.plus(sign, s.edge(g.front, g.Edge, at)).plus(-sign, s.against(g, at))
}

// edge is by how much an edge of a front lies too far right or up.
func (s *sources) edge(i int, e plan.Edge, at float64) form {
	f := &s.fronts[i]
	switch e {
	case plan.LeftEdge:
		return s.middle(i, at).plus(-0.5, form{f.width: 1})
	case plan.RightEdge:
		return s.middle(i, at).plus(0.5, form{f.width: 1})
	case plan.TopEdge:
		return s.line(i, at).plus(1, form{f.height: 1})
	}
	return s.line(i, at)
}

// against is the same of what a gap is set against: heights are measured from the
// carcass's lower edge.
func (s *sources) against(g *Gap, at float64) form {
	if g.other >= 0 {
		return s.edge(g.other, g.Edge.Opposite(), at)
	}
	f := g.Front
	bays := s.bays[f.Place.Cabinet]
	first, last := 0, len(bays)
	if f.Inset {
		first, last = f.Place.Bay, min(f.Place.Bay+max(f.Bays, 1), len(bays))
	}
	switch g.Edge {
	case plan.LeftEdge:
		return s.bayLeft(f.Place.Cabinet, first)
	case plan.RightEdge:
		return s.bayLeft(f.Place.Cabinet, last)
	}
	for _, r := range s.plan.Cabinets[f.Place.Cabinet].Bays[f.Place.Bay].Rails {
		if g.Against == r.Rect.Min.Y || g.Against == r.Rect.Max.Y {
			return form{s.rails[r.Of]: 1}
		}
	}
	if g.Edge == plan.TopEdge {
		return form{s.sides[f.Place.Cabinet]: 1}
	}
	return form{}
}

// terms joins what comes to both ends, without what cancels out.
func terms(p, q form) []term {
	all := map[int]term{}
	for i, x := range p {
		all[i] = term{i, x, 0}
	}
	for i, x := range q {
		all[i] = term{i, p[i], x}
	}
	var list []term
	for _, i := range slices.Sorted(maps.Keys(all)) {
		if t := all[i]; t.p != 0 || t.q != 0 {
			list = append(list, t)
		}
	}
	return list
}

// Spread is how far a gap comes from its planned size: Worst at the worse of its ends,
// where all is off by its full ± at once; Likely in its middle, in nineteen of twenty;
// Wedge by how much its ends then differ; End at the worse of its ends.
type Spread struct{ Worst, Likely, Wedge, End length.Length }

// Spread of a gap of the budget.
func (b *Budget) Spread(g *Gap) Spread {
	var p, q, middle, wedge []float64
	for _, t := range g.terms {
		for _, part := range b.sources.all[t.source].parts(&b.sizes) {
			p, q = append(p, t.p*part), append(q, t.q*part)
			middle, wedge = append(middle, (t.p+t.q)/2*part), append(wedge, (t.q-t.p)*part)
		}
	}
	return Spread{
		Worst:  length.FromMM(max(Worst(p...), Worst(q...))),
		Likely: length.FromMM(Likely(middle...)),
		Wedge:  length.FromMM(Likely(wedge...)),
		End:    length.FromMM(max(Likely(p...), Likely(q...))),
	}
}

// ends are a gap's errors at its ends as one distribution.
func (b *Budget) ends(g *Gap) ends {
	var e ends
	for _, t := range g.terms {
		for _, part := range b.sources.all[t.source].parts(&b.sizes) {
			e.p, e.q, e.pq = e.p+t.p*t.p*part*part, e.q+t.q*t.q*part*part, e.pq+t.p*t.q*part*part
		}
	}
	return e
}

// Before is the share of cabinets in which a gap is as wanted at both its ends as it is
// hung, without adjusting.
func (b *Budget) Before(g *Gap) float64 { return b.ends(g).within(b.band()) }

// band is how far a gap may be from its planned size, in mm; a size of nothing is as good
// as none.
func (b *Budget) band() float64 { return max(b.Process.Within.MM(), tiny) }

// Reach is by how much adjusting makes a gap wider and narrower, whichever is less: what
// both fronts beside it can be moved.
func (b *Budget) Reach(g *Gap) length.Length {
	wider, narrower := 0.0, 0.0
	for _, i := range []int{g.front, g.other} {
		if i < 0 {
			continue
		}
		f := &b.sources.fronts[i]
		switch {
		case g.Vertical:
			wider, narrower = wider+f.side, narrower+f.side
		case (i == g.front) == (g.Edge == plan.BottomEdge): // it stands above the gap
			wider, narrower = wider+f.lift, narrower+f.down
		default:
			wider, narrower = wider+f.down, narrower+f.lift
		}
	}
	return length.FromMM(min(wider, narrower))
}

// Short is by how much adjusting falls short of bringing a gap to where it is wanted, in
// nineteen of twenty cabinets; 0 or less where it is enough. Each gap is judged by itself.
func (b *Budget) Short(g *Gap) length.Length {
	return b.Spread(g).End - *b.Process.Within - b.Reach(g)
}

// Largest is the step that brings most of the spread of all gaps; false where none brings
// any.
func (b *Budget) Largest() (Step, bool) {
	var sums [steps]float64
	for i := range b.Gaps {
		for _, t := range b.Gaps[i].terms {
			for step, has := range b.sources.all[t.source] {
				if has {
					sums[step] += (t.p*t.p + t.q*t.q) * b.sizes[step] * b.sizes[step]
				}
			}
		}
	}
	most := Step(0)
	for i, sum := range sums {
		if sum > sums[most] {
			most = Step(i)
		}
	}
	return most, sums[most] > 0
}

// Size is the ± of a step.
func (b *Budget) Size(s Step) length.Length { return length.FromMM(b.sizes[s]) }

// Halved is the budget with half the ± of a step.
func (b *Budget) Halved(s Step) *Budget {
	half := *b
	half.sizes[s] /= 2
	return &half
}
