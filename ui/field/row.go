package field

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	fynelayout "fyne.io/fyne/v2/layout"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/message"
)

// Row is a label, a field, its unit, and below them what is wrong with what is
// being typed.
type Row struct {
	Object  fyne.CanvasObject
	Entry   *Entry
	problem *widget.Label
}

// NewRow makes a row. The source's Tell is replaced by the row's own.
func NewRow(label, unit string, s Source, say func(message.Message) string) *Row {
	r := &Row{problem: widget.NewLabel("")}
	r.problem.Importance = widget.DangerImportance
	r.problem.Wrapping = fyne.TextWrapWord
	r.problem.Hide()
	s.Tell = func(m message.Message) {
		if m.Empty() {
			if r.problem.Visible() {
				r.problem.Hide()
				r.Object.Refresh()
			}
			return
		}
		r.problem.SetText(say(m))
		r.problem.Show()
		r.Object.Refresh()
	}
	r.Entry = NewEntry(s)
	var right fyne.CanvasObject
	if unit != "" {
		right = container.New(unitWidth{}, newCaption(unit, false))
	}
	if s.Step != nil {
		less := newKnob("–", func() { r.Entry.step(-1) })
		more := newKnob("+", func() { r.Entry.step(1) })
		steps := container.NewHBox(less, more)
		if right != nil {
			right = container.NewHBox(right, steps)
		} else {
			right = steps
		}
	}
	line := Labelled(label, container.NewBorder(nil, nil, nil, right, r.Entry))
	r.Object = container.New(tight{}, line, r.problem)
	return r
}

// Labelled puts a label of a fixed share of the width before a field.
func Labelled(label string, o fyne.CanvasObject) fyne.CanvasObject {
	return container.New(split{}, newCaption(label, false), o)
}

// unitWidth is the room for a unit behind a field.
type unitWidth struct{}

func (unitWidth) Layout(o []fyne.CanvasObject, s fyne.Size) { o[0].Resize(s) }

func (unitWidth) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(2.7*fynetheme.Size(fynetheme.SizeNameText), o[0].MinSize().Height)
}

// labelPart is the part of a row's width that its label has.
const labelPart = 0.43

// split gives the label a part of the width.
type split struct{}

func (split) Layout(o []fyne.CanvasObject, s fyne.Size) {
	w := s.Width * labelPart
	o[0].Move(fyne.NewPos(0, 0))
	o[0].Resize(fyne.NewSize(w, s.Height))
	o[1].Move(fyne.NewPos(w, 0))
	o[1].Resize(fyne.NewSize(s.Width-w, s.Height))
}

func (split) MinSize(o []fyne.CanvasObject) fyne.Size {
	a, b := o[0].MinSize(), o[1].MinSize()
	return fyne.NewSize(max(b.Width/(1-labelPart), 180), max(a.Height, b.Height))
}

// tight stacks objects without a space between them and leaves out hidden ones.
type tight struct{}

func (tight) Layout(o []fyne.CanvasObject, s fyne.Size) {
	y := float32(0)
	for _, c := range o {
		if !c.Visible() {
			continue
		}
		c.Resize(fyne.NewSize(s.Width, c.MinSize().Height))
		h := c.MinSize().Height
		c.Resize(fyne.NewSize(s.Width, h))
		c.Move(fyne.NewPos(0, y))
		y += h
	}
}

func (tight) MinSize(o []fyne.CanvasObject) fyne.Size {
	var m fyne.Size
	for _, c := range o {
		if c.Visible() {
			m.Width = max(m.Width, c.MinSize().Width)
			m.Height += c.MinSize().Height
		}
	}
	return m
}

// Column stacks objects without a space between them.
func Column(o ...fyne.CanvasObject) *fyne.Container { return container.New(tight{}, o...) }

// Spacer is an empty space of a height.
func Spacer(height float32) fyne.CanvasObject {
	r := container.NewWithoutLayout()
	return container.New(fynelayout.NewGridWrapLayout(fyne.NewSize(10, height)), r)
}
