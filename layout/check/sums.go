package check

import (
	"slices"

	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var sums = Rule{
	Name:     "sums",
	Title:    message.New("Heights and widths add up"),
	Wrong:    message.New("Sizes don't add up"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("The heights of a stack's fronts and gaps, or the widths of a cabinet's bays, do " +
		"not add up to the room there is. At the bench the top front stands over the " +
		"worktop's line or a gap gapes under it. Found is what the parts need together, " +
		"needed what there is. Change one of the fixed heights, or let one front take " +
		"what is left."),
	find: findSums,
}

func findSums(s *search) {
	for i := range s.plan.Problems {
		p := &s.plan.Problems[i]
		switch p.Kind {
		case plan.StackSum:
			s.stackSum(p)
		case plan.BaySum:
			inside := s.plan.Cabinets[p.Place.Cabinet].Inside.Width()
			f := Finding{Place: p.Place, Found: inside + p.Amount, Needed: inside}
			c := &s.plan.Cabinets[p.Place.Cabinet]
			f.Spots = []mark.Spot{{Shape: mark.Band, In: mark.Elevation, Box: plane.R(
				c.Inside.Max.X+min(0, p.Amount), c.Inside.Min.Y, c.Inside.Max.X+max(0, p.Amount), c.Inside.Max.Y)}}
			f.Flag = message.New("Bays %v off", p.Amount.Abs())
			if p.Amount > 0 {
				f.What = message.New("the bays and partitions are %v wider than the inside of the cabinet", p.Amount)
				f.Change = message.New("make a bay narrower by %v, or the cabinet wider, to %v", p.Amount, c.Outline.Width()+p.Amount)
			} else {
				f.What = message.New("the bays and partitions leave %v of the inside width", -p.Amount)
				f.Change = message.New("make a bay wider by %v, let one take the rest, or make the cabinet %v wide", -p.Amount, c.Outline.Width()+p.Amount)
			}
			f.Fixes = []edit.Edit{edit.SetCabinet(p.Place, "width", c.Outline.Width()+p.Amount)}
			s.add(f)
		}
	}
}

func (s *search) stackSum(p *plan.Problem) {
	b := &s.plan.Cabinets[p.Place.Cabinet].Bays[p.Place.Bay]
	room := b.Room
	f := Finding{Place: p.Place, Found: room + p.Amount, Needed: room}
	inTheWay := s.names(p.Others)
	if b.Count > 0 {
		top := &s.plan.Fronts[b.First+b.Count-1]
		end := top.Face.Max.Y
		over := strip(top, min(end, end-p.Amount), max(end, end-p.Amount))
		over.In = inDepth
		f.Spots = []mark.Spot{over}
	}
	f.Flag = message.New("Heights %v off", p.Amount.Abs())
	if p.Amount > 0 {
		f.What = message.New("the fronts and gaps are %v higher than the room for them; in the way: %v", p.Amount, inTheWay)
		f.Change = message.New("let one of them give way by %v, or take one out", p.Amount)
	} else {
		f.What = message.New("the fronts and gaps leave %v of the height; in the way: %v", -p.Amount, inTheWay)
		f.Change = message.New("let one of them grow by %v, or let it take what is left", -p.Amount)
	}
	f.Fixes = s.giveWay(p)
	if len(f.Fixes) > 0 {
		if h, ok := f.Fixes[0].(edit.SetHeight); ok {
			f.Change = message.New("give front %v a height of %v, or let another one change by %v", called(s.plan.FrontAt(h.At)), h.Height, p.Amount.Abs())
		}
	}
	s.add(f)
}

// giveWay are the changes that may let a stack add up: the topmost front that can
// takes the difference once, or whatever is left from now on; limits end, and
// then line-ups.
func (s *search) giveWay(p *plan.Problem) []edit.Edit {
	var heights, limits, lines []edit.Edit
	for k := len(p.Others) - 1; k >= 0; k-- {
		at := p.Others[k]
		src := s.plan.Project.FrontAt(at)
		switch h := src.Height - p.Amount; {
		case src.Locked:
		case src.Height > 0 && h >= 10*length.Millimetre && heights == nil:
			heights = []edit.Edit{edit.SetHeight{At: at, Height: h}, edit.SetShare{At: at, Share: 1}}
		case src.Height <= 0 && src.LineUp == nil && limits == nil:
			limit := "greatest"
			if p.Amount > 0 {
				limit = "least"
			}
			limits = []edit.Edit{edit.Set{At: at, Key: limit}}
		case src.LineUp != nil && lines == nil:
			lines = []edit.Edit{edit.LineUp{At: at}}
		}
	}
	return slices.Concat(heights, limits, lines)
}

// names lists the fronts in the way with what holds each, as one argument of a
// message.
func (s *search) names(at []model.Place) message.Message {
	if len(at) == 0 {
		return message.New("nothing gives way")
	}
	var list message.Message
	for i, a := range at {
		one := message.New("%v (%v)", s.plan.FrontAt(a).Name, hold(s.plan.Project.FrontAt(a)))
		switch {
		case i == 0:
			list = one
		case i == 6:
			return message.New("%v …", list)
		default:
			list = message.New("%v, %v", list, one)
		}
	}
	return list
}

// hold says what keeps a front's height from giving way.
func hold(f *model.Front) message.Message {
	switch {
	case f.LineUp != nil:
		return message.New("lines up")
	case f.Height > 0 && f.Locked:
		return message.New("locked at %v", f.Height)
	case f.Height > 0:
		return message.New("fixed at %v", f.Height)
	case f.Least > 0 && f.Greatest > 0:
		return message.New("from %v to %v", f.Least, f.Greatest)
	case f.Least > 0:
		return message.New("at least %v", f.Least)
	default:
		return message.New("at most %v", f.Greatest)
	}
}
