package field

import (
	"fyne.io/fyne/v2"
	fynetheme "fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
)

// Choice is a list to choose one of. It shows what the document holds and hands
// on what is chosen.
type Choice struct {
	widget.Select
	Ring
	get      func() int
	updating bool
	open     *widget.PopUpMenu // the list; nil: it was never opened
}

// NewChoice makes a choice. get gives the index of what the document holds, -1
// for several different ones; put takes the index that is chosen.
func NewChoice(options []string, get func() int, put func(int)) *Choice {
	c := &Choice{}
	c.ExtendBaseWidget(c)
	c.PlaceHolder = "–"
	c.Use(options, get, put)
	return c
}

// Use makes the choice one of another thing from now on.
func (c *Choice) Use(options []string, get func() int, put func(int)) {
	c.Options, c.get = options, get
	c.OnChanged = func(string) {
		if !c.updating {
			put(c.SelectedIndex())
			c.Update()
		}
	}
	c.Update()
}

// FocusGained shows the ring.
func (c *Choice) FocusGained() { c.Gain(c, &c.Select) }

// FocusLost takes the ring away.
func (c *Choice) FocusLost() { c.Lose(c, &c.Select) }

// Tapped opens the list where a canvas shows the choice: Fyne 2.7.4 ends the
// program where none does.
func (c *Choice) Tapped(*fyne.PointEvent) {
	if canvas := CanvasOf(c); canvas != nil && !c.Disabled() {
		canvas.Focus(c)
		c.show(canvas)
	}
}

// show opens the list with the keys on what is chosen now: Fyne's begins at no item,
// so that the down key leads to the first one wherever the choice stands.
func (c *Choice) show(canvas fyne.Canvas) {
	menu := fyne.NewMenu("")
	for i, o := range c.Options {
		item := fyne.NewMenuItem(o, func() { c.SetSelectedIndex(i) })
		item.Checked = i == c.SelectedIndex()
		menu.Items = append(menu.Items, item)
	}
	pop := widget.NewPopUpMenu(menu, canvas)
	pop.ShowAtPosition(c.below())
	pop.Resize(fyne.NewSize(max(c.Size().Width, pop.MinSize().Width), pop.MinSize().Height))
	for range c.SelectedIndex() + 1 {
		pop.ActivateNext()
	}
	c.open = pop
}

// below is where the list opens.
func (c *Choice) below() fyne.Position {
	return fyne.CurrentApp().Driver().AbsolutePositionForObject(c).AddXY(0, c.Size().Height)
}

// Hide takes the list away too.
func (c *Choice) Hide() {
	if c.open != nil {
		c.open.Hide()
	}
	c.Select.Hide()
}

// TypedKey opens the list on Enter too, and hands Esc on.
func (c *Choice) TypedKey(e *fyne.KeyEvent) {
	canvas := CanvasOf(c)
	if canvas == nil {
		return
	}
	switch e.Name {
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace, fyne.KeyUp, fyne.KeyDown:
		c.show(canvas)
	case fyne.KeyEscape:
		Leave(c, e)
	default:
		if !HandOn(c, e) {
			c.Select.TypedKey(e)
		}
	}
}

// CreateRenderer draws the choice with its ring.
func (c *Choice) CreateRenderer() fyne.WidgetRenderer {
	return c.edge(c.Select.CreateRenderer(), func() bool { return true })
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

// Units are the names of the units, in their order, for a choice.
func Units(say func(message.Message) string) []string {
	var all []string
	for u := length.UnitMM; u <= length.UnitInchDecimal; u++ {
		all = append(all, say(edit.UnitName(u)))
	}
	return all
}
