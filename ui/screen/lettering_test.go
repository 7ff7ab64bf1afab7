package screen

import (
	"fmt"
	"image/color"
	"math"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/plane"
	"frontlay/model/length"
	"frontlay/ui/paint"
)

// slab is a box on the screen.
type slab struct{ x1, y1, x2, y2 float32 }

func slabOf(o fyne.CanvasObject) slab {
	p, s := o.Position(), o.Size()
	return slab{p.X, p.Y, p.X + s.Width, p.Y + s.Height}
}

func (a slab) overlaps(b slab) bool { return a.x1 < b.x2 && b.x1 < a.x2 && a.y1 < b.y2 && b.y1 < a.y2 }

func (a slab) within(b slab, slack float32) bool {
	return a.x1 >= b.x1-slack && a.y1 >= b.y1-slack && a.x2 <= b.x2+slack && a.y2 <= b.y2+slack
}

// lettersOf is where the letters of a text are: of a line's height, 1.36 times the
// letters' size, the part from the top of capitals to the bottom of g (from the
// metrics of Fyne's font: ascent 1.069, capitals 0.714, descent 0.293; measured
// on a picture of it).
func lettersOf(t *fynecanvas.Text) slab {
	s, below := slabOf(t), float32(1.12)
	if strings.ContainsAny(t.Text, "gjpqyQ,;()") {
		below = 1.3
	}
	return slab{s.x1, s.y1 + 0.35*t.TextSize, s.x2, s.y1 + below*t.TextSize}
}

// crosses tells that a line goes through a box (Liang and Barsky's method).
func (a slab) crosses(p, q fyne.Position) bool {
	t0, t1 := float32(0), float32(1)
	dx, dy := q.X-p.X, q.Y-p.Y
	for _, e := range [4][2]float32{{-dx, p.X - a.x1}, {dx, a.x2 - p.X}, {-dy, p.Y - a.y1}, {dy, a.y2 - p.Y}} {
		switch {
		case e[0] == 0 && e[1] <= 0:
			return false
		case e[0] < 0:
			t0 = max(t0, e[1]/e[0])
		case e[0] > 0:
			t1 = min(t1, e[1]/e[0])
		}
	}
	return t0 < t1
}

// through tells whether an object's lines go through a box.
func through(o fyne.CanvasObject, a slab) bool {
	switch v := o.(type) {
	case *fynecanvas.Line:
		return a.crosses(v.Position1, v.Position2)
	case *fynecanvas.Circle:
		s := slabOf(v)
		if opaque(v.FillColor) {
			return a.overlaps(s)
		}
		r, cx, cy := float64(s.x2-s.x1)/2, float64(s.x1+s.x2)/2, float64(s.y1+s.y2)/2
		near := math.Hypot(max(float64(a.x1)-cx, cx-float64(a.x2), 0), max(float64(a.y1)-cy, cy-float64(a.y2), 0))
		far := math.Hypot(max(math.Abs(float64(a.x1)-cx), math.Abs(float64(a.x2)-cx)), max(math.Abs(float64(a.y1)-cy), math.Abs(float64(a.y2)-cy)))
		return near < r && r < far
	case *fynecanvas.Rectangle:
		if v.StrokeWidth == 0 || v.StrokeColor == nil {
			return false
		}
		s := slabOf(v)
		c := [4]fyne.Position{{X: s.x1, Y: s.y1}, {X: s.x2, Y: s.y1}, {X: s.x2, Y: s.y2}, {X: s.x1, Y: s.y2}}
		for i := range c {
			if a.crosses(c[i], c[(i+1)%4]) {
				return true
			}
		}
	}
	return false
}

func opaque(c color.Color) bool {
	if c == nil {
		return false
	}
	_, _, _, a := c.RGBA()
	return a == 0xFFFF
}

func ground(o fyne.CanvasObject) (slab, bool) {
	if r, ok := o.(*fynecanvas.Raster); ok {
		return slabOf(r), true
	}
	r, ok := o.(*fynecanvas.Rectangle)
	if !ok || !opaque(r.FillColor) {
		return slab{}, false
	}
	return slabOf(r), true
}

func say(o fyne.CanvasObject) string {
	s := slabOf(o)
	if l, ok := o.(*fynecanvas.Line); ok {
		return fmt.Sprintf("line %.0f,%.0f–%.0f,%.0f", l.Position1.X, l.Position1.Y, l.Position2.X, l.Position2.Y)
	}
	if t, ok := o.(*fynecanvas.Text); ok {
		return fmt.Sprintf("%q at %.0f,%.0f", t.Text, s.x1, s.y1)
	}
	return fmt.Sprintf("%T %.0f,%.0f–%.0f,%.0f", o, s.x1, s.y1, s.x2, s.y2)
}

// covered tells that a later surface hides the whole of a text, and the pixel above
// it to which its top may be rounded.
func covered(a slab, later []fyne.CanvasObject) bool {
	a.y1 -= 2
	for _, o := range later {
		if g, ok := ground(o); ok && a.within(g, 0) {
			return true
		}
	}
	return false
}

// faults lists what is wrong with the lettering of a picture: texts over one
// another, lines through texts (those under a ground laid below the text don't
// count), surfaces over texts. A hand's work may hide texts, but only whole.
func faults(objects []fyne.CanvasObject, size fyne.Size, mayHide bool) []string {
	var list []string
	whole := slab{0, 0, size.Width, size.Height}
	for i, o := range objects {
		t, ok := o.(*fynecanvas.Text)
		if !ok || t.Text == "" {
			continue
		}
		a := lettersOf(t)
		if !a.overlaps(whole) || mayHide && covered(a, objects[i+1:]) {
			continue
		}
		for _, other := range objects[i+1:] {
			u, isText := other.(*fynecanvas.Text)
			g, isGround := ground(other)
			switch {
			case isText && lettersOf(u).overlaps(a):
				list = append(list, fmt.Sprintf("%s lies under %s", say(t), say(u)))
			case isGround && g.overlaps(a):
				list = append(list, fmt.Sprintf("%s lies under the surface %s", say(t), say(other)))
			case !isText && through(other, a):
				list = append(list, fmt.Sprintf("%s has %s over it", say(t), say(other)))
			}
		}
		for j := i - 1; j >= 0; j-- {
			if g, ok := ground(objects[j]); ok && a.within(g, 0.5) {
				break
			}
			if through(objects[j], a) {
				list = append(list, fmt.Sprintf("%s goes through %s", say(objects[j]), say(t)))
			}
		}
	}
	return list
}

// TestLettering paints every view and looks at every text: whether something runs
// through it, and whether names, covers, heights and findings stand in the fronts
// that they tell of; and whether a figure or a finding is left out that has room.
func TestLettering(t *testing.T) {
	st := newStage(t)
	for _, sc := range scenes(t) {
		for _, m := range manners(t) {
			t.Run(sc.name+" "+m.name, func(t *testing.T) {
				st.t = t
				st.show(sc, m)
				st.views(func(name string) {
					st.keep(sc.name + " " + m.name + " " + name)
					report(t, name, faults(st.screen.Objects(), st.screen.Size(), false))
					switch {
					case st.screen.Picture() == Elevation:
						st.stays(name)
					case strings.HasSuffix(name, "fit"):
						st.allMeasured(name)
					}
				})
			})
		}
	}
}

// report tells the first few faults of a picture.
func report(t *testing.T, name string, list []string) {
	t.Helper()
	for i, f := range list {
		if i == 3 {
			t.Errorf("%s: and %d more", name, len(list)-3)
			return
		}
		t.Errorf("%s: %s", name, f)
	}
}

// stays looks whether the texts of an elevation stand in their fronts, and whether
// a front that has room for its number and height has them.
func (s *stage) stays(name string) {
	s.t.Helper()
	c := s.screen
	p := c.painter()
	type has struct{ number, height bool }
	written := map[drawing.Mark]*has{}
	for i := range c.all.Texts {
		w := &c.all.Texts[i]
		var face box
		switch m := w.Mark.(type) {
		case *drawing.Caption:
			face = p.Rect(m.Face)
			h := written[m]
			if h == nil {
				h = &has{}
				written[m] = h
			}
			h.number = h.number || w.Of.Of.Kind == drawing.FrontName
			h.height = h.height || w.Of.Of.Kind == drawing.FrontHeight
		case *drawing.Text:
			face = p.Rect(m.Within)
		default:
			continue
		}
		if at := paint.OfBox(w.Box); !at.Within(face.Grown(1, 1)) {
			s.t.Errorf("%s: %q stands at %v, its front at %v", name, w.Lines[0].Text, at, face)
		}
	}
	for _, m := range c.shown().Marks {
		m, ok := m.(*drawing.Caption)
		if !ok {
			continue
		}
		face, h := p.Rect(m.Face), written[m]
		height := p.measure.Of(p.say.Figure(m.Height), p.text, false).Width
		number := p.measure.Of(fmt.Sprint(m.Number), p.text, true).Width + 2*p.text
		switch {
		case handled(c.shown(), m): // its handle takes the room of the row
		case !face.Within(p.window()) || slices.ContainsFunc(c.reserved(), face.Overlaps):
		case h != nil && h.height && !h.number:
			s.t.Errorf("%s: front %d has its height, but no number", name, m.Number)
		case !m.Top && face.Y2-face.Y1 > 2.2*p.text && face.X2-face.X1 > number+height+3*p.text && (h == nil || !h.height || !h.number):
			s.t.Errorf("%s: front %d has room for its number and height in %v: %+v", name, m.Number, face, h)
		}
	}
}

// handled tells that a handle or knob lies on the middle of a front's face.
func handled(d *drawing.Drawing, m *drawing.Caption) bool {
	y := m.Face.Centre().Y
	for _, o := range d.Marks {
		var at plane.Rect
		var t drawing.Tag
		switch o := o.(type) {
		case *drawing.Rectangle:
			at, t = o.Rect, o.Tag
		case *drawing.Circle:
			at, t = plane.Rect{Min: o.Centre, Max: o.Centre}.Grow(o.Radius), o.Tag
		}
		if t.Meaning == drawing.HandlePart && t.Of.Place == m.Of.Place && at.Min.Y < y+length.MM(40) && at.Max.Y > y-length.MM(40) {
			return true
		}
	}
	return false
}

// reserved is what buttons and scale take of the sheet.
func (c *Screen) reserved() []box {
	return []box{c.corner.room(c.painter()), c.strip.box()}
}

// allMeasured looks whether every dimension of a view that is shown whole has a
// figure.
func (s *stage) allMeasured(name string) {
	s.t.Helper()
	dimensions := 0
	for _, m := range s.screen.shown().Marks {
		if _, ok := m.(*drawing.Dimension); ok {
			dimensions++
		}
	}
	n := 0
	for _, f := range s.screen.figures {
		if f.of.Kind != drawing.FrontName {
			n++
		}
	}
	if n != dimensions {
		s.t.Errorf("%s: %d dimensions, but %d figures", name, dimensions, n)
	}
}
