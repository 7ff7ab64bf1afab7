package screen

import (
	"reflect"
	"slices"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"frontlay/layout/drawing"
	"frontlay/model/length"
	"frontlay/model/message"
	"frontlay/ui/paint"
	"frontlay/ui/tool"
)

// near is how close the pointer must be to a line, in screen units.
const near = 5

// Reach is the distance in the run that looks small on the screen.
func (c *Screen) Reach() length.Length { return c.view.Size(near) }

// Pan moves the picture by screen units.
func (c *Screen) Pan(dx, dy float32) {
	c.fitting = false
	c.view.X += float64(dx)
	c.view.Y += float64(dy)
	c.repaint()
}

// Display puts marks of the tool over the picture.
func (c *Screen) Display(f tool.Feedback) {
	if reflect.DeepEqual(f, c.feedback) {
		return
	}
	c.feedback = f
	c.repaintOverlay()
}

// Hold puts another state of the tool into the hand.
func (c *Screen) Hold(t tool.Tool) {
	_, before := c.hand.(spacious)
	c.hand = t
	if _, now := t.(spacious); now != before && c.fitting {
		c.repaint()
	}
}

// Tell writes to the status line.
func (c *Screen) Tell(m message.Message) {
	if c.OnTell != nil {
		c.OnTell(m)
	}
}

// held asks the driver which modifier keys are held, because move and drag events
// do not carry them.
func (c *Screen) held() fyne.KeyModifier {
	if c.Held != nil {
		return c.Held()
	}
	if a := fyne.CurrentApp(); a != nil {
		if d, ok := a.Driver().(desktop.Driver); ok {
			return d.CurrentKeyModifiers()
		}
	}
	return 0
}

// point makes a tool's pointer of a place on the widget.
func (c *Screen) point(at fyne.Position, m fyne.KeyModifier) tool.Pointer {
	p := tool.Pointer{
		At: c.view.Run(at), X: at.X, Y: at.Y,
		Free: m&fyne.KeyModifierShift != 0,
		Add:  m&(fyne.KeyModifierShortcutDefault|fyne.KeyModifierShift) != 0,
	}
	p.Thing = c.thingAt(at)
	return p
}

// thingAt finds what lies at a place: figures where they are on the screen,
// then what the drawing tells.
func (c *Screen) thingAt(at fyne.Position) drawing.Subject {
	if f := c.figureAt(at); f != nil && f.of.Kind != drawing.Nothing {
		return f.of
	}
	reach := drawing.Reach{Near: c.view.Size(near - 1)}
	if c.subject != Elevation {
		return drawing.Subject{}
	}
	t, _ := c.shown().Hit(c.view.Run(at), reach)
	return t
}

// figureOf finds the figure, or name, that stands for a thing; nil: there is none.
func (c *Screen) figureOf(t drawing.Subject) *figure {
	for i := range c.figures {
		if c.figures[i].of == t {
			return &c.figures[i]
		}
	}
	return nil
}

// figureAt finds the figure at a place; nil: there is none.
func (c *Screen) figureAt(at fyne.Position) *figure {
	const pad = 2
	for i := range slices.Backward(c.figures) {
		if f := &c.figures[i]; paint.BoxAt(f.at, f.size).Grown(pad, pad).Overlaps(boxOf(at.X, at.Y, at.X, at.Y)) {
			return f
		}
	}
	return nil
}

// MouseDown takes hold of what lies under the pointer.
func (c *Screen) MouseDown(e *desktop.MouseEvent) {
	on := c.figureAt(e.Position) // before what is typed is taken, which can move the figures
	c.focus()
	c.pointer = e.Position
	switch e.Button {
	case desktop.MouseButtonPrimary:
		c.finishTyping()
		c.pressed, c.pressedOn, c.deaf = true, on, nil
		if on != nil && on.of.Kind == drawing.FrontName { // a click on it selects
			c.pressedOn = nil
		}
		p := c.point(e.Position, e.Modifier)
		if on != nil && on.of.Kind != drawing.Nothing {
			p.Thing = on.of
		}
		p.Twice = c.twice(p)
		if c.spaced || c.subject != Elevation && p.Thing.Kind == drawing.Nothing {
			c.pan(e.Position)
			return
		}
		c.Hold(c.hand.Press(c, p))
	case desktop.MouseButtonTertiary:
		c.pressed = true
		c.pan(e.Position)
	}
}

// pan takes hold of the picture; what was in the hand is in it again afterwards.
func (c *Screen) pan(at fyne.Position) {
	c.Display(tool.Feedback{})
	c.Hold(tool.NewPan(at.X, at.Y, c.hand))
}

// press is a press of the button, to know a second one by.
type press struct {
	on    drawing.Subject
	where fyne.Position
	when  time.Time
}

// again is how far apart two presses of a double click can be, in screen units.
const again = 4

// twice tells that a press is the second one of a double click. The drawing does
// not ask Fyne for double clicks: every click would then wait for a second one.
func (c *Screen) twice(p tool.Pointer) bool {
	before, now := c.last, press{p.Thing, fyne.NewPos(p.X, p.Y), c.now()}
	c.last = now
	if p.Thing != before.on || !now.near(before.where) || now.when.Sub(before.when) > fyne.CurrentApp().Driver().DoubleTapDelay() {
		return false
	}
	c.last = press{}
	return true
}

// near tells that a place is where the button was pressed.
func (p press) near(at fyne.Position) bool {
	return paint.BoxAt(p.where, fyne.Size{}).Grown(again, again).Overlaps(paint.BoxAt(at, fyne.Size{}))
}

// KeyDown notes that the space bar is held.
func (c *Screen) KeyDown(e *fyne.KeyEvent) {
	if e.Name == fyne.KeySpace {
		c.spaced = true
	}
}

// KeyUp notes that the space bar is let go.
func (c *Screen) KeyUp(e *fyne.KeyEvent) {
	if e.Name == fyne.KeySpace {
		c.spaced = false
	}
}

// MouseUp lets go.
func (c *Screen) MouseUp(e *desktop.MouseEvent) {
	if e.Button == desktop.MouseButtonSecondary {
		c.menu(e)
		return
	}
	c.letGo(e.Position, e.Modifier)
}

// letGo ends what the hand holds, where it holds something.
func (c *Screen) letGo(at fyne.Position, m fyne.KeyModifier) {
	if !c.pressed {
		return
	}
	c.pressed = false
	c.scroll.end()
	if !c.last.near(at) { // a drag is no first click
		c.last = press{}
	}
	p := c.point(at, m)
	if at != c.pointer {
		c.Hold(c.hand.Move(c, p))
	}
	c.Hold(c.hand.Release(c, p))
	c.pointer = at
	c.leaveFigure(at)
	if c.fitting {
		c.repaint()
	}
}

// leaveFigure tells after a click on a figure that can't be typed that it can't;
// where a press on a figure has opened none, digits have no place to go to.
func (c *Screen) leaveFigure(at fyne.Position) {
	f := c.pressedOn
	c.pressedOn = nil
	if f == nil || c.typing != nil {
		return
	}
	c.deaf = c.session.Selection()
	if f.of.Kind == drawing.Nothing && c.figureAt(at) != nil {
		c.Tell(tool.Follows())
	}
}

// menu selects what lies under the pointer and opens the menu for it.
func (c *Screen) menu(e *desktop.MouseEvent) {
	if c.pressed || c.OnMenu == nil {
		return
	}
	if t := tool.Selectable(c.thingAt(e.Position)); t.Kind != drawing.Nothing && !c.session.IsSelected(t) {
		c.session.Select(t)
	}
	c.OnMenu(e.AbsolutePosition)
}

// Dragged moves what the hand holds.
func (c *Screen) Dragged(e *fyne.DragEvent) { c.move(e.Position) }

// DragEnd ends a drag that MouseUp has not ended: let go over a button or another
// panel, MouseUp does not come, and the keys have been taken away.
func (c *Screen) DragEnd() {
	if c.pressed {
		c.letGo(c.pointer, c.held())
		c.focus()
	}
}

// MouseIn begins hovering.
func (c *Screen) MouseIn(e *desktop.MouseEvent) { c.MouseMoved(e) }

// MouseMoved hovers or moves what the hand holds. A pointer that comes without
// its button has let go where this widget was not told.
func (c *Screen) MouseMoved(e *desktop.MouseEvent) {
	if e.Button == 0 {
		c.letGo(c.pointer, e.Modifier)
	}
	c.move(e.Position)
}

// MouseOut ends hovering.
func (c *Screen) MouseOut() {
	if c.pressed {
		return
	}
	c.hover(drawing.Subject{})
	if p, ok := c.hand.(tool.Proposing); ok && c.typing == nil { // no key draws what is not seen
		c.Hold(p.Fresh())
	}
	if c.typing == nil {
		c.Display(tool.Feedback{})
	}
}

func (c *Screen) move(at fyne.Position) {
	if at == c.pointer {
		return
	}
	c.pointer = at
	p := c.point(at, c.held())
	if c.typing == nil || !c.typing.field.Proposed { // that stays where it is while it is typed
		c.Hold(c.hand.Move(c, p))
	}
	if c.pressed {
		c.scroll.follow(c)
	} else {
		c.hover(p.Thing)
	}
}

func (c *Screen) hover(t drawing.Subject) {
	if t != c.over {
		c.over = t
		if c.OnHover != nil {
			c.OnHover(t)
		}
	}
}

// Cursor gives the pointer's shape, which tells what a drag would do.
func (c *Screen) Cursor() desktop.Cursor {
	if c.spaced {
		return desktop.PointerCursor
	}
	switch c.hand.Cursor(c, c.point(c.pointer, 0)) {
	case tool.UpDown:
		return desktop.VResizeCursor
	case tool.LeftRight:
		return desktop.HResizeCursor
	case tool.Grab:
		return desktop.PointerCursor
	case tool.Typing:
		return desktop.TextCursor
	case tool.Draw:
		return desktop.CrosshairCursor
	default:
		return desktop.DefaultCursor
	}
}

// Scrolled zooms at the pointer. Only the sign of a notch is taken, because its
// size differs between devices.
func (c *Screen) Scrolled(e *fyne.ScrollEvent) {
	const notch = 1.15
	switch {
	case e.Scrolled.DY > 0:
		c.zoomAt(notch, e.Position)
	case e.Scrolled.DY < 0:
		c.zoomAt(1/notch, e.Position)
	case e.Scrolled.DX != 0:
		c.Pan(e.Scrolled.DX, 0)
	}
}
