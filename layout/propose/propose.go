// Package propose finds the best divisions of one bay into drawers, from what is to go
// into them. It searches every division on a grid, and gives the best few by a measure
// whose terms are told one by one.
package propose

import (
	"cmp"
	"slices"

	"frontlay/layout"
	"frontlay/layout/check"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Thing is what a drawer is to hold, and how high it stands there: above the drawer
// bottom's upper face, so that the hardware's clearance is left above it.
type Thing struct {
	Name   string
	Height length.Length
}

// Style is how the heights of the fronts follow each other.
type Style uint8

// The styles: any heights; all equal; taller downwards by a step; by a factor.
const (
	Free Style = iota
	Equal
	ByStep
	ByFactor
)

// Bounds of a question, so that no answer keeps a person waiting.
const (
	MostThings = 8
	MostFronts = 10
	MostAsked  = 12 // proposals
)

// Question is what is to be divided, and how. Each thing gets a drawer of its own; the
// other drawers are for nothing in particular.
type Question struct {
	At           model.Place // the bay
	Things       []Thing
	Fewest, Most int // fronts
	Style        Style
	By           length.Length // ByStep: the step; 0: the best of 5 mm to 100 mm
	Factor       float64       // ByFactor: the factor; 0: the best of 1.05 to 2
	Rows         bool          // free heights: runners above the lowest fall on hole rows
	Grid         length.Length // step of free heights; 0: the project's, or more in a tall bay
	Sheets       []string      // hardware sheets to choose from, by name; none: the bay's own
	Weights      Weights
	Best         int // how many proposals at most
}

// Proposal is one division: the edit that makes it, the project and the result with
// it made, and how it is judged. Sheet names the hardware where that is another one
// than the bay's.
type Proposal struct {
	Edit    edit.Redivide
	Project *model.Project
	Result  layout.Result
	Terms   []Term
	Sheet   string
	score   cost
}

// Points are what a proposal comes to, in millimetres of lost height: less is better.
func (p *Proposal) Points() float64 { return float64(p.score.points) / pointsInMM }

// Answer is what a question leads to: the best proposals, the best first, on a grid.
// Stopped tells that not every division was looked at. Why says what stands in the way
// where there is no proposal.
type Answer struct {
	Proposals []Proposal
	Grid      length.Length
	Stopped   bool
	Why       message.Message
}

// Limits of one search: ways to put a front that are looked at, in all and for one number
// of fronts with one hardware; divisions of one step or factor that the check refuses one
// after the other; projects solved.
const (
	mostSteps   = 8_000_000
	mostOfOne   = 4_000_000
	mostRefused = 24
	mostSolved  = 400
)

// Find answers a question. Every proposal is solved as a whole project: it has no open
// error in its bay, and no error elsewhere that was not there before. No two of as many
// fronts with the same hardware and drops are alike: some division lies more than
// Apart higher or lower. Among divisions that are judged equal those are taken in
// which what is left over is shared most evenly. It is deterministic, and changes
// nothing of the project.
func Find(p *model.Project, q Question) Answer {
	s := &search{p: p, q: q.filled(p), before: layout.Solve(p)}
	if s.why = s.q.impossible(p); s.why.Empty() {
		s.run()
	}
	a := Answer{Proposals: s.found, Grid: s.grid, Stopped: s.stopped}
	if len(a.Proposals) == 0 {
		a.Why = s.reason()
	}
	return a
}

// Apart is how far at least one division of a proposal lies from those of a better one.
const Apart = 20 * length.Millimetre

// filled is a question with what it leaves out.
func (q Question) filled(p *model.Project) Question {
	q.Things = slices.Clone(q.Things)
	slices.SortStableFunc(q.Things, func(a, b Thing) int { return cmp.Compare(b.Height, a.Height) })
	q.At.Front = -1
	q.Best = min(max(q.Best, 1), MostAsked)
	if len(q.Sheets) == 0 {
		q.Sheets = []string{""}
	}
	if b := p.BayAt(q.At); b != nil { // the bay's own by no name, so that it keeps what it has
		for i, name := range q.Sheets {
			if name == b.Hardware || b.Hardware == "" && len(p.Hardware) > 0 && name == p.Hardware[0].Name {
				q.Sheets[i] = ""
			}
		}
	}
	return q
}

// impossible says what no division can mend.
func (q *Question) impossible(p *model.Project) message.Message {
	b := p.BayAt(q.At)
	switch {
	case b == nil:
		return message.New("There is no bay at this place any more. Select one in the drawing.")
	case len(q.Things) > MostThings:
		return message.New("At most %v things can be told. Put what goes into one drawer into one line.", MostThings)
	case q.Fewest < 1 || q.Most > MostFronts || q.Fewest > q.Most:
		return wrongFronts
	case len(q.Things) > q.Most:
		return message.New("%v things want a drawer each, but there are to be %v fronts at most. Allow more fronts, or put what goes into one drawer into one line.", len(q.Things), q.Most)
	}
	for _, t := range q.Things {
		if t.Height < 0 {
			return message.New("%v: a height is above zero.", t.Name)
		}
	}
	if at, ok := linedUpWith(p, q.At); ok {
		return message.New("A front of %v, bay %v, lines up with one of this bay. Give it a height of its own first.", p.CabinetName(at), at.Bay+1)
	}
	if _, err := (edit.Redivide{At: q.At, Fronts: make([]edit.NewFront, q.Most)}).Apply(p); err != nil {
		return message.Of(err)
	}
	return message.Message{}
}

// linedUpWith finds a front of another bay that lines up with one of the bay at a
// place: what it lines up with would be gone.
func linedUpWith(p *model.Project, with model.Place) (model.Place, bool) {
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			at := model.Place{Cabinet: i, Bay: j, Front: -1}
			for _, f := range p.Cabinets[i].Bays[j].Fronts {
				if up := f.LineUp; up != nil && at != with && max(up.Bay, 1) == with.Bay+1 &&
					(up.Cabinet == p.Cabinets[with.Cabinet].Name || up.Cabinet == "" && i == with.Cabinet) {
					return at, true
				}
			}
		}
	}
	return model.Place{}, false
}

// MakesWay lists the fronts of a bay that are no drawers, and those with drawers behind
// them: any proposal puts drawers in the place of the former, and leaves the latter none.
func MakesWay(p *model.Project, at model.Place) (others, inner []string) {
	at.Front = -1
	pl := plan.Make(p)
	b := pl.BayAt(at)
	if b == nil {
		return nil, nil
	}
	for _, f := range pl.Fronts[b.First : b.First+b.Count] {
		switch {
		case f.Kind != model.DrawerFront:
			others = append(others, f.Name)
		case len(p.FrontAt(f.Place).Inner) > 0:
			inner = append(inner, f.Name)
		}
	}
	return others, inner
}

// openErrors finds the open errors in a bay.
func openErrors(found []check.Finding, at model.Place) (all []*check.Finding) {
	for i := range found {
		if f := &found[i]; f.Open() && f.Place.Cabinet == at.Cabinet && f.Place.Bay == at.Bay {
			all = append(all, f)
		}
	}
	return all
}
