package field

import (
	"image/color"
	"strings"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// caption is the label of a field. It breaks into as many lines as its width
// asks for. It is much cheaper than Fyne's label, of which a form would have
// dozens.
type caption struct {
	widget.BaseWidget
	full  string
	lines []*fynecanvas.Text
	end   bool // it stands at the right
	small bool // it is the label above a field
	bold  bool
	tight bool // nothing is free around it
	large bool // it is the name of what is selected
	// underlined has a line below its letters.
	underlined bool
	ink        fyne.ThemeColorName // of its letters; empty: the usual
	under      []*fynecanvas.Line
}

// size is how large its letters are.
func (c *caption) size() float32 {
	switch {
	case c.small:
		return fynetheme.Size(fynetheme.SizeNameCaptionText)
	case c.large:
		return fynetheme.Size(fynetheme.SizeNameSubHeadingText)
	default:
		return fynetheme.Size(fynetheme.SizeNameText)
	}
}

// line is the height of one line of it, with what is free between two.
func (c *caption) line() float32 { return 1.4 * c.size() }

// pads are what it leaves free above and below.
func (c *caption) pads() (above, below float32) {
	switch {
	case c.tight:
		return 0, 0
	case c.small:
		return 3, 2
	}
	return fynetheme.Size(fynetheme.SizeNameInnerPadding), fynetheme.Size(fynetheme.SizeNameInnerPadding)
}

// side is what it leaves free at its left and right.
func (c *caption) side() float32 {
	if c.small || c.tight {
		return 0
	}
	return around()
}

func (c *caption) measure(s string) float32 {
	return fyne.MeasureText(s, c.size(), fyne.TextStyle{Bold: c.bold}).Width
}

func newCaption(s string, end bool) *caption {
	c := &caption{full: s, end: end}
	c.ExtendBaseWidget(c)
	return c
}

// SetText shows another text.
func (c *caption) SetText(s string) {
	c.full = s
	c.Refresh()
}

// measure is the width of a text in the letters of fields.
func measure(s string) float32 {
	return fyne.MeasureText(s, fynetheme.Size(fynetheme.SizeNameText), fyne.TextStyle{}).Width
}

// around is what a caption leaves free at its left and right.
func around() float32 { return fynetheme.Size(fynetheme.SizeNameInnerPadding) }

// Need is the width that shows the text on one line.
func (c *caption) Need() float32 { return c.measure(c.full) + 2*c.side() }

// needOfTwo is the least width that shows the text on two lines at most.
func (c *caption) needOfTwo() float32 {
	words := strings.Fields(c.full)
	least := c.measure(c.full)
	for i := 1; i < len(words); i++ {
		least = min(least, max(c.measure(strings.Join(words[:i], " ")), c.measure(strings.Join(words[i:], " "))))
	}
	return least + 2*c.side()
}

// broken is the text in lines of a width. A word that is wider than the width has
// a line of its own, and sticks out: whoever lays the caption out sees to it that
// there is none.
func (c *caption) broken(width float32) []string {
	const rounding = 0.5 // of widths that are sums and differences
	room := width - 2*c.side() + rounding
	var all []string
	line := ""
	for _, w := range strings.Fields(c.full) {
		longer := strings.TrimSpace(line + " " + w)
		if line != "" && c.measure(longer) > room {
			all = append(all, line)
			longer = w
		}
		line = longer
	}
	return append(all, line)
}

// heightAt is how high the caption is in a width.
func (c *caption) heightAt(width float32) float32 {
	above, below := c.pads()
	return c.line()*float32(len(c.broken(width))) + above + below
}

// fit puts the lines in their places.
func (c *caption) fit() {
	lines := c.broken(c.Size().Width)
	for len(c.lines) < len(lines) {
		c.lines = append(c.lines, fynecanvas.NewText("", color.Black))
	}
	c.lines = c.lines[:len(lines)]
	name := c.ink
	if name == "" {
		name = fynetheme.ColorNameForeground
	}
	ink := fynetheme.Color(name)
	y := (c.Size().Height - c.line()*float32(len(lines))) / 2
	if c.small {
		ink = fynetheme.Color(fynetheme.ColorNamePlaceHolder)
		_, below := c.pads()
		y = c.Size().Height - c.line()*float32(len(lines)) - below // next to its field
	}
	for i, s := range lines {
		t := c.lines[i]
		t.Text, t.Color, t.TextSize, t.TextStyle.Bold = s, ink, c.size(), c.bold
		box := t.MinSize()
		x := c.side()
		if c.end {
			x = max(c.Size().Width-box.Width-c.side(), 0)
		}
		t.Move(fyne.NewPos(x, y+(c.line()-box.Height)/2))
		t.Resize(box)
		c.underline(i, t)
		y += c.line()
	}
}

// underline draws the line below the i-th line of letters.
func (c *caption) underline(i int, t *fynecanvas.Text) {
	for len(c.under) <= i {
		c.under = append(c.under, fynecanvas.NewLine(color.Black))
	}
	l := c.under[i]
	l.Hidden, l.StrokeColor, l.StrokeWidth = !c.underlined, t.Color, 1
	y := t.Position().Y + 0.88*t.Size().Height
	l.Position1, l.Position2 = fyne.NewPos(t.Position().X, y), fyne.NewPos(t.Position().X+t.Size().Width, y)
}

// CreateRenderer makes the renderer; everything is kept in the widget.
func (c *caption) CreateRenderer() fyne.WidgetRenderer {
	c.fit()
	return &captionRenderer{c}
}

type captionRenderer struct{ c *caption }

func (r *captionRenderer) Layout(fyne.Size) { r.c.fit() }

func (r *captionRenderer) MinSize() fyne.Size {
	above, below := r.c.pads()
	return fyne.NewSize(40, r.c.line()+above+below)
}

func (r *captionRenderer) Refresh() {
	r.c.fit()
	for _, t := range r.c.lines {
		fynecanvas.Refresh(t)
	}
}

func (r *captionRenderer) Destroy() {}

func (r *captionRenderer) Objects() []fyne.CanvasObject {
	var all []fyne.CanvasObject
	for i, t := range r.c.lines {
		all = append(all, t)
		if r.c.underlined {
			all = append(all, r.c.under[i])
		}
	}
	return all
}

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
	if f.text.full == s {
		return
	}
	f.text.SetText(s)
	if f.text.Need() > f.text.Size().Width {
		f.Object.Refresh() // lays the line out anew
	}
}
