package screen

import (
	"image/color"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/model/message"
)

// flag gives the flag of the chosen finding its place near what it points at,
// where no other text is.
func (p *painter) flag(m *drawing.Text) {
	if len(p.chosen) == 0 {
		return
	}
	at, letter := p.chosen[0].Common(p.window()), p.letters(m.Size)
	if at.X1 > at.X2 || at.Y1 > at.Y2 {
		return // out of sight
	}
	s := p.signed(m.Say, m.Severity)
	size := p.measure.of(s, letter, true)
	ink := inkOf(fyne.Position{}, size, letter)
	const away = 12 // room for its tip
	high := ink.Y2 - ink.Y1 + 2*flagPadY
	best, least := fyne.Position{}, float32(-1)
	for row := range 8 {
		for _, y := range [2]float32{at.Y1 - away - high - float32(row)*high/2, at.Y2 + away + float32(row)*high/2} {
			for _, x := range [3]float32{(at.X1 + at.X2 - size.Width) / 2, at.X2 - size.Width - away, at.X1 + away} {
				to := fyne.NewPos(x-ink.X1, y+flagPadY-ink.Y1)
				to = to.AddXY(p.inward(inkOf(to, size, letter).Grown(flagPadX, flagPadY)))
				around := inkOf(to, size, letter).Grown(flagPadX, flagPadY)
				if bad := p.badness(around, row); least < 0 || bad < least {
					best, least = to, bad
				}
			}
		}
	}
	for i := range p.taken { // half a word is worse than none
		t := &p.taken[i]
		t.hidden = t.hidden || t.ink().Overlaps(inkOf(best, size, letter).Grown(flagPadX, flagPadY))
	}
	p.take(taken{of: m.Tag, say: s, at: best, size: size, letter: letter, bold: true, colour: p.Palette.OnSign, tagged: true, flag: true})
}

// What a flag has around its letters.
const flagPadX, flagPadY = 8, 5

// inward is how far a box must be moved to lie in the window.
func (p *painter) inward(b box) (dx, dy float32) {
	w := p.window()
	return max(w.X1-b.X1, 0) - max(b.X2-w.X2, 0), max(w.Y1-b.Y1, 0) - max(b.Y2-w.Y2, 0)
}

// badness is how bad a place of a flag is: what it would hide, and how far off.
func (p *painter) badness(b box, row int) float32 {
	const text, place = 100, 50
	bad := float32(row)
	for i := range p.taken {
		if p.taken[i].ink().Overlaps(b) {
			bad += text
		}
	}
	for _, c := range p.chosen {
		if c.Overlaps(b) {
			bad += place
		}
	}
	for _, r := range p.reserved {
		if r.Overlaps(b) {
			bad += text
		}
	}
	return bad
}

// flagGround paints the ground of a flag with its tip.
func (p *painter) flagGround(t *taken) {
	b := t.ink().Grown(flagPadX, flagPadY)
	_, c := p.Palette.Severity(t.of.Severity)
	p.rounded(b, 3, c, nil)
	at := p.chosen[0].Common(p.window())
	const half, long = 6, 8
	x := min(max((at.X1+at.X2)/2, b.X1+10), b.X2-10)
	y, tip := b.Y2, min(b.Y2+long, at.Y1)
	if at.Y1 < b.Y1 {
		y, tip = b.Y1, max(b.Y1-long, at.Y2)
	}
	if at.Y1 < b.Y2 && at.Y2 > b.Y1 {
		return // beside it
	}
	for d := float32(-half); d <= half; d++ { // a triangle of lines
		p.Line(x+d, y, x, tip, c, 1.5)
	}
}

// rounded paints a rectangle with round corners; edge nil: without one.
func (p *painter) rounded(b box, radius float32, fill, edge color.Color) {
	r := fynecanvas.NewRectangle(fill)
	r.StrokeColor, r.CornerRadius = edge, radius
	if edge != nil {
		r.StrokeWidth = 1.5
	}
	r.Move(b.Place())
	r.Resize(b.Extent())
	p.Objects = append(p.Objects, r)
}

// signed is a text with the sign of a severity, which tells it without colour.
func (p *painter) signed(m message.Message, s drawing.Severity) string {
	sign, _ := p.Palette.Severity(s)
	return sign + " " + p.say.Say(m)
}

// ringed tells that the text is the name of a front about which something is
// found.
func (t *taken) ringed() bool {
	return t.bold && t.of.Meaning == drawing.Label && t.of.Severity != drawing.OfNothing
}

// numberRing fills the ring around the number of a front in the colour of the worst
// that is found about it: round for advice, with a second ring for an error, square
// for a warning.
func (p *painter) numberRing(t *taken) {
	number, _, _ := strings.Cut(t.say, "  ")
	ink := t.ink()
	ink.X2 = ink.X1 + p.measure.of(number, t.letter, t.bold).Width
	b, least := ink.Grown(4, 2), 1.5*t.letter
	b = b.Grown(max(0, (least-(b.X2-b.X1))/2), max(0, (least-(b.Y2-b.Y1))/2))
	for i := range p.taken {
		if other := &p.taken[i]; other != t && other.ink().Overlaps(b) {
			b = ink.Grown(1.5, 1)
		}
	}
	_, c := p.Palette.Severity(t.of.Severity)
	high := b.Y2 - b.Y1
	switch t.of.Severity {
	case drawing.OfError:
		const between = 2.5
		p.rounded(b, high/2, p.floor.under(b), c)
		p.rounded(b.Grown(-between, -between), high/2-between, c, nil)
	case drawing.OfWarning:
		p.rounded(b, 2, c, nil)
	default:
		p.rounded(b, high/2, c, nil)
	}
}

// writeRinged writes the name of a front whose number stands in a filled ring.
func (p *painter) writeRinged(t *taken, colour color.NRGBA) {
	number, name, named := strings.Cut(t.say, "  ")
	p.write(number, t.at, drawing.Anchor{Y: 1}, t.letter, t.bold, p.Palette.OnSign)
	if named {
		before := t.size.Width - p.measure.of(name, t.letter, t.bold).Width
		p.write(name, t.at.AddXY(before, 0), drawing.Anchor{Y: 1}, t.letter, t.bold, colour)
	}
}

// traceSpot remembers the mark of a place that a finding speaks of: letters keep
// off it where they can.
func (p *painter) traceSpot(m *drawing.Spot) {
	b := p.Spot(m)
	if m.Chosen {
		p.chosen = append(p.chosen, b)
	}
	const thick = 3
	switch m.Shape {
	case mark.Outline, mark.Cross:
		for _, e := range edges(b) {
			p.markAll(e.Grown(thick, thick), weak)
		}
		if m.Shape == mark.Cross {
			p.mark(b.X1, b.Y1, b.X2, b.Y2, weak, 0)
			p.mark(b.X1, b.Y2, b.X2, b.Y1, weak, 0)
		}
	default:
		p.markAll(b.Grown(thick, thick), weak)
	}
}
