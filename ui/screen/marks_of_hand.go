package screen

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/ui/session"
	"frontlay/ui/tool"
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
		p.markEdges(boxAt(pos, size).grown(grow, grow), quiet)
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
// make, and figures. Texts of the picture that its lines would run through, or
// that stand so near to what would be made that they read as a part of it, are
// covered first: they are of what will not be any more.
func (c *Screen) paintFeedback(p *painter) {
	letters := slices.Clone(c.written)
	hide := func(b box) { p.backdrop(hidden(b), p.floor.under(b)) }
	clear := func(lines ...stroke) {
		letters = slices.DeleteFunc(letters, func(b box) bool {
			near := b.grown(2, 1)
			meets := slices.ContainsFunc(lines, func(l stroke) bool { return l.meets(near) })
			if meets {
				hide(b)
			}
			return meets
		})
	}
	if o := c.feedback.Outline; !o.Empty() {
		pos, size := p.box(o)
		frame := edges(boxAt(pos, size))
		clear(frame[:]...)
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
		line := box{min(a.X, b.X), min(a.Y, b.Y), max(a.X, b.X), max(a.Y, b.Y)}
		switch { // half a line of letters stays free at both sides of what would be made
		case l.Snapped:
		case line.x1 < line.x2:
			line = line.grown(0, p.text/2)
		default:
			line = line.grown(p.text/2, 0)
		}
		clear(stroke{box: line})
		if l.Snapped {
			p.dashed(a.X-12, a.Y, b.X+12, b.Y, p.palette.Guide, 1.5)
		} else {
			p.line(a.X, a.Y, b.X, b.Y, p.palette.Accent, 1.5)
		}
	}
	var labels []placed
	for _, l := range c.feedback.Labels {
		labels = append(labels, placeLabel(p, l, letters))
	}
	for _, l := range labels { // half a word is worse than none
		for _, b := range letters {
			if b.grown(2, 1).overlaps(l.around) {
				hide(b)
			}
		}
	}
	for _, l := range labels {
		paintLabel(p, l)
	}
}

// hidden is what is covered to hide letters: a little more than they take,
// because they are painted at whole pixels.
func hidden(letters box) box {
	return box{letters.x1 - 2, letters.y1 - 2.5, letters.x2 + 2, letters.y2 + 1}
}

// placed is a label of the tool with its place: that of its letters, and of its
// ground.
type placed struct {
	tool.Label
	say    string
	letter float32
	at     fyne.Position
	around box
}

// placeLabel finds the place of a label.
func placeLabel(p *painter, l tool.Label, letters []box) placed {
	const pad = 5
	d := placed{Label: l, say: p.say.Say(l.Say), letter: p.text * 1.1}
	size := p.measure.of(d.say, d.letter, true)
	at := p.view.at(l.At)
	if l.Centred {
		at = at.SubtractXY(size.Width/2, size.Height/2)
		if !l.Within.Empty() {
			at = besideLetters(at, size, boxAt(p.box(l.Within)), letters)
		}
	} else {
		at = at.AddXY(16, -size.Height-12)
	}
	at.X = min(max(at.X, pad), max(p.size.Width-size.Width-pad, pad))
	at.Y = min(max(at.Y, pad), max(p.size.Height-size.Height-pad, pad))
	d.at, d.around = at, boxAt(at, size).grown(pad, pad-3)
	return d
}

// paintLabel writes a label on a ground of its own.
func paintLabel(p *painter, l placed) {
	ink := p.palette.Accent
	if l.Warn {
		ink = p.palette.Error
	}
	back := fynecanvas.NewRectangle(p.palette.Paper)
	back.StrokeColor, back.StrokeWidth, back.CornerRadius = ink, 1, 3
	back.Move(fyne.NewPos(l.around.x1, l.around.y1))
	back.Resize(fyne.NewSize(l.around.x2-l.around.x1, l.around.y2-l.around.y1))
	p.objects = append(p.objects, back)
	p.write(l.say, l.at, drawing.TopLeft, l.letter, true, ink)
}

// besideLetters moves a label off its place to the nearest one in its area where
// it covers no text of the picture. Where there is none it stays.
func besideLetters(at fyne.Position, size fyne.Size, area box, letters []box) fyne.Position {
	const pad = 8
	middle := (area.y1 + area.y2) / 2
	l := place{area: box{
		area.x1 + pad, min(area.y1+2, middle-size.Height/2), area.x2 - pad, max(area.y2-2, middle+size.Height/2),
	}}
	for _, b := range letters {
		l.taken = append(l.taken, b.grown(pad, 4))
	}
	letter := size.Height / 1.4
	if to, ok := l.seek(at, size, letter, search{rows: 12, shift: anywhere, least: none}); ok {
		return to
	}
	return at
}
