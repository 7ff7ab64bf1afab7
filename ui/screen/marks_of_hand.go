package screen

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/ui/paint"
)

// paintSelection draws a frame around each thing that is selected: under the
// letters, which have their places already.
func (c *Screen) paintSelection(p *painter) {
	if c.subject != Elevation {
		return
	}
	for _, t := range c.session.Selection() {
		r, ok := c.rectOf(t)
		if !ok {
			continue
		}
		if t.Kind == drawing.DivisionThing || t.Kind == drawing.PartitionThing {
			p.Bar(p.Rect(r))
			continue
		}
		p.Selected(p.Rect(r))
	}
}

// rectOf gives where a thing is in the run.
func (c *Screen) rectOf(t drawing.Subject) (plane.Rect, bool) {
	pl := c.session.Result().Plan
	switch t.Kind {
	case drawing.FrontThing:
		if f := pl.FrontAt(t.Place); f != nil {
			return f.Face, true
		}
	case drawing.DivisionThing:
		above := t.Place
		above.Front++
		lo, up := pl.FrontAt(t.Place), pl.FrontAt(above)
		if lo != nil && up != nil {
			return plane.R(lo.Face.Min.X, lo.Face.Max.Y, lo.Face.Max.X, up.Face.Min.Y), true
		}
	case drawing.BayThing:
		if b := pl.BayAt(t.Place); b != nil {
			return b.Opening, true
		}
	case drawing.CabinetThing:
		if cab := pl.CabinetAt(t.Place); cab != nil {
			return cab.Outline, true
		}
	case drawing.PartitionThing:
		if cab := pl.CabinetAt(t.Place); cab != nil && t.Place.Bay >= 0 && t.Place.Bay < len(cab.Partitions) {
			return cab.Partitions[t.Place.Bay], true
		}
	}
	return plane.Rect{}, false
}

// Where gives the box, in the widget's own units, of a thing or of a figure that
// is shown and can be typed; ok is false where it is not on the drawing.
func (c *Screen) Where(t drawing.Subject) (at fyne.Position, size fyne.Size, ok bool) {
	for _, f := range c.figures {
		if f.of == t {
			return f.at, f.size, true
		}
	}
	r, ok := c.rectOf(t)
	if !ok {
		return at, size, false
	}
	at, size = c.view.Box(r)
	return at, size, true
}

// paintFeedback draws what the tool shows: lines it was drawn to, what it would
// make, and figures. Texts of the picture that its lines would run through, or
// that stand so near to what would be made that they read as a part of it, are
// covered first: they are of what will not be any more.
func (c *Screen) paintFeedback(p *painter) {
	letters := slices.Clone(c.written)
	var made box // the outline, once its tint lies over the picture
	// clear hides the texts that meet something, and those that what hides them
	// would cover in part: half a word is worse than none.
	clear := func(meet ...box) {
		for n := 0; n < len(meet); n++ {
			letters = slices.DeleteFunc(letters, func(t text) bool {
				if !t.Grown(2, 2).Overlaps(meet[n]) {
					return false
				}
				over := hidden(t.box)
				ground := t.on
				for _, of := range c.session.Selection() {
					if r, ok := c.rectOf(of); ok && over.Within(p.Rect(r)) {
						ground = p.Tinted(ground)
					}
				}
				if over.Within(made) {
					ground = paint.Under(ground, madeTint(p))
				}
				p.backdrop(over, ground)
				meet = append(meet, over)
				return true
			})
		}
	}
	if o := c.feedback.Outline; !o.Empty() {
		b := p.Rect(o)
		clear(boxOf(b.X1, b.Y1, b.X2, b.Y1), boxOf(b.X1, b.Y2, b.X2, b.Y2), boxOf(b.X1, b.Y1, b.X1, b.Y2), boxOf(b.X2, b.Y1, b.X2, b.Y2))
		r := fynecanvas.NewRectangle(color.NRGBA{})
		r.FillColor, r.StrokeColor, r.StrokeWidth = madeTint(p), p.Palette.Accent, 1.5
		r.Move(b.Place())
		r.Resize(b.Extent())
		p.Objects = append(p.Objects, r)
		made = b
	}
	for _, t := range c.feedback.Under {
		c.paintUnder(p, t)
	}
	for _, l := range c.feedback.Lines {
		a, b := p.At(l.From), p.At(l.To)
		if l.Grip {
			p.Line(a.X, a.Y, b.X, b.Y, p.Palette.Accent, 3)
			continue
		}
		line := boxOf(min(a.X, b.X), min(a.Y, b.Y), max(a.X, b.X), max(a.Y, b.Y))
		switch { // half a line of letters stays free at both sides of what would be made
		case l.Snapped:
		case line.X1 < line.X2:
			line = line.Grown(0, p.text/2)
		default:
			line = line.Grown(p.text/2, 0)
		}
		clear(line)
		if l.Snapped {
			p.Dashed(a.X-12, a.Y, b.X+12, b.Y, p.Palette.Guide, 1.5)
		} else {
			p.Line(a.X, a.Y, b.X, b.Y, p.Palette.Accent, 1.5)
		}
	}
	labels := placeLabels(p, c.feedback.Labels, letters, c.tags)
	for _, l := range labels {
		clear(l.around)
	}
	for _, l := range labels {
		paintLabel(p, l)
	}
}

// madeTint lies over what the tool would make.
func madeTint(p *painter) color.NRGBA {
	tint := p.Palette.Accent
	tint.A = 0x30
	return tint
}

// paintUnder shows that a press would be about a thing: a bar on what can be taken
// hold of, a line under what can be typed, a tint on a front.
func (c *Screen) paintUnder(p *painter, t drawing.Subject) {
	if f := c.figureOf(t); f != nil {
		y := f.at.Y + f.size.Height + 2
		p.Line(f.at.X, y, f.at.X+f.size.Width, y, p.Palette.Accent, 1.5)
		return
	}
	r, ok := c.rectOf(t)
	if !ok {
		return
	}
	switch t.Kind {
	case drawing.DivisionThing, drawing.PartitionThing:
		p.Bar(p.Rect(r))
	case drawing.FrontThing:
		p.Pointed(p.Rect(r))
		if p.all != nil {
			p.inside(func(of drawing.Subject) bool { return of == t }, p.Palette.Soft)
		}
	}
}

// hidden is what is covered to hide letters: a little more than they take,
// because they are painted at whole pixels.
func hidden(letters box) box {
	return boxOf(letters.X1-2, letters.Y1-1.7, letters.X2+2, letters.Y2+1)
}
