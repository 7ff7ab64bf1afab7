package field

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// caption is the label of a field: one line, shortened to its width. It is much
// cheaper than Fyne's label, of which a form would have dozens.
type caption struct {
	widget.BaseWidget
	full string
	text *fynecanvas.Text
	end  bool // it stands at the right
}

func newCaption(s string, end bool) *caption {
	c := &caption{full: s, text: fynecanvas.NewText(s, color.Black), end: end}
	c.ExtendBaseWidget(c)
	return c
}

// SetText shows another text.
func (c *caption) SetText(s string) {
	c.full = s
	c.Refresh()
}

func (c *caption) fit() {
	c.text.Color, c.text.TextSize = fynetheme.Color(fynetheme.ColorNameForeground), fynetheme.Size(fynetheme.SizeNameText)
	pad := fynetheme.Size(fynetheme.SizeNameInnerPadding)
	width := c.Size().Width - pad
	c.text.Text = c.full
	box := c.text.MinSize()
	for r := []rune(c.full); len(r) > 1 && box.Width > width; box = c.text.MinSize() {
		r = r[:len(r)-1]
		c.text.Text = string(r) + "…"
	}
	x := pad
	if c.end {
		x = max(c.Size().Width-box.Width-pad, 0)
	}
	c.text.Move(fyne.NewPos(x, max((c.Size().Height-box.Height)/2, 0)))
	c.text.Resize(box)
}

// CreateRenderer makes the renderer; everything is kept in the widget.
func (c *caption) CreateRenderer() fyne.WidgetRenderer {
	c.fit()
	return &captionRenderer{c}
}

type captionRenderer struct{ c *caption }

func (r *captionRenderer) Layout(fyne.Size) { r.c.fit() }
func (r *captionRenderer) MinSize() fyne.Size {
	size := fynetheme.Size(fynetheme.SizeNameText)
	pad := fynetheme.Size(fynetheme.SizeNameInnerPadding)
	return fyne.NewSize(40, size*1.4+2*pad)
}
func (r *captionRenderer) Refresh() {
	r.c.fit()
	fynecanvas.Refresh(r.c.text)
}
func (r *captionRenderer) Destroy()                     {}
func (r *captionRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.c.text} }

// Figure is a line that shows a figure at the right of its label.
type Figure struct {
	Object fyne.CanvasObject
	text   *caption
}

// NewFigure makes one.
func NewFigure(label, figure string) *Figure {
	c := newCaption(figure, true)
	return &Figure{Object: Labelled(label, c), text: c}
}

// SetText shows another figure.
func (f *Figure) SetText(s string) {
	if f.text.full != s {
		f.text.SetText(s)
	}
}
