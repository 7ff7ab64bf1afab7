package screen

import (
	"image/color"
	"strings"

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
	button := func(icon, keys string, name message.Message, do func()) *bar.Button {
		b := bar.NewButton(bar.Plain, icon, "", do)
		b.Says = func() tip.Text { return tip.Text{Name: c.say().Say(name), Keys: keys} }
		return b
	}
	k.away = button("minus", "-", message.New("Further away"), func() { c.Zoom(zoomOut) })
	k.closer = button("plus", "+", message.New("Closer"), func() { c.Zoom(zoomIn) })
	k.fit = button("fit", "0", message.New("Show the whole run"), c.Fit)
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
	wide := k.c.measure.of("1 : 88.8", look.Text(), false).Width + 16
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
	leastBar, mostBar = 70, 190
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

// scaleBar draws a bar of a known length beside the buttons of the corner, with a
// tick at each fifth of it (at each quarter of inches).
func (p *painter) scaleBar(beside box) {
	of := barOf(p.say.Unit, p.View.Scale)
	long := float32(of.MM() * p.View.Scale)
	say := strings.TrimSpace(p.say.Length(of))
	letters := look.Caption()
	size := p.measure.of(say, letters, false)
	x2 := beside.X1 - 2*fromEdge
	x1 := x2 - long
	y := beside.Y2 - fromEdge
	whole := boxOf(min(x1, (x1+x2-size.Width)/2), y-barTick-size.Height, max(x2, (x1+x2+size.Width)/2), y).Grown(6, 3)
	if long < leastBar/2 || whole.X1 < fromEdge {
		return
	}
	p.Surface(whole, p.Palette.Sheet, color.NRGBA{}, 0)
	p.reserved = append(p.reserved, whole)
	parts := 5
	if inches(p.say.Unit) {
		parts = 4
	}
	p.Line(x1, y, x2, y, p.Palette.Soft, 1.2)
	for i := range parts + 1 {
		x, high := x1+long*float32(i)/float32(parts), float32(barTick)
		if i > 0 && i < parts {
			high /= 2
		}
		p.Line(x, y, x, y-high, p.Palette.Soft, 1.2)
	}
	p.write(say, fyne.NewPos((x1+x2)/2, y-barTick), drawing.Anchor{X: 0.5}, letters, false, p.Palette.Soft)
}
