package edit

import (
	"math"

	"frontlay/model"
	"frontlay/model/length"
	"frontlay/model/message"
)

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
