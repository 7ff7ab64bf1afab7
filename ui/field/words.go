package field

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Words are words that can be pressed: a step of a path, a way to something, or a
// button whose words break into lines where its place is narrow, as Fyne's never do.
type Words struct {
	widget.BaseWidget
	Ring
	Hover
	// OnTapped is what a press does; nil: it is only read.
	OnTapped func()

	self fyne.Widget         // the words, or what embeds them
	name fyne.ThemeColorName // of the letters
	fill fyne.ThemeColorName // of the surface; empty: none but under the pointer
	text *caption
	back fynecanvas.Rectangle
}

// NewWords makes words in quiet letters.
func NewWords(text string, tapped func()) *Words {
	w := &Words{OnTapped: tapped, text: newCaption(text, false), name: fynetheme.ColorNamePlaceHolder}
	w.text.tight = true
	w.ExtendBaseWidget(w)
	return w
}

// ExtendBaseWidget takes what embeds the words, or the words themselves.
func (w *Words) ExtendBaseWidget(self fyne.Widget) {
	w.self = self
	w.Changed = w.Refresh
	w.BaseWidget.ExtendBaseWidget(self)
}

// NewLink makes words in the colour of what leads on.
func NewLink(text string, tapped func()) *Words {
	w := NewWords(text, tapped)
	w.name = fynetheme.ColorNamePrimary
	return w
}

// NewSaying makes words that tell something in bold letters, and lead to it.
func NewSaying(text string, tapped func()) *Words {
	w := NewWords(text, tapped)
	w.name, w.text.bold = fynetheme.ColorNameForeground, true
	return w
}

// NewAct makes a button on a surface of a colour, with the letters of the colour that
// stands on it.
func NewAct(text string, fill, on fyne.ThemeColorName, tapped func()) *Words {
	w := NewWords(text, tapped)
	w.name, w.fill, w.text.bold = on, fill, true
	return w
}

// Fill gives a button another surface, and the letters that stand on it.
func (w *Words) Fill(fill, on fyne.ThemeColorName) {
	if w.fill != fill || w.name != on {
		w.fill, w.name = fill, on
		w.Refresh()
	}
}

// SetText says something else.
func (w *Words) SetText(s string) {
	if w.text.full != s {
		w.text.full = s
		w.Refresh()
	}
}

// Named is what the words say.
func (w *Words) Named() string { return w.text.full }

// Need is the width in which they stand on one line.
func (w *Words) Need() float32 { return w.text.Need() + 2*w.pad() }

// pad is what is free beside the words.
func (w *Words) pad() float32 {
	if w.fill != "" {
		return 10
	}
	return 4
}

// Hang is what is free beside words without a surface.
func (w *Words) Hang() float32 {
	if w.fill != "" {
		return 0
	}
	return w.pad()
}

// Tapped presses.
func (w *Words) Tapped(*fyne.PointEvent) {
	if w.OnTapped != nil {
		w.OnTapped()
	}
}

// Cursor is a hand.
func (w *Words) Cursor() desktop.Cursor { return desktop.PointerCursor }

// FocusGained shows the ring.
func (w *Words) FocusGained() { w.Gain(w.self, nil) }

// FocusLost takes the ring away.
func (w *Words) FocusLost() { w.Lose(w.self, nil) }

// TypedKey takes Enter and Esc.
func (w *Words) TypedKey(e *fyne.KeyEvent) { pressed(w.self, e, func() { w.Tapped(nil) }) }

// TypedRune takes the space bar.
func (w *Words) TypedRune(r rune) {
	if r == ' ' {
		w.Tapped(nil)
	}
}

// pressed takes the keys of what can only be pressed. The space bar comes as a letter
// too, and is taken there.
func pressed(o fyne.CanvasObject, e *fyne.KeyEvent, press func()) {
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter:
		press()
	case fyne.KeyEscape:
		Leave(o, e)
	default:
		HandOn(o, e)
	}
}

// Resize keeps the size for the height of the lines.
func (w *Words) Resize(s fyne.Size) {
	w.BaseWidget.Resize(s)
	w.text.Resize(fyne.NewSize(s.Width-2*w.pad(), s.Height))
}

// MinSize is that of the lines in the width of the moment.
func (w *Words) MinSize() fyne.Size {
	width := w.Size().Width
	if width == 0 {
		width = w.Need()
	}
	above, below := w.rise()
	return fyne.NewSize(min(w.Need(), 60), w.text.heightAt(width-2*w.pad())+above+below)
}

func (w *Words) rise() (above, below float32) {
	if w.fill != "" {
		return 5, 5
	}
	return 2, 2
}

// CreateRenderer draws the words with their ring.
func (w *Words) CreateRenderer() fyne.WidgetRenderer {
	r := &wordsRenderer{w}
	r.colour()
	return w.Around(r)
}

type wordsRenderer struct{ *Words }

func (r *wordsRenderer) Layout(s fyne.Size) {
	r.back.Resize(s)
	r.text.Move(fyne.NewPos(r.pad(), 0))
	r.text.Resize(fyne.NewSize(s.Width-2*r.pad(), s.Height))
}

func (r *wordsRenderer) Refresh() {
	r.colour()
	r.text.Refresh()
	r.back.Refresh()
	fynecanvas.Refresh(r.self)
}

func (r *wordsRenderer) colour() {
	r.text.ink = r.name
	r.back.FillColor, r.back.CornerRadius = color.Transparent, fynetheme.Size(fynetheme.SizeNameInputRadius)
	if r.fill != "" {
		r.back.FillColor = fynetheme.Color(r.fill)
	}
	r.text.underlined = r.Hovered() && r.OnTapped != nil
}

func (r *wordsRenderer) Objects() []fyne.CanvasObject {
	return []fyne.CanvasObject{&r.back, r.text}
}

func (r *wordsRenderer) Destroy() {}

// Flow lays objects out side by side, and goes on in another line where one has no
// room.
func Flow(gap float32, o ...fyne.CanvasObject) *fyne.Container {
	return container.New(&flow{gap: gap}, o...)
}

type flow struct{ gap, width float32 }

func (f *flow) Layout(o []fyne.CanvasObject, s fyne.Size) {
	f.width = s.Width
	f.lay(o, s.Width)
}

// lay puts the objects in their places and gives the height that takes.
func (f *flow) lay(o []fyne.CanvasObject, width float32) float32 {
	var x, y, high float32
	type placed struct {
		fyne.CanvasObject
		x, w float32
	}
	var line []placed
	ends := func() { // objects of a line stand on its middle
		for _, c := range line {
			h := c.MinSize().Height
			Put(c.CanvasObject, fyne.NewPos(c.x, y+(high-h)/2), fyne.NewSize(c.w, h))
		}
		line = nil
	}
	for _, c := range o {
		if !c.Visible() {
			continue
		}
		w := min(needOf(c), width)
		if len(line) > 0 && x+w > width+0.5 {
			ends()
			x, y, high = 0, y+high+f.gap/2, 0
		}
		if len(line) == 0 {
			x = -Hung(c)
		}
		high = max(high, HighAt(c, w))
		line = append(line, placed{c, x, w})
		x += w + f.gap
	}
	ends()
	return y + high
}

// MinSize is for the width of the last layout.
func (f *flow) MinSize(o []fyne.CanvasObject) fyne.Size {
	if f.width > 0 {
		return fyne.NewSize(0, f.lay(o, f.width))
	}
	m := fyne.Size{}
	for _, c := range o {
		m = m.Max(fyne.NewSize(0, c.MinSize().Height))
	}
	return m
}
