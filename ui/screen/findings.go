package screen

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

// banner is a flag: it tells in words what the chosen finding is about, on a ground of its own
// whose tip points at the place.
type banner struct {
	of     drawing.Tag
	say    string
	letter float32
	size   fyne.Size
	around box // with what is free around its letters
	points box // at this
}

// What a flag has around its letters.
const flagPadX, flagPadY = 8, 5

// sign is how large the sign of a flag is, which tells the severity without colour.
func (f *banner) sign() float32 { return 1.2 * f.letter }

// flag gives the flag of the chosen finding its place near what it points at,
// where no other text is.
func (p *painter) flag(m *drawing.Text) {
	places := p.chosenPlaces()
	if len(places) == 0 {
		return
	}
	at := places[0].Common(p.window())
	if at.X1 > at.X2 || at.Y1 > at.Y2 {
		return // out of sight
	}
	f := banner{of: m.Tag, say: p.say.Say(m.Say), letter: p.text, points: at}
	f.size = p.measure.Of(f.say, f.letter, true)
	const away = 12 // room for its tip
	wide, high := f.size.Width+f.sign()+flagPadX/2+2*flagPadX, f.letter*1.1+2*flagPadY
	least := float32(-1)
	for row := range 8 {
		for _, y := range [2]float32{at.Y1 - away - high - float32(row)*high/2, at.Y2 + away + float32(row)*high/2} {
			for _, x := range [3]float32{(at.X1 + at.X2 - wide) / 2, at.X2 - wide - away, at.X1 + away} {
				b := boxOf(x, y, x+wide, y+high)
				dx, dy := p.inward(b)
				b = boxOf(b.X1+dx, b.Y1+dy, b.X2+dx, b.Y2+dy)
				if bad := p.badness(b, places, row); least < 0 || bad < least {
					f.around, least = b, bad
				}
			}
		}
	}
	p.flags = append(p.flags, f)
}

// chosenPlaces are where the chosen finding is marked.
func (p *painter) chosenPlaces() []box {
	var list []box
	for _, m := range p.drawing.Marks {
		if s, ok := m.(*drawing.Spot); ok && s.Chosen {
			list = append(list, p.Spot(s))
		}
	}
	return list
}

// inward is how far a box must be moved to lie in the window.
func (p *painter) inward(b box) (dx, dy float32) {
	w := p.window()
	return max(w.X1-b.X1, 0) - max(b.X2-w.X2, 0), max(w.Y1-b.Y1, 0) - max(b.Y2-w.Y2, 0)
}

// badness is how bad a place of a flag is: what it would hide, and how far off.
func (p *painter) badness(b box, places []box, row int) float32 {
	const text, place = 100, 50
	bad := float32(row)
	for i := range p.all.Texts {
		if paint.OfBox(p.all.Texts[i].Box).Overlaps(b) {
			bad += text
		}
	}
	for _, c := range places {
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

// paintFlag paints a flag with its tip.
func (p *painter) paintFlag(f *banner) {
	b, at := f.around, f.points
	_, c := p.Palette.Severity(f.of.Severity)
	r := fynecanvas.NewRectangle(c)
	r.CornerRadius = 3
	r.Move(b.Place())
	r.Resize(b.Extent())
	p.Objects = append(p.Objects, r)
	sign := &fynecanvas.Image{FillMode: fynecanvas.ImageFillContain}
	look.SetIcon(sign, look.SeverityIcon(f.of.Severity), p.Palette.OnSign, c)
	sign.Move(fyne.NewPos(b.X1+flagPadX, (b.Y1+b.Y2-f.sign())/2))
	sign.Resize(fyne.NewSquareSize(f.sign()))
	p.Objects = append(p.Objects, sign)
	p.put(f.say, fyne.NewPos(b.X2-flagPadX, (b.Y1+b.Y2)/2), drawing.Anchor{X: 1, Y: 0.5}, f.letter, true, p.Palette.OnSign)
	if at.Y1 < b.Y2 && at.Y2 > b.Y1 {
		return // beside it
	}
	const half, long = 6, 8
	x := min(max((at.X1+at.X2)/2, b.X1+10), b.X2-10)
	y, tip := b.Y2, min(b.Y2+long, at.Y1)
	if at.Y1 < b.Y1 {
		y, tip = b.Y1, max(b.Y1-long, at.Y2)
	}
	for d := float32(-half); d <= half; d++ { // a triangle of lines
		p.Line(x+d, y, x, tip, c, 1.5)
	}
}

// backdrop paints a ground over what must not be seen.
func (p *painter) backdrop(b box, c color.NRGBA) { p.Surface(b, c, color.NRGBA{}, 0) }
