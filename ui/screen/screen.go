// Package screen is the drawing on the screen as a widget: where its places lie on
// the sheet, what the pointer and the keys do there, what is typed, and what stands
// over it. Package paint makes the picture.
package screen

import (
	"math"
	"slices"
	"time"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/layout/letter"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/paint"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// Screen is the widget that shows the elevation and takes the hand's work on
// it. It holds no figure that the session does not.
type Screen struct {
	widget.BaseWidget
	gestures
	keyboard

	// OnTell gets what is to stand in the status line.
	OnTell func(message.Message)
	// OnMenu is asked for a menu at a place of the window.
	OnMenu func(at fyne.Position)
	// OnKey gets keys that the drawing has no use for, OnRune letters.
	OnKey  func(*fyne.KeyEvent)
	OnRune func(rune)
	// OnEscape is asked, while no button is held, whether Esc is for something that
	// lies over the drawing; nil: it is the drawing's.
	OnEscape func() bool
	// Held tells which modifier keys are held; nil: what the driver says.
	Held func() fyne.KeyModifier
	// OnHold is told that another tool, or another state of one, is in the hand.
	OnHold func()
	// OnHover gets the thing under the pointer when it changes.
	OnHover func(drawing.Subject)

	// OnPainted is told that the picture was painted anew.
	OnPainted func()
	// OnTyped is told that a text of the drawing was changed by typing.
	OnTyped func()

	session    *session.Session
	say        func() message.Language
	seeThrough bool
	rulers     bool
	bare       bool // no dimensions are shown
	subject    Picture

	view    paint.Lens
	fitting bool // the picture follows the size of the widget
	drawing *drawing.Drawing
	figures []figure
	written []text // where letters are
	tags    []box  // and among them flags of findings
	all     *letter.Written
	measure paint.Measures
	stock   paint.Stock

	paper   *fynecanvas.Rectangle
	picture *fyne.Container // the drawing and what is selected in it
	overlay *fyne.Container // what the tool shows
	legend  box             // what is seen behind the fronts; empty: it is not shown
	corner  *corner
	card    *card
	strip   *strip
}

// New makes the screen of a session. say gives the language of the moment.
func New(s *session.Session, say func() message.Language) *Screen {
	c := &Screen{session: s, say: say, fitting: true, view: paint.Lens{Scale: 0.5}}
	c.gestures = gestures{on: c, now: time.Now, hand: tool.Idle{}}
	c.keyboard = keyboard{on: c}
	c.paper = fynecanvas.NewRectangle(look.Current().Sheet)
	c.picture, c.overlay = container.NewWithoutLayout(), container.NewWithoutLayout()
	c.corner, c.strip, c.card = newCorner(c), newStrip(c), newCard(c)
	c.ExtendBaseWidget(c)
	c.Watch(s)
	return c
}

// Watch shows another session from now on.
func (c *Screen) Watch(s *session.Session) {
	c.session, c.hand, c.fitting = s, tool.Idle{}, true
	c.drawing = nil
	s.Listen(func(ch session.Change) {
		if c.session != s {
			return
		}
		if ch&session.Document != 0 {
			c.drawing = nil
			c.closeTyping()
		}
		if ch&session.Selected != 0 && c.subject != Elevation || ch&session.Chosen != 0 {
			c.drawing = nil
		}
		c.repaint()
	})
	c.repaint()
}

// Session is what the screen shows.
func (c *Screen) Session() *session.Session { return c.session }

// SeeThrough tells whether the drawers behind the fronts show.
func (c *Screen) SeeThrough() bool { return c.seeThrough }

// SetSeeThrough shows or hides the drawers behind the fronts.
func (c *Screen) SetSeeThrough(on bool) {
	c.seeThrough = on
	c.drawing = nil
	c.repaint()
}

// Dimensions tells whether dimensions are shown.
func (c *Screen) Dimensions() bool { return !c.bare }

// SetDimensions shows or hides the dimensions.
func (c *Screen) SetDimensions(on bool) {
	c.bare, c.drawing = !on, nil
	c.repaint()
}

// shown gives the drawing of the moment, made anew when the document changed.
func (c *Screen) shown() *drawing.Drawing {
	if c.drawing == nil {
		c.drawing = c.draw()
		if c.bare {
			c.drawing.Marks = slices.DeleteFunc(c.drawing.Marks, func(m drawing.Mark) bool {
				_, is := m.(*drawing.Dimension)
				return is
			})
		}
	}
	return c.drawing
}

// margins leave room for the dimensions of the drawing.
func (c *Screen) margins() paint.Margins {
	p := c.painter()
	m := p.margins()
	if c.subject != Elevation { // its title stands at the top
		lines, size := titleLines(c, p)
		m.Top = max(m.Top, 3.4*look.Text()+float32(len(lines)-1)*size.Height)
	}
	if c.rulers {
		_, high, wide := p.rulerSizes()
		m.Left, m.Top = m.Left+wide, m.Top+high
	}
	return m
}

// Fit shows the whole run.
func (c *Screen) Fit() {
	c.fitting = true
	c.repaint()
}

// ZoomTo shows a rectangle of the run as large as possible.
func (c *Screen) ZoomTo(r plane.Rect) {
	if r.Empty() {
		return
	}
	c.fitting = false
	c.view = paint.Fitted(r, paint.Margins{Left: 40, Right: 40, Bottom: 40, Top: 40}, c.Size())
	c.repaint()
}

// ZoomToSelection shows what is selected as large as possible.
func (c *Screen) ZoomToSelection() {
	var all plane.Rect
	for _, t := range c.session.Selection() {
		r, ok := c.rectOf(t)
		if ok && all.Empty() {
			all = r
		} else if ok {
			all = all.Union(r)
		}
	}
	c.ZoomTo(all)
}

// Zoom makes the picture larger by a factor around its middle.
func (c *Screen) Zoom(factor float64) {
	c.zoomAt(factor, fyne.NewPos(c.Size().Width/2, c.Size().Height/2))
}

func (c *Screen) zoomAt(factor float64, at fyne.Position) {
	c.fitting = false
	c.view = c.view.Zoomed(factor, at)
	c.repaint()
}

// repaint makes the picture anew from the session and the view.
func (c *Screen) repaint() {
	if c.Size().Width < 10 || c.Size().Height < 10 {
		return
	}
	if c.fitting && !c.pressed { // under the hand the picture stays still
		c.fit()
	}
	p := c.painter()
	if c.rulers {
		p.grid(rulerStep(p.say.Unit, c.view.Scale))
		_, high, wide := p.rulerSizes()
		p.inset = fyne.NewPos(wide, high)
		p.reserved = append(p.reserved, boxOf(0, 0, p.Size.Width, high), boxOf(0, 0, wide, p.Size.Height))
	}
	if c.subject != Elevation {
		p.reserved = append(p.reserved, c.titleBox(p))
	}
	c.corner.place()
	c.strip.place()
	p.reserved = append(p.reserved, c.corner.room(p))
	if b := c.strip.box(); !b.Empty() {
		p.reserved = append(p.reserved, b)
	}
	p.Marks()
	p.place(c.strong)
	c.paintSelection(p)
	p.inside(c.session.IsSelected, p.Palette.Accent)
	p.write()
	p.scaleBar(c.corner.bar(p))
	c.card.place(p)
	c.legend = box{}
	if _, wants := c.hand.(spacious); p.Through && !wants { // it would draw over it
		c.legend = p.legend(c.card.pictured(), p.Rect(c.extent()))
	}
	if c.rulers {
		p.rulersOver(rulerStep(p.say.Unit, c.view.Scale))
	}
	c.picture.Objects, c.figures, c.all = p.Objects, p.figures(), p.all
	c.written, c.tags = p.texts()
	c.colourPaper()
	c.repaintOverlay()
	if c.typing != nil {
		c.typing.place()
	}
	fynecanvas.Refresh(c.paper)
	fynecanvas.Refresh(c.picture)
	if c.OnPainted != nil {
		c.OnPainted()
	}
}

// Free tells that nothing is written in a part of the picture, and that nothing else
// of the window stands there.
func (c *Screen) Free(at fyne.Position, size fyne.Size) bool {
	b := paint.BoxAt(at, size)
	return !slices.ContainsFunc(c.written, func(t text) bool { return t.Overlaps(b) }) && !b.Overlaps(c.corner.room(c.painter())) && !b.Overlaps(c.strip.box()) && !b.Overlaps(c.legend)
}

// fit shows all that there is to see, with its dimensions clear of what stands in
// the corner.
func (c *Screen) fit() {
	m := c.margins()
	c.view = paint.Fitted(c.extent(), m, c.Size())
	c.corner.place()
	p := c.painter()
	run, corner := p.Rect(c.extent()), c.corner.room(p)
	run.X2, run.Y2 = run.X2+m.Right, run.Y2+m.Bottom
	if run.Overlaps(corner) {
		m.Bottom += run.Y2 - corner.Y1
		c.view = paint.Fitted(c.extent(), m, c.Size())
	}
}

func (c *Screen) painter() *painter {
	return newPainter(c.brush(), c.shown(), c.say(), &c.measure)
}

// strong tells that a figure is one of what is selected.
func (c *Screen) strong(t drawing.Subject) bool {
	return c.session.IsSelected(t) || t.Kind == drawing.FrontHeight && c.session.IsSelected(session.Front(t.Place))
}

// brush begins a picture of what is shown.
func (c *Screen) brush() *paint.Painter {
	b := paint.New(c.shown(), c.view, c.Size(), pixelsOf(c), &c.stock)
	c.woods(b)
	b.Through = c.seeThrough && c.subject == Elevation
	b.Plain = c.pressed && len(c.session.Result().Plan.Fronts) > mostGrained
	return b
}

// woods tells a painter what the fronts are of.
func (c *Screen) woods(b *paint.Painter) {
	p, say, known := c.session.Project(), c.say(), map[string]paint.Wood{}
	b.Own = func(at model.Place) paint.Wood {
		of := p.BoardOf(at)
		w, ok := known[of.Name]
		if !ok {
			w = paint.WoodOf(of.Board, say, b.Palette)
			known[of.Name] = w
		}
		return w
	}
	b.Front = b.Own(model.Whole)
}

// mostGrained is how many fronts show their grain at most while something is
// dragged.
const mostGrained = 60

// arcs is of how many lines a round corner of the paper's edge is.
const arcs = 4

// pixelsOf tells how many pixels a unit of the screen has where an object is.
func pixelsOf(o fyne.CanvasObject) float32 {
	if c := field.CanvasOf(o); c != nil && c.Scale() > 0 {
		return c.Scale()
	}
	return 1
}

// colourPaper gives the paper the colours of the moment: its edge tells the focus.
func (c *Screen) colourPaper() {
	p := look.Current()
	c.paper.FillColor, c.paper.StrokeColor, c.paper.StrokeWidth, c.paper.CornerRadius = p.Sheet, p.Line, 1, 5
	if p.Flat {
		c.paper.StrokeColor = p.FieldEdge
	}
	if c.focused {
		c.paper.StrokeColor, c.paper.StrokeWidth = p.Accent, 2
	}
}

// frame shows by the paper's edge whether the drawing has the focus.
func (c *Screen) frame() {
	c.colourPaper()
	fynecanvas.Refresh(c.paper)
	c.repaintOverlay()
}

// repaintOverlay shows the title and the feedback of the tool.
func (c *Screen) repaintOverlay() {
	p := c.painter()
	p.all = c.all
	if c.subject != Elevation {
		c.paintTitle(p)
	}
	c.paintFeedback(p)
	if c.focused {
		// The paper's edge again, over what the picture has at it: a frame would be a
		// surface as large as the window, and surfaces over one another are what costs.
		const round, inset = 5, 1
		w, h := c.Size().Width, c.Size().Height
		corners := [4]fyne.Position{{X: w - round, Y: round}, {X: w - round, Y: h - round}, {X: round, Y: h - round}, {X: round, Y: round}}
		last := fyne.NewPos(round, inset)
		for i := range 4 * (arcs + 1) { // clockwise from the upper edge
			sin, cos := math.Sincos(math.Pi / 2 * (float64(i/(arcs+1)) + float64(i%(arcs+1))/arcs))
			to := corners[i/(arcs+1)].AddXY((round-inset)*float32(sin), -(round-inset)*float32(cos))
			p.Line(last.X, last.Y, to.X, to.Y, p.Palette.Accent, 2)
			last = to
		}
		p.Line(last.X, last.Y, round, inset, p.Palette.Accent, 2)
	}
	c.overlay.Objects = p.Objects
	fynecanvas.Refresh(c.overlay)
}

// CreateRenderer makes the renderer; everything is kept in the widget.
func (c *Screen) CreateRenderer() fyne.WidgetRenderer {
	clip := container.NewClip(container.NewStack(c.picture, c.overlay))
	return &renderer{c, clip}
}

type renderer struct {
	c    *Screen
	clip *container.Clip
}

func (r *renderer) Layout(s fyne.Size) {
	r.c.paper.Resize(s)
	r.clip.Resize(s)
	r.c.repaint()
}

func (r *renderer) MinSize() fyne.Size { return fyne.NewSize(240, 180) }
func (r *renderer) Refresh()           { r.c.repaint() }
func (r *renderer) Destroy()           {}

func (r *renderer) Objects() []fyne.CanvasObject {
	o := []fyne.CanvasObject{r.c.paper, r.clip, r.c.strip, r.c.corner.object, r.c.card.object}
	if r.c.typing != nil {
		o = append(o, r.c.typing.box)
	}
	return o
}
