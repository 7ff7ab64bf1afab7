package screen

import (
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"

	"frontlay/layout/drawing"
	"frontlay/layout/mark"
	"frontlay/layout/view"
	"frontlay/model/message"
	"frontlay/ui/bar"
	"frontlay/ui/look"
	"frontlay/ui/paint"
	"frontlay/ui/session"
	"frontlay/ui/tip"
)

// card is a lens on the place of the chosen finding, in the emptiest corner of the
// sheet.
type card struct {
	c       *Screen
	ground  *fynecanvas.Rectangle
	title   *fynecanvas.Text
	whole   *bar.Button // to the view that it shows a part of
	close   *bar.Button
	picture *fyne.Container
	clip    *container.Clip
	object  *fyne.Container

	lens   view.Lens
	of     string // the finding that the card is about
	hidden string // and the one whose card was closed
	stock  paint.Stock
}

// Sizes of a card, in letters of plain text.
const (
	cardWide = 29
	cardHigh = 12
	cardPad  = 12 // units of the screen
)

func newCard(c *Screen) *card {
	k := &card{c: c, ground: fynecanvas.NewRectangle(color.Transparent), title: fynecanvas.NewText("", color.Black), picture: container.NewWithoutLayout()}
	k.title.TextStyle.Bold = true
	k.clip = container.NewClip(k.picture)
	k.whole = bar.NewButton(bar.Link, "", "", k.show)
	k.close = bar.NewButton(bar.Plain, "close", "", func() {
		k.hidden = k.of
		k.c.repaint()
	})
	k.close.Tip = func() tip.Text { return tip.Text{Name: c.say().Say(message.New("Close the lens"))} }
	k.object = container.NewWithoutLayout(k.ground, k.clip, k.title, k.whole, k.close)
	k.object.Hide()
	return k
}

// show shows the whole view of which the card has a part.
func (k *card) show() {
	k.c.session.Select(session.Front(k.lens.At))
	k.c.ShowPicture(pictureIn(k.lens.In))
}

func pictureIn(v mark.Views) Picture {
	switch v {
	case mark.Rear:
		return RearFace
	case mark.Plan:
		return DrawerPlan
	default:
		return Section
	}
}

// names of the views for the way to them.
func nameOf(p Picture) message.Message {
	switch p {
	case RearFace:
		return message.New("rear face")
	case DrawerPlan:
		return message.New("drawer")
	default:
		return message.New("section")
	}
}

// place shows the lens on the chosen finding, where there is one and its card was
// not closed. by has painted the sheet.
func (k *card) place(by *painter) {
	i := k.c.session.ChosenFinding()
	if i < 0 || k.c.subject != Elevation {
		k.object.Hide()
		if i < 0 {
			k.hidden = ""
		}
		return
	}
	r := k.c.session.Result()
	f := &r.Findings[i]
	k.of = f.Rule + by.say.Say(f.Where)
	if k.of == k.hidden {
		k.object.Hide()
		return
	}
	k.hidden = ""
	l, ok := view.LensOn(r.Plan, f)
	size := fyne.NewSize(min(cardWide*by.text, by.Size.Width-2*fromEdge), cardHigh*by.text)
	const part = 4 // of the sheet at most
	if !ok || size.Width*size.Height*part > by.Size.Width*by.Size.Height {
		k.object.Hide()
		return
	}
	at, ok := k.emptiest(by, size)
	if !ok {
		k.object.Hide()
		return
	}
	k.lens = l
	k.dress(by, view.Severity(f), size)
	k.object.Resize(size)
	k.object.Move(at.Place())
	k.object.Show()
}

// dress paints the card.
func (k *card) dress(by *painter, s drawing.Severity, size fyne.Size) {
	_, edge := by.Palette.Severity(s)
	k.ground.FillColor, k.ground.StrokeColor, k.ground.StrokeWidth, k.ground.CornerRadius = by.Palette.Sheet, edge, 1.5, 6
	k.ground.Resize(size)
	k.whole.Letter("", "", by.say.Say(nameOf(pictureIn(k.lens.In))))
	x, head := size.Width-4, float32(0)
	for _, b := range []*bar.Button{k.close, k.whole} {
		least := b.MinSize()
		x -= least.Width
		b.Resize(least)
		b.Move(fyne.NewPos(x, 3))
		head = max(head, least.Height+4)
	}
	k.title.Text, k.title.Color, k.title.TextSize = fitting(by, by.say.Say(k.lens.Title), x-cardPad), by.Palette.Ink, look.Text()
	k.title.Resize(k.title.MinSize())
	k.title.Move(fyne.NewPos(cardPad, (head-k.title.MinSize().Height)/2+2))
	area := fyne.NewSize(size.Width-2*cardPad, size.Height-head-cardPad)
	k.clip.Move(fyne.NewPos(cardPad, head))
	k.clip.Resize(area)
	brush := paint.New(k.lens.Drawing, paint.Fitted(k.lens.Clip, paint.Margins{}, area), area, pixelsOf(k.c), &k.stock)
	brush.Front, brush.Own = by.Front, by.Own
	p := newPainter(brush, k.lens.Drawing, by.say, by.measure)
	p.Marks()
	p.place(nil)
	p.write()
	k.picture.Objects = p.Objects
	k.picture.Resize(area)
	fynecanvas.Refresh(k.title)
	fynecanvas.Refresh(k.ground)
	fynecanvas.Refresh(k.picture)
}

// fitting is a text, cut where it is wider than there is room.
func fitting(p *painter, s string, wide float32) string {
	r := []rune(s)
	for p.measure.Of(s, p.text, true).Width > wide && len(r) > 1 {
		r = r[:len(r)-1]
		s = string(r) + "…"
	}
	return s
}

// emptiest is the corner of the sheet in which a card hides least. It is false where
// a card would hide the mark itself or its flag in each.
func (k *card) emptiest(by *painter, size fyne.Size) (box, bool) {
	w := by.window().Grown(-fromEdge, -fromEdge)
	best, least := box{}, float32(-1)
	for _, at := range []fyne.Position{
		{X: w.X1, Y: w.Y2 - size.Height}, {X: w.X2 - size.Width, Y: w.Y1}, {X: w.X1, Y: w.Y1}, {X: w.X2 - size.Width, Y: w.Y2 - size.Height},
		{X: (w.X1 + w.X2 - size.Width) / 2, Y: w.Y2 - size.Height}, {X: (w.X1 + w.X2 - size.Width) / 2, Y: w.Y1},
	} {
		b := paint.BoxAt(at, size)
		if bad := k.hides(by, b); least < 0 || bad < least {
			best, least = b, bad
		}
	}
	if _, flags := by.texts(); slices.ContainsFunc(flags, best.Overlaps) {
		return best, false
	}
	places := by.chosenPlaces()
	return best, len(places) == 0 || !places[0].Overlaps(best)
}

// hides is how much a card at a place would hide: the area of the run, more for
// texts, most for what must be seen.
func (k *card) hides(by *painter, b box) float32 {
	const text, never = 4, 1000
	sum := by.covers(b, by.Rect(k.c.extent()), 1)
	for i, c := range by.chosenPlaces() {
		weight := float32(2 * text)
		if i == 0 {
			weight = never
		}
		sum += by.covers(b, c.Grown(8, 8), weight)
	}
	written, flags := by.texts()
	for i := range written {
		sum += by.covers(b, written[i].box, text)
	}
	for _, f := range flags {
		sum += by.covers(b, f, never)
	}
	for _, r := range by.reserved {
		sum += by.covers(b, r, never)
	}
	return sum
}

// covers is the area that two boxes share, weighed.
func (p *painter) covers(a, b box, weight float32) float32 {
	s := a.Common(b)
	if s.Empty() {
		return 0
	}
	return weight * (s.X2 - s.X1) * (s.Y2 - s.Y1)
}

// pictured is where the card is; empty while it is not shown.
func (k *card) pictured() box {
	if !k.object.Visible() {
		return box{}
	}
	return paint.BoxAt(k.object.Position(), k.object.Size())
}
