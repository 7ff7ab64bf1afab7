package screen

import (
	"cmp"
	"image/color"
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model"
	"frontlay/model/message"
	"frontlay/ui/look"
)

// painter turns marks into objects of the screen. It leaves out what lies
// outside of the size that is shown.
type painter struct {
	view    lens
	size    fyne.Size
	palette look.Palette
	say     message.Language
	text    float32 // size of plain text
	measure *measures
	widest  float32 // of the figures beside the run, see prepare
	faces   map[model.Place]plane.Rect
	objects []fyne.CanvasObject
	figures []figure

	traces
	wishes   map[model.Place][]wish // where names and covers of fronts would stand
	numbers  map[model.Place]number // what the numbers of fronts need
	lifts    map[model.Place]int    // see makeRoom
	reserved []box                  // no letters here
	inset    fyne.Position          // what rulers take at the left and the top
	room     place                  // see placeIn
}

// newPainter begins a picture of a size. The traces of the one before give
// their memory to it.
func newPainter(view lens, size fyne.Size, say message.Language, m *measures, before traces) *painter {
	p := &painter{view: view, size: size, palette: look.Current(), say: say, text: look.Text(), measure: m, traces: before}
	p.traces.begin(p.palette.Sheet, size.Width)
	return p
}

// figure is where a dimension's figure stands on the screen.
type figure struct {
	of   drawing.Subject
	at   fyne.Position
	size fyne.Size
}

// levelStep is from one level of dimensions to the next, in screen units.
func (p *painter) levelStep(vertical bool) float32 {
	if vertical {
		return max(2.1*p.text, p.widest+10)
	}
	return 2.1 * p.text
}

// prepare looks what the dimensions of a drawing need: the widest figure of
// those that stand beside the run, and the fronts in which others stand.
func (p *painter) prepare(d *drawing.Drawing) {
	p.faces = map[model.Place]plane.Rect{}
	for _, m := range d.Marks {
		switch v := m.(type) {
		case *drawing.Dimension:
			if v.Vertical && v.Level != 0 {
				p.widest = max(p.widest, p.measure.of(v.Prefix+p.say.Figure(v.Value), p.text*0.95, false).Width)
			}
		case *drawing.Rectangle:
			if v.Of.Kind == drawing.FrontThing && v.Meaning != drawing.FindingMark {
				p.faces[v.Of.Place] = v.Rect
			}
		}
	}
}

// paint adds the marks of a drawing: geometry first, then dimension lines, and
// over everything the letters.
func (p *painter) paint(d *drawing.Drawing) {
	p.lines(d)
	p.writeTaken()
}

// lines adds the lines of a drawing and gives its texts their places.
func (p *painter) lines(d *drawing.Drawing) {
	p.prepare(d)
	var found []drawing.Mark
	for _, m := range d.Marks {
		switch v := m.(type) {
		case *drawing.Line:
			p.lineMark(v)
		case *drawing.Rectangle:
			if v.Meaning == drawing.FindingMark {
				found = append(found, m)
			} else {
				p.rectangle(v)
			}
		case *drawing.Circle:
			p.circle(v)
		case *drawing.Hatch:
			if v.Meaning == drawing.Shortfall {
				found = append(found, m)
			} else {
				p.hatch(v)
			}
		}
	}
	p.marksOfFindings(found)
	p.makeRoom(d)
	for _, m := range d.Marks {
		if v, ok := m.(*drawing.Text); ok {
			p.wish(v)
		}
	}
	p.dimensions(d)
	p.texts(d, true) // names have the right of way
	p.findings(d)
	p.texts(d, false)
	p.notes(d)
}

// marksOfFindings draws the frames and hatches of findings, the worst last, so
// that an error's is not hidden by a warning's at the same place.
func (p *painter) marksOfFindings(found []drawing.Mark) {
	slices.SortStableFunc(found, func(a, b drawing.Mark) int {
		return cmp.Compare(drawing.TagOf(b).Severity, drawing.TagOf(a).Severity)
	})
	for _, m := range found {
		switch v := m.(type) {
		case *drawing.Rectangle:
			p.rectangle(v)
		case *drawing.Hatch:
			p.hatch(v)
		}
	}
}

// texts gives the bold texts of a drawing their places, or the others; those of
// findings have theirs from elsewhere. Sizes that have no room in one line come
// last.
func (p *painter) texts(d *drawing.Drawing, bold bool) {
	var sizes []*drawing.Text
	for _, m := range d.Marks {
		if v, ok := m.(*drawing.Text); ok && v.Bold == bold && v.Meaning != drawing.FindingMark && v.Meaning != drawing.Note && !p.textMark(v) {
			sizes = append(sizes, v)
		}
	}
	p.breakSizes(sizes)
}

// window is the part of the screen where letters can be read.
func (p *painter) window() box {
	const edge = 3
	return box{p.inset.X + edge, p.inset.Y + edge, p.size.Width - edge, p.size.Height - edge}
}

// shown tells that a box on the screen is at least partly visible.
func (p *painter) shown(x1, y1, x2, y2 float32) bool {
	return x2 >= 0 && y2 >= 0 && x1 <= p.size.Width && y1 <= p.size.Height
}

func (p *painter) line(x1, y1, x2, y2 float32, c color.NRGBA, width float32) {
	if !p.shown(min(x1, x2), min(y1, y2), max(x1, x2), max(y1, y2)) {
		return
	}
	l := fynecanvas.NewLine(c)
	l.StrokeWidth = width
	l.Position1, l.Position2 = fyne.NewPos(x1, y1), fyne.NewPos(x2, y2)
	p.objects = append(p.objects, l)
}

// Lengths of a dash and the gap behind it, in screen units (ISO 128 has dashes
// of 12 and gaps of 3 line widths; this is that at a width of a screen pixel,
// shortened so that short edges still show as dashed).
const dash, dashGap = 7, 4

// dashed draws a line along an axis in dashes; what is far outside of the screen
// gets none.
func (p *painter) dashed(x1, y1, x2, y2 float32, c color.NRGBA, width float32) {
	if y1 == y2 {
		x1, x2 = min(x1, x2), max(x1, x2)
		start := max(x1, x1+float32(int((max(x1, -20)-x1)/(dash+dashGap)))*(dash+dashGap))
		for x := start; x < min(x2, p.size.Width); x += dash + dashGap {
			p.line(x, y1, min(x+dash, x2), y1, c, width)
		}
		return
	}
	y1, y2 = min(y1, y2), max(y1, y2)
	start := y1 + float32(int((max(y1, -20)-y1)/(dash+dashGap)))*(dash+dashGap)
	for y := start; y < min(y2, p.size.Height); y += dash + dashGap {
		p.line(x1, y, x2, min(y+dash, y2), c, width)
	}
}

func (p *painter) lineMark(m *drawing.Line) {
	pen := p.palette.Pen(m.Meaning)
	a, b := p.view.at(m.From), p.view.at(m.To)
	if m.Meaning == drawing.HoleCross && abs32(a.X-b.X)+abs32(a.Y-b.Y) < dot { // under its dot
		return
	}
	axis := m.From.X == m.To.X || m.From.Y == m.To.Y
	p.mark(a.X, a.Y, b.X, b.Y, weightOf(m.Meaning), 0)
	if m.Dashed && axis {
		p.dashed(a.X, a.Y, b.X, b.Y, pen.Line, pen.Width)
		return
	}
	p.line(a.X, a.Y, b.X, b.Y, pen.Line, pen.Width)
}

// box gives a rectangle's place on the screen.
func (p *painter) box(r plane.Rect) (pos fyne.Position, size fyne.Size) {
	a, b := p.view.at(plane.Point{X: r.Min.X, Y: r.Max.Y}), p.view.at(plane.Point{X: r.Max.X, Y: r.Min.Y})
	return a, fyne.NewSize(b.X-a.X, b.Y-a.Y)
}

func (p *painter) rectangle(m *drawing.Rectangle) {
	if m.Meaning == drawing.Grip {
		return
	}
	pen := p.palette.TagPen(m.Tag)
	pos, size := p.box(m.Rect)
	if !p.shown(pos.X, pos.Y, pos.X+size.Width, pos.Y+size.Height) {
		return
	}
	p.markEdges(boxAt(pos, size), weightOf(m.Meaning))
	if m.Filled && pen.Surface.A == 0xFF {
		p.floor.add(surface{boxAt(pos, size), pen.Surface})
	}
	if m.Filled || !m.Dashed {
		r := fynecanvas.NewRectangle(color.Transparent)
		if m.Filled {
			r.FillColor = pen.Surface
		}
		if !m.Dashed {
			r.StrokeColor, r.StrokeWidth = pen.Line, pen.Width
		}
		r.Move(pos)
		r.Resize(size)
		p.objects = append(p.objects, r)
	}
	if m.Dashed {
		x2, y2 := pos.X+size.Width, pos.Y+size.Height
		p.dashed(pos.X, pos.Y, x2, pos.Y, pen.Line, pen.Width)
		p.dashed(pos.X, y2, x2, y2, pen.Line, pen.Width)
		p.dashed(pos.X, pos.Y, pos.X, y2, pen.Line, pen.Width)
		p.dashed(x2, pos.Y, x2, y2, pen.Line, pen.Width)
	}
}

// dot is how large a hole that is too small for a ring is drawn. At less than
// so many screen units a millimetre small holes are left out: dots of holes 32 mm
// apart would run together.
const (
	dot          = 4
	leastForDots = dot / 32.0
)

func (p *painter) circle(m *drawing.Circle) {
	pen := p.palette.Pen(m.Meaning)
	pos, size := p.box(m.Bounds())
	if size.Width < dot && p.view.scale < leastForDots || !p.shown(pos.X, pos.Y, pos.X+size.Width, pos.Y+size.Height) {
		return
	}
	c := fynecanvas.NewCircle(color.Transparent)
	c.StrokeColor, c.StrokeWidth = pen.Line, pen.Width
	if size.Width < dot { // too small for a ring: a dot that can be seen
		c.FillColor = pen.Line
		grow := (dot - size.Width) / 2
		pos, size = pos.SubtractXY(grow, grow), fyne.NewSquareSize(dot)
	}
	c.Move(pos)
	c.Resize(size)
	p.objects = append(p.objects, c)
	if size.Width < 40 {
		p.keep(stroke{box: boxAt(pos, size), weight: weightOf(m.Meaning), round: true})
	} else {
		p.markEdges(boxAt(pos, size), weightOf(m.Meaning))
	}
}

// hatchStep is between two lines of a hatch, in screen units.
const hatchStep = 7

// hatch draws lines at 45° clipped to the rectangle.
func (p *painter) hatch(m *drawing.Hatch) {
	pen := p.palette.TagPen(m.Tag)
	pos, size := p.box(m.Rect)
	x1, y1 := max(pos.X, 0), max(pos.Y, 0)
	x2, y2 := min(pos.X+size.Width, p.size.Width), min(pos.Y+size.Height, p.size.Height)
	if x2 <= x1 || y2 <= y1 {
		return
	}
	r := fynecanvas.NewRectangle(pen.Surface)
	r.Move(fyne.NewPos(x1, y1))
	r.Resize(fyne.NewSize(x2-x1, y2-y1))
	p.objects = append(p.objects, r)
	p.markAll(box{x1, y1, x2, y2}, weightOf(m.Meaning))
	w, h := x2-x1, y2-y1
	const step = float32(hatchStep)
	for s := step; s < w+h; s += step {
		// the line from (s,0) going down left, in the box's own frame
		ax, ay := s, float32(0)
		if ax > w {
			ax, ay = w, s-w
		}
		bx, by := float32(0), s
		if by > h {
			bx, by = s-h, h
		}
		p.line(x1+ax, y1+ay, x1+bx, y1+by, pen.Line, min(pen.Width, 1))
	}
}
