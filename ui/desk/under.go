package desk

import (
	"frontlay/layout/drawing"
	"frontlay/model/message"
)

// hover tells of what lies under the pointer.
func (d *Desk) hover(t drawing.Subject) {
	if t.Kind != drawing.Nothing && t != d.under {
		d.told.passed = true
	}
	if t.Kind == drawing.Nothing {
		d.told.passed = false
	}
	d.under = t
	d.told.explained = d.explain(t)
	d.tellUnder()
}

// tellUnder tells what lies under the pointer, as it is now.
func (d *Desk) tellUnder() {
	d.told.under = d.describe(d.under)
	d.told.show(d.host.Say())
}

// explain tells how the figure under the pointer came about; in a see-through
// drawing, over a front, its cover.
func (d *Desk) explain(t drawing.Subject) message.Message {
	pl := d.host.Session().Result().Plan
	f := pl.FrontAt(t.Place)
	if f == nil {
		return message.Message{}
	}
	switch {
	case t.Kind == drawing.FrontHeight:
		if s := pl.HeightOf(f); len(s.Terms) > 0 {
			return s.Say()
		}
	case t.Kind == drawing.HoleThing && f.Fitted && t.Index >= 0 && t.Index < len(f.Holes):
		h := &f.Holes[t.Index]
		return message.New("%v;  %v", pl.EdgeDistanceOf(f, h.Side).Say(), pl.HoleHeightOf(f, h).Say())
	case t.Kind == drawing.FrontThing && f.Fitted && d.Screen.SeeThrough():
		return pl.CoverOf(f).Say()
	}
	return message.Message{}
}

// describe names a thing with its size.
func (d *Desk) describe(t drawing.Subject) message.Message {
	pl := d.host.Session().Result().Plan
	switch t.Kind {
	case drawing.FrontThing, drawing.HoleThing, drawing.RunnerThing, drawing.DrawerThing, drawing.FrontName:
		if f := pl.FrontAt(t.Place); f != nil {
			if !f.Named() {
				return message.New("Front %v: %v × %v", f.Number, f.Face.Width(), f.Face.Height())
			}
			return message.New("Front %v, %v: %v × %v", f.Number, f.Name, f.Face.Width(), f.Face.Height())
		}
	case drawing.DivisionThing:
		return message.New("Division: drag it, Shift frees it")
	case drawing.PartitionThing:
		return message.New("Partition: drag it, Shift frees it")
	case drawing.FrontHeight, drawing.CabinetWidth, drawing.CabinetHeight, drawing.BayWidth:
		return message.New("Click to type this size")
	case drawing.CabinetThing, drawing.BayThing:
		if c := pl.CabinetAt(t.Place); c != nil {
			return message.New("%v: %v × %v", c.Name, c.Outline.Width(), c.Outline.Height())
		}
	}
	return message.Message{}
}
