package field

import (
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
)

// Choice is a list to choose one of. It shows what the document holds and hands
// on what is chosen.
type Choice struct {
	widget.Select
	get      func() int
	updating bool
}

// NewChoice makes a choice. get gives the index of what the document holds, -1
// for several different ones; put takes the index that is chosen.
func NewChoice(options []string, get func() int, put func(int)) *Choice {
	c := &Choice{get: get}
	c.ExtendBaseWidget(c)
	c.Options = options
	c.PlaceHolder = "–"
	c.OnChanged = func(string) {
		if !c.updating {
			put(c.SelectedIndex())
			c.Update()
		}
	}
	c.Update()
	return c
}

// Need is the width that shows every option whole.
func (c *Choice) Need() float32 {
	w := measure(c.PlaceHolder)
	for _, o := range c.Options {
		w = max(w, measure(o))
	}
	size := fynetheme.Size
	return w + size(fynetheme.SizeNameInlineIcon) + size(fynetheme.SizeNameInnerPadding) + 3*size(fynetheme.SizeNamePadding) + 1
}

// Update shows what the document holds.
func (c *Choice) Update() {
	c.updating = true
	defer func() { c.updating = false }()
	i := c.get()
	if i < 0 || i >= len(c.Options) {
		c.ClearSelected()
	} else if c.SelectedIndex() != i {
		c.SetSelectedIndex(i)
	}
}

// Mark is a box to tick. It shows what the document holds.
type Mark struct {
	widget.Check
	get      func() bool
	updating bool
}

// NewMark makes a box to tick.
func NewMark(label string, get func() bool, put func(bool)) *Mark {
	m := &Mark{get: get}
	m.ExtendBaseWidget(m)
	m.Text = label
	m.OnChanged = func(on bool) {
		if !m.updating {
			put(on)
			m.Update()
		}
	}
	m.Update()
	return m
}

// Update shows what the document holds.
func (m *Mark) Update() {
	m.updating = true
	defer func() { m.updating = false }()
	if m.Checked != m.get() {
		m.SetChecked(m.get())
	}
}
