// Package tipping weighs what holds a cabinet that stands free against what pulls it
// over when its drawers are open. It is a caution: it says nothing about whether a unit
// is safe or meets a standard.
package tipping

import (
	"cmp"

	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Gravity is the standard acceleration of free fall in m/s² (NIST Special Publication
// 811, appendix B.8).
const Gravity = 9.80665

// Part is something that weighs. Behind is from the pivot back to its centre of gravity
// with all drawers closed, negative before it. Reach is how far it comes out of the
// cabinet: its runner's length; 0: it stays.
type Part struct {
	Name   message.Message
	Kg     float64
	Behind length.Length
	Reach  length.Length
}

// Moment is what the part adds to holding the cabinet, in N·m, when a share of its
// reach is out: weight · distance behind the pivot.
func (p *Part) Moment(out float64) float64 {
	return Gravity * p.Kg * (p.Behind.MM() - out*p.Reach.MM()) / 1000
}

// State is a way in which the cabinet stands: how much of their reach all drawers are
// out, and what is laid on the edge of one of them. Holds and Tips are the sums of the
// moments of what is behind the pivot and before it, in N·m.
type State struct {
	Name        message.Message
	Out         float64
	LoadKg      float64
	Holds, Tips float64
}

// Margin is what is left of holding, in N·m; below zero the cabinet tips.
func (s *State) Margin() float64 { return s.Holds - s.Tips }

// Study is what was found out about one cabinet. Pivot is in the depth frame: the line
// on the floor around which the cabinet would tip.
type Study struct {
	Cabinet   *plan.Cabinet
	Name      message.Message
	Standing  model.Standing
	Pivot     length.Length
	Parts     []Part
	States    []State
	Edge      *plan.Front       // whose edge, pulled out, is furthest before the pivot; nil: no drawer
	EdgeOut   length.Length     // how far that is, with the drawer open
	LoadKg    float64           // that is laid on it
	Height    length.Length     // above the floor, of a fixing to the wall
	NoWeight  []message.Message // what is not counted, as nobody says what it weighs
	NoDensity bool              // among them are boards of the carcass: nothing can be said
}

// twoThirds is how far drawers stand out while somebody reaches into them (common
// practice, no source).
const twoThirds = 2.0 / 3

// Of studies a cabinet by its index. Cabinets that are fixed to the wall have no states.
func Of(p *plan.Plan, i int) Study {
	c := &p.Cabinets[i]
	own := &p.Project.Cabinets[i]
	s := Study{
		Cabinet: c, Name: p.Project.CabinetName(c.Place), Standing: own.Standing(), Pivot: pivot(own, c), LoadKg: p.Project.EdgeLoad(),
		Height: cmp.Or(own.Base.FixedAt, c.Outline.Max.Y),
	}
	s.carcass(p, i)
	for k := range p.Fronts {
		if f := &p.Fronts[k]; f.Place.Cabinet == i && f.Kind != model.OpenNiche {
			s.front(p, f)
		}
	}
	if s.Standing != model.FixedToWall && !s.NoDensity {
		s.weigh()
	}
	return s
}

// pivot is the line around which a cabinet tips, depth frame: the face of its plinth
// board; of one on feet the middle of those in front; else its front edge.
func pivot(own *model.Cabinet, c *plan.Cabinet) length.Length {
	at := own.Base.Setback
	if len(c.Feet) > 0 && own.Base.Kind == model.OnFeet {
		at += c.Feet[0].Width() / 2
	}
	return at
}

// carcass adds the boards.
func (s *Study) carcass(p *plan.Plan, i int) {
	for _, b := range p.Boards(i) {
		of := p.Made(&b)
		if of.Thickness <= 0 {
			s.NoWeight = append(s.NoWeight, message.New("worktop"))
			continue
		}
		kg := length.VolumeM3(b.Rect.Width(), b.Rect.Height(), b.Deep()) * of.Density
		if kg <= 0 {
			s.NoDensity = true
			continue
		}
		s.add(message.New("carcass"), kg, (b.Near+b.Far)/2, 0)
	}
	if s.NoDensity {
		s.NoWeight = append(s.NoWeight, message.New("boards of the carcass"))
	}
}

// front adds a front, the drawer that it pulls out, and the inner ones behind it, with
// what is in them. A door stays closed.
func (s *Study) front(p *plan.Plan, f *plan.Front) {
	near, far := f.Board()
	reach := length.Length(0)
	if f.Fitted {
		reach = f.Runner.Length
	}
	if kg := f.WeightKg(); kg > 0 {
		s.add(message.New("front %v", f.Number), kg, (near+far)/2, reach)
	} else {
		s.NoWeight = append(s.NoWeight, message.New("front %v", f.Number))
	}
	for g := range f.Drawers() {
		if g.Nth > 0 {
			near = g.Runner.Start
		}
		s.drawer(p, g, near)
	}
}

// drawer adds a drawer with what is in it; near is where what it pulls out begins.
func (s *Study) drawer(p *plan.Plan, f *plan.Front, near length.Length) {
	reach := f.Runner.Length
	if reach <= 0 {
		return
	}
	contents, which := p.Project.FrontAt(f.Place).Contents.Weight, message.New("%v", f.Number)
	if f.Nth > 0 {
		contents, which = p.Project.FrontAt(f.Place).Inner[f.Nth-1].Contents.Weight, message.New("%v, inner drawer %v", f.Number, f.Nth)
	}
	middle := f.Runner.Start + reach/2
	if kg := f.DrawerKg(); kg > 0 {
		s.add(message.New("drawer %v", which), kg, middle, reach)
	} else {
		s.NoWeight = append(s.NoWeight, message.New("drawer %v", which))
	}
	// EN 14749: the centre of gravity of a drawer's load is the centre of its usable volume.
	if contents > 0 {
		s.add(message.New("contents of drawer %v", which), contents, middle, reach)
	}
	if out := s.Pivot - near + reach; s.Edge == nil || out >= s.EdgeOut {
		s.Edge, s.EdgeOut = f, out
	}
}

// add adds a part whose centre lies at a depth; what is alike and stays is one.
func (s *Study) add(name message.Message, kg float64, at, reach length.Length) {
	behind := at - s.Pivot
	if n := len(s.Parts) - 1; n >= 0 && reach == 0 && s.Parts[n].Reach == 0 && s.Parts[n].Name.String() == name.String() {
		last := &s.Parts[n]
		sum := last.Kg + kg
		last.Behind = length.FromMM((last.Behind.MM()*last.Kg + behind.MM()*kg) / sum)
		last.Kg = sum
		return
	}
	s.Parts = append(s.Parts, Part{name, kg, behind, reach})
}

// weigh sums up each state.
func (s *Study) weigh() {
	states := []State{{Name: message.New("all drawers closed")}}
	if s.Edge != nil {
		states = append(states,
			State{Name: message.New("all drawers two thirds open"), Out: twoThirds},
			State{Name: message.New("all drawers open"), Out: 1},
			State{Name: message.New("all open, and %v", s.LoadSay()), Out: 1, LoadKg: s.LoadKg},
		)
	}
	for i := range states {
		t := &states[i]
		for k := range s.Parts {
			t.add(s.Parts[k].Moment(t.Out))
		}
		if t.LoadKg > 0 {
			t.add(-s.LoadMoment())
		}
	}
	s.States = states
}

func (s *State) add(moment float64) {
	if moment >= 0 {
		s.Holds += moment
	} else {
		s.Tips -= moment
	}
}

// LoadSay says what is laid on the edge of the worst drawer.
func (s *Study) LoadSay() message.Message {
	return message.New("%v on the edge of front %v", message.Kilograms(s.LoadKg), s.Edge.Number)
}

// LoadMoment is what it takes of holding, in N·m.
func (s *Study) LoadMoment() float64 { return Gravity * s.LoadKg * s.EdgeOut.MM() / 1000 }

// Worst is the state with the least margin; nil where nothing was weighed.
func (s *Study) Worst() *State {
	var worst *State
	for i := range s.States {
		if worst == nil || s.States[i].Margin() < worst.Margin() {
			worst = &s.States[i]
		}
	}
	return worst
}

// Pull is the force in N that a fixing at Height has to give so that the cabinet stands
// in a state: what is missing of the moment, over the height; 0 where nothing is.
func (s *Study) Pull(of *State) float64 {
	if of.Margin() >= 0 || s.Height <= 0 {
		return 0
	}
	return -of.Margin() * 1000 / s.Height.MM()
}

// EdgeKg is how much can lie on the edge of the worst drawer, all of them open, before
// the cabinet tips, in kg; 0 where it tips without.
func (s *Study) EdgeKg() float64 {
	for i := range s.States {
		if t := &s.States[i]; t.Out == 1 && t.LoadKg == 0 && s.EdgeOut > 0 {
			return max(t.Margin(), 0) * 1000 / s.EdgeOut.MM() / Gravity
		}
	}
	return 0
}

// Told says in words what the study comes to; empty where nobody has said whether the
// cabinet stands free.
func (s *Study) Told() message.Message {
	switch worst := s.Worst(); {
	case s.Standing == model.NotSaid:
		return message.Message{}
	case s.Standing == model.FixedToWall:
		return message.New("%v: fixed to the wall, so tipping is not worked out", s.Name)
	case worst == nil:
		return message.New("%v: whether it tips can't be told, as its boards have no density", s.Name)
	case s.Edge == nil:
		return message.New("%v: it has no drawers that open", s.Name)
	case worst.Margin() >= 0:
		return message.New("%v: by these figures it stands with all drawers open and %v on the edge of front %v; %v would tip it", s.Name, message.Kilograms(s.LoadKg), s.Edge.Number, roundedDown(s.EdgeKg()))
	default:
		return message.New("%v: %v; a fixing to the wall at %v would have to hold %v", s.Name, s.Why(), s.Height, message.Newtons(s.Pull(worst)))
	}
}

// Why says with what a cabinet tips; it does.
func (s *Study) Why() message.Message {
	if kg := s.EdgeKg(); kg > 0 {
		return message.New("with all drawers open it tips under %v on the edge of front %v; it is asked to hold %v there", roundedDown(kg), s.Edge.Number, message.Kilograms(s.LoadKg))
	}
	return message.New("it tips as soon as all drawers are open, even with nothing on the edge of front %v; it is asked to hold %v there", s.Edge.Number, message.Kilograms(s.LoadKg))
}

// roundedDown is a weight in kg that is said in tenths of its unit, rounded down: more
// would tip.
type roundedDown float64

// Say writes the weight with its unit.
func (kg roundedDown) Say(l message.Language) string { return message.Kilograms(kg).RoundedDown(l) }
