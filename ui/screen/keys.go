package screen

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/layout/drawing"
	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/tool"
)

// keyboard is what keys do on the drawing.
type keyboard struct {
	on      *Screen
	focused bool
	// While the selection is deaf digits begin no size.
	deaf   []drawing.Subject
	typing *typing // the field that is open; nil: none
}

func (b *keyboard) focus() {
	if cv := field.CanvasOf(b.on); cv != nil {
		cv.Focus(b.on)
	}
}

// FocusGained shows the frame that tells where keys go.
func (b *keyboard) FocusGained() {
	b.focused = true
	b.on.frame()
}

// FocusLost hides the frame.
func (b *keyboard) FocusLost() {
	b.focused, b.on.spaced = false, false
	b.on.frame()
}

// KeyDown notes that the space bar is held.
func (b *keyboard) KeyDown(e *fyne.KeyEvent) {
	if e.Name == fyne.KeySpace {
		b.on.spaced = true
	}
}

// KeyUp notes that the space bar is let go.
func (b *keyboard) KeyUp(e *fyne.KeyEvent) {
	if e.Name == fyne.KeySpace {
		b.on.spaced = false
	}
}

// TypedRune takes the signs for zooming, and a figure to begin a size with.
func (b *keyboard) TypedRune(r rune) {
	switch {
	case r == '+':
		b.on.Zoom(zoomIn)
	case r == '-':
		b.on.Zoom(zoomOut)
	case r == '0' || r == '=':
		b.on.Fit()
	case r >= '1' && r <= '9':
		b.typeFigure(r)
	case b.on.OnRune != nil:
		b.on.OnRune(r)
	}
}

// typeFigure begins what the tool in the hand takes a figure for, as the height
// of the selected front, with a digit; unless the hand has just been at another
// figure: the digit would be meant for that.
func (b *keyboard) typeFigure(digit rune) {
	k, ok := b.on.hand.(tool.Keyed)
	if !ok {
		return
	}
	f, ok := k.Field(b.on)
	if !ok {
		return
	}
	seen := b.on.subject == Elevation || b.on.figureOf(f.Of) != nil
	if !f.Proposed && (!seen || slices.Equal(b.deaf, b.on.session.Selection())) {
		b.on.Tell(message.New("Click a figure that can be typed, or the front, first."))
		return
	}
	b.on.Type(f)
	b.on.typing.entry.TypedRune(digit) // in place of the figure, which is selected
}

// keys are those that tools know.
var keys = map[fyne.KeyName]tool.Key{
	fyne.KeyUp: tool.Up, fyne.KeyDown: tool.Down, fyne.KeyLeft: tool.Left, fyne.KeyRight: tool.Right,
	fyne.KeyPageUp: tool.PageUp, fyne.KeyPageDown: tool.PageDown,
	fyne.KeyReturn: tool.Enter, fyne.KeyEnter: tool.Enter, fyne.KeyF2: tool.Enter,
}

// TypedKey hands a key to the tool in the hand, or gives up.
func (b *keyboard) TypedKey(e *fyne.KeyEvent) {
	if key, ok := keys[e.Name]; ok {
		if k, ok := b.on.hand.(tool.Keyed); ok {
			b.on.Hold(k.Key(b.on, tool.Stroke{Key: key, Shift: b.on.held()&fyne.KeyModifierShift != 0}))
		}
		return
	}
	switch e.Name {
	case fyne.KeyEscape:
		if b.on.OnEscape == nil || b.on.pressed || b.typing != nil || !b.on.OnEscape() {
			b.Escape()
		}
	case desktop.KeyMenu:
		b.menuHere()
	default:
		if b.on.OnKey != nil {
			b.on.OnKey(e)
		}
	}
}

// TypeSelected opens the size of what is selected.
func (b *keyboard) TypeSelected() { tool.Idle{}.Key(b.on, tool.Stroke{Key: tool.Enter}) }

// menuHere opens the menu over what is selected, for the keyboard.
func (b *keyboard) menuHere() {
	if b.on.OnMenu == nil {
		return
	}
	at, size := fyne.NewPos(0, 0), b.on.Size()
	if sel := b.on.session.Selection(); len(sel) > 0 {
		if p, s, ok := b.on.Where(sel[0]); ok {
			at, size = p, s
		}
	}
	at = at.AddXY(size.Width/2, size.Height/2)
	b.on.OnMenu(fyne.CurrentApp().Driver().AbsolutePositionForObject(b.on).Add(at))
}

// Escape gives up what is going on; with nothing in the hand it clears the
// selection.
func (b *keyboard) Escape() {
	if b.on.typing != nil {
		b.on.closeTyping()
		b.on.Tell(message.Message{})
		return
	}
	b.on.Hold(b.on.hand.Escape(b.on))
	b.on.pressed = false
	b.on.scroll.end()
	b.on.Display(tool.Feedback{})
	b.on.Tell(message.Message{})
}

// do makes an edit and tells where it can't be made.
func (b *keyboard) do(e edit.Edit) bool {
	err := b.on.session.Do(e)
	if err != nil {
		b.on.Tell(tool.Said(err))
	}
	return err == nil
}
