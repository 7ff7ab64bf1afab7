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

// gestures is what the pointer does on the drawing, with the tool in the hand.
type gestures struct {
	on       *Screen
	now      func() time.Time
	hand     tool.Tool
	feedback tool.Feedback
	pointer  fyne.Position // where it was last
	pressed  bool
	over     drawing.Subject
	// pressedOn is the figure on which the button was pressed; nil: none.
	pressedOn *figure
	spaced    bool // the space bar is held: a drag moves the picture
	last      press
	scroll    scrolling
}

// Reach is the distance in the run that looks small on the screen.
func (g *gestures) Reach() length.Length { return g.on.view.Size(near) }

// Pan moves the picture by screen units.
func (g *gestures) Pan(dx, dy float32) {
	g.on.fitting = false
	g.on.view.X += float64(dx)
	g.on.view.Y += float64(dy)
	g.on.repaint()
}

// Display puts marks of the tool over the picture.
func (g *gestures) Display(f tool.Feedback) {
	if reflect.DeepEqual(f, g.feedback) {
		return
	}
	g.feedback = f
	g.on.repaintOverlay()
}

// Hand is the tool of the moment.
func (g *gestures) Hand() tool.Tool { return g.hand }

// Take puts a tool into the hand; what was going on is given up.
func (g *gestures) Take(t tool.Tool) {
	if _, idle := g.hand.(tool.Idle); !idle {
		g.hand.Escape(g.on)
	}
	g.Hold(t)
	g.on.Display(tool.Feedback{})
	if p, ok := t.(tool.Proposing); ok && len(g.on.session.Selection()) > 0 {
		g.Hold(p.Propose(g.on))
	}
}

// Hold puts another state of the tool into the hand.
func (g *gestures) Hold(t tool.Tool) {
	_, before := g.hand.(spacious)
	g.hand = t
	if _, now := t.(spacious); now != before && g.on.fitting {
		g.on.repaint()
	}
	if g.on.OnHold != nil {
		g.on.OnHold()
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
func (g *gestures) held() fyne.KeyModifier {
	if g.on.Held != nil {
		return g.on.Held()
	}
	if a := fyne.CurrentApp(); a != nil {
		if d, ok := a.Driver().(desktop.Driver); ok {
			return d.CurrentKeyModifiers()
		}
	}
	return 0
}

// point makes a tool's pointer of a place on the widget.
func (g *gestures) point(at fyne.Position, m fyne.KeyModifier) tool.Pointer {
	p := tool.Pointer{
		At: g.on.view.Run(at), X: at.X, Y: at.Y,
		Free: m&fyne.KeyModifierShift != 0,
		Add:  m&(fyne.KeyModifierShortcutDefault|fyne.KeyModifierShift) != 0,
	}
	p.Thing = g.thingAt(at)
	return p
}

// thingAt finds what lies at a place: figures where they are on the screen,
// then what the drawing tells.
func (g *gestures) thingAt(at fyne.Position) drawing.Subject {
	if f := g.on.figureAt(at); f != nil && f.of.Kind != drawing.Nothing {
		return f.of
	}
	reach := drawing.Reach{Near: g.on.view.Size(near - 1)}
	if g.on.subject != Elevation {
		return drawing.Subject{}
	}
	t, _ := g.on.shown().Hit(g.on.view.Run(at), reach)
	return t
}

// figureOf finds the figure, or name, that stands for a thing; nil: there is none.
func (g *gestures) figureOf(t drawing.Subject) *figure {
	for i := range g.on.figures {
		if g.on.figures[i].of == t {
			return &g.on.figures[i]
		}
	}
	return nil
}

// figureAt finds the figure at a place; nil: there is none.
func (g *gestures) figureAt(at fyne.Position) *figure {
	const pad = 2
	for i := range slices.Backward(g.on.figures) {
		if f := &g.on.figures[i]; paint.BoxAt(f.at, f.size).Grown(pad, pad).Overlaps(boxOf(at.X, at.Y, at.X, at.Y)) {
			return f
		}
	}
	return nil
}

// MouseDown takes hold of what lies under the pointer.
func (g *gestures) MouseDown(e *desktop.MouseEvent) {
	on := g.on.figureAt(e.Position) // before what is typed is taken, which can move the figures
	g.on.focus()
	g.pointer = e.Position
	switch e.Button {
	case desktop.MouseButtonPrimary:
		g.on.finishTyping()
		g.pressed, g.pressedOn, g.on.deaf = true, on, nil
		if on != nil && on.of.Kind == drawing.FrontName { // a click on it selects
			g.pressedOn = nil
		}
		p := g.point(e.Position, e.Modifier)
		if on != nil && on.of.Kind != drawing.Nothing {
			p.Thing = on.of
		}
		p.Twice = g.twice(p)
		if g.spaced || g.on.subject != Elevation && p.Thing.Kind == drawing.Nothing {
			g.pan(e.Position)
			return
		}
		g.Hold(g.hand.Press(g.on, p))
	case desktop.MouseButtonTertiary:
		g.pressed = true
		g.pan(e.Position)
	}
}

// pan takes hold of the picture; what was in the hand is in it again afterwards.
func (g *gestures) pan(at fyne.Position) {
	g.on.Display(tool.Feedback{})
	g.Hold(tool.NewPan(at.X, at.Y, g.hand))
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
func (g *gestures) twice(p tool.Pointer) bool {
	before, now := g.last, press{p.Thing, fyne.NewPos(p.X, p.Y), g.now()}
	g.last = now
	if p.Thing != before.on || !now.near(before.where) || now.when.Sub(before.when) > fyne.CurrentApp().Driver().DoubleTapDelay() {
		return false
	}
	g.last = press{}
	return true
}

// near tells that a place is where the button was pressed.
func (p press) near(at fyne.Position) bool {
	return paint.BoxAt(p.where, fyne.Size{}).Grown(again, again).Overlaps(paint.BoxAt(at, fyne.Size{}))
}

// MouseUp lets go.
func (g *gestures) MouseUp(e *desktop.MouseEvent) {
	if e.Button == desktop.MouseButtonSecondary {
		g.menu(e)
		return
	}
	g.letGo(e.Position, e.Modifier)
}

// letGo ends what the hand holds, where it holds something.
func (g *gestures) letGo(at fyne.Position, m fyne.KeyModifier) {
	if !g.pressed {
		return
	}
	g.pressed = false
	g.scroll.end()
	if !g.last.near(at) { // a drag is no first click
		g.last = press{}
	}
	p := g.point(at, m)
	if at != g.pointer {
		g.Hold(g.hand.Move(g.on, p))
	}
	g.Hold(g.hand.Release(g.on, p))
	g.pointer = at
	g.leaveFigure(at)
	if g.on.fitting {
		g.on.repaint()
	}
}

// leaveFigure tells after a click on a figure that can't be typed that it can't;
// where a press on a figure has opened none, digits have no place to go to.
func (g *gestures) leaveFigure(at fyne.Position) {
	f := g.pressedOn
	g.pressedOn = nil
	if f == nil || g.on.typing != nil {
		return
	}
	g.on.deaf = g.on.session.Selection()
	if f.of.Kind == drawing.Nothing && g.on.figureAt(at) != nil {
		g.on.Tell(tool.Follows())
	}
}

// menu selects what lies under the pointer and opens the menu for it.
func (g *gestures) menu(e *desktop.MouseEvent) {
	if g.pressed || g.on.OnMenu == nil {
		return
	}
	if t := tool.Selectable(g.thingAt(e.Position)); t.Kind != drawing.Nothing && !g.on.session.IsSelected(t) {
		g.on.session.Select(t)
	}
	g.on.OnMenu(e.AbsolutePosition)
}

// Dragged moves what the hand holds.
func (g *gestures) Dragged(e *fyne.DragEvent) { g.move(e.Position) }

// DragEnd ends a drag that MouseUp has not ended: let go over a button or another
// panel, MouseUp does not come, and the keys have been taken away.
func (g *gestures) DragEnd() {
	if g.pressed {
		g.letGo(g.pointer, g.held())
		g.on.focus()
	}
}

// MouseIn begins hovering.
func (g *gestures) MouseIn(e *desktop.MouseEvent) { g.MouseMoved(e) }

// MouseMoved hovers or moves what the hand holds. A pointer that comes without
// its button has let go where this widget was not told.
func (g *gestures) MouseMoved(e *desktop.MouseEvent) {
	if e.Button == 0 {
		g.letGo(g.pointer, e.Modifier)
	}
	g.move(e.Position)
}

// MouseOut ends hovering.
func (g *gestures) MouseOut() {
	if g.pressed {
		return
	}
	g.hover(drawing.Subject{})
	if p, ok := g.hand.(tool.Proposing); ok && g.on.typing == nil { // no key draws what is not seen
		g.Hold(p.Fresh())
	}
	if g.on.typing == nil {
		g.on.Display(tool.Feedback{})
	}
}

func (g *gestures) move(at fyne.Position) {
	if at == g.pointer {
		return
	}
	g.pointer = at
	p := g.point(at, g.held())
	if g.on.typing == nil || !g.on.typing.field.Proposed { // that stays where it is while it is typed
		g.Hold(g.hand.Move(g.on, p))
	}
	if g.pressed {
		g.scroll.follow(g.on)
	} else {
		g.hover(p.Thing)
	}
}

func (g *gestures) hover(t drawing.Subject) {
	if t != g.over {
		g.over = t
		if g.on.OnHover != nil {
			g.on.OnHover(t)
		}
	}
}

// Cursor gives the pointer's shape, which tells what a drag would do.
func (g *gestures) Cursor() desktop.Cursor {
	if g.spaced {
		return desktop.PointerCursor
	}
	switch g.hand.Cursor(g.on, g.point(g.pointer, 0)) {
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
func (g *gestures) Scrolled(e *fyne.ScrollEvent) {
	const notch = 1.15
	switch {
	case e.Scrolled.DY > 0:
		g.on.zoomAt(notch, e.Position)
	case e.Scrolled.DY < 0:
		g.on.zoomAt(1/notch, e.Position)
	case e.Scrolled.DX != 0:
		g.on.Pan(e.Scrolled.DX, 0)
	}
}
