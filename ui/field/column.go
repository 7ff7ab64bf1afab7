package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
)

// Column stacks objects without a space between them. The labels of its rows
// get one width that suits as many of them as possible.
func Column(o ...fyne.CanvasObject) *fyne.Container { return container.New(&tight{}, o...) }

// Spacer is an empty space of a height.
func Spacer(height float32) fyne.CanvasObject {
	r := container.NewWithoutLayout()
	return container.New(fynelayout.NewGridWrapLayout(fyne.NewSize(10, height)), r)
}

// tight stacks objects without a space between them and leaves out hidden ones.
type tight struct {
	nested bool // another column decides about the labels
}

// Layout stacks the objects.
func (t *tight) Layout(o []fyne.CanvasObject, s fyne.Size) {
	if !t.nested {
		shareLabels(o, s.Width)
	}
	y := float32(0)
	for _, c := range o {
		if !c.Visible() {
			continue
		}
		h, known := c.MinSize().Height, c.Size().Width == s.Width
		c.Resize(fyne.NewSize(s.Width, h))
		if !known { // in another width it may need another height
			h = c.MinSize().Height
			c.Resize(fyne.NewSize(s.Width, h))
		}
		c.Move(fyne.NewPos(0, y))
		y += h
	}
}

// MinSize is that of all of them.
func (t *tight) MinSize(o []fyne.CanvasObject) fyne.Size {
	var m fyne.Size
	for _, c := range o {
		if c.Visible() {
			m.Width = max(m.Width, c.MinSize().Width)
			m.Height += c.MinSize().Height
		}
	}
	return m
}

// shareLabels gives the rows among objects, and those in columns among them, one
// part of the width for their labels: of the parts that let the most rows stand
// on one line the one nearest to the usual.
func shareLabels(o []fyne.CanvasObject, width float32) {
	rows := rowsIn(o, nil)
	if len(rows) == 0 || width <= 0 {
		return
	}
	const least, most = 0.3, 0.56
	from, to := make([]float32, len(rows)), make([]float32, len(rows)) // the parts that suit each row
	candidates := []float32{labelPart}
	for i, r := range rows {
		from[i], to[i] = suits(r.Objects, width)
		candidates = append(candidates, from[i], to[i])
	}
	best, met := float32(labelPart), -1
	for _, part := range candidates {
		if part < least || part > most {
			continue
		}
		n := 0
		for i := range rows {
			if part >= from[i] && part <= to[i] {
				n++
			}
		}
		if n > met || n == met && off(part) < off(best) {
			best, met = part, n
		}
	}
	for _, r := range rows {
		if b := r.Layout.(*beside); b.part != best {
			b.part = best
			if r.Size().Width == width { // it would not be laid out again
				b.Layout(r.Objects, r.Size())
			}
		}
	}
}

// off is how far a part is from the usual.
func off(part float32) float32 { return max(part-labelPart, labelPart-part) }

// rowsIn collects the rows of a label and a field.
func rowsIn(o []fyne.CanvasObject, all []*fyne.Container) []*fyne.Container {
	for _, c := range o {
		in, ok := c.(*fyne.Container)
		if !ok || !in.Visible() {
			continue
		}
		switch l := in.Layout.(type) {
		case *beside:
			all = append(all, in)
		case *tight:
			l.nested = true
			all = rowsIn(in.Objects, all)
		}
	}
	return all
}

// AtLeast is a layout that makes an object at least so wide.
type AtLeast float32

// Layout gives the object all the room.
func (w AtLeast) Layout(o []fyne.CanvasObject, s fyne.Size) {
	for _, c := range o {
		c.Resize(s)
	}
}

// MinSize is as high as the object and as wide as is asked for.
func (w AtLeast) MinSize(o []fyne.CanvasObject) fyne.Size {
	s := fyne.NewSize(float32(w), 0)
	for _, c := range o {
		s = s.Max(fyne.NewSize(0, c.MinSize().Height))
	}
	return s
}
