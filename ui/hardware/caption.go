package hardware

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"frontlay/ui/field"
	"frontlay/ui/look"
)

// caption tells what a figure is and where on a maker's document it stands.
type caption struct {
	name   *field.Label
	text   *field.Label
	object fyne.CanvasObject
}

func newCaption() *caption {
	c := &caption{name: field.NewLabel(""), text: field.NewLabel("")}
	c.name.TextStyle.Bold = true
	c.text.Wrapping = fyne.TextWrapWord
	c.object = container.NewBorder(c.name, nil, nil, nil, container.NewVScroll(c.text))
	return c
}

func (c *caption) show(name, text string) {
	if c.name.Text != name {
		c.name.SetText(name)
	}
	if there := name != ""; there != c.name.Visible() {
		c.name.Hidden = !there
		c.object.Refresh()
	}
	if c.text.Text != text {
		c.text.SetText(text)
	}
}

// foot stacks the caption and the list of faults, each of a fixed height, so
// that the sketch keeps its size whatever they say.
type foot struct{}

// How many lines of text caption and faults have room for.
const captionLines, faultLines = 4.8, 3.4

func (foot) Layout(o []fyne.CanvasObject, s fyne.Size) {
	h := s.Height * captionLines / (captionLines + faultLines)
	o[0].Resize(fyne.NewSize(s.Width, h))
	o[0].Move(fyne.NewPos(0, 0))
	o[1].Resize(fyne.NewSize(s.Width, s.Height-h))
	o[1].Move(fyne.NewPos(0, h))
}

func (foot) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(220, look.Text()*1.45*(captionLines+faultLines))
}
