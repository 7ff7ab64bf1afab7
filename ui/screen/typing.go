package screen

import (
	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/model"
	"frontlay/model/edit"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// typing is a field over a dimension's figure.
type typing struct {
	of    drawing.Subject
	was   string
	entry *sizeEntry
	error *widget.Label
	box   *fyne.Container
	left  bool // the keys are going elsewhere
}

// sizeEntry is an entry that knows Esc and Tab.
type sizeEntry struct {
	field.Input
	onEscape func()
	onTab    func()
	onLost   func()
}

// TypedKey hands Esc and Tab on.
func (e *sizeEntry) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyEscape:
		e.onEscape()
	case fyne.KeyTab:
		e.onTab()
	default:
		e.Entry.TypedKey(k)
	}
}

// AcceptsTab tells that Tab does not leave the field by itself.
func (e *sizeEntry) AcceptsTab() bool { return true }

// FocusGained selects the figure, so that what is typed replaces it.
func (e *sizeEntry) FocusGained() {
	e.Input.FocusGained()
	e.SelectAll()
}

// FocusLost takes what was typed.
func (e *sizeEntry) FocusLost() {
	e.Input.FocusLost()
	e.onLost()
}

// follows tells that a size can't be typed.
func follows() message.Message { return message.New("This size follows from the others.") }

// TypeSize opens a field in place of the figure that stands for a thing.
func (c *Screen) TypeSize(of drawing.Subject) {
	size, ok := c.sizeOf(of)
	if !ok {
		c.Tell(follows())
		return
	}
	c.finishTyping()
	t := &typing{of: of, was: c.say().Figure(size), entry: &sizeEntry{}, error: widget.NewLabel("")}
	t.entry.ExtendBaseWidget(t.entry)
	t.entry.Figure = true
	t.entry.SetText(t.was)
	t.entry.OnSubmitted = func(string) {
		c.commitTyping(t)
	}
	t.entry.onEscape = func() {
		c.closeTyping()
		c.Tell(message.Message{})
	}
	t.entry.onTab = func() { c.nextTyping(t) }
	t.entry.onLost = func() {
		t.left = true
		if c.typing == t && !c.commitTyping(t) {
			c.closeTyping()
		}
	}
	t.entry.OnChanged = func(s string) { c.judgeTyping(t, s) }
	t.error.Importance = widget.DangerImportance
	t.error.Wrapping = fyne.TextWrapWord
	t.error.Hide()
	back := fynecanvas.NewRectangle(look.Current().Sheet)
	back.StrokeColor, back.StrokeWidth, back.CornerRadius = look.Current().Accent, 1.5, 3
	t.box = container.NewStack(back, container.NewVBox(t.entry, t.error))
	c.typing = t
	c.Refresh()
	c.placeTyping()
	if cv := field.CanvasOf(c); cv != nil {
		cv.Focus(t.entry)
	}
}

// placeTyping keeps the field over its figure.
func (c *Screen) placeTyping() {
	t := c.typing
	if t == nil {
		return
	}
	at := fyne.NewPos(c.Size().Width/2, c.Size().Height/2)
	found := false
	for _, f := range c.figures {
		if f.of == t.of {
			at, found = f.at.AddXY(f.size.Width/2, f.size.Height/2), true
		}
	}
	if !found {
		if r, ok := c.rectOf(drawing.Subject{Kind: drawing.FrontThing, Place: t.of.Place}); ok {
			at = c.view.at(r.Centre())
		}
	}
	width := max(110, c.measure.of(t.entry.Text, look.Text(), false).Width+40)
	if t.error.Visible() {
		width = 260
	}
	t.box.Resize(fyne.NewSize(width, 0))
	t.box.Resize(fyne.NewSize(width, t.box.MinSize().Height))
	at = at.SubtractXY(width/2, t.entry.MinSize().Height/2)
	at.X = min(max(at.X, 2), max(c.Size().Width-width-2, 2))
	at.Y = min(max(at.Y, 2), max(c.Size().Height-t.box.Size().Height-2, 2))
	t.box.Move(at)
}

// judgeTyping tells beside the field what is wrong with the size while it is
// being typed, and previews one that can be.
func (c *Screen) judgeTyping(t *typing, s string) {
	if c.typing != t {
		return
	}
	_, err := c.typedEdit(t, s)
	if err != nil {
		t.error.SetText(c.say().Say(tool.Said(err)))
		t.error.Show()
	} else {
		t.error.Hide()
	}
	c.placeTyping()
}

// typedEdit is the edit that a typed size asks for.
func (c *Screen) typedEdit(t *typing, s string) (edit.Edit, error) {
	v, err := length.Parse(s, c.session.Project().Unit)
	if err != nil {
		return nil, message.Of(err)
	}
	e := c.editFor(t.of, v)
	if e == nil {
		return nil, follows()
	}
	if err := c.session.Judge(e); err != nil {
		return nil, err
	}
	return e, nil
}

// editFor is the edit that gives a thing a size.
func (c *Screen) editFor(of drawing.Subject, v length.Length) edit.Edit {
	switch of.Kind {
	case drawing.FrontHeight:
		return edit.SetHeight{At: of.Place, Height: v}
	case drawing.BayWidth:
		return edit.Set{At: of.Place, Key: "width", Value: v}
	case drawing.CabinetWidth:
		return edit.SetCabinet(of.Place, "width", v)
	case drawing.CabinetHeight:
		return edit.SetCabinet(of.Place, "height", v)
	}
	return nil
}

// sizeOf is the size of the moment that a typed one would replace.
func (c *Screen) sizeOf(of drawing.Subject) (length.Length, bool) {
	pl := c.session.Result().Plan
	switch of.Kind {
	case drawing.FrontHeight:
		if f := session.FrontOf(pl, of.Place); f != nil {
			return f.Face.Height(), true
		}
	case drawing.BayWidth:
		if b := session.BayOf(pl, of.Place); b != nil {
			return b.Opening.Width(), true
		}
	case drawing.CabinetWidth:
		if cab := session.CabinetOf(pl, of.Place); cab != nil {
			return cab.Outline.Width(), true
		}
	case drawing.CabinetHeight:
		if cab := session.CabinetOf(pl, of.Place); cab != nil {
			return cab.Outline.Height(), true
		}
	}
	return 0, false
}

// commitTyping makes the typed size one step and closes the field. It is false
// where the size can't be, and the field stays with the reason beside it.
func (c *Screen) commitTyping(t *typing) bool {
	if c.typing != t {
		return true
	}
	s := t.entry.Text
	if s == t.was {
		c.closeTyping()
		return true
	}
	e, err := c.typedEdit(t, s)
	if err != nil {
		c.judgeTyping(t, s)
		c.Tell(tool.Said(err))
		return false
	}
	c.closeTyping()
	c.do(e)
	return true
}

// finishTyping takes what is typed before something else is done; a size that
// can't be is given up.
func (c *Screen) finishTyping() {
	if t := c.typing; t != nil && !c.commitTyping(t) {
		c.closeTyping()
	}
}

// closeTyping takes the field away; where it had the keys the drawing gets them
// back. Digits then go on with the height of the selected front only if that was
// what was typed.
func (c *Screen) closeTyping() {
	t := c.typing
	if t == nil {
		return
	}
	c.typing, c.deaf = nil, nil
	if one := session.Front(t.of.Place); t.of.Kind != drawing.FrontHeight || !c.session.IsSelected(one) {
		c.deaf = c.session.Selection()
	}
	c.Refresh()
	if cv := field.CanvasOf(c); cv != nil && cv.Focused() == t.entry && !t.left {
		cv.Focus(c)
	}
}

// nextTyping takes what is typed and opens the next dimension of the drawing
// (the one before with Shift).
func (c *Screen) nextTyping(t *typing) {
	if !c.commitTyping(t) {
		return
	}
	var all []drawing.Subject
	for _, m := range c.shown().Marks {
		if d, ok := m.(*drawing.Dimension); ok && d.Of.Kind != drawing.Nothing {
			all = append(all, d.Of)
		}
	}
	for i, of := range all {
		if of == t.of {
			n := i + 1
			if c.held()&fyne.KeyModifierShift != 0 {
				n = i + len(all) - 1
			}
			next := all[n%len(all)]
			if next.Kind == drawing.FrontHeight {
				c.session.Select(session.Front(model.Place(next.Place)))
			}
			c.TypeSize(next)
			return
		}
	}
	c.focus()
}
