package plan

import (
	"frontlay/model"
)

// FrontAt finds the planned front at a place, nil where there is none.
func (p *Plan) FrontAt(at model.Place) *Front {
	b := p.BayAt(at)
	if b == nil || at.Front < 0 {
		return nil
	}
	if i := b.First + at.Front; i >= 0 && i < len(p.Fronts) && p.Fronts[i].Place == at {
		return &p.Fronts[i]
	}
	for i := range p.Fronts {
		if p.Fronts[i].Place == at {
			return &p.Fronts[i]
		}
	}
	return nil
}

// BayAt finds the planned bay at a place, nil where there is none.
func (p *Plan) BayAt(at model.Place) *Bay {
	c := p.CabinetAt(at)
	if c == nil || at.Bay < 0 || at.Bay >= len(c.Bays) {
		return nil
	}
	return &c.Bays[at.Bay]
}

// CabinetAt finds the planned cabinet at a place, nil where there is none.
func (p *Plan) CabinetAt(at model.Place) *Cabinet {
	if at.Cabinet < 0 || at.Cabinet >= len(p.Cabinets) {
		return nil
	}
	return &p.Cabinets[at.Cabinet]
}
