package screen

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/model/length"
	"frontlay/ui/look"
)

// measures remembers how large texts are, because measuring is what costs.
type measures struct {
	known map[measured]fyne.Size
}

type measured struct {
	text string
	size float32
	bold bool
}

func (m *measures) of(text string, size float32, bold bool) fyne.Size {
	k := measured{text, size, bold}
	if s, ok := m.known[k]; ok {
		return s
	}
	if m.known == nil || len(m.known) > 4000 {
		m.known = map[measured]fyne.Size{}
	}
	s := fyne.MeasureText(text, size, fyne.TextStyle{Bold: bold})
	m.known[k] = s
	return s
}

// letters gives the screen size of letters of a height on paper.
func (p *painter) letters(height length.Length) float32 {
	switch {
	case height >= 5*length.Millimetre:
		return p.text * 1.3
	case height >= 3*length.Millimetre:
		return p.text
	default:
		return p.text * 0.9
	}
}

// write puts a text with its anchor at a place and returns its box.
func (p *painter) write(s string, at fyne.Position, a drawing.Anchor, size float32, bold bool, c color.NRGBA) (fyne.Position, fyne.Size) {
	box := p.measure.of(s, size, bold)
	pos := anchored(at, box, a)
	if p.shown(pos.X, pos.Y, pos.X+box.Width, pos.Y+box.Height) {
		t := fynecanvas.NewText(s, c)
		t.TextSize, t.TextStyle.Bold = size, bold
		t.Move(pos)
		t.Resize(box)
		p.objects = append(p.objects, t)
	}
	return pos, box
}

// anchored gives the upper left corner of a box whose anchor is at a place.
func anchored(at fyne.Position, box fyne.Size, a drawing.Anchor) fyne.Position {
	switch a {
	case drawing.MiddleCentre, drawing.BottomCentre, drawing.TopCentre:
		at.X -= box.Width / 2
	case drawing.MiddleRight, drawing.BottomRight, drawing.TopRight:
		at.X -= box.Width
	}
	switch a {
	case drawing.MiddleCentre, drawing.MiddleLeft, drawing.MiddleRight:
		at.Y -= box.Height / 2
	case drawing.BottomLeft, drawing.BottomCentre, drawing.BottomRight:
		at.Y -= box.Height
	}
	return at
}

// textMark writes a text, shortened to the area it should stay in, or left out
// where not even two letters fit. It moves out of the way of texts that are
// there already; where that is not enough it is left out, but for findings,
// which are always written.
func (p *painter) textMark(m *drawing.Text) {
	size := p.letters(m.Size)
	s := p.say.Say(m.Say)
	at := p.view.at(m.At)
	lowest, highest := float32(-1e6), float32(1e6)
	if !m.Within.Empty() {
		pos, area := p.box(m.Within)
		const pad = 3
		right := p.beside(s, at, m, pos, area, size)
		room := right - pos.X - 2*pad
		if !m.Short.Empty() && p.measure.of(s, size, m.Bold).Width > room {
			// A text with a figure in it is never cut: the figure alone, or nothing.
			if s = p.say.Say(m.Short); p.measure.of(s, size, m.Bold).Width > room {
				return
			}
		}
		if s = p.shortened(s, room, size, m.Bold); s == "" {
			return
		}
		box := p.measure.of(s, size, m.Bold)
		if box.Height > area.Height {
			return
		}
		to := anchored(at, box, m.Anchor)
		at.X += max(pos.X+pad-to.X, 0) + min(right-pad-to.X-box.Width, 0)
		at.Y += max(pos.Y-to.Y, 0) + min(pos.Y+area.Height-to.Y-box.Height, 0)
		lowest, highest = pos.Y, pos.Y+area.Height
	}
	box := p.measure.of(s, size, m.Bold)
	finding := m.Meaning == drawing.FindingMark
	at, free := p.clear(at, box, m.Anchor, lowest, highest, finding)
	if !free && !finding {
		return
	}
	if finding {
		p.backdrop(anchored(at, box, m.Anchor), box)
	}
	p.write(s, at, m.Anchor, size, m.Bold, p.palette.Letters(m.Meaning))
	p.taken = append(p.taken, taken{anchored(at, box, m.Anchor), box})
}

// beside is how far to the right a text can go in its area: to its edge, or to a
// figure that stands at the text's height.
func (p *painter) beside(s string, at fyne.Position, m *drawing.Text, pos fyne.Position, area fyne.Size, size float32) float32 {
	right := pos.X + area.Width
	box := p.measure.of(s, size, m.Bold)
	to := anchored(at, box, m.Anchor)
	to.Y += max(pos.Y-to.Y, 0) + min(pos.Y+area.Height-to.Y-box.Height, 0)
	for _, f := range p.figures {
		inside := f.at.X > pos.X+area.Width/2 && f.at.X < right
		if inside && to.Y < f.at.Y+f.size.Height && f.at.Y < to.Y+box.Height {
			right = f.at.X - size/2 // a name must not read as part of the figure
		}
	}
	return right
}

// taken is a place that a text has.
type taken struct {
	at   fyne.Position
	size fyne.Size
}

// clear finds a place near the wanted one where no other text stands: there, or
// up or down by whole lines between two heights (only up where up is asked for).
func (p *painter) clear(at fyne.Position, box fyne.Size, a drawing.Anchor, lowest, highest float32, up bool) (fyne.Position, bool) {
	moves := []float32{0, 1, -1, 0.5, -0.5}
	if up {
		moves = []float32{0, -1, -2, -3, -4, -5}
	}
	for _, m := range moves {
		to := at.AddXY(0, m*box.Height)
		corner := anchored(to, box, a)
		if corner.Y >= lowest-1 && corner.Y+box.Height <= highest+1 && !p.overText(corner, box) {
			return to, true
		}
	}
	return at, false
}

// backdrop clears the ground under a text that must be read.
func (p *painter) backdrop(pos fyne.Position, size fyne.Size) {
	r := fynecanvas.NewRectangle(p.palette.Paper)
	r.CornerRadius = 2
	r.Move(pos.SubtractXY(2, 0))
	r.Resize(size.AddWidthHeight(4, 0))
	p.objects = append(p.objects, r)
}

// overText tells that a box lies over a figure or a text.
func (p *painter) overText(pos fyne.Position, size fyne.Size) bool {
	for _, t := range p.taken {
		if pos.X < t.at.X+t.size.Width && t.at.X < pos.X+size.Width && pos.Y+1 < t.at.Y+t.size.Height && t.at.Y+1 < pos.Y+size.Height {
			return true
		}
	}
	for _, f := range p.figures {
		if pos.X < f.at.X+f.size.Width && f.at.X < pos.X+size.Width && pos.Y+1 < f.at.Y+f.size.Height && f.at.Y+1 < pos.Y+size.Height {
			return true
		}
	}
	return false
}

// shortened cuts a text to a width with an ellipsis, to nothing where fewer
// than two letters would be left.
func (p *painter) shortened(s string, width, size float32, bold bool) string {
	fits := func(s string) bool { return p.measure.of(s, size, bold).Width <= width }
	if fits(s) {
		return s
	}
	r := []rune(s)
	for n := len(r) - 1; n >= 2; n-- {
		if t := string(r[:n]) + "…"; fits(t) {
			return t
		}
	}
	return ""
}

// dimension draws a dimension with its figure lying flat in a break of the line
// (unidirectional dimensioning, allowed by ISO 129), ends marked by slanted
// strokes. Where the figure does not fit between the ends it stands beside them.
func (p *painter) dimension(m *drawing.Dimension) {
	pen := p.palette.Pen(drawing.DimensionLine)
	a, b := p.view.at(m.From), p.view.at(m.To)
	off := float32(m.Level) * p.levelStep(m.Vertical)
	size := p.text * 0.95
	s := m.Prefix + p.say.Figure(m.Value)
	box := p.measure.of(s, size, false)
	const pad = 3
	ink := p.palette.Letters(drawing.DimensionLine)
	if m.Vertical {
		x := p.view.px(m.Line) + off
		y1, y2 := max(a.Y, b.Y), min(a.Y, b.Y) // y1 is below
		p.extension(a.X, a.Y, x, a.Y, pen)
		p.extension(b.X, b.Y, x, b.Y, pen)
		p.tick(x, y1, pen)
		p.tick(x, y2, pen)
		mid := (y1 + y2) / 2
		if y1-y2 < box.Height+4 {
			p.line(x, y1, x, y2, pen.Line, pen.Width)
			if y1-y2 < box.Height-4 {
				return
			}
			beside, anchor := x+5, drawing.MiddleLeft
			if face, ok := p.faces[m.Of.Place]; ok && m.Of.Kind == drawing.FrontHeight && beside+box.Width > p.view.px(face.Max.X) {
				beside, anchor = x-5, drawing.MiddleRight // inside its front
			}
			pos, sz := p.write(s, fyne.NewPos(beside, mid), anchor, size, false, ink)
			p.figures = append(p.figures, figure{m.Of, pos, sz})
			return
		}
		at := fyne.NewPos(x, mid)
		if face, ok := p.faces[m.Of.Place]; ok && m.Of.Kind == drawing.FrontHeight && m.Level == 0 {
			at.X = min(at.X, p.view.px(face.Max.X)-box.Width/2-5) // inside its front
		}
		if at.X+box.Width/2 < x {
			p.line(x, y1, x, y2, pen.Line, pen.Width)
		} else {
			p.line(x, y1, x, mid+box.Height/2, pen.Line, pen.Width)
			p.line(x, mid-box.Height/2, x, y2, pen.Line, pen.Width)
		}
		pos, sz := p.write(s, at, drawing.MiddleCentre, size, false, ink)
		p.figures = append(p.figures, figure{m.Of, pos, sz})
		return
	}
	y := p.view.py(m.Line) - off
	x1, x2 := min(a.X, b.X), max(a.X, b.X)
	p.extension(a.X, a.Y, a.X, y, pen)
	p.extension(b.X, b.Y, b.X, y, pen)
	p.tick(x1, y, pen)
	p.tick(x2, y, pen)
	mid := (x1 + x2) / 2
	if x2-x1 < box.Width+2*pad {
		p.line(x1, y, x2, y, pen.Line, pen.Width)
		pos, sz := p.write(s, fyne.NewPos(mid, y-2), drawing.BottomCentre, size, false, ink)
		p.figures = append(p.figures, figure{m.Of, pos, sz})
		return
	}
	p.line(x1, y, mid-box.Width/2-pad, y, pen.Line, pen.Width)
	p.line(mid+box.Width/2+pad, y, x2, y, pen.Line, pen.Width)
	pos, sz := p.write(s, fyne.NewPos(mid, y), drawing.MiddleCentre, size, false, ink)
	p.figures = append(p.figures, figure{m.Of, pos, sz})
}

// extension draws the line from a measured point to its dimension line, with a
// small distance from the point and a little past the line.
func (p *painter) extension(x1, y1, x2, y2 float32, pen look.Pen) {
	const free, past = 3, 4
	switch {
	case x2-x1 > free:
		p.line(x1+free, y1, x2+past, y2, pen.Line, pen.Width)
	case x1-x2 > free:
		p.line(x1-free, y1, x2-past, y2, pen.Line, pen.Width)
	case y2-y1 > free:
		p.line(x1, y1+free, x2, y2+past, pen.Line, pen.Width)
	case y1-y2 > free:
		p.line(x1, y1-free, x2, y2-past, pen.Line, pen.Width)
	}
}

// tick marks the end of a dimension line.
func (p *painter) tick(x, y float32, pen look.Pen) {
	const arm, width = 4, 1.4
	p.line(x-arm, y+arm, x+arm, y-arm, pen.Line, width)
}
