package opening

import (
	"frontlay/model/length"
	"frontlay/model/message"
)

// Shown is a length as people are told it: to a tenth of a millimetre, as no tape is finer.
func Shown(v length.Length) length.Length { return v.RoundTo(length.Millimetre / 10) }

// Contradiction says how far figures contradict each other; empty where they agree.
func (s *Shape) Contradiction() message.Message {
	d := &s.Doubt
	if d.Agree() {
		return message.Message{}
	}
	off := Shown(length.FromMM(d.Off))
	switch {
	case d.Several:
		return message.New("whatever the opening’s shape, at least one figure is off by %v or more, and more than one is", off)
	case d.Any && len(d.Bowed) == 0:
		return message.New("whatever the opening’s shape, at least one figure is off by %v or more, and it may be any", off)
	case len(d.Bowed) == len(d.Again):
		if len(d.Again) == 1 {
			return message.New("the %v does not fit the other figures", d.Again[0].Say())
		}
		return message.New("these do not fit the other figures: %v", named(d.Again))
	}
	return message.New("whatever the opening’s shape, at least one figure is off by %v or more", off)
}

// MeasureAgain says what to do about it; empty where they agree.
func (s *Shape) MeasureAgain() message.Message {
	d := &s.Doubt
	switch {
	case d.Agree():
		return message.Message{}
	case d.Several:
		return message.New("measure everything again")
	case d.Any && len(d.Bowed) == 0:
		return message.New("measure all of them again, and widths and heights in the middle, plumb and level too: they would tell which it is")
	}
	m := message.New("measure the %v again", named(d.Again))
	for _, f := range d.Bowed {
		m = message.New("%v; %v", m, s.bowedSay(f))
	}
	return m
}

// bowedSay says what a middle figure tells if it comes out as before.
func (s *Shape) bowedSay(f Figure) message.Message {
	trait := BowAcross
	if f == HeightMiddle {
		trait = BowUpwards
	}
	for _, x := range s.Said {
		if x.What == trait && x.Known {
			return message.New("if the %v comes out the same again, it is no slip: %v; hold a straightedge to them", f.Say(), trait.Say(Shown(x.Value)))
		}
	}
	return message.New("if the %v comes out the same again, it is no slip: boards are bowed; hold a straightedge to them", f.Say())
}

// named lists figures.
func named(all []Figure) message.Message {
	m := all[0].Say()
	for i, f := range all[1:] {
		if i == len(all)-2 {
			m = message.New("%v and %v", m, f.Say())
		} else {
			m = message.New("%v, %v", m, f.Say())
		}
	}
	return m
}

// Verdict is one sentence on whether the figures can be relied on.
func (s *Shape) Verdict() message.Message {
	switch {
	case !s.Doubt.Checked:
		return message.New("No figure checks another, so that a slip of the tape would not be seen: measure both diagonals and the middle widths and heights as well.")
	case s.Doubt.Agree():
		return message.New("All figures agree to within %v.", Shown(s.Within))
	}
	return message.New("%v. What to do: %v.", s.Contradiction(), s.MeasureAgain())
}
