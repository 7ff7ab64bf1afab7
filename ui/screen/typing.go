package screen

import (
	"slices"

	"fyne.io/fyne/v2"
	fynecanvas "fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"frontlay/layout/drawing"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/look"
	"frontlay/ui/session"
	"frontlay/ui/tool"
)

// typing is a field over a text of the drawing.
type typing struct {
	on    *Screen
	field tool.Field
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

// FocusGained selects all of it, so that what is typed replaces it.
func (e *sizeEntry) FocusGained() {
	e.Input.FocusGained()
	e.SelectAll()
}

// FocusLost takes what was typed.
func (e *sizeEntry) FocusLost() {
	e.Input.FocusLost()
	e.onLost()
}

// TypeSize opens a field in place of the figure, or of the name, that stands for
// a thing.
func (b *keyboard) TypeSize(of drawing.Subject) {
	if f, ok := tool.FieldOf(b.on.session, of); ok {
		b.Type(f)
	} else {
		b.on.Tell(tool.Follows())
	}
}

// Type opens a field over a text of the drawing.
func (b *keyboard) Type(f tool.Field) {
	b.finishTyping()
	b.typing = newTyping(b.on, f)
	b.on.Refresh()
	b.typing.place()
	if cv := field.CanvasOf(b.on); cv != nil {
		cv.Focus(b.typing.entry)
	}
}

func newTyping(c *Screen, f tool.Field) *typing {
	t := &typing{on: c, field: f, entry: &sizeEntry{}, error: widget.NewLabel("")}
	if f.Name != nil {
		t.was = *f.Name
	} else {
		t.was = c.say().Figure(f.Size)
	}
	t.entry.ExtendBaseWidget(t.entry)
	t.entry.Figure = f.Name == nil
	t.entry.SetText(t.was)
	t.entry.OnSubmitted = func(string) { t.take(true) }
	t.entry.onEscape = func() {
		t.close()
		c.Tell(message.Message{})
	}
	t.entry.onTab = t.next
	t.entry.onLost = func() {
		t.left = true
		if t.open() && !t.take(false) {
			t.close()
		}
	}
	t.entry.OnChanged = func(string) { t.judge() }
	t.error.Importance = widget.DangerImportance
	t.error.Wrapping = fyne.TextWrapWord
	t.error.Hide()
	back := fynecanvas.NewRectangle(look.Current().Sheet)
	back.StrokeColor, back.StrokeWidth, back.CornerRadius = look.Current().Accent, 1.5, 3
	t.box = container.NewStack(back, container.NewVBox(t.entry, t.error))
	return t
}

// open tells that the field is still over the drawing.
func (t *typing) open() bool { return t.on.typing == t }

// place keeps the field over its text.
func (t *typing) place() {
	size := t.on.Size()
	at := t.on.view.At(t.field.At)
	if f := t.on.figureOf(t.field.Of); f != nil && !t.field.Proposed {
		at = f.at.AddXY(f.size.Width/2, f.size.Height/2)
	}
	width := max(110, t.on.measure.Of(t.entry.Text, look.Text(), false).Width+40)
	if t.error.Visible() {
		width = max(width, 260)
	}
	t.box.Resize(fyne.NewSize(width, 0))
	t.box.Resize(fyne.NewSize(width, t.box.MinSize().Height))
	at = at.SubtractXY(width/2, t.entry.MinSize().Height/2)
	at.X = min(max(at.X, 2), max(size.Width-width-2, 2))
	at.Y = min(max(at.Y, 2), max(size.Height-t.box.Size().Height-2, 2))
	t.box.Move(at)
}

// judge tells beside the field what is wrong with the text while it is typed.
func (t *typing) judge() {
	if !t.open() {
		return
	}
	if _, err := t.field.Edit(t.entry.Text); err != nil {
		t.error.SetText(t.on.say().Say(tool.Said(err)))
		t.error.Show()
	} else {
		t.error.Hide()
	}
	t.place()
}

// take makes what is typed one step and closes the field; what is only proposed is
// drawn by Enter alone. It is false where it can't be, and the field stays with the
// reason beside it.
func (t *typing) take(enter bool) bool {
	if !t.open() {
		return true
	}
	f := &t.field
	if f.Proposed && !enter || !f.Proposed && t.entry.Text == t.was {
		t.close()
		return true
	}
	e, err := f.Edit(t.entry.Text)
	if err != nil {
		t.judge()
		t.on.Tell(tool.Said(err))
		return false
	}
	t.close()
	if !t.on.do(e) {
		return true
	}
	if t.on.OnTyped != nil {
		t.on.OnTyped()
	}
	if f.Drawn != nil {
		f.Drawn()
	}
	return true
}

// close takes the field away; where it had the keys the drawing gets them back.
// Digits then go on with the height of the selected front only if that was what
// was typed.
func (t *typing) close() {
	if !t.open() {
		return
	}
	c := t.on
	c.typing, c.deaf = nil, nil
	of := t.field.Of
	if one := session.Front(of.Place); !t.field.Proposed && (of.Kind != drawing.FrontHeight || !c.session.IsSelected(one)) {
		c.deaf = c.session.Selection()
	}
	c.Refresh()
	if cv := field.CanvasOf(c); cv != nil && cv.Focused() == t.entry && !t.left {
		cv.Focus(c)
	}
}

// next takes what is typed and opens the next dimension of the drawing (the one
// before with Shift).
func (t *typing) next() {
	if !t.take(false) {
		return
	}
	c := t.on
	if t.field.Next != nil {
		if next, ok := t.field.Next(c.hand); ok {
			c.Type(next)
		}
		return
	}
	var all []drawing.Subject
	for _, m := range c.shown().Marks {
		switch m := m.(type) {
		case *drawing.Dimension:
			if m.Of.Kind != drawing.Nothing {
				all = append(all, m.Of)
			}
		case *drawing.Caption:
			all = append(all, m.Sized())
		}
	}
	i := slices.Index(all, t.field.Of)
	if i < 0 {
		c.focus()
		return
	}
	n := i + 1
	if c.held()&fyne.KeyModifierShift != 0 {
		n = i + len(all) - 1
	}
	next := all[n%len(all)]
	if next.Kind == drawing.FrontHeight {
		c.session.Select(session.Front(next.Place))
	}
	c.TypeSize(next)
}

// finishTyping takes what is typed before something else is done; a size that
// can't be is given up.
func (b *keyboard) finishTyping() {
	if t := b.typing; t != nil && !t.take(false) {
		t.close()
	}
}

// closeTyping gives up what is typed.
func (b *keyboard) closeTyping() {
	if b.typing != nil {
		b.typing.close()
	}
}
