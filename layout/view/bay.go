package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/length"
)

// besideBay is how much of the bays beside it a picture of a bay shows.
const besideBay = 110 * length.Millimetre

// Bay draws the fronts of one bay from the room, run frame, with the edge of what
// stands beside them: lines that run through are seen to do so.
func Bay(p *plan.Plan, at model.Place) *drawing.Drawing {
	d := &drawing.Drawing{}
	b, c := p.BayAt(at), p.CabinetAt(at)
	if b == nil {
		return d
	}
	around := plane.R(b.Stack.Min.X-besideBay, c.Outline.Min.Y, b.Stack.Max.X+besideBay, c.Outline.Max.Y)
	for i := range p.Cabinets {
		if r := p.Cabinets[i].Outline.Intersect(around); !r.Empty() {
			d.Add(filled(drawing.Carcass, drawing.Subject{}, r))
		}
	}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if f.Place.Cabinet == at.Cabinet && f.Place.Bay == at.Bay {
			addFront(d, f, false, drawing.OfNothing)
			continue
		}
		m := drawing.Face
		if f.Kind == model.OpenNiche {
			m = drawing.NichePart
		}
		if r := f.Face.Intersect(around); !r.Empty() {
			d.Add(filled(m, of(drawing.FrontThing, f.Place), r))
		}
	}
	return d
}
