package check

import (
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

var lineUp = Rule{
	Name:     "line-up",
	Title:    message.New("Fronts line up as asked"),
	Wrong:    message.New("Fronts don't line up"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("A front is asked to line up with another and can't: there is no such front, two " +
		"bays wait for each other, or the line lies where this front can't end. At the " +
		"bench the line that should run through the elevation has a step. Found is how " +
		"far off the line is, where there is one. Line up with another front, or give " +
		"this one a height."),
	find: findLineUp,
}

func findLineUp(s *search) {
	for i := range s.plan.Problems {
		p := &s.plan.Problems[i]
		f := Finding{Change: message.New("line it up with another front, or give it a height of its own")}
		switch p.Kind {
		case plan.LineUpUnknown:
			f.What = message.New("there is no single front named %v to line up with", p.Name)
			f.Flag = message.New("No front to line up with")
		case plan.LineUpCircle:
			f.What = message.New("this bay and the one of %v wait for each other to line up", p.Name)
			f.Flag = message.New("Two bays wait for each other")
			for _, other := range p.Others {
				g := s.plan.FrontAt(other)
				f.Spots = append(f.Spots, level(g, g.Face.Max.Y))
			}
		case plan.LineUpNoRoom:
			f.Found = p.Amount.Abs()
			f.What = message.New("the line to meet lies %v away from where this front can end", p.Amount.Abs())
			f.Flag = message.New("The line is %v away", p.Amount.Abs())
			at := s.plan.FrontAt(p.Place)
			f.Spots = []mark.Spot{level(at, p.Line), tall(at, inDepth, at.Face.Centre().X, at.Face.Max.Y, p.Line)}
		default:
			continue
		}
		at := s.plan.FrontAt(p.Place)
		f.Spots = append(f.Spots, level(at, at.Face.Max.Y))
		f.Fixes = []edit.Edit{edit.LineUp{At: p.Place}}
		s.front(at, f)
	}
}

var span = Rule{
	Name:     "span",
	Title:    message.New("Wide fronts stand at an end of the stack"),
	Wrong:    message.New("A wide front stands in between"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("A front is asked to span several bays but does not stand at the top or the " +
		"bottom of its stack, or the cabinet has not so many bays to its right. At the " +
		"bench it would cut through the stack beside it. Found is the number of bays " +
		"asked for. Move it to an end of its stack, or let it span fewer."),
	find: findSpan,
}

func findSpan(s *search) {
	for i := range s.plan.Problems {
		p := &s.plan.Problems[i]
		if p.Kind != plan.SpanNoPlace {
			continue
		}
		f := s.plan.FrontAt(p.Place)
		bays := s.plan.Cabinets[p.Place.Cabinet].Bays
		asked := f.Face // as far as it was asked to reach, in the bays that there are
		asked.Max.X = bays[min(p.Place.Bay+int(p.Amount), len(bays))-1].Stack.Max.X
		s.front(f, Finding{
			What:   message.New("it can't span %v bays from here", int(p.Amount)),
			Spots:  []mark.Spot{onBoard(f, mark.Outline, mark.Elevation, asked), onBoard(f, mark.Outline, mark.Section, f.Face)},
			Flag:   message.New("Can't span %v bays", int(p.Amount)),
			Change: message.New("move it to the top or the bottom of its stack, with enough bays to its right, or let it span one bay"),
			Fixes:  []edit.Edit{edit.ReorderFront{At: p.Place}, edit.ReorderFront{At: p.Place, To: len(s.plan.Project.BayAt(p.Place).Fronts) - 1}, edit.SetSpan{At: p.Place, Count: 1}},
		})
	}
}

var noFront = Rule{
	Name:     "no-front",
	Title:    message.New("Fronts fill the elevation"),
	Wrong:    message.New("A place without a front"),
	Severity: Error,
	Forbids:  Nothing,
	Doc: message.New("Under or above a front that spans bays a place is left that no front fills, down to the next front or the end of " +
		"the stack: two such fronts that begin in different bays leave it. At " +
		"the bench the carcass gapes there. Found is the place's height. Let the " +
		"front span fewer bays, or the one beside the place more."),
	find: findNoFront,
}

func findNoFront(s *search) {
	for i := range s.plan.Cabinets {
		for j := range s.plan.Cabinets[i].Bays {
			b := &s.plan.Cabinets[i].Bays[j]
			from := b.Stack.Min.Y
			for k, at := range b.Column {
				f, to := &s.plan.Fronts[at], b.Stack.Max.Y
				if f.Place.Bay != j {
					s.noFront(f, j, from, f.Face.Min.Y, message.New("the place under it in bay %v, %v high, has no front", j+1, f.Face.Min.Y-from))
				}
				from = f.Face.Max.Y
				if k < len(b.Column)-1 {
					next := &s.plan.Fronts[b.Column[k+1]]
					from, to = from+s.plan.Project.GapAbove(f.Place), next.Face.Min.Y
					if next.Place.Bay != j {
						continue // it is told of that one
					}
				}
				if f.Place.Bay != j {
					s.noFront(f, j, from, to, message.New("the place above it in bay %v, %v high, has no front", j+1, to-from))
				}
			}
		}
	}
}

// noFront tells of a place under or above a spanning front, if there is one.
func (s *search) noFront(f *plan.Front, bay int, from, to length.Length, what message.Message) {
	if to <= from {
		return
	}
	stack := s.plan.Cabinets[f.Place.Cabinet].Bays[bay].Stack
	s.front(f, Finding{
		Found:  to - from,
		What:   what,
		Spots:  []mark.Spot{onBoard(f, mark.Band, inDepth, plane.R(stack.Min.X, from, stack.Max.X, to))},
		Flag:   message.New("No front on %v", to-from),
		Change: message.New("let it span fewer bays, or the front beside the place more"),
		Fixes:  []edit.Edit{edit.SetSpan{At: f.Place, Count: bay - f.Place.Bay}},
	})
}
