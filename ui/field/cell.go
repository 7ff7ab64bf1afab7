package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	fynetheme "fyne.io/fyne/v2/theme"
)

// Above puts a small label above a field, for Cells.
func Above(label string, o fyne.CanvasObject) fyne.CanvasObject {
	return container.New(&above{}, newSmall(label), o)
}

// NewSmall is a quiet word above figures, such as the head of a column.
func NewSmall(s string) fyne.CanvasObject { return newSmall(s) }

func newSmall(s string) *caption {
	c := newCaption(s, false)
	c.small = true
	return c
}

// above lays out a label, its field below it and, where something is wrong, that
// below the field: over the whole width of the row that the field is one of, as it
// would be a tall pile of words in half of it.
type above struct {
	width     float32 // of the last layout; 0: never
	left, row float32 // where the row begins and how wide it is; 0: as the field
}

func (a *above) Layout(o []fyne.CanvasObject, s fyne.Size) {
	a.width = s.Width
	y := o[0].(*caption).heightAt(s.Width)
	o[0].Move(fyne.NewPos(0, 0))
	o[0].Resize(fyne.NewSize(s.Width, y))
	high := o[1].MinSize().Height
	o[1].Move(fyne.NewPos(0, y))
	o[1].Resize(fyne.NewSize(s.Width, high))
	if len(o) > 2 && o[2].Visible() {
		wide := max(a.row, s.Width)
		o[2].Move(fyne.NewPos(a.left, y+high))
		o[2].Resize(fyne.NewSize(wide, 0)) // breaks its lines
		o[2].Resize(fyne.NewSize(wide, o[2].MinSize().Height))
	}
}

// MinSize is for the width of the last layout.
func (a *above) MinSize(o []fyne.CanvasObject) fyne.Size {
	high := o[0].MinSize().Height
	if a.width > 0 {
		high = o[0].(*caption).heightAt(a.width)
	}
	m := fyne.NewSize(o[1].MinSize().Width, high+o[1].MinSize().Height)
	if len(o) > 2 && o[2].Visible() {
		m.Height += o[2].MinSize().Height
	}
	return m
}

// need is the width that shows label and field whole, the label on two lines at most.
func (a *above) need(o []fyne.CanvasObject) float32 {
	return max(needOf(o[1]), o[0].(*caption).needOfTwo())
}

// Cells lays objects out two in a row where both are whole then, and one where not.
// Objects other than those of NewCell and Above have a row of their own.
func Cells(o ...fyne.CanvasObject) *fyne.Container { return container.New(&cells{}, o...) }

type cells struct{ width float32 }

// cellGap is the space between two cells of a row, rowGap that between two rows.
const cellGap, rowGap = 12, 3

// halfOf is the width of a cell that shares its row.
func halfOf(width float32) float32 { return (width - cellGap) / 2 }

// cellOf tells how a cell is laid out; nil: the object is none.
func cellOf(o fyne.CanvasObject) (*fyne.Container, *above) {
	if in, ok := o.(*fyne.Container); ok {
		if a, is := in.Layout.(*above); is {
			return in, a
		}
	}
	return nil, nil
}

// rows puts the objects that are seen into rows, and tells how wide those of each
// are.
func (c *cells) rows(o []fyne.CanvasObject, width float32) (all [][]fyne.CanvasObject, wide []float32) {
	open := false // the last row has room for one more
	for _, one := range o {
		if !one.Visible() {
			continue
		}
		in, a := cellOf(one)
		narrow := a != nil && a.need(in.Objects) <= halfOf(width)
		if narrow && open {
			all[len(all)-1] = append(all[len(all)-1], one)
			open = false
			continue
		}
		w := width
		if narrow {
			w = halfOf(width)
		}
		all, wide, open = append(all, []fyne.CanvasObject{one}), append(wide, w), narrow
	}
	return all, wide
}

// hanging is an object with room of its own around its letters, for a ring or a
// surface under the pointer: that room hangs over the edges of a column, so that the
// letters stand in line with its fields.
type hanging interface{ Hang() float32 }

// Hung is how far an object hangs over; most do not.
func Hung(o fyne.CanvasObject) float32 {
	if h, ok := o.(hanging); ok {
		return h.Hang()
	}
	if line, ok := o.(*fyne.Container); ok && len(line.Objects) == 2 {
		if _, figure := line.Objects[1].(*caption); figure { // of a Figure
			return fynetheme.Size(fynetheme.SizeNameInnerPadding)
		}
	}
	return 0
}

// Layout puts the fields that share a row on one line.
func (c *cells) Layout(o []fyne.CanvasObject, s fyne.Size) {
	c.width = s.Width
	y := float32(0)
	rows, wide := c.rows(o, s.Width)
	for i, row := range rows {
		high := float32(0)
		down := c.fit(row, wide[i], s.Width)
		for k, one := range row {
			h, out := one.MinSize().Height, Hung(one)
			one.Move(fyne.NewPos(float32(k)*(wide[i]+cellGap)-out, y+down[k]))
			one.Resize(fyne.NewSize(wide[i]+2*out, h))
			high = max(high, down[k]+h)
		}
		y += high + rowGap
	}
}

// fit gives the objects of a row their width, for which they then know their height,
// and tells how far down each stands so that the labels end on one line.
func (c *cells) fit(row []fyne.CanvasObject, w, width float32) []float32 {
	down, tallest := make([]float32, len(row)), float32(0)
	for k, one := range row {
		in, a := cellOf(one)
		if a == nil {
			one.Resize(fyne.NewSize(w+2*Hung(one), one.Size().Height))
			continue
		}
		a.width, a.row, a.left = w, width, -float32(k)*(w+cellGap)
		if len(in.Objects) > 2 && in.Objects[2].Visible() {
			in.Objects[2].Resize(fyne.NewSize(width, in.Objects[2].Size().Height))
		}
		down[k] = in.Objects[0].(*caption).heightAt(w)
		tallest = max(tallest, down[k])
	}
	for k := range down {
		if len(row) > 1 {
			down[k] = tallest - down[k]
		} else {
			down[k] = 0
		}
	}
	return down
}

// MinSize is for the width of the last layout.
func (c *cells) MinSize(o []fyne.CanvasObject) fyne.Size {
	m := fyne.Size{}
	if c.width == 0 {
		for _, one := range o {
			if one.Visible() {
				m = fyne.NewSize(max(m.Width, one.MinSize().Width), m.Height+one.MinSize().Height)
			}
		}
		return m
	}
	rows, wide := c.rows(o, c.width)
	for i, row := range rows {
		high := float32(0)
		for k, down := range c.fit(row, wide[i], c.width) {
			high = max(high, down+row[k].MinSize().Height)
		}
		m.Height += high + rowGap
	}
	return m
}

// NeedOf is the width in which a cell is seen whole.
func NeedOf(o fyne.CanvasObject) float32 {
	if in, a := cellOf(o); a != nil {
		return a.need(in.Objects)
	}
	return needOf(o)
}

// LabelOf is the height of a cell's label in its width.
func LabelOf(o fyne.CanvasObject) float32 {
	in, a := cellOf(o)
	if a == nil {
		return 0
	}
	return in.Objects[0].(*caption).heightAt(in.Size().Width)
}
