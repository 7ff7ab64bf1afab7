package figure

import (
	"frontlay/model"
	"frontlay/model/length"
)

// asBuilt are the gaps measured around a hung front.
func asBuilt(a *model.AsBuilt) []Row {
	return []Row{
		group("below", "Gap below", "The gap under the front.", []Row{
			builtEnd("left", "Gap below, left end", &a.Below.First),
			builtEnd("right", "Gap below, right end", &a.Below.Second),
		}),
		group("above", "Gap above it", "The gap over the front, where that is to be measured: at the top of its stack, and under a rail.", []Row{
			builtEnd("left", "Gap above, left end", &a.Above.First),
			builtEnd("right", "Gap above, right end", &a.Above.Second),
		}),
		group("left", "Gap at the left", "The gap at the left of the front.", []Row{
			builtEnd("bottom", "Gap left, lower end", &a.Left.First),
			builtEnd("top", "Gap left, upper end", &a.Left.Second),
		}),
		group("right", "Gap at the right", "The gap at the right of the front, where nothing else tells it: at the end of its row.", []Row{
			builtEnd("bottom", "Gap right, lower end", &a.Right.First),
			builtEnd("top", "Gap right, upper end", &a.Right.Second),
		}),
	}
}

// builtEnd is one end of a gap.
func builtEnd(key, name string, at **length.Length) Row {
	return sizeOrNil(key, name, "Measured at this end of the gap; below zero where the front reaches past the edge.", at, -maxFitting, maxFitting)
}
