package paint

import (
	"image"
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"

	"frontlay/layout/drawing"
	"frontlay/layout/mark"
)

// Sizes of the marks of findings, in units of the screen. However small a place is
// drawn, its mark can't be missed.
const (
	leastBand  = 7  // thickness of a band
	leastRing  = 7  // radius of the ring around a hole
	leastThing = 9  // sides of an outline
	stop       = 6  // half the bar at the end of a way
	halo       = 2  // free at both sides of what is chosen
	further    = 3  // how much larger the ring and the bars of what is chosen are
	pitch      = 10 // of stripes
	large      = 30 // sides of a band, under which things can be seen
)

// Spot is where the mark of a place that a finding speaks of is painted.
func (p *Painter) Spot(m *drawing.Spot) Box {
	b := p.Rect(m.Rect)
	switch m.Shape {
	case mark.Band, mark.Gap:
		b = b.atLeast(leastBand)
	case mark.Outline, mark.Cross:
		b = b.atLeast(leastThing)
	case mark.Ring:
		x, y, r := ringOf(b, m.Chosen)
		b = Box{x - r, y - r, x + r, y + r}.Grown(stop, stop)
	case mark.Reach:
		if b.X2-b.X1 > b.Y2-b.Y1 {
			b = b.Grown(0, stop)
		} else {
			b = b.Grown(stop, 0)
		}
	}
	return b
}

// spot draws a place that a finding speaks of. The severity is told by colour and
// without it: the lines of an error are solid and its bands slanted, those of a
// warning dashed and upright, of an advice dotted and with dots.
func (p *Painter) spot(m *drawing.Spot) {
	if !p.Shown(p.Spot(m).Grown(stop, stop)) {
		return
	}
	s := stylus{Painter: p, severity: m.Severity, width: 2, chosen: m.Chosen, tint: p.Palette.Tint(m.Severity)}
	_, s.ink = p.Palette.Severity(m.Severity)
	switch {
	case m.Chosen:
		s.width = 3
	case p.picked:
		s.width = 1
	case p.many:
		s.width = 1.5
	}
	if m.Chosen {
		below := p.Objects // what is chosen lies over the frame of what is selected
		p.Objects = p.over
		defer func() { p.over, p.Objects = p.Objects, below }()
	}
	b := p.Rect(m.Rect)
	switch m.Shape {
	case mark.Band:
		s.band(p.Spot(m), true)
	case mark.Gap:
		s.band(p.Spot(m), m.Chosen)
	case mark.Ring:
		s.ring(b)
	case mark.Outline:
		s.frame(p.Spot(m))
	case mark.Cross:
		b = p.Spot(m)
		s.frame(b)
		s.stroke(b.X1, b.Y1, b.X2, b.Y2)
		s.stroke(b.X1, b.Y2, b.X2, b.Y1)
	case mark.Edge:
		s.stroke(b.X1, b.Y1, b.X2, b.Y2)
	case mark.Reach:
		s.reach(b)
	}
}

// Chosen adds the marks of the chosen finding, which lie over everything but
// letters.
func (p *Painter) Chosen() {
	p.Objects, p.over = append(p.Objects, p.over...), nil
}

// stylus draws the lines of one mark.
type stylus struct {
	*Painter
	severity  drawing.Severity
	ink, tint color.NRGBA
	width     float32
	chosen    bool // a halo keeps it apart from all else
}

// stroke draws a line, dashed or dotted by the severity where it lies along an
// axis.
func (s *stylus) stroke(x1, y1, x2, y2 float32) {
	if s.chosen {
		s.Line(x1, y1, x2, y2, s.Palette.Sheet, s.width+2*halo)
	}
	on, off := float32(0), float32(0)
	switch s.severity {
	case drawing.OfWarning:
		on, off = 8, 4
	case drawing.OfAdvice, drawing.OfAccepted:
		on, off = s.width, s.width
	}
	const beyond = 20
	from := func(a float32) float32 { return max(a, a+float32(int((-beyond-a)/(on+off)))*(on+off)) }
	switch {
	case on > 0 && y1 == y2:
		for x := from(x1); x < min(x2, s.Size.Width+beyond); x += on + off {
			s.Line(x, y1, min(x+on, x2), y1, s.ink, s.width)
		}
	case on > 0 && x1 == x2:
		for y := from(y1); y < min(y2, s.Size.Height+beyond); y += on + off {
			s.Line(x1, y, x1, min(y+on, y2), s.ink, s.width)
		}
	default:
		s.Line(x1, y1, x2, y2, s.ink, s.width)
	}
}

// frame draws the four edges of a box.
func (s *stylus) frame(b Box) {
	s.stroke(b.X1, b.Y1, b.X2, b.Y1)
	s.stroke(b.X1, b.Y2, b.X2, b.Y2)
	s.stroke(b.X1, b.Y1, b.X1, b.Y2)
	s.stroke(b.X2, b.Y1, b.X2, b.Y2)
}

// band fills a box, with stripes where that is asked for, and draws its edges.
func (s *stylus) band(b Box, striped bool) {
	b = Box{s.whole(b.X1), s.whole(b.Y1), s.whole(b.X2), s.whole(b.Y2)}
	seen := b.Common(Box{-pitch, -pitch, s.Size.Width + pitch, s.Size.Height + pitch})
	if seen.Empty() {
		return
	}
	if s.chosen {
		s.fill(b.Grown(halo+1, halo+1), s.Palette.Sheet)
		if s.Palette.Flat { // where a halo alone is white on white
			s.Surface(b.Grown(halo+2, halo+2), color.NRGBA{}, s.ink, 1)
		}
	}
	if !s.chosen && min(b.X2-b.X1, b.Y2-b.Y1) > large {
		s.tint.A = 0 // what lies under so much stays to be seen
	}
	if striped {
		i := fynecanvas.NewImageFromImage(s.stock.stripes(stripes{seen.Extent(), s.pixels, s.severity, s.ink, s.tint}))
		i.ScaleMode = fynecanvas.ImageScalePixels
		i.Move(seen.Place())
		i.Resize(seen.Extent())
		s.Objects = append(s.Objects, i)
	} else {
		s.fill(seen, s.tint)
	}
	edge := *s
	edge.chosen, edge.width = false, max(1.5, s.width-1)
	edge.frame(b)
}

// ringOf is the ring around a hole: its middle and radius.
func ringOf(b Box, chosen bool) (x, y, r float32) {
	r = max(max(b.X2-b.X1, b.Y2-b.Y1)/2+3, leastRing)
	if chosen {
		r += further
	}
	return (b.X1 + b.X2) / 2, (b.Y1 + b.Y2) / 2, r
}

// ring draws a circle around a hole: two of an error, one with four strokes of a
// warning, a plain one of others.
func (s *stylus) ring(b Box) {
	x, y, r := ringOf(b, s.chosen)
	if s.chosen {
		s.circleAt(x, y, r+s.width, s.Palette.Sheet, s.width+2*halo+2)
	}
	s.circleAt(x, y, r, s.ink, s.width)
	switch s.severity {
	case drawing.OfError:
		s.circleAt(x, y, r+s.width+1.5, s.ink, max(s.width-1, 0.7))
	case drawing.OfWarning:
		for _, d := range [4][2]float32{{1, 0}, {-1, 0}, {0, 1}, {0, -1}} {
			s.Line(x+d[0]*r, y+d[1]*r, x+d[0]*(r+stop), y+d[1]*(r+stop), s.ink, s.width)
		}
	}
}

func (s *stylus) circleAt(x, y, r float32, c color.NRGBA, width float32) {
	o := fynecanvas.NewCircle(color.Transparent)
	o.StrokeColor, o.StrokeWidth = c, width
	o.Move(fyne.NewPos(x-r, y-r))
	o.Resize(fyne.NewSquareSize(2 * r))
	s.Objects = append(s.Objects, o)
}

// reach draws the way from one end to the other, with a bar at both.
func (s *stylus) reach(b Box) {
	s.stroke(b.X1, b.Y1, b.X2, b.Y2)
	bar := float32(stop)
	if s.chosen {
		bar += further
	}
	dx, dy := bar, float32(0)
	if b.X2-b.X1 > b.Y2-b.Y1 {
		dx, dy = 0, bar
	}
	across := *s
	across.severity = drawing.OfError // bars are too short for a pattern
	across.stroke(b.X1-dx, b.Y1-dy, b.X1+dx, b.Y1+dy)
	across.stroke(b.X2-dx, b.Y2-dy, b.X2+dx, b.Y2+dy)
}

// atLeast is a box about the same middle whose sides are so long at least.
func (b Box) atLeast(side float32) Box {
	return b.Grown(max(0, (side-(b.X2-b.X1))/2), max(0, (side-(b.Y2-b.Y1))/2))
}

// stripes is a patterned surface of a size, with so many pixels a unit.
type stripes struct {
	size      fyne.Size
	pixels    float64
	severity  drawing.Severity
	ink, tint color.NRGBA
}

// stripes gives the image of a pattern, made once.
func (s *Stock) stripes(of stripes) image.Image {
	const most = 200
	if i, ok := s.striped[of]; ok {
		return i
	}
	if s.striped == nil || len(s.striped) > most {
		s.striped = map[stripes]image.Image{}
	}
	i := image.NewNRGBA(image.Rect(0, 0, int(float64(of.size.Width)*of.pixels+0.5), int(float64(of.size.Height)*of.pixels+0.5)))
	for y := range i.Rect.Max.Y {
		for x := range i.Rect.Max.X {
			c := of.tint
			if of.inked(float64(x)/of.pixels, float64(y)/of.pixels) {
				c = of.ink
			}
			i.SetNRGBA(x, y, c)
		}
	}
	s.striped[of] = i
	return i
}

// inked tells where a pattern has its ink: slanted stripes of an error, upright
// ones of a warning, dots of others.
func (of *stripes) inked(x, y float64) bool {
	along := func(v float64) float64 { return v - pitch*float64(int(v/pitch)) }
	switch of.severity {
	case drawing.OfWarning:
		return along(x) < pitch/2-1
	case drawing.OfAdvice, drawing.OfAccepted:
		const dot = 3
		middle := (float64(of.size.Height) - dot) / 2
		return along(x) < dot && along(y-middle+10*pitch) < dot
	default:
		return along(x+y) < pitch/2
	}
}
