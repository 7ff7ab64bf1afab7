package screen

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/layout/drawing"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/bar"
	"frontlay/ui/look"
	"frontlay/ui/paint"
	"frontlay/ui/tip"
)

// corner is what stands in the lower right corner of the sheet: how large the
// picture is, and buttons that change it.
type corner struct {
	c                 *Screen
	ground            *fynecanvas.Rectangle
	closer, away, fit *bar.Button
	scale             *fynecanvas.Text
	object            *fyne.Container
}

// Steps of the zoom by its buttons and keys.
const (
	zoomIn  = 1.25
	zoomOut = 1 / zoomIn
)

func newCorner(c *Screen) *corner {
	k := &corner{c: c, ground: fynecanvas.NewRectangle(color.Transparent), scale: fynecanvas.NewText("", color.Black)}
	k.away = bar.NewButton(bar.Plain, "minus", "", func() { c.Zoom(zoomOut) })
	k.away.Tip = func() tip.Text { return tip.Text{Name: c.say().Say(message.New("Further away")), Keys: "-"} }
	k.closer = bar.NewButton(bar.Plain, "plus", "", func() { c.Zoom(zoomIn) })
	k.closer.Tip = func() tip.Text { return tip.Text{Name: c.say().Say(message.New("Closer")), Keys: "+"} }
	k.fit = bar.NewButton(bar.Plain, "fit", "", c.Fit)
	k.fit.Tip = func() tip.Text { return tip.Text{Name: c.say().Say(message.New("Show the whole run")), Keys: "0"} }
	k.object = container.NewWithoutLayout(k.ground, k.away, k.scale, k.closer, k.fit)
	return k
}

// fromEdge is between what stands in a corner and the edges of the sheet.
const fromEdge = 12

// unitsPerMM is how many units of the screen a millimetre has that is measured
// with a rule on a screen of 96 units an inch, which is what desktops take for a
// screen that tells nothing else.
const unitsPerMM = 96 / 25.4

// ratio tells how large the picture is, as the scales of drawings are told.
func ratio(say message.Language, scale float64) string {
	if scale >= unitsPerMM {
		return say.Number(rounded(scale/unitsPerMM)) + " : 1"
	}
	return "1 : " + say.Number(rounded(unitsPerMM/scale))
}

// rounded keeps one decimal of a figure below 10, none of others.
func rounded(v float64) float64 {
	if v < 9.95 {
		return float64(int(v*10+0.5)) / 10
	}
	return float64(int(v + 0.5))
}

// place puts the buttons into the corner of the sheet, and shows the scale of the
// moment.
func (k *corner) place() {
	p := look.Current()
	k.ground.FillColor, k.ground.StrokeColor, k.ground.StrokeWidth, k.ground.CornerRadius = p.Field, p.FieldEdge, 1, 6
	k.scale.Text, k.scale.Color, k.scale.TextSize = ratio(k.c.say(), k.c.view.Scale), p.Ink, look.Text()
	k.scale.Alignment = fyne.TextAlignCenter
	one := k.away.MinSize()
	wide := k.c.measure.Of("1 : 88.8", look.Text(), false).Width + 16
	x, y := float32(0), float32(0)
	put := func(o fyne.CanvasObject, w float32) {
		o.Resize(fyne.NewSize(w, one.Height))
		o.Move(fyne.NewPos(x, y))
		x += w
	}
	put(k.away, one.Width)
	put(k.scale, wide)
	put(k.closer, one.Width)
	put(k.fit, one.Width)
	k.ground.Resize(fyne.NewSize(x, one.Height))
	k.object.Resize(k.ground.Size())
	s := k.c.Size()
	k.object.Move(fyne.NewPos(s.Width-x-fromEdge, s.Height-one.Height-fromEdge))
	fynecanvas.Refresh(k.scale)
	fynecanvas.Refresh(k.ground)
}

// box is what the buttons and the scale bar take of the sheet.
func (k *corner) box() box { return paint.BoxAt(k.object.Position(), k.object.Size()) }

// Sizes of the scale bar, in units of the screen.
const (
	leastBar, mostBar = 70, 215
	barTick           = 6
)

// barOf is the length that a scale bar shows: the longest usual one that is not
// too long.
func barOf(u length.Unit, scale float64) length.Length {
	best := steps(u)[0]
	for _, s := range steps(u) {
		if s.MM()*scale <= mostBar {
			best = s
		}
	}
	return best
}

// scaleBar is a length that is shown, and where it stands beside the buttons of the corner.
type scaleBar struct {
	of     length.Length
	say    string
	x1, x2 float32
	y      float32
	whole  box // with its figure and some room; empty: there is none
}

// bar is the scale bar of the moment.
func (k *corner) bar(p *painter) scaleBar {
	b := scaleBar{of: barOf(p.say.Unit, p.View.Scale)}
	long := float32(b.of.MM() * p.View.Scale)
	b.say = p.say.Length(b.of)
	size := p.measure.Of(b.say, look.Caption(), false)
	beside := k.box()
	b.x2, b.y = beside.X1-2*fromEdge, beside.Y2-fromEdge
	b.x1 = b.x2 - long
	whole := boxOf(min(b.x1, (b.x1+b.x2-size.Width)/2), b.y-barTick-size.Height, max(b.x2, (b.x1+b.x2+size.Width)/2), b.y).Grown(6, 3)
	if long >= leastBar/2 && whole.X1 >= fromEdge {
		b.whole = whole
	}
	return b
}

// room is what the corner takes of the sheet.
func (k *corner) room(p *painter) box {
	b := k.box()
	if bar := k.bar(p).whole; !bar.Empty() {
		b.X1, b.Y1 = bar.X1, min(b.Y1, bar.Y1)
	}
	b.X2, b.Y2 = k.c.Size().Width, k.c.Size().Height
	return b
}

// scaleBar draws a bar of a known length, with a tick at each fifth of it (at each
// quarter of inches).
func (p *painter) scaleBar(b scaleBar) {
	if b.whole.Empty() {
		return
	}
	p.Surface(b.whole, p.Palette.Sheet, color.NRGBA{}, 0)
	parts := 5
	if inches(p.say.Unit) {
		parts = 4
	}
	p.Line(b.x1, b.y, b.x2, b.y, p.Palette.Soft, 1.2)
	for i := range parts + 1 {
		x, high := b.x1+(b.x2-b.x1)*float32(i)/float32(parts), float32(barTick)
		if i > 0 && i < parts {
			high /= 2
		}
		p.Line(x, b.y, x, b.y-high, p.Palette.Soft, 1.2)
	}
	p.put(b.say, fyne.NewPos((b.x1+b.x2)/2, b.y-barTick), drawing.Anchor{X: 0.5}, look.Caption(), false, p.Palette.Soft)
}
