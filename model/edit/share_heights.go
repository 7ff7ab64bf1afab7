package edit

import (
	"math"

	"frontlay/model"
	"frontlay/model/figure"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Equalise gives fronts of one stack equal heights, to the rounding step; the
// others keep theirs. Heights are those of all fronts of the stack in the plan,
// bottom to top. Whole tells that the fronts are all of the stack, for the
// label.
type Equalise struct {
	At      []model.Place
	Heights []length.Length
	Whole   bool
}

// Label names the change.
func (e Equalise) Label() message.Message {
	if e.Whole {
		return message.New("Equal heights in the whole bay")
	}
	return message.New("Equal heights")
}

// Apply makes the change. It is refused where the limits of one of the fronts
// leave no equal height.
func (e Equalise) Apply(p *model.Project) (*model.Project, error) {
	c, err := someFronts(p, e.At, e.Heights, model.Division{Rule: model.DivideEqual})
	if err != nil {
		return nil, err
	}
	sum := length.Length(0)
	for _, at := range e.At {
		sum += e.Heights[at.Front]
	}
	each := sum / length.Length(len(e.At))
	for _, at := range e.At {
		switch f := p.FrontAt(at); {
		case f.Least > each:
			return nil, message.New("Equal heights would be %v, but one of these fronts is to be at least %v high. Change its limit first.", each, f.Least)
		case f.Greatest > 0 && f.Greatest < each:
			return nil, message.New("Equal heights would be %v, but one of these fronts is to be at most %v high. Change its limit first.", each, f.Greatest)
		}
	}
	return c, nil
}

// oneStack refuses places that are not at least a number of fronts of one bay.
func oneStack(p *model.Project, at []model.Place, least int) error {
	if len(at) < least {
		return message.New("Select at least %v fronts of one stack.", least)
	}
	for _, a := range at {
		if p.FrontAt(a) == nil {
			return message.New("There is no front at this place any more. Select one in the drawing.")
		}
		if a.Cabinet != at[0].Cabinet || a.Bay != at[0].Bay {
			return message.New("Select fronts of one stack only.")
		}
	}
	return nil
}

// Graduate makes fronts of one stack taller from top to bottom, each by a factor
// over the next of them above it; the others keep their heights. Heights are
// those of all fronts of the stack in the plan, bottom to top. Whole tells that
// the fronts are all of the stack, for the label.
type Graduate struct {
	At      []model.Place
	Heights []length.Length
	Ratio   float64
	Whole   bool
}

// Label names the change.
func (e Graduate) Label() message.Message {
	if e.Whole {
		return message.New("Graduate the whole bay by a factor of %v", e.Ratio)
	}
	return message.New("Graduate %v fronts by a factor of %v", len(e.At), e.Ratio)
}

// Apply makes the change.
func (e Graduate) Apply(p *model.Project) (*model.Project, error) {
	d := model.Division{Rule: model.DivideRatio, Ratio: e.Ratio}
	if err := refused(figure.Division(&d), "ratio", e.Ratio); err != nil {
		return nil, err
	}
	return someFronts(p, e.At, e.Heights, d)
}

// someFronts lets the fronts of a stack at some places share their heights anew
// by a rule, equal or by a ratio, while the others keep theirs. Heights are
// those of all fronts of the stack in the plan, bottom to top.
//
// A front that lines up with another one holds its top edge, so the stack is
// divided in stretches, each on its own. In every stretch something has to go
// on taking what is left, so that the stack still follows the cabinet: the
// fronts at the places, or the one that lines up, or the topmost that did so
// before. All others get a height of their own.
func someFronts(p *model.Project, at []model.Place, heights []length.Length, by model.Division) (*model.Project, error) {
	if err := oneStack(p, at, 2); err != nil {
		return nil, err
	}
	c := p.Clone()
	b := c.BayAt(at[0])
	if len(heights) != len(b.Fronts) {
		return nil, message.New("The stack has changed meanwhile. Select its fronts again.")
	}
	chosen := make([]bool, len(b.Fronts))
	low, high := len(b.Fronts), 0
	for _, a := range at {
		if err := unlocked(&b.Fronts[a.Front]); err != nil {
			return nil, err
		}
		chosen[a.Front] = true
		low, high = min(low, a.Front), max(high, a.Front)
	}
	for i := low; i < high; i++ {
		if b.Fronts[i].LineUp != nil && !chosen[i] {
			return nil, message.New("A front between these lines up with another one, so they can't share across it. Let it line up no longer, or choose fronts on one side of it.")
		}
	}
	b.Division = by
	first := 0
	for i := range b.Fronts {
		if i < len(b.Fronts)-1 && (b.Fronts[i].LineUp == nil || chosen[i]) {
			continue // the stretch goes on
		}
		stretch(b.Fronts[first:i+1], chosen[first:i+1], heights[first:i+1], by, model.Rounding{Step: c.RoundingStep(), Rest: c.Rounding.Rest})
		first = i + 1
	}
	return c, nil
}

// stretch changes the fronts of one stretch.
func stretch(fronts []model.Front, chosen []bool, heights []length.Length, by model.Division, round model.Rounding) {
	rest := -1 // the front that takes what the others leave, where no chosen ones do
	some := false
	for i := range fronts {
		if fronts[i].Height <= 0 && !chosen[i] {
			rest = i
		}
		some = some || chosen[i]
	}
	end := &fronts[len(fronts)-1]
	lined := end.LineUp != nil && end.Height <= 0 && !chosen[len(fronts)-1]
	if some && !lined {
		rest = -1
	}
	for i := range fronts {
		f := &fronts[i]
		switch {
		case chosen[i]:
			f.Height, f.Clear, f.Share, f.LineUp = 0, false, 1, nil
		case f.Height <= 0 && i != rest:
			fix(f, heights[i])
		}
	}
	if some && lined {
		fixChosen(fronts, chosen, heights, by, round)
	}
}

// fixChosen gives the chosen fronts of a stretch heights of their own, as the
// front at its end has to take the rest: rounded as the engine rounds those of a
// stack, so that they add up to what they had.
func fixChosen(fronts []model.Front, chosen []bool, heights []length.Length, by model.Division, round model.Rounding) {
	ratio := 1.0
	if by.Rule == model.DivideRatio {
		ratio = by.Ratio
	}
	var at []int // from the top
	var weights []float64
	sum, total, weight := length.Length(0), 0.0, 1.0
	for i := len(fronts) - 1; i >= 0; i-- {
		if chosen[i] {
			at, weights = append(at, i), append(weights, weight)
			sum += heights[i]
			total += weight
			weight *= ratio
		}
	}
	wants := make([]length.Portion, len(at))
	for k, w := range weights {
		wants[k].Want = max(length.Length(math.Round(float64(sum)*w/total)), round.Step)
	}
	for k, h := range length.Apportion(sum, round.Step, wants, round.Rest == model.RestBottom) {
		fix(&fronts[at[k]], h)
	}
}

// SetDivision chooses the rule by which the fronts of a bay share what its fixed
// ones leave. Free makes every front that is not locked take part.
type SetDivision struct {
	At       model.Place
	Division model.Division
	Free     bool
}

// Label names the change.
func (e SetDivision) Label() message.Message {
	switch e.Division.Rule {
	case model.DivideEqual:
		return message.New("Equal heights")
	case model.DivideStep:
		return message.New("Graduate by %v", e.Division.Step)
	case model.DivideRatio:
		return message.New("Graduate by a factor of %v", e.Division.Ratio)
	default:
		return message.New("Divide by shares")
	}
}

// Apply makes the change.
func (e SetDivision) Apply(p *model.Project) (*model.Project, error) {
	c, b, err := bay(p, e.At)
	if err != nil {
		return nil, err
	}
	d := e.Division
	if d.Rule == model.DivideStep {
		if err := refused(figure.Division(&d), "step", d.Step); err != nil {
			return nil, err
		}
	}
	if d.Rule == model.DivideRatio {
		if err := refused(figure.Division(&d), "ratio", d.Ratio); err != nil {
			return nil, err
		}
	}
	b.Division = d
	for i := range b.Fronts {
		f := &b.Fronts[i]
		if e.Free && !f.Locked {
			f.Height, f.Share, f.LineUp = 0, 1, nil
		}
	}
	return c, nil
}
