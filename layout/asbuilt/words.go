package asbuilt

import (
	"cmp"

	"frontlay/layout/plan"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Told is what it comes to; empty where nothing was measured.
func (r *Result) Told() message.Message {
	if r == nil {
		return message.Message{}
	}
	before, after := shown(r.Before), shown(r.After)
	switch {
	case len(r.Moves) == 0 && before == 0:
		return message.New("hung fronts: every gap that was measured is as it is to be")
	case len(r.Moves) == 0:
		return message.New("hung fronts: the worst gap is off by %v, and no adjusting makes it better", before)
	}
	return message.New("hung fronts: the worst gap is off by %v; adjusting as told brings it to %v", before, after)
}

// shown is a length as it is told: to a tenth of a millimetre.
func shown(l length.Length) length.Length { return l.RoundTo(Step) }

// StepIn is the step of what is moved where the hardware sheet tells no turns, in a unit: Step, or
// what is as fine in inches.
func StepIn(u length.Unit) length.Length {
	switch u {
	case length.UnitInch:
		return length.Inch64th
	case length.UnitInchDecimal:
		return length.Inch / 200
	}
	return Step
}

// Shown is a move as it is told: whole steps as they are, what turns come to to a tenth of a
// millimetre.
func Shown(by length.Length) length.Length {
	for _, u := range []length.Unit{length.UnitInch, length.UnitInchDecimal} {
		if by%StepIn(u) == 0 {
			return by
		}
	}
	return shown(by)
}

// At gives the move of a front, nil where it stays as it is.
func (r *Result) At(f *plan.Front) *Move {
	if r == nil {
		return nil
	}
	for i := range r.Moves {
		if r.Moves[i].Front == f {
			return &r.Moves[i]
		}
	}
	return nil
}

// EndsOf are the measured ends of a gap.
func (r *Result) EndsOf(g plan.Gap) []End {
	var all []End
	if r != nil {
		for _, e := range r.Ends {
			if e.Gap.Front == g.Front && e.Gap.Edge == g.Edge {
				all = append(all, e)
			}
		}
	}
	return all
}

// LeftSay says what to do with the left connector, RightSay with the right one, AsideSay with the whole front; empty
// where nothing.
func (m *Move) LeftSay() message.Message {
	return say(m.Left, m.LeftQuarters, message.New("upwards"), message.New("downwards"))
}

// RightSay is of the right connector.
func (m *Move) RightSay() message.Message {
	return say(m.Right, m.RightQuarters, message.New("upwards"), message.New("downwards"))
}

// AsideSay is of the whole front.
func (m *Move) AsideSay() message.Message {
	return say(m.Aside, m.SidewayQuarters, message.New("to the right"), message.New("to the left"))
}

func say(by length.Length, quarters int, on, back message.Message) message.Message {
	way := on
	if by < 0 {
		way, by, quarters = back, -by, -quarters
	}
	switch {
	case by == 0:
		return message.Message{}
	case quarters == 0:
		return message.New("%v %v", way, Shown(by))
	case quarters <= QuartersInATurn:
		return message.New("%v %v, %v turn", way, Shown(by), turns(quarters))
	}
	return message.New("%v %v, %v turns", way, Shown(by), turns(quarters))
}

// turns writes quarter turns as people read them.
func turns(quarters int) message.Message {
	part := [...]string{"", "¼", "½", "¾"}[quarters%QuartersInATurn]
	if whole := quarters / QuartersInATurn; whole > 0 {
		return message.New("%v%v", whole, part)
	}
	return message.New("%v", cmp.Or(part, "0"))
}
