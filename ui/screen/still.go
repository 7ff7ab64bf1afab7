package screen

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/layout/sheet"
	"frontlay/model/message"
	"frontlay/ui/paint"
)

// Still is a picture that only shows: a drawing, or a page as it will be
// printed.
type Still struct {
	widget.BaseWidget
	least   fyne.Size
	say     message.Language
	drawing *drawing.Drawing
	page    *sheet.Page
	box     *fyne.Container
	measure paint.Measures
	stock   paint.Stock
}

// NewStill makes a picture of a drawing, at least so large.
func NewStill(d *drawing.Drawing, say message.Language, least fyne.Size) *Still {
	return newStill(&Still{drawing: d, say: say, least: least})
}

// NewPage makes a picture of a page, at least so large.
func NewPage(p *sheet.Page, say message.Language, least fyne.Size) *Still {
	return newStill(&Still{page: p, say: say, least: least})
}

func newStill(s *Still) *Still {
	s.box = container.NewWithoutLayout()
	s.ExtendBaseWidget(s)
	return s
}

// ShowPage shows another page.
func (s *Still) ShowPage(p *sheet.Page, say message.Language) {
	s.page, s.say = p, say
	s.Refresh()
}

// Enlarge makes the picture at least so large, so that it can be scrolled.
func (s *Still) Enlarge(least fyne.Size) {
	s.least = least
	s.Refresh()
}

func (s *Still) paint() {
	size := s.Size()
	if size.Width < 10 || size.Height < 10 {
		return
	}
	if s.page != nil {
		s.box.Objects = pageObjects(s.page, s.say, size, &s.measure)
	} else {
		begin := func(view paint.Lens) *painter {
			return newPainter(paint.New(s.drawing, view, size, pixelsOf(s), &s.stock), s.drawing, s.say, &s.measure)
		}
		m := begin(paint.Lens{Scale: 1}).margins()
		if m == (paint.Margins{Left: 24, Right: 24, Bottom: 24, Top: 24}) { // no dimensions: the picture can fill its place
			m = paint.Margins{Left: 6, Right: 6, Bottom: 6, Top: 6}
		}
		p := begin(paint.Fitted(s.drawing.Bounds(), m, size))
		p.Marks()
		p.place(nil)
		p.write()
		s.box.Objects = p.Objects
	}
	fynecanvas.Refresh(s.box)
}

// CreateRenderer makes the renderer; everything is kept in the widget.
func (s *Still) CreateRenderer() fyne.WidgetRenderer { return &stillRenderer{s} }

type stillRenderer struct{ s *Still }

func (r *stillRenderer) Layout(size fyne.Size) {
	r.s.box.Resize(size)
	r.s.paint()
}
func (r *stillRenderer) MinSize() fyne.Size           { return r.s.least }
func (r *stillRenderer) Refresh()                     { r.s.paint() }
func (r *stillRenderer) Destroy()                     {}
func (r *stillRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.s.box} }
