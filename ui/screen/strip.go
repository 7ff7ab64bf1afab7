package screen

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/ui/look"
	"frontlay/ui/paint"
)

// strip shows a long run whole, small, in the lower left corner of the sheet, with
// a frame around what the sheet shows of it: a press in it moves the sheet there,
// and the frame can be dragged.
type strip struct {
	widget.BaseWidget
	c      *Screen
	ground *fynecanvas.Rectangle
	run    *fyne.Container
	frame  *fynecanvas.Rectangle

	of   *drawing.Drawing // that run shows
	lens paint.Lens
	hold fyne.Delta // from the frame's middle to the pointer that drags it
}

// A run of more fronts than stripFrom has the strip where it is not seen whole,
// stripHigh units high.
const (
	stripFrom = 20
	stripHigh = 40
	stripPad  = 4
)

func newStrip(c *Screen) *strip {
	s := &strip{c: c, ground: fynecanvas.NewRectangle(nil), run: container.NewWithoutLayout(), frame: fynecanvas.NewRectangle(nil)}
	s.ExtendBaseWidget(s)
	s.Hide()
	return s
}

// box is what the strip takes of the sheet; empty: it is not shown.
func (s *strip) box() box {
	if !s.Visible() {
		return box{}
	}
	return paint.BoxAt(s.Position(), s.Size())
}

// wanted tells that the run is long and not seen whole.
func (s *strip) wanted() bool {
	c := s.c
	if c.subject != Elevation || len(c.session.Result().Plan.Fronts) <= stripFrom {
		return false
	}
	at, size := c.view.Box(c.session.Result().Plan.Extent)
	return !paint.BoxAt(at, size).Within(boxOf(0, 0, c.Size().Width, c.Size().Height))
}

// place shows the strip where it is wanted, and its frame around what is seen.
func (s *strip) place() {
	if !s.wanted() {
		s.Hide()
		return
	}
	c, p := s.c, look.Current()
	extent := c.session.Result().Plan.Extent
	room := c.corner.box().X1 - mostBar - 5*fromEdge
	high := float32(stripHigh)
	wide := min(float32(extent.Width().MM()/extent.Height().MM())*(high-2*stripPad)+2*stripPad, room)
	size := fyne.NewSize(max(wide, 2*high), high)
	s.Resize(size)
	s.Move(fyne.NewPos(fromEdge, c.Size().Height-high-fromEdge))
	s.ground.FillColor, s.ground.StrokeColor, s.ground.StrokeWidth, s.ground.CornerRadius = p.Field, p.FieldEdge, 1, 6
	s.ground.Resize(size)
	pad := paint.Margins{Left: stripPad, Right: stripPad, Bottom: stripPad, Top: stripPad}
	if lens := paint.Fitted(extent, pad, size); s.of != c.shown() || s.lens != lens {
		s.of, s.lens = c.shown(), lens
		s.run.Objects = s.fronts(size)
	}
	seen := plane.Rect{Min: c.view.Run(fyne.NewPos(0, c.Size().Height)), Max: c.view.Run(fyne.NewPos(c.Size().Width, 0))}
	at, framed := s.lens.Box(seen)
	b := paint.BoxAt(at, framed).Common(boxOf(1, 1, size.Width-1, size.Height-1))
	tint := p.Accent
	tint.A = 0x28
	s.frame.FillColor, s.frame.StrokeColor, s.frame.StrokeWidth, s.frame.CornerRadius = tint, p.Accent, 2, 3
	s.frame.Move(b.Place())
	s.frame.Resize(b.Extent())
	s.Show()
	fynecanvas.Refresh(s.run)
}

// fronts paints the run as small as it is there: its fronts and carcasses, without
// grain.
func (s *strip) fronts(size fyne.Size) []fyne.CanvasObject {
	small := &drawing.Drawing{}
	for _, m := range s.c.shown().Marks {
		if r, ok := m.(*drawing.Rectangle); ok && r.Filled {
			switch r.Meaning {
			case drawing.Carcass, drawing.Plinth, drawing.Face, drawing.PanelPart, drawing.NichePart:
				small.Add(&drawing.Rectangle{Tag: r.Tag, Rect: r.Rect, Filled: true})
			}
		}
	}
	var stock paint.Stock
	b := paint.New(small, s.lens, size, pixelsOf(s.c), &stock)
	s.c.woods(b)
	b.Palette.Flat = true // the run has some dozen units of height
	b.Marks()
	return b.Objects
}

// MouseDown moves the sheet to what is pressed on, and takes hold of the frame.
func (s *strip) MouseDown(e *desktop.MouseEvent) {
	if e.Button != desktop.MouseButtonPrimary {
		return
	}
	middle := s.frame.Position().AddXY(s.frame.Size().Width/2, s.frame.Size().Height/2)
	s.hold = fyne.NewDelta(e.Position.X-middle.X, e.Position.Y-middle.Y)
	if !(boxOf(e.Position.X, e.Position.Y, e.Position.X, e.Position.Y).Within(paint.BoxAt(s.frame.Position(), s.frame.Size()))) {
		s.hold = fyne.Delta{}
		s.show(e.Position)
	}
}

// MouseUp lets go.
func (s *strip) MouseUp(*desktop.MouseEvent) {}

// Dragged moves the frame, and the sheet with it.
func (s *strip) Dragged(e *fyne.DragEvent) { s.show(e.Position) }

// DragEnd lets go.
func (s *strip) DragEnd() {}

// show moves the sheet so that the frame's middle is where the pointer holds it.
func (s *strip) show(at fyne.Position) {
	c := s.c
	to := c.view.At(s.lens.Run(at.SubtractXY(s.hold.DX, s.hold.DY)))
	c.Pan(c.Size().Width/2-to.X, c.Size().Height/2-to.Y)
}

// Cursor tells that the frame can be taken hold of.
func (s *strip) Cursor() desktop.Cursor { return desktop.PointerCursor }

// CreateRenderer makes the renderer; everything is kept in the widget.
func (s *strip) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewWithoutLayout(s.ground, s.run, s.frame))
}
