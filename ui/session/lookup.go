package session

import (
	"frontlay/layout/plan"
	"frontlay/model"
)

// FrontOf finds the planned front at a place, nil where there is none.
func FrontOf(pl *plan.Plan, at model.Place) *plan.Front {
	b := BayOf(pl, at)
	if b == nil || at.Front < 0 {
		return nil
	}
	if i := b.First + at.Front; i >= 0 && i < len(pl.Fronts) && pl.Fronts[i].Place == at {
		return &pl.Fronts[i]
	}
	for i := range pl.Fronts {
		if pl.Fronts[i].Place == at {
			return &pl.Fronts[i]
		}
	}
	return nil
}

// BayOf finds the planned bay at a place, nil where there is none.
func BayOf(pl *plan.Plan, at model.Place) *plan.Bay {
	c := CabinetOf(pl, at)
	if c == nil || at.Bay < 0 || at.Bay >= len(c.Bays) {
		return nil
	}
	return &c.Bays[at.Bay]
}

// CabinetOf finds the planned cabinet at a place, nil where there is none.
func CabinetOf(pl *plan.Plan, at model.Place) *plan.Cabinet {
	if at.Cabinet < 0 || at.Cabinet >= len(pl.Cabinets) {
		return nil
	}
	return &pl.Cabinets[at.Cabinet]
}
