package screen

import (
	"slices"

	"fyne.io/fyne/v2"

	"frontlay/layout/drawing"
	"frontlay/model/message"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

// behind names what is seen through the fronts, in the order of the legend.
var behind = []struct {
	as  drawing.Meaning
	say message.Message
}{
	{drawing.RunnerPart, message.New("drawer and runner")},
	{drawing.DrawerBottom, message.New("drawer bottom")},
	{drawing.CoverBand, message.New("cover: enough")},
	{drawing.FindingMark, message.New("cover: short")},
	{drawing.OverlayBand, message.New("front on the carcass")},
	{drawing.HoleEdge, message.New("hole in the rear face")},
}

// behindFronts is the head of the legend.
var behindFronts = message.New("Behind the fronts")

// Sizes of a legend, in units of the screen.
const (
	sampleWide, sampleHigh = 18, 9
	fromSample             = 8
	fromColumn             = 24
	legendStep             = 8 // around a legend
)

// legend tells, where one sees through the fronts, what is seen: in the room that
// picture, card and corner leave, as low as it goes, in as few columns as it takes.
// Where there is no room there is none.
func (p *painter) legend(card, run box) box {
	line, head := float32(1.5)*look.Caption(), 1.6*p.text
	wide := float32(0)
	for _, e := range behind {
		wide = max(wide, sampleWide+fromSample+p.measure.Of(p.say.Say(e.say), look.Caption(), false).Width)
	}
	ground := p.PY(0)
	taken := append(p.taken(), card.Grown(fromEdge, fromEdge), run, boxOf(0, ground-1, p.Size.Width, ground+1))
	for columns := 1; columns <= len(behind); columns++ {
		rows := (len(behind) + columns - 1) / columns
		if rows*(columns-1) >= len(behind) {
			continue // the last would be empty
		}
		size := fyne.NewSize(float32(columns)*(wide+fromColumn)-fromColumn, head+float32(rows)*line)
		if b, ok := p.free(size, taken); ok {
			p.backdrop(b.Grown(legendStep/2, legendStep/4), p.Palette.Sheet)
			p.put(p.say.Say(behindFronts), b.Place(), drawing.Anchor{Y: 1}, p.text, true, p.Palette.Ink)
			for i, e := range behind {
				x := b.X1 + float32(i/rows)*(wide+fromColumn)
				y := b.Y1 + head + (float32(i%rows)+0.5)*line
				p.Sample(e.as, boxOf(x, y-sampleHigh/2, x+sampleWide, y+sampleHigh/2))
				p.put(p.say.Say(e.say), fyne.NewPos(x+sampleWide+fromSample, y), drawing.Anchor{Y: 0.5}, look.Caption(), false, p.Palette.Soft)
			}
			return b
		}
	}
	return box{}
}

// free is the lowest place of the sheet where a size has room clear of what is taken,
// of those the leftmost.
func (p *painter) free(size fyne.Size, taken []box) (box, bool) {
	w := p.window().Grown(-fromEdge, -fromEdge)
	for y := w.Y2 - size.Height; y >= w.Y1; y -= legendStep / 2 {
		for x := w.X1; x+size.Width <= w.X2; {
			b := paint.BoxAt(fyne.NewPos(x, y), size)
			i := slices.IndexFunc(taken, b.Grown(legendStep, legendStep/2).Overlaps)
			if i < 0 {
				return b, true
			}
			x = max(taken[i].X2+legendStep, x) + 1
		}
	}
	return box{}, false
}

// taken is where texts, dimensions and what else the sheet needs stand.
func (p *painter) taken() []box {
	written, _ := p.texts()
	list := append(p.chosenPlaces(), p.reserved...)
	for i := range written {
		list = append(list, written[i].box)
	}
	for i := range p.all.Dimensions {
		for _, s := range p.all.Dimensions[i].Strokes {
			x1, y1, x2, y2 := float32(s.From.X), -float32(s.From.Y), float32(s.To.X), -float32(s.To.Y)
			list = append(list, boxOf(min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2)).Grown(1, 1))
		}
	}
	return list
}
