package findings

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/field"
	"frontlay/ui/look"
)

// mend is what is pressed in a row of the list to mend its finding. It never has
// the focus: the keyboard has the list, from whose rows Enter leads to all changes.
type mend struct {
	widget.BaseWidget
	field.Hover
	words  string
	tapped func()
}

func newMend() *mend {
	m := &mend{}
	m.Changed = m.Refresh
	m.ExtendBaseWidget(m)
	return m
}

// Named is what it says.
func (m *mend) Named() string { return m.words }

// Tapped makes the change.
func (m *mend) Tapped(*fyne.PointEvent) {
	if m.tapped != nil {
		m.tapped()
	}
}

// write gives it other words, and what they do.
func (m *mend) write(words string, tapped func()) {
	m.tapped = tapped
	if m.words != words {
		m.words = words
		m.Refresh()
	}
}

// mendWidth is the width that words need.
func mendWidth(words string) float32 {
	return fyne.MeasureText(words, look.Secondary(), fyne.TextStyle{Bold: true}).Width + 4*fynetheme.Size(fynetheme.SizeNameInnerPadding)
}

// CreateRenderer draws it as a button is drawn.
func (m *mend) CreateRenderer() fyne.WidgetRenderer {
	r := &mendRenderer{m, &fynecanvas.Rectangle{CornerRadius: 5, StrokeWidth: 1}, fynecanvas.NewText("", nil)}
	r.text.Alignment, r.text.TextStyle.Bold = fyne.TextAlignCenter, true
	r.Refresh()
	return r
}

type mendRenderer struct {
	m    *mend
	back *fynecanvas.Rectangle
	text *fynecanvas.Text
}

func (r *mendRenderer) Layout(s fyne.Size) {
	r.back.Resize(s)
	high := r.text.MinSize().Height
	r.text.Resize(fyne.NewSize(s.Width, high))
	r.text.Move(fyne.NewPos(0, (s.Height-high)/2))
}

func (r *mendRenderer) MinSize() fyne.Size {
	return fyne.NewSize(mendWidth(r.m.words), look.Secondary()*1.9)
}

func (r *mendRenderer) Refresh() {
	p := look.Current()
	var ground color.Color = p.Field
	if r.m.Hovered() {
		ground = p.AccentTint
	}
	r.back.FillColor, r.back.StrokeColor = ground, p.FieldEdge
	r.text.Text, r.text.Color, r.text.TextSize = r.m.words, p.Ink, look.Secondary()
	r.back.Refresh()
	r.text.Refresh()
}

func (r *mendRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.back, r.text} }
func (r *mendRenderer) Destroy()                     {}
