package opening

import (
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Bay is the study of a bay whose opening was measured.
type Bay struct {
	Cabinet *plan.Cabinet
	Name    message.Message // of the cabinet
	Bay     *plan.Bay
	Shape   *Shape
	Best    Best
	Packing []Packing
	Aside   length.Length // by which all drawers stand to the right of the middle of the best fronts
}

// OfBay studies the bay at a place; nil where its opening was not measured.
func OfBay(p *plan.Plan, at model.Place) *Bay {
	at.Front = -1
	src, b := p.Project.BayAt(at), p.BayAt(at)
	if src == nil || b == nil || src.Measured == nil {
		return nil
	}
	s := &Bay{Cabinet: &p.Cabinets[at.Cabinet], Name: p.Project.CabinetName(at), Bay: b}
	s.Shape = Of(src.Measured, b.Opening.Width(), b.Opening.Height())
	s.Best = s.Shape.BestFronts(b.Stack, b.Opening, WantedReveals(s.Cabinet, at.Bay))
	s.Packing, s.Aside = s.Shape.PackingList(p, b, s.Best)
	return s
}

// Bays are the studies of all bays whose openings were measured, in the order of the run.
func Bays(p *plan.Plan) []*Bay {
	var all []*Bay
	for i := range p.Cabinets {
		for j := range p.Cabinets[i].Bays {
			if s := OfBay(p, model.Place{Cabinet: i, Bay: j, Front: -1}); s != nil {
				all = append(all, s)
			}
		}
	}
	return all
}

// Where names the opening.
func (s *Bay) Where() message.Message {
	if len(s.Cabinet.Bays) == 1 {
		return s.Name
	}
	return message.New("%v, bay %v", s.Name, s.Bay.Place.Bay+1)
}

// Told is what it comes to.
func (s *Bay) Told() message.Message {
	return message.New("measured opening of %v: %v %v", s.Where(), s.Shape.Verdict(), s.BestSay())
}

// BestSay is the sentence on the best fronts.
func (s *Bay) BestSay() message.Message {
	b := &s.Best
	spread := length.Length(0)
	for _, r := range b.Reveals {
		spread = max(spread, r.Spread())
	}
	return message.New("The best fronts fill %v × %v (planned %v × %v); their gaps to the opening then differ by up to %v along an edge.",
		b.Width, Shown(b.Height), b.PlannedWidth, b.PlannedHeight, Shown(spread))
}

// TurnedSay tells how much higher the runners stand at one side, as the best fronts are turned
// against the bottom; empty where they are not.
func (s *Bay) TurnedSay() message.Message {
	higher, side := Shown(s.Best.Rises), message.New("right")
	if higher < 0 {
		higher, side = -higher, message.New("left")
	}
	if higher == 0 {
		return message.Message{}
	}
	return message.New("They stand turned against the bottom: set the runners at the %v higher by %v.", side, higher)
}

// Told is what it comes to; empty where no niche was measured.
func (n *Niche) Told() message.Message {
	if n == nil {
		return message.Message{}
	}
	return message.New("measured niche: %v Beside the run are %v to %v at the left, %v to %v at the right.", n.Shape.Verdict(),
		Shown(n.Left.Least()), Shown(n.Left.Greatest()), Shown(n.Right.Least()), Shown(n.Right.Greatest()))
}
