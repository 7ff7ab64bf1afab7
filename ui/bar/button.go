// Package bar is what stands in the bars of the window: buttons with an icon and
// words, several of them side by side as one choice, and chips.
package bar

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/tip"
)

// Kind is how a button looks.
type Kind uint8

// The kinds of buttons.
const (
	Tool    Kind = iota // no surface until it is pointed at; filled when chosen
	Plain               // no surface; tinted when chosen
	Edged               // a field's surface and edge; tinted when chosen
	Segment             // a part of a Choice; tinted, underlined and bold when chosen
	Filled              // always filled
	Link                // no surface, in the colour of what leads elsewhere
	Chip                // round, in the tint of a severity
	Good                // a chip that tells of nothing bad
)

// Button is a button with an icon and words, as high as Height.
type Button struct {
	widget.DisableableWidget
	field.Ring
	// Tip is what its tip tells; nil: its words.
	Tip      func() tip.Text
	OnTapped func()

	Kind     Kind
	Severity drawing.Severity // of a chip

	icon, words string
	count       string // bold, before the words
	short       bool   // the words are left out
	chosen      bool
	hovered     bool
}

// NewButton makes a button. An icon or words can be empty.
func NewButton(k Kind, icon, words string, tapped func()) *Button {
	b := &Button{Kind: k, icon: icon, words: words, OnTapped: tapped}
	b.ExtendBaseWidget(b)
	return b
}

// Height is how high buttons are, in units of the screen.
func Height() float32 { return max(32, look.Text()*2.2) }

// ChipHeight is how high chips are.
func ChipHeight() float32 { return max(24, look.Secondary()*1.9) }

// Named is what the button says.
func (b *Button) Named() string {
	if b.words == "" && b.Tip != nil {
		return b.Tip().Name
	}
	return b.words
}

// Letter gives the button another icon, count and words.
func (b *Button) Letter(icon, count, words string) {
	if b.icon != icon || b.count != count || b.words != words {
		b.icon, b.count, b.words = icon, count, words
		b.Refresh()
	}
}

// Chosen tells whether the button stands for what is chosen.
func (b *Button) Chosen() bool { return b.chosen }

// Choose shows whether the button stands for what is chosen.
func (b *Button) Choose(on bool) {
	if b.chosen != on {
		b.chosen = on
		b.Refresh()
	}
}

// Short leaves the words out where there is an icon or a count to tell the button by.
func (b *Button) Short(on bool) {
	if on = on && b.canBeShort(); b.short != on {
		b.short = on
		b.Refresh()
	}
}

func (b *Button) canBeShort() bool { return b.icon != "" }

// Able enables the button or disables it.
func (b *Button) Able(on bool) {
	if on == b.Disabled() {
		if on {
			b.Enable()
		} else {
			b.Disable()
		}
	}
}

func (b *Button) says() tip.Text {
	if b.Tip != nil {
		return b.Tip()
	}
	return tip.Text{Name: b.words}
}

// Tapped does what the button is for.
func (b *Button) Tapped(*fyne.PointEvent) {
	tip.Away(b)
	b.press()
}

func (b *Button) press() {
	if !b.Disabled() && b.OnTapped != nil {
		b.OnTapped()
	}
}

// MouseIn shows that the button can be pressed, and soon its tip.
func (b *Button) MouseIn(*desktop.MouseEvent) {
	b.hovered = true
	b.Refresh()
	if b.icon != "" {
		tip.Soon(b, b.says)
	}
}

// MouseMoved is not of interest.
func (b *Button) MouseMoved(*desktop.MouseEvent) {}

// MouseOut ends what MouseIn began.
func (b *Button) MouseOut() {
	b.hovered = false
	b.Refresh()
	tip.Away(b)
}

// FocusGained shows the ring, and soon the tip.
func (b *Button) FocusGained() {
	b.Gain(b, nil)
	if b.icon != "" {
		tip.Soon(b, b.says)
	}
}

// FocusLost takes both away.
func (b *Button) FocusLost() {
	b.Lose(b, nil)
	tip.Away(b)
}

// TypedKey presses the button by Enter.
func (b *Button) TypedKey(e *fyne.KeyEvent) {
	tip.Away(b)
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		b.press()
	case fyne.KeyEscape:
		field.Leave(b, e)
	default:
		field.HandOn(b, e)
	}
}

// TypedRune presses the button by the space bar, which comes as a key and as a
// letter: the letter would land in what the press gives the focus.
func (b *Button) TypedRune(r rune) {
	if r == ' ' {
		b.press()
	}
}

// MinSize is the size that the button has.
func (b *Button) MinSize() fyne.Size { return fyne.NewSize(b.Width(b.short), b.height()) }

func (b *Button) chip() bool { return b.Kind == Chip || b.Kind == Good }

func (b *Button) height() float32 {
	if b.chip() {
		return ChipHeight()
	}
	return Height()
}

func (b *Button) letters() float32 {
	if b.chip() {
		return look.Secondary()
	}
	return look.Text()
}

func (b *Button) iconSize() float32 {
	if b.chip() {
		return look.IconSize() * 0.8
	}
	return look.IconSize()
}

// iconShown tells that the icon is seen: a part of a choice has it in the place of
// its words.
func (b *Button) iconShown(short bool) bool { return b.icon != "" && (b.Kind != Segment || short) }

// between is the room between icon, count and words, and pad that at the ends.
const between = 6

func (b *Button) pad(short bool) float32 {
	if short || b.words == "" && b.count == "" {
		return 6
	}
	return 10
}

// Width is that of the button with its words, or short without them where it can be,
// as it is or would be; with bold words, so that choosing it moves nothing.
func (b *Button) Width(short bool) float32 {
	short = short && b.canBeShort()
	w := float32(0)
	add := func(part float32) {
		if w > 0 {
			w += between
		}
		w += part
	}
	if b.iconShown(short) {
		add(b.iconSize())
	}
	if b.count != "" {
		add(fyne.MeasureText(b.count, b.letters(), fyne.TextStyle{Bold: true}).Width)
	}
	if b.words != "" && !short {
		add(fyne.MeasureText(b.words, b.letters(), fyne.TextStyle{Bold: !b.chip()}).Width)
	}
	return w + 2*b.pad(short)
}

// colours are what a button is painted with.
type colours struct {
	ground, edge, ink, icon, over color.NRGBA
	edgeWidth, radius             float32
	bold, underlined              bool
}

func (b *Button) colours() colours {
	p := look.Current()
	const hover, thick = 0x14, 1.5
	c := colours{ink: p.Ink, icon: p.Ink, over: p.OnSign, radius: 6}
	switch b.Kind {
	case Chip:
		_, c.icon = p.Severity(b.Severity)
		c.ground, c.radius = p.Tint(b.Severity), b.height()/2
		if b.chosen || p.Flat {
			c.edge, c.edgeWidth = c.icon, thick
		}
	case Good:
		c.ground, c.icon, c.radius = p.GoodTint, p.Good, b.height()/2
		if p.Flat {
			c.edge, c.edgeWidth = c.icon, thick
		}
	case Tool:
		if b.chosen {
			c.ground, c.ink, c.icon, c.bold = p.Accent, p.OnAccent, p.OnAccent, true
		}
	case Link:
		c.ink, c.icon = p.Accent, p.Accent
	case Filled:
		c.ground, c.ink, c.icon, c.bold = p.Accent, p.OnAccent, p.OnAccent, true
	case Edged:
		c.ground, c.edge, c.edgeWidth = p.Field, p.FieldEdge, 1
	case Segment:
		c.radius = 4
		if b.chosen {
			c.ground, c.bold, c.underlined = p.AccentTint, true, true
		}
	}
	if b.chosen && (b.Kind == Edged || b.Kind == Plain) {
		c.ground, c.icon = p.AccentTint, p.Accent
		if b.Kind == Edged || p.Flat {
			c.edge, c.edgeWidth = p.Accent, thick
		}
	}
	if b.Disabled() {
		c.ink, c.icon = p.FieldEdge, p.FieldEdge
		if b.Kind == Filled {
			c.ground, c.edge, c.edgeWidth = color.NRGBA{}, p.FieldEdge, 1
		}
	} else if b.hovered && c.ground.A == 0 {
		c.ground = p.Ink
		c.ground.A = hover
	} else if b.hovered && !b.chosen {
		c.ground = mixed(c.ground, c.ink, hover)
	}
	return c
}

// mixed lays a share of 255 of one colour over another.
func mixed(under, over color.NRGBA, share int) color.NRGBA {
	m := func(u, o uint8) uint8 { return uint8((int(u)*(255-share) + int(o)*share) / 255) }
	return color.NRGBA{R: m(under.R, over.R), G: m(under.G, over.G), B: m(under.B, over.B), A: under.A}
}

// CreateRenderer draws the button with its ring.
func (b *Button) CreateRenderer() fyne.WidgetRenderer {
	r := &renderer{b: b, ground: &fynecanvas.Rectangle{}, icon: &fynecanvas.Image{FillMode: fynecanvas.ImageFillContain},
		count: fynecanvas.NewText("", nil), words: fynecanvas.NewText("", nil), under: &fynecanvas.Rectangle{CornerRadius: 1}}
	r.count.TextStyle.Bold = true
	r.colour()
	return b.Around(r)
}

type renderer struct {
	b             *Button
	ground, under *fynecanvas.Rectangle
	icon          *fynecanvas.Image
	count, words  *fynecanvas.Text
}

func (r *renderer) MinSize() fyne.Size { return r.b.MinSize() }
func (r *renderer) Destroy()           {}

func (r *renderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{r.ground, r.icon, r.count, r.words, r.under}
}

func (r *renderer) Refresh() {
	r.colour()
	r.Layout(r.b.Size())
	for _, o := range r.Objects() {
		fynecanvas.Refresh(o)
	}
}

func (r *renderer) colour() {
	b, c := r.b, r.b.colours()
	r.ground.FillColor, r.ground.StrokeColor, r.ground.StrokeWidth, r.ground.CornerRadius = c.ground, c.edge, c.edgeWidth, c.radius
	if r.icon.Hidden = !b.iconShown(b.short); !r.icon.Hidden {
		look.SetIcon(r.icon, b.icon, c.icon, c.over)
	}
	r.count.Text, r.count.Color, r.count.TextSize = b.count, c.ink, b.letters()
	r.words.Text, r.words.Color, r.words.TextSize, r.words.TextStyle.Bold = b.words, c.ink, b.letters(), c.bold
	if b.Kind == Chip && !b.Disabled() {
		r.count.Color = c.icon
	}
	r.count.Hidden, r.words.Hidden = b.count == "", b.words == "" || b.short
	r.under.Hidden, r.under.FillColor = !c.underlined, look.Current().Accent
}

// Layout puts what is seen side by side into the middle.
func (r *renderer) Layout(s fyne.Size) {
	b := r.b
	r.ground.Resize(s)
	width := -float32(between)
	parts := []fyne.CanvasObject{r.icon, r.count, r.words}
	size := func(o fyne.CanvasObject) fyne.Size {
		if o == fyne.CanvasObject(r.icon) {
			return fyne.NewSquareSize(b.iconSize())
		}
		return o.MinSize()
	}
	for _, o := range parts {
		if o.Visible() {
			width += size(o).Width + between
		}
	}
	x := max((s.Width-width)/2, 0)
	for _, o := range parts {
		if o.Visible() {
			one := size(o)
			o.Resize(one)
			o.Move(fyne.NewPos(x, (s.Height-one.Height)/2))
			x += one.Width + between
		}
	}
	const thick = 2.5
	r.under.Resize(fyne.NewSize(s.Width-2*b.pad(b.short), thick))
	r.under.Move(fyne.NewPos(b.pad(b.short), s.Height-thick-1))
}
