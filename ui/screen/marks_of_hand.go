package screen

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// paintSelection draws a frame around each thing that is selected.
func (c *Screen) paintSelection(p *painter) {
	if c.subject != Elevation {
		c.paintTitle(p)
		return
	}
	for _, t := range c.session.Selection() {
		r, ok := c.rectOf(t)
		if !ok {
			continue
		}
		pos, size := p.box(r)
		grow := float32(2)
		if t.Kind == drawing.DivisionThing {
			grow = 3
		}
		f := fynecanvas.NewRectangle(color.Transparent)
		f.StrokeColor, f.StrokeWidth = p.palette.Accent, 2.5
		f.Move(pos.SubtractXY(grow, grow))
		f.Resize(size.AddWidthHeight(2*grow, 2*grow))
		p.objects = append(p.objects, f)
	}
}

// rectOf gives where a thing is in the run.
func (c *Screen) rectOf(t drawing.Subject) (plane.Rect, bool) {
	pl := c.session.Result().Plan
	switch t.Kind {
	case drawing.FrontThing:
		if f := session.FrontOf(pl, t.Place); f != nil {
			return f.Face, true
		}
	case drawing.DivisionThing:
		above := t.Place
		above.Front++
		lo, up := session.FrontOf(pl, t.Place), session.FrontOf(pl, above)
		if lo != nil && up != nil {
			return plane.R(lo.Face.Min.X, lo.Face.Max.Y, lo.Face.Max.X, up.Face.Min.Y), true
		}
	case drawing.BayThing:
		if b := session.BayOf(pl, t.Place); b != nil {
			return b.Opening, true
		}
	case drawing.CabinetThing:
		if cab := session.CabinetOf(pl, t.Place); cab != nil {
			return cab.Outline, true
		}
	case drawing.PartitionThing:
		if cab := session.CabinetOf(pl, t.Place); cab != nil && t.Place.Bay >= 0 && t.Place.Bay < len(cab.Partitions) {
			return cab.Partitions[t.Place.Bay], true
		}
	}
	return plane.Rect{}, false
}

// paintFeedback draws what the tool shows: lines it was drawn to, what it would
// make, and figures.
func (c *Screen) paintFeedback(p *painter) {
	if o := c.feedback.Outline; !o.Empty() {
		pos, size := p.box(o)
		r := fynecanvas.NewRectangle(color.NRGBA{})
		fill := p.palette.Accent
		fill.A = 0x30
		r.FillColor, r.StrokeColor, r.StrokeWidth = fill, p.palette.Accent, 1.5
		r.Move(pos)
		r.Resize(size)
		p.objects = append(p.objects, r)
	}
	for _, l := range c.feedback.Lines {
		a, b := p.view.at(l.From), p.view.at(l.To)
		if l.Snapped {
			p.dashed(a.X-12, a.Y, b.X+12, b.Y, p.palette.Guide, 1.5)
		} else {
			p.line(a.X, a.Y, b.X, b.Y, p.palette.Accent, 1.5)
		}
	}
	for _, l := range c.feedback.Labels {
		c.paintLabel(p, l)
	}
}

func (c *Screen) paintLabel(p *painter, l tool.Label) {
	const pad = 5
	s := p.say.Say(l.Say)
	size := p.text * 1.1
	box := p.measure.of(s, size, true)
	at := p.view.at(l.At)
	if l.Centred {
		at = at.SubtractXY(box.Width/2, box.Height/2)
	} else {
		at = at.AddXY(16, -box.Height-12)
	}
	at.X = min(max(at.X, pad), max(p.size.Width-box.Width-pad, pad))
	at.Y = min(max(at.Y, pad), max(p.size.Height-box.Height-pad, pad))
	ink := p.palette.Accent
	if l.Warn {
		ink = p.palette.Error
	}
	back := fynecanvas.NewRectangle(p.palette.Paper)
	back.StrokeColor, back.StrokeWidth, back.CornerRadius = ink, 1, 3
	back.Move(at.SubtractXY(pad, pad-3))
	back.Resize(fyne.NewSize(box.Width+2*pad, box.Height+2*pad-6))
	p.objects = append(p.objects, back)
	p.write(s, at, drawing.TopLeft, size, true, ink)
}
