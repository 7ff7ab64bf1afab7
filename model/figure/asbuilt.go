package figure

import "frontlay/model"

// asBuilt are the gaps measured around a hung front.
func asBuilt(a *model.AsBuilt) []Row {
	return []Row{
		group("below", "Gap below", "The gap under the front.", across(&a.Below)),
		group("above", "Gap above it", "The gap over the front, where that is to be measured: at the top of its stack, and under a rail.", across(&a.Above)),
		group("left", "Gap at the left", "The gap at the left of the front.", upwards(&a.Left)),
		group("right", "Gap at the right", "The gap at the right of the front, where nothing else tells it: at the end of its row.", upwards(&a.Right)),
	}
}

func across(e *model.GapEnds) []Row {
	return []Row{
		sizeOrNil("left", "At its left end", "Measured at the left end of the gap; below zero where the front reaches past the edge.", &e.First, -maxFitting, maxFitting),
		sizeOrNil("right", "At its right end", "Measured at its right end.", &e.Second, -maxFitting, maxFitting),
	}
}

func upwards(e *model.GapEnds) []Row {
	return []Row{
		sizeOrNil("bottom", "At its lower end", "Measured at the lower end of the gap; below zero where the front reaches past the edge.", &e.First, -maxFitting, maxFitting),
		sizeOrNil("top", "At its upper end", "Measured at its upper end.", &e.Second, -maxFitting, maxFitting),
	}
}
