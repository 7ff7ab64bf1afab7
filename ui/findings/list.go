package findings

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/field"
)

// list is Fyne's list with rows as high as their texts are, and keys: up and
// down choose, Enter goes on to what can be done about the chosen one. A ring
// shows that it has the focus.
type list struct {
	widget.List
	field.Ring
	panel   *Panel
	sample  *field.Label       // measures texts
	heights map[string]float32 // of the rows of texts, in the width of the moment
	width   float32
	size    float32 // of letters, for which heights hold
	tops    []float32
}

func newList(p *Panel) *list {
	l := &list{panel: p, sample: field.NewLabel("")}
	l.ExtendBaseWidget(l)
	l.sample.Wrapping = fyne.TextWrapWord
	l.Length = func() int { return len(p.rows) }
	l.CreateItem, l.UpdateItem = newRow, p.fillRow
	l.HideSeparators = true
	l.OnSelected = p.choose
	return l
}

// Resize gives the rows the heights that their texts have in the new width.
func (l *list) Resize(s fyne.Size) {
	l.List.Resize(s)
	if s.Width != l.width {
		l.measure()
	}
}

// measure gives every row the height of its text.
func (l *list) measure() {
	size := fynetheme.Size(fynetheme.SizeNameText)
	if l.width != l.Size().Width || l.size != size {
		l.width, l.size, l.heights = l.Size().Width, size, map[string]float32{}
	}
	if l.width == 0 {
		return
	}
	l.tops = append(l.tops[:0], 0)
	for i := range l.panel.rows {
		h := l.heightOf(l.panel.rowText(i), l.panel.markWidth())
		l.SetItemHeight(i, h)
		l.tops = append(l.tops, l.tops[i]+h+fynetheme.Size(fynetheme.SizeNamePadding))
	}
}

func (l *list) heightOf(text string, mark float32) float32 {
	h, known := l.heights[text]
	if !known {
		l.sample.SetText(text)
		l.sample.Resize(fyne.NewSize(l.width-mark, 0))
		h = l.sample.MinSize().Height
		l.heights[text] = h
	}
	return h
}

// show scrolls so far that a row is seen whole.
func (l *list) show(i int) {
	if i < 0 || i+1 >= len(l.tops) {
		return
	}
	y, high := l.GetScrollOffset(), l.Size().Height
	y = max(y, l.tops[i+1]-high)
	l.ScrollToOffset(min(y, l.tops[i]))
}

// FocusGained shows the ring.
func (l *list) FocusGained() { l.Gain(l, nil) }

// FocusLost takes the ring away.
func (l *list) FocusLost() { l.Lose(l, nil) }

// TypedKey chooses, and goes on to the chosen one.
func (l *list) TypedKey(e *fyne.KeyEvent) {
	if !l.Visible() {
		l.handBack(e)
		return
	}
	const somePage = 4 // about as many rows as are seen
	p := l.panel
	switch e.Name {
	case fyne.KeyDown:
		l.Select(min(p.chosen+1, len(p.rows)-1))
	case fyne.KeyUp:
		l.Select(max(p.chosen-1, 0))
	case fyne.KeyPageDown:
		l.Select(min(p.chosen+somePage, len(p.rows)-1))
	case fyne.KeyPageUp:
		l.Select(max(p.chosen-somePage, 0))
	case fyne.KeyHome:
		l.Select(0)
	case fyne.KeyEnd:
		l.Select(len(p.rows) - 1)
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace:
		p.enter()
	case fyne.KeyEscape:
		field.Leave(l, e)
	default:
		field.HandOn(l, e)
	}
}

// handBack gives the keyboard, with a key, to the drawing: a list that was emptied
// behind a dialog has kept it.
func (l *list) handBack(e *fyne.KeyEvent) {
	c := field.CanvasOf(l)
	if c == nil {
		return
	}
	c.Unfocus()
	if take := c.OnTypedKey(); take != nil {
		take(e)
	}
}

// CreateRenderer draws the list with its ring.
func (l *list) CreateRenderer() fyne.WidgetRenderer {
	return l.Around(l.List.CreateRenderer())
}

// newRow makes a row: the sign and word of the severity, and what is wrong where.
func newRow() fyne.CanvasObject {
	mark := fynecanvas.NewText("×", fynetheme.Color(fynetheme.ColorNameForeground))
	mark.TextStyle.Bold = true
	text := field.NewLabel("")
	text.Wrapping = fyne.TextWrapWord
	return container.New(&rowLayout{}, mark, text)
}

// rowLayout puts the mark before the first line of the text.
type rowLayout struct{ mark float32 }

// Layout lays a row out.
func (r *rowLayout) Layout(o []fyne.CanvasObject, s fyne.Size) {
	pad := fynetheme.Size(fynetheme.SizeNameInnerPadding)
	o[0].Move(fyne.NewPos(pad, pad))
	o[0].Resize(o[0].MinSize())
	o[1].Move(fyne.NewPos(r.mark, 0))
	o[1].Resize(fyne.NewSize(s.Width-r.mark, s.Height))
}

// MinSize is that of a row with one line.
func (r *rowLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	size, pad := fynetheme.Size(fynetheme.SizeNameText), fynetheme.Size(fynetheme.SizeNameInnerPadding)
	return fyne.NewSize(12*size, 1.4*size+2*pad)
}
