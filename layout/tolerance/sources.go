package tolerance

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Step is a step of the work that adds its error.
type Step uint8

// The steps.
const (
	Cutting Step = iota
	Drilling
	Printing
	Paper
	RunnerHeight
	ConnectorPlay
	steps // how many there are
)

// Steps are all of them.
func Steps() []Step { return []Step{Cutting, Drilling, Printing, Paper, RunnerHeight, ConnectorPlay} }

// Say names a step.
func (s Step) Say() message.Message {
	return [steps]message.Message{
		message.New("cutting"), message.New("drilling"), message.New("the print"), message.New("the paper"),
		message.New("the height of the runners"), message.New("the play of the connectors"),
	}[s]
}

// sizes are the ± in mm of each step.
type sizes [steps]float64

// sizesOf are those of a process that is filled: a template alone has errors of print and
// paper, over 100 mm.
func sizesOf(p *model.Process) sizes {
	s := sizes{Cutting: p.Cutting.MM(), RunnerHeight: p.Runner.MM(), ConnectorPlay: p.Connector.MM()}
	switch p.Drilling {
	case model.ByJig:
		s[Drilling] = p.Jig.MM()
	case model.ByMachine:
		s[Drilling] = p.Machine.MM()
	case model.ByTemplate:
		s[Drilling], s[Printing], s[Paper] = p.Template.MM(), p.Print.MM(), p.Paper.MM()
	}
	return s
}

// source is something that comes out off by itself, by the errors of the steps that it
// names, together.
type source [steps]bool

// parts are the ± of its steps.
func (s *source) parts(t *sizes) []float64 {
	parts := make([]float64, 0, steps)
	for i, has := range s {
		if has {
			parts = append(parts, t[i])
		}
	}
	return parts
}

// sources are all errors of a run, and where each stands in a list of them.
type sources struct {
	plan   *plan.Plan
	all    []source
	fronts []frontSources
	bays   [][]int             // inside width of each bay, by cabinet and bay
	sides  []int               // height of each carcass
	rails  map[model.Place]int // height of each rail, by the front that it is over
	print  int                 // the printer's fault, the same on all templates of the job
	paper  int                 // what the paper moves, the same in one room
}

// frontSources are the errors of one front: of its height at the two connectors, of its
// place across by each of them, of its own size. Moves are how far adjusting moves each
// connector down and up, and the front to a side, in mm.
type frontSources struct {
	up, across    [2]int
	height, width int
	down, lift    float64
	side          float64
	line          [2]float64 // x of its two lines of connector holes, run frame
	level         float64    // y of the middle between its holes, run frame
	above         float64    // height of its holes above its lower edge
}

func (s *sources) add(w source) int {
	s.all = append(s.all, w)
	return len(s.all) - 1
}

func of(all ...Step) source {
	var s source
	for _, step := range all {
		s[step] = true
	}
	return s
}

// sourcesOf lists the errors of a plan.
func sourcesOf(p *plan.Plan) *sources {
	s := &sources{plan: p, rails: map[model.Place]int{}}
	s.print, s.paper = s.add(of(Printing)), s.add(of(Paper))
	for i := range p.Cabinets {
		c := &p.Cabinets[i]
		s.sides = append(s.sides, s.add(of(Cutting)))
		var bays []int
		for j := range c.Bays {
			bays = append(bays, s.add(of(Cutting)))
			for _, r := range c.Bays[j].Rails {
				s.rails[r.Of] = s.add(of(Cutting))
			}
		}
		s.bays = append(s.bays, bays)
	}
	for i := range p.Fronts {
		s.fronts = append(s.fronts, s.front(&p.Fronts[i]))
	}
	return s
}

// front lists the errors of a front. One without connectors is fixed by screws as drilled,
// at its side edges, and not adjusted.
func (s *sources) front(f *plan.Front) frontSources {
	at := frontSources{
		line:  [2]float64{f.Face.Min.X.MM(), f.Face.Max.X.MM()},
		level: f.Face.Centre().Y.MM(),
	}
	up, across := of(Drilling), of(Drilling)
	if f.Fitted {
		up, across = of(Drilling, RunnerHeight, ConnectorPlay), of(Drilling, ConnectorPlay)
		c := &f.Sheet.Connector
		at.down, at.lift, at.side = c.Down().MM(), c.AdjustUp.MM(), c.AdjustSide.MM()
		l, r := f.Face.Min.X+f.EdgeDistance.Left, f.Face.Max.X-f.EdgeDistance.Right
		if l < r {
			at.line = [2]float64{l.MM(), r.MM()}
		}
		if n := len(f.Holes); n > 0 {
			sum := length.Length(0)
			for i := range f.Holes {
				sum += f.Holes[i].At.Y
			}
			at.above = (sum / length.Length(n)).MM()
			at.level = f.Face.Min.Y.MM() + at.above
		}
	}
	at.up = [2]int{s.add(up), s.add(up)}
	at.across = [2]int{s.add(across), s.add(across)}
	at.height, at.width = s.add(of(Cutting)), s.add(of(Cutting))
	return at
}

// form is a sum of errors, each with how much of it counts.
type form map[int]float64

func (f form) plus(scale float64, g form) form {
	for i, x := range g {
		f[i] += scale * x
	}
	return f
}

// line is by how much a front's lower edge is too high at an x of the run.
func (s *sources) line(i int, x float64) form {
	at := &s.fronts[i]
	u := (x - at.line[0]) / (at.line[1] - at.line[0])
	// A hole that is printed too far up brings the front down.
	return form{at.up[0]: 1 - u, at.up[1]: u, s.print: -at.above / 100, s.paper: -at.above / 100}
}

// middle is by how much a front stands too far right at a y of the run: between its
// connectors, turned about the level of its holes by what one is higher than the other.
func (s *sources) middle(i int, y float64) form {
	at, f := &s.fronts[i], &s.plan.Fronts[i]
	turn := (y - at.level) / (at.line[1] - at.line[0])
	m := form{at.across[0]: 0.5, at.across[1]: 0.5, at.up[0]: turn, at.up[1]: -turn}
	last := min(f.Place.Bay+max(f.Bays, 1), len(s.bays[f.Place.Cabinet])) - 1
	return m.plus(0.5, s.bayLeft(f.Place.Cabinet, f.Place.Bay)).plus(0.5, s.bayLeft(f.Place.Cabinet, last+1))
}

// bayLeft is by how much the left edge of a bay's opening stands too far right, from the
// left end of the run; that of one past the last bay is the end of the cabinet.
func (s *sources) bayLeft(cabinet, bay int) form {
	at := form{}
	for i := range s.bays[:cabinet] {
		for _, b := range s.bays[i] {
			at[b] = 1
		}
	}
	for _, b := range s.bays[cabinet][:bay] {
		at[b] = 1
	}
	return at
}
