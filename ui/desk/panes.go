package desk

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"frontlay/ui/look"
)

// panes are how the desk is divided: the bar of tools at the top, below it the
// sheet on its bench over the bar of the check, and the inspector at the right.
// What is left of a wide window is the sheet's.
type panes struct {
	tools, sheet, check, inspector fyne.CanvasObject
	told                           *told
	pins                           *pins
	edge                           *edge

	bench  [4]*fynecanvas.Rectangle // around the sheet
	shadow [3]*fynecanvas.LinearGradient
	lines  [2]*fynecanvas.Rectangle // below the tools, beside the inspector

	width  float32 // of the inspector in small letters
	hidden bool    // the inspector is
}

// inset is the bench that is seen around the sheet, in units of the screen.
const inset = 4

// Widths of the inspector, in units of the screen. Large letters want more.
const (
	leastInspector = 260
	usualInspector = 300
	mostInspector  = 420
	largerBy       = 1.3
	step           = 20 // how far one press of a key moves its edge
)

func newPanes() *panes {
	p := &panes{width: usualInspector}
	for i := range p.bench {
		p.bench[i] = &fynecanvas.Rectangle{}
	}
	for i := range p.shadow {
		p.shadow[i] = &fynecanvas.LinearGradient{}
	}
	p.shadow[1].Angle, p.shadow[2].Angle = 90, 270
	for i := range p.lines {
		p.lines[i] = &fynecanvas.Rectangle{}
	}
	p.edge = newEdge(p)
	return p
}

// object is the desk. What the Tab key reaches comes in the order of the work: the
// sheet, the check, the inspector, the tools.
func (p *panes) object() *fyne.Container {
	o := container.New(p)
	for _, r := range p.bench {
		o.Add(r)
	}
	for _, g := range p.shadow {
		o.Add(g)
	}
	o.Objects = append(o.Objects, p.sheet, p.pins.object, p.check, p.told.object, p.inspector, p.lines[1], p.edge, p.tools, p.lines[0])
	p.colour()
	p.hide(p.hidden)
	return o
}

// hide hides the inspector, or shows it.
func (p *panes) hide(on bool) {
	p.hidden = on
	for _, o := range []fyne.CanvasObject{p.inspector, p.lines[1], p.edge} {
		if on {
			o.Hide()
		} else {
			o.Show()
		}
	}
}

// colour takes the colours of the moment.
func (p *panes) colour() {
	c := look.Current()
	for _, r := range p.bench {
		r.FillColor = c.Bench
		r.Refresh()
	}
	for _, g := range p.shadow {
		g.Hidden, g.StartColor, g.EndColor = c.Flat, c.Shadow, color.Transparent
		g.Refresh()
	}
	for _, r := range p.lines {
		r.FillColor = c.Line
		r.Refresh()
	}
}

// larger is how much wider than with small letters the inspector is.
func larger() float32 {
	if look.Large() {
		return largerBy
	}
	return 1
}

// widen makes the inspector wider by units of the screen.
func (p *panes) widen(by float32) { p.width = within(p.width + by/larger()) }

func within(w float32) float32 { return min(max(w, leastInspector), mostInspector) }

// side is how wide the inspector is now, with its line.
func (p *panes) side() float32 {
	if p.hidden {
		return 0
	}
	return max(p.width*larger(), p.inspector.MinSize().Width) + 1
}

// Layout divides the desk.
func (p *panes) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	put := func(o fyne.CanvasObject, x, y, w, h float32) {
		o.Move(fyne.NewPos(x, y))
		o.Resize(fyne.NewSize(w, h))
	}
	top, side, low := toolsHeight(), p.side(), p.check.MinSize().Height
	put(p.tools, 0, 0, s.Width, top)
	put(p.lines[0], 0, top, s.Width, 1)
	top++
	left, high := s.Width-side, s.Height-top
	const under = inset + 6 // so far the bench lies under the sheet's round corners
	x, y, w, h := float32(inset), top+inset, left-2*inset, high-low-2*inset
	put(p.bench[0], 0, top, left, under)
	put(p.bench[1], 0, s.Height-low-under, left, under)
	put(p.bench[2], 0, top, under, high-low)
	put(p.bench[3], left-under, top, under, high-low)
	const soft = 4 // how far the shadow reaches
	put(p.shadow[0], x+3, y+h, w-6, soft)
	put(p.shadow[1], x-soft+2, y+4, soft-2, h-4)
	put(p.shadow[2], x+w, y+4, soft-2, h-4)
	put(p.sheet, x, y, w, h)
	p.pins.at = fyne.NewPos(x, y)
	p.pins.place()
	put(p.check, 0, top, left, high)
	p.told.place(fyne.NewPos(x, y), fyne.NewSize(w, h))
	put(p.lines[1], left, top, 1, high)
	put(p.inspector, left+1, top, side-1, high)
	put(p.edge, left-edgeWide/2, top, edgeWide, high-low)
}

// MinSize leaves the sheet enough to draw in.
func (p *panes) MinSize([]fyne.CanvasObject) fyne.Size {
	top, sheet, low := p.tools.MinSize(), p.sheet.MinSize(), p.check.MinSize()
	side := float32(0)
	if !p.hidden {
		side = max(leastInspector*larger(), p.inspector.MinSize().Width)
	}
	return fyne.NewSize(max(top.Width, sheet.Width+2*inset+side), toolsHeight()+sheet.Height+2*inset+low.Height)
}

// edge is the inspector's left edge, which can be dragged.
type edge struct {
	widget.BaseWidget
	panes   *panes
	mark    *fynecanvas.Rectangle
	hovered bool
	// OnMoved is told that the inspector has another width.
	OnMoved func()
}

// edgeWide is how near the pointer must be to take hold of the edge.
const edgeWide = 8

func newEdge(p *panes) *edge {
	e := &edge{panes: p, mark: &fynecanvas.Rectangle{}}
	e.ExtendBaseWidget(e)
	return e
}

// Cursor tells that the edge can be moved.
func (e *edge) Cursor() desktop.Cursor { return desktop.HResizeCursor }

// MouseIn shows what a drag would move.
func (e *edge) MouseIn(*desktop.MouseEvent) { e.hover(true) }

// MouseMoved is not of interest.
func (e *edge) MouseMoved(*desktop.MouseEvent) {}

// MouseOut ends what MouseIn began.
func (e *edge) MouseOut() { e.hover(false) }

func (e *edge) hover(on bool) {
	e.hovered = on
	e.Refresh()
}

// Dragged moves the edge with the pointer.
func (e *edge) Dragged(d *fyne.DragEvent) {
	e.panes.widen(edgeWide/2 - d.Position.X)
	if e.OnMoved != nil {
		e.OnMoved()
	}
}

// DragEnd is not of interest.
func (e *edge) DragEnd() {}

// CreateRenderer draws a line while the pointer is at the edge.
func (e *edge) CreateRenderer() fyne.WidgetRenderer {
	e.mark.FillColor = color.Transparent
	return &edgeRenderer{e}
}

type edgeRenderer struct{ e *edge }

func (r *edgeRenderer) Layout(s fyne.Size) {
	const wide = 3
	r.e.mark.Move(fyne.NewPos((s.Width-wide)/2, 0))
	r.e.mark.Resize(fyne.NewSize(wide, s.Height))
}

func (r *edgeRenderer) MinSize() fyne.Size { return fyne.NewSize(edgeWide, 0) }

func (r *edgeRenderer) Refresh() {
	r.e.mark.FillColor = color.Transparent
	if r.e.hovered {
		r.e.mark.FillColor = look.Current().Accent
	}
	r.e.mark.Refresh()
}

func (r *edgeRenderer) Objects() []fyne.CanvasObject { return []fyne.CanvasObject{r.e.mark} }
func (r *edgeRenderer) Destroy()                     {}
