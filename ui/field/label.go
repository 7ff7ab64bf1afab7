package field

import (
	"fyne.io/fyne/v2"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Label is Fyne's label that keeps its lines. Fyne drops the renderer of a widget
// that was not painted for a minute, and its label then forgets the width that it
// breaks its lines in: a message shown again would stand in one line, cut.
type Label struct{ widget.Label }

// NewLabel makes a label.
func NewLabel(text string) *Label {
	l := &Label{}
	l.ExtendBaseWidget(l)
	l.Text = text
	return l
}

// CreateRenderer lays the text out in the size that the label has already.
func (l *Label) CreateRenderer() fyne.WidgetRenderer {
	r := l.Label.CreateRenderer()
	if s := l.Size(); s.Width > 0 {
		r.Layout(s)
	}
	return r
}

// Hang is what a label has free at its sides.
func (l *Label) Hang() float32 { return fynetheme.Size(fynetheme.SizeNameInnerPadding) }

// Heading is the title of a group of fields.
func Heading(text string) fyne.CanvasObject {
	l := NewLabel(text)
	l.TextStyle.Bold = true
	return l
}
