package propose

import (
	"frontlay/layout/check"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Say tells a term in plain words; of one that counts only what is wrong, that nothing
// is.
func (t Term) Say() message.Message {
	n := t.Count
	switch t.Measure {
	case Lost:
		if t.Needless == 0 {
			return message.New("loses %v of height to gaps, bottoms and runners", t.Height)
		}
		return message.New("loses %v of height: %v to gaps, bottoms and runners, %v in drawers higher than needed", t.Height, t.Taken, t.Needless)
	case Settings:
		if n == 1 {
			return message.New("one jig setting")
		}
		return message.New("%v jig settings", n)
	case Drops:
		if n == 0 {
			return message.New("all upper drops are 0")
		}
		return message.New("upper drawers with a drop: %v", n)
	case Lines:
		return t.lines()
	case Order:
		return message.New("fronts lower than the one above: %v", n)
	default:
		return message.New("neighbours for the same of unequal height: %v", n)
	}
}

// lines tells how far the lines of the bay run through.
func (t Term) lines() message.Message {
	meets := [2]bool{t.There[0] && t.Sides[0] == 0, t.There[1] && t.Sides[1] == 0}
	switch {
	case t.There == [2]bool{}:
		return message.New("no bay beside to line up with")
	case t.Count == 0 && meets == [2]bool{true, true}:
		return message.New("lines up with the bays at both sides")
	case meets[0] && t.Count == 0:
		return message.New("lines up with the bay at its left")
	case meets[1] && t.Count == 0:
		return message.New("lines up with the bay at its right")
	case meets[0]:
		return message.New("lines up with the bay at its left; lines that end at its right: %v", t.Count)
	case meets[1]:
		return message.New("lines up with the bay at its right; lines that end at its left: %v", t.Count)
	}
	return message.New("lines that end at the sides of the bay: %v", t.Count)
}

// Words tells a proposal term by term, in the order of the terms: order and evenness
// only where something is wrong with them.
func (p *Proposal) Words() (all []message.Message) {
	for _, t := range p.Terms {
		if t.Count > 0 || t.Measure != Order && t.Measure != Uneven {
			all = append(all, t.Say())
		}
	}
	return all
}

// Warnings counts what the check warns of in the bay.
func (p *Proposal) Warnings() (n int) {
	for i := range p.Result.Findings {
		f := &p.Result.Findings[i]
		if f.Severity == check.Warning && f.Accepted == "" && f.Place.Cabinet == p.Edit.At.Cabinet && f.Place.Bay == p.Edit.At.Bay {
			n++
		}
	}
	return n
}

// Name tells in few words how a proposal divides the bay.
func (p *Proposal) Name() message.Message {
	n := len(p.Edit.Fronts)
	name := message.New("%v drawers", n)
	if n == 1 {
		name = message.New("1 drawer")
	}
	if by := p.Edit.Division; by.Step > 0 {
		name = message.New("%v, each %v taller than the one above", name, by.Step)
	} else if by.Ratio > 0 {
		name = message.New("%v, each %v times the one above", name, by.Ratio)
	}
	if p.Sheet != "" {
		name = message.New("%v, with %v", name, p.Sheet)
	}
	return name
}

// Heights are those of the fronts, bottom to top.
func (p *Proposal) Heights() (all []length.Length) {
	b := p.Result.Plan.BayAt(p.Edit.At)
	for _, f := range p.Result.Plan.Fronts[b.First : b.First+b.Count] {
		all = append(all, f.Face.Height())
	}
	return all
}

// reason says why there is no proposal, and what to change.
func (s *search) reason() message.Message {
	short := length.Length(0)
	for i, u := range s.setups {
		if over := s.room(&finder{setup: u}, 0, 0) - (u.high - u.low); i == 0 || over < short {
			short = over
		}
	}
	switch {
	case !s.why.Empty():
		return s.why
	case len(s.setups) == 0:
		return message.New("The bay has no hardware sheet with drawers. Choose one for it first.")
	case short > 0:
		return message.New("The bay is at least %v too low for what is to go in: take out a thing or a front, or make the cabinet higher.", short)
	case s.error != nil:
		return message.New("The check finds an error in every division that was tried: %v. To do: %v.", s.error.What, s.error.Change)
	case s.stopped:
		return message.New("The search came to its end before it found a division. Ask for fewer fronts, or for a coarser grid.")
	case s.q.Style != Free:
		return message.New("No division of this style leaves height enough for what is to go in. Choose free heights, another number of fronts, or lower things.")
	case s.q.Rows:
		return message.New("No division has its runners on hole rows and height enough for what is to go in. Leave the hole rows, or choose another number of fronts.")
	default:
		return message.New("No division leaves height enough for what is to go in. Choose another number of fronts, or lower things.")
	}
}
