// Package asbuilt works out how hung fronts are to be adjusted: from the gaps measured around
// them, which connector to move which way and how far, so that the gap that is furthest from what
// it is to be is as near to it as the connectors allow.
package asbuilt

import (
	"cmp"
	"math"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
)

// Step is the step of what is moved where the hardware sheet tells no turns: what a rule shows
// between two of its marks (common practice, no source).
const Step = length.Millimetre / 10

// QuartersInATurn is how finely turns are told: a quarter is seen without a mark on the screw.
const QuartersInATurn = 4

// End is one measured end of a gap: the left or lower one, or the Second. Wanted and Measured are
// its size, After what it becomes.
type End struct {
	Gap                     plan.Gap
	Second                  bool
	Wanted, Measured, After length.Length
}

// Off is how far the end is from what it is to be, before and after.
func (e *End) Off() (before, after length.Length) {
	return (e.Measured - e.Wanted).Abs(), (e.After - e.Wanted).Abs()
}

// Move is what to do at one front, from the middle of its connectors' way: its left and its right
// connector up, the whole front to the right; below zero the other way. Quarters are the same in quarter
// turns where the sheet tells what a turn moves, 0 else.
type Move struct {
	Front                                        *plan.Front
	Left, Right, Aside                           length.Length
	LeftQuarters, RightQuarters, SidewayQuarters int
}

// None tells that the front stays as it is.
func (m *Move) None() bool { return m.Left == 0 && m.Right == 0 && m.Aside == 0 }

// Result is what to do. Ends are in the order of the gaps of the plan, Moves in the order of work: bottom up,
// bay after bay. Before and After are the largest distance of an end from what it is to be; Least
// is what could be reached if screws stopped anywhere.
type Result struct {
	Ends          []End
	Moves         []Move
	Before, After length.Length
	Least         length.Length
	Stuck         []*plan.Front // measured, and their connectors do not adjust, or the sheet does not say
}

// Of works out what to do from the gaps that a project's fronts have beside them; nil where none
// was measured. A gap that was not measured is not looked after.
func Of(p *plan.Plan) *Result {
	s := &solver{plan: p, at: map[*plan.Front]int{}}
	for _, g := range p.Gaps() {
		f := p.Project.FrontAt(g.Front.Place)
		if f == nil || f.AsBuilt == nil {
			continue
		}
		ends := [...]model.GapEnds{plan.LeftEdge: f.AsBuilt.Left, plan.RightEdge: f.AsBuilt.Right, plan.BottomEdge: f.AsBuilt.Below, plan.TopEdge: f.AsBuilt.Above}[g.Edge]
		for i, v := range []*length.Length{ends.First, ends.Second} {
			if v != nil {
				s.ends = append(s.ends, End{Gap: g, Second: i == 1, Wanted: g.Size, Measured: *v})
			}
		}
	}
	if len(s.ends) == 0 {
		return nil
	}
	return s.solve()
}

// The three things that can be moved at a front.
const (
	leftUp = iota
	rightUp
	toRight
	ways
)

// way is one of them at one front: what it can be moved in steps.
type way struct {
	front     *plan.Front
	which     int
	step      float64 // mm
	low, high int     // how many steps each way
	turns     bool    // a step is a quarter of a turn
}

// solver has all ways and ends, and how each end grows with each way.
type solver struct {
	plan  *plan.Plan
	ends  []End
	at    map[*plan.Front]int // where the ways of a front begin
	ways  []way
	grows [][]float64 // by end and way
	stuck []*plan.Front
	of    []int // the ways of the whole that a part has
}

func (s *solver) solve() *Result {
	for i := range s.ends {
		for _, f := range []*plan.Front{s.ends[i].Gap.Front, s.ends[i].Gap.Other} {
			if f != nil {
				s.add(f)
			}
		}
	}
	s.grows = make([][]float64, len(s.ends))
	for i := range s.ends {
		s.grows[i] = make([]float64, len(s.ways))
		e := &s.ends[i]
		s.grow(s.grows[i], e, e.Gap.Front, e.Gap.Edge.Sign())
		if e.Gap.Other != nil {
			s.grow(s.grows[i], e, e.Gap.Other, -e.Gap.Edge.Sign())
		}
	}
	off, steps, least := make([]float64, len(s.ends)), make([]int, len(s.ways)), 0.0
	for i := range s.ends {
		off[i] = (s.ends[i].Measured - s.ends[i].Wanted).MM()
	}
	for _, c := range s.clusters() {
		part := s.only(c)
		mine := make([]float64, len(c))
		for n, i := range c {
			mine[n] = off[i]
		}
		found, low := part.steps(mine)
		least = max(least, low)
		for n, j := range part.of {
			steps[j] = found[n]
		}
	}
	return s.result(off, steps, least)
}

// clusters are the ends that hang together by ways that move several of them: what is best for
// one cluster is nothing to another.
func (s *solver) clusters() [][]int {
	of := make([]int, len(s.ends)) // which cluster an end is in, by its lowest end
	for i := range of {
		of[i] = i
	}
	for j := range s.ways {
		first := -1
		for i := range s.ends {
			if s.grows[i][j] == 0 {
				continue
			}
			if first < 0 {
				first = i
				continue
			}
			a, b := of[first], of[i]
			for k := range of {
				if of[k] == a || of[k] == b {
					of[k] = min(a, b)
				}
			}
		}
	}
	var all [][]int
	for c := range of {
		var ends []int
		for i := range of {
			if of[i] == c {
				ends = append(ends, i)
			}
		}
		if len(ends) > 0 {
			all = append(all, ends)
		}
	}
	return all
}

// only is the solver of some ends and the ways that move them.
func (s *solver) only(ends []int) *solver {
	part := &solver{grows: make([][]float64, len(ends))}
	for j := range s.ways {
		moves := false
		for _, i := range ends {
			moves = moves || s.grows[i][j] != 0
		}
		if !moves {
			continue
		}
		part.of, part.ways = append(part.of, j), append(part.ways, s.ways[j])
		for n, i := range ends {
			part.grows[n] = append(part.grows[n], s.grows[i][j])
		}
	}
	return part
}

// add gives a front its ways, where its connectors can move it.
func (s *solver) add(f *plan.Front) {
	if _, ok := s.at[f]; ok {
		return
	}
	s.at[f] = -1
	if !f.Fitted {
		if f.Kind == model.DrawerFront {
			s.stuck = append(s.stuck, f)
		}
		return
	}
	c := &f.Sheet.Connector
	if c.AdjustUp <= 0 && c.Down() <= 0 && c.AdjustSide <= 0 {
		s.stuck = append(s.stuck, f)
		return
	}
	s.at[f] = len(s.ways)
	for which := range ways {
		down, up, turn := c.Down(), c.AdjustUp, c.PerTurn
		if which == toRight {
			down, up, turn = c.AdjustSide, c.AdjustSide, c.PerTurnSide
		}
		step := cmp.Or(turn/QuartersInATurn, StepIn(s.plan.Project.Unit))
		s.ways = append(s.ways, way{f, which, step.MM(), -int(down / step), int(up / step), turn >= QuartersInATurn})
	}
}

// grow adds how an end of a gap grows with the ways of a front at it; grows is 1 where it does as
// the front goes up or right.
//
// The front turns as a rigid board: its connectors stand their edge distances from its sides, and
// what one is moved more than the other over what is between them tilts it, about the height of its
// connectors.
func (s *solver) grow(row []float64, e *End, f *plan.Front, grows float64) {
	k := s.at[f]
	if k < 0 {
		return
	}
	left, right := f.Face.Min.X+f.EdgeDistance.Left, f.Face.Max.X-f.EdgeDistance.Right
	between := (right - left).MM()
	if between <= 0 {
		return
	}
	at := where(e)
	if e.Gap.Vertical {
		tilt := (at - connectorsAt(f)) / between // by which it goes to the left
		row[k+leftUp] += grows * tilt
		row[k+rightUp] -= grows * tilt
		row[k+toRight] += grows
		return
	}
	part := (at - left.MM()) / between
	row[k+leftUp] += grows * (1 - part)
	row[k+rightUp] += grows * part
}

// where is the place of an end along its gap, mm: where both fronts still stand at it.
func where(e *End) float64 {
	at, to := e.Gap.Span()
	if e.Second {
		at = to
	}
	return at.MM()
}

// connectorsAt is the height about which a front tilts: the middle of its connectors' holes, run
// frame, mm.
func connectorsAt(f *plan.Front) float64 {
	sum, n := 0.0, 0
	for _, h := range f.Holes {
		if h.Kind == plan.ConnectorHole {
			sum, n = sum+h.At.Y.MM(), n+1
		}
	}
	if n == 0 {
		return f.Face.Centre().Y.MM()
	}
	return f.Face.Min.Y.MM() + sum/float64(n)
}

// result puts steps into words of the plan.
func (s *solver) result(off []float64, steps []int, least float64) *Result {
	r := &Result{Ends: s.ends, Stuck: s.stuck, Least: length.FromMM(least)}
	after := s.after(off, steps)
	for i := range r.Ends {
		e := &r.Ends[i]
		e.After = e.Wanted + length.FromMM(after[i])
		was, is := e.Off()
		r.Before, r.After = max(r.Before, was), max(r.After, is)
	}
	for i := range s.plan.Fronts {
		k, ok := s.at[&s.plan.Fronts[i]]
		if !ok || k < 0 {
			continue
		}
		m := Move{Front: &s.plan.Fronts[i]}
		for n, to := range []struct {
			size     *length.Length
			quarters *int
		}{{&m.Left, &m.LeftQuarters}, {&m.Right, &m.RightQuarters}, {&m.Aside, &m.SidewayQuarters}} {
			*to.size = length.FromMM(s.ways[k+n].step * float64(steps[k+n]))
			if s.ways[k+n].turns {
				*to.quarters = steps[k+n]
			}
		}
		if !m.None() {
			r.Moves = append(r.Moves, m)
		}
	}
	return r
}

// after is how far each end is off after so many steps, mm.
func (s *solver) after(off []float64, steps []int) []float64 {
	a := make([]float64, len(off))
	for i := range off {
		a[i] = off[i]
		for j, n := range steps {
			a[i] += s.grows[i][j] * s.ways[j].step * float64(n)
		}
	}
	return a
}

// worst is the largest distance from nothing.
func worst(off []float64) float64 {
	most := 0.0
	for _, v := range off {
		most = max(most, math.Abs(v))
	}
	return most
}
