package paint

import (
	"image/color"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/ui/look"
)

// Measures remembers how large texts are, because measuring is what costs. The
// zero value knows none.
type Measures struct {
	known map[lettered]fyne.Size
}

type lettered struct {
	text string
	size float32
	bold bool
}

// Of is the size of a text.
func (m *Measures) Of(text string, size float32, bold bool) fyne.Size {
	k := lettered{text, size, bold}
	if s, ok := m.known[k]; ok {
		return s
	}
	if m.known == nil || len(m.known) > 4000 {
		m.known = map[lettered]fyne.Size{}
	}
	s := fyne.MeasureText(text, size, fyne.TextStyle{Bold: bold})
	m.known[k] = s
	return s
}

// Heights of Fyne's font in parts of a text's size: of capitals, from the top of a
// line to its base line, and what letters reach below that; and how far accents
// reach above capitals (from the metrics of the font; measured on a picture of it).
const (
	capitals = 0.714
	ascent   = 1.069
	descent  = 0.24
	accents  = 0.22
	slack    = 0.05 // what l and b reach above capitals, and round letters below the line
)

// letters measures for the engine that places them, in units of the screen.
type letters struct{ *Measures }

// Letters gives sizes and widths of Fyne's letters.
func (m *Measures) Letters() letter.Metrics { return letters{m} }

// Steps of the heights on paper of a drawing's texts.
const (
	titles = 5 * length.Millimetre
	names  = 3 * length.Millimetre
)

// Sizes are those of a height of letters on paper: the drawing's letters do not
// grow with it.
func (letters) Sizes(paper length.Length) []float64 {
	text, small := float64(look.Text())*capitals, float64(look.Caption())*capitals
	switch {
	case paper >= titles:
		return []float64{1.3 * text, text, small}
	case paper >= names:
		return []float64{text, small}
	default:
		return []float64{small}
	}
}

// Width is how wide a text is whose capitals are so high.
func (l letters) Width(s string, size float64, bold bool) float64 {
	return float64(l.Of(s, float32(size/capitals), bold).Width)
}

// Reach is how far its letters reach above capitals and below the base line.
func (letters) Reach(s string, size float64) (above, below float64) {
	em := size / capitals
	above, below = slack*em, slack*em
	if strings.ContainsAny(s, "gjpqyQ,;()ÇŞ") {
		below = descent * em
	}
	if strings.ContainsFunc(s, func(r rune) bool { return r >= 0xC0 && r <= 0xDE }) {
		above = accents * em
	}
	return above, below
}

// Style is how dimensions are drawn on the screen: slanted strokes end them, and
// those beside the run stay in sight where it goes beyond the sheet. widest is
// that of the figures that stand beside the run.
func Style(widest float32) letter.Style {
	text := look.Text()
	return letter.Style{
		Head: 4, Half: 4, Past: 4, Gap: 3, Figure: names, Edge: float64(0.8 * text),
		StepX: float64(max(2.1*text, widest+10)), StepY: float64(2.1 * text),
	}
}

// Placing maps the drawing to the picture, for the engine that places letters.
func (p *Painter) Placing() letter.Placing {
	return letter.Placing{At: func(q plane.Point) letter.Point {
		at := p.At(q)
		return letter.Point{X: float64(at.X), Y: -float64(at.Y)}
	}}
}

// ToBox gives an area of the screen to the engine that places letters, and OfBox
// takes one from it.
func ToBox(b Box) letter.Box {
	return letter.Box{Lo: letter.Point{X: float64(b.X1), Y: -float64(b.Y2)}, Hi: letter.Point{X: float64(b.X2), Y: -float64(b.Y1)}}
}

// OfBox is described at ToBox.
func OfBox(b letter.Box) Box {
	return Box{float32(b.Lo.X), -float32(b.Hi.Y), float32(b.Hi.X), -float32(b.Lo.Y)}
}

// Dimension draws the lines of a dimension.
func (p *Painter) Dimension(d *letter.Dimension, c color.NRGBA) {
	const thin, tick = 0.8, 1.4
	for _, s := range d.Strokes {
		p.Line(float32(s.From.X), -float32(s.From.Y), float32(s.To.X), -float32(s.To.Y), c, thin)
	}
	for _, h := range d.Heads {
		const arm = 3.5
		x, y := float32(h.Tip.X), -float32(h.Tip.Y)
		p.Line(x-arm, y+arm, x+arm, y-arm, c, tick)
	}
}

// Written paints what is written in the picture, but for the dimensions of heights
// inside of fronts. Texts that skip tells are left out; what something runs through
// has a ground.
func (p *Painter) Written(w *letter.Written, m *Measures, skip func(*letter.Text) bool) {
	for i := range w.Dimensions {
		if d := &w.Dimensions[i]; !d.Inside {
			c := p.Palette.Soft
			if d.Of.Meaning == drawing.FindingMark {
				c = p.Palette.TagPen(d.Of).Line
			}
			p.Dimension(d, c)
		}
	}
	for _, s := range w.Leaders {
		p.Line(float32(s.From.X), -float32(s.From.Y), float32(s.To.X), -float32(s.To.Y), p.Palette.Soft, 0.8)
	}
	painted := p.crossings()
	for i := range w.Texts {
		if t := &w.Texts[i]; !skip(t) && painted.through(p.inked(t)) {
			p.fill(p.ground(t), p.under(t))
		}
	}
	filled := map[drawing.Subject]Box{}
	for _, r := range w.Rings {
		b := OfBox(r.Box)
		if r.Of.Severity != drawing.OfNothing {
			filled[r.Of.Of] = b
		}
		p.ring(b, r.Of)
	}
	for i := range w.Texts {
		t := &w.Texts[i]
		if skip(t) {
			continue
		}
		c := p.LettersOn(t)
		if ring, ok := filled[drawing.Subject{Kind: drawing.FrontThing, Place: t.Of.Of.Place}]; ok && OfBox(t.Box).Within(ring) {
			c = p.Palette.OnSign
		}
		em := float32(t.Size / capitals)
		for _, l := range t.Lines {
			size := m.Of(l.Text, em, t.Bold)
			p.Write(l.Text, fyne.NewPos(float32(l.At.X), -float32(l.At.Y)-ascent*em), drawing.Anchor{Y: 1}, size, em, t.Bold, c)
		}
	}
}

// inked is where the letters of a text are, of whatever shape they are.
func (p *Painter) inked(t *letter.Text) Box {
	b, em := OfBox(t.Box), float32(t.Size/capitals)
	if t.Box.Hi.Y-t.Box.Lo.Y < 1.5*t.Size { // of one line
		base := -float32(t.Lines[0].At.Y)
		b.Y1, b.Y2 = min(b.Y1, base-(capitals+slack)*em), max(b.Y2, base+slack*em)
	}
	return b
}

// ground is what is cleared below a text that something runs through: whole pixels
// around its letters.
func (p *Painter) ground(t *letter.Text) Box {
	b := p.inked(t).Grown(2, 1)
	px := p.pixel()
	return Box{p.whole(b.X1 - px/2), p.whole(b.Y1 - px/2), p.whole(b.X2 + px/2), p.whole(b.Y2 + px/2)}
}

// under is the colour of the surface on which a text stands.
func (p *Painter) under(t *letter.Text) color.NRGBA { return p.Under(t.On) }

// Under is the colour of a surface, that of the sheet for none.
func (p *Painter) Under(r *drawing.Rectangle) color.NRGBA {
	switch {
	case r == nil:
		return p.Palette.Sheet
	case r.Meaning == drawing.Face && isFront(r):
		return p.Face(r.Of).Base
	case r.Meaning == drawing.PanelPart:
		return mixed(p.wood(r.Of).Base, p.Palette.FixedPanel, 0.5)
	case r.Meaning == drawing.Plinth && !p.Palette.Flat:
		return mixed(p.Carcass.Base, color.NRGBA{A: 255}, 0.1)
	}
	if c := p.Palette.TagPen(r.Tag).Surface; c.A == 255 {
		return c
	}
	return p.Palette.Sheet
}

// LettersOn is the colour of a text on what it stands: its meaning's, or where that
// can't be read there, whatever of ink and sheet can.
func (p *Painter) LettersOn(t *letter.Text) color.NRGBA {
	on := p.under(t)
	c := p.Palette.TagLetters(t.Of)
	wood := t.On != nil && t.On.Meaning == drawing.Face && isFront(t.On)
	switch {
	case wood && t.Of.Meaning == drawing.DimensionLine && !t.Bold, wood && t.Of.Meaning == drawing.Note:
		c = p.Face(t.On.Of).OnSoft
	case wood && t.Of.Meaning != drawing.CoverBand:
		c = p.Face(t.On.Of).On
	}
	return Legible(on, c, p.Palette.Ink, p.Palette.OnMaple)
}

// Legible is the first of some colours in which letters can be read on a surface; where
// none can, one that does.
func Legible(on color.NRGBA, tries ...color.NRGBA) color.NRGBA {
	for _, c := range tries {
		if contrast(c, on) >= legible {
			return c
		}
	}
	if dark(on) {
		return color.NRGBA{R: 0xFF, G: 0xFB, B: 0xF2, A: 255}
	}
	return color.NRGBA{R: 0x14, G: 0x10, B: 0x0C, A: 255}
}

// ring draws the ring around the number of a front, filled in the colour of the
// worst that is found about it: with a second ring for an error, square for a
// warning, round for advice.
func (p *Painter) ring(b Box, of drawing.Tag) {
	round := func(b Box, radius float32, fill, edge color.Color) {
		if !p.Shown(b) {
			return
		}
		r := fynecanvas.NewRectangle(fill)
		r.CornerRadius = radius
		if edge != nil {
			r.StrokeColor, r.StrokeWidth = edge, 1.2
		}
		moveTo(r, b)
		p.Objects = append(p.Objects, r)
	}
	b = Box{p.whole(b.X1), p.whole(b.Y1), p.whole(b.X2), p.whole(b.Y2)}
	high := b.Y2 - b.Y1
	_, c := p.Palette.Severity(of.Severity)
	switch of.Severity {
	case drawing.OfNothing:
		round(b, high/2, color.Transparent, p.Face(of.Of).On)
	case drawing.OfError:
		const between, least = 2.5, 20
		if high < least { // too low for two rings
			round(b, high/2, c, nil)
			return
		}
		round(b, high/2, p.Face(of.Of).Base, c)
		round(b.Grown(-between, -between), high/2-between, c, nil)
	case drawing.OfWarning:
		round(b, 2, c, nil)
	default:
		round(b, high/2, c, nil)
	}
}
