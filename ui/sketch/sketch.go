package hardware

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

// sketch shows a drawing of a hardware sheet. The figure that a person is about
// stands out; a click on a figure leads to its field.
type sketch struct {
	widget.BaseWidget
	drawing *drawing.Drawing
	say     message.Language
	focus   string // the path of the figure that a person is about
	hover   string
	onPick  func(string)
	onHover func(string) // empty where the pointer is over none

	box      *fyne.Container
	written  *letter.Written
	measures paint.Measures
}

func newSketch() *sketch {
	s := &sketch{drawing: &drawing.Drawing{}, box: container.NewWithoutLayout()}
	s.ExtendBaseWidget(s)
	return s
}

// show shows another drawing, or another figure of it.
func (s *sketch) show(d *drawing.Drawing, focus string, say message.Language) {
	s.drawing, s.focus, s.say = d, focus, say
	s.Refresh()
}

// paint makes the objects for the size of the moment.
func (s *sketch) paint() {
	if size := s.Size(); size.Width > 40 && size.Height > 40 && len(s.drawing.Marks) > 0 {
		p := painted(s, size)
		s.box.Objects, s.written = p.objects, p.written
	} else {
		s.box.Objects, s.written = nil, nil
	}
	fynecanvas.Refresh(s.box)
}

// under finds the figure at a place, with some room around for the finger.
func (s *sketch) under(at fyne.Position) string {
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
func (s *sketch) Tapped(e *fyne.PointEvent) {
	if f := s.under(e.Position); f != "" && s.onPick != nil {
		s.onPick(f)
	}
}

// MouseIn begins to follow the pointer.
func (s *sketch) MouseIn(e *desktop.MouseEvent) { s.MouseMoved(e) }

// MouseMoved tells which figure the pointer is over.
func (s *sketch) MouseMoved(e *desktop.MouseEvent) { s.over(s.under(e.Position)) }

// MouseOut ends it.
func (s *sketch) MouseOut() { s.over("") }

func (s *sketch) over(f string) {
	if f == s.hover {
		return
	}
	s.hover = f
	if s.onHover != nil {
		s.onHover(f)
	}
}

// Cursor tells what can be clicked.
func (s *sketch) Cursor() desktop.Cursor {
	if s.hover != "" {
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

// CreateRenderer makes the renderer; everything is kept in the widget.
func (s *sketch) CreateRenderer() fyne.WidgetRenderer { return &sketchRenderer{s} }

type sketchRenderer struct{ s *sketch }

func (r *sketchRenderer) Layout(size fyne.Size) {
	r.s.box.Resize(size)
	r.s.paint()
}
func (r *sketchRenderer) MinSize() fyne.Size           { return fyne.NewSize(220, 180) }
func (r *sketchRenderer) Refresh()                     { r.s.paint() }
func (r *sketchRenderer) Destroy()                     {}
func (r *sketchRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.s.box} }
