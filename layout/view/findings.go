package view

import (
	"cmp"
	"slices"

	"frontlay/layout/check"
	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
)

// Found is what a view marks of the check.
type Found struct {
	All    []check.Finding
	Chosen int // counts All from 1: the one that is looked at, whose marks stand out and have a flag; 0: none
}

// AddToSection marks what is found in the bay at a place, in its section.
func (o Found) AddToSection(d *drawing.Drawing, p *plan.Plan, at model.Place) {
	b := &p.Cabinets[at.Cabinet].Bays[at.Bay]
	o.mark(d, p, mark.Section, func(s *mark.Spot) (plane.Rect, bool) {
		for _, k := range b.Column {
			if p.Fronts[k].Number == s.Front {
				return s.FromSide(), true
			}
		}
		return plane.Rect{}, false
	})
}

// AddToRear marks what is found in the board of a front, in its rear face.
func (o Found) AddToRear(d *drawing.Drawing, p *plan.Plan, f *plan.Front) {
	o.mark(d, p, mark.Rear, func(s *mark.Spot) (plane.Rect, bool) {
		return fromRear(f, s), s.Front == f.Number
	})
}

// AddToPlan marks what is found about the drawer of a front, in its plan.
func (o Found) AddToPlan(d *drawing.Drawing, p *plan.Plan, f *plan.Front) {
	o.mark(d, p, mark.Plan, func(s *mark.Spot) (plane.Rect, bool) {
		return s.FromAbove(f.Opening.Min.X), s.Front == f.Number
	})
}

func (o Found) addToElevation(d *drawing.Drawing, p *plan.Plan) {
	o.mark(d, p, mark.Elevation, func(s *mark.Spot) (plane.Rect, bool) { return s.FromRoom(), true })
}

// mark adds the marks of a view, the worst over the others and those of the chosen
// finding over all, with its flag. What the user has accepted, and what is about
// the project as a whole, is marked only while it is chosen.
func (o Found) mark(d *drawing.Drawing, p *plan.Plan, in mark.Views, seen func(*mark.Spot) (plane.Rect, bool)) {
	order := make([]int, 0, len(o.All))
	for i := range o.All {
		if f := &o.All[i]; i+1 == o.Chosen || f.Accepted == "" && f.Place.Cabinet >= 0 {
			order = append(order, i)
		}
	}
	slices.SortStableFunc(order, func(a, b int) int {
		if a+1 == o.Chosen || b+1 == o.Chosen {
			return cmp.Compare(btoi(a+1 == o.Chosen), btoi(b+1 == o.Chosen))
		}
		return cmp.Compare(Severity(&o.All[b]), Severity(&o.All[a]))
	})
	for _, i := range order {
		f := &o.All[i]
		t := drawing.Tag{Meaning: drawing.FindingMark, Of: subject(f), Severity: Severity(f)}
		chosen, flagged := i+1 == o.Chosen, false
		for k := range f.Spots {
			s := &f.Spots[k]
			if s.In&in == 0 {
				continue
			}
			r, ok := seen(s)
			if !ok {
				continue
			}
			d.Add(&drawing.Spot{Tag: t, Shape: s.Shape, Rect: r, Chosen: chosen})
			if chosen && !flagged {
				flagged = true
				d.Add(flag(p, f, t, r))
			}
		}
	}
}

// flag is what the flag of a chosen finding says, pointing at a place.
func flag(p *plan.Plan, f *check.Finding, t drawing.Tag, at plane.Rect) *drawing.Text {
	return &drawing.Text{Tag: t, At: plane.Point{X: at.Centre().X, Y: at.Max.Y}, Anchor: drawing.Anchor{X: 0.5}, Size: smallLetters, Bold: true, Say: f.Flag}
}

func btoi(b bool) int {
	if b {
		return 1
	}
	return 0
}

// subject is the front that a finding is about; findings of more than one are of
// nothing that could be pointed at.
func subject(f *check.Finding) drawing.Subject {
	if f.Place.Front < 0 {
		return drawing.Subject{}
	}
	return of(drawing.FrontThing, f.Place)
}

// worst tells for each front, by its number, the severity of the worst that is
// found about it and not accepted.
func (o Found) worst() map[int]drawing.Severity {
	var all map[int]drawing.Severity
	for i := range o.All {
		f := &o.All[i]
		if f.Front == 0 || f.Accepted != "" {
			continue
		}
		if all == nil {
			all = map[int]drawing.Severity{}
		}
		for _, number := range [2]int{f.Front, f.Other} {
			all[number] = all[number].Worse(Severity(f))
		}
	}
	return all
}

// Severity is that of a finding's marks.
func Severity(f *check.Finding) drawing.Severity {
	switch {
	case f.Accepted != "":
		return drawing.OfAccepted
	case f.Severity == check.Warning:
		return drawing.OfWarning
	case f.Severity == check.Advice:
		return drawing.OfAdvice
	default:
		return drawing.OfError
	}
}
