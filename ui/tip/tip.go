// Package tip tells the name and keys of a control in a small box beside it, once
// the pointer rests on it or it has the focus.
package tip

import (
	"time"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/look"
)

// Delay is how long the pointer rests before a tip shows.
const Delay = 400 * time.Millisecond

// Text is what a tip tells: a name, and the keys that do the same; empty: there are
// none.
type Text struct{ Name, Keys string }

// Layer shows the tips of a window. It lies over everything else in it and takes
// no part in what the pointer does.
type Layer struct {
	widget.BaseWidget
	// After calls a function later and gives a way to stop that; it is there for
	// tests.
	After func(d time.Duration, do func()) (stop func())

	of         fyne.CanvasObject // whose tip is shown or waited for
	stop       func()
	box        *fyne.Container
	back       *fynecanvas.Rectangle
	name, keys *fynecanvas.Text
}

// Over puts a layer for tips over the content of a window.
func Over(content fyne.CanvasObject) *fyne.Container {
	l := &Layer{After: later, back: &fynecanvas.Rectangle{CornerRadius: 4, StrokeWidth: 1}}
	l.name, l.keys = fynecanvas.NewText("", nil), fynecanvas.NewText("", nil)
	l.box = container.NewWithoutLayout(l.back, l.name, l.keys)
	l.box.Hide()
	l.ExtendBaseWidget(l)
	return container.NewStack(content, l)
}

// later is the clock of the program.
func later(d time.Duration, do func()) func() {
	t := time.AfterFunc(d, func() { fyne.Do(do) })
	return func() { t.Stop() }
}

// Of is the layer of the window that shows an object; nil: it has none.
func Of(o fyne.CanvasObject) *Layer {
	c := fyne.CurrentApp().Driver().CanvasForObject(o)
	if c == nil {
		return nil
	}
	top, ok := c.Content().(*fyne.Container)
	if !ok || len(top.Objects) == 0 {
		return nil
	}
	l, _ := top.Objects[len(top.Objects)-1].(*Layer)
	return l
}

// Soon shows a tip beside an object after a while, unless Away is called before.
func Soon(o fyne.CanvasObject, says func() Text) {
	l := Of(o)
	if l == nil {
		return
	}
	l.away()
	l.of = o
	l.stop = l.After(Delay, func() {
		if l.of == o && o.Visible() {
			l.show(says())
		}
	})
}

// Away takes the tip of an object away.
func Away(o fyne.CanvasObject) {
	if l := Of(o); l != nil && l.of == o {
		l.away()
	}
}

func (l *Layer) away() {
	if l.stop != nil {
		l.stop()
	}
	l.of, l.stop = nil, nil
	if l.box.Visible() {
		l.box.Hide()
		l.Refresh()
	}
}

// Shown is the tip that is seen; its name is empty where none is.
func (l *Layer) Shown() Text {
	if !l.box.Visible() {
		return Text{}
	}
	return Text{l.name.Text, l.keys.Text}
}

// show writes a tip under its object, or over it where there is no room below.
func (l *Layer) show(t Text) {
	if t.Name == "" {
		return
	}
	p := look.Current()
	l.back.FillColor, l.back.StrokeColor = p.Ink, p.Ink
	l.name.Text, l.name.Color, l.name.TextSize = t.Name, p.Sheet, look.Secondary()
	l.keys.Text, l.keys.Color, l.keys.TextSize = t.Keys, p.Sheet, look.Secondary()
	l.keys.TextStyle.Bold = true
	const pad, apart, gap = 8, 12, 6
	name, keys := l.name.MinSize(), l.keys.MinSize()
	size := fyne.NewSize(name.Width+2*pad, name.Height+pad)
	if t.Keys != "" {
		size.Width += apart + keys.Width
	}
	driver := fyne.CurrentApp().Driver()
	at, of, room := driver.AbsolutePositionForObject(l.of).Subtract(driver.AbsolutePositionForObject(l)), l.of.Size(), l.Size()
	x := max(min(at.X+of.Width/2-size.Width/2, room.Width-size.Width-gap), gap)
	y := at.Y + of.Height + gap
	if y+size.Height > room.Height {
		y = at.Y - size.Height - gap
	}
	l.box.Move(fyne.NewPos(x, y))
	l.box.Resize(size)
	l.back.Resize(size)
	l.name.Move(fyne.NewPos(pad, pad/2))
	l.name.Resize(name)
	l.keys.Move(fyne.NewPos(pad+name.Width+apart, pad/2))
	l.keys.Resize(keys)
	l.box.Show()
	l.Refresh()
}

// MinSize is nothing: a tip wants no room of its own.
func (l *Layer) MinSize() fyne.Size { return fyne.Size{} }

// CreateRenderer draws the tip.
func (l *Layer) CreateRenderer() fyne.WidgetRenderer { return &renderer{l} }

type renderer struct{ l *Layer }

func (r *renderer) Layout(fyne.Size)             {}
func (r *renderer) MinSize() fyne.Size           { return fyne.Size{} }
func (r *renderer) Refresh()                     { fynecanvas.Refresh(r.l.box) }
func (r *renderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.l.box} }
func (r *renderer) Destroy()                     {}
