// Package sketch shows a drawing of figures that are typed beside it: the one that a
// person is about stands out, and each leads to its field.
package sketch

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/model/message"
	"frontlay/ui/paint"
)

// Sketch shows a drawing. The figure that a person is about stands out; a click on a
// figure leads to its field.
type Sketch struct {
	widget.BaseWidget
	Drawing *drawing.Drawing // what Draw was given last
	Focus   string           // the path of the figure that a person is about
	OnPick  func(string)
	OnHover func(string) // empty where the pointer is over none

	say      message.Language
	hover    string
	least    fyne.Size
	box      *fyne.Container
	written  *letter.Written
	measures paint.Measures
}

// New makes a sketch that takes at least a size. It is empty until Draw.
func New(least fyne.Size) *Sketch {
	s := &Sketch{Drawing: &drawing.Drawing{}, least: least, box: container.NewWithoutLayout()}
	s.ExtendBaseWidget(s)
	return s
}

// Draw shows another drawing, or another figure of it.
func (s *Sketch) Draw(d *drawing.Drawing, focus string, say message.Language) {
	s.Drawing, s.Focus, s.say = d, focus, say
	s.Refresh()
}

// paint makes the objects for the size of the moment.
func (s *Sketch) paint() {
	if size := s.Size(); size.Width > 40 && size.Height > 40 && len(s.Drawing.Marks) > 0 {
		p := painted(s, size)
		s.box.Objects, s.written = p.objects, p.written
	} else {
		s.box.Objects, s.written = nil, nil
	}
	fynecanvas.Refresh(s.box)
}

// Written is what is written on the sketch, as it lies on the screen; nil: nothing.
func (s *Sketch) Written() *letter.Written { return s.written }

// under finds the figure at a place, with some room around for the finger.
func (s *Sketch) under(at fyne.Position) string {
	const around = 4
	if s.written == nil {
		return ""
	}
	if i := s.written.At(letter.Point{X: float64(at.X), Y: -float64(at.Y)}, around); i >= 0 {
		return s.written.Texts[i].Of.Of.Figure
	}
	return ""
}

// Tapped leads to the field of a figure.
func (s *Sketch) Tapped(e *fyne.PointEvent) {
	if f := s.under(e.Position); f != "" && s.OnPick != nil {
		s.OnPick(f)
	}
}

// MouseIn begins to follow the pointer.
func (s *Sketch) MouseIn(e *desktop.MouseEvent) { s.MouseMoved(e) }

// MouseMoved tells which figure the pointer is over.
func (s *Sketch) MouseMoved(e *desktop.MouseEvent) { s.over(s.under(e.Position)) }

// MouseOut ends it.
func (s *Sketch) MouseOut() { s.over("") }

func (s *Sketch) over(f string) {
	if f == s.hover {
		return
	}
	s.hover = f
	if s.OnHover != nil {
		s.OnHover(f)
	}
}

// Cursor tells what can be clicked.
func (s *Sketch) Cursor() desktop.Cursor {
	if s.hover != "" {
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

// CreateRenderer makes the renderer; everything is kept in the widget.
func (s *Sketch) CreateRenderer() fyne.WidgetRenderer { return &renderer{s} }

type renderer struct{ s *Sketch }

func (r *renderer) Layout(size fyne.Size) {
	r.s.box.Resize(size)
	r.s.paint()
}
func (r *renderer) MinSize() fyne.Size           { return r.s.least }
func (r *renderer) Refresh()                     { r.s.paint() }
func (r *renderer) Destroy()                     {}
func (r *renderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.s.box} }
