package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Labelled puts a label before a field, or above it where there is no room for
// both on one line.
func Labelled(label string, o fyne.CanvasObject) fyne.CanvasObject {
	return container.New(&beside{part: labelPart}, newCaption(label, false), o)
}

// labelPart is the part of a row's width that its label has, unless the rows of
// a column are better off with another.
const labelPart = 0.43

// beside lays out a label and its field. The label breaks into two lines where
// one is too long; where even those leave the field less than it needs, the
// label stands above.
type beside struct {
	part  float32 // of the width, for the label
	width float32 // of the row, when it was laid out last; 0: never
	above bool    // the label stands above since then
}

// suits gives the least and the greatest part of a width for the label with which
// label and field stand side by side; the first is greater where there is none.
func suits(o []fyne.CanvasObject, width float32) (least, greatest float32) {
	return o[0].(*caption).needOfTwo() / width, 1 - needOf(o[1])/width
}

// fits tells whether label and field stand side by side.
func (b *beside) fits(o []fyne.CanvasObject, width float32) bool {
	least, greatest := suits(o, width)
	return least <= b.part && b.part <= greatest
}

// Layout lays the two out.
func (b *beside) Layout(o []fyne.CanvasObject, s fyne.Size) {
	b.width = s.Width
	label := o[0].(*caption)
	if b.above = !b.fits(o, s.Width); !b.above {
		w := s.Width * b.part
		if _, figure := o[1].(*caption); figure && label.Need()+needOf(o[1]) <= s.Width { // what stands at the right leaves the label its line
			w = max(w, label.Need())
		}
		label.Move(fyne.NewPos(0, 0))
		label.Resize(fyne.NewSize(w, s.Height))
		high := o[1].MinSize().Height // beside two lines a field keeps its height
		o[1].Move(fyne.NewPos(w, (s.Height-high)/2))
		o[1].Resize(fyne.NewSize(s.Width-w, high))
		return
	}
	h := label.heightAt(s.Width)
	label.Move(fyne.NewPos(0, 0))
	label.Resize(fyne.NewSize(s.Width, h))
	o[1].Move(fyne.NewPos(0, h-overlap()))
	o[1].Resize(fyne.NewSize(s.Width, s.Height-h+overlap()-belowAbove))
}

// belowAbove is free below a field whose label stands above it.
const belowAbove = 4

// overlap is how much nearer a label is to its field below than captions are to
// others.
func overlap() float32 { return fynetheme.Size(fynetheme.SizeNameInnerPadding) }

// MinSize is for the width of the last layout.
func (b *beside) MinSize(o []fyne.CanvasObject) fyne.Size {
	label, value := o[0].(*caption), o[1].MinSize()
	const least = 180
	width := max(value.Width, least)
	switch {
	case b.width == 0:
		return fyne.NewSize(width, max(label.MinSize().Height, value.Height))
	case !b.above:
		_, figure := o[1].(*caption)
		if figure && label.Need()+needOf(o[1]) <= b.width {
			return fyne.NewSize(width, max(label.MinSize().Height, value.Height))
		}
		return fyne.NewSize(width, max(label.heightAt(b.width*b.part), value.Height))
	default:
		return fyne.NewSize(width, label.heightAt(b.width)-overlap()+value.Height+belowAbove)
	}
}

// needy is an object that can say which width shows all of it, where that is
// more than its least size.
type needy interface{ Need() float32 }

// needOf is the width in which an object is seen whole. Containers are taken to
// lay their objects out side by side.
func needOf(o fyne.CanvasObject) float32 {
	switch v := o.(type) {
	case needy:
		return v.Need()
	case *fyne.Container:
		return v.MinSize().Width + lacking(v)
	case *widget.Entry:
		return entryNeed(v.Text, v.PlaceHolder)
	}
	return o.MinSize().Width
}

// lacking is how much the objects of a container need beyond their least sizes.
func lacking(in *fyne.Container) float32 {
	w := float32(0)
	for _, c := range in.Objects {
		if !c.Visible() {
			continue
		}
		switch v := c.(type) {
		case *fyne.Container:
			w += lacking(v)
		case needy, *widget.Entry:
			w += max(needOf(c)-c.MinSize().Width, 0)
		}
	}
	return w
}

// entryNeed is the width of a field that shows the widest of some texts whole.
func entryNeed(texts ...string) float32 {
	w := float32(0)
	for _, s := range texts {
		w = max(w, measure(s))
	}
	const cursor = 2
	return w + 2*fynetheme.Size(fynetheme.SizeNameInnerPadding) + 2*fynetheme.Size(fynetheme.SizeNameInputBorder) + cursor
}
