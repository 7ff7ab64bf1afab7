package field

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Outcome is a line with a figure that was worked out: its label at the left, the
// figure at the right, in a pill where the check blames it. A press tells below how it
// came about.
type Outcome struct {
	widget.BaseWidget
	Ring
	Hover
	// How tells how the figure came about; nil, or an empty text: there is nothing to
	// tell.
	How func() string

	get    func() string
	bad    func() *Pill
	pill   *Pill // what it is blamed for; nil: nothing
	open   bool
	label  *caption
	figure *caption
	how    *caption
	back   fynecanvas.Rectangle
	blame  fynecanvas.Rectangle
	sign   fynecanvas.Image
}

// Pill is how a figure stands out that is at fault: its colours, and a sign, so that
// the colour is not all that tells it.
type Pill struct {
	Ink     fyne.ThemeColorName
	Surface color.Color
	Sign    fyne.Resource
}

// NewOutcome makes a line, which says something from Use on.
func NewOutcome(label string) *Outcome {
	o := &Outcome{label: newCaption(label, false), figure: newCaption("", true), how: newCaption("", false)}
	for _, c := range []*caption{o.label, o.figure, o.how} {
		c.tight = true
	}
	o.label.ink, o.how.ink = fynetheme.ColorNamePlaceHolder, fynetheme.ColorNamePlaceHolder
	o.sign.FillMode = fynecanvas.ImageFillContain
	o.Changed = o.Refresh
	o.ExtendBaseWidget(o)
	return o
}

// Use makes the line tell of another figure from now on.
func (o *Outcome) Use(get func() string, bad func() *Pill, how func() string) {
	o.get, o.bad, o.How = get, bad, how
	o.Update()
}

// Update tells what holds now.
func (o *Outcome) Update() {
	text, how, pill := o.get(), "", o.bad()
	if o.open && o.How != nil {
		how = o.How()
	}
	same := text == o.figure.full && how == o.how.full && (pill == nil) == (o.pill == nil)
	o.figure.full, o.how.full, o.pill = text, how, pill
	if !same {
		o.Refresh()
	}
}

// Named is what the line says.
func (o *Outcome) Named() string { return o.label.full + " " + o.figure.full }

// Tapped tells how the figure came about, or takes that away.
func (o *Outcome) Tapped(*fyne.PointEvent) {
	o.open = !o.open
	o.Update()
	o.Refresh()
}

// FocusGained shows the ring.
func (o *Outcome) FocusGained() { o.Gain(o, nil) }

// FocusLost takes the ring away.
func (o *Outcome) FocusLost() { o.Lose(o, nil) }

// TypedKey takes Enter and Esc.
func (o *Outcome) TypedKey(e *fyne.KeyEvent) { pressed(o, e, func() { o.Tapped(nil) }) }

// TypedRune takes the space bar.
func (o *Outcome) TypedRune(r rune) {
	if r == ' ' {
		o.Tapped(nil)
	}
}

// outcomePad is what is free at the sides of the line.
const outcomePad = 4

// Hang is the same.
func (o *Outcome) Hang() float32 { return outcomePad }

// lines lays label, figure and explanation out in a width; it gives the widths of the
// first two, whether the figure has a line of its own, and where what follows begins.
func (o *Outcome) lines(width float32) (label, figure float32, below bool, y float32) {
	room := width - 2*outcomePad
	figure = o.figure.Need() + 1
	if o.pill != nil {
		figure += o.signSide() + 12
	}
	figure = min(figure, room)
	label = room - figure - 8
	if below = label < o.label.needOfTwo(); below {
		label = room
	}
	y = o.label.heightAt(label)
	if below {
		y += o.figure.heightAt(figure)
	} else {
		y = max(y, o.figure.heightAt(figure))
	}
	return label, figure, below, y + 6
}

func (o *Outcome) signSide() float32 { return fynetheme.Size(fynetheme.SizeNameText) }

// MinSize is for the width of the moment.
func (o *Outcome) MinSize() fyne.Size {
	w := o.Size().Width
	if w == 0 {
		return fyne.NewSize(100, o.label.line()+6)
	}
	_, _, _, y := o.lines(w)
	if o.how.full != "" {
		y += o.how.heightAt(w-3*outcomePad-8) + 4
	}
	return fyne.NewSize(100, y)
}

// CreateRenderer draws the line with its ring.
func (o *Outcome) CreateRenderer() fyne.WidgetRenderer {
	r := &outcomeRenderer{o}
	r.colour()
	return o.Around(r)
}

type outcomeRenderer struct{ *Outcome }

func (r *outcomeRenderer) Layout(s fyne.Size) {
	label, figure, below, y := r.lines(s.Width)
	r.label.Move(fyne.NewPos(outcomePad, 3))
	r.label.Resize(fyne.NewSize(label, r.label.heightAt(label)))
	top := float32(3)
	if below {
		top += r.label.heightAt(label)
	}
	text := figure
	if r.pill != nil {
		text -= r.signSide() + 12
	}
	high := r.figure.heightAt(figure)
	right := s.Width - outcomePad
	if r.pill != nil {
		right -= 6
	}
	r.figure.Move(fyne.NewPos(right-text, top))
	r.figure.Resize(fyne.NewSize(text, high))
	r.blame.Move(fyne.NewPos(s.Width-outcomePad-figure-1, top-2))
	r.blame.Resize(fyne.NewSize(figure+1, high+4))
	r.sign.Move(fyne.NewPos(s.Width-outcomePad-figure+4, top+(high-r.signSide())/2))
	r.sign.Resize(fyne.NewSquareSize(r.signSide()))
	r.how.Move(fyne.NewPos(outcomePad+8, y))
	r.how.Resize(fyne.NewSize(s.Width-3*outcomePad-8, r.how.heightAt(s.Width-3*outcomePad-8)))
	r.back.Resize(s)
}

func (r *outcomeRenderer) Refresh() {
	r.colour()
	r.Layout(r.Size())
	for _, c := range []*caption{r.label, r.figure, r.how} {
		c.Refresh()
	}
	fynecanvas.Refresh(r.Outcome)
}

func (r *outcomeRenderer) colour() {
	r.back.FillColor, r.back.CornerRadius = color.Transparent, 4
	if r.Hovered() {
		r.back.FillColor = fynetheme.Color(fynetheme.ColorNameHover)
	}
	r.figure.ink, r.figure.bold = "", r.pill != nil
	r.blame.Hidden, r.sign.Hidden, r.how.Hidden = r.pill == nil, r.pill == nil, r.how.full == ""
	if r.pill != nil {
		r.figure.ink = r.pill.Ink
		r.blame.FillColor, r.blame.CornerRadius = r.pill.Surface, r.figure.line()/2
		r.sign.Resource = r.pill.Sign
	}
}

func (r *outcomeRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{&r.back, &r.blame, &r.sign, r.label, r.figure, r.how}
}

func (r *outcomeRenderer) Destroy() {}

// Blamed tells that the check blames the figure.
func (o *Outcome) Blamed() bool { return o.pill != nil }
