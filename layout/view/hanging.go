package view

import (
	"frontlay/layout/drawing"
	"frontlay/layout/plan"
	"frontlay/model"
	"frontlay/model/message"
)

// Hanging draws the cabinets from one to another (indexes, both of them drawn) with
// empty fronts, for a page on which gaps are written, in the run frame.
func Hanging(p *plan.Plan, first, last int) *drawing.Drawing {
	d := &drawing.Drawing{Title: message.New("Hanging and adjusting the fronts")}
	for i := first; i <= last; i++ {
		c := &p.Cabinets[i]
		if !c.Plinth.Empty() {
			d.Add(rect(drawing.Plinth, drawing.Subject{}, c.Plinth))
		}
		if c.Plinth.Empty() {
			for _, f := range c.Feet {
				d.Add(rect(drawing.Plinth, drawing.Subject{}, f))
			}
		}
		d.Add(rect(drawing.Carcass, drawing.Subject{}, c.Outline))
		for j := range c.Bays {
			if c.Mount == model.Inset {
				d.Add(rect(drawing.Carcass, drawing.Subject{}, c.Bays[j].Opening))
			}
			for _, r := range c.Bays[j].Rails {
				d.Add(rect(drawing.Carcass, drawing.Subject{}, r.Rect))
			}
		}
	}
	for i := range p.Fronts {
		f := &p.Fronts[i]
		if f.Place.Cabinet < first || f.Place.Cabinet > last {
			continue
		}
		m, r := drawing.Face, f.Face
		switch f.Kind {
		case model.FixedPanel:
			m = drawing.PanelPart
		case model.OpenNiche:
			m, r = drawing.NichePart, f.Clear
		}
		mark := rect(m, drawing.Subject{}, r)
		mark.Filled = true
		d.Add(mark)
	}
	return d
}
