package dividing

import (
	"image/color"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/view"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/screen"
)

// card is one proposal: its picture, and its terms in words. A click or Enter takes it;
// the arrow keys go from card to card.
type card struct {
	widget.BaseWidget
	field.Ring
	field.Hover
	page  *Page
	index int
	title string
	back  *fynecanvas.Rectangle
	in    fyne.CanvasObject
}

// pictureSize is the least size of the picture of a proposal.
var pictureSize = fyne.NewSize(170, 150)

func newCard(p *Page, i int) *card {
	c := &card{page: p, index: i, title: p.title(i), back: fynecanvas.NewRectangle(color.Transparent)}
	c.back.CornerRadius = 5
	a, x := p.host.Ask(), &p.answer.Proposals[i]
	say := a.Say()
	title := field.NewLabel(c.title)
	title.Wrapping, title.TextStyle.Bold = fyne.TextWrapWord, true
	var heights []string
	for _, h := range slices.Backward(x.Heights()) {
		heights = append(heights, say.Figure(h))
	}
	said := say.Say(message.New("Points: %v", x.Points())) + "\n" + say.Say(message.New("From the top: %v", strings.Join(heights, " · ")))
	for k, f := range x.Edit.Fronts {
		if f.Contents > 0 {
			number := x.Result.Plan.BayAt(p.at).First + k + 1
			said += "\n" + say.Say(message.New("Front %v: %v, %v high", number, f.Holds, f.Contents))
		}
	}
	for _, m := range x.Words() {
		said += "\n" + say.Sentence(m)
	}
	words := field.Column(title, line(said))
	if n := x.Warnings(); n > 0 {
		warned := line(say.Say(message.New("Warnings of the check in this bay: %v", n)))
		warned.Importance = widget.WarningImportance
		words.Add(warned)
	}
	paper := fynecanvas.NewRectangle(look.Current().Sheet)
	picture := container.NewStack(paper, screen.NewStill(view.Bay(x.Result.Plan, p.at), say, pictureSize))
	c.in = container.NewPadded(container.NewBorder(nil, nil, picture, nil, words))
	c.Changed = c.Refresh
	c.ExtendBaseWidget(c)
	return c
}

// line is a text that breaks where it has to.
func line(text string) *field.Label {
	l := field.NewLabel(text)
	l.Wrapping = fyne.TextWrapWord
	return l
}

// Named is what the card says first.
func (c *card) Named() string { return c.title }

// Tapped takes the proposal.
func (c *card) Tapped(*fyne.PointEvent) { c.page.take(c.index) }

// Cursor is a hand.
func (c *card) Cursor() desktop.Cursor { return desktop.PointerCursor }

// FocusGained shows the ring.
func (c *card) FocusGained() { c.Gain(c, nil) }

// FocusLost takes the ring away.
func (c *card) FocusLost() { c.Lose(c, nil) }

// TypedKey takes the proposal, or goes to another card.
func (c *card) TypedKey(e *fyne.KeyEvent) {
	to := c.index
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		c.Tapped(nil)
		return
	case fyne.KeyEscape:
		field.Leave(c, e)
		return
	case fyne.KeyRight, fyne.KeyDown:
		to++
	case fyne.KeyLeft, fyne.KeyUp:
		to--
	case fyne.KeyHome:
		to = 0
	case fyne.KeyEnd:
		to = len(c.page.cards) - 1
	default:
		field.HandOn(c, e)
		return
	}
	if to >= 0 && to < len(c.page.cards) {
		if canvas := field.CanvasOf(c); canvas != nil {
			canvas.Focus(c.page.cards[to])
		}
	}
}

// TypedRune takes the space bar.
func (c *card) TypedRune(r rune) {
	if r == ' ' {
		c.Tapped(nil)
	}
}

// CreateRenderer draws the card with its ring.
func (c *card) CreateRenderer() fyne.WidgetRenderer {
	r := &cardRenderer{c}
	r.colour()
	return c.Around(r)
}

type cardRenderer struct{ *card }

func (r *cardRenderer) Layout(s fyne.Size) {
	r.back.Resize(s)
	r.in.Resize(s)
}

func (r *cardRenderer) MinSize() fyne.Size { return r.in.MinSize() }

func (r *cardRenderer) Refresh() {
	r.colour()
	r.back.Refresh()
	fynecanvas.Refresh(r.card)
}

func (r *cardRenderer) colour() {
	p := look.Current()
	r.back.FillColor, r.back.StrokeColor, r.back.StrokeWidth = p.Field, p.FieldEdge, 1
	if r.Hovered() {
		r.back.FillColor = p.AccentTint
	}
}

func (r *cardRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.back, r.in} }

func (r *cardRenderer) Destroy() {}

// grid lays cards out side by side, as many as have room, all of a row equally high.
type grid struct{ width float32 }

// leastCard is how narrow a card can be, cardGap what is between two.
const leastCard, cardGap = 330, 10

func (g *grid) rows(o []fyne.CanvasObject, width float32) (n int, wide float32, highs []float32) {
	n = max(int((width+cardGap)/(leastCard+cardGap)), 1)
	wide = (width - cardGap*float32(n-1)) / float32(n)
	for i, one := range o {
		if i%n == 0 {
			highs = append(highs, 0)
		}
		highs[i/n] = max(highs[i/n], field.HighAt(one, wide))
	}
	return n, wide, highs
}

// Layout puts the cards in rows.
func (g *grid) Layout(o []fyne.CanvasObject, s fyne.Size) {
	g.width = s.Width
	n, wide, highs := g.rows(o, s.Width)
	y := float32(0)
	for i, one := range o {
		if i > 0 && i%n == 0 {
			y += highs[i/n-1] + cardGap
		}
		one.Move(fyne.NewPos(float32(i%n)*(wide+cardGap), y))
		one.Resize(fyne.NewSize(wide, highs[i/n]))
	}
}

// MinSize is for the width of the moment.
func (g *grid) MinSize(o []fyne.CanvasObject) fyne.Size {
	_, _, highs := g.rows(o, max(g.width, leastCard))
	y := float32(0)
	for _, h := range highs {
		y += h + cardGap
	}
	return fyne.NewSize(leastCard, y)
}
