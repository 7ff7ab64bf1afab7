package screen

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/model/edit"
	"frontlay/model/message"
	"frontlay/ui/field"
	"frontlay/ui/tool"
)

func (c *Screen) focus() {
	if cv := field.CanvasOf(c); cv != nil {
		cv.Focus(c)
	}
}

// FocusGained shows the frame that tells where keys go.
func (c *Screen) FocusGained() {
	c.focused = true
	c.repaintOverlay()
}

// FocusLost hides the frame.
func (c *Screen) FocusLost() {
	c.focused, c.spaced = false, false
	c.repaintOverlay()
}

// TypedRune takes the signs for zooming, and a figure to begin a size with.
func (c *Screen) TypedRune(r rune) {
	switch {
	case r == '+':
		c.Zoom(zoomIn)
	case r == '-':
		c.Zoom(zoomOut)
	case r == '0' || r == '=':
		c.Fit()
	case r >= '1' && r <= '9':
		c.typeFigure(r)
	}
}

// typeFigure begins what the tool in the hand takes a figure for, as the height
// of the selected front, with a digit; unless the hand has just been at another
// figure: the digit would be meant for that.
func (c *Screen) typeFigure(digit rune) {
	k, ok := c.hand.(tool.Keyed)
	if !ok {
		return
	}
	f, ok := k.Field(c)
	if !ok {
		return
	}
	seen := c.subject == Elevation || c.figureOf(f.Of) != nil
	if !f.Proposed && (!seen || slices.Equal(c.deaf, c.session.Selection())) {
		c.Tell(message.New("Click a figure that can be typed, or the front, first."))
		return
	}
	c.Type(f)
	c.typing.entry.TypedRune(digit) // in place of the figure, which is selected
}

// keys are those that tools know.
var keys = map[fyne.KeyName]tool.Key{
	fyne.KeyUp: tool.Up, fyne.KeyDown: tool.Down, fyne.KeyLeft: tool.Left, fyne.KeyRight: tool.Right,
	fyne.KeyPageUp: tool.PageUp, fyne.KeyPageDown: tool.PageDown,
	fyne.KeyReturn: tool.Enter, fyne.KeyEnter: tool.Enter, fyne.KeyF2: tool.Enter,
}

// TypedKey hands a key to the tool in the hand, or gives up.
func (c *Screen) TypedKey(e *fyne.KeyEvent) {
	if key, ok := keys[e.Name]; ok {
		if k, ok := c.hand.(tool.Keyed); ok {
			c.Hold(k.Key(c, tool.Stroke{Key: key, Shift: c.held()&fyne.KeyModifierShift != 0}))
		}
		return
	}
	switch e.Name {
	case fyne.KeyEscape:
		c.Escape()
	case desktop.KeyMenu:
		c.menuHere()
	default:
		if c.OnKey != nil {
			c.OnKey(e)
		}
	}
}

// TypeSelected opens the size of what is selected.
func (c *Screen) TypeSelected() { tool.Idle{}.Key(c, tool.Stroke{Key: tool.Enter}) }

// menuHere opens the menu over what is selected, for the keyboard.
func (c *Screen) menuHere() {
	if c.OnMenu == nil {
		return
	}
	at, size := fyne.NewPos(0, 0), c.Size()
	if sel := c.session.Selection(); len(sel) > 0 {
		if p, s, ok := c.Where(sel[0]); ok {
			at, size = p, s
		}
	}
	at = at.AddXY(size.Width/2, size.Height/2)
	c.OnMenu(fyne.CurrentApp().Driver().AbsolutePositionForObject(c).Add(at))
}

// Escape gives up what is going on; with nothing in the hand it clears the
// selection.
func (c *Screen) Escape() {
	if c.typing != nil {
		c.closeTyping()
		c.Tell(message.Message{})
		return
	}
	c.Hold(c.hand.Escape(c))
	c.pressed = false
	c.scroll.end()
	c.Display(tool.Feedback{})
	c.Tell(message.Message{})
}

// do makes an edit and tells where it can't be made.
func (c *Screen) do(e edit.Edit) bool {
	err := c.session.Do(e)
	if err != nil {
		c.Tell(tool.Said(err))
	}
	return err == nil
}
