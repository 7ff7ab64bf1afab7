package paint

import (
	"image/color"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
)

// columnWide is how wide the strips are by which objects are found again, in units
// of the screen.
const columnWide = 64

// crossings tell what runs through a place of the picture, of all that is painted
// so far.
type crossings struct {
	objects []fyne.CanvasObject
	columns [][]int32 // the objects of each strip, in the order of painting
}

func (s *Sheet) crossings() *crossings {
	c := &crossings{objects: s.Objects, columns: make([][]int32, max(int(s.Size.Width/columnWide), 0)+1)}
	for i, o := range c.objects {
		b := boxOf(o)
		first, last := c.span(b)
		for k := first; k <= last; k++ {
			c.columns[k] = append(c.columns[k], int32(i))
		}
	}
	return c
}

// boxOf is what an object takes of the screen.
func boxOf(o fyne.CanvasObject) Box {
	if l, ok := o.(*fynecanvas.Line); ok {
		return Box{
			min(l.Position1.X, l.Position2.X), min(l.Position1.Y, l.Position2.Y),
			max(l.Position1.X, l.Position2.X), max(l.Position1.Y, l.Position2.Y),
		}
	}
	return BoxAt(o.Position(), o.Size())
}

func (c *crossings) span(b Box) (first, last int) {
	end := float32(len(c.columns) - 1)
	return int(min(max(b.X1/columnWide, 0), end)), int(min(max(b.X2/columnWide, 0), end))
}

// through tells that a line, a ring or an edge goes through a box: of what was
// painted after the last surface that covers it whole.
func (c *crossings) through(b Box) bool {
	first, last := c.span(b)
	for k := first; k <= last; k++ {
		column := c.columns[k]
		for i := len(column) - 1; i >= 0; i-- {
			o := c.objects[column[i]]
			at := boxOf(o)
			if b.Grown(0.5, 0.5).Within(at) && covers(o) {
				break
			}
			if at.Grown(1, 1).Overlaps(b) && meets(o, at, b) {
				return true
			}
		}
	}
	return false
}

// covers tells that an object hides what is under it.
func covers(o fyne.CanvasObject) bool {
	switch v := o.(type) {
	case *fynecanvas.Rectangle:
		return alpha(v.FillColor) == 255
	case *fynecanvas.Raster:
		return true
	}
	return false
}

func alpha(c color.Color) uint32 {
	if c == nil {
		return 0
	}
	_, _, _, a := c.RGBA()
	return a >> 8
}

// meets tells that an object that takes a place on the screen goes through a box.
func meets(o fyne.CanvasObject, at, b Box) bool {
	switch v := o.(type) {
	case *fynecanvas.Line:
		return b.Grown(v.StrokeWidth/2, v.StrokeWidth/2).cut(v.Position1, v.Position2)
	case *fynecanvas.Circle:
		if alpha(v.FillColor) == 255 {
			return at.Overlaps(b)
		}
		r, x, y := (at.X2-at.X1)/2, (at.X1+at.X2)/2, (at.Y1+at.Y2)/2
		dx, dy := max(b.X1-x, x-b.X2, 0), max(b.Y1-y, y-b.Y2, 0)
		fx, fy := max(abs(b.X1-x), abs(b.X2-x)), max(abs(b.Y1-y), abs(b.Y2-y))
		near, far := dx*dx+dy*dy, fx*fx+fy*fy
		return near < r*r && far > r*r
	case *fynecanvas.Rectangle:
		edged := v.StrokeWidth > 0 && alpha(v.StrokeColor) > 0
		filled := alpha(v.FillColor) == 255
		return (edged || filled) && at.Overlaps(b) && !b.Within(at.Grown(-v.StrokeWidth, -v.StrokeWidth))
	}
	return false
}

// cut tells that a line goes through a box (Liang and Barsky's method).
func (b Box) cut(from, to fyne.Position) bool {
	t0, t1 := float32(0), float32(1)
	dx, dy := to.X-from.X, to.Y-from.Y
	for _, e := range [4][2]float32{{-dx, from.X - b.X1}, {dx, b.X2 - from.X}, {-dy, from.Y - b.Y1}, {dy, b.Y2 - from.Y}} {
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
