package field

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// knob is a small button for the pointer alone: the steppers beside a field. Tab
// passes it by, as the field's own up and down keys do the same.
type knob struct {
	widget.BaseWidget
	text    string
	tapped  func()
	hovered bool
}

func newKnob(text string, tapped func()) *knob {
	k := &knob{text: text, tapped: tapped}
	k.ExtendBaseWidget(k)
	return k
}

// Tapped steps.
func (k *knob) Tapped(*fyne.PointEvent) { k.tapped() }

// MouseIn shows that it can be pressed.
func (k *knob) MouseIn(*desktop.MouseEvent) {
	k.hovered = true
	k.Refresh()
}

// MouseMoved is not of interest.
func (k *knob) MouseMoved(*desktop.MouseEvent) {}

// MouseOut ends what MouseIn began.
func (k *knob) MouseOut() {
	k.hovered = false
	k.Refresh()
}

// CreateRenderer draws it as buttons are drawn.
func (k *knob) CreateRenderer() fyne.WidgetRenderer {
	back := fynecanvas.NewRectangle(fynetheme.Color(fynetheme.ColorNameButton))
	label := fynecanvas.NewText(k.text, fynetheme.Color(fynetheme.ColorNameForeground))
	label.TextStyle.Bold = true
	r := &knobRenderer{k, back, label, container.NewStack(back, container.NewCenter(label))}
	r.colour()
	return r
}

type knobRenderer struct {
	knob  *knob
	back  *fynecanvas.Rectangle
	label *fynecanvas.Text
	all   *fyne.Container
}

func (r *knobRenderer) Layout(s fyne.Size) { r.all.Resize(s) }

func (r *knobRenderer) MinSize() fyne.Size {
	pad := fynetheme.Size(fynetheme.SizeNameInnerPadding)
	return r.label.MinSize().AddWidthHeight(2*pad, pad)
}

func (r *knobRenderer) Refresh() {
	r.colour()
	r.back.Refresh()
	r.label.Refresh()
}

func (r *knobRenderer) colour() {
	r.back.FillColor = fynetheme.Color(fynetheme.ColorNameButton)
	if r.knob.hovered {
		r.back.FillColor = fynetheme.Color(fynetheme.ColorNameHover)
	}
	r.back.StrokeColor, r.back.StrokeWidth = fynetheme.Color(fynetheme.ColorNameInputBorder), thinEdge
	r.back.CornerRadius = fynetheme.Size(fynetheme.SizeNameInputRadius)
	r.label.Color = fynetheme.Color(fynetheme.ColorNameForeground)
	r.label.TextSize = fynetheme.Size(fynetheme.SizeNameText)
}

func (r *knobRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.all} }

func (r *knobRenderer) Destroy() {}
